package formpressure

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
)

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
		checkDeed(t, worst(in), res)
		if refusedLoad(res.Out.Choice("deed")) {
			checkNothingBelow(t, res)
			continue
		}
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
	case refusedLoad(deed) != (deed == doRefuse || calc.Under(in.Num("slump"), calc.SI(4.5, "in")) ||
		calc.Under(in.Num("temperature"), leastFor(in)) || calc.Over(in.Num("age"), heldTo(in, "age-most")) ||
		calc.Over(in.Num("temperature"), heldTo(in, "hottest"))):
		t.Fatalf("%s at an age of %v s and %v K", deed, in.Num("age"), in.Num("temperature"))
	case deed == doHouse && !isLooser(in), isLooser(in) && (isWithin(deed) || deed == doWait || deed == doSlow):
		t.Fatalf("%s with a lift of %v m and a greatest rise of %v m/s", deed, in.Num("lift"), in.Num("rise-house"))
	case (deed == doAsk || deed == doHouse || refusedLoad(deed)) &&
		(res.Out.Has("wait") || res.Out.Has("not-before") || res.Out.Has("fluid-limit")):
		t.Fatal("a plan beside the word to ask first")
	case in.Choice("rating-is") != ratingWorking &&
		(isWithin(deed) || res.Out.Has("wait") || res.Out.Has("fluid-limit") || res.Out.Has("highest-rise")):
		t.Fatalf("%s on a rating that is %s", deed, in.Choice("rating-is"))
	case deed == doGo && !in.Has("guide-lift") && in.Choice("guide-gives") != guideSilent:
		t.Fatal("the guide is not entered, and the answer does not say so")
	case isWithin(deed) && !holding:
		t.Fatalf("%s at %v Pa for %v Pa", deed, local, rating)
	case isWithin(deed) && tooFast(in, res):
		t.Fatalf("%s at %v m/s, house rule %v", deed, res.Out.Num("rise-local"), in.Num("rise-house"))
	case deed == doWait:
		wait := in.With("wait", calc.Num(res.Out.Num("wait")))
		again := calc.Run(ruled, wait)
		stop := calc.Over(res.Out.Num("wait"), heldTo(in, "pause-most")) && again.Out.Choice("deed") == doWait &&
			again.Out.Num("wait") == res.Out.Num("wait") // a stop after each pass stays one
		if !isWithin(again.Out.Choice("deed")) && !stop {
			t.Fatalf("the wait of %v s gives %s", res.Out.Num("wait"), again.Out.Choice("deed"))
		}
	}
	if res.Out.Has("wait") && res.Out.Num("not-before") > res.Out.Num("back-by")*(1+1e-9) {
		t.Fatalf("not before %v s, back by %v s", res.Out.Num("not-before"), res.Out.Num("back-by"))
	}
	if res.Out.Has("highest-flow") && calc.From(res.Out.Num("highest-flow"), "yd³/h") < 5-1e-9 {
		t.Fatal("a pump rate that no pump runs")
	}
	if refusedLoad(deed) {
		return
	}
	last := res.Out.Rows("by-depth")[depthRows-1]
	if math.Abs(last.Num("local")-local) > 1e-9*local {
		t.Fatalf("the last depth has %v, the wall %v", last.Num("local"), local)
	}
}

// isWithin reports whether the deed is one of a plan within the rating.
func isWithin(deed string) bool { return deed == doGo || deed == doUnguided || deed == doWritten }

// leastFor is the least temperature in K of a load for the core: 55 °F below 12 in., else 50 °F.
func leastFor(in calc.Case) float64 {
	if calc.Under(in.Num("thickness"), calc.SI(12, "in")) {
		return calc.SI(55, "°F")
	}
	return calc.SI(50, "°F")
}

// heldTo is an input, or the amount of its house rule where that is less.
func heldTo(in calc.Case, id string) float64 {
	house, _ := in.HouseAmount(id)
	return math.Min(in.Num(id), house)
}

func refusedLoad(deed string) bool {
	return slices.Contains([]string{doRefuse, doTooStiff, doTooCold, doTooHot, doTooOld}, deed)
}

// isLooser reports whether an input that is asked for is looser than its house rule.
func isLooser(in calc.Case) bool {
	for _, id := range []string{"lift", "rise-house"} {
		house, _ := in.HouseAmount(id)
		if (id != "lift" || inLifts(in)) && calc.Over(in.Num(id), house) {
			return true
		}
	}
	return false
}

// The notes agree with the deed: a plan has no warning, a load that is refused and a plan
// that is asked about first have no way to place, and a deed is explained.
func TestNotesAgreeWithTheDeed(t *testing.T) {
	explains := map[string][]calc.Text{
		doGo: {noteGo}, doUnguided: {noteGo}, doWritten: {noteSetFlips}, doWait: {helpWait, helpWaitBack},
		doMix:   {helpMix, helpMixWait},
		doSlow:  {helpSlow, helpSlower, helpSlowerWait, noteNoSlower, noteMeasured, noteTooSlow},
		doLifts: {helpLifts, helpNone}, doStop: {helpDepth},
		doShorten: {noteTooLong, noteNoWindow}, doGuide: {noteGuideBeyond},
		doAsk:    {noteNotKnown, noteTestFigure, noteBelow, noteOutside, noteOutsideOnce},
		doRefuse: {noteWet}, doTooOld: {noteTooOld}, doTooHot: {noteTooHot}, doTooCold: {noteTooCold},
		doTooStiff: {noteTooStiff}, doLess: {noteTooLongWait},
		unchecked: {askRating},
	}
	ways := []calc.Text{noteGo, helpWait, helpWaitBack, helpMix, helpMixWait, helpSlow, helpLifts,
		helpDepth, helpDepthMix}
	of := map[string][]calc.Text{
		doGo: {noteGo}, doUnguided: {noteGo}, doWait: {helpWait, helpWaitBack},
		doMix:  {helpMix, helpMixWait, helpDepthMix},
		doSlow: {helpSlow}, doLifts: {helpLifts}, doStop: {helpDepth},
	}
	rnd, seen := rand.New(rand.NewPCG(9, 10)), map[string]int{}
	usual, _ := calctest.RunCase(t, Calculator)
	for range 15000 {
		rating := calc.Num(calc.SI(600+1400*rnd.Float64(), "psf"))
		in := usual.With("rating-is", calc.ChoiceOf(ratingWorking)).With("rating", rating)
		wild := anyCase(rnd)
		for _, f := range Calculator.In {
			if rnd.IntN(6) == 0 {
				in = in.With(f.ID, wild.Value(f.ID))
			}
		}
		res := calc.Run(ruled, in)
		if res.State != calc.OK {
			continue
		}
		deed := paceOf(res)
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
			if isWithin(deed) && n.Level <= calc.LevelWarning {
				t.Fatalf("%s with a warning: %v", deed, n)
			}
		}
		if noted(noteOverRule) && !calc.Over(res.Out.Num("rise-local"), in.Num("rise-house")) && !in.Has("guide-rate") {
			t.Fatalf("%s over the rule at %v m/s: %v", deed, res.Out.Num("rise-local"), res.Notes)
		}
		if within(deed) && in.Has("set") != res.Out.Has("pressure-estimate") &&
			calc.Under(in.Num("set"), calc.SI(5, "h")) {
			t.Fatalf("%s, a set of %v s: no word on our estimate", deed, in.Num("set"))
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
	if len(res.Steps) > 9 { // light concrete, rated, in one go: the formula of its weight is one more
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

// What is not answered counts as the worst that may go in, and is asked for: no answer in
// its place gives a higher pressure.
func TestUnansweredCountsAsWorst(t *testing.T) {
	rnd := rand.New(rand.NewPCG(13, 1))
	pressureOf := func(res calc.Result) float64 { return res.Out.Num("pressure-local") }
	compared := 0
	for range 3000 {
		in := anyCase(rnd).With("how", calc.ChoiceOf(around)).With("hose", calc.ChoiceOf(fromTop)).
			With("outside", calc.ChoiceOf(outsideNone))
		if v := in.Choice("vibration"); v != marked && v != unmarked {
			in = in.With("vibration", calc.ChoiceOf(marked))
		}
		answered := calc.Run(ruled, worst(in))
		open := in
		for _, id := range []string{"vibration", "temperature", "slump", "age"} {
			open = open.With(id, calc.Value{})
		}
		res := calc.Run(ruled, open.With("reach", calc.Value{}))
		if answered.State != calc.OK || refusedLoad(answered.Out.Choice("deed")) || res.State != calc.OK {
			continue
		}
		compared++
		for _, ask := range []calc.Text{askVibration, askTemperature, askSlump, askAge} {
			if !calctest.Noted(res, ask) {
				t.Fatalf("not asked: %s", ask)
			}
		}
		if pressureOf(answered) > pressureOf(res)*(1+1e-9) {
			t.Fatalf("answered %v, not answered %v: %v", pressureOf(answered), pressureOf(res), in)
		}
	}
	if compared < 100 {
		t.Fatalf("only %d cases", compared)
	}
}
