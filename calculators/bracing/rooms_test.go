package bracing_test

import (
	"math/rand/v2"
	"testing"

	"coursebook/calculators/bracing/bracelayout"
	"coursebook/calculators/bracing/linerounds"
	"coursebook/calculators/bracing/plumbcheck"
	"coursebook/calculators/bracing/stringline"
	"coursebook/calculators/bracing/windonwall"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

var calculators = []*calc.Calculator{
	bracelayout.Calculator,
	windonwall.Calculator,
	linerounds.Calculator,
	plumbcheck.Calculator,
}

// The values of each printed table ascend down its columns, in both systems.
func TestTablesAscend(t *testing.T) {
	for _, c := range calculators {
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
						entries := append(
							append([]calc.Entry(nil), table.Set...),
							calc.Entry{Path: table.Down.Path, Text: a},
						)
						if b != "" {
							entries = append(entries, calc.Entry{Path: table.Across.Path, Text: b})
						}
						in, notes := calc.Read(calctest.WithRules(c), entries, quantity.Style{System: sys})
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

// The turns are those of the single reading, regardless of the rounds before.
func TestRoundsAgreeWithOneReading(t *testing.T) {
	rng := rand.New(rand.NewPCG(15, 16))
	for range 300 {
		gap, run := 0.005+0.08*rng.Float64(), 1+2*rng.Float64()
		one := calc.NewCase(calctest.WithRules(stringline.Calculator).In).With("foot-distance", calc.Num(run)).
			With("readings", calc.RowsOf(calc.NewCase(columns(stringline.Calculator, "readings")).With("gap",
				calc.Num(gap))))
		many := calc.NewCase(calctest.WithRules(linerounds.Calculator).In).With("foot-distance", calc.Num(run)).
			With("braces", calc.RowsOf(calc.NewCase(columns(linerounds.Calculator, "braces")).With("gap-1",
				calc.Num(0.1*rng.Float64())).With("gap-2", calc.Num(gap))))
		a, b := calc.Run(
			stringline.Calculator,
			one,
		).Out.Num(
			"turns",
		), calc.Run(
			linerounds.Calculator,
			many,
		).Out.Num(
			"turns",
		)
		calctest.Near(t, "turns", a, b, 1e-12)
	}
}

// columns returns the columns of an input of rows.
func columns(c *calc.Calculator, id string) []calc.Field {
	for _, f := range c.In {
		if f.ID == id {
			return f.Cols
		}
	}
	return nil
}
