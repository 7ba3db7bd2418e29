package tieload

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/ties"
)

const (
	noteOver    = calc.Text("The ties may tear. One carries {load} and may carry {working}. Do not place this way.")
	noteFactor  = calc.Text("The factor is below 2. ACI 347 asks for at least 2 on form ties.")
	askStrength = calc.Text("What load breaks the tie? Without the form maker's figure there is no verdict.")
	noteMany    = calc.Text("So many missing in one place leave more than the ties in doubt. Ask the engineer.")
	noteShared  = calc.Text("More than two ties share the load. That holds only where the face spreads it both ways.")
	noteBack    = calc.Text(
		"The face is weakened and no capacity is known. Back it with boards and a brace before placing.",
	)
	noteBeyond = calc.Text(
		"The pressure of {pressure} is above the capacity entered. Back the face, or keep the fluid concrete to " +
			"{height} above it.",
	)
	noteUnused = calc.Text("A capacity was entered, but the face is whole. It is not used.")
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
	if in.Has("strength") {
		rate(r, in, load)
	} else {
		r.Note(calc.LevelAsk, calc.At("strength"), askStrength)
	}
	if n >= 3 {
		r.Note(calc.LevelWarning, calc.At("missing"), noteMany)
	}
	if n > 0 && m > 2 {
		r.Note(calc.LevelCaution, calc.At("sharing"), noteShared)
	}
	rateFace(r, in)
}

// rate sets the working load, the widest spacing and the verdict on a tie with
// this load, in N.
func rate(r *calc.Recorder, in calc.Case, load float64) {
	working := r.Use(ties.WorkingLoadFormula, in.Num("strength"), in.Num("factor"))
	r.Put("working", working)
	r.Put("used", load/working)
	r.Put(
		"widest",
		r.Use(ties.TieSpacingFormula, working, in.Num("pressure"), in.Num("up"), in.Num("missing"), in.Num("sharing")),
	)
	r.PutChoice("verdict", holds)
	if calc.Over(load, working) {
		r.PutChoice("verdict", fails)
		r.Note(
			calc.LevelWarning,
			calc.At("strength"),
			noteOver,
			calc.Amount("load", load, &displays.Force),
			calc.Amount("working", working, &displays.ForceAtMost),
		)
	}
	if in.Num("factor") < 2 {
		r.Note(calc.LevelCaution, calc.At("factor"), noteFactor)
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
	r.PutChoice("backing", faceWithin)
	if calc.Over(in.Num("pressure"), in.Num("capacity")) {
		r.PutChoice("backing", faceBack)
		r.Note(
			calc.LevelWarning,
			calc.At("capacity"),
			noteBeyond,
			calc.Amount("pressure", in.Num("pressure"), &displays.Rating),
			calc.Amount("height", height, &displays.HeightAtMost),
		)
	}
}
