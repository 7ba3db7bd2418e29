package geometry

import (
	"slices"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

// Every printed table is whole, and worked examples fit a page.
func TestPrintedTables(t *testing.T) {
	for _, c := range []*calc.Calculator{FootingVolume, RadiusWall, CourseTakeOff, Squaring} {
		t.Run(c.ID, func(t *testing.T) {
			checkTables(t, c)
			if res := calc.Run(c, calc.NewCase(c.In)); len(res.Steps) > 8 {
				t.Errorf("the worked example has %d steps", len(res.Steps))
			}
		})
	}
}

// expect runs a calculator and wants exactly these notes, in this order.
func expect(t *testing.T, c *calc.Calculator, want []calc.Text, inputs ...string) calc.Result {
	t.Helper()
	res := calctest.Run(t, c, inputs...)
	var got []calc.Text
	for _, n := range res.Notes {
		got = append(got, n.Text)
	}
	if !slices.Equal(got, want) {
		t.Errorf("%s %q: notes %q, want %q", c.ID, inputs, got, want)
	}
	return res
}

func refused(t *testing.T, c *calc.Calculator, at string, inputs ...string) {
	t.Helper()
	res := calctest.Run(t, c, inputs...)
	if res.State != calc.Refused || res.Notes[len(res.Notes)-1].At.String() != at {
		t.Errorf("%s %q: %s %v, want a refusal at %s", c.ID, inputs, res.State, res.Notes, at)
	}
}

// checkTables wants an answer in every cell of every printed table, in each
// system of units.
func checkTables(t *testing.T, c *calc.Calculator) {
	t.Helper()
	for _, table := range c.Tables {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			down, across := table.Down.US, table.Across.US
			if sys == quantity.Metric && table.Down.Metric != nil {
				down = table.Down.Metric
			}
			if sys == quantity.Metric && table.Across.Metric != nil {
				across = table.Across.Metric
			}
			if len(down) > 7 || len(across) > 6 {
				t.Errorf("table %s is too large to print", table.ID)
			}
			for _, a := range down {
				for _, b := range across {
					entries := append(append([]calc.Entry(nil), table.Set...), calc.Entry{Path: table.Down.Path, Text: a}, calc.Entry{Path: table.Across.Path, Text: b})
					in, notes := calc.Read(c, entries, quantity.Style{System: sys})
					if res := calc.Run(c, in); len(notes) > 0 || res.State != calc.OK || !res.Out.Has(table.Out) {
						t.Errorf("table %s at %s, %s: %v %s", table.ID, a, b, notes, res.State)
					}
				}
			}
		}
	}
}
