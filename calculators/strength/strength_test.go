package strength

import (
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// At the reference temperature equivalent age is age; hotter it is more, and
// more readings of one steady temperature change nothing.
func TestEquivalentAge(t *testing.T) {
	for _, q := range []float64{3000, 5000, 8000} {
		calctest.Near(t, "at the reference", EquivalentAge(q, 296.15, 296.15, 17), 17, 1e-12)
	}
	before := 0.0
	for c := 0.0; c <= 60; c += 5 {
		age := EquivalentAge(5000, c+273.15, 296.15, 24)
		if age <= before {
			t.Errorf("at %v °C the equivalent age falls to %v", c, age)
		}
		before = age
	}
	one := calctest.Run(t, Maturity, "readings=48 h | 60 °F")
	many := calctest.Run(t, Maturity, "readings=0 h | 60 °F; 5 h | 60 °F; 30 h | 60 °F; 48 h | 60 °F")
	for _, id := range []string{"factor", "factor-f", "age", "age-ec", "elapsed", "mean"} {
		calctest.Near(t, id, many.Out.Num(id), one.Out.Num(id), 1e-6)
	}
}

// A ramp has the factor of the area under it: the trapezoid is exact above
// the datum.
func TestRampIsExact(t *testing.T) {
	res := calctest.Run(t, Maturity, "datum=0 °C", "readings=0 h | 10 °C; 40 h | 30 °C")
	calctest.Near(t, "area under the ramp", calc.From(res.Out.Num("factor"), "C°·h"), 800, 1e-9)
	calctest.Near(t, "the same in °F·h", calc.From(res.Out.Num("factor-f"), "F°·h"), 1440, 1e-9)
}

func TestMaturityNotes(t *testing.T) {
	for _, c := range []struct {
		note  calc.Text
		yes   bool
		typed []string
	}{
		{noteSteady, true, []string{"readings=48 h | 60 °F"}},
		{noteSteady, false, nil},
		{noteLate, true, []string{"readings=2 h | 60 °F; 9 h | 70 °F"}},
		{noteLate, false, nil},
		{noteJump, true, []string{"readings=0 h | 60 °F; 9 h | 70 °F; 9 h | 60 °F; 12 h | 60 °F"}},
		{noteJump, false, nil},
		{noteHot, true, []string{"readings=0 h | 20 °C; 9 h | 40.5 °C"}},
		{noteHot, false, []string{"readings=0 h | 20 °C; 9 h | 40 °C"}},
		{noteCold, true, []string{"readings=0 h | 20 °C; 9 h | 31 °F"}},
		{noteCold, false, []string{"readings=0 h | 20 °C; 9 h | 32 °F"}},
		{noteBelow, true, []string{"datum=10 °C", "readings=0 h | 9 °C; 9 h | 9 °C; 20 h | 15 °C"}},
		{noteBelow, false, []string{"datum=10 °C", "readings=0 h | 11 °C; 20 h | 15 °C"}},
		{askCurve, true, []string{"curve=log", "curve-a=-3000"}},
		{askCurve, true, []string{"curve=hyperbolic"}},
		{askCurve, false, nil},
		{askRange, true, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi"}},
		{noteRange, true, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", "curve-to=1000 C°·h"}},
		{noteRange, false, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", "curve-to=5000 C°·h"}},
		{noteNothing, true, []string{"curve=log", "curve-a=-9000 psi", "curve-b=1500 psi", "curve-to=5000 C°·h"}},
	} {
		if res := calctest.Run(t, Maturity, c.typed...); calctest.Noted(res, c.note) != c.yes {
			t.Errorf("%v: note %s: %v", c.typed, c.note.EN(), !c.yes)
		}
	}
}

func TestMaturityRefuses(t *testing.T) {
	if res := calctest.Run(t, Maturity, "readings=0 h | 60 °F; 9 h | 70 °F; 8 h | 60 °F"); res.State != calc.Refused || !calctest.Noted(res, refuseOrder) {
		t.Error("an earlier reading after a later one is taken")
	}
	if res := calctest.Run(t, Maturity, "readings=0 h | 60 °F"); res.State != calc.Refused || !calctest.Noted(res, refuseNoTime) {
		t.Error("no time at all is taken")
	}
}

// No strength stands without a curve, and never one below nothing.
func TestStrengthOnlyByCurve(t *testing.T) {
	if calctest.Run(t, Maturity).Out.Has("strength") {
		t.Error("a strength without a curve")
	}
	hyper := calctest.Run(t, Maturity, "curve=hyperbolic", "curve-limit=5000 psi", "curve-rate=0.01", "readings=200 h | 20 °C", "datum=0 °C")
	// 5000·0.01·4000/(1 + 40) by hand.
	calctest.Near(t, "hyperbolic", calc.From(hyper.Out.Num("strength"), "psi"), 5000*40.0/41, 1e-6)
	none := calctest.Run(t, Maturity, "curve=hyperbolic", "curve-limit=5000 psi", "curve-rate=0.01", "curve-start=5000 C°·h")
	if none.Out.Num("strength") != 0 || !calctest.Noted(none, noteNothing) {
		t.Error("strength before the start of the curve")
	}
}

// Age and share are inverse to each other, and both curves only rise.
func TestGainTurnsRound(t *testing.T) {
	for _, c := range gain209 {
		before := 0.0
		for age := 1.0; age < 400; age *= 1.3 {
			p := Share209(age, c.a, c.b)
			calctest.Near(t, c.id, Age209(p, c.a, c.b), age, 1e-9*age*age)
			if p <= before || p >= 1/c.b {
				t.Errorf("%s at %v days: share %v", c.id, age, p)
			}
			before = p
		}
	}
	for _, c := range gainEC {
		before := 0.0
		for age := 1.0; age < 400; age *= 1.3 {
			p := ShareEC(c.s, age)
			calctest.Near(t, c.id, AgeEC(p, c.s), age, 1e-9*age)
			if p <= before || p >= math.Exp(c.s) {
				t.Errorf("%s at %v days: share %v", c.id, age, p)
			}
			before = p
		}
		calctest.Near(t, "28 days", ShareEC(c.s, 28), 1, 1e-15)
	}
}

func TestGainNotes(t *testing.T) {
	for _, c := range []struct {
		note  calc.Text
		yes   bool
		typed []string
	}{
		{noteEarly, true, []string{"age=2.5 d"}}, {noteEarly, false, []string{"age=3 d"}},
		{noteFull, true, []string{"age=28.5 d"}}, {noteFull, false, []string{"age=28 d"}},
		{noteCool, true, []string{"temperature=14 °C"}}, {noteCool, false, []string{"temperature=15 °C"}},
		{noteWarm, true, []string{"temperature=26 °C"}}, {noteWarm, false, []string{"temperature=25 °C"}},
		{askTemp, true, []string{"temperature="}}, {askTemp, false, nil},
		// Steam-cured Type I tends to 1/0.95, which is 105.3 %.
		{noteNever, true, []string{"target=106 %", "cement=steam-1"}},
		{noteNever, false, []string{"target=105 %", "cement=steam-1"}},
		{noteNever, false, []string{"target=105 %", "cement=moist-1", "class=s"}},
	} {
		res := calctest.Run(t, StrengthGain, c.typed...)
		if calctest.Noted(res, c.note) != c.yes {
			t.Errorf("%v: note %s: %v", c.typed, c.note.EN(), !c.yes)
		}
	}
	if calctest.Run(t, StrengthGain, "target=106 %", "cement=steam-1").Out.Has("time-aci") {
		t.Error("a time for a share that is never reached")
	}
}

// Nothing here is worded as a permission.
func TestTexts(t *testing.T) {
	for _, c := range []*calc.Calculator{Maturity, StrengthGain} {
		for _, f := range append(append([]calc.Field{}, c.In...), c.Out...) {
			for _, g := range append([]calc.Field{f}, f.Cols...) {
				for _, word := range []string{"safe", "allowed", "you may", "ready"} {
					if strings.Contains(strings.ToLower(g.Label.EN()+g.Help.EN()), word) {
						t.Errorf("%s %s says %q", c.ID, g.ID, word)
					}
				}
			}
		}
		if c.Cautions[0].Level != calc.LevelWarning || !strings.Contains(c.Cautions[0].Text.EN(), "engineer") {
			t.Errorf("%s does not open with the engineer's word", c.ID)
		}
	}
}
