package bracing

import (
	"math"

	"coursebook/calculators/calc"
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
