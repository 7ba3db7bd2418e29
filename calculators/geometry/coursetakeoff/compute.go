package coursetakeoff

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

const (
	eat   = calc.Text("Corners and openings take more than the walls hold. Check lengths, corners and openings.")
	thick = calc.Text("The form is thicker than the corner legs allow at an inside corner. Check legs and thickness.")
	mixed = calc.Text(
		"Heights differ. Corner blocks are counted for the tallest wall and taken off for the lowest, so neither " +
			"runs short.",
	)
	legSwap = calc.Text("The long leg is shorter than the short leg. Are they swapped?")
	tall    = calc.Text("This opening is taller than the tallest wall, {limit}.")
	rip     = calc.Text("The top course is cut down to {top}. Cut {off} off, or choose a height in whole courses.")
)

// takeOff holds the sums of one take-off. Lengths are in m.
type takeOff struct {
	*calc.Recorder
	in              calc.Case
	course          float64
	laid            float64 // wall length × courses
	tallest, lowest float64 // courses
	high, longest   float64 // m
}

// computeCourses counts courses and blocks. It refuses corner blocks shorter than
// the form is thick, openings larger than the walls, and corners and openings that
// leave no straight wall.
func computeCourses(r *calc.Recorder, in calc.Case) {
	w := &takeOff{Recorder: r, in: in, course: in.Num("course"), lowest: math.Inf(1)}
	w.walls()
	outside, inside := in.Num("outside-corners"), in.Num("inside-corners")
	legs := in.Num("long-leg") + in.Num("short-leg")
	if inside > 0 && legs <= 2*in.Num("thickness") {
		r.Refuse(calc.At("thickness"), thick)
		return
	}
	holes, ok := w.holes()
	if !ok {
		return
	}
	corner := r.Use(geometry.CornerRunFormula, outside, inside, in.Num("long-leg"), in.Num("short-leg"),
		in.Num("thickness"))
	run := r.Use(geometry.StraightRunFormula, w.laid, w.lowest, corner, holes)
	if run < -calc.Slack*w.laid {
		r.Refuse(calc.At("walls"), eat)
		return
	}
	w.blocks(math.Max(run, 0), outside, inside)
	w.notes(outside + inside)
}

// walls counts the courses of each wall; the tallest is the worked example.
func (w *takeOff) walls() {
	rows := w.in.Rows("walls")
	out := make([]calc.Case, len(rows))
	for i, row := range rows {
		height := row.Num("height")
		w.longest = math.Max(w.longest, row.Num("length"))
		n := geometry.CoursesFormula.Value(height, w.course)
		w.laid += float64(row.Num("length") * row.Num("count") * n)
		w.tallest, w.lowest = math.Max(w.tallest, n), math.Min(w.lowest, n)
		w.high = math.Max(w.high, height)
		top := geometry.TopCourseFormula.Value(height, n, w.course)
		out[i] = w.NewRow("by-wall").With("height", calc.Num(height)).With("courses", calc.Num(n)).
			With("top", calc.Num(top)).With("off", calc.Num(w.cutOff(top)))
	}
	n := w.Use(geometry.CoursesFormula, w.high, w.course)
	top := w.Use(geometry.TopCourseFormula, w.high, n, w.course)
	w.Put("courses", n)
	w.Put("top", top)
	w.Put("off", w.cutOff(top))
	w.PutRows("by-wall", out)
}

// cutOff returns the height cut off the top course of height top, in m; 0 for a
// rounding error.
func (w *takeOff) cutOff(top float64) float64 {
	if !calc.Over(w.course, top) {
		return 0
	}
	return w.course - top
}

// holes returns the sum of width × whole courses of the openings, in m. It refuses
// an opening that is taller or wider than every wall, and returns false.
func (w *takeOff) holes() (sum float64, ok bool) {
	for _, o := range w.in.Rows("openings") {
		if calc.Over(o.Num("height"), w.high) {
			w.Refuse(calc.Cell("openings", o.RowNumber(), "height"), tall, calc.Amount("limit", w.high, &displays.Wall))
			return 0, false
		}
		if calc.Over(o.Num("width"), w.longest) {
			w.Refuse(calc.Cell("openings", o.RowNumber(), "width"), geometry.WideHole,
				calc.Amount("limit", w.longest, &displays.Wall))
			return 0, false
		}
		whole := math.Floor(o.Num("height")/w.course + calc.Slack)
		sum += float64(o.Num("width") * o.Num("count") * whole)
	}
	return sum, true
}

// blocks sets the numbers of blocks for run m of straight blocks and these numbers
// of corners.
func (w *takeOff) blocks(run, outside, inside float64) {
	block := w.in.Num("block")
	straights := w.Use(geometry.StraightBlocksFormula, run, w.in.Num("waste"), block)
	first := w.Use(geometry.CornerBlocksFormula, outside, w.tallest, inside)
	second := w.Use(geometry.CornerBlocksFormula, inside, w.tallest, outside)
	if w.in.Choice("start") == geometry.RightHand {
		first, second = second, first
	}
	w.Put("straights", straights)
	w.Put("left", first)
	w.Put("right", second)
	w.Put("total", straights+first+second)
	w.Put("net", run/block)
	w.Put("straight-length", run)
}

// notes records a note on walls of unequal courses with corners, on swapped legs
// and on a cut top course.
func (w *takeOff) notes(corners float64) {
	if w.tallest != w.lowest && corners > 0 {
		w.Note(calc.LevelNotice, calc.At("walls"), mixed)
	}
	if calc.Over(w.in.Num("short-leg"), w.in.Num("long-leg")) {
		w.Note(calc.LevelAsk, calc.At("long-leg"), legSwap)
	}
	top := geometry.TopCourseFormula.Value(w.high, w.tallest, w.course)
	if off := w.cutOff(top); off > 0 {
		w.Note(calc.LevelNotice, calc.At("walls"), rip, calc.Amount("top", top, &displays.Part),
			calc.Amount("off", off, &displays.Part))
	}
}
