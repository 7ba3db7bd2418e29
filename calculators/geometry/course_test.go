package geometry

import (
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calctest"
)

func TestTopCourse(t *testing.T) {
	rng := rand.New(rand.NewPCG(31, 32))
	for range 2000 {
		h, c := 0.1+12*rng.Float64(), 0.15+rng.Float64()
		n := Courses(h, c)
		top := TopCourse(h, n, c)
		if top <= 0 || top > c*(1+1e-8) {
			t.Fatalf("top course %v of %v, wall %v", top, c, h)
		}
		calctest.Near(t, "courses add up", (n-1)*c+top, h, 1e-9)
	}
}

// The hand of a corner changes with every course, and an inside corner has the
// other hand.
func TestHandsOneByOne(t *testing.T) {
	for n := range 12 {
		for outside := range 5 {
			for inside := range 4 {
				var left, right float64
				for course := range n {
					a, b := float64(outside), float64(inside)
					if course%2 == 1 {
						a, b = b, a
					}
					left, right = left+a, right+b
				}
				calctest.Near(t, "left", CornerBlocks(float64(outside), float64(n), float64(inside)), left, 0)
				calctest.Near(t, "right", CornerBlocks(float64(inside), float64(n), float64(outside)), right, 0)
			}
		}
	}
}

// An L-shaped ring of form in plan: the length left for straight blocks, wall by
// wall. Each wall loses the leg at each of its ends, less a
// thickness at an inside corner.
func TestCornerRunWallByWall(t *testing.T) {
	const a, b, th = 1.1, 0.5, 0.33
	sides := []float64{12, 5, 7, 4, 5, 9} // corner 3 points in
	inner := map[int]bool{3: true}
	var straight, round float64
	for i, l := range sides {
		start, end := a, b // long leg ahead at the start, short one at the end
		if inner[i] {
			start -= th
		}
		if inner[(i+1)%len(sides)] {
			end -= th
		}
		straight += l - start - end
		round += l
	}
	calctest.Near(t, "straight", StraightRun(round, 1, CornerRun(5, 1, a, b, th), 0), straight, 1e-12)
}
