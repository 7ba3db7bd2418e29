package placing

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
const (
	meansOrdered   = calc.Text("slump ordered")
	meansSlump     = calc.Text("slump as tested")
	meansTolerance = calc.Text("tolerance of ASTM C94")
)

// LeastByOrder is the least slump that an order lets the plant send, S − d.
// Any unit of length. Source: ASTM C94.
func LeastByOrder(ordered, down float64) float64 { return ordered - down }

// LeastByOrderFormula declares LeastByOrder.
var LeastByOrderFormula = &calc.Formula{
	ID: "order-least", Title: calc.Text("Least slump by the order"), Expr: "S - d",
	Result: calc.Var{Symbol: "s_l", Meaning: calc.Text("least slump by the order"), Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "S", Meaning: meansOrdered, Unit: "in"},
		{Symbol: "d", Meaning: meansTolerance, Unit: "in"},
	},
	Fn: calc.Func2(LeastByOrder), Go: "placing.LeastByOrder", Source: "c94",
}

// MostByOrder is the greatest slump that an order lets the plant send, S + u.
// Any unit of length. Source: ASTM C94.
func MostByOrder(ordered, up float64) float64 { return ordered + up }

// MostByOrderFormula declares MostByOrder.
var MostByOrderFormula = &calc.Formula{
	ID: "order-most", Title: calc.Text("Greatest slump by the order"), Expr: "S + u",
	Result: calc.Var{Symbol: "s_m", Meaning: calc.Text("greatest slump by the order"), Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "S", Meaning: meansOrdered, Unit: "in"},
		{Symbol: "u", Meaning: meansTolerance, Unit: "in"},
	},
	Fn: calc.Func2(MostByOrder), Go: "placing.MostByOrder", Source: "c94",
}

// SlumpTolerance returns how far below and above the ordered slump ASTM C94
// lets a load be, in inches. A maximum, "not to exceed", has nothing above.
// Source: ASTM C94, tolerances in slump, from memory.
func SlumpTolerance(ordered float64, maximum bool) (down, up float64) {
	switch {
	case maximum && ordered > 3:
		return 2.5, 0
	case maximum:
		return 1.5, 0
	case ordered > 4:
		return 1.5, 1.5
	case ordered > 2:
		return 1, 1
	}
	return 0.5, 0.5
}

// WaterToAim is the water that brings a load from a slump s up to a no further
// than by the fastest rule of thumb, min(W, max(0, a − s)/k·V), and never more
// than the water withheld, W. Slumps in in., k in in. for each gal/yd³, V in
// yd³, W in US gal. Source: rules of thumb as in SlumpGainFormula.
func WaterToAim(withheld, aim, slump, each, yards float64) float64 {
	return math.Min(withheld, math.Max(0, aim-slump)/each*yards)
}

// WaterToAimFormula declares WaterToAim.
var WaterToAimFormula = &calc.Formula{
	ID: "water", Title: calc.Text("Water that may go in"), Expr: "min(W, max(0, a - s)/k*V)",
	Result: calc.Var{Symbol: "w", Meaning: calc.Text("water that may go in"), Unit: "US gal"},
	Vars: []calc.Var{
		{Symbol: "W", Meaning: calc.Text("water withheld, on the ticket"), Unit: "US gal"},
		{Symbol: "a", Meaning: calc.Text("slump aimed at"), Unit: "in"},
		{Symbol: "s", Meaning: meansSlump, Unit: "in"},
		{Symbol: "k", Meaning: meansEach, Unit: "in"},
		{Symbol: "V", Meaning: meansDrum, Unit: "yd³"},
	},
	Fn: calc.Func5(WaterToAim), Go: "placing.WaterToAim", Source: "slump", Limits: ruleHolds,
}

// HoseLeast is the least slump at the hose, in in., at which concrete goes into the wall:
// stiffer concrete does not flow around bars and frames. It is our own limit.
const HoseLeast = 4.5

// PumpLoss is the slump lost between chute and hose, s − h; below 0 it was
// gained. Any unit of length. Source: arithmetic.
func PumpLoss(chute, hose float64) float64 { return chute - hose }

// PumpLossFormula declares PumpLoss.
var PumpLossFormula = &calc.Formula{
	ID: "pump-loss", Title: calc.Text("Slump lost in the pump"), Expr: "s - h",
	Result: calc.Var{Symbol: "l", Meaning: calc.Text("slump lost in the pump"), Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "s", Meaning: meansSlump, Unit: "in"},
		{Symbol: "h", Meaning: calc.Text("slump at the hose"), Unit: "in"},
	},
	Fn: calc.Func2(PumpLoss), Go: "placing.PumpLoss", Source: "own",
}
