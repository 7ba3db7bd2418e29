package bracing

import (
	"math"

	"coursebook/calculators/calc"
)

var meansOneTurn = calc.Text("travel of one turn")

// Symbols that several formulas share.
var (
	varOff         = shortLength("e", calc.Text("off the line; minus is too near the string"))
	varRun         = longLength("d", calc.Text("foot of the brace from the wall"))
	varAttach      = longLength("a", calc.Text("height of the brace on the wall"))
	varBelow       = longLength("f", calc.Text("foot below the wall base"))
	varLong        = longLength("L", calc.Text("length of the brace"))
	varString      = longLength("h_s", calc.Text("height of the string"))
	varTravel      = shortLength("p", meansOneTurn)
	varChange      = shortLength("b", calc.Text("change of the brace's length"))
	varAt          = shortLength("x", calc.Text("movement of the wall at the brace"))
	varEnds        = calc.Var{Symbol: "m", Meaning: calc.Text("threaded ends")}
	smallMovements = calc.Text("Small movements; the base of the wall stays put.")
)

// shortLength returns the symbol of a length in mm or in.
func shortLength(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "mm", US: "in"}
}

// longLength returns the symbol of a length in m or ft.
func longLength(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m", US: "ft"}
}

// Deviation is the distance of the wall from its line, e = g − k: the gap read at
// a brace less the thickness of the end blocks. Above zero the wall is too far
// from the string, below zero too near.
//
// Units: any, the same for both. Limits: the string touches nothing between
// the blocks. Source: common practice.
func Deviation(gap, block float64) float64 { return gap - block }

// DeviationFormula declares Deviation.
var DeviationFormula = &calc.Formula{
	ID: "deviation", Title: calc.Text("Off the line"), Expr: "g - k", Result: varOff,
	Vars: []calc.Var{shortLength("g", calc.Text("gap read")), shortLength("k", calc.Text("end block"))},
	Fn:   calc.Func2(Deviation), Go: "bracing.Deviation", Source: "practice",
}

// AtBrace is the movement of the wall where the brace holds it for a movement of
// e at the string, x = e a / h_s. The wall turns about its base: movements grow
// with height.
//
// Units: m. Limits: the part of the wall at the brace stays straight and its
// base does not move. Source: derived.
func AtBrace(deviation, attach, stringHeight float64) float64 {
	return deviation * attach / stringHeight
}

// AtBraceFormula declares AtBrace.
var AtBraceFormula = &calc.Formula{
	ID: "at-brace", Title: calc.Text("Movement where the brace holds"), Expr: "e*a/h_s", Result: varAt,
	Vars: []calc.Var{varOff, varAttach, varString},
	Fn:   calc.Func3(AtBrace), Go: "bracing.AtBrace", Source: "derived", Limits: smallMovements,
}

// BraceChange is the change of a brace's length that moves the wall by x
// horizontally, b = x d / L = x cos θ.
//
// Derivation: with the base of the wall as origin, the brace's head at height
// a moves to (x, √(a² − x²)); the foot is at (−d, −f). Then
//
//	L(x)² = (d + x)² + (f + √(a² − x²))²
//	      = L² + 2 d x + 2 f (√(a² − x²) − a)
//
// and so dL/dx = d/L = cos θ at x = 0. The next term is at most about
// x²/(2 L) (1 + |f|/a): for a wall off by 1 in. on an 8 ft brace under 1/100
// in., far below a quarter turn. A longer brace pushes the wall away.
//
// Units: m. Limits: x small compared with a and L. Source: derived.
func BraceChange(x, run, length float64) float64 { return x * run / length }

// BraceChangeFormula declares BraceChange.
var BraceChangeFormula = &calc.Formula{
	ID: "brace-change", Title: calc.Text("Change of the brace's length"), Expr: "x*d/L", Result: varChange,
	Vars: []calc.Var{varAt, varRun, varLong},
	Fn:   calc.Func3(BraceChange), Go: "bracing.BraceChange", Source: "derived", Limits: smallMovements,
}

// TravelByThreads is the travel of one turn from the threads in an inch,
// p = m / N, with m the number of threaded ends: left and right threads of a
// turnbuckle both count.
//
// Units: inches, threads per inch. Limits: single-start threads. Source:
// definition of the thread, ASME B1.1 and B1.5.
func TravelByThreads(ends, perInch float64) Inches { return Inches(ends / perInch) }

// TravelByThreadsFormula declares TravelByThreads.
var TravelByThreadsFormula = &calc.Formula{
	ID: "travel-by-threads", Title: calc.Text("Travel of one turn, by threads"), Expr: "m/N",
	Result: calc.Var{Symbol: "p", Meaning: meansOneTurn, Unit: "in"},
	Vars:   []calc.Var{varEnds, {Symbol: "N", Meaning: calc.Text("threads in one inch")}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return float64(TravelByThreads(v[0], v[1])) },
	), Go: "bracing.TravelByThreads", Source: "thread",
}

// TravelByPitch is the travel of one turn from the pitch, p = m P.
//
// Units: any length. Limits: single-start threads. Source: as TravelByThreads.
func TravelByPitch(ends, pitch float64) float64 { return ends * pitch }

// TravelByPitchFormula declares TravelByPitch.
var TravelByPitchFormula = &calc.Formula{
	ID: "travel-by-pitch", Title: calc.Text("Travel of one turn, by pitch"), Expr: "m*P", Result: varTravel,
	Vars: []calc.Var{varEnds, shortLength("P", calc.Text("pitch of the thread"))},
	Fn:   calc.Func2(TravelByPitch), Go: "bracing.TravelByPitch", Source: "thread",
}

// Turns is the number of turns for a change of length, n = |b| / p. The direction
// of turning is a separate output.
//
// Units: any length, the same for both. Limits: p > 0. Source: definition.
func Turns(change, travel float64) float64 { return math.Abs(change) / travel }

// TurnsFormula declares Turns.
var TurnsFormula = &calc.Formula{
	ID: "turns", Title: calc.Text("Turns of the adjuster"), Expr: "abs(b)/p",
	Result: calc.Var{Symbol: "n", Meaning: calc.Text("turns")}, Vars: []calc.Var{varChange, varTravel},
	Fn: calc.Func2(Turns), Go: "bracing.Turns", Source: "derived",
}

// PerTurn is the movement of the wall at the string for one turn,
// y = p (L / d) (h_s / a), the inverse of AtBrace and BraceChange.
//
// Units: m. Limits: as for AtBrace and BraceChange. Source: derived.
func PerTurn(travel, length, run, stringHeight, attach float64) float64 {
	return travel * length / run * stringHeight / attach
}

// PerTurnFormula declares PerTurn.
var PerTurnFormula = &calc.Formula{
	ID: "per-turn", Title: calc.Text("One turn at the string"), Expr: "p*L/d*h_s/a",
	Result: shortLength(
		"y",
		calc.Text("movement at the string"),
	), Vars: []calc.Var{varTravel, varLong, varRun, varString, varAttach},
	Fn: calc.Func5(PerTurn), Go: "bracing.PerTurn", Source: "derived", Limits: smallMovements,
}

// BowRadius is the radius of a shallow bow, R = L² / (8 s), with L from end
// to end and s the offset in the middle.
//
// Units: m. Limits: s far below L; the exact radius is (L²/4 + s²) / (2 s).
// Source: chord and rise relation.
func BowRadius(length, offset float64) float64 { return length * length / (8 * offset) }

// BowRadiusFormula declares BowRadius.
var BowRadiusFormula = &calc.Formula{
	ID: "bow-radius", Title: calc.Text("Radius of a shallow bow"), Expr: "L^2/(8*s)",
	Result: longLength("R", calc.Text("radius")),
	Vars: []calc.Var{
		longLength("L", calc.Text("length from end to end")),
		longLength("s", calc.Text("offset in the middle")),
	},
	Fn: calc.Func2(BowRadius), Go: "bracing.BowRadius", Source: "chord",
}
