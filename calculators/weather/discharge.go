package weather

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansLeft  = calc.Text("time left")
	meansLimit = calc.Text("limit that counts")
	meansAge   = calc.Text("age of the load")
	meansLoad  = calc.Text("concrete in the drum")
	meansRate  = calc.Text("pump rate, stops included")
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

// EmptyTime is the time that a load takes to empty, V/Q. Source: arithmetic.
func EmptyTime(load, rate float64) float64 { return load / rate }

// EmptyTimeFormula declares EmptyTime.
var EmptyTimeFormula = &calc.Formula{
	ID: "empty", Title: calc.Text("Time to empty the load"),
	Expr: "V/Q", Result: calc.Var{Symbol: "t_e", Meaning: calc.Text("time to empty the load"), Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "V", Meaning: meansLoad, Unit: "m³", US: "yd³"},
		{Symbol: "Q", Meaning: meansRate, Unit: "m³/h", US: "yd³/h"}},
	Fn: calc.Func2(EmptyTime), Go: "weather.EmptyTime", Source: "practice",
}

// InTime is the part of a load that is emptied in the time left, min(V, Q t).
// Source: arithmetic.
func InTime(load, rate, left float64) float64 { return math.Min(load, rate*left) }

// InTimeFormula declares InTime.
var InTimeFormula = &calc.Formula{
	ID: "part", Title: calc.Text("Concrete that can be placed in time"),
	Expr: "min(V, Q*t)", Result: calc.Var{Symbol: "V_t", Meaning: calc.Text("concrete placed in time"), Unit: "m³",
		US: "yd³"},
	Vars: []calc.Var{{Symbol: "V", Meaning: meansLoad, Unit: "m³", US: "yd³"},
		{Symbol: "Q", Meaning: meansRate, Unit: "m³/h", US: "yd³/h"},
		{Symbol: "t", Meaning: meansLeft, Unit: "h", US: "h"}},
	Fn: calc.Func3(InTime), Go: "weather.InTime", Source: "practice",
}
