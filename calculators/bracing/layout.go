package bracing

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
const (
	meansBetween    = calc.Text("braces between")
	meansFixedGap   = calc.Text("from one fixed brace to the next")
	meansWallLength = calc.Text("length of the wall")
)

// FillBraces is the number of braces between two fixed ones with which no gap
// exceeds the largest spacing, n = ceil(g / s) − 1, at least 0.
//
// Units: any length, the same for both; a count. Limits: s > 0. Source:
// arithmetic; the spacing itself is the form maker's or the engineer's.
func FillBraces(gap, spacing float64) float64 {
	return math.Max(calc.Ceil(gap/spacing)-1, 0)
}

// FillBracesFormula declares FillBraces.
var FillBracesFormula = &calc.Formula{
	ID: "fill", Title: calc.Text("Braces between two fixed ones"), Expr: "max(ceil(g/s - 0.000000001) - 1, 0)",
	Result: calc.Var{Symbol: "n", Meaning: meansBetween},
	Vars: []calc.Var{
		{Symbol: "g", Meaning: meansFixedGap, Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: calc.Text("largest spacing"), Unit: "m", US: "ft"}},
	Fn: calc.Func2(FillBraces), Go: "bracing.FillBraces", Source: "rules",
}

// EvenGap is the gap when n braces are spread evenly, e = g / (n + 1).
//
// Units: any length. Limits: n ≥ 0. Source: arithmetic.
func EvenGap(gap, between float64) float64 { return gap / (between + 1) }

// EvenGapFormula declares EvenGap.
var EvenGapFormula = &calc.Formula{
	ID: "even", Title: calc.Text("Even gap"), Expr: "g/(n + 1)",
	Result: calc.Var{Symbol: "e", Meaning: calc.Text("gap from brace to brace"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "g", Meaning: meansFixedGap, Unit: "m", US: "ft"},
		{Symbol: "n", Meaning: meansBetween}},
	Fn: calc.Func2(EvenGap), Go: "bracing.EvenGap", Source: "even",
}

// PlankCount is the number of planks of a platform along a wall,
// N = w ceil((L − k) / (p − k)): w side by side, each of length p and lapping
// the next by k.
//
// Units: any length, the same for all; a count. Limits: p > k; at least one
// plank in each line. Source: arithmetic; the lap is 29 CFR 1926.451(b)(7).
func PlankCount(side, length, plank, lap float64) float64 {
	return side * math.Max(calc.Ceil((length-lap)/(plank-lap)), 1)
}

// PlankCountFormula declares PlankCount.
var PlankCountFormula = &calc.Formula{
	ID: "planks", Title: calc.Text("Planks of the platform"), Expr: "w*max(ceil((L - k)/(p - k) - 0.000000001), 1)",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("planks")},
	Vars: []calc.Var{
		{Symbol: "w", Meaning: calc.Text("planks side by side")},
		{Symbol: "L", Meaning: meansWallLength, Unit: "m", US: "ft"},
		{Symbol: "p", Meaning: calc.Text("length of a plank"), Unit: "m", US: "ft"},
		{Symbol: "k", Meaning: calc.Text("lap"), Unit: "m", US: "ft"}},
	Fn: calc.Func4(PlankCount), Go: "bracing.PlankCount", Source: "osha451",
}

// RailLength is the length of guardrail on the open side and both ends of a
// platform, R = L + 2 b.
//
// Units: any length. Limits: the wall closes the fourth side. Source:
// arithmetic; that the open sides and ends are railed is 29 CFR 1926.451(g).
func RailLength(length, width float64) float64 { return length + float64(2*width) }

// RailLengthFormula declares RailLength.
var RailLengthFormula = &calc.Formula{
	ID: "rail", Title: calc.Text("Guardrail"), Expr: "L + 2*b",
	Result: calc.Var{Symbol: "R", Meaning: calc.Text("length of guardrail"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansWallLength, Unit: "m", US: "ft"},
		{Symbol: "b", Meaning: calc.Text("width of the platform"), Unit: "m", US: "ft"}},
	Fn: calc.Func2(RailLength), Go: "bracing.RailLength", Source: "osha451",
}

// LabelOnPlan and HelpOnPlan are the texts of the input by which braces may be farther
// apart than the house rule.
const (
	LabelOnPlan = calc.Text("The brace plan says so")
	HelpOnPlan  = calc.Text("Yes only if the plan has this very figure.")
)
