package placing

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
const (
	meansLeg  = calc.Text("load of one outrigger")
	meansSoil = calc.Text("pressure the ground may carry")
)

// Setback is the least distance of a pad from the edge of a cut, max(k·D, a): k
// times the depth of the cut, or what is asked if that is more. Any unit of
// length. Limits: k of 1 or more. Source: Concrete Construction, "Spotting boom
// pumps safely".
func Setback(factor, depth, asked float64) float64 { return math.Max(factor*depth, asked) }

// SetbackFormula declares Setback.
var SetbackFormula = &calc.Formula{
	ID: "setback", Title: calc.Text("Back from the edge"), Expr: "max(k*D, a)",
	Result: calc.Var{Symbol: "b", Meaning: calc.Text("from the edge of the cut to the pad"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "k", Meaning: calc.Text("1 for firm ground, 1.5 for loose ground")},
		{Symbol: "D", Meaning: calc.Text("depth of the cut"), Unit: "m", US: "ft"},
		{Symbol: "a", Meaning: calc.Text("asked by report, code or operator"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(Setback), Go: "placing.Setback", Source: "one-to-one",
}

// PadArea is the ground that a load needs at a pressure, R/q. Any coherent units.
// Source: statics.
func PadArea(load, pressure float64) float64 { return load / pressure }

// PadAreaFormula declares PadArea.
var PadAreaFormula = &calc.Formula{
	ID: "pad-area", Title: calc.Text("Area of the pad"), Expr: "R/q",
	Result: calc.Var{Symbol: "A", Meaning: calc.Text("area of the pad"), Unit: "m²", US: "ft²"},
	Vars: []calc.Var{
		{Symbol: "R", Meaning: meansLeg, Unit: "kN", US: "lbf"},
		{Symbol: "q", Meaning: meansSoil, Unit: "kPa", US: "psf"},
	},
	Fn: calc.Func2(PadArea), Go: "placing.PadArea", Source: "practice",
}

// PadSide is the side of a square pad of an area, √A. Any unit of length.
// Source: geometry.
func PadSide(area float64) float64 { return math.Sqrt(area) }

// PadSideFormula declares PadSide.
var PadSideFormula = &calc.Formula{
	ID: "pad-side", Title: calc.Text("Side of a square pad"), Expr: "sqrt(A)",
	Result: calc.Var{Symbol: "s", Meaning: calc.Text("side of a square pad"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{{Symbol: "A", Meaning: calc.Text("area of the pad"), Unit: "m²", US: "ft²"}},
	Fn:     calc.Func1(PadSide), Go: "placing.PadSide", Source: "practice",
}

// PadPressure is the pressure under a square pad of side s, R/s². Any coherent
// units. Source: statics.
func PadPressure(load, side float64) float64 { return load / math.Pow(side, 2) }

// PadPressureFormula declares PadPressure.
var PadPressureFormula = &calc.Formula{
	ID: "pad-pressure", Title: calc.Text("Pressure under your pad"), Expr: "R/s^2",
	Result: calc.Var{Symbol: "p", Meaning: calc.Text("pressure under the pad"), Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "R", Meaning: meansLeg, Unit: "kN", US: "lbf"},
		{Symbol: "s", Meaning: calc.Text("side of your pad"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(PadPressure), Go: "placing.PadPressure", Source: "practice",
}

// PumpFromWire is the distance in ft that the pump association asks of a boom
// from a power line of so many kV. Source: American Concrete Pumping Association,
// 2010 and 2022.
func PumpFromWire(kV float64) float64 {
	if kV <= 350 {
		return 20
	}
	return 50
}

// CraneFromWire is the distance in ft of a crane from a power line of so many kV.
// Limits: up to 1000 kV; above that, known is false: the power company sets it.
// Source: 29 CFR 1926.1408, Table A.
func CraneFromWire(kV float64) (feet float64, known bool) {
	for _, row := range [...]struct{ kV, feet float64 }{
		{50, 10}, {200, 15}, {350, 20}, {500, 25}, {750, 35}, {1000, 45},
	} {
		if kV <= row.kV {
			return row.feet, true
		}
	}
	return 0, false
}
