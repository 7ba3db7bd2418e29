package pressure

import (
	"math"
	"testing"
)

// The line for self-compacting concrete that was read in print lies between
// the recalled ones for F5 and F6 at every rise; so does its chart form.
func TestSelfCompactingLiesBetween(t *testing.T) {
	for v := 0.5; v <= 7; v += 0.5 {
		f5, scc, f6 := DINFlowing(0.24, v, 5, 1, 25), DINFlowing(0.26, v, 5, 1, 25), DINFlowing(0.304, v, 5, 1, 25)
		if !(f5 < scc && scc < f6) || math.Abs(scc-(25+33*v)) > 0.5*v+1e-9 {
			t.Errorf("at %v m/h: %v, %v, %v kPa", v, f5, scc, f6)
		}
	}
}
