package bracing

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

func randomTriangle(rng *rand.Rand) calctest.Triangle {
	return calctest.Triangle{
		Run:    0.9 + 2.5*rng.Float64(),
		Attach: 1 + 2.5*rng.Float64(),
		Below:  -0.5 + 1.5*rng.Float64(),
	}
}

// The derivative of the exact length by the movement, by central differences, is
// the factor of BraceChange, and the error of the linear formula is within the
// bound in its comment.
func TestBraceChangeAgainstExactTriangle(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 500 {
		g := randomTriangle(rng)
		whole := BraceLength(g.Run, g.Attach, g.Below)
		calctest.Near(t, "length", whole, g.Length(0), 1e-12)
		const h = 1e-5
		slope := (g.Length(math.Asin(h/g.Attach)) - g.Length(math.Asin(-h/g.Attach))) / (2 * h)
		calctest.Near(t, "slope", BraceChange(1, g.Run, whole), slope, 1e-8)
		calctest.Near(
			t,
			"cos",
			BraceChange(1, g.Run, whole),
			math.Cos(BraceAngle(g.Run, g.Attach, g.Below)*math.Pi/180),
			1e-12,
		)
		x := (rng.Float64()*2 - 1) * 0.1
		exact := g.Length(math.Asin(x/g.Attach)) - g.Length(0)
		bound := x * x / (2 * whole) * (1 + math.Abs(g.Below)/g.Attach) * 1.1
		calctest.Near(t, "change", BraceChange(x, g.Run, whole), exact, bound)
	}
	// The figure in the comment: 1 in. off, 8 ft brace, foot level with the base.
	g := calctest.Triangle{Run: 60, Attach: math.Sqrt(96*96 - 60*60)}
	calctest.Near(t, "1 in. on 8 ft", BraceChange(1, 60, 96), g.Length(math.Asin(1/g.Attach))-96, 0.01)
}

func TestPerTurnUndoesTurns(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 200 {
		g := randomTriangle(rng)
		whole, travel, high := g.Length(0), 0.002+0.01*rng.Float64(), 1+3*rng.Float64()
		off := 0.05 * rng.Float64()
		n := Turns(BraceChange(AtBrace(off, g.Attach, high), g.Run, whole), travel)
		calctest.Near(t, "turns × movement of a turn", n*PerTurn(travel, whole, g.Run, high, g.Attach), off, 1e-12)
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
