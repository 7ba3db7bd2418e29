package weather

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansE  = calc.Text("evaporation rate")
	meansR  = calc.Text("relative humidity, 0 to 1")
	meansV  = calc.Text("wind just above the concrete")
	meansE0 = calc.Text("vapour pressure at the concrete")
	meansEa = calc.Text("full vapour pressure of the air")
	meansEs = calc.Text("full vapour pressure")
	meansT  = calc.Text("temperature")
	meansU  = calc.Text("wind as read")
	meansH  = calc.Text("height wanted")
	meansZ  = calc.Text("height of the reading")
)

// UnoUS is the rate of evaporation in lb/ft²/h of free water on a level surface:
// (T_c^2.5 - r·T_a^2.5)·(1 + 0.4·V)/10⁶. Temperatures of concrete and air in
// °F, at least 0; r is relative humidity from 0 to 1; V is wind in mph 20 in.
// above the surface. It is below 0 where water condenses.
// Source: P. J. Uno, ACI Materials Journal 95-M34, 1998.
func UnoUS(concrete, air, r, wind float64) float64 {
	return (math.Pow(concrete, 2.5) - float64(r*math.Pow(air, 2.5))) * (1 + float64(0.4*wind)) / 1000000
}

// UnoUSFormula declares UnoUS.
var UnoUSFormula = &calc.Formula{
	ID: "uno", Title: calc.Text("Uno, US form"),
	Expr: "(T_c^2.5 - r*T_a^2.5)*(1 + 0.4*V)/1000000", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "lb/ft²/h"},
	Vars: []calc.Var{{Symbol: "T_c", Meaning: meansTc, Unit: "°F"}, {Symbol: "T_a", Meaning: meansTa, Unit: "°F"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "mph"}},
	Fn: calc.Func4(UnoUS), Go: "weather.UnoUS", Source: "uno",
	Limits: calc.Text("Free water on a level surface, while it bleeds. Within about 20 % of Menzel."),
}

// UnoSI is the rate in kg/m²/h by the same author with rounded constants:
// 5·((T_c + 18)^2.5 - r·(T_a + 18)^2.5)·(V + 4)/10⁶. Temperatures in °C, wind
// in km/h. It gives about 4 % less than UnoUS: exact conversion of units gives
// 5.276, 17.78 and 4.02. Source: CCAA data sheet of November 2004, p. 1.
func UnoSI(concrete, air, r, wind float64) float64 {
	return 5 * (math.Pow(concrete+18, 2.5) - float64(r*math.Pow(air+18, 2.5))) * (wind + 4) / 1000000
}

// UnoSIFormula declares UnoSI.
var UnoSIFormula = &calc.Formula{
	ID: "uno-si", Title: calc.Text("Uno, SI form"),
	Expr:   "5*((T_c + 18)^2.5 - r*(T_a + 18)^2.5)*(V + 4)/1000000",
	Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "kg/m²/h"},
	Vars: []calc.Var{{Symbol: "T_c", Meaning: meansTc, Unit: "°C"}, {Symbol: "T_a", Meaning: meansTa, Unit: "°C"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "km/h"}},
	Fn: calc.Func4(UnoSI), Go: "weather.UnoSI", Source: "ccaa",
	Limits: calc.Text("Its constants are rounded: it reads about 4 % below the US form."),
}

// MenzelUS is the rate of evaporation in lb/ft²/h from vapour pressures in psi:
// 0.44·(e_0 - r·e_a)·(0.253 + 0.096·V), wind in mph. With pressures in inches
// of mercury the rate would be twice too high. Source: C. A. Menzel, 1954.
func MenzelUS(surface, air, r, wind float64) float64 {
	return 0.44 * (surface - float64(r*air)) * (0.253 + float64(0.096*wind))
}

// MenzelUSFormula declares MenzelUS.
var MenzelUSFormula = &calc.Formula{
	ID: "menzel", Title: calc.Text("Menzel, US form"),
	Expr: "0.44*(e_0 - r*e_a)*(0.253 + 0.096*V)", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "lb/ft²/h"},
	Vars: []calc.Var{{Symbol: "e_0", Meaning: meansE0, Unit: "psi"}, {Symbol: "e_a", Meaning: meansEa, Unit: "psi"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "mph"}},
	Fn: calc.Func4(MenzelUS), Go: "weather.MenzelUS", Source: "menzel",
	Limits: calc.Text("Pressures in psi. In inches of mercury the answer would be double."),
}

// MenzelSI is the rate in kg/m²/h from vapour pressures in kPa and wind in
// km/h: 0.315·(e_0 - r·e_a)·(0.253 + 0.06·V). Source: C. A. Menzel, 1954.
func MenzelSI(surface, air, r, wind float64) float64 {
	return 0.315 * (surface - float64(r*air)) * (0.253 + float64(0.06*wind))
}

// MenzelSIFormula declares MenzelSI.
var MenzelSIFormula = &calc.Formula{
	ID: "menzel-si", Title: calc.Text("Menzel, SI form"),
	Expr: "0.315*(e_0 - r*e_a)*(0.253 + 0.06*V)", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "kg/m²/h"},
	Vars: []calc.Var{{Symbol: "e_0", Meaning: meansE0, Unit: "kPa"}, {Symbol: "e_a", Meaning: meansEa, Unit: "kPa"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "km/h"}},
	Fn: calc.Func4(MenzelSI), Go: "weather.MenzelSI", Source: "menzel",
}

// VapourPressure is the saturation vapour pressure in kPa over water at t in °C,
// 0 to 50: 0.6108·exp(17.27·T/(T + 237.3)).
// Source: FAO Irrigation and Drainage Paper 56, equation 11.
func VapourPressure(t float64) float64 { return 0.6108 * math.Exp(17.27*t/(t+237.3)) }

// VapourPressureFormula declares VapourPressure.
var VapourPressureFormula = &calc.Formula{
	ID: "vapour", Title: calc.Text("Vapour pressure over water"),
	Expr: "0.6108*exp(17.27*T/(T + 237.3))", Result: calc.Var{Symbol: "e", Meaning: meansEs, Unit: "kPa"},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT, Unit: "°C"}},
	Fn:   calc.Func1(VapourPressure), Go: "weather.VapourPressure", Source: "fao",
	Limits: calc.Text("0 to 50 °C (32 to 122 °F)."),
}

// WindAt is the wind at the height h in m from a wind u measured z m above open
// short grass: u·ln(67.8·h - 5.42)/ln(67.8·z - 5.42). Both heights are above
// 0.1 m. Source: the wind profile behind FAO paper 56, equation 47, where h is 2 m.
func WindAt(u, h, z float64) float64 {
	return u * math.Log(float64(67.8*h)-5.42) / math.Log(float64(67.8*z)-5.42)
}

// WindAtFormula declares WindAt.
var WindAtFormula = &calc.Formula{
	ID: "wind", Title: calc.Text("Wind at another height"),
	Expr:   "u*ln(67.8*h - 5.42)/ln(67.8*z - 5.42)",
	Result: calc.Var{Symbol: "V", Meaning: meansV, Unit: "m/s", US: "mph"},
	Vars: []calc.Var{
		{Symbol: "u", Meaning: meansU, Unit: "m/s", US: "mph"},
		{Symbol: "h", Meaning: meansH, Unit: "m"},
		{Symbol: "z", Meaning: meansZ, Unit: "m"},
	},
	Fn: calc.Func3(WindAt), Go: "weather.WindAt", Source: "fao",
	Limits: calc.Text("Open short grass. Forms, fences and houses change the wind."),
}
