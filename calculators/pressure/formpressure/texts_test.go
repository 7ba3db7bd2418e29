package formpressure

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
)

// Sentences are short.
func TestTextsFit(t *testing.T) {
	for _, text := range []calc.Text{pressure.FluidCases, noteFirst, noteOutsideOnce, noteFailsNow,
		helpDepthMix, noteByRiseOnly, noteByForm, noteByBoth,
		noteByFormOnly, noteMeasured, noteTooSlow, noteNoWindow, noteGuideRetype,
		noteTooHot, noteTooOld, noteHouse,
		noteRapid, noteWet, noteShaken, noteHot,
		noteSlump, noteFast, noteByRise, noteWarmer, noteOutside, notePlain, noteGo, noteJoint, noteCrossed,
		noteTooLong, noteNoWait,
		noteBelow, noteAgain, noteDeep, noteLate, noteHour, noteBeyond, noteEnds, noteStopped, askRise, askRound,
		askSet, noteEarlySet, noteSetFlips, noteSetWait, noteSetSlow, notePause, noteLongPause, noteHeads, noteClass,
		whyStop, refuseStop, askRating, noteFails, noteAny, helpDepth, helpNone,
		helpSlow, helpLifts, helpFluid, helpWait, helpWaitBack, helpSlower, helpSlowerWait, noteNoSlower,
		helpTrucks, helpMix, helpMixWait,
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
		job("wait=3 min", "pump-rate=15"), oneGoRated("set=1 h", "pump-rate=0.5", "rating=1000"),
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
		pressure.RisesTooFast:  {quantity.Format(ftPerH(pressure.MethodRiseSI), displays.RiseAtMost, us), "4.48 m/h"},
		pressure.BeyondMethod:  {at(pressure.DINHeight, 1, " m"), "32.8 ft"},
	} {
		for _, word := range words {
			if !strings.Contains(said, word) {
				t.Errorf("%s: no “%s”", cause, word)
			}
		}
	}
	for _, typed := range []string{"hose=below", "vibration=again", "outside=above", "vibration=deep",
		"set=20.5 h", "pump-rate=60", "height=33 ft"} {
		res := calctest.Run(t, Calculator, job(typed)...)
		if res.Out.Choice("rule") != string(pressure.Fluid) {
			t.Errorf("%s: decided by %s", typed, res.Out.Choice("rule"))
		}
	}
}

// The answer itself says that the form maker's guide is missing.
func TestMissingGuideIsSeen(t *testing.T) {
	res := calctest.Run(t, Calculator, job("guide-gives=unread", "rating=1350")...)
	if res.Out.Choice("deed") != doUnguided || res.Out.Choice("guide") != guideNone || !calctest.Noted(res, askGuide) ||
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
