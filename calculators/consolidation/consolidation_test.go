package consolidation

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"
)

// At the reach the circles of two fields meet; it is √7/4 of the radius.
func TestReachIsWhereFieldsMeet(t *testing.T) {
	for _, r := range []float64{80, 130, 250, 600} {
		s := Spacing(r)
		y := Reach(r, s)
		if d := math.Hypot(s/2, y); math.Abs(d-r) > 1e-9*r {
			t.Errorf("radius %v: the corner lies at %v", r, d)
		}
		if math.Abs(y/r-math.Sqrt(7)/4) > 1e-12 {
			t.Errorf("radius %v: reach %v", r, y)
		}
	}
}

// simulate simulates a pour with a number of packs, independently of Charging, and
// reports whether it runs to the end.
func simulate(packs, slots, changes, chargers int, lasts, charge float64) bool {
	full := packs - slots
	if full < 0 {
		return false
	}
	var waiting int
	var busy []float64 // when each occupied charger is done
	clock := 0.0
	for k := 1; k <= changes; k++ {
		now := float64(k) * lasts
		for {
			slices.Sort(busy)
			if len(busy) == 0 || busy[0] > now+1e-6 {
				break
			}
			clock = busy[0]
			busy = busy[1:]
			full++
			if waiting > 0 {
				waiting--
				busy = append(busy, clock+charge)
			}
		}
		if full < slots {
			return false
		}
		full -= slots
		for range slots {
			if len(busy) < chargers {
				busy = append(busy, now+charge)
			} else {
				waiting++
			}
		}
	}
	return true
}

// Charging gives the fewest packs with which a simulated pour runs to the end.
func TestChargingAgainstSimulation(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		slots, chargers, changes := 1+rnd.IntN(5), rnd.IntN(6), rnd.IntN(12)
		lasts, charge := float64(10+rnd.IntN(50)), float64(10+rnd.IntN(120))
		change, charged := Charging(slots, changes, chargers, lasts, charge)
		packs := int(Bound(float64(slots), float64(change), float64(charged)))
		if !simulate(packs, slots, changes, chargers, lasts, charge) ||
			simulate(packs-1, slots, changes, chargers, lasts, charge) {
			t.Fatalf(
				"%d slots, %d changes of %v min, %d chargers of %v min: %d packs",
				slots,
				changes,
				lasts,
				chargers,
				charge,
				packs,
			)
		}
	}
}
