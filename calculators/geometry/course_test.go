package geometry

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
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

// Corner by corner: course after course the hand changes, and an inside
// corner has the other one.
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

// An L-shaped ring of form in plan: what the corners leave for straight
// blocks, wall by wall. Each wall loses the leg at each of its ends, less a
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

func TestCourseNotes(t *testing.T) {
	expect(t, CourseTakeOff, []calc.Text{courseRip})
	expect(t, CourseTakeOff, nil, "walls=40 ft | 8 ft | 2; 28 ft | 8 ft | 2")
	expect(t, CourseTakeOff, []calc.Text{courseMixed}, "walls=40 ft | 8 ft | 2; 28 ft | 96 in | 1; 28 ft | 112 in")
	expect(t, CourseTakeOff, nil, "walls=40 ft | 8 ft; 28 ft | 112 in", "outside-corners=0")
	expect(t, CourseTakeOff, []calc.Text{courseLegSwap, courseRip}, "long-leg=20 in", "short-leg=24 in")
	refused(t, CourseTakeOff, "walls", "walls=10 ft | 8 ft | 2", "openings=")
	refused(t, CourseTakeOff, "openings.1.height", "openings=3 ft | 10 ft")
	refused(t, CourseTakeOff, "thickness", "inside-corners=1", "outside-corners=5", "thickness=32 in")
	expect(t, CourseTakeOff, []calc.Text{courseRip}, "inside-corners=0", "thickness=32 in")
}

// Only whole courses of an opening are taken off, so the count falls in steps.
func TestOpeningsByWholeCourses(t *testing.T) {
	run := func(height string) float64 {
		return calctest.Run(t, CourseTakeOff, "openings=4 ft | "+height).Out.Num("straight-length")
	}
	four := calc.SI(4, "ft")
	calctest.Near(t, "under one course", run("15-15/16 in"), calctest.Run(t, CourseTakeOff, "openings=").Out.Num("straight-length"), 1e-9)
	calctest.Near(t, "one course", run("15-15/16 in")-run("16 in"), four, 1e-9)
	calctest.Near(t, "no more until the next", run("16 in"), run("31 in"), 1e-9)
	calctest.Near(t, "two courses", run("31 in")-run("32 in"), four, 1e-9)
}

// Blocks times length cover the length that is left, waste included, and a
// start with the other hand only swaps the hands.
func TestBlocksCover(t *testing.T) {
	for _, waste := range []string{"0 %", "5 %", "12.5 %"} {
		left := calctest.Run(t, CourseTakeOff, "waste="+waste).Out
		right := calctest.Run(t, CourseTakeOff, "waste="+waste, "start=right").Out
		calctest.Near(t, "swapped", left.Num("left"), right.Num("right"), 0)
		calctest.Near(t, "swapped", left.Num("right"), right.Num("left"), 0)
		calctest.Near(t, "sum", left.Num("total"), left.Num("straights")+left.Num("left")+left.Num("right"), 0)
		if left.Num("straights") < left.Num("net") || left.Num("straights") != math.Trunc(left.Num("straights")) {
			t.Errorf("%v straights for %v", left.Num("straights"), left.Num("net"))
		}
	}
}
