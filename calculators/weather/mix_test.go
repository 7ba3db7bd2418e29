package weather

import (
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

// Parts of one temperature give a mix of that temperature, and the temperature of
// a mix is between those of its parts.
func TestMixOfEqualParts(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 3))
	w := func() float64 { return 1 + 3000*rnd.Float64() }
	for range 300 {
		x := 90 * rnd.Float64()
		calctest.Near(t, "equal parts", MixTemperature([]float64{x, w(), x, w(), x, w(), x, w(), 0, 80, 0}), x, 1e-9)
		got := MixTemperature([]float64{x, w(), x + 20, w(), x + 5, w(), x, w(), 0, 80, 0})
		if got < x || got > x+20 {
			t.Fatalf("%v outside %v to %v", got, x, x+20)
		}
	}
}

// Energy balance with the specific heats of a textbook, 0.92 and 4.184
// kJ/kg/K and 335 kJ/kg for melting: within a fifth of a degree.
func TestMixAgainstHeats(t *testing.T) {
	rnd := rand.New(rand.NewPCG(4, 4))
	for range 300 {
		ta, tc, tw := 20+20*rnd.Float64(), 30+40*rnd.Float64(), 5+25*rnd.Float64()
		ice := 60 * rnd.Float64()
		want := (0.92*(1800*ta+360*tc) + 4.184*120*tw - 335*ice) / (0.92*2160 + 4.184*(120+ice))
		calctest.Near(t, "heats", MixTemperature([]float64{ta, 1800, tc, 360, tw, 120, ta, 0, 0, 80, ice}), want, 0.2)
	}
}
