package formpressure

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
)

var us = quantity.Style{System: quantity.US}

// ruled is the calculator with the amounts of the house rules.
var ruled = calctest.WithRules(Calculator)

func expect(t *testing.T, res calc.Result, id string, want float64, unit string) {
	t.Helper()
	if got := calc.From(res.Out.Num(id), unit); !res.Out.Has(id) || math.Abs(got-want) > 1e-6*math.Abs(want) {
		t.Errorf("%s: %v %s, want %v", id, got, unit, want)
	}
}

func deedOf(t *testing.T, typed ...string) string {
	t.Helper()
	return calctest.Run(t, Calculator, typed...).Out.Choice("deed")
}

// replaced is a list of inputs in which later ones replace those of the same name.
func replaced(list []string, typed ...string) []string {
	var out []string
	for _, s := range slices.Concat(list, typed) {
		name, _, _ := strings.Cut(s, "=")
		out = slices.DeleteFunc(out, func(o string) bool { return strings.HasPrefix(o, name+"=") })
		out = append(out, s)
	}
	return out
}

// oneGoRated is a wall in one go with the mix and the rating of the tests.
func oneGoRated(typed ...string) []string {
	return replaced([]string{"how=once", "rating=900", "cement=blend", "admixture=retards", "set=5 h"}, typed...)
}

// In one go the form holds by the average rise, but not by the rise at the hose, and
// the answer names no pump rate that no pump runs.
func TestInOneGo(t *testing.T) {
	res := calctest.Run(t, Calculator, oneGoRated()...)
	if res.Out.Choice("deed") != doLifts || !calctest.Noted(res, noteFails) ||
		!calctest.Noted(res, helpLifts) || res.Out.Has("highest-flow") {
		t.Errorf("%s, notes %v", res.Out.Choice("deed"), res.Notes)
	}
	expect(t, res, "rise-local", 81, "ft/h") // 12·27/(6·2/3)
	expect(t, res, "rise-average", 324/(140*8.0/12), "ft/h")
	expect(t, res, "pressure-local", 1200, "psf")
	expect(t, res, "fluid-limit", 6, "ft")
	expect(t, res, "highest-rise", 70*(900/1.4-150)/9000, "ft/h") // ACI 347 sets it
	if len(res.Out.Rows("by-depth")) != depthRows {
		t.Errorf("%d rows by depth", len(res.Out.Rows("by-depth")))
	}
	res = calctest.Run(t, Calculator, slow("pump-rate=20 yd³/h")...)
	if res.Out.Choice("deed") != doSlow || !calctest.Noted(res, helpSlow) {
		t.Errorf("a thick wall: %s, notes %v", res.Out.Choice("deed"), res.Notes)
	}
	rise := math.Min(res.Out.Num("highest-rise"), calc.SI(4, "ft/h"))
	calctest.NearBy(t, "flow", res.Out.Num("highest-flow"), rise*calc.SI(45, "ft²"), 1e-9)
}

// No form passes on the average: regardless of the average, a rise at the hose
// that exceeds the rating fails.
func TestNeverOnTheAverageAlone(t *testing.T) {
	for _, length := range []string{"50", "200", "1000", "2000"} {
		res := calctest.Run(t, Calculator, oneGoRated("length="+length, "height=10")...)
		if res.Out.Num("rise-average") > res.Out.Num("rise-local") || res.Out.Choice("deed") == doGo {
			t.Errorf("%s ft of wall: %s", length, res.Out.Choice("deed"))
		}
	}
}

// slow is a wall so thick that the rise at the hose is 3.47 ft/h.
func slow(typed ...string) []string {
	return replaced(oneGoRated("stop=15 ft", "thickness=36 in", "pump-rate=5.785714 yd³/h"), typed...)
}

func TestDeedsInOneGo(t *testing.T) {
	for _, c := range []struct {
		name  string
		typed []string
		want  string
		note  calc.Text
	}{
		{"no rating", slow("rating="), unchecked, askRating},
		{"takes the fluid head", slow("rating=1200"), doGo, noteAny},
		{"just under the fluid head", oneGoRated("rating=1195"), doLifts, noteFails},
		{"below the floor", slow("rating=500"), doLifts, helpNone},
		{"below the floor, low wall", slow("rating=500", "height=3'"), doGo, noteAny},
		{"slow enough", slow(), doGo, noteSlump},
		{"a little too fast", slow("rise=3.9"), doSlow, helpSlow},
		{"wet", slow("slump=8"), doRefuse, noteWet},
		{"wet, no rating", slow("slump=8", "rating="), doRefuse, noteWet},
		{"cold", slow("temperature=38"), doStop, noteCold},
		{"hot", slow("temperature=95"), doTooHot, noteTooHot},
		{"deep head", slow("vibration=deep"), doStop, noteShaken},
		{"no mark", slow("vibration=unmarked"), doStop, noteShaken},
		{"vibrated again", slow("vibration=again"), doStop, helpFluid},
		{"buried hose", slow("hose=below"), doAsk, noteBelow},
		{"buried hose, fluid head held", slow("hose=below", "rating=2000"), doAsk, noteBelow},
		{"outside", slow("outside=first"), doAsk, noteOutsideOnce},
		{"outside, fluid head held", slow("outside=above", "rating=2000"), doAsk, noteOutsideOnce},
		{"too tall", slow("height=20'"), doLifts, helpNone},
		{"near 14 ft", slow("height=13.7 ft", "rating=1300"), doGo, askGuide},
		{"near 15 ft/h", slow("height=14'", "rise=14", "rating=2100"), doSlow, noteFast},
		{"the same on a thin wall", oneGoRated("rating=2100"), doLifts, noteFast},
		{"the same, the hour adds 4 ft", oneGoRated("rating=2100", "height=4'"), doGo, noteAny},
		{"near 40 °F", slow("temperature=41", "rating=1100"), doLifts, noteFails},
		{"near 40 °F, strong", slow("temperature=41", "rating=1300", "height=9'", "pump-rate=1",
			"cement=plain", "admixture=none"), doGo, noteChilly},
		{"so slow that the floor counts", slow("pump-rate=0.5"), doGo, askGuide},
		{"too old", slow("age=91 min"), doTooOld, noteTooOld},
		{"unknown mix", slow("cement=unknown", "rating=890"), doSlow, notePlain},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if got := res.Out.Choice("deed"); got != c.want || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, want %s with “%s”; notes %v", c.name, got, c.want, c.note.EN(), res.Notes)
		}
	}
}

// The least pressure of the SI edition counts for the answer, and is the pressure shown.
func TestStricterEdition(t *testing.T) {
	typed := slow("pump-rate=1", "height=14'", "cement=plain", "admixture=none", "temperature=90")
	if got := deedOf(t, replaced(typed, "rating=610")...); got == doGo {
		t.Errorf("600 psf at a rating of 610: %s", got)
	}
	res := calctest.Run(t, Calculator, typed...)
	expect(t, res, "floor-si", 30, "kPa")
	expect(t, res, "floor", 600, "psf")
	least := slices.IndexFunc(res.Steps, func(s calc.Step) bool { return s.Formula == pressure.LeastPressureFormula })
	if least < 0 || math.Abs(res.Steps[least].Out-calc.SI(30, "kPa")) > 1e-3 {
		t.Errorf("the larger of both editions is not derived: %v", res.Steps)
	}
	expect(t, res, "pressure-us", 600, "psf")
	if res.Out.Num("pressure-local") < res.Out.Num("floor-si") {
		t.Errorf("%v Pa is below the floor of the SI edition", res.Out.Num("pressure-local"))
	}
}

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

// The form maker's guide comes first: a plan beyond it is no plan.
func TestGuide(t *testing.T) {
	guide := []string{"guide-lift=4 ft", "guide-rate=4"}
	for _, c := range []struct {
		name  string
		typed []string
		want  string
		deed  string
		note  calc.Text
	}{
		{"none", []string{"rating="}, guideNone, unchecked, askGuide},
		{"half of it", slow("guide-lift=4 ft"), guideNone, doGo, askGuideBoth},
		{"other half", slow("guide-rate=4"), guideNone, doGo, askGuideBoth},
		{"one go is one lift", slow(guide...), guideBeyond, doGuide, noteGuideBeyond},
		{"one go within", slow(append(guide, "height=4 ft")...), guideWithin, doGo, noteGuideWithin},
		{"lifts within", job(guide...), guideWithin, doGo, noteGuideWithin},
		{"lifts too fast", job("guide-lift=4 ft", "guide-rate=2"), guideBeyond, doWait, noteGuideBeyond},
		{"lifts too thick", job("guide-lift=1 ft", "guide-rate=4"), guideBeyond, doGuide, noteGuideBeyond},
		{"lift above the rating", job("guide-lift=4 ft", "guide-rate=4", "rating=500"), guideWithin, doStop,
			noteGuideLift},
		{"lifts of the guide", job("guide-lift=4 ft", "guide-rate=4", "rating="), guideWithin, unchecked, noteLifts},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("guide") != c.want || res.Out.Choice("deed") != c.deed || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, %s, want %s, %s with “%s”", c.name, res.Out.Choice("guide"), res.Out.Choice("deed"),
				c.want, c.deed, c.note.EN())
		}
	}
	res := calctest.Run(t, Calculator, "guide-lift=4 ft", "guide-rate=4", "height=9'")
	expect(t, res, "guide-time", 30, "min") // 2 ft at 4 ft/h
	res = calctest.Run(t, Calculator, job("guide-lift=4 ft", "guide-rate=2")...)
	if got := calc.From(res.Out.Num("not-before"), "min"); got < 60 || got > 61 { // 2 ft at 2 ft/h, in whole minutes
		t.Errorf("not before %v min", got)
	}
}

// anyCase returns random inputs within their limits.
func anyCase(rnd *rand.Rand) calc.Case {
	in := calc.NewCase(ruled.In)
	for _, f := range Calculator.In {
		switch {
		case f.Kind == calc.Choice:
			in = in.With(f.ID, calc.ChoiceOf(f.Options[rnd.IntN(len(f.Options))].ID))
		case f.Optional && rnd.IntN(2) == 0:
			in = in.With(f.ID, calc.Value{})
		default:
			least, most, _ := f.Limits()
			if house, ok := in.HouseAmount(f.ID); ok && rnd.IntN(2) == 0 {
				in = in.With(f.ID, calc.Num(house))
				continue
			}
			x := least.SI + (most.SI-least.SI)*math.Pow(rnd.Float64(), 2)
			if rnd.IntN(10) == 0 {
				x = []float64{least.SI, most.SI}[rnd.IntN(2)]
			}
			in = in.With(f.ID, calc.Num(x))
		}
	}
	return in
}

// Random inputs give a consistent result or a refusal: the verdict follows from
// the pressure, the worked example is short and ends with the printed pressure,
// and the drawing is inside its frame.
func TestAllOverTheInputs(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 8))
	for range 5000 {
		in := anyCase(rnd)
		res := calc.Run(ruled, in)
		if res.State != calc.OK {
			if !calctest.Noted(res, refuseStop) && !calctest.Noted(res, calc.RefusePassing) {
				t.Fatalf("%s: %v", res.State, res.Notes)
			}
			continue
		}
		checkDeed(t, in, res)
		checkSteps(t, res)
		v := calc.Locale{Style: quantity.Style{System: quantity.System(rnd.IntN(2)), Mark: quantity.Mark(rnd.IntN(2))}}
		checkBox(t, Calculator.Draw(v, in, res))
	}
}

func checkDeed(t *testing.T, in calc.Case, res calc.Result) {
	t.Helper()
	local, rating := res.Out.Num("pressure-local"), in.Num("rating")
	deed := res.Out.Choice("deed")
	holding := local <= rating*(1+1e-9)
	switch {
	case !in.Has("rating"):
		if deed != unchecked && !refusedLoad(deed) || res.Out.Has("highest-rise") ||
			res.Out.Has("fluid-limit") || res.Out.Has("not-before") {
			t.Fatalf("unrated: %s", deed)
		}
	case (deed == doRefuse) != calc.Over(in.Num("slump"), calc.SI(7, "in")):
		t.Fatalf("%s at a slump of %v m", deed, in.Num("slump"))
	case refusedLoad(deed) != (deed == doRefuse || calc.Over(in.Num("age"), in.Num("age-most")) ||
		calc.Over(in.Num("temperature"), in.Num("hottest"))):
		t.Fatalf("%s at an age of %v s and %v K", deed, in.Num("age"), in.Num("temperature"))
	case deed == doHouse && !isLooser(in), isLooser(in) && (deed == doGo || deed == doWait || deed == doSlow):
		t.Fatalf("%s with a lift of %v m and a greatest rise of %v m/s", deed, in.Num("lift"), in.Num("rise-house"))
	case (deed == doAsk || deed == doHouse || refusedLoad(deed)) &&
		(res.Out.Has("wait") || res.Out.Has("not-before") || res.Out.Has("fluid-limit")):
		t.Fatal("a plan beside the word to ask first")
	case deed == doGo && !holding:
		t.Fatalf("%s at %v Pa for %v Pa", deed, local, rating)
	case deed == doGo && tooFast(in, res):
		t.Fatalf("%s at %v m/s, house rule %v", deed, res.Out.Num("rise-local"), in.Num("rise-house"))
	case deed == doWait:
		wait := in.With("wait", calc.Num(res.Out.Num("wait")))
		if again := calc.Run(ruled, wait); again.Out.Choice("deed") != doGo {
			t.Fatalf("the wait of %v s gives %s", res.Out.Num("wait"), again.Out.Choice("deed"))
		}
	}
	if res.Out.Has("wait") && res.Out.Num("not-before") > res.Out.Num("back-by")*(1+1e-9) {
		t.Fatalf("not before %v s, back by %v s", res.Out.Num("not-before"), res.Out.Num("back-by"))
	}
	if res.Out.Has("highest-flow") && calc.From(res.Out.Num("highest-flow"), "yd³/h") < 5-1e-9 {
		t.Fatal("a pump rate that no pump runs")
	}
	last := res.Out.Rows("by-depth")[depthRows-1]
	if math.Abs(last.Num("local")-local) > 1e-9*local {
		t.Fatalf("the last depth has %v, the wall %v", last.Num("local"), local)
	}
}

func refusedLoad(deed string) bool { return deed == doRefuse || deed == doTooHot || deed == doTooOld }

// isLooser reports whether an input that is asked for is looser than its house rule.
func isLooser(in calc.Case) bool {
	for _, id := range []string{"lift", "age-most", "joint-most", "hottest", "rise-house"} {
		house, _ := in.HouseAmount(id)
		if (id != "lift" && id != "joint-most" || inLifts(in)) && calc.Over(in.Num(id), house) {
			return true
		}
	}
	return false
}

// The notes agree with the deed: a plan has no warning, a load that is refused and a plan
// that is asked about first have no way to place, and a deed is explained.
func TestNotesAgreeWithTheDeed(t *testing.T) {
	explains := map[string][]calc.Text{
		doGo: {noteGo}, doWait: {helpWait, helpWaitBack}, doMix: {helpMix, helpMixWait},
		doSlow: {helpSlow, noteMeasured, noteTooSlow}, doLifts: {helpLifts, helpNone}, doStop: {helpDepth},
		doShorten: {noteTooLong}, doGuide: {noteGuideBeyond}, doAsk: {noteBelow, noteOutside, noteOutsideOnce},
		doRefuse: {noteWet}, doTooOld: {noteTooOld}, doTooHot: {noteTooHot}, doHouse: {noteHouse},
		unchecked: {askRating},
	}
	ways := []calc.Text{noteGo, helpWait, helpWaitBack, helpMix, helpMixWait, helpSlow, helpLifts,
		helpDepth, helpDepthMix}
	of := map[string][]calc.Text{
		doGo: {noteGo}, doWait: {helpWait, helpWaitBack}, doMix: {helpMix, helpMixWait, helpDepthMix},
		doSlow: {helpSlow}, doLifts: {helpLifts}, doStop: {helpDepth},
	}
	rnd, seen := rand.New(rand.NewPCG(9, 10)), map[string]int{}
	usual, _ := calctest.RunCase(t, Calculator)
	for range 15000 {
		in, wild := usual.With("rating", calc.Num(calc.SI(600+1400*rnd.Float64(), "psf"))), anyCase(rnd)
		for _, f := range Calculator.In {
			if rnd.IntN(6) == 0 {
				in = in.With(f.ID, wild.Value(f.ID))
			}
		}
		res := calc.Run(ruled, in)
		if res.State != calc.OK {
			continue
		}
		deed := res.Out.Choice("deed")
		seen[deed]++
		noted := func(text calc.Text) bool { return calctest.Noted(res, text) }
		if !slices.ContainsFunc(explains[deed], noted) {
			t.Fatalf("%s is not explained: %v", deed, res.Notes)
		}
		for _, way := range ways {
			if noted(way) && !slices.Contains(of[deed], way) {
				t.Fatalf("%s beside “%s”: %v", deed, way.EN(), res.Notes)
			}
		}
		for _, n := range res.Notes {
			if deed == doGo && n.Level <= calc.LevelWarning {
				t.Fatalf("%s with a warning: %v", deed, n)
			}
		}
		if deed == doWait && noted(noteFails) {
			t.Fatalf("%s and do not place: %v", deed, res.Notes)
		}
	}
	for deed := range explains {
		if seen[deed] == 0 {
			t.Errorf("no case of %s", deed)
		}
	}
}

// tooFast reports whether an hour adds more than the house rule.
func tooFast(in calc.Case, res calc.Result) bool {
	rise := res.Out.Num("rise-local")
	if inOneGo(in) {
		rise = math.Min(rise, in.Num("height")/calc.SI(1, "h"))
	}
	return calc.Over(rise, in.Num("rise-house"))
}

func checkSteps(t *testing.T, res calc.Result) {
	t.Helper()
	if len(res.Steps) > 8 {
		t.Fatalf("%d steps", len(res.Steps))
	}
	for _, s := range res.Steps {
		want := res.Out.Num("pressure-local")
		if (s.Formula == pressure.StrictestFormula || s.Formula == pressure.InLiftsFormula) &&
			math.Abs(s.Out-want) > 1e-9*want {
			t.Fatalf("the worked example ends in %v, the result is %v", s.Out, want)
		}
	}
}

// Sentences are short.
func TestTextsFit(t *testing.T) {
	for _, text := range []calc.Text{pressure.FluidCases, noteFirst, noteOutsideOnce, noteFailsNow,
		helpDepthMix, noteByRiseOnly, noteByForm, noteByBoth,
		noteByFormOnly, noteMeasured, noteTooSlow, noteGuideRetype,
		noteTooHot, noteTooOld, noteHouse,
		noteRapid, noteWet, noteCold, noteShaken, noteHot,
		noteSlump, noteChilly, noteFast, noteByRise, noteWarmer, noteOutside, notePlain, noteGo, noteJoint, noteCrossed,
		noteTooLong, noteNoWait,
		noteBelow, noteAgain, noteDeep, noteLate, noteHour, noteBeyond, noteEnds, noteStopped, askRise, askRound,
		askSet, whyStop, refuseStop, askRating, noteFails, noteAny, helpDepth, helpNone,
		helpSlow, helpLifts, helpFluid, helpWait, helpWaitBack, helpSlower, helpTrucks, helpMix, helpMixWait,
		askGuide, askLooser, noteOverRule, noteOverSlow,
		askGuideBoth, noteLifts, noteGuideWithin, noteGuideBeyond, noteGuideLift,
		cautions[0].Text, cautions[1].Text, cautions[2].Text} {
		for _, sentence := range strings.Split(text.EN(), ". ") {
			if n := len(strings.Fields(sentence)); n > 25 {
				t.Errorf("%s: sentence of %d words", text.EN(), n)
			}
		}
	}
}

// Limits written out in texts without slots equal those of the method.
func TestTextsNameTheMethodsLimits(t *testing.T) {
	feet := func(x pressure.Feet) string {
		return strings.TrimSuffix(quantity.Exact(ft(x), displays.Height, us), " ft") + " ft"
	}
	for _, c := range []struct{ in, want string }{
		{pressure.WallSlowFormula.Limits.EN(), feet(pressure.SlowHeight) + " ("},
		{pressure.WallSlowFormula.Limits.EN(), feet(pressure.VibrationDepth) + " ("},
		{pressure.WallSlowFormula.Limits.EN(), quantity.Exact(ftPerH(pressure.SlowRise), displays.RiseTyped, us)},
		{pressure.WallSlowFormula.Limits.EN(), strings.TrimSuffix(quantity.Exact(calc.SI(float64(pressure.MethodSlump),
			"in"), displays.Inches, us), " in") + " in."},
		{pressure.WallFastFormula.Limits.EN(), quantity.Exact(ftPerH(pressure.MethodRise), displays.RiseTyped, us)},
		{tables[0].Note.EN(), "13 ft (4 m)"},
		{pressure.HeavyWeightFormula.Limits.EN(), quantity.Exact(calc.SI(float64(pressure.HeavyAbove), "lb/ft³"),
			displays.UnitWeight, us)},
		{pressure.LightWeightFormula.Limits.EN(), quantity.Exact(calc.SI(float64(pressure.LightBelow), "lb/ft³"),
			displays.UnitWeight, us)},
		{inputField("vibration").Options[0].Label.EN(), feet(pressure.VibrationDepth)},
		{inputField("vibration").Options[0].Label.EN(), quantity.Exact(ft(pressure.MarkedReach), displays.Inches, us)},
	} {
		if !strings.Contains(c.in, c.want) {
			t.Errorf("“%s” does not name %s", c.in, c.want)
		}
	}
}

// Every note has its slots filled, in both systems.
func TestSlotsAreFilled(t *testing.T) {
	for _, typed := range [][]string{
		{}, {"rating=500", "guide-lift=4 ft", "guide-rate=5"}, {"pump-rate=30"},
		slow("slump=8"), slow("temperature=38"),
		slow("temperature=95"), slow("vibration=deep"), slow("height=20'"), slow("height=14'", "rise=14.7",
			"rating=2050"),
		slow("temperature=41", "height=9'"), slow("pump-rate=0.5"), slow("rise=1"), oneGoRated("rating=2100"),
		slow("rating=640"), job("rise-house=0.6"), slow("slump=8", "rating="), slow("age=91 min"),
		job("outside=first"), job("rise=8"), job("rise-house=0.5"), job("height=33 ft"),
		job("pump-rate=15", "cement=blend", "admixture=retards"), job("cement=blend", "admixture=retards"),
		job("pump-rate=15", "rating=600"), job("guide-lift=1 ft", "guide-rate=2"), oneGoRated("outside=first"),
		slow("rating=1200"),
		{"how=once", "length=10", "stop=11"}, oneGoRated(), slow("rise=3.9"), slow("guide-lift=4 ft", "guide-rate=2"),
		job(), job("pump-rate=25"), job("pump-rate=60"), job("pump-rate=60", "how=back"), job("temperature=39"),
		job("temperature=40.5"), job("age=8 h"), job("length=600 ft"),
		job("round=90 min"), job("rise=1"), job("slump=8"), job("set=48 h"),
		job("vibration=unmarked"), job("vibration=again"), job("hose=below"), job("outside=above"),
		job("cement=blend", "admixture=retards", "temperature=50"),
	} {
		res := calctest.Run(t, Calculator, typed...)
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			v := calc.Locale{Style: quantity.Style{System: sys}}
			for _, n := range res.Notes {
				if written := v.Say(n.Text, n.Slots...); strings.ContainsAny(written, "{}") {
					t.Errorf("%v: %s", typed, written)
				}
			}
		}
	}
}

// Every cell of the printed tables has a value, in both systems, and each table
// rises or falls as the method does.
func TestTables(t *testing.T) {
	for _, table := range tables {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			down, across := table.Down.US, table.Across.US
			if sys == quantity.Metric {
				down, across = table.Down.Metric, table.Across.Metric
			}
			grid := make([][]float64, len(down))
			for i, d := range down {
				for _, a := range across {
					entries := append(append([]calc.Entry{}, table.Set...),
						calc.Entry{Path: table.Down.Path, Text: d}, calc.Entry{Path: table.Across.Path, Text: a})
					in, notes := calc.Read(ruled, entries, quantity.Style{System: sys})
					res := calc.Run(ruled, in)
					if len(notes) > 0 || !res.Out.Has(table.Out) {
						t.Fatalf("%s: nothing at %s, %s: %v", table.ID, d, a, notes)
					}
					grid[i] = append(grid[i], res.Out.Num(table.Out))
				}
			}
			for i := 1; i < len(grid); i++ {
				for j := range grid[i] {
					if grid[i][j] < grid[i-1][j] {
						t.Errorf("%s: falls from row %d to %d", table.ID, i, i+1)
					}
				}
			}
		}
	}
}
