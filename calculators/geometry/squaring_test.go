package geometry

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

// A corner opened by a known angle: the diagonal by coordinates gives that angle,
// and the shift puts the end of b square to the end of a.
func TestCornerAgainstCoordinates(t *testing.T) {
	rng := rand.New(rand.NewPCG(41, 42))
	for range 1000 {
		a, b := 1+40*rng.Float64(), 1+40*rng.Float64()
		e := 160*rng.Float64() - 80
		x, y := -b*math.Sin(e*math.Pi/180), b*math.Cos(e*math.Pi/180)
		d := math.Hypot(a-x, y)
		s := CornerShift(a, b, d)
		calctest.Near(t, "shift", s, -x, 1e-9*b)
		calctest.Near(t, "error", CornerError(s, b), e, 1e-6)
	}
	calctest.Near(t, "square", CornerShift(3, 4, 5), 0, 0)
}
