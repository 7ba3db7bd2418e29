package coursetakeoff

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func TestCourseNotes(t *testing.T) {
	calctest.RunNotes(t, Calculator, []calc.Text{rip})
	calctest.RunNotes(t, Calculator, nil, "walls=40 ft | 8 ft | 2; 28 ft | 8 ft | 2")
	calctest.RunNotes(t, Calculator, []calc.Text{mixed}, "walls=40 ft | 8 ft | 2; 28 ft | 96 in | 1; 28 ft | 112 in")
	calctest.RunNotes(t, Calculator, nil, "walls=40 ft | 8 ft; 28 ft | 112 in", "outside-corners=0")
	calctest.RunNotes(t, Calculator, []calc.Text{legSwap, rip}, "long-leg=20 in", "short-leg=24 in")
	calctest.Refused(t, Calculator, "walls", "walls=10 ft | 8 ft | 2", "openings=")
	calctest.Refused(t, Calculator, "openings.1.height", "openings=3 ft | 10 ft")
	calctest.Refused(t, Calculator, "thickness", "inside-corners=1", "outside-corners=5", "thickness=32 in")
	calctest.RunNotes(t, Calculator, []calc.Text{rip}, "inside-corners=0", "thickness=32 in")
}

// Only whole courses of an opening are deducted, so the count falls in steps.
func TestOpeningsByWholeCourses(t *testing.T) {
	run := func(height string) float64 {
		return calctest.Run(t, Calculator, "openings=4 ft | "+height).Out.Num("straight-length")
	}
	four := calc.SI(4, "ft")
	calctest.Near(t, "under one course", run("15-15/16 in"),
		calctest.Run(t, Calculator, "openings=").Out.Num("straight-length"), 1e-9)
	calctest.Near(t, "one course", run("15-15/16 in")-run("16 in"), four, 1e-9)
	calctest.Near(t, "no more until the next", run("16 in"), run("31 in"), 1e-9)
	calctest.Near(t, "two courses", run("31 in")-run("32 in"), four, 1e-9)
}

// The straight blocks are as long as the remaining run with waste, and a start
// with the other hand swaps the hands.
func TestBlocksCover(t *testing.T) {
	for _, waste := range []string{"0 %", "5 %", "12.5 %"} {
		left := calctest.Run(t, Calculator, "waste="+waste).Out
		right := calctest.Run(t, Calculator, "waste="+waste, "start=right").Out
		calctest.Near(t, "swapped", left.Num("left"), right.Num("right"), 0)
		calctest.Near(t, "swapped", left.Num("right"), right.Num("left"), 0)
		calctest.Near(t, "sum", left.Num("total"), left.Num("straights")+left.Num("left")+left.Num("right"), 0)
		if left.Num("straights") < left.Num("net") || left.Num("straights") != math.Trunc(left.Num("straights")) {
			t.Errorf("%v straights for %v", left.Num("straights"), left.Num("net"))
		}
	}
}

func TestWideOpeningIsRefused(t *testing.T) {
	const wall = "walls=41 ft | 9 ft | 2; 28 ft | 9 ft | 2"
	calctest.Refused(t, Calculator, "openings.1.width", wall, "openings=50 ft | 7 ft | 1")
	if res := calctest.Run(t, Calculator, wall, "openings=41 ft | 7 ft | 1"); res.State != calc.OK {
		t.Errorf("an opening as wide as the longest wall: %v", res.Notes)
	}
}
