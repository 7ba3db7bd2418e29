package maturity

import (
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/strength"
)

// At the reference temperature the equivalent age is the age, above it is more;
// more readings of a constant temperature change nothing.
func TestEquivalentAge(t *testing.T) {
	for _, q := range []float64{3000, 5000, 8000} {
		calctest.Near(t, "at the reference", strength.EquivalentAge(q, 296.15, 296.15, 17), 17, 1e-12)
	}
	before := 0.0
	for c := 0.0; c <= 60; c += 5 {
		age := strength.EquivalentAge(5000, c+273.15, 296.15, 24)
		if age <= before {
			t.Errorf("at %v °C the equivalent age falls to %v", c, age)
		}
		before = age
	}
	one := calctest.Run(t, Calculator, "readings=48 h | 60 °F")
	many := calctest.Run(t, Calculator, "readings=0 h | 60 °F; 5 h | 60 °F; 30 h | 60 °F; 48 h | 60 °F")
	for _, id := range []string{"factor", "factor-f", "age", "age-ec", "elapsed", "mean"} {
		calctest.Near(t, id, many.Out.Num(id), one.Out.Num(id), 1e-6)
	}
}

// The factor of a ramp is the area under it: the trapezoid is exact above the
// datum.
func TestRampIsExact(t *testing.T) {
	res := calctest.Run(t, Calculator, "datum=0 °C", "readings=0 h | 10 °C; 40 h | 30 °C")
	calctest.Near(t, "area under the ramp", calc.From(res.Out.Num("factor"), "C°·h"), 800, 1e-9)
	calctest.Near(t, "the same in °F·h", calc.From(res.Out.Num("factor-f"), "F°·h"), 1440, 1e-9)
}

// steady returns readings of one temperature, no more than 24 h apart, as typed.
func steady(hours int, temperature string) string {
	var b strings.Builder
	b.WriteString("readings=")
	for h := 0; h < hours; h += 24 {
		b.WriteString(strconv.Itoa(h) + " h | " + temperature + "; ")
	}
	b.WriteString(strconv.Itoa(hours) + " h | " + temperature)
	return b.String()
}

func TestNotes(t *testing.T) {
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
		{noteBelow, true, []string{"readings=72 h | 32 °F"}},
		{noteBelow, false, []string{"datum=10 °C", "readings=0 h | 11 °C; 20 h | 15 °C"}},
		{noteFar, true, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", "curve-to=5000 C°·h",
			"readings=0 h | 60 °F; 25 h | 60 °F"}},
		{noteFar, false, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", "curve-to=5000 C°·h",
			"readings=0 h | 60 °F; 24 h | 60 °F"}},
		{askCurve, true, []string{"curve=log", "curve-a=-3000"}},
		{askCurve, true, []string{"curve=hyperbolic"}},
		{askCurve, false, nil},
		{askRange, true, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi"}},
		{noteRange, true, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", "curve-to=1000 C°·h"}},
		{noteRange, false, []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", "curve-to=5000 C°·h"}},
		{noteNothing, true, []string{"curve=log", "curve-a=-9000 psi", "curve-b=1500 psi", "curve-to=5000 C°·h"}},
	} {
		if res := calctest.Run(t, Calculator, c.typed...); calctest.Noted(res, c.note) != c.yes {
			t.Errorf("%v: note %s: %v", c.typed, c.note.EN(), !c.yes)
		}
	}
}

func TestRefusals(t *testing.T) {
	res := calctest.Run(t, Calculator, "readings=0 h | 60 °F; 9 h | 70 °F; 8 h | 60 °F")
	if res.State != calc.Refused || !calctest.Noted(res, refuseOrder) {
		t.Error("an earlier reading after a later one is accepted")
	}
	if res := calctest.Run(t, Calculator, "readings=0 h | 60 °F"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseNoTime) {
		t.Error("readings without duration are accepted")
	}
}

// No strength is given past the largest factor tested, and no reading is accepted
// past the end of the equations.
func TestNothingIsExtrapolated(t *testing.T) {
	curve := []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi", steady(100, "20 °C"), "datum=0 °C"}
	for to, want := range map[string]bool{"1999": false, "2000": true, "5000": true} {
		if res := calctest.Run(t, Calculator, append(curve, "curve-to="+to+" "+
			"C°·h")...); res.Out.Has("strength") != want {
			t.Errorf("a curve tested to %s: strength given is %v", to, !want)
		}
	}
	if res := calctest.Try(Calculator, "readings=24 h | 200 °F"); res.State != calc.Bad {
		t.Errorf("200 °F is accepted: %s", res.State)
	}
}

// No strength is given without a curve, and none below 0.
func TestStrengthOnlyByCurve(t *testing.T) {
	if calctest.Run(t, Calculator).Out.Has("strength") {
		t.Error("a strength without a curve")
	}
	hyper := calctest.Run(
		t,
		Calculator,
		"curve=hyperbolic",
		"curve-limit=5000 psi",
		"curve-rate=0.01",
		"curve-to=5000 C°·h",
		steady(200, "20 °C"),
		"datum=0 °C",
	)
	// 5000·0.01·4000/(1 + 40) by hand.
	calctest.Near(t, "hyperbolic", calc.From(hyper.Out.Num("strength"), "psi"), 5000*40.0/41, 1e-6)
	none := calctest.Run(
		t,
		Calculator,
		"curve=hyperbolic",
		"curve-limit=5000 psi",
		"curve-rate=0.01",
		"curve-start=5000 C°·h",
		"curve-to=5000 C°·h",
	)
	if none.Out.Num("strength") != 0 || !calctest.Noted(none, noteNothing) {
		t.Error("strength before the start of the curve")
	}
}

// Concrete that was frozen or at its datum has no equivalent age and no strength.
// Readings more than 24 h apart, or a curve without an end, give no strength.
func TestNoNumberWithoutTheMethod(t *testing.T) {
	curve := []string{"curve=log", "curve-a=-3000 psi", "curve-b=1500 psi"}
	const end = "curve-to=90000 C°·h"
	for _, c := range []struct {
		typed         []string
		age, strength bool
	}{
		{[]string{steady(72, "60 °F"), end}, true, true},
		{[]string{steady(72, "25 °F"), end}, false, false},
		{[]string{steady(72, "32 °F"), end}, false, false},
		{[]string{steady(72, "25 °F"), "datum=-10 °C", end}, false, false},
		{[]string{steady(72, "45 °F"), "datum=10 °C", end}, false, false},
		{[]string{"readings=0 h | 60 °F; 12 h | 31 °F; 24 h | 60 °F", end}, false, false},
		{[]string{"readings=0 h | 60 °F; 12 h | 32 °F; 24 h | 60 °F", end}, false, false},
		{[]string{"readings=0 h | 60 °F; 720 h | 60 °F", end}, true, false},
		{[]string{"readings=720 h | 60 °F", end}, true, false},
		{[]string{"readings=0 h | 60 °F; 24 h | 60 °F; 49 h | 60 °F", end}, true, false},
		{[]string{steady(72, "60 °F")}, true, false},
	} {
		out := calctest.Run(t, Calculator, append(append([]string{}, curve...), c.typed...)...).Out
		if out.Has("age") != c.age || out.Has("age-ec") != c.age || out.Has("strength") != c.strength {
			t.Errorf("%v: age %v, strength %v", c.typed, out.Has("age"), out.Has("strength"))
		}
		for _, row := range out.Rows("intervals") {
			if row.Has("age") != c.age {
				t.Errorf("%v: an interval has an age: %v", c.typed, !c.age)
			}
		}
	}
}
