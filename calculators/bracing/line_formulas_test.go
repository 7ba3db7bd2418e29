package bracing

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

// triangle is the full geometry, by coordinates: the wall turns about its
// base at (0, 0) by an angle, and the brace runs from its foot to a point on
// the wall. It knows nothing of the small-movement formulas.
type triangle struct{ run, attach, below float64 }

// length of the brace with the wall leaning away from it by an angle.
func (g triangle) length(lean float64) float64 {
	x, y := g.attach*math.Sin(lean), g.attach*math.Cos(lean)
	return math.Hypot(x+g.run, y+g.below)
}

// lean that belongs to a length, by bisection: the length grows with it.
func (g triangle) lean(length float64) float64 {
	low, high := -0.2, 0.2
	for range 80 {
		if mid := (low + high) / 2; g.length(mid) < length {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}

func randomTriangle(rng *rand.Rand) triangle {
	return triangle{run: 0.9 + 2.5*rng.Float64(), attach: 1 + 2.5*rng.Float64(), below: -0.5 + 1.5*rng.Float64()}
}

// The slope of the exact length over the movement, by central differences, is
// the factor of BraceChange; and the error of the straight line stays within
// the bound its comment gives.
func TestBraceChangeAgainstExactTriangle(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		g := randomTriangle(rng)
		whole := BraceLength(g.run, g.attach, g.below)
		calctest.Near(t, "length", whole, g.length(0), 1e-12)
		const h = 1e-5
		slope := (g.length(math.Asin(h/g.attach)) - g.length(math.Asin(-h/g.attach))) / (2 * h)
		calctest.Near(t, "slope", BraceChange(1, g.run, whole), slope, 1e-8)
		calctest.Near(t, "cos", BraceChange(1, g.run, whole), math.Cos(BraceAngle(g.run, g.attach, g.below)*math.Pi/180), 1e-12)
		x := (rng.Float64()*2 - 1) * 0.1
		exact := g.length(math.Asin(x/g.attach)) - g.length(0)
		bound := x * x / (2 * whole) * (1 + math.Abs(g.below)/g.attach) * 1.1
		calctest.Near(t, "change", BraceChange(x, g.run, whole), exact, bound)
	}
	// The figure in the comment: 1 in. off, on an 8 ft brace, level foot.
	g := triangle{run: 60, attach: math.Sqrt(96*96 - 60*60)}
	calctest.Near(t, "1 in. on 8 ft", BraceChange(1, 60, 96), g.length(math.Asin(1/g.attach))-96, 0.01)
}

func TestPerTurnUndoesTurns(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		g := randomTriangle(rng)
		whole, travel, high := g.length(0), 0.002+0.01*rng.Float64(), 1+3*rng.Float64()
		off := 0.05 * rng.Float64()
		n := Turns(BraceChange(AtBrace(off, g.attach, high), g.run, whole), travel)
		calctest.Near(t, "turns × movement of a turn", n*PerTurn(travel, whole, g.run, high, g.attach), off, 1e-12)
	}
}

// Threads: 1 in. Acme has 5 threads per inch (ASME B1.5, from memory), a 1 in.
// coarse turnbuckle 8 (ASME B1.1, from memory), a 24 mm trapezoidal screw a
// pitch of 5 mm (ISO 2904, from memory).
func TestTravel(t *testing.T) {
	calctest.Near(t, "Acme", float64(TravelByThreads(1, 5)), 0.2, 1e-15)
	calctest.Near(t, "turnbuckle", float64(TravelByThreads(2, 8)), 0.25, 1e-15)
	calctest.Near(t, "trapezoidal", TravelByPitch(2, 5), 10, 0)
}

// ACI 117-10, 4.1.1: 0.3 % of the height up to 1 in.; the two meet at 27.78 ft.
func TestPlumbLimit(t *testing.T) {
	for feet, want := range map[float64]float64{8: 0.288, 9: 0.324, 10: 0.36, 30: 1} {
		calctest.Near(t, "plumb", float64(PlumbLimit(Inches(12*feet))), want, 0.0005)
	}
	meet := 1 / 0.003
	calctest.Near(t, "meeting", meet/12, 27.78, 0.005)
	calctest.Near(t, "below", float64(PlumbLimit(Inches(meet-0.1))), 1, 0.0004)
	calctest.Near(t, "above", float64(PlumbLimit(Inches(meet+0.1))), 1, 0)
}

// The shallow bow against the exact circle through its three points.
func TestBow(t *testing.T) {
	calctest.Near(t, "40 ft, 1/2 in.", BowRadius(40, 0.5/12), 4800, 1e-9)
	for _, s := range []float64{0.001, 0.01, 0.1} {
		exact := (12*12/4.0 + s*s) / (2 * s)
		calctest.Near(t, "circle", BowRadius(12, s), exact, s)
	}
}
