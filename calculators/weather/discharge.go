package weather

import "coursebook/calculators/calc"

const (
	meansLeft  = calc.Text("time left")
	meansLimit = calc.Text("limit that counts")
	meansAge   = calc.Text("age of the load")
)

// TimeLeft is the time left of a limit, L - a, both in minutes. Below 0 the limit
// has passed. Source: ASTM C94, which counts from the contact of water and cement.
func TimeLeft(limit, age float64) float64 { return limit - age }

// TimeLeftFormula declares TimeLeft.
var TimeLeftFormula = &calc.Formula{
	ID: "left", Title: calc.Text("Time left"),
	Expr: "L - a", Result: calc.Var{Symbol: "t", Meaning: meansLeft, Unit: "min"},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansLimit, Unit: "min"}, {Symbol: "a", Meaning: meansAge, Unit: "min"}},
	Fn:   calc.Func2(TimeLeft), Go: "weather.TimeLeft", Source: "hold",
}
