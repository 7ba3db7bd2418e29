package bracing

import "coursebook/calculators/calc"

// Symbols of the hands-off formulas. A clock time is in minutes after midnight.
var (
	varOffClock = minutesVar("t_h", calc.Text("hands off, minutes after midnight"))
	varFull     = minutesVar("t_l", calc.Text("last concrete in the wall, minutes after midnight"))
	varBatched  = minutesVar("t_b", calc.Text("first load batched, minutes after midnight"))
)

// minutesVar returns a variable of a formula that is a time in minutes.
func minutesVar(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "min"}
}

// AfterLast is the clock time at which a wall is left alone by the house rule,
// t_h = t_l + w: a wait after the last concrete in that wall.
//
// Units: any time, the same for both. Source: our own limit.
func AfterLast(last, wait float64) float64 { return last + wait }

// AfterLastFormula declares AfterLast.
var AfterLastFormula = &calc.Formula{
	ID: "after-last", Title: calc.Text("Hands off by the time since the last concrete"), Expr: "t_l + w",
	Result: varOffClock,
	Vars:   []calc.Var{varFull, minutesVar("w", calc.Text("time allowed after the last concrete"))},
	Fn:     calc.Func2(AfterLast), Go: "bracing.AfterLast", Source: "practice",
}

// AtSet is the clock time at which the first load in a wall reaches its initial
// set, t_h = t_b + s. Setting is counted from batching.
//
// Units: any time, the same for both. Source: our own limit.
func AtSet(batched, set float64) float64 { return batched + set }

// AtSetFormula declares AtSet.
var AtSetFormula = &calc.Formula{
	ID: "at-set", Title: calc.Text("Hands off by the first load"), Expr: "t_b + s",
	Result: varOffClock,
	Vars:   []calc.Var{varBatched, minutesVar("s", calc.Text("earliest initial set, from batching"))},
	Fn:     calc.Func2(AtSet), Go: "bracing.AtSet", Source: "practice",
}

// LeftForString is the time for straightening after the wall is full,
// t = t_h − t_l. Below zero the wall is left alone before it is full.
//
// Units: any time, the same for both. Source: definition.
func LeftForString(off, last float64) float64 { return off - last }

// LeftForStringFormula declares LeftForString.
var LeftForStringFormula = &calc.Formula{
	ID: "left-for-string", Title: calc.Text("Left once the wall is full"), Expr: "t_h - t_l",
	Result: minutesVar("t", calc.Text("time left; minus is before the wall is full")),
	Vars:   []calc.Var{varOffClock, varFull},
	Fn:     calc.Func2(LeftForString), Go: "bracing.LeftForString", Source: "practice",
}
