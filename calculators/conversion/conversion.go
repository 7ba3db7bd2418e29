// Package conversion holds the equations for the conversion of units.
package conversion

import "coursebook/calculators/calc"

const (
	inCelsius    = calc.Text("temperature in °C")
	inFahrenheit = calc.Text("temperature in °F")
	points       = calc.Text("Temperatures, not differences: a difference only takes the 1.8.")
)

// Celsius is a temperature in degrees Celsius, t_C = (t_F − 32) / 1.8.
//
// Units: °F, °C. Limits: none; a point on the scale, not a difference.
// Source: NIST SP 811, appendix B.8.
func Celsius(fahrenheit float64) float64 { return (fahrenheit - 32) / 1.8 }

// CelsiusFormula declares Celsius.
var CelsiusFormula = &calc.Formula{
	ID: "celsius", Title: calc.Text("Fahrenheit to Celsius"), Expr: "(t_F - 32)/1.8",
	Result: calc.Var{Symbol: "t_C", Meaning: inCelsius, Unit: "°C"},
	Vars:   []calc.Var{{Symbol: "t_F", Meaning: inFahrenheit, Unit: "°F"}},
	Fn:     calc.Func1(Celsius), Go: "conversion.Celsius", Source: "sp811", Limits: points,
}

// Fahrenheit is a temperature in degrees Fahrenheit, t_F = 1.8 t_C + 32.
//
// Units: °C, °F. Limits: none; a point on the scale, not a difference.
// Source: NIST SP 811, appendix B.8.
func Fahrenheit(celsius float64) float64 { return float64(1.8*celsius) + 32 }

// FahrenheitFormula declares Fahrenheit.
var FahrenheitFormula = &calc.Formula{
	ID: "fahrenheit", Title: calc.Text("Celsius to Fahrenheit"), Expr: "1.8*t_C + 32",
	Result: calc.Var{Symbol: "t_F", Meaning: inFahrenheit, Unit: "°F"},
	Vars:   []calc.Var{{Symbol: "t_C", Meaning: inCelsius, Unit: "°C"}},
	Fn:     calc.Func1(Fahrenheit), Go: "conversion.Fahrenheit", Source: "sp811", Limits: points,
}

// InUnit is a value expressed in a unit, x = v / u, with v the value in SI
// units and u the size of the unit in SI units: 47.88026 Pa for the pound-force
// on a square foot.
//
// Units: the same for both. Limits: no temperature on a scale, whose zero is
// elsewhere. Source: NIST SP 811, appendix B.
func InUnit(value, size float64) float64 { return value / size }

// InUnitFormula declares InUnit.
var InUnitFormula = &calc.Formula{
	ID: "in-unit", Title: calc.Text("Value in a unit"), Expr: "v/u",
	Result: calc.Var{Symbol: "x", Meaning: calc.Text("value in the unit")},
	Vars: []calc.Var{{Symbol: "v", Meaning: calc.Text("value in SI units")},
		{Symbol: "u", Meaning: calc.Text("size of the unit in SI units")}},
	Fn: calc.Func2(InUnit), Go: "conversion.InUnit", Source: "sp811",
}
