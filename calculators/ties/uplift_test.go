package ties

import (
	"math"
	"testing"
)

// SidePush equals the pressure integrated over the height numerically.
func TestSidePushIsTheSumOfStrips(t *testing.T) {
	for _, c := range []struct{ h, a float64 }{{2, 0}, {2, 1}, {2, 2}, {2, 5}, {0.3, 0.2}} {
		const strips = 20000
		sum := 0.0
		for i := range strips {
			z := (float64(i) + 0.5) * c.h / strips // above the underside
			sum += math.Max(0, c.a-z) * c.h / strips
		}
		if got := SidePush(150, 3, c.h, c.a); math.Abs(got-450*sum) > 1e-6*(1+got) {
			t.Errorf("%+v: %v, strips give %v", c, got, 450*sum)
		}
	}
}
