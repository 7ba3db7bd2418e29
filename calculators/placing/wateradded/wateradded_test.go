package wateradded

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The ranges of other printed rules lie within the range for unknown air.
func TestStrengthRangeHoldsOtherRules(t *testing.T) {
	for _, c := range []struct {
		source string
		inputs []string
		lost   float64 // Pa
	}{
		{"Concrete Construction, excess water: 4 to 7 in of slump costs about 800 psi",
			[]string{"load=9 yd³", "water=27 US gal", "slump=4 in"}, calc.SI(800, "psi")},
		{"notes page: 4 L/m³ cost 1.5 MPa", []string{"load=1 m³", "water=4 L"}, 1.5e6},
		{"notes page: 4 L/m³ cost 2 MPa", []string{"load=1 m³", "water=4 L"}, 2e6},
		{"concrete magazine's 200 psi for 1 gal/yd³", []string{"load=9 yd³", "water=9 US gal"}, calc.SI(200, "psi")},
	} {
		out := calctest.Run(t, Calculator, append(c.inputs, "air=unknown")...).Out
		if c.lost < out.Num("strength-least") || c.lost > out.Num("strength-most") {
			t.Errorf("%s: outside %v to %v Pa", c.source, out.Num("strength-least"), out.Num("strength-most"))
		}
	}
}

func TestTicket(t *testing.T) {
	for _, c := range []struct{ water, withheld, want string }{
		{"5 US gal", "9 US gal", within}, {"9 US gal", "9 US gal", within}, {"9.1 US gal", "9 US gal", beyond},
		{"1 US gal", "0 US gal", none}, {"1 US gal", "", none},
	} {
		res := calctest.Run(t, Calculator, "water="+c.water, "withheld="+c.withheld)
		if got := res.Out.Choice("verdict"); got != c.want || calctest.Noted(res, noteTooMuch) != (c.want == beyond) ||
			calctest.Noted(res, noteNone) != (c.want == none) {
			t.Errorf("%s of %s: %s, %v", c.water, c.withheld, got, res.Notes)
		}
		if (res.Out.Num("too-much") > 0) != (c.want != within) {
			t.Errorf("%s of %s: %v too much", c.water, c.withheld, res.Out.Num("too-much"))
		}
	}
	for _, missing := range []string{"cement=", "ratio="} {
		if calctest.Run(t, Calculator, missing).Out.Has("ratio-after") {
			t.Error("a ratio without", missing)
		}
	}
}

// Water up to the amount withheld never exceeds the design ratio; one gallon more
// in each yard of a 564 lb mix adds 8.34/564.
func TestRatio(t *testing.T) {
	ratio := func(water string) float64 {
		return calctest.Run(
			t,
			Calculator,
			"load=9 yd³",
			"water="+water,
			"withheld=9 US gal",
			"cement=564 lb/yd³",
			"ratio=0.5",
		).Out.Num(
			"ratio-after",
		)
	}
	calctest.NearBy(t, "all withheld water", ratio("9 US gal"), 0.5, 1e-12)
	calctest.NearBy(t, "a gallon more in each yard", ratio("18 US gal"), 0.5+8.34/564, 1e-12)
	if ratio("4 US gal") >= 0.5 {
		t.Error("water withheld does not lower the ratio")
	}
}

// Water by which the slump may pass the limit is never within, however much was withheld:
// 9 gal in 9 yd³ bring up to 1-1/4 in.
func TestNeverWithinPastTheSlump(t *testing.T) {
	for _, c := range []struct{ slump, limit, want string }{
		{"5 3/4 in", "7 in", within}, {"5.8 in", "7 in", wet}, {"7 in", "7 in", wet}, {"9 in", "7 in", wet},
		{"5 in", "6 1/4 in", within}, {"5 in", "6 in", wet},
	} {
		res := calctest.Run(t, Calculator, "load=9 yd³", "water=9 US gal", "withheld=20 US gal", "slump="+c.slump,
			"limit="+c.limit)
		if got := res.Out.Choice("verdict"); got != c.want || calctest.Noted(res, noteWet) != (c.want == wet) ||
			calctest.Noted(res, noteWithin) != (c.want == within) {
			t.Errorf("slump %s, limit %s: %s, %v", c.slump, c.limit, got, res.Notes)
		}
	}
}

func TestWaterNotes(t *testing.T) {
	for _, c := range []struct {
		inputs            []string
		wet, rough, heavy bool
	}{
		{[]string{"load=10 yd³", "water=10 US gal", "slump=5.5 in"}, false, false, false},
		{[]string{"load=10 yd³", "water=12 US gal", "slump=5.75 in"}, true, false, false},
		{[]string{"load=10 yd³", "water=5 US gal", "slump=2.5 in"}, false, true, false},
		{[]string{"load=10 yd³", "water=5 US gal", "slump=6.25 in"}, false, true, false},
		{[]string{"load=10 yd³", "water=30 US gal", "slump=3 in"}, false, false, false},
		{[]string{"load=10 yd³", "water=31 US gal", "slump=3 in"}, false, false, true},
	} {
		res := calctest.Run(t, Calculator, c.inputs...)
		if calctest.Noted(res, noteWet) != c.wet || calctest.Noted(res, noteRange) != c.rough ||
			calctest.Noted(res, noteHeavy) != c.heavy {
			t.Errorf("%v: %v", c.inputs, res.Notes)
		}
	}
	if res := calctest.Run(t, Calculator, "load=2 yd³", "water=15 US gal", "slump=4 in"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseSoup) {
		t.Error("soup is not refused")
	}
	one, two := calctest.Run(t, Calculator, "water=9 US gal").Out, calctest.Run(t, Calculator, "water=18 US gal").Out
	calctest.NearBy(t, "twice the water, twice the loss", two.Num("strength-most"), 2*one.Num("strength-most"), 1e-12)
}

// Of the water withheld only as much may go in as keeps the slump under its limit: in 9 yd³
// each gallon in a yard brings up to 1-1/4 in.
func TestWaterThatMayGoInKeepsTheSlump(t *testing.T) {
	for _, c := range []struct {
		slump         string
		may, excess   float64 // US gal
		withheld, why string
	}{
		{"6 1/2 in", 3.6, 5.4, "9 US gal", wet},
		{"7 in", 0, 9, "9 US gal", wet},
		{"8 in", 0, 9, "9 US gal", wet},
		{"5 in", 9, 0, "9 US gal", within},
		{"5 in", 14.4, 0, "20 US gal", within},
		{"6 1/2 in", 2, 7, "2 US gal", beyond},
	} {
		res := calctest.Run(t, Calculator, "load=9 yd³", "water=9 US gal", "withheld="+c.withheld,
			"slump="+c.slump, "limit=7 in")
		calctest.NearBy(t, c.slump+" may", 1+calc.From(res.Out.Num("may-add"), "US gal"), 1+c.may, 1e-9)
		calctest.NearBy(t, c.slump+" excess", 1+calc.From(res.Out.Num("too-much"), "US gal"), 1+c.excess, 1e-9)
		if got := res.Out.Choice("verdict"); got != c.why {
			t.Errorf("%s: %s", c.slump, got)
		}
	}
}
