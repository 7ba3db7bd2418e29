package aggregatesize

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/steel"
)

// The smallest limit governs, and the sieve is the next size below it.
func TestStoneRoundsDown(t *testing.T) {
	for _, c := range []struct {
		most    float64
		in, met float64 // inches, mm; 0 for none
	}{
		{9 * steel.Mm, 0, 0}, {0.375 * steel.Inch, 0.375, 0}, {10 * steel.Mm, 0.375, 10},
		{0.49 * steel.Inch, 0.375, 10}, {0.5 * steel.Inch, 0.5, 10}, {14 * steel.Mm, 0.5, 14},
		{0.75 * steel.Inch, 0.75, 14}, {20 * steel.Mm, 0.75, 20}, {1 * steel.Inch, 1, 25}, {1.49 * steel.Inch, 1, 25},
		{1.5 * steel.Inch, 1.5, 25}, {40 * steel.Mm, 1.5, 40}, {100 * steel.Mm, 1.5, 40},
	} {
		calctest.Near(t, "inch sieve", sieve(inchSizes[:], c.most)/steel.Inch, c.in, 1e-12)
		calctest.Near(t, "metric sieve", sieve(metricSizes[:], c.most)/steel.Mm, c.met, 1e-12)
	}
	for _, c := range []struct {
		typed   []string
		governs string
	}{
		{nil, byGap}, {[]string{"core=4 in"}, byForms}, {[]string{"cover=0.75 in"}, byCover},
		{[]string{"slab=2 in"}, bySlab},
		{[]string{"hose=2.6 in"}, byHose}, {[]string{"hose=2 in"}, bySmall},
		{[]string{"hose=2.6 in", "stone=rounded"}, byGap},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if got := res.Out.Choice("governs"); got != c.governs {
			t.Errorf("%v: %s governs, want %s", c.typed, got, c.governs)
		}
		for _, r := range res.Out.Rows("rules") {
			if r.Num("most") < res.Out.Num("most")*(1-calc.Slack) {
				t.Errorf("%v: %s is tighter than the result", c.typed, r.Choice("rule"))
			}
		}
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{Inputs: "gap=0.45 in", Note: noteTight, Want: true},
		{Inputs: "gap=0.5 in", Note: noteTight, Want: false},
		{Inputs: "hose=2.5 in", Note: noteHose, Want: true},
		{Inputs: "hose=3 in", Note: noteHose, Want: false},
		{Inputs: "core=8 in; gap=2 in", Note: noteLarge, Want: true},
		{Note: noteLarge, Want: false},
		{Inputs: "gap=", Note: askGap, Want: true},
		{Note: askGap, Want: false},
	})
}
