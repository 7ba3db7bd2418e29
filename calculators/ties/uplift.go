package ties

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansVolume = calc.Text("volume in the concrete")
	meansUplift = calc.Text("uplift")
	meansHold   = calc.Text("force in all straps")
	meansOwn    = calc.Text("own weight, as a force")
	meansThick  = calc.Text("thickness in the wall")
	meansTall   = calc.Text("height of the block-out")
	meansLevel  = calc.Text("level of the concrete above its underside")
)

// Submerged is the submerged volume of a box of length l, width b and height h
// in concrete up to the level a above its underside, l·b·min(a, h). Any unit of
// length.
func Submerged(l, b, h, a float64) float64 { return l * b * math.Min(a, h) }

// SubmergedFormula declares Submerged.
var SubmergedFormula = &calc.Formula{
	ID: "volume", Title: calc.Text("Volume in the concrete"),
	Expr: "l*b*min(a, h)", Result: calc.Var{Symbol: "V", Meaning: meansVolume, Unit: "m³", US: "ft³"},
	Vars: []calc.Var{
		{Symbol: "l", Meaning: calc.Text("length along the wall"), Unit: "m", US: "ft"},
		{
			Symbol:  "b",
			Meaning: meansThick,
			Unit:    "m",
			US:      "ft",
		}, {Symbol: "h", Meaning: meansTall, Unit: "m", US: "ft"},
		{Symbol: "a", Meaning: meansLevel, Unit: "m", US: "ft"},
	},
	Fn: calc.Func4(Submerged), Go: "ties.Submerged", Source: "statics",
}

// Uplift is the net upward force on a body in fluid concrete, w·V − G: the weight
// of the displaced concrete less the weight of the body. It is negative for a
// body that sinks. Any coherent units. Source: Archimedes.
func Uplift(w, volume, weight float64) float64 { return float64(w*volume) - weight }

// UpliftFormula declares Uplift.
var UpliftFormula = &calc.Formula{
	ID: "uplift", Title: calc.Text("Uplift"),
	Expr: "w*V - G", Result: calc.Var{Symbol: "U", Meaning: meansUplift, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"},
		{Symbol: "V", Meaning: meansVolume, Unit: "m³", US: "ft³"},
		{Symbol: "G", Meaning: meansOwn, Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func3(Uplift), Go: "ties.Uplift", Source: "archimedes",
	Limits: calc.Text("Fresh concrete reaches its underside and is fluid all around."),
}

// SidePush is the force on one side of a box of width b and height h, in
// fluid concrete up to the level a above its underside: w·b·m·(a − m/2), with m
// the wetted height. Below the top it is w·b·a²/2.
func SidePush(w, b, h, a float64) float64 {
	wet := math.Min(a, h)
	return w * b * wet * (a - wet/2)
}

// SidePushFormula declares SidePush.
var SidePushFormula = &calc.Formula{
	ID: "side", Title: calc.Text("Push on one side"),
	Expr: "w*b*min(a, h)*(a - min(a, h)/2)", Result: calc.Var{Symbol: "F", Meaning: meansF, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{
		{
			Symbol:  "w",
			Meaning: meansW,
			Unit:    "kN/m³",
			US:      "lb/ft³",
		}, {Symbol: "b", Meaning: meansThick, Unit: "m", US: "ft"},
		{Symbol: "h", Meaning: meansTall, Unit: "m", US: "ft"}, {Symbol: "a", Meaning: meansLevel, Unit: "m", US: "ft"},
	},
	Fn: calc.Func4(SidePush), Go: "ties.SidePush", Source: "statics",
	Limits: calc.Text("All concrete counts as fluid. What pushes the block is the difference of both sides."),
}

// Holding is the force that the straps of a block-out hold, k·w·V − G: the factor is on
// the whole weight of the displaced concrete, and the weight of the body counts once. So
// weight and straps together hold k times what lifts, and a heavy body gets no more credit
// than its weight. It is never less than k·(w·V − G) for k of 1 or more. It is negative for
// a body that needs no strap. Any coherent units. Source: safety against flotation, weight
// and anchors over uplift, USACE EM 1110-2-2100, from memory.
func Holding(factor, w, volume, weight float64) float64 { return float64(factor*w*volume) - weight }

// HoldingFormula declares Holding.
var HoldingFormula = &calc.Formula{
	ID: "hold", Title: calc.Text("Straps hold in all"),
	Expr: "k*w*V - G", Result: calc.Var{Symbol: "F", Meaning: meansHold, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "k", Meaning: calc.Text("factor on the uplift")},
		{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"},
		{Symbol: "V", Meaning: meansVolume, Unit: "m³", US: "ft³"},
		{Symbol: "G", Meaning: meansOwn, Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func4(Holding), Go: "ties.Holding", Source: "flotation",
	Limits: calc.Text("Fresh concrete reaches its underside and is fluid all around."),
}

// StrapShare is the number of straps for a force, F/S, not rounded up.
func StrapShare(force, rating float64) float64 { return force / rating }

// StrapShareFormula declares StrapShare.
var StrapShareFormula = &calc.Formula{
	ID: "straps", Title: calc.Text("Straps, before rounding up"),
	Expr: "F/S", Result: calc.Var{Symbol: "n", Meaning: calc.Text("straps, to be rounded up")},
	Vars: []calc.Var{
		{Symbol: "F", Meaning: meansHold, Unit: "kN", US: "lbf"},
		{Symbol: "S", Meaning: calc.Text("rating of one strap"), Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func2(StrapShare), Go: "ties.StrapShare", Source: "strap",
}
