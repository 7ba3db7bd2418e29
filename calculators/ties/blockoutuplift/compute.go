package blockoutuplift

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/ties"
)

const (
	askRating  = calc.Text("What does one strap with its anchor hold? Without the maker's figure no number is given.")
	noteFloats = calc.Text("It floats. Strap it down before placing, to something that holds {force}.")
	noteStays  = calc.Text(
		"Its own weight holds it down by the numbers. Strap it all the same: the vibrator shakes it loose.",
	)
	noteUneven = calc.Text("The levels differ by {gap}. Brace against the push, or even them out as you place.")
	noteEven   = calc.Text("Both sides stand at one height. Keep it so while placing.")
	noteFluid  = calc.Text(
		"All concrete counts as fluid. Placing slowly lets the lower part stiffen; no credit is taken for it.",
	)
)

const (
	ofA = calc.Text("Side A")
	ofB = calc.Text("Side B")

	gravity = 9.80665 // m/s², standard
)

// compute sets uplift, push and straps. It refuses nothing. It takes the level of
// the higher side for the submerged volume: the concrete runs under the block-out
// and lifts all of it.
func compute(r *calc.Recorder, in calc.Case) {
	w, b, h, a, low := in.Num("weight"), in.Num("thickness"), in.Num("height"), in.Num("side-a"), in.Num("side-b")
	volume := r.Use(ties.SubmergedFormula, in.Num("length"), b, h, math.Max(a, low))
	uplift := r.Use(ties.UpliftFormula, w, volume, in.Num("own")*gravity)
	pushA := r.UseFor(ofA, nil, ties.SidePushFormula, w, b, h, a)
	pushB := r.UseFor(ofB, nil, ties.SidePushFormula, w, b, h, low)
	r.Put("volume", volume)
	r.Put("push-a", pushA)
	r.Put("push-b", pushB)
	r.Put("push", math.Abs(pushA-pushB))
	r.Put("uplift", math.Max(0, uplift))
	if uplift > 0 {
		putStraps(r, in, uplift)
		r.Note(
			calc.LevelWarning,
			calc.At("rating"),
			noteFloats,
			calc.Amount("force", uplift*in.Num("factor"), &displays.Force),
		)
	} else {
		r.Put("straps", 0)
		r.Note(calc.LevelNotice, calc.At("own"), noteStays)
	}
	if gap := math.Abs(a - low); gap > calc.Slack {
		r.Note(calc.LevelWarning, calc.At("side-b"), noteUneven, calc.Amount("gap", gap, &displays.Height))
	} else {
		r.Note(calc.LevelNotice, calc.At("side-b"), noteEven)
	}
	r.Note(calc.LevelNotice, calc.Path{}, noteFluid)
}

// putStraps sets the number of straps for an uplift, in N, or asks for the rating
// of one if it is not known. A block-out on one strap can turn, so there are at
// least two.
func putStraps(r *calc.Recorder, in calc.Case, uplift float64) {
	if !in.Has("rating") {
		r.Note(calc.LevelAsk, calc.At("rating"), askRating)
		return
	}
	r.Put("straps", math.Max(2, ties.UpTo(r.Use(ties.StrapShareFormula, in.Num("factor"), uplift, in.Num("rating")))))
}
