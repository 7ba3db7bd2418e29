package pressure

import (
	"math"
	"math/rand/v2"
	"testing"
)

// In one go the pressure is the largest of the three methods, each as it is in lifts.
// At the highest rise the form is within its rating, a little faster it is not; where
// there is none, not even a crawl is.
func TestHighestInOneGo(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	seen := map[Reach]int{}
	for range 20000 {
		w := anyRound(rnd).Lifts
		w.Shaken = rnd.IntN(8) == 0
		rating := PSF(100 + 2400*rnd.Float64())
		rise, reach := w.HighestInOneGo(rating)
		seen[reach]++
		at, faster := w.InOneGo(rise), w.InOneGo(rise*1.001+1e-6)
		if want := max(at.ACI, at.CIRIA, at.DIN); math.Abs(float64(at.Pressure-want)) > 1e-6 || at.Pressure > w.Head() {
			t.Fatalf("%+v: %+v", w, at)
		}
		if aci, _ := w.Stricter(rise); at.Pressure < min(aci, w.Head())-1e-9 {
			t.Fatalf("%+v: %v psf, ACI 347 has %v", w, at.Pressure, aci)
		}
		within := float64(at.Pressure) <= float64(rating)*(1+1e-9)
		switch reach {
		case ByRise:
			if !within || faster.Pressure <= rating || rise <= 0 || rise > MethodRiseSI {
				t.Fatalf("%+v, %v psf: %v ft/h gives %v, faster %v", w, rating, rise, at, faster)
			}
		case AnyRise:
			if float64(w.Head()) > float64(rating)*(1+1e-9) || rise != 0 {
				t.Fatalf("%+v, %v psf: head %v", w, rating, w.Head())
			}
		default:
			if crawl := w.InOneGo(1e-6); crawl.Pressure <= rating || rise != 0 {
				t.Fatalf("%+v, %v psf, answer %v: a crawl gives %v", w, rating, reach, crawl)
			}
		}
	}
	for reach := ByRise; reach <= NoRise; reach++ {
		if seen[reach] == 0 {
			t.Errorf("answer %v never came up", reach)
		}
	}
}

// A cold retarded blend in one go: CIRIA Report 108 and DIN 18218 give more than ACI 347,
// by hand 1229 psf and the fluid head of 1350.
func TestOneGoCold(t *testing.T) {
	got := job(retardedBlend50, 10).InOneGo(2.9)
	if got.Pressure != 1350 || got.CIRIA < 1200 || got.ACI > 950 {
		t.Errorf("%+v", got)
	}
}
