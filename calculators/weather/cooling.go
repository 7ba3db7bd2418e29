package weather

import "coursebook/calculators/calc"

// CoolingTime is the least time in h for uncovering, 24·(T_c - T_a)/D: the fall
// from the concrete to the air at a greatest drop of D in 24 h.
// Source: the limit of ACI 306R, as an even rate.
func CoolingTime(concrete, air, drop float64) float64 { return 24 * (concrete - air) / drop }

// CoolingTimeFormula declares CoolingTime.
var CoolingTimeFormula = &calc.Formula{
	ID: "cooling", Title: calc.Text("Least time for uncovering"),
	Expr: "24*(T_c - T_a)/D", Result: calc.Var{Symbol: "t", Meaning: calc.Text("time from covered to open"), Unit: "h",
		US: "h"},
	Vars: []calc.Var{
		{Symbol: "T_c", Meaning: calc.Text("temperature of the concrete under its cover"), Unit: "°C", US: "°F"},
		{Symbol: "T_a", Meaning: meansTa, Unit: "°C", US: "°F"},
		{Symbol: "D", Meaning: calc.Text("greatest fall in 24 h"), Unit: "C°", US: "F°"},
	},
	Fn: calc.Func3(CoolingTime), Go: "weather.CoolingTime", Source: "book",
	Limits: calc.Text("An even fall. The limit is for the first 24 h after protection ends."),
}
