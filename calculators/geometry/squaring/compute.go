package squaring

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
)

const (
	noTriangle = calc.Text(
		"These sides and this diagonal make no triangle. The diagonal must be between {low} and {high}.",
	)
	farOff = calc.Text("The corner is off by more than {limit}. Check that sides and diagonal are of one corner.")
	small  = calc.Text("The sides are too short for a 3-4-5 in whole feet or half meters. Use the diagonal.")
	turns  = calc.Text(
		"The turns do not add up to a full circle; they are {error} off. Check the angles before the runs.",
	)
	wide     = calc.Text("The gap is more than 1 in {limit} of the outline. Look for a run that is wrong or missing.")
	firstTwo = calc.Text("Run {row}")
)

// The limits of notes: a corner farther off is a misread tape, turns farther
// from a full circle are a misread angle, and a gap of more than 1 in 1000 is
// a wrong run (common practice of layout by tape).
const (
	doubtfulAngle = 5 * math.Pi / 180
	doubtfulTurns = 0.05 * math.Pi / 180
	doubtfulRatio = 1000
)

// The steps of the 3-4-5 triangles, and the number of triangles shown.
const (
	tripleFoot  = 0.3048
	tripleMetre = 0.5
	tripleMost  = 3
)

// compute checks a rectangle or an outline. It refuses a measured diagonal that
// forms no triangle with the sides.
func compute(r *calc.Recorder, in calc.Case) {
	if outline(in) {
		closeOutline(r, in.Rows("runs"))
		return
	}
	a, b := in.Num("side-a"), in.Num("side-b")
	square := r.Use(geometry.DiagonalOfFormula, a, b)
	r.Put("diagonal", square)
	feet, metres := triples(r, "triples", a, b, tripleFoot), triples(r, "triples-m", a, b, tripleMetre)
	if !feet && !metres {
		r.Note(calc.LevelNotice, calc.Path{}, small)
	}
	if in.Has("measured") {
		judge(r, a, b, in.Num("measured"), square)
	}
}

// triples sets the output id to the largest 3-4-5 triangles that fit along sides a
// and b, largest first. Their legs are 3k and 4k steps, k a whole number. It
// returns false if none fits.
func triples(r *calc.Recorder, id string, a, b, step float64) bool {
	most := math.Floor(math.Min(math.Min(a, b)/3, math.Max(a, b)/4)/step + calc.Slack)
	var rows []calc.Case
	for k := most; k >= 1 && len(rows) < tripleMost; k-- {
		leg := k * step
		rows = append(rows,
			r.NewRow(id).With("three", calc.Num(3*leg)).With("four", calc.Num(4*leg)).With("five", calc.Num(5*leg)))
	}
	r.PutRows(id, rows)
	return len(rows) > 0
}

// judge compares a measured diagonal with that of the square corner, all in m. It
// refuses one that forms no triangle with the sides a and b, and sets nothing
// then.
func judge(r *calc.Recorder, a, b, measured, square float64) {
	if !calc.Over(measured, math.Abs(a-b)) || !calc.Over(a+b, measured) {
		r.Refuse(calc.At("measured"), noTriangle, calc.Amount("low", math.Abs(a-b), &tapeFine),
			calc.Amount("high", a+b, &tapeFine))
		return
	}
	shift := r.Use(geometry.CornerShiftFormula, a, b, measured)
	over := r.Use(geometry.CornerErrorFormula, shift, b)
	way := "none"
	switch {
	case shift > calc.Slack*a:
		way = "shorter"
	case shift < -calc.Slack*a:
		way = "longer"
	}
	r.Put("shift", math.Abs(shift))
	r.PutChoice("way", way)
	r.Put("error", over)
	r.Put("off", measured-square)
	if calc.Over(math.Abs(over), doubtfulAngle) {
		r.Note(calc.LevelAsk, calc.At("measured"), farOff, calc.Amount("limit", doubtfulAngle, &displays.Degrees))
	}
}

// outlinePoints returns the corners of an outline from the start on, in m, x along
// the first run and y to its left, and the sum of the turns in radians, left
// positive.
func outlinePoints(runs []calc.Case) (xs, ys []float64, turned float64) {
	xs, ys = []float64{0}, []float64{0}
	for i, run := range runs {
		xs = append(xs, xs[i]+geometry.RunAlongFormula.Value(run.Num("run"), turned))
		ys = append(ys, ys[i]+geometry.RunAcrossFormula.Value(run.Num("run"), turned))
		turned += turnOf(run)
	}
	return xs, ys, turned
}

// closeOutline sets the closing gap of an outline of at least two runs, and its
// direction and ratio if there is a gap.
func closeOutline(r *calc.Recorder, runs []calc.Case) {
	xs, ys, turned := outlinePoints(runs)
	var perimeter float64
	for _, run := range runs {
		perimeter += run.Num("run")
	}
	second := turnOf(runs[0])
	of := []calc.Slot{calc.Count("row", 2)}
	r.UseFor(firstTwo, of, geometry.RunAlongFormula, runs[1].Num("run"), second)
	r.UseFor(firstTwo, of, geometry.RunAcrossFormula, runs[1].Num("run"), second)
	along, across := settle(xs[len(runs)], perimeter), settle(ys[len(runs)], perimeter)
	gap := r.Use(geometry.ClosingGapFormula, along, across)
	r.Put("gap", gap)
	r.Put("along", along)
	r.Put("across", across)
	r.Put("perimeter", perimeter)
	r.Put("turned", turned)
	off := settle(math.Abs(turned)-2*math.Pi, 2*math.Pi)
	r.Put("turn-error", off)
	if math.Abs(off) > doubtfulTurns {
		r.Note(calc.LevelAsk, calc.At("runs"), turns, calc.Amount("error", off, &fineAngle))
	}
	if gap == 0 {
		return
	}
	r.Put("bearing", r.Use(geometry.ClosingBearingFormula, along, across))
	ratio := r.Use(geometry.ClosingRatioFormula, perimeter, gap)
	r.Put("ratio", ratio)
	if calc.Under(ratio, doubtfulRatio) {
		r.Note(calc.LevelAsk, calc.At("runs"), wide, calc.Count("limit", doubtfulRatio))
	}
}

// turnOf returns a turn in radians, left positive.
func turnOf(run calc.Case) float64 {
	if run.Choice("side") == geometry.RightHand {
		return -run.Num("turn")
	}
	return run.Num("turn")
}

// settle returns x, or 0 if x is only a rounding error beside scale.
func settle(x, scale float64) float64 {
	if math.Abs(x) < 1e-12*scale {
		return 0
	}
	return x
}
