package ciriapressure

import (
	"coursebook/calculators/pressure"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func TestRefusesALowForm(t *testing.T) {
	res := calctest.Run(t, Calculator, "height=10'", "form-height=9'")
	if res.State != calc.Refused || !calctest.Noted(res, form) {
		t.Errorf("%s: %v", res.State, res.Notes)
	}
	if !Calculator.Draw(calc.Locale{}, calc.NewCase(Calculator.In), res).Empty() {
		t.Error("a refused result is drawn")
	}
}

// Each note is given exactly where its limit is crossed, and beyond a limit of
// the method the full fluid head applies.
func TestLimitsOfMethod(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		note    calc.Text
		noted   bool
		outside bool
	}{
		{[]string{"temperature=5 °C"}, cold, false, false},
		{[]string{"temperature=4.9 °C"}, cold, true, true},
		{[]string{"temperature=30 °C"}, hot, false, false},
		{[]string{"temperature=31 °C"}, hot, true, false},
		{[]string{"way=below"}, way, true, true},
		{[]string{"class=scc"}, way, true, true},
		{[]string{"rise=9 m/h", "height=2.9 m", "form-height=2.9 m"}, ciriaFills, true, false},
		{[]string{"rise=9 m/h", "height=2.9 m", "form-height=3.1 m"}, ciriaFills, false, false},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if calctest.Noted(res, c.note) != c.noted || (res.Out.Choice("rule") == pressure.SetByOutside) != c.outside {
			t.Errorf("%v: noted %v, rule %s", c.typed, calctest.Noted(res, c.note), res.Out.Choice("rule"))
		}
		if c.outside && res.Out.Num("pressure") != res.Out.Num("head") {
			t.Errorf("%v: not the fluid head", c.typed)
		}
	}
}
