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
	noteBarely = calc.Text(
		"Its own weight holds it down, but not with the factor. Strap it down to something that holds {force}.",
	)
	noteStays = calc.Text(
		"Its own weight holds it down by the numbers. Strap it all the same: the vibrator shakes it loose.",
	)
	askHeavy    = calc.Text("That is heavier than solid concrete of this size. Is the weight right?")
	refuseApart = calc.Text(
		"The sides are {gap} apart, over {most}. Stop on the higher side and bring the lower side up.",
	)
	noteUneven = calc.Text("The levels differ by {gap}. Brace against the push, or even them out as you place.")
	noteClosed = calc.Text(
		"Below the sill both sides rise together. From its underside on fill one side, {most} above the other at " +
			"most, until concrete comes up on the far side. Brace the frame against the push.",
	)
	noteEven  = calc.Text("Both sides stand at one height. Keep it so while placing.")
	noteFluid = calc.Text(
		"All concrete counts as fluid. Placing slowly lets the lower part stiffen; no credit is taken for it.",
	)
)

const (
	ofA = calc.Text("Side A")
	ofB = calc.Text("Side B")

	gravity = 9.80665 // m/s², standard
)

// leastStraps is the least number of straps: a block-out on one strap can turn.
const leastStraps = 2

// compute sets uplift, push and straps. It refuses sides that are farther apart than
// allowed: than the rule, or at a closed sill than one lift. It takes the level of the
// higher side for the submerged volume: the concrete runs under the block-out and lifts
// all of it.
func compute(r *calc.Recorder, in calc.Case) {
	w, b, h, a, low := in.Num("weight"), in.Num("thickness"), in.Num("height"), in.Num("side-a"), in.Num("side-b")
	gap := math.Abs(a - low)
	most := in.Num("apart")
	if isClosed(in) {
		most = in.Num("lift")
	}
	if calc.Over(gap, most) {
		r.Refuse(calc.At("side-b"), refuseApart, calc.Amount("gap", gap, &displays.Height),
			calc.Amount("most", most, &displays.Height))
		return
	}
	volume := r.Use(ties.SubmergedFormula, in.Num("length"), b, h, math.Max(a, low))
	uplift := r.Use(ties.UpliftFormula, w, volume, in.Num("own")*gravity)
	pushA := r.UseFor(ofA, nil, ties.SidePushFormula, w, b, h, a)
	pushB := r.UseFor(ofB, nil, ties.SidePushFormula, w, b, h, low)
	r.Put("volume", volume)
	r.Put("push-a", pushA)
	r.Put("push-b", pushB)
	r.Put("push", math.Abs(pushA-pushB))
	r.Put("uplift", math.Max(0, uplift))
	hold := math.Max(0, r.Use(ties.HoldingFormula, in.Num("factor"), w, volume, in.Num("own")*gravity))
	r.Put("hold", hold)
	switch force := calc.Amount("force", hold, &displays.Force); {
	case hold == 0:
		r.Put("straps", leastStraps)
		r.Note(calc.LevelNotice, calc.At("own"), noteStays)
	case uplift > 0:
		putStraps(r, in, hold)
		r.Note(calc.LevelWarning, calc.At("rating"), noteFloats, force)
	default:
		putStraps(r, in, hold)
		r.Note(calc.LevelWarning, calc.At("rating"), noteBarely, force)
	}
	if ties.UpliftFormula.Value(w, in.Num("length")*b*h, in.Num("own")*gravity) < -calc.Slack {
		r.Note(calc.LevelAsk, calc.At("own"), askHeavy)
	}
	switch {
	case isClosed(in):
		r.Note(calc.LevelWarning, calc.At("sill"), noteClosed, calc.Amount("most", most, &displays.Height))
	case gap > calc.Slack:
		r.Note(calc.LevelWarning, calc.At("side-b"), noteUneven, calc.Amount("gap", gap, &displays.Height))
	default:
		r.Note(calc.LevelNotice, calc.At("side-b"), noteEven)
	}
	r.Note(calc.LevelNotice, calc.Path{}, noteFluid)
}

// putStraps sets the number of straps for the force they hold, in N, or asks for the
// rating of one if it is not known.
func putStraps(r *calc.Recorder, in calc.Case, hold float64) {
	if !in.Has("rating") {
		r.Note(calc.LevelAsk, calc.At("rating"), askRating)
		return
	}
	straps := ties.UpTo(r.Use(ties.StrapShareFormula, hold, in.Num("rating")))
	r.Put("straps", math.Max(leastStraps, straps))
}
