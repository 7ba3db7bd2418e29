package placing

import (
	"testing"

	"coursebook/calculators/calctest"
)

// Flow is the inverse of Rise, and LongestLoop of LiftTime.
func TestRiseInverse(t *testing.T) {
	calctest.NearBy(t, "flow of a rise", Flow(Rise(9.2, 43, 0.2), 43, 0.2), 9.2, 1e-12)
	for _, passes := range []float64{1, 2} {
		longest := LongestLoop(2, 0.75, 9.2, 0.75, passes, 0.2, 0.8)
		back := AgeOnReturn(0.75, passes, LiftTime(longest, 0.2, 0.8, 9.2, 0.75))
		calctest.NearBy(t, "pass that fills the window", back, 2, 1e-12)
	}
	calctest.NearBy(
		t,
		"twice the length, twice the time",
		LiftTime(80, 0.2, 0.8, 9, 0.7),
		2*LiftTime(40, 0.2, 0.8, 9, 0.7),
		1e-12,
	)
	for _, c := range []struct{ height, depth, want float64 }{{8, 4, 2}, {8, 8.0 / 3, 3}, {8.1, 4, 3}, {2.4, 0.8, 3},
		{1, 4, 1}} {
		calctest.NearBy(t, "lifts", Lifts(c.height, c.depth), c.want, 0)
	}
}
