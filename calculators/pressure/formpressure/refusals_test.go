package formpressure

import (
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// A stop longer than the wall is refused.
func TestRefusesALongStop(t *testing.T) {
	res := calctest.Run(t, Calculator, "how=once", "length=10 ft", "stop=12 ft")
	if res.State != calc.Refused || !calctest.Noted(res, refuseStop) || res.Notes[0].At.Field != "stop" {
		t.Errorf("%s: %v", res.State, res.Notes)
	}
	if res = calctest.Run(t, Calculator, "how=once", "length=12 ft", "stop=12 ft"); res.State != calc.OK {
		t.Errorf("a stop as long as the wall: %s", res.State)
	}
}

// An input outside its limits is refused at its field with a reason.
func TestRefusesWhatNoWallIs(t *testing.T) {
	for _, c := range []struct{ path, text string }{
		{"height", "41 ft"}, {"height", "0"}, {"thickness", "1 in"}, {"pump-rate", "300"}, {"weight", "15"},
		{"temperature", "30 °F"}, {"temperature", "130"}, {"slump", "13"}, {"rating", "50"}, {"length", ""},
		{"cement", "mystery"},
	} {
		_, notes := calc.Read(ruled, []calc.Entry{{Path: c.path, Text: c.text}}, us)
		if len(notes) != 1 || notes[0].At.Field != c.path || notes[0].Level != calc.LevelRefusal {
			t.Errorf("%s=%s: %v", c.path, c.text, notes)
		}
	}
}

// What a crew may try to talk the answer round. None of it gives "place as planned".
func TestTalkedRound(t *testing.T) {
	for _, c := range []struct {
		name  string
		typed []string
		note  calc.Text
	}{
		{"A: cold retarded blend, a lift every 61 min", []string{"temperature=50", "cement=blend", "admixture=retards",
			"set=8 h", "wait=19.52 min", "rating=900", "thickness=12 in", "length=93.33333333 ft"}, noteFails},
		{"A: the same on 14 ft", []string{"temperature=50", "cement=blend", "admixture=retards", "set=8 h",
			"wait=19.52 min", "rating=1400", "height=14 ft", "thickness=12 in", "length=93.33333333 ft"}, noteFails},
		{"B: whole wall in an hour", []string{"pump-rate=60", "temperature=90"}, noteFails},
		{"B: 14 ft in 41 min", []string{"pump-rate=70.82", "height=14 ft", "rating=1500"}, noteRapid},
		{"B: loop of 30 ft, 4 lifts in 16 min", []string{"length=30 ft", "pump-rate=22.22", "rating=1100"},
			noteFails},
		{"B: loop of 40 ft, 10 ft in 32 min", []string{"length=40 ft", "height=10 ft", "pump-rate=18.52",
			"temperature=85"}, noteFails},
		{"C: a slightly faster pump", []string{"pump-rate=16.5", "rating=900"}, noteFailsNow},
		{"outside tool above the first lift", []string{"outside=above"}, noteOutside},
		{"outside tool, fluid head held", []string{"outside=above", "rating=2000"}, noteOutside},
		{"no mark on the whip", []string{"vibration=unmarked"}, noteDeep},
		{"no mark, head reaches 6 ft", []string{"vibration=unmarked", "reach=6 ft"}, noteDeep},
		{"head deeper than the mark", []string{"vibration=deep"}, noteDeep},
		{"buried hose", []string{"hose=below"}, noteBelow},
		{"buried hose, fluid head held", []string{"hose=below", "rating=2000"}, noteBelow},
		{"lifts vibrated again", []string{"vibration=again"}, noteAgain},
		{"rating left empty", []string{"rating="}, askRating},
		{"typed rise lower", []string{"pump-rate=25", "rise=1 ft/h"}, askRise},
		{"typed time of a pass longer", []string{"pump-rate=25", "round=61 min"}, askRound},
		{"there and back as one lift each", []string{"how=back", "rating=900"}, noteFails},
		{"wet", []string{"slump=7.25 in"}, noteWet},
		{"cold", []string{"temperature=39"}, noteTooCold},
		{"sets after 20 h", []string{"set=20.5 h"}, noteLate},
		{"unknown mix", []string{"cement=unknown", "admixture=unknown", "set="}, notePlain},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if res.State != calc.OK || res.Out.Choice("deed") == doGo || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, want “%s”; %v", c.name, res.Out.Choice("deed"), c.note.EN(), res.Notes)
		}
	}
	for _, c := range []struct {
		name  string
		typed []string
	}{
		{"as planned", nil},
		{"outside tool in the first lift", []string{"outside=first"}},
		{"no mark, short whip", []string{"vibration=unmarked", "reach=3 ft"}},
		{"measured rise below the plan", []string{"rise=2 ft/h"}},
	} {
		if got := deedOf(t, job(c.typed...)...); !isWithin(got) {
			t.Errorf("%s: %s", c.name, got)
		}
	}
}

// A field that let a reader lower the depth of shaken concrete does not exist.
func TestNoDepthShaken(t *testing.T) {
	if res := calctest.Try(Calculator, "disturbed=1 ft"); res.State != calc.Bad {
		t.Errorf("disturbed: %s", res.State)
	}
}

// In one go a typed rise below pump rate over stop does not lower the answer, and
// the reader is asked.
func TestTypedRiseInOneGo(t *testing.T) {
	for _, rise := range []string{"0.5", "4", "80"} {
		res := calctest.Run(t, Calculator, oneGoRated("rise="+rise, "rating=950")...)
		if res.Out.Choice("deed") == doGo || !calctest.Noted(res, askRise) {
			t.Errorf("%s ft/h: %s, %v", rise, res.Out.Choice("deed"), res.Notes)
		}
		expect(t, res, "rise-local", 81, "ft/h")
	}
}

// A load that is too wet, too hot or too old goes in by no plan, with or without a rating.
func TestRefusedLoads(t *testing.T) {
	for typed, want := range map[string]string{
		"slump=7 in": doGo, "slump=7.25 in": doRefuse, "slump=9 in": doRefuse, "age=90 min": doShorten,
		"age=91 min": doTooOld, "age=150 min": doTooOld, "temperature=90": doGo, "temperature=90.5": doTooHot,
		"temperature=120": doTooHot,
	} {
		for _, rating := range []string{"2000", ""} {
			res := calctest.Run(t, Calculator, job(typed, "rating="+rating)...)
			expected := want
			if rating == "" && (want == doGo || want == doShorten) {
				expected = unchecked
			}
			if got := res.Out.Choice("deed"); got != expected {
				t.Errorf("%s, rating %q: %s, want %s", typed, rating, got, expected)
			}
			if want != doGo && want != doShorten {
				checkNothingBelow(t, res)
			}
		}
	}
}

// checkNothingBelow checks that a load that does not go in has the deed and its reason, and no
// number, table, step or drawing below it.
func checkNothingBelow(t *testing.T, res calc.Result) {
	t.Helper()
	for _, f := range Calculator.Out {
		if f.ID != "deed" && res.Out.Has(f.ID) {
			t.Errorf("%s: %s is shown for a load that does not go in", res.Out.Choice("deed"), f.ID)
		}
	}
	if len(res.Steps) > 0 || !Calculator.Draw(calc.Locale{}, calc.NewCase(ruled.In), res).Empty() {
		t.Errorf("%s: steps or a drawing for a load that does not go in", res.Out.Choice("deed"))
	}
	for _, n := range res.Notes {
		if strings.Contains(n.Text.EN(), "{pressure}") {
			t.Errorf("%s: a note with a pressure: %s", res.Out.Choice("deed"), n.Text.EN())
		}
	}
}

// In one go all three methods count, and the answer is never softer than in lifts.
func TestOneGoIsNoWayRound(t *testing.T) {
	mix := []string{"temperature=50", "set=8 h", "cement=blend", "admixture=retards", "height=9 ft"}
	thick := append([]string{"thickness=36 in", "stop=15 ft", "pump-rate=5 yd³/h"}, mix...)
	once := calctest.Run(t, Calculator, append([]string{"how=once", "rating=1000"}, thick...)...)
	if got := once.Out.Choice("deed"); got == doGo || once.Out.Num("pressure-local") < calc.SI(1300, "psf") {
		t.Errorf("%s at %v Pa", got, once.Out.Num("pressure-local"))
	}
	most := 0.0
	for _, row := range once.Out.Rows("methods") {
		most = math.Max(most, row.Num("pressure"))
	}
	calctest.NearBy(t, "strictest", once.Out.Num("pressure-local"), most, 1e-9)
	for _, stop := range []string{"15.1 ft", "60 ft", "140 ft", "1000 ft"} {
		if res := calctest.Try(Calculator, "how=once", "length=1000 ft", "stop="+stop); res.State == calc.OK {
			t.Errorf("a stop of %s has an answer", stop)
		}
	}
}

// A lift or greatest rise past the published limit of its rule gives no answer, with or
// without a rating and a guide that allows it.
func TestPastALimit(t *testing.T) {
	for _, c := range []struct {
		typed []string
		want  calc.State
	}{
		{[]string{"lift=2 ft", "rise-house=4"}, calc.OK},
		{[]string{"lift=2.1 ft", "rating=3000", "pump-rate=5"}, calc.Refused},
		{[]string{"rise-house=4.1"}, calc.Refused},
		{[]string{"lift=5 ft", "rating=3000", "guide-lift=5 ft", "guide-rate=10"}, calc.Refused},
		{[]string{"rise-house=15", "rating=1300"}, calc.Refused},
		{[]string{"rise-house=15", "rating="}, calc.Refused},
		{[]string{"rise-house=15", "slump=8 in"}, calc.Refused},
		{[]string{"how=once", "lift=5 ft", "rating=2000", "height=4 ft"}, calc.OK}, // the lift is not asked for
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if res.State != c.want || calctest.Noted(res, calc.RefusePassing) != (c.want == calc.Refused) {
			t.Errorf("%v: %s, want %s: %v", c.typed, res.State, c.want, res.Notes)
		}
	}
}

// Only an allowed working pressure of the form maker's data gives a plan, in lifts and in one
// go. With any other figure the answer is to ask first, and no wait, rise or height is named.
func TestOnlyAWorkingPressureGivesAPlan(t *testing.T) {
	for _, plan := range [][]string{job(), job("pump-rate=15"), slow(), slow("rating=1200")} {
		if deed := deedOf(t, plan...); !isWithin(deed) && deed != doWait {
			t.Errorf("%v: %s with a working pressure", plan, deed)
		}
		for is, note := range map[string]calc.Text{ratingUnknown: noteNotKnown, ratingTest: noteTestFigure} {
			res := calctest.Run(t, Calculator, replaced(plan, "rating-is="+is)...)
			if res.Out.Choice("deed") != doAsk || !calctest.Noted(res, note) || res.Out.Has("wait") ||
				res.Out.Has("highest-rise") || res.Out.Has("fluid-limit") || res.Out.Has("not-before") {
				t.Errorf("%v, %s: %s, %v", plan, is, res.Out.Choice("deed"), res.Notes)
			}
		}
	}
	if deed := deedOf(t, "rating=5000"); deed != doAsk {
		t.Errorf("a rating typed alone gives %s", deed)
	}
}
