package steel

import (
	"math"

	"coursebook/calculators/calc"
)

// The units in which the bars' standards give their sizes, in SI.
const lbPerFt = 0.45359237 / 0.3048

// Bars are the sizes of ASTM A615, table 1, by number, and of CSA G30.18 by
// designation. A number is about the diameter in eighths of an inch, a
// designation about the diameter in mm. Bends are those of ACI 318 for the
// hooks of main bars.
var Bars = [...]Bar{
	{"3", 0.375 * Inch, 0.11 * Inch * Inch, 0.376 * lbPerFt, 6},
	{"4", 0.500 * Inch, 0.20 * Inch * Inch, 0.668 * lbPerFt, 6},
	{"5", 0.625 * Inch, 0.31 * Inch * Inch, 1.043 * lbPerFt, 6},
	{"6", 0.750 * Inch, 0.44 * Inch * Inch, 1.502 * lbPerFt, 6},
	{"7", 0.875 * Inch, 0.60 * Inch * Inch, 2.044 * lbPerFt, 6},
	{"8", 1.000 * Inch, 0.79 * Inch * Inch, 2.670 * lbPerFt, 6},
	{"9", 1.128 * Inch, 1.00 * Inch * Inch, 3.400 * lbPerFt, 8},
	{"10", 1.270 * Inch, 1.27 * Inch * Inch, 4.303 * lbPerFt, 8},
	{"11", 1.410 * Inch, 1.56 * Inch * Inch, 5.313 * lbPerFt, 8},
	{"14", 1.693 * Inch, 2.25 * Inch * Inch, 7.65 * lbPerFt, 10},
	{"18", 2.257 * Inch, 4.00 * Inch * Inch, 13.60 * lbPerFt, 10},
	{"10m", 11.3 * Mm, 100 * Mm * Mm, 0.785, 0},
	{"15m", 16.0 * Mm, 200 * Mm * Mm, 1.570, 0},
	{"20m", 19.5 * Mm, 300 * Mm * Mm, 2.355, 0},
	{"25m", 25.2 * Mm, 500 * Mm * Mm, 3.925, 0},
	{"30m", 29.9 * Mm, 700 * Mm * Mm, 5.495, 0},
	{"35m", 35.7 * Mm, 1000 * Mm * Mm, 7.850, 0},
	{"45m", 43.7 * Mm, 1500 * Mm * Mm, 11.775, 0},
	{"55m", 56.4 * Mm, 2500 * Mm * Mm, 19.625, 0},
}

const (
	meansMass = calc.Text("mass per length")
	meansArea = calc.Text("area of the bar")
)

// Bar is one size of deformed bar with its nominal dimensions.
type Bar struct {
	ID       string
	Diameter float64 // m
	Area     float64 // m²
	Mass     float64 // kg/m
	Bend     float64 // inside bend of a standard hook over Diameter; 0: not known here
}

// Canadian reports whether a bar is of CSA G30.18 and not of ASTM A615.
func (b Bar) Canadian() bool { return b.ID[len(b.ID)-1] == 'm' }

// RoundArea is the area of a round bar, in mm² from mm or in² from in:
//
//	A = π·d²/4
//
// Standards round it: a #4 bar is 0.20 in², not 0.196.
// Source: geometry; ASTM A615 gives nominal sizes of a plain round bar.
func RoundArea(d float64) float64 { return math.Pi * math.Pow(d, 2) / 4 }

// RoundAreaFormula declares RoundArea.
var RoundAreaFormula = &calc.Formula{ID: "area", Title: calc.Text("Area of a round bar"), Expr: "pi*d^2/4",
	Result: calc.Var{Symbol: "A", Meaning: meansArea, Unit: "mm²", US: "in²"},
	Vars:   []calc.Var{{Symbol: "d", Meaning: meansD, Unit: "mm", US: "in"}},
	Fn:     calc.Func1(RoundArea), Go: "steel.RoundArea", Source: "pci",
	Limits: calc.Text("The standards round it. Their nominal area counts.")}

// MassPerLength is the mass per length of steel:
//
//	w = ρ·A
//
// in kg/m from kg/m³ and m², or lb/ft from lb/ft³ and ft². With 490 lb/ft³
// it is 3.4 lb/ft for each square inch. Source: Concrete Construction, PCI.
func MassPerLength(density, area float64) float64 { return density * area }

// MassPerLengthFormula declares MassPerLength.
var MassPerLengthFormula = &calc.Formula{ID: "mass", Title: calc.Text("Mass per length from the area"), Expr: "rho*A",
	Result: calc.Var{Symbol: "w", Meaning: meansMass, Unit: "kg/m", US: "lb/ft"},
	Vars: []calc.Var{{Symbol: "rho", Meaning: calc.Text("density of steel"), Unit: "kg/m³", US: "lb/ft³"},
		{Symbol: "A", Meaning: meansArea, Unit: "m²", US: "ft²"}},
	Fn: calc.Func2(MassPerLength), Go: "steel.MassPerLength", Source: "g30",
	Limits: calc.Text("The result uses the standard's mass, which is within 2% of this.")}

// BarWeight is the weight of bars of one length, in kg or lb:
//
//	W = w·L·n
//
// with the mass per length w, the length of one bar and their number.
// Source: arithmetic.
func BarWeight(mass, length, count float64) float64 { return mass * length * count }

// BarWeightFormula declares BarWeight.
var BarWeightFormula = &calc.Formula{ID: "weight", Title: calc.Text("Weight of bars"), Expr: "w*L*n",
	Result: calc.Var{Symbol: "W", Meaning: calc.Text("weight"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "w", Meaning: meansMass, Unit: "kg/m", US: "lb/ft"},
		{Symbol: "L", Meaning: calc.Text("length of one bar"), Unit: "m", US: "ft"}, {Symbol: "n", Meaning: meansN}},
	Fn: calc.Func3(BarWeight), Go: "steel.BarWeight", Source: "a615"}

// HookLength is the length from the outside of a standard 90° hook to the end
// of its tail:
//
//	A = 12·d + k·d/2 + d
//
// with the bar diameter d and the inside bend diameter k·d; k is 6 for #3 to
// #8, 8 for #9 to #11, 10 for #14 and #18. Source: PCI Design Handbook,
// 7th ed., p. 15-34; ACI 318.
func HookLength(d, k float64) float64 { return float64(12*d) + float64(k*d/2) + d }

// HookLengthFormula declares HookLength.
var HookLengthFormula = &calc.Formula{ID: "hook", Title: calc.Text("Standard 90° hook"), Expr: "12*d + k*d/2 + d",
	Result: calc.Var{
		Symbol:  "A",
		Meaning: calc.Text("outside of the hook to the end of its tail"),
		Unit:    "mm",
		US:      "in",
	},
	Vars: []calc.Var{
		{Symbol: "d", Meaning: meansD, Unit: "mm", US: "in"},
		{Symbol: "k", Meaning: calc.Text("inside bend over bar diameter")},
	},
	Fn: calc.Func2(HookLength), Go: "steel.HookLength", Source: "pci",
	Limits: calc.Text("Main bars, #3 to #18. Ties and stirrups bend tighter.")}
