package formpressure

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
	house "coursebook/calculators/rules"
)

// job is a loop of 140 ft, 8 in. thick and 9 ft high, in lifts of 2 ft of plain
// concrete at 70 °F, with an invented rating.
func job(typed ...string) []string {
	return replaced([]string{"height=9 ft", "pump-rate=10 yd³/h", "slump=6 in", "cement=plain", "admixture=none",
		"set=5 h",
		"age=45 min", "rating=1000"}, typed...)
}

// The setting times of the mixes are converted to 70 °F, as the plant gives them.
var mixes = map[string][]string{
	"plain 70 °F":          nil,
	"blend 70 °F":          {"cement=blend", "set=6.5 h"},
	"retarded blend 70 °F": {"cement=blend", "admixture=retards", "set=8 h"},
	"plain 50 °F":          {"temperature=50", "set=4.8774 h"},
	"retarded blend 50 °F": {"cement=blend", "admixture=retards", "temperature=50", "set=8 h"},
}

// What to do at an invented rating of 1000 psf: every cell is a deed.
func TestEveryCellHasADeed(t *testing.T) {
	const noPlan = -1
	for mix, row := range map[string]map[string]float64{ // minutes by pump rate, 0: go
		"plain 70 °F":          {"10": 0, "15": 0, "25": 8, "60": 17},
		"blend 70 °F":          {"10": 0, "15": 6, "25": 17, "60": 27},
		"retarded blend 70 °F": {"10": 5, "15": 19, "25": 30, "60": 40},
		"plain 50 °F":          {"10": 25, "15": 38, "25": 49, "60": 59}, // 24.04 min rounded up
		"retarded blend 50 °F": {"10": noPlan, "15": noPlan, "25": noPlan, "60": noPlan},
	} {
		for rate, minutes := range row {
			res := calctest.Run(t, Calculator, job(append(mixes[mix], "pump-rate="+rate)...)...)
			want := doGo
			asked := math.Max(minutes, map[string]float64{"15": 3, "25": 14, "60": 24}[rate]) // 2 ft every 30 min
			switch {
			case minutes == noPlan:
				want = doMix
				expect(t, res, "fluid-limit", 1000.0/150, "ft")
				if res.Out.Choice("mix") != mixBoth || !calctest.Noted(res, noteNoWait) ||
					!calctest.Noted(res, helpDepthMix) ||
					!(calctest.Noted(res, helpMix) || calctest.Noted(res, helpMixWait)) {
					t.Errorf("%s at %s: mix %s, %v", mix, rate, res.Out.Choice("mix"), res.Notes)
				}
			case asked > 0:
				want = doWait
				expect(t, res, "wait", asked, "min")
				long := calctest.Noted(res, helpSlower) || calctest.Noted(res, helpTrucks)
				if long != (asked > longWait) {
					t.Errorf("%s at %s: slower pump or fewer trucks: %v", mix, rate, long)
				}
				if (calctest.Noted(res, noteByRise) || calctest.Noted(res, noteByRiseOnly)) != (asked > minutes) {
					t.Errorf("%s at %s: form or rise does not ask for the wait: %v", mix, rate, res.Notes)
				}
			}
			if minutes >= 0 {
				expect(t, res, "wait-form", minutes, "min")
			}
			if got := res.Out.Choice("deed"); got != want {
				t.Errorf("%s at %s yd³/h: %s, want %s; %v", mix, rate, got, want, res.Notes)
			}
		}
	}
}

// The answer says which of form and rise sets the wait, and that the form may open
// without it; the other one's wait is named beside it.
func TestWhatGovernsTheWait(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
		fails bool // the plan without the wait is over the rating
	}{
		{[]string{"pump-rate=25"}, noteByRise, true}, // 8 min by the form, 14 min by the rise
		{[]string{"pump-rate=15"}, noteByRiseOnly, false},
		{[]string{"round=20 min", "rating=900"}, noteByBoth, true}, // 10 min by each
		{[]string{"pump-rate=15", "cement=blend", "admixture=retards", "set=8 h"}, noteByForm, true},
		{[]string{"cement=blend", "admixture=retards", "set=8 h"}, noteByFormOnly, true},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		for _, note := range []calc.Text{noteByRise, noteByRiseOnly, noteByForm, noteByBoth, noteByFormOnly} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.note.EN(), res.Notes)
			}
		}
		if res.Out.Choice("deed") != doWait || calctest.Noted(res, noteFails) ||
			calctest.Noted(res, noteFailsNow) != c.fails {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("deed"), res.Notes)
		}
		if longer := math.Max(res.Out.Num("wait-form"), res.Out.Num("wait-rise")); res.Out.Num("wait") != longer {
			t.Errorf("%v: wait %v s, the longer of both is %v s", c.typed, res.Out.Num("wait"), longer)
		}
	}
}

// A tool on the outside of the first lift has its assumption in the answer, in one go its
// own words.
func TestOutsideToolIsExplained(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
	}{
		{[]string{"outside=none"}, ""},
		{[]string{"outside=first"}, noteFirst},
		{[]string{"outside=first", "rating="}, noteFirst},
		{[]string{"outside=above"}, noteOutside},
		{[]string{"outside=first", "how=once"}, noteOutsideOnce},
		{[]string{"outside=above", "how=once"}, noteOutsideOnce},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		for _, note := range []calc.Text{noteFirst, noteOutside, noteOutsideOnce} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.note.EN(), res.Notes)
			}
		}
	}
}

// Where no wait keeps the greatest rise, the answer names the measured rise or the wait
// that is not enough, and not the mix.
func TestSlowThePump(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
	}{
		{[]string{"rise=8 ft/h", "rating=1500"}, noteMeasured},
		{[]string{"rise=8 ft/h", "rating=900"}, noteMeasured},
		{[]string{"rise-house=0.5", "rating=1500"}, noteTooSlow},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if res.Out.Choice("deed") != doSlow || !calctest.Noted(res, c.note) || calctest.Noted(res, noteNoWait) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("deed"), res.Notes)
		}
	}
}

// A lift deeper than the guide's has no wait: it would be that of the wrong lift.
func TestLiftOverTheGuide(t *testing.T) {
	for _, rating := range []string{"900", "600"} {
		res := calctest.Run(t, Calculator, job("guide-lift=1 ft", "guide-rate=2", "rating="+rating)...)
		if res.Out.Choice("deed") != doGuide || !calctest.Noted(res, noteGuideRetype) || res.Out.Has("wait") ||
			res.Out.Has("not-before") || res.Out.Has("wait-form") {
			t.Errorf("rating %s: %s, %v", rating, res.Out.Choice("deed"), res.Notes)
		}
	}
}

// A pour that ends lower still keeps the greatest rise: in lifts by a wait, in one go by
// the height that an hour may add.
func TestLowerPourKeepsTheRise(t *testing.T) {
	res := calctest.Run(t, Calculator, job("pump-rate=15", "rating=600")...)
	if res.Out.Choice("deed") != doStop || !calctest.Noted(res, noteOverRule) {
		t.Errorf("in lifts: %s, %v", res.Out.Choice("deed"), res.Notes)
	}
	res = calctest.Run(t, Calculator, oneGoRated("temperature=38", "rating=1000")...)
	if res.Out.Choice("deed") != doStop {
		t.Errorf("in one go: %s", res.Out.Choice("deed"))
	}
	for _, n := range res.Notes {
		if n.Text == helpDepth {
			if got := (calc.Locale{Style: us}).Say(n.Text, n.Slots...); !strings.Contains(got, "at 4' 0\"") {
				t.Errorf("in one go: %s", got)
			}
		}
	}
}

// Every case of full fluid head is named, with the limits of the code, where the formulas
// of both ways to place are printed.
func TestEveryFluidCaseIsNamed(t *testing.T) {
	for _, f := range []*calc.Formula{pressure.InLiftsFormula, pressure.StrictestFormula} {
		if f.Limits != pressure.FluidCases {
			t.Errorf("%s does not name the cases", f.ID)
		}
	}
	said := pressure.FluidCases.EN()
	at := func(x, step float64, unit string) string { return fmt.Sprint(math.Floor(x/step+1e-9)*step) + unit }
	for cause, words := range map[pressure.Cause][]string{
		pressure.FromBelow:     {"from below", "hose end is buried"},
		pressure.Revibrated:    {"vibrated again"},
		pressure.OutsideTool:   {"above the first lift", "in one go"},
		pressure.HeadTooDeep:   {at(float64(pressure.VibrationDepth), 1, " ft (1.2 m)")},
		pressure.TooWet:        {at(float64(pressure.MethodSlump), 1, " in. (175 mm)"), "levels itself"},
		pressure.TooCold:       {at(pressure.CIRIAColdest*9/5+32, 1, " °F"), at(pressure.CIRIAColdest, 1, " °C")},
		pressure.SetsTooLate:   {at(pressure.DINSetHigh, 1, " h")},
		pressure.FillsInAnHour: {at(pressure.WholeHour*60, 1, " min")},
		pressure.RisesTooFast:  {quantity.Format(ftPerH(pressure.MethodRiseSI), displays.RiseAtMost, us), "4.5 m/h"},
		pressure.BeyondMethod:  {at(pressure.DINHeight, 1, " m"), "32.8 ft"},
	} {
		for _, word := range words {
			if !strings.Contains(said, word) {
				t.Errorf("%s: no “%s”", cause, word)
			}
		}
	}
	for _, typed := range []string{"hose=below", "vibration=again", "outside=above", "vibration=deep", "slump=7.25 in",
		"temperature=40.9", "set=20.5 h", "pump-rate=60", "height=33 ft"} {
		res := calctest.Run(t, Calculator, job(typed)...)
		if res.Out.Choice("rule") != string(pressure.Fluid) {
			t.Errorf("%s: decided by %s", typed, res.Out.Choice("rule"))
		}
	}
}

// Without a rating that is met by any mix, today's pour ends lower.
func TestStopIsTheLastDeed(t *testing.T) {
	res := calctest.Run(t, Calculator, job("rating=600")...)
	if res.Out.Choice("deed") != doStop || !calctest.Noted(res, helpDepth) {
		t.Errorf("%s, %v", res.Out.Choice("deed"), res.Notes)
	}
	expect(t, res, "fluid-limit", 4, "ft")
}

// No rate below what a pump runs at is named: the wait comes with fewer trucks.
func TestNoPumpRunsThisSlow(t *testing.T) {
	slow := calctest.Run(t, Calculator, job("pump-rate=8", "rating=930", "temperature=50", "set=4.8774 h",
		"age=0 min")...)
	fast := calctest.Run(t, Calculator, job("pump-rate=60", "cement=blend", "admixture=retards", "set=8 h")...)
	for _, c := range []struct {
		res        calc.Result
		note, none calc.Text
	}{{slow, helpTrucks, helpSlower}, {fast, helpSlower, helpTrucks}} {
		if c.res.Out.Choice("deed") != doWait || calc.From(c.res.Out.Num("wait"), "min") <= longWait ||
			!calctest.Noted(c.res, c.note) || calctest.Noted(c.res, c.none) {
			t.Errorf("%s, wait %v s: %v", c.res.Out.Choice("deed"), c.res.Out.Num("wait"), c.res.Notes)
		}
	}
}

// At the ends of a wall walked there and back two lifts count as one, and the times
// are twice as long.
func TestThereAndBack(t *testing.T) {
	around, ends := calctest.Run(t, Calculator, job("rating=1350")...),
		calctest.Run(t, Calculator, job("rating=1350", "how=back")...)
	if !calctest.Noted(ends, noteEnds) || ends.Out.Num("pressure-local") <= around.Out.Num("pressure-local") {
		t.Errorf("%v Pa, a loop has %v", ends.Out.Num("pressure-local"), around.Out.Num("pressure-local"))
	}
	calctest.NearBy(t, "not before", ends.Out.Num("not-before"), 2*around.Out.Num("not-before"), 1e-9)
}

// Where the form needs more time than the joint allows, there is no lift plan.
func TestNotBeforeAndBackByCross(t *testing.T) {
	hot := job("temperature=90", "pump-rate=60", "age=90 min", "cement=blend", "set=5 h", "rating=800")
	res := calctest.Run(t, Calculator, hot...)
	if res.Out.Choice("deed") == doGo || res.Out.Choice("deed") == doWait || !calctest.Noted(res, noteCrossed) ||
		res.Out.Num("not-before") <= res.Out.Num("back-by") {
		t.Errorf("%s: not before %v s, back by %v s; %v", res.Out.Choice("deed"), res.Out.Num("not-before"),
			res.Out.Num("back-by"), res.Notes)
	}
	long := calctest.Run(t, Calculator, job("length=600 ft", "temperature=80", "age=90 min", "rating=1350")...)
	if long.Out.Choice("deed") != doShorten || !calctest.Noted(long, noteTooLong) || calctest.Noted(long, helpDepth) {
		t.Errorf("a pass longer than the window: %s, %v", long.Out.Choice("deed"), long.Notes)
	}
	fresh := calctest.Run(t, Calculator, replaced(hot, "age=0 min", "set=12 h", "rating=1000")...)
	if fresh.Out.Choice("deed") != doWait {
		t.Errorf("with time left: %s", fresh.Out.Choice("deed"))
	}
}

// Back by is the end of the joint window where that comes before the set: the plan that
// rate-of-rise calls too late is no plan here.
func TestJointWindowCounts(t *testing.T) {
	for age, minutes := range map[string]float64{"0 min": 120, "45 min": 75, "90 min": 30} {
		res := calctest.Run(t, Calculator, job("age="+age, "rating=1350")...)
		expect(t, res, "back-by", minutes, "min")
		late := minutes < 41.4 // a pass of 6.91 yd³ at 10 yd³/h
		if deed := res.Out.Choice("deed"); (deed == doGo) == late || !calctest.Noted(res, noteJoint) {
			t.Errorf("age %s: %s, %v", age, deed, res.Notes)
		}
	}
	hot := calctest.Run(t, Calculator, job("temperature=100", "age=0 min", "set=2 h")...)
	if calctest.Noted(hot, noteJoint) || hot.Out.Num("back-by") >= 120*60 {
		t.Errorf("an early set: back by %v s, %v", hot.Out.Num("back-by"), hot.Notes)
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
			"set=8 h", "wait=19.52 min", "rating=900"}, noteFails},
		{"A: the same on 14 ft", []string{"temperature=50", "cement=blend", "admixture=retards", "set=8 h",
			"wait=19.52 min", "rating=1400", "height=14 ft"}, noteFails},
		{"B: whole wall in an hour", []string{"pump-rate=60", "temperature=90"}, noteFailsNow},
		{"B: 14 ft in 41 min", []string{"pump-rate=70.82", "height=14 ft", "rating=1500"}, noteRapid},
		{"B: loop of 30 ft, 4 lifts in 16 min", []string{"length=30 ft", "pump-rate=22.22", "rating=1100"},
			noteFailsNow},
		{"B: loop of 40 ft, 10 ft in 32 min", []string{"length=40 ft", "height=10 ft", "pump-rate=18.52",
			"temperature=85"}, noteFailsNow},
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
		{"cold", []string{"temperature=39"}, noteCold},
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
		if got := deedOf(t, job(c.typed...)...); got != doGo {
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

// The pressures of the job before rounding.
func TestPressuresOfTheJob(t *testing.T) {
	for rate, want := range map[string]float64{"10": 799, "15": 927, "25": 1222, "60": 1350} {
		res := calctest.Run(t, Calculator, job("pump-rate="+rate)...)
		calctest.Near(t, rate+" yd³/h", calc.From(res.Out.Num("pressure-local"), "psf"), want, 0.6)
	}
	cold := calctest.Run(t, Calculator, job("temperature=50", "cement=blend", "admixture=retards", "set=8 h",
		"wait=19.52 min")...)
	if got := calc.From(cold.Out.Num("pressure-local"), "psf"); got < 1177 {
		t.Errorf("a cold retarded blend every 61 min: %v psf", got)
	}
}

// Both setting windows follow the plant or the estimate; an unknown mix sets late
// for the form and early for the joint.
func TestUnknownMixCountsTwice(t *testing.T) {
	unknown := calctest.Run(t, Calculator, job("set=", "cement=unknown", "admixture=unknown")...)
	plain := calctest.Run(t, Calculator, job("set=")...)
	if unknown.Out.Num("set-used") <= plain.Out.Num("set-used") ||
		unknown.Out.Num("back-by") > plain.Out.Num("back-by") {
		t.Errorf("unknown: set %v s, back by %v s; plain: %v, %v", unknown.Out.Num("set-used"),
			unknown.Out.Num("back-by"), plain.Out.Num("set-used"), plain.Out.Num("back-by"))
	}
}

// The house rule for the rise counts beside the form and the form maker's rise: the
// lowest of them, with or without the guide's lift.
func TestGreatestRise(t *testing.T) {
	for _, c := range []struct {
		typed []string
		deed  string
		wait  float64 // min
	}{
		{[]string{"pump-rate=15"}, doWait, 3}, // 27.65 min a round; 2 ft at 4 ft/h take 30
		{[]string{"pump-rate=25", "rating=1500"}, doWait, 14},
		{[]string{"pump-rate=38", "rating=1600"}, doWait, 20},
		{[]string{"pump-rate=15", "wait=3 min"}, doGo, 0},
		{[]string{"pump-rate=15", "rise-house=3"}, doWait, 13},
		{[]string{"pump-rate=15", "guide-lift=4 ft", "guide-rate=5"}, doWait, 3},
		{[]string{"pump-rate=25", "rating=1300", "guide-lift=4 ft", "guide-rate=30"}, doWait, 14},
		{[]string{"pump-rate=15", "guide-lift=4 ft", "guide-rate=3"}, doWait, 13},
		{[]string{"pump-rate=15", "guide-rate=5"}, doWait, 3},
		{[]string{"pump-rate=15", "guide-rate=3"}, doWait, 13},
		{[]string{"rating=1500", "rise-house=0.5"}, doSlow, 0},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if got := res.Out.Choice("deed"); got != c.deed || res.Out.Has("wait") != (c.wait > 0) {
			t.Errorf("%v: %s, want %s", c.typed, got, c.deed)
		}
		if c.wait > 0 {
			expect(t, res, "wait", c.wait, "min")
		}
	}
}

// A lift, a rise or a heat looser than its house rule is asked about first: no pressure,
// however low, makes it a plan. Within the rule the same wall is a plan. The crew of the
// test has set itself a lift of 1 ft and a rise of 3 ft/h.
func TestLooserThanTheHouseRule(t *testing.T) {
	amounts := maps.Clone(calctest.Amounts())
	amounts["lift"], amounts["rise"] = "1 ft", "3 ft/h"
	strict := calc.WithRules([]*calc.Calculator{Calculator}, amounts, house.All()...)[0]
	for _, c := range []struct {
		typed string
		field string // "" where no rule is passed
	}{
		{"lift=1 ft", ""}, {"lift=1.1 ft", "lift"}, {"lift=2 ft", "lift"},
		{"rise-house=3 ft/h", ""}, {"rise-house=3.1 ft/h", "rise-house"}, {"rise-house=4 ft/h", "rise-house"},
		{"hottest=90 °F", ""}, {"hottest=95 °F", "hottest"},
	} {
		for _, rating := range []string{"3000", ""} {
			var entries []calc.Entry
			for _, typed := range job("lift=1 ft", "pump-rate=5", "rise-house=3 ft/h", "rating="+rating, c.typed) {
				name, value, _ := strings.Cut(typed, "=")
				entries = slices.DeleteFunc(entries, func(e calc.Entry) bool { return e.Path == name })
				entries = append(entries, calc.Entry{Path: name, Text: value})
			}
			in, rejected := calc.Read(strict, entries, us)
			if len(rejected) > 0 {
				t.Fatal(rejected)
			}
			res := calc.Run(strict, in)
			want := doGo
			switch {
			case rating == "":
				want = unchecked
			case c.field != "":
				want = doHouse
			}
			warned := ""
			for _, n := range res.Notes {
				if n.Text == noteHouse {
					warned += n.At.Field
				}
			}
			if got := res.Out.Choice("deed"); got != want || warned != c.field || calctest.Noted(res, calc.NoteLooser) {
				t.Errorf("%s, rating %q: %s, want %s; warned at %q: %v", c.typed, rating, got, want, warned, res.Notes)
			}
			if want == doHouse && (res.Out.Has("wait") || res.Out.Has("not-before")) {
				t.Errorf("%s: a plan over the house rule", c.typed)
			}
		}
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
			if want != doGo && want != doShorten && (res.Out.Has("back-by") || res.Out.Has("not-before") ||
				res.Out.Has("fluid-limit")) {
				t.Errorf("%s: a plan for a load that does not go in", typed)
			}
		}
	}
}

// Another mix is at most 20 °F warmer, without a retarder where that alone helps, and
// its warmth has a caution.
func TestWarmerMix(t *testing.T) {
	for _, c := range []struct{ cold, want float64 }{{41, 61}, {45, 65}, {50, 70}, {60, 70}} {
		res := calctest.Run(t, Calculator, job(fmt.Sprintf("temperature=%v", c.cold), "rating=860",
			"pump-rate=8", "set=8 h", "age=0 min")...)
		if res.Out.Has("mix-temperature") {
			expect(t, res, "mix-temperature", calc.From(calc.SI(c.want, "°F"), "°F"), "°F")
			if !calctest.Noted(res, noteWarmer) {
				t.Errorf("%v °F: no caution about warmer concrete", c.cold)
			}
		} else if res.Out.Choice("mix") != "" {
			t.Errorf("%v °F: %s without its temperature", c.cold, res.Out.Choice("mix"))
		}
	}
	free := calctest.Run(t, Calculator, job("cement=plain", "admixture=retards", "set=12 h", "temperature=60",
		"rating=1000", "pump-rate=10")...)
	if free.Out.Choice("mix") != mixFree || free.Out.Has("mix-temperature") || calctest.Noted(free, noteWarmer) {
		t.Errorf("%s: mix %q, %v", free.Out.Choice("deed"), free.Out.Choice("mix"), free.Notes)
	}
}

// Without the plant's time the joint goes by the earliest of our estimates.
func TestJointGoesByTheEarliest(t *testing.T) {
	cold := []string{"temperature=50", "set=", "cement=blend", "admixture=retards"}
	late, fast := calctest.Run(t, Calculator, job(cold...)...),
		calctest.Run(t, Calculator, job("temperature=50", "set=5 h")...)
	if late.Out.Num("back-by") != fast.Out.Num("back-by") {
		t.Errorf("back by %v s, plain concrete %v s", late.Out.Num("back-by"), fast.Out.Num("back-by"))
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

// The answer itself says that the form maker's guide is missing.
func TestMissingGuideIsSeen(t *testing.T) {
	res := calctest.Run(t, Calculator, job()...)
	if res.Out.Choice("deed") != doGo || res.Out.Choice("guide") != guideNone || !calctest.Noted(res, askGuide) ||
		!outputField("guide").Lead {
		t.Errorf("%s, guide %s, %v", res.Out.Choice("deed"), res.Out.Choice("guide"), res.Notes)
	}
}

// The form maker's ratings are never filled in.
func TestNoRatingIsFilledIn(t *testing.T) {
	for _, f := range inputs {
		if f.Maker && (f.Usual != "" || !f.Optional) {
			t.Errorf("%s: %q", f.ID, f.Usual)
		}
	}
	options := outputField("deed").Options
	last := options[len(options)-1]
	if in, _ := calctest.RunCase(t, Calculator); in.Has("rating") || last.ID != unchecked ||
		!strings.Contains(last.Label.EN(), "not checked") {
		t.Error("an example rating, or no word that the form is not checked")
	}
}

// A guide looser than the house rules is asked about.
func TestLooserGuide(t *testing.T) {
	for _, c := range []struct {
		typed []string
		asked string // the field, or "" for none
	}{
		{[]string{"guide-lift=2 ft", "guide-rate=4"}, ""},
		{[]string{"guide-lift=1 ft", "guide-rate=3"}, ""},
		{[]string{"guide-lift=2 ft", "guide-rate=30"}, "guide-rate"},
		{[]string{"guide-lift=4 ft", "guide-rate=4"}, "guide-lift"},
	} {
		asked := ""
		for _, n := range calctest.Run(t, Calculator, job(c.typed...)...).Notes {
			if n.Text == askLooser {
				asked += n.At.Field
			}
		}
		if asked != c.asked {
			t.Errorf("%v: asked at %q, want %q", c.typed, asked, c.asked)
		}
	}
	loose := calctest.Run(t, Calculator, job("guide-lift=4 ft", "guide-rate=30")...)
	expect(t, loose, "guide-time", 30, "min") // 2 ft at 4 ft/h, both by the house rules
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

// Without a rating the form is not checked, and a rise over the house rule asks for a
// wait or a slower pump.
func TestRiseWithoutARating(t *testing.T) {
	for _, c := range []struct {
		typed []string
		wait  float64 // min; 0: none
		note  calc.Text
	}{
		{nil, 0, ""},
		{[]string{"pump-rate=15"}, 3, noteOverRule},
		{[]string{"pump-rate=15", "wait=3 min"}, 0, ""},
		{[]string{"pump-rate=30"}, 17, noteOverRule}, // 13.8 min a round; 2 ft at 4 ft/h take 30
		{[]string{"pump-rate=15", "guide-rate=3"}, 13, noteOverRule},
		{[]string{"rise-house=0.6"}, 0, noteOverSlow},
		{[]string{"how=once"}, 0, noteFast},
		{[]string{"how=once", "height=4 ft"}, 0, ""},
		{[]string{"pump-rate=30", "slump=8 in"}, 0, ""},
	} {
		res := calctest.Run(t, Calculator, job(append(c.typed, "rating=")...)...)
		if got := res.Out.Choice("deed"); got != unchecked && got != doRefuse {
			t.Errorf("%v: %s", c.typed, got)
		}
		for _, note := range []calc.Text{noteOverRule, noteOverSlow, noteFast} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.note.EN(), res.Notes)
			}
		}
		if res.Out.Has("wait-rise") != (c.wait > 0) {
			t.Errorf("%v: wait %v s", c.typed, res.Out.Num("wait-rise"))
		} else if c.wait > 0 {
			expect(t, res, "wait-rise", c.wait, "min")
		}
	}
}

// The steps derive what just landed: at the default inputs it is 595.7 psf.
func TestLandedIsDerived(t *testing.T) {
	for _, typed := range [][]string{nil, {"lift=2 ft", "how=back"}, {"pump-rate=25"}, {"lift=1 ft", "height=5 ft"},
		{"vibration=unmarked", "reach=3 ft"}, {"round=20 min"}} {
		res := calctest.Run(t, Calculator, typed...)
		found := false
		for _, s := range res.Steps {
			if s.Formula == pressure.LandedFormula {
				found = true
				calctest.NearBy(t, strings.Join(typed, " "), s.Out, res.Out.Num("landed"), 1e-12)
			}
		}
		derived := slices.ContainsFunc(res.Steps, func(s calc.Step) bool {
			return s.Formula == pressure.InLiftsFormula
		})
		if found != derived || typed == nil && !found {
			t.Errorf("%v: derived %v, used %v", typed, found, derived)
		}
	}
	res := calctest.Run(t, Calculator)
	rise := 2 / (140 * (8.0 / 12) * 2 / (12 * 27)) // ft/h
	calctest.Near(t, "by hand", calc.From(res.Out.Num("landed"), "psf"), 150*(min(2+rise/2, rise)+0.5), 0.01)
}
