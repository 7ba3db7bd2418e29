package placing

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

var all = []*calc.Calculator{RateOfRise, TruckSpacing, PourTime, WaterAdded, PumpLine}

// Worked examples fit a page, and each calculator has a table and a drawing.
func TestFits(t *testing.T) {
	for _, c := range all {
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
