package bracing

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
const (
	meansReadHigh = calc.Text("height of the reading")
	meansLower    = calc.Text("lower reading")
	meansUpper    = calc.Text("upper reading")
)

// Inches is a length in inches, the unit of the published plumb limits.
type Inches float64

// PlumbLimit is the most a wall may be out of plumb at height h, min(0.003 h, 1
// in.).
//
// Units: inches. Limits: heights up to 83 ft 4 in. Source: ACI 117-10,
// section 4.1.1. The 1990 edition allowed 1 in. at any height.
func PlumbLimit(height Inches) Inches { return Inches(math.Min(0.003*float64(height), 1)) }

// PlumbLimitFormula declares PlumbLimit.
var PlumbLimitFormula = &calc.Formula{
	ID: "plumb-limit", Title: calc.Text("Plumb limit at the string"), Expr: "min(0.003*h, 1)",
	Result: calc.Var{Symbol: "u", Meaning: calc.Text("most lean at this height"), Unit: "in"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: calc.Text("height of the string"), Unit: "in"}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return float64(PlumbLimit(Inches(v[0]))) },
	), Go: "bracing.PlumbLimit", Source: "aci117",
	Limits: calc.Text("Heights up to 83 ft 4 in. (25.4 m)."),
}

// EdgeLimit is the most an exposed corner column or joint groove may be out of
// plumb at height h, min(0.002 h, 1/2 in.).
//
// Units: inches. Limits: heights up to 83 ft 4 in. Source: ACI 117-10,
// section 4.1.2, from memory.
func EdgeLimit(height Inches) Inches { return Inches(math.Min(0.002*float64(height), 0.5)) }

// EdgeLimitFormula declares EdgeLimit.
var EdgeLimitFormula = &calc.Formula{
	ID: "edge-limit", Title: calc.Text("Limit for an exposed edge"), Expr: "min(0.002*h, 0.5)",
	Result: calc.Var{Symbol: "u", Meaning: calc.Text("most lean at this height"), Unit: "in"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: meansReadHigh, Unit: "in"}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return float64(EdgeLimit(Inches(v[0]))) },
	), Go: "bracing.EdgeLimit", Source: "aci117-edge",
}

// HomeLimit is the most a foundation wall may be out of plumb at height h by a
// home-builder guideline, 1.5 in. in 8 ft, in proportion.
//
// Units: inches. Limits: foundation walls of houses, readings up to HomeMost.
// Source: NAHB guideline 2-13; the greatest height is our own limit.
func HomeLimit(height Inches) Inches { return Inches(1.5 * float64(height) / 96) }

// HomeMost is the greatest height of a reading, in m, for which HomeLimit is used:
// 10 ft. The guideline names 8 ft and no taller wall.
const HomeMost = 10 * 0.3048

// HomeLimitFormula declares HomeLimit.
var HomeLimitFormula = &calc.Formula{
	ID: "home-limit", Title: calc.Text("Limit of the home-builder guideline"), Expr: "1.5*h/96",
	Result: calc.Var{Symbol: "u_n", Meaning: calc.Text("most lean at this height"), Unit: "in"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: meansReadHigh, Unit: "in"}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return float64(HomeLimit(Inches(v[0]))) },
	), Go: "bracing.HomeLimit", Source: "nahb",
	Limits: calc.Text("For readings up to 10 ft (3 m): the guideline names 8 ft and no taller wall."),
}

// SlopeLimit is the most a wall may lean between two points z apart in height,
// max(10, z/300): 10 mm within any 3 m, and the same slope beyond.
//
// Units: mm. Limits: walls and other vertical surfaces. Source: UFGS 03700,
// after ACI 117-90; 3/8 in. in 10 ft in US units, from memory.
func SlopeLimit(apart float64) float64 { return math.Max(10, apart/300) }

// SlopeLimitFormula declares SlopeLimit.
var SlopeLimitFormula = &calc.Formula{
	ID: "slope-limit", Title: calc.Text("Limit from reading to reading"), Expr: "max(10, z/300)",
	Result: calc.Var{Symbol: "u_s", Meaning: calc.Text("most lean between the two"), Unit: "mm"},
	Vars:   []calc.Var{{Symbol: "z", Meaning: calc.Text("height between the two"), Unit: "mm"}},
	Fn:     calc.Func1(SlopeLimit), Go: "bracing.SlopeLimit", Source: "ufgs21",
}

// Lean is the lean between two readings, x = |e_2 − e_1|.
//
// Units: any length. Limits: both read from the same plumb line. Source:
// definition.
func Lean(lower, upper float64) float64 { return math.Abs(upper - lower) }

// LeanFormula declares Lean.
var LeanFormula = &calc.Formula{
	ID: "lean", Title: calc.Text("Lean from reading to reading"), Expr: "abs(e_2 - e_1)",
	Result: calc.Var{Symbol: "x", Meaning: calc.Text("lean between the two"), Unit: "mm", US: "in"},
	Vars: []calc.Var{
		{Symbol: "e_1", Meaning: meansLower, Unit: "mm", US: "in"},
		{Symbol: "e_2", Meaning: meansUpper, Unit: "mm", US: "in"}},
	Fn: calc.Func2(Lean), Go: "bracing.Lean", Source: "straight",
}

// OutOfStraight is the distance of a reading from the straight line between two
// others, s = |e − e_1 − (e_2 − e_1) (z − z_1) / (z_2 − z_1)|.
//
// Units: any length, the same for all. Limits: z_2 ≠ z_1. Source: straight
// line through two points.
func OutOfStraight(off, high, off1, high1, off2, high2 float64) float64 {
	line := off1 + float64((off2-off1)*(high-high1)/(high2-high1))
	return math.Abs(off - line)
}

// OutOfStraightFormula declares OutOfStraight.
var OutOfStraightFormula = &calc.Formula{
	ID: "bow", Title: calc.Text("Bow between base and top"), Expr: "abs(e - e_1 - (e_2 - e_1)*(z - z_1)/(z_2 - z_1))",
	Result: calc.Var{Symbol: "s", Meaning: calc.Text("off the straight line"), Unit: "mm", US: "in"},
	Vars: []calc.Var{
		{Symbol: "e", Meaning: calc.Text("reading between"), Unit: "mm", US: "in"},
		{Symbol: "z", Meaning: calc.Text("height of it"), Unit: "mm", US: "in"},
		{Symbol: "e_1", Meaning: meansLower, Unit: "mm", US: "in"},
		{Symbol: "z_1", Meaning: calc.Text("height of the lower"), Unit: "mm", US: "in"},
		{Symbol: "e_2", Meaning: meansUpper, Unit: "mm", US: "in"},
		{Symbol: "z_2", Meaning: calc.Text("height of the upper"), Unit: "mm", US: "in"}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return OutOfStraight(v[0], v[1], v[2], v[3], v[4], v[5]) },
	), Go: "bracing.OutOfStraight", Source: "straight",
}
