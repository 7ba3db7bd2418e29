package weather

import "coursebook/calculators/calc"

const (
	meansLeft  = calc.Text("time left")
	meansLimit = calc.Text("limit that counts")
	meansAge   = calc.Text("age of the load")
	meansSpeed = calc.Text("times as fast as at 70 °F (21 °C)")
)

// TimeLeft is what is left of a limit: L - a, both in minutes. Below 0 the
// limit has passed. Source: ASTM C94, which counts from the first meeting of
// water and cement.
func TimeLeft(limit, age float64) float64 { return limit - age }

var TimeLeftFormula = &calc.Formula{
	ID: "left", Title: calc.Text("Time left"),
	Expr: "L - a", Result: calc.Var{Symbol: "t", Meaning: meansLeft, Unit: "min"},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansLimit, Unit: "min"}, {Symbol: "a", Meaning: meansAge, Unit: "min"}},
	Fn:   calc.Func2(TimeLeft), Go: "weather.TimeLeft", Source: "hold",
}

// Speed is how many times as fast as at 70 °F concrete sets at t in °F:
// 2^((T - 70)/20). Source: the rule of thumb that 20 °F doubles or halves it.
func Speed(t float64) float64 { return pow2((t - 70) / 20) }

var SpeedFormula = &calc.Formula{
	ID: "speed", Title: calc.Text("How much faster it sets"),
	Expr: "2^((T - 70)/20)", Result: calc.Var{Symbol: "n", Meaning: meansSpeed},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansTc, Unit: "°F"}},
	Fn:   calc.Func1(Speed), Go: "weather.Speed", Source: "nfba",
	Limits: calc.Text("A rule of thumb for plain mixes. A retarder changes it."),
}
