package placing

import "coursebook/calculators/calc"

// What the symbols of the rise formulas mean.
const (
	meansRise   = calc.Text("rise")
	meansFlow   = calc.Text("pump rate while it runs")
	meansLength = calc.Text("length of wall that fills")
	meansCore   = calc.Text("core thickness")
	meansDepth  = calc.Text("depth of the lift")
	meansShare  = calc.Text("share of the time the pump runs")
	meansLoop   = calc.Text("time for this depth and length")
	meansAge    = calc.Text("age when it leaves the hose")
)

var riseOf = &calc.Formula{
	ID: "rise", Title: calc.Text("Rise from pump rate"), Expr: "Q/(L*b)",
	Result: calc.Var{Symbol: "R", Meaning: meansRise, Unit: "m/h", US: "ft/h"},
	Vars: []calc.Var{{Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
		{Symbol: "L", Meaning: meansLength, Unit: "m", US: "ft"}, {Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"}},
	Fn: calc.Func3(Rise), Go: "placing.Rise", Source: "army",
}

var flowFor = &calc.Formula{
	ID: "flow", Title: calc.Text("Pump rate for a rise"), Expr: "R*L*b",
	Result: calc.Var{Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
	Vars: []calc.Var{{Symbol: "R", Meaning: meansRise, Unit: "m/h", US: "ft/h"},
		{Symbol: "L", Meaning: meansLength, Unit: "m", US: "ft"}, {Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"}},
	Fn: calc.Func3(Flow), Go: "placing.Flow", Source: "army",
}

var liftTime = &calc.Formula{
	ID: "lift-time", Title: calc.Text("Time to fill a depth"), Expr: "L*b*d/(Q*m)",
	Result: calc.Var{Symbol: "T", Meaning: meansLoop, Unit: "h", US: "h"},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansLength, Unit: "m", US: "ft"}, {Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"},
		{Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"}, {Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
		{Symbol: "m", Meaning: meansShare}},
	Fn: calc.Func5(LiftTime), Go: "placing.LiftTime", Source: "placing",
}

var ageOnReturn = &calc.Formula{
	ID: "return-age", Title: calc.Text("Age of the lift below on return"), Expr: "a + T",
	Result: calc.Var{Symbol: "A", Meaning: calc.Text("age of the lift below"), Unit: "min", US: "min"},
	Vars:   []calc.Var{{Symbol: "a", Meaning: meansAge, Unit: "min", US: "min"}, {Symbol: "T", Meaning: meansLoop, Unit: "min", US: "min"}},
	Fn:     calc.Func2(AgeOnReturn), Go: "placing.AgeOnReturn", Source: "practice",
}

var longestLoop = &calc.Formula{
	ID: "longest", Title: calc.Text("Longest loop that comes round in time"), Expr: "(W - a)*Q*m/(b*d)",
	Result: calc.Var{Symbol: "L", Meaning: meansLength, Unit: "m", US: "ft"},
	Vars: []calc.Var{{Symbol: "W", Meaning: calc.Text("setting window from batching"), Unit: "h", US: "h"},
		{Symbol: "a", Meaning: meansAge, Unit: "h", US: "h"}, {Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
		{Symbol: "m", Meaning: meansShare}, {Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"}, {Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"}},
	Fn: calc.FuncN(func(v []float64) float64 { return LongestLoop(v[0], v[1], v[2], v[3], v[4], v[5]) }), Go: "placing.LongestLoop", Source: "practice",
}

var liftCount = &calc.Formula{
	ID: "lifts", Title: calc.Text("Lifts for the height"), Expr: "ceil(H/d)",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("number of lifts")},
	Vars:   []calc.Var{{Symbol: "H", Meaning: calc.Text("height placed"), Unit: "m", US: "ft"}, {Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"}},
	Fn:     calc.Func2(Lifts), Go: "placing.Lifts", Source: "practice",
}
