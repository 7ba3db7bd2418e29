package ties

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansVolume = calc.Text("volume in the concrete")
	meansUplift = calc.Text("uplift")
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
		{Symbol: "G", Meaning: calc.Text("own weight, as a force"), Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func3(Uplift), Go: "ties.Uplift", Source: "archimedes",
	Limits: calc.Text("Fresh concrete reaches its underside and is fluid all round."),
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

// StrapShare is the number of straps for an uplift, k·U/S, not rounded up.
func StrapShare(factor, force, rating float64) float64 { return factor * force / rating }

// StrapShareFormula declares StrapShare.
var StrapShareFormula = &calc.Formula{
	ID: "straps", Title: calc.Text("Straps, before rounding up"),
	Expr: "k*U/S", Result: calc.Var{Symbol: "n", Meaning: calc.Text("straps, to be rounded up")},
	Vars: []calc.Var{
		{Symbol: "k", Meaning: calc.Text("factor on the uplift")},
		{Symbol: "U", Meaning: meansUplift, Unit: "kN", US: "lbf"},
		{Symbol: "S", Meaning: calc.Text("rating of one strap"), Unit: "kN", US: "lbf"},
	},
	Fn: calc.Func3(StrapShare), Go: "ties.StrapShare", Source: "strap",
}
