package geometry

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

// Radius and angle are recovered from chord and rise, which agree with the
// coordinates of the arc's ends and middle.
func TestArcInverse(t *testing.T) {
	rng := rand.New(rand.NewPCG(21, 22))
	for range 1000 {
		r, deg := 0.5+50*rng.Float64(), 1+358*rng.Float64()
		chord, rise := ChordLength(r, deg), ArcRise(r, deg)
		calctest.Near(t, "radius", ChordRadius(chord, rise), r, 1e-7*r)
		calctest.Near(t, "angle", ChordAngle(chord, rise), deg, 1e-6)
		half := deg * math.Pi / 360
		calctest.Near(t, "rise by cosine", rise, r-r*math.Cos(half), 1e-12*r)
		calctest.Near(t, "intersecting chords", rise*(2*r-rise), chord*chord/4, 1e-9*r*r)
		calctest.Near(t, "one flat is the whole arc", FlatOffset(r, deg, 1), rise, 0)
	}
	calctest.Near(t, "half circle", ChordLength(3, 180), 6, 1e-12)
	calctest.Near(t, "full circle", ChordLength(3, 360), 0, 1e-12)
}
