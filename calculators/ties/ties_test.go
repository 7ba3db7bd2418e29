package ties

import (
	"testing"

	"coursebook/calculators/calctest"
)

// At the widest spacing a tie carries exactly its working load.
func TestSpacingInvertsLoad(t *testing.T) {
	for n := range 7 {
		for m := 1; m < 8; m++ {
			s := TieSpacing(900, 600, 1.5, float64(n), float64(m))
			if f := TieForce(600, TieArea(s, 1.5, float64(n), float64(m))); !calctest.Equal(f, 900) {
				t.Errorf("%d missing of %d: %v", n, m, f)
			}
		}
	}
}

// The two ties beside a gap carry together the pressure on all of it, with any
// number of ties missing between them.
func TestLoadIsNeverLost(t *testing.T) {
	for n := range 7 {
		end := TieForce(600, TieArea(1, 1, float64(n), 2))
		if whole := 600 * float64(n+2); !calctest.Equal(2*end, whole) {
			t.Errorf("%d missing: two ties carry %v of %v", n, 2*end, whole)
		}
	}
}
