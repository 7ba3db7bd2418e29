package placing

import "coursebook/calculators/calc"

// Meanings of the symbols.
const (
	meansRise   = calc.Text("rise")
	meansFlow   = calc.Text("pump rate while it runs")
	meansLength = calc.Text("length of wall that fills")
	meansCore   = calc.Text("core thickness")
	meansDepth  = calc.Text("depth of the lift")
	meansShare  = calc.Text("share of the time the pump runs")
	meansLoop   = calc.Text("time for this depth and length")
	meansPasses = calc.Text("passes until the hose is back: 1 around, 2 there and back")
	meansAge    = calc.Text("age when it leaves the hose")
)

// Rise is the rate of rise of concrete that a flow brings onto a plan area,
// R = Q/(L·b). Any coherent units, length and core above 0.
// Source: US Army EN5151, part C: volume per hour over plan area.
func Rise(flow, length, core float64) float64 { return flow / (length * core) }

// RiseFormula declares Rise.
var RiseFormula = &calc.Formula{
	ID: "rise", Title: calc.Text("Rise from pump rate"), Expr: "Q/(L*b)",
	Result: calc.Var{Symbol: "R", Meaning: meansRise, Unit: "m/h", US: "ft/h"},
	Vars: []calc.Var{{Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
		{
			Symbol:  "L",
			Meaning: meansLength,
			Unit:    "m",
			US:      "ft",
		}, {Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"}},
	Fn: calc.Func3(Rise), Go: "placing.Rise", Source: "army",
}

// Flow is the pump rate at which a length of wall rises at r, Q = R·L·b.
// Any coherent units. Source: algebra on Rise.
func Flow(rise, length, core float64) float64 { return rise * length * core }

// FlowFormula declares Flow.
var FlowFormula = &calc.Formula{
	ID: "flow", Title: calc.Text("Pump rate for a rise"), Expr: "R*L*b",
	Result: calc.Var{Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
	Vars: []calc.Var{{Symbol: "R", Meaning: meansRise, Unit: "m/h", US: "ft/h"},
		{
			Symbol:  "L",
			Meaning: meansLength,
			Unit:    "m",
			US:      "ft",
		}, {Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"}},
	Fn: calc.Func3(Flow), Go: "placing.Flow", Source: "army",
}

// LiftTime is the time to place a depth of concrete over a length of wall,
// T = L·b·d/(Q·m), with m the fraction of the time that the pump runs, 0 to 1.
// Any coherent units. Source: US Army EN5466, step 17: height over rise.
func LiftTime(length, core, depth, flow, share float64) float64 {
	return length * core * depth / (flow * share)
}

// LiftTimeFormula declares LiftTime.
var LiftTimeFormula = &calc.Formula{
	ID: "lift-time", Title: calc.Text("Time to fill a depth"), Expr: "L*b*d/(Q*m)",
	Result: calc.Var{Symbol: "T", Meaning: meansLoop, Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansLength, Unit: "m", US: "ft"},
		{Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"},
		{
			Symbol:  "d",
			Meaning: meansDepth,
			Unit:    "m",
			US:      "ft",
		},
		{Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
		{Symbol: "m", Meaning: meansShare},
	},
	Fn: calc.Func5(LiftTime), Go: "placing.LiftTime", Source: "placing",
}

// LongestLoop is the length of wall that k passes of the hose fill in the time that is
// left, L = (W − a)·Q·m/(k·b·d), the inverse of LiftTime. Any coherent units; W is
// above a. Source: algebra on LiftTime.
func LongestLoop(window, age, flow, share, passes, core, depth float64) float64 {
	return (window - age) * flow * share / (passes * core * depth)
}

// LongestLoopFormula declares LongestLoop.
var LongestLoopFormula = &calc.Formula{
	ID: "longest", Title: calc.Text("Longest wall that is back in time"), Expr: "(W - a)*Q*m/(k*b*d)",
	Result: calc.Var{Symbol: "L", Meaning: meansLength, Unit: "m", US: "ft"},
	Vars: []calc.Var{{Symbol: "W", Meaning: calc.Text("setting window from batching"), Unit: "h", US: "h"},
		{
			Symbol:  "a",
			Meaning: meansAge,
			Unit:    "h",
			US:      "h",
		}, {Symbol: "Q", Meaning: meansFlow, Unit: "m³/h", US: "ft³/h"},
		{
			Symbol:  "m",
			Meaning: meansShare,
		}, {Symbol: "k", Meaning: meansPasses},
		{Symbol: "b", Meaning: meansCore, Unit: "m", US: "ft"},
		{Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"}},
	Fn: calc.FuncN(
		func(v []float64) float64 { return LongestLoop(v[0], v[1], v[2], v[3], v[4], v[5], v[6]) },
	), Go: "placing.LongestLoop", Source: "practice",
}

// AgeOnReturn is the greatest age of the lift below when the hose is back,
// A = a + k·T, counted from the batch time on the ticket, for a pass that takes T.
// k is 1 around a closed loop; there and back it is 2, at the ends of the wall.
// Any unit of time. Source: common practice.
func AgeOnReturn(age, passes, loop float64) float64 { return age + float64(passes*loop) }

// AgeOnReturnFormula declares AgeOnReturn.
var AgeOnReturnFormula = &calc.Formula{
	ID: "return-age", Title: calc.Text("Age of the lift below on return"), Expr: "a + k*T",
	Result: calc.Var{Symbol: "A", Meaning: calc.Text("age of the lift below"), Unit: "min", US: "min"},
	Vars: []calc.Var{
		{Symbol: "a", Meaning: meansAge, Unit: "min", US: "min"},
		{Symbol: "k", Meaning: meansPasses},
		{Symbol: "T", Meaning: meansLoop, Unit: "min", US: "min"},
	},
	Fn: calc.Func3(AgeOnReturn), Go: "placing.AgeOnReturn", Source: "practice",
}

// Lifts is the number of lifts for a height, N = ⌈H/d⌉. Any unit of length;
// the depth is above 0. Source: arithmetic.
func Lifts(height, depth float64) float64 { return calc.Ceil(height / depth) }

// LiftsFormula declares Lifts.
var LiftsFormula = &calc.Formula{
	ID: "lifts", Title: calc.Text("Lifts for the height"), Expr: "ceil(H/d)",
	Result: calc.Var{Symbol: "N", Meaning: calc.Text("number of lifts")},
	Vars: []calc.Var{
		{Symbol: "H", Meaning: calc.Text("height placed"), Unit: "m", US: "ft"},
		{Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(Lifts), Go: "placing.Lifts", Source: "practice",
}
