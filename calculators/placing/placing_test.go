package placing

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/proof"
	"coursebook/calculators/quantity"
)

var all = []*calc.Calculator{RateOfRise, TruckSpacing, PourTime, WaterAdded, PumpLine}

func TestCalculators(t *testing.T) {
	for _, c := range all {
		t.Run(c.ID, func(t *testing.T) { proof.Calculator(t, c, "../../testdata/published") })
	}
}

// run types inputs, path=text, over the default case.
func run(t *testing.T, c *calc.Calculator, inputs ...string) calc.Result {
	t.Helper()
	_, res := proof.Command(c, inputs...)
	if res.State == calc.Bad {
		t.Fatalf("%s %v: %v", c.ID, inputs, res.Notes)
	}
	return res
}

func near(t *testing.T, what string, got, want, rel float64) {
	t.Helper()
	if math.Abs(got-want) > rel*math.Max(math.Abs(want), 1e-12) {
		t.Errorf("%s: %v, want %v", what, got, want)
	}
}

// Labels and help lines must fit a phone.
func TestFits(t *testing.T) {
	var fields func(c *calc.Calculator, list []calc.Field)
	fields = func(c *calc.Calculator, list []calc.Field) {
		for _, f := range list {
			if n := len([]rune(f.Label.EN())); n > 28 {
				t.Errorf("%s %s: label of %d letters", c.ID, f.ID, n)
			}
			if n := len([]rune(f.Help.EN())); n > 80 {
				t.Errorf("%s %s: help of %d letters", c.ID, f.ID, n)
			}
			fields(c, f.Cols)
		}
	}
	for _, c := range all {
		fields(c, c.In)
		fields(c, c.Out)
		if res := calc.Run(c, calc.NewCase(c.In)); len(res.Steps) > 8 {
			t.Errorf("%s: %d steps", c.ID, len(res.Steps))
		}
		if len(c.Tables) == 0 || len(c.Cautions) > 3 || c.Draw == nil {
			t.Errorf("%s: tables, cautions or drawing", c.ID)
		}
	}
}

// Every cell of the printed tables has a value in each system of units.
func TestTables(t *testing.T) {
	for _, c := range all {
		for _, table := range c.Tables {
			for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
				for _, a := range texts(table.Down, sys) {
					for _, b := range texts(table.Across, sys) {
						entries := append([]calc.Entry{}, table.Set...)
						entries = append(entries, calc.Entry{Path: table.Down.Path, Text: a}, calc.Entry{Path: table.Across.Path, Text: b})
						in, notes := calc.Read(c, entries, quantity.Style{System: sys})
						if len(notes) > 0 {
							t.Fatalf("%s %s: %v", c.ID, table.ID, notes)
						}
						if res := calc.Run(c, in); !res.Out.Has(table.Out) {
							t.Errorf("%s %s at %s, %s is empty", c.ID, table.ID, a, b)
						}
					}
				}
			}
		}
	}
}

func texts(a calc.Axis, sys quantity.System) []string {
	if sys == quantity.Metric && a.Metric != nil {
		return a.Metric
	}
	return a.US
}
