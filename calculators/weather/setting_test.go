package weather

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Warmer concrete sets sooner; the equation gives the known time at its
// temperature and inverts; rule and equation agree within a tenth from 50 to 90 °F.
func TestSetting(t *testing.T) {
	last := math.Inf(1)
	for f := 33.0; f <= 110; f++ {
		k, r := calc.SI(f, "°F"), calc.SI(73, "°F")
		set := SetArrhenius(5, 5000, k, r)
		if set >= last {
			t.Fatalf("slower at %v °F", f)
		}
		last = set
		calctest.Near(t, "converted and back", SetArrhenius(set, 5000, r, k), 5, 1e-9)
		if f >= 50 && f <= 90 && math.Abs(SetDoubling(5, f, 73)/set-1) > 0.1 {
			t.Errorf("%v °F: rule %v, equation %v", f, SetDoubling(5, f, 73), set)
		}
	}
	calctest.Near(t, "known temperature", SetArrhenius(5, 5000, 296, 296), 5, 1e-12)
	calctest.Near(t, "doubling", SetDoubling(5, 53, 73), 10, 1e-12)
}

// EarliestSet is no later than any of its methods, equals the one it names, and
// falls as the concrete warms.
func TestEarliestSet(t *testing.T) {
	ref, last := calc.SI(73, "°F"), math.Inf(1)
	for f := 33.0; f <= 110; f++ {
		k, known := calc.SI(f, "°F"), calc.SI(5, "h")
		set, governs, q := EarliestSet(known, k, ref)
		for _, by := range []float64{
			SetDoublingFormula.Value(known, k, ref), SetArrhenius(known, LeastQ, k, ref),
			SetArrhenius(known, 5000, k, ref), SetArrhenius(known, MostQ, k, ref),
		} {
			if set > by*(1+1e-12) {
				t.Errorf("%v °F: %v is later than %v", f, set, by)
			}
		}
		named := SetDoublingFormula.Value(known, k, ref)
		if governs == SetArrheniusFormula {
			named = SetArrhenius(known, q, k, ref)
		}
		calctest.NearBy(t, "the method named", named, set, 1e-12)
		if set >= last {
			t.Errorf("not earlier at %v °F", f)
		}
		last = set
	}
}
