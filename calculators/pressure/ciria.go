package pressure

import (
	"math"

	"coursebook/calculators/calc"
)

const meansK = calc.Text("coefficient for temperature")

// The limits of CIRIA Report 108. Beyond them the full fluid head applies.
const (
	CIRIAColdest = 5.0  // °C, coolest concrete of the method
	CIRIAWarmest = 30.0 // °C; warmer concrete counts as this warm
	CIRIAWall    = 1.0  // C_1 where a plan size is 2 m or more
	CIRIAColumn  = 1.5  // C_1 where both plan sizes are under 2 m
)

// CIRIATemperature is the temperature coefficient K of concrete at t °C:
// (36/(T + 16))². It is 1 at 20 °C; the pressure grows as the concrete cools. It must
// not be rounded before use. Source: CIRIA Report 108.
func CIRIATemperature(t float64) float64 {
	k := 36 / (t + 16)
	return k * k
}

// CIRIATemperatureFormula declares CIRIATemperature.
var CIRIATemperatureFormula = &calc.Formula{
	ID: "temperature", Title: calc.Text("Temperature coefficient"),
	Expr: "(36/(T + 16))^2", Result: calc.Var{Symbol: "K", Meaning: meansK},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansTC, Unit: "°C"}},
	Fn:   calc.Func1(CIRIATemperature), Go: "pressure.CIRIATemperature", Source: "ciria",
	Limits: calc.Text("For 41 to 86 °F (5 to 30 °C). Warmer concrete counts as 86 °F (30 °C)."),
}

// CIRIAPressure is the greatest pressure in kPa on a form that is high m
// high, with concrete of d kN/m³ that rises at r m/h:
// D·(C_1·√R + C_2·K·√(H − C_1·√R)). It is NaN if C_1·√R exceeds H; the
// full fluid head applies then. Source: CIRIA Report 108.
func CIRIAPressure(d, c1, c2, k, high, r float64) float64 {
	first := float64(c1 * math.Sqrt(r))
	return d * (first + float64(c2*k*math.Sqrt(high-first)))
}

// CIRIAPressureFormula declares CIRIAPressure.
var CIRIAPressureFormula = &calc.Formula{
	ID: "pressure", Title: calc.Text("Pressure by CIRIA 108"),
	Expr: "D*(C_1*sqrt(R) + C_2*K*sqrt(H - C_1*sqrt(R)))", Result: calc.Var{Symbol: "P", Meaning: meansP, Unit: "kPa"},
	Vars: []calc.Var{
		{Symbol: "D", Meaning: meansW, Unit: "kN/m³"},
		{Symbol: "C_1", Meaning: calc.Text("coefficient for shape in plan")},
		{Symbol: "C_2", Meaning: calc.Text("coefficient for the mix")},
		{Symbol: "K", Meaning: meansK},
		{Symbol: "H", Meaning: calc.Text("height of the form"), Unit: "m"},
		{Symbol: "R", Meaning: meansR, Unit: "m/h"},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return CIRIAPressure(v[0], v[1], v[2], v[3], v[4], v[5]) }),
	Go: "pressure.CIRIAPressure", Source: "ciria",
	Limits: calc.Text("Where the first term exceeds the height of the form, the full fluid head counts."),
}

// CIRIAMix is the coefficient C_2 of a binder. An unknown group
// has the greatest coefficient. Source: CIRIA Report 108, concrete groups.
func CIRIAMix(c Cement, retarded bool) float64 {
	switch c {
	case Plain:
		return pick(retarded, 0.45, 0.30)
	case Blend:
		return pick(retarded, 0.60, 0.45)
	}
	return 0.60
}

// Capped limits a pressure to the full fluid head.
func Capped(pressure, head float64) float64 { return math.Min(pressure, head) }

// CappedFormula limits the pressure of either European equation.
var CappedFormula = &calc.Formula{
	ID: "cap", Title: calc.Text("Never above the fluid head"),
	Expr: "min(p_e, p_h)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "p_e", Meaning: calc.Text("pressure by the equation"), Unit: "kPa", US: "psf"},
		{Symbol: "p_h", Meaning: meansHead, Unit: "kPa", US: "psf"},
	},
	Fn: calc.Func2(Capped), Go: "pressure.Capped", Source: "hurd",
}
