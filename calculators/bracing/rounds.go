package bracing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// Movement is how far a brace moved between two rounds, m = g_2 − g_1. Above
// zero the wall moved away from the string.
//
// Units: any length. Limits: the same string on the same blocks. Source:
// definition.
func Movement(before, after float64) float64 { return after - before }

// MovementFormula declares Movement.
var MovementFormula = &calc.Formula{
	ID: "movement", Title: calc.Text("Moved since the last round"), Expr: "g_2 - g_1",
	Result: calc.Var{Symbol: "m", Meaning: calc.Text("movement; minus is toward the string"), Unit: "mm", US: "in"},
	Vars: []calc.Var{
		{Symbol: "g_1", Meaning: calc.Text("gap in the round before"), Unit: "mm", US: "in"},
		{Symbol: "g_2", Meaning: calc.Text("gap in this round"), Unit: "mm", US: "in"}},
	Fn: calc.Func2(Movement), Go: "bracing.Movement", Source: "practice",
}

// LeftOver is the fraction of a deviation that is left after a round,
// q = |e_2| / |e_1|. Below 1 the wall came nearer its line; near 2 the brace was
// turned the wrong way.
//
// Units: any length, the same for both; a pure number. Limits: e_1 not 0.
// Source: definition.
func LeftOver(before, after float64) float64 { return math.Abs(after) / math.Abs(before) }

// LeftOverFormula declares LeftOver.
var LeftOverFormula = &calc.Formula{
	ID: "left", Title: calc.Text("Share of the error left"), Expr: "abs(e_2)/abs(e_1)",
	Result: calc.Var{Symbol: "q", Meaning: calc.Text("share that is left")},
	Vars: []calc.Var{
		{Symbol: "e_1", Meaning: calc.Text("worst in the first round"), Unit: "mm", US: "in"},
		{Symbol: "e_2", Meaning: calc.Text("worst in the last round"), Unit: "mm", US: "in"}},
	Fn: calc.Func2(LeftOver), Go: "bracing.LeftOver", Source: "practice",
}

// LabelCoarse is what to do where the smallest turn moves the wall past its tolerance.
const LabelCoarse = calc.Text("Screw too coarse: tell the foreman")

const (
	noteEighths = calc.Text("A quarter turn moves the wall by {move}, more than the tolerance. Turn by eighths.")
	noteCoarse  = calc.Text(
		"An eighth of a turn moves the wall by {move}, more than it is off. Do not turn any brace.",
	)
)

// CoarseQuarter reports whether a quarter turn moves the wall by more than the tolerance.
// step is the movement for one turn; both in m.
func CoarseQuarter(step, tolerance float64) bool { return Exceeds(step/4, tolerance) }

// NoteCoarse notes a screw whose quarter turn moves the wall by more than the tolerance;
// useless is true where it can set no brace of the wall. step is the movement for one
// turn; both in m.
func NoteCoarse(r *calc.Recorder, step, tolerance float64, useless bool) {
	switch {
	case useless:
		r.Note(calc.LevelWarning, calc.At("tolerance"), noteCoarse, calc.Amount("move", step/8, &displays.Part))
	case CoarseQuarter(step, tolerance):
		r.Note(calc.LevelNotice, calc.At("tolerance"), noteEighths, calc.Amount("move", step/4, &displays.Part))
	}
}
