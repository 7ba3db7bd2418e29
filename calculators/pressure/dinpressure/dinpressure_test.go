package dinpressure

import (
	"coursebook/calculators/calc"
	"testing"

	"coursebook/calculators/calctest"
	"coursebook/calculators/pressure"
)

// For wet classes and vibrated forms the ACI result is the fluid head.
func TestACILineBeside(t *testing.T) {
	for _, c := range []struct {
		typed []string
		rule  string
	}{
		{[]string{"class=f3"}, pressure.SetByEquation},
		{[]string{"class=f4"}, pressure.SetByOutside},
		{[]string{"class=scc"}, pressure.SetByOutside},
		{[]string{"way=outside"}, pressure.SetByOutside},
		{[]string{"rise=16"}, pressure.SetByOutside},
		{[]string{"rise=0.5"}, pressure.SetByLeast},
		{[]string{"height=3'"}, pressure.SetByFluid},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		row := res.Out.Rows("methods")[0]
		if row.Choice("rule") != c.rule {
			t.Errorf("%v: %s, want %s", c.typed, row.Choice("rule"), c.rule)
		}
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
		{[]string{"rise=7 m/h"}, rise, false, false},
		{[]string{"rise=7.1 m/h"}, rise, true, true},
		{[]string{"height=10 m"}, height, false, false},
		{[]string{"height=10.1 m"}, height, true, true},
		{[]string{"set=20 h"}, long, false, false},
		{[]string{"set=20.5 h"}, long, true, true},
		{[]string{"set=5 h"}, short, false, false},
		{[]string{"set=4 h"}, short, true, false},
		{[]string{"way=outside"}, way, true, true},
		{[]string{"temperature=60 °F", "set-at=60 °F"}, dinCool, false, false},
		{[]string{"temperature=50 °F", "set-at=60 °F"}, dinCool, true, false},
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
