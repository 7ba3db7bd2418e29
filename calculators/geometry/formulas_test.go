package geometry

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

// shoelace is the area of a closed polygon: a wall's plan area without the rule
// for corners.
func shoelace(p [][2]float64) float64 {
	sum := 0.0
	for i := range p {
		j := (i + 1) % len(p)
		sum += p[i][0]*p[j][1] - p[j][0]*p[i][1]
	}
	return math.Abs(sum) / 2
}

func perimeter(p [][2]float64) float64 {
	sum := 0.0
	for i := range p {
		j := (i + 1) % len(p)
		sum += math.Hypot(p[i][0]-p[j][0], p[i][1]-p[j][1])
	}
	return sum
}

// The plan area of a ring of walls is the area inside its outer face less the
// area inside its inner face. Both the rectangle and the L have four more
// outside than inside corners.
func TestCornerRuleAgainstAreas(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		a, b := 5+20*rng.Float64(), 5+20*rng.Float64()
		c, d := 3+(a-5)*rng.Float64()*0.5, 3+(b-5)*rng.Float64()*0.5
		th := 0.05 + 0.3*rng.Float64()
		h := 1 + 3*rng.Float64()
		outer := [][2]float64{{0, 0}, {a, 0}, {a, d}, {c, d}, {c, b}, {0, b}}
		inner := [][2]float64{
			{th, th},
			{a - th, th},
			{a - th, d - th},
			{c - th, d - th},
			{c - th, b - th},
			{th, b - th},
		}
		want := (shoelace(outer) - shoelace(inner)) * h
		out := perimeter(outer)
		calctest.Near(t, "L from outside", WallsVolume(th, out*h, 5-1, h), want, 1e-9*want)
		calctest.Near(t, "L from inside", WallsVolume(th, perimeter(inner)*h, -(5-1), h), want, 1e-9*want)
		calctest.Near(t, "L along the middle", Prism(1, CentreLine(out, 4, th), h, th), want, 1e-9*want)
		calctest.Near(t, "inside is outside less eight thicknesses", perimeter(inner), out-8*th, 1e-9)
	}
}

// A curved wall is a sector of a ring; its area is the difference of two
// sectors, and its chord and rise are those of trigonometry.
func TestCurveAgainstSectors(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for range 500 {
		r, th := 2+30*rng.Float64(), 0.1+0.5*rng.Float64()
		deg := 1 + 358*rng.Float64()
		rad := deg * math.Pi / 180
		want := rad / 2 * (r*r - (r-th)*(r-th)) * 2.5
		calctest.Near(t, "sector", ArcVolume(ArcLength(deg, CentreRadius(r, th)), th, 2.5), want, 1e-9*want)
		chord, rise := 2*r*math.Sin(rad/2), r*(1-math.Cos(rad/2))
		calctest.Near(t, "radius", ChordRadius(chord, rise), r, 1e-7*r)
		calctest.Near(t, "angle", ChordAngle(chord, rise), deg, 1e-6)
	}
	calctest.Near(t, "full circle", ArcLength(360, 1), 2*math.Pi, 1e-15)
}

func TestOrder(t *testing.T) {
	for _, c := range []struct{ volume, step, want float64 }{
		{14.01, 0.5, 14.5}, {14.5, 0.5, 14.5}, {14.500001, 0.5, 15}, {0.3, 0.1, 0.3}, {0.7, 0.1, 0.7}, {20.1, 1, 21},
		{0.01, 0.25, 0.25},
	} {
		calctest.Near(t, "RoundUp", RoundUp(c.volume, c.step), c.want, 1e-12)
	}
	rng := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		v, s, truck := 0.1+200*rng.Float64(), 0.05+2*rng.Float64(), 1+12*rng.Float64()
		o := RoundUp(v, s)
		if o < v*(1-1e-8) || o-v > s*(1+1e-8) {
			t.Fatalf("order %v for %v in steps of %v", o, v, s)
		}
		n := Loads(o, truck)
		last := LastLoad(o, n, truck)
		if last <= 0 || last > truck*(1+1e-8) {
			t.Fatalf("last load %v of trucks of %v, order %v", last, truck, o)
		}
		calctest.Near(t, "loads add up", (n-1)*truck+last, o, 1e-9*o)
		calctest.Near(t, "extra is the inverse of waste", Extra(WithWaste(v, 7), v), 7, 1e-9)
	}
}

// NIST SP 811, appendix B.8: 1 ft³ = 0.02831685 m³, 1 yd³ = 0.7645549 m³
// (from memory).
func TestCubicYards(t *testing.T) {
	calctest.Near(t, "yd³", float64(InCubicYards(1)), 0.02831685/0.7645549, 1e-8)
	calctest.Near(t, "yd³", float64(InCubicYards(27)), 1, 0)
}
