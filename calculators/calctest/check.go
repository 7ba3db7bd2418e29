// Package calctest supports the tests of calculators. Check compares a
// calculator with its declaration and with its published values; Run runs
// one on typed inputs; Tank is an invented calculator for tests of other
// packages. Only tests import the package.
package calctest

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/expression"
	"coursebook/calculators/quantity"
)

var us = quantity.Style{System: quantity.US}

// Styles are the styles that readers may choose.
var styles = []quantity.Style{us, {System: quantity.Metric}, {System: quantity.Metric, Mark: quantity.Comma}}

// Check runs every check on one calculator: the declaration, the default case, the
// expressions, random inputs within the limits, the printed texts and tables, and
// the published values. It reports each difference as an error of the test, and
// returns the counts; they are zero if the declaration has a mistake. The
// published values are checked without house rules, so that each row must type the
// inputs that a rule could fill. The test of the catalog calls it for each
// calculator.
func Check(t *testing.T, declared *calc.Calculator) Tally {
	t.Helper()
	declared.RuleFields(func(f calc.Field) {
		if f.Usual != "" {
			t.Errorf("%s: %s has both a usual value and a house rule", declared.ID, f.ID)
		}
	})
	c := WithRules(declared)
	for _, s := range calc.Problems(c) {
		t.Errorf("%s: %s", c.ID, s)
	}
	if t.Failed() {
		return Tally{}
	}
	defaultCase(t, c)
	identities := expressions(t, c)
	anywhere(t, c)
	printed(t, c)
	tally := publishedValues(t, declared)
	tally.Identities = identities
	return tally
}

// defaultCase checks that the default case gives a result, and that its entries
// read back to the same result in every style.
func defaultCase(t *testing.T, c *calc.Calculator) {
	t.Helper()
	for _, style := range styles {
		v := calc.Locale{Style: style}
		res := calc.Run(c, calc.NewCase(c.In))
		if res.State != calc.OK {
			t.Errorf("%s: the default case is %s: %v", c.ID, res.State, res.Notes)
			continue
		}
		in, notes := calc.Read(c, v.Entries(calc.NewCase(c.In)), style)
		for _, n := range notes {
			t.Errorf("%s: typed default: %s: %s", c.ID, n.At, v.Say(n.Text, n.Slots...))
		}
		again := calc.Run(c, in)
		if again.State != calc.OK {
			t.Errorf("%s: the typed default is %s", c.ID, again.State)
		}
		if style == us {
			sameShown(t, c.ID, v, res.Out, again.Out)
		}
		if c.Draw != nil && c.Draw(v, in, res).Empty() {
			t.Errorf("%s: the default case has no drawing", c.ID)
		}
		for _, s := range res.Steps {
			v.Work(s)
		}
	}
}

// sameShown checks that two results are written the same: the example on the
// page must not change when the reader types the values that it shows.
func sameShown(t *testing.T, what string, v calc.Locale, a, b calc.Case) {
	t.Helper()
	for i, f := range a.Fields() {
		if v.Write(f, a.At(i)) != v.Write(f, b.At(i)) {
			t.Errorf("%s: %s is %q as declared and %q as typed", what, f.ID, v.Write(f, a.At(i)), v.Write(f, b.At(i)))
			continue
		}
		for k, row := range a.At(i).Rows {
			sameShown(t, what+" "+f.ID, v, row, b.At(i).Rows[k])
		}
	}
}

// expressions checks that each displayed expression equals its Go function, at
// random points, in each system of units. It returns the number of formulas.
func expressions(t *testing.T, c *calc.Calculator) int {
	t.Helper()
	rnd := rand.New(rand.NewPCG(1, 2))
	for _, f := range c.Formulas {
		tree, err := expression.Parse(f.Expr)
		if err != nil {
			t.Fatal(err)
		}
		compared := 0
		for range 500 {
			v, vars := point(rnd, f)
			want, err := expression.Eval(tree, vars)
			if err != nil {
				t.Fatal(err)
			}
			got := f.Fn.Call(v)
			if math.IsNaN(want) || math.IsInf(want, 0) {
				continue
			}
			compared++
			if math.Abs(got-want) > 1e-12*math.Max(math.Abs(want), 1e-9) {
				t.Errorf("%s %s at %v: function %v, expression %v", c.ID, f.ID, vars, got, want)
				break
			}
			coherent(t, c, f, tree, v, got)
		}
		if compared < 100 {
			t.Errorf("%s %s: only %d points could be compared", c.ID, f.ID, compared)
		}
	}
	return len(c.Formulas)
}

// point returns random values of a formula's variables, in the order of Vars and
// by symbol, in their units: 0.14 to 55, angles 5° to 85°.
func point(rnd *rand.Rand, f *calc.Formula) ([]float64, map[string]float64) {
	v := make([]float64, len(f.Vars))
	vars := map[string]float64{}
	for i, x := range f.Vars {
		v[i] = math.Exp(rnd.Float64()*6 - 2) // 0.14 to 55
		if x.Unit == "°" {
			v[i] = 5 + 80*rnd.Float64()
		}
		vars[x.Symbol] = v[i]
	}
	return v, vars
}

// coherent reports an error if the expression in US units differs from got, the
// result of the function for the values v in SI units. It does nothing for a
// formula with units of one system only.
func coherent(t *testing.T, c *calc.Calculator, f *calc.Formula, tree *expression.Node, v []float64, got float64) {
	if f.Result.US == "" {
		return
	}
	vars := map[string]float64{}
	for i, x := range f.Vars {
		vars[x.Symbol] = v[i]
		if x.US != "" {
			vars[x.Symbol] = calc.From(calc.SI(v[i], x.Unit), x.US)
		}
	}
	us, err := expression.Eval(tree, vars)
	if err != nil {
		t.Fatal(err)
	}
	want := calc.From(calc.SI(got, f.Result.Unit), f.Result.US)
	if math.Abs(us-want) > 1e-9*math.Max(math.Abs(want), 1e-6) {
		t.Errorf("%s %s does not hold in US units: %v, want %v", c.ID, f.ID, us, want)
	}
}
