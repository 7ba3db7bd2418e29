package geometry

import (
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

// The volume of a ring of footing is that of its outer rectangle less its inner
// one, for each way of measuring its length.
func TestFootingRingAgainstAreas(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for range 300 {
		a, b := 4+30*rng.Float64(), 4+30*rng.Float64()
		w, h := 0.2+rng.Float64(), 0.1+0.5*rng.Float64()
		want := (a*b - (a-2*w)*(b-2*w)) * h
		calctest.Near(t, "outside", RunVolume(1, 2*(a+b), 4, w, h), want, 1e-9*want)
		calctest.Near(t, "middle", RunVolume(1, 2*(a+b)-4*w, 0, w, h), want, 1e-9*want)
		calctest.Near(t, "inside", RunVolume(1, 2*(a+b)-8*w, -4, w, h), want, 1e-9*want)
	}
}
