package calc

import "testing"

func TestCeil(t *testing.T) {
	for _, c := range []struct{ x, want float64 }{
		{3, 3}, {3 + 1e-12, 3}, {3 - 1e-12, 3}, {3.001, 4}, {0.1, 1}, {SI(3, "ft") / SI(12, "in"), 3},
	} {
		if got := Ceil(c.x); got != c.want {
			t.Errorf("Ceil(%v) = %v, want %v", c.x, got, c.want)
		}
	}
}
