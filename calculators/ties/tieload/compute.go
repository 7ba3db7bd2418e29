package tieload

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/ties"
)

const (
	noteOver    = calc.Text("The ties may tear. One carries {load} and may carry {working}. Do not place this way.")
	askStrength = calc.Text("What load breaks the tie? Without the form maker's figure there is no verdict.")
	askCapacity = calc.Text("Did the form maker or the engineer give this capacity, for this very place?")
	noteMany    = calc.Text("So many missing in one place leave more than the ties in doubt. Ask the engineer.")
	noteShared  = calc.Text("More than two ties share the load. That holds only where the face spreads it both ways.")
	noteBack    = calc.Text(
		"The face is weakened and no capacity is known. Back it with boards and a brace before placing.",
	)
	noteBeyond = calc.Text(
		"The pressure of {pressure} is above the capacity entered. Back it, or end today's pour {height} above " +
			"it and mark STOP there.",
	)
	askLow = calc.Text(
		"Is this tie less than 4 ft (1.22 m) below the top? Elsewhere the book's least pressure is {least}.",
	)
	noteUnused = calc.Text("A capacity was entered, but the face is whole. It is not used.")
)

// A gap of manyMissing ties or more, or one whose load more than mostSharing ties take
// over, gets no verdict that its ties hold. Our own limits.
const (
	manyMissing = 3
	mostSharing = 4
)

// compute sets the load of a tie and the verdicts on tie and face. It refuses
// nothing; without a strength there is no verdict.
func compute(r *calc.Recorder, in calc.Case) {
	n, m, p := in.Num("missing"), in.Num("sharing"), in.Num("pressure")
	area := r.Use(ties.TieAreaFormula, in.Num("across"), in.Num("up"), n, m)
	load := r.Use(ties.TieForceFormula, p, area)
	r.Put("area", area)
	r.Put("load", load)
	r.PutChoice("verdict", unrated)
	if isLow(in) {
		r.Note(calc.LevelAsk, calc.At("pressure"), askLow, calc.Amount("least", leastPressure, &displays.Rating))
	}
	if in.Has("strength") {
		rate(r, in, load)
	} else {
		r.Note(calc.LevelAsk, calc.At("strength"), askStrength)
	}
	if n >= manyMissing {
		r.Note(calc.LevelWarning, calc.At("missing"), noteMany)
	}
	if n > 0 && m > 2 {
		r.Note(calc.LevelCaution, calc.At("sharing"), noteShared)
	}
	rateFace(r, in)
}

// leastPressure is the least pressure in Pa that a wall is designed for, up to the next
// 10 psf: 630 psf.
var leastPressure = pressure.SI(10 * pressure.PSF(math.Ceil(float64(pressure.LeastOfBoth(1))/10)))

// isLow reports whether the pressure is under the least one. Only a tie near the top has
// so little.
func isLow(in calc.Case) bool { return calc.Under(in.Num("pressure"), leastPressure) }

// rate sets the working load, the widest spacing and the verdict on a tie with
// this load, in N. A pressure under the least one gives no spacing wider than the one
// entered.
func rate(r *calc.Recorder, in calc.Case, load float64) {
	n, m, working := in.Num("missing"), in.Num("sharing"), in.Num("strength")
	if byBreaking(in) {
		working = r.Use(ties.WorkingLoadFormula, working, in.Num("factor"))
	}
	r.Put("working", working)
	r.Put("used", load/working)
	widest := r.Use(ties.TieSpacingFormula, working, in.Num("pressure"), in.Num("up"), n, m)
	if !isLow(in) || !calc.Over(widest, in.Num("across")) {
		r.Put("widest", widest)
	}
	switch {
	case calc.Over(load, working):
		r.PutChoice("verdict", fails)
		r.Note(
			calc.LevelWarning,
			calc.At("strength"),
			noteOver,
			calc.Amount("load", load, &displays.Force),
			calc.Amount("working", working, &displays.ForceAtMost),
		)
	case n >= manyMissing || n > 0 && m > mostSharing:
		r.PutChoice("verdict", doubt)
	default:
		r.PutChoice("verdict", holds)
	}
}

// rateFace sets the verdict on the face. A weakened face is to be backed unless a
// capacity is entered that is not below the pressure.
func rateFace(r *calc.Recorder, in calc.Case) {
	known := in.Has("capacity")
	if in.Num("missing") == 0 && in.Choice("face") == faceWhole {
		r.PutChoice("backing", faceSound)
		if known {
			r.Note(calc.LevelNotice, calc.At("capacity"), noteUnused)
		}
		return
	}
	if !known {
		r.PutChoice("backing", faceBack)
		r.Note(calc.LevelWarning, calc.At("face"), noteBack)
		return
	}
	height := r.Use(ties.FaceHeightFormula, in.Num("capacity"), in.Num("weight"))
	r.Put("face-height", height)
	r.Note(calc.LevelAsk, calc.At("capacity"), askCapacity)
	if calc.Over(in.Num("pressure"), in.Num("capacity")) {
		r.PutChoice("backing", faceBack)
		r.Note(
			calc.LevelWarning,
			calc.At("capacity"),
			noteBeyond,
			calc.Amount("pressure", in.Num("pressure"), &displays.Rating),
			calc.Amount("height", height, &displays.HeightAtMost),
		)
		return
	}
	r.PutChoice("backing", faceWithin)
}
