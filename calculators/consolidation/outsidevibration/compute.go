package outsidevibration

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
)

const (
	noteNothing = calc.Text(
		"No document gives a force, a time or a reach through foam. What follows is common practice.",
	)
	noteOnlyFoot = calc.Text(
		"Common practice: in the first lift only, after the whip, with no more than that lift in the wall.",
	)
	noteShort = calc.Text("Common practice: 3 to 5 seconds at one spot, then on. Go from the bottom up.")
	noteWeb   = calc.Text(
		"Common practice: on a fastening strip, never on a cut tie, a backed face or a vertical seam. Bare foam " +
			"only dents.",
	)
	noteBulge = calc.Text(
		"Common practice: one person does nothing but watch the form. Stop at the first bulge, creak or leak.",
	)
	noteNever    = calc.Text("Never in place of the vibrator inside. Tap the form after: a hollow sound is a void.")
	noteBuiltFor = calc.Text(
		"The rule is for stiff forms that were built to be shaken. Ask the form's maker and its designer first.",
	)
	noteLow = calc.Text("Below the least quoted, {swing} and {least} times gravity. Such shaking does little.")
)

// Published limits, in SI units.
const (
	mostApart = 3 * 0.3048    // 3 ft, spacing of vibrators
	leastSway = 0.04e-3       // 40 µm, amplitude
	leastG    = 1.5 * gravity // 1.5 g, acceleration
	gravity   = 9.80665       // m/s²
)

// compute sets the acceleration and, on a stiff form, the vibrators. On a foam
// form it sets only that nothing is published. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	a := r.Use(consolidation.AccelerationFormula, in.Num("amplitude"), in.Num("frequency"))
	r.Put("acceleration", a/gravity)
	r.Put("hertz", in.Num("frequency"))
	if !stiff(in) {
		r.PutChoice("known", "nothing")
		r.Note(calc.LevelCaution, calc.At("form"), noteNothing)
		for _, practice := range []calc.Text{noteOnlyFoot, noteShort, noteWeb} {
			r.Note(calc.LevelNotice, calc.At("form"), practice)
		}
		r.Note(calc.LevelWarning, calc.At("form"), noteBulge)
		r.Note(calc.LevelNotice, calc.At("form"), noteNever)
		return
	}
	r.PutChoice("known", "rule")
	r.Note(calc.LevelNotice, calc.At("form"), noteBuiltFor)
	putFloor(r, in, a)
	force := r.Use(consolidation.ShakeFormula, in.Num("form-mass")*gravity, in.Num("concrete-mass")*gravity)
	count := r.Use(consolidation.FormVibratorsFormula, in.Num("length"), mostApart)
	r.Put("force", force)
	r.Put("vibrators", count)
	r.Put("force-each", r.Use(consolidation.ForceEachFormula, force, count))
}

// putFloor sets the verdict on amplitude and acceleration a, in m/s², by the least
// published, and notes one that is below.
func putFloor(r *calc.Recorder, in calc.Case, a float64) {
	sway, pull := !calc.Under(in.Num("amplitude"), leastSway), !calc.Under(a, leastG)
	floor := "neither"
	switch {
	case sway && pull:
		floor = "both"
	case pull:
		floor = "swing"
	case sway:
		floor = "acceleration"
	}
	r.PutChoice("floor", floor)
	if floor != "both" {
		r.Note(
			calc.LevelNotice,
			calc.At("amplitude"),
			noteLow,
			calc.Amount("swing", leastSway, &showSwing),
			calc.Amount("least", leastG/gravity, &displays.Tenths),
		)
	}
}
