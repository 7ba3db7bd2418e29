package calctest

import (
	"math"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Tally counts the comparisons of a calculator.
type Tally struct {
	ByStatus   map[string]int // rows of published values, by status
	Identities int            // expressions compared with their functions
	Largest    float64        // greatest deviation of a row, in units of its tolerance
}

// publishedValues compares all published rows of a calculator and returns the
// counts. It reports a mismatch, and a file that is missing or cannot be read, as
// an error of the test.
func publishedValues(t *testing.T, c *calc.Calculator) Tally {
	t.Helper()
	tally := Tally{ByStatus: map[string]int{}}
	rows, err := Published(c)
	if err != nil {
		t.Error(err)
		return tally
	}
	for _, r := range rows {
		tally.ByStatus[r.Status]++
		tally.Largest = math.Max(tally.Largest, check(t, c, r))
	}
	return tally
}

// check compares one row and returns the deviation in units of its tolerance. It
// reports a mismatch, a refused input or a missing output as an error of the test;
// the last two give 0.
func check(t *testing.T, c *calc.Calculator, r Row) float64 {
	t.Helper()
	if id := r.Formula(); id != "" {
		return checkFormula(t, c, r, id)
	}
	in, notes := calc.Read(c, r.Inputs, us)
	for _, n := range notes {
		t.Errorf("%s %s: %s: %s", c.ID, r.ID, n.At, calc.Locale{Style: us}.Say(n.Text, n.Slots...))
	}
	if len(notes) > 0 {
		return 0
	}
	res := calc.Run(c, in)
	if res.State != calc.OK {
		t.Errorf("%s %s: %s: %v", c.ID, r.ID, res.State, res.Notes)
		return 0
	}
	f, v := find(res.Out, r.Output)
	if f.ID == "" || !v.Set {
		t.Errorf("%s %s: there is no output %s", c.ID, r.ID, r.Output)
		return 0
	}
	if f.Kind == calc.Choice {
		if (v.Word == r.Printed) == r.Differs() {
			t.Errorf("%s %s: %s, published %s", c.ID, r.ID, v.Word, r.Printed)
		}
		return 0
	}
	return compare(t, c, r, f, v.Num)
}

// checkFormula is check for a row of the formula id, whose inputs are named by
// symbol.
func checkFormula(t *testing.T, c *calc.Calculator, r Row, id string) float64 {
	f := c.Formula(id)
	if f == nil {
		t.Errorf("%s %s: there is no formula %s", c.ID, r.ID, id)
		return 0
	}
	values := make([]float64, len(f.Vars))
	for i, x := range f.Vars {
		k := slices.IndexFunc(r.Inputs, func(e calc.Entry) bool { return e.Path == x.Symbol })
		if k < 0 {
			t.Errorf("%s %s: no value for %s", c.ID, r.ID, x.Symbol)
			return 0
		}
		display := quantity.Display{Dim: quantity.Number}
		if u, ok := quantity.Find(x.Unit); ok && x.Unit != "" {
			display = quantity.Display{Dim: u.Dim, US: quantity.UnitDisplay{Unit: x.Unit}}
		}
		si, err := quantity.Parse(r.Inputs[k].Text, display, us)
		if err != nil {
			t.Errorf("%s %s: %s: %v", c.ID, r.ID, x.Symbol, err)
			return 0
		}
		values[i] = si
	}
	return compare(t, c, r, calc.Field{}, f.Value(values...))
}

// compare returns the deviation of a computed value, in SI, and reports a mismatch
// as an error of the test.
func compare(t *testing.T, c *calc.Calculator, r Row, f calc.Field, si float64) float64 {
	t.Helper()
	deviation, err := r.Compare(f, si)
	if err != nil {
		t.Errorf("%s %v", c.ID, err)
	}
	return deviation
}

// find returns the output at a path and its value; zero values if there is none.
func find(out calc.Case, path string) (calc.Field, calc.Value) {
	parts := strings.Split(path, ".")
	for i, f := range out.Fields() {
		if f.ID != parts[0] {
			continue
		}
		if len(parts) == 1 {
			return f, out.At(i)
		}
		for k, row := range out.At(i).Rows {
			for j, col := range row.Fields() {
				if calc.Cell(f.ID, k+1, col.ID).String() == path {
					return col, row.At(j)
				}
			}
		}
	}
	return calc.Field{}, calc.Value{}
}
