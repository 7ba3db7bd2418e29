package bracing

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

var more = []*calc.Calculator{BraceLayout, WindOnWall, LineRounds, PlumbCheck}

type noteCase struct {
	inputs string
	key    calc.Text
	at     string
	want   bool
}

// checkNotes finds notes where they must stand and nowhere else.
func checkNotes(t *testing.T, c *calc.Calculator, cases []noteCase) {
	t.Helper()
	for _, k := range cases {
		n, got := calctest.NoteOf(calctest.Try(c, calctest.Inputs(k.inputs)...), k.key)
		if got != k.want || (got && k.at != "" && n.At.String() != k.at) {
			t.Errorf("%s %s: %s is %v at %s, want %v at %s", c.ID, k.inputs, k.key, got, n.At.String(), k.want, k.at)
		}
	}
}

// Worked examples fit a page.
func TestSteps(t *testing.T) {
	for _, c := range more {
		if res := calctest.Run(t, c); res.State != calc.OK || len(res.Steps) > 8 {
			t.Errorf("%s: %v with %d steps", c.ID, res.State, len(res.Steps))
		}
	}
}

// Each printed table can be filled in both systems, and runs one way.
func TestMoreTables(t *testing.T) {
	for _, c := range more {
		for _, table := range c.Tables {
			for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
				down, across := table.Down.US, table.Across.US
				if sys == quantity.Metric {
					down, across = table.Down.Metric, table.Across.Metric
				}
				if table.Across.Path == "" {
					across = []string{""}
				}
				for _, b := range across {
					last := 0.0
					for _, a := range down {
						entries := append(append([]calc.Entry(nil), table.Set...), calc.Entry{Path: table.Down.Path, Text: a})
						if b != "" {
							entries = append(entries, calc.Entry{Path: table.Across.Path, Text: b})
						}
						in, notes := calc.Read(c, entries, quantity.Style{System: sys})
						res := calc.Run(c, in)
						if len(notes) > 0 || res.State != calc.OK {
							t.Fatal(c.ID, table.ID, a, b, notes, res.Notes)
						}
						if got := res.Out.Num(table.Out); got < last || got == 0 {
							t.Errorf("%s %s: %s at %s gives %v after %v", c.ID, table.ID, a, b, got, last)
						} else {
							last = got
						}
					}
				}
			}
		}
	}
}
