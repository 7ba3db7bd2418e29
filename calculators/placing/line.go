package placing

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansBore = calc.Text("inside diameter")
	meansHose = calc.Text("filled hose")
	meansPipe = calc.Text("length of the line")
)

// LineVolume is the volume of a line of inside diameter d and length L,
// π/4·d²·L. Any unit of length. Source: geometry.
func LineVolume(bore, length float64) float64 {
	return math.Pi / 4 * math.Pow(bore, 2) * length
}

// LineVolumeFormula declares LineVolume.
var LineVolumeFormula = &calc.Formula{
	ID: "volume", Title: calc.Text("Volume in a line"), Expr: "pi/4*d^2*L",
	Result: calc.Var{Symbol: "V", Meaning: calc.Text("volume in the line"), Unit: "m³", US: "ft³"},
	Vars: []calc.Var{
		{Symbol: "d", Meaning: meansBore, Unit: "m", US: "ft"},
		{Symbol: "L", Meaning: meansPipe, Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(LineVolume), Go: "placing.LineVolume", Source: "geometry",
}

// HoseWeight is the mass per length of a filled hose,
// π/4·d²·w + e, with e the weight of the empty hose. Any coherent units.
// Source: Concrete Construction, "Concrete pumping".
func HoseWeight(bore, weight, empty float64) float64 {
	return float64(math.Pi/4*math.Pow(bore, 2)*weight) + empty
}

// HoseWeightFormula declares HoseWeight.
var HoseWeightFormula = &calc.Formula{
	ID: "hose", Title: calc.Text("Filled hose, by length"), Expr: "pi/4*d^2*w + e",
	Result: calc.Var{Symbol: "m", Meaning: meansHose, Unit: "kg/m", US: "lb/ft"},
	Vars: []calc.Var{{Symbol: "d", Meaning: meansBore, Unit: "m", US: "ft"},
		{Symbol: "w", Meaning: calc.Text("unit weight of the concrete"), Unit: "kg/m³", US: "lb/ft³"},
		{Symbol: "e", Meaning: calc.Text("empty hose"), Unit: "kg/m", US: "lb/ft"}},
	Fn: calc.Func3(HoseWeight), Go: "placing.HoseWeight", Source: "hose",
}

// Hanging is the mass of a hanging length of hose, m·l. Any coherent units.
func Hanging(perLength, length float64) float64 { return perLength * length }

// HangingFormula declares Hanging.
var HangingFormula = &calc.Formula{
	ID: "hanging", Title: calc.Text("The hanging hose"), Expr: "m*l",
	Result: calc.Var{Symbol: "M", Meaning: calc.Text("mass that hangs"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "m", Meaning: meansHose, Unit: "kg/m", US: "lb/ft"},
		{Symbol: "l", Meaning: calc.Text("length that hangs"), Unit: "m", US: "ft"}},
	Fn: calc.Func2(Hanging), Go: "placing.Hanging", Source: "hose",
}

// PrimeVolume is the volume of a film of grout on the inside of a line, π·d·L·f.
// Any unit of length. Limits: a film of 1/4 in. gives the 1 yd³ for 1000 ft of
// 5 in. line of the handbooks. Source: common practice.
func PrimeVolume(bore, length, film float64) float64 {
	return math.Pi * bore * length * film
}

// PrimeVolumeFormula declares PrimeVolume.
var PrimeVolumeFormula = &calc.Formula{
	ID: "prime", Title: calc.Text("Grout that coats a line"), Expr: "pi*d*L*f",
	Result: calc.Var{Symbol: "P", Meaning: calc.Text("grout for the prime"), Unit: "m³", US: "ft³"},
	Vars: []calc.Var{
		{Symbol: "d", Meaning: meansBore, Unit: "m", US: "ft"},
		{Symbol: "L", Meaning: meansPipe, Unit: "m", US: "ft"},
		{Symbol: "f", Meaning: calc.Text("film of grout"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(PrimeVolume), Go: "placing.PrimeVolume", Source: "prime",
}
