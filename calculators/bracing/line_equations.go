package bracing

import "coursebook/calculators/calc"

func small(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "mm", US: "in"}
}

func large(symbol string, meaning calc.Text) calc.Var {
	return calc.Var{Symbol: symbol, Meaning: meaning, Unit: "m", US: "ft"}
}

// Texts that several formulas share.
var (
	sayOneTurn = calc.Text("string-line.var.p: travel of one turn")
)

// Symbols that several formulas share.
var (
	varOff    = small("e", calc.Text("string-line.var.e: off the line; minus is too near the string"))
	varRun    = large("d", calc.Text("string-line.var.d: foot of the brace from the wall"))
	varAttach = large("a", calc.Text("string-line.var.a: height of the brace on the wall"))
	varBelow  = large("f", calc.Text("string-line.var.f: foot below the wall base"))
	varLong   = large("L", calc.Text("string-line.var.L: length of the brace"))
	varString = large("h_s", calc.Text("string-line.var.h_s: height of the string"))
	varTravel = small("p", sayOneTurn)
	varChange = small("b", calc.Text("string-line.var.b: change of the brace's length"))
	varAt     = small("x", calc.Text("string-line.var.x: movement of the wall at the brace"))
	varEnds   = calc.Var{Symbol: "m", Meaning: calc.Text("string-line.var.m: threaded ends")}
	smallMove = calc.Text("string-line.limits.small: Small movements; the base of the wall stays put.")
)

var (
	deviation = &calc.Formula{
		ID: "deviation", Title: calc.Text("string-line.f.deviation: Off the line"), Expr: "g - k", Result: varOff,
		Vars: []calc.Var{small("g", calc.Text("string-line.var.g: gap read")), small("k", calc.Text("string-line.var.k: end block"))},
		Fn:   calc.Func2(Deviation), Go: "bracing.Deviation", Source: "practice",
	}
	braceLength = &calc.Formula{
		ID: "brace-length", Title: calc.Text("string-line.f.brace-length: Length of the brace"), Expr: "sqrt(d^2 + (a + f)^2)", Result: varLong,
		Vars: []calc.Var{varRun, varAttach, varBelow},
		Fn:   calc.Func3(BraceLength), Go: "bracing.BraceLength", Source: "army",
	}
	braceAngle = &calc.Formula{
		ID: "angle", Title: calc.Text("string-line.f.angle: Slope of the brace"), Expr: "atan((a + f)/d)*180/pi",
		Result: calc.Var{Symbol: "theta", Meaning: calc.Text("string-line.var.theta: slope over the ground"), Unit: "°", US: "°"},
		Vars:   []calc.Var{varRun, varAttach, varBelow},
		Fn:     calc.Func3(BraceAngle), Go: "bracing.BraceAngle", Source: "army",
	}
	atBrace = &calc.Formula{
		ID: "at-brace", Title: calc.Text("string-line.f.at-brace: Movement where the brace holds"), Expr: "e*a/h_s", Result: varAt,
		Vars: []calc.Var{varOff, varAttach, varString},
		Fn:   calc.Func3(AtBrace), Go: "bracing.AtBrace", Source: "derived", Limits: smallMove,
	}
	braceChange = &calc.Formula{
		ID: "brace-change", Title: calc.Text("string-line.f.brace-change: Change of the brace's length"), Expr: "x*d/L", Result: varChange,
		Vars: []calc.Var{varAt, varRun, varLong},
		Fn:   calc.Func3(BraceChange), Go: "bracing.BraceChange", Source: "derived", Limits: smallMove,
	}
	travelByThreads = &calc.Formula{
		ID: "travel-by-threads", Title: calc.Text("string-line.f.travel-by-threads: Travel of one turn, by threads"), Expr: "m/N",
		Result: calc.Var{Symbol: "p", Meaning: sayOneTurn, Unit: "in"},
		Vars:   []calc.Var{varEnds, {Symbol: "N", Meaning: calc.Text("string-line.var.N: threads in one inch")}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(TravelByThreads(v[0], v[1])) }), Go: "bracing.TravelByThreads", Source: "thread",
	}
	travelByPitch = &calc.Formula{
		ID: "travel-by-pitch", Title: calc.Text("string-line.f.travel-by-pitch: Travel of one turn, by pitch"), Expr: "m*P", Result: varTravel,
		Vars: []calc.Var{varEnds, small("P", calc.Text("string-line.var.P: pitch of the thread"))},
		Fn:   calc.Func2(TravelByPitch), Go: "bracing.TravelByPitch", Source: "thread",
	}
	turnsFor = &calc.Formula{
		ID: "turns", Title: calc.Text("string-line.f.turns: Turns of the adjuster"), Expr: "abs(b)/p",
		Result: calc.Var{Symbol: "n", Meaning: calc.Text("string-line.var.n: turns")}, Vars: []calc.Var{varChange, varTravel},
		Fn: calc.Func2(Turns), Go: "bracing.Turns", Source: "derived",
	}
	perTurn = &calc.Formula{
		ID: "per-turn", Title: calc.Text("string-line.f.per-turn: One turn at the string"), Expr: "p*L/d*h_s/a",
		Result: small("y", calc.Text("string-line.var.y: movement at the string")), Vars: []calc.Var{varTravel, varLong, varRun, varString, varAttach},
		Fn: calc.Func5(PerTurn), Go: "bracing.PerTurn", Source: "derived", Limits: smallMove,
	}
	plumbLimit = &calc.Formula{
		ID: "plumb-limit", Title: calc.Text("string-line.f.plumb-limit: Plumb limit at the string"), Expr: "min(0.003*h, 1)",
		Result: calc.Var{Symbol: "u", Meaning: calc.Text("string-line.var.u: most lean at this height"), Unit: "in"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: calc.Text("string-line.var.h: height of the string"), Unit: "in"}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(PlumbLimit(Inches(v[0]))) }), Go: "bracing.PlumbLimit", Source: "aci117",
		Limits: calc.Text("string-line.limits.plumb: Heights up to 83 ft 4 in. (25.4 m)."),
	}
	bowRadius = &calc.Formula{
		ID: "bow-radius", Title: calc.Text("string-line.f.bow-radius: Radius of a shallow bow"), Expr: "L^2/(8*s)",
		Result: large("R", calc.Text("string-line.var.R: radius")),
		Vars:   []calc.Var{large("L", calc.Text("string-line.var.L_bow: length from end to end")), large("s", calc.Text("string-line.var.s: offset in the middle"))},
		Fn:     calc.Func2(BowRadius), Go: "bracing.BowRadius", Source: "chord",
	}
)

var lineFormulas = []*calc.Formula{
	deviation, braceLength, braceAngle, travelByThreads, travelByPitch, atBrace, braceChange, turnsFor, perTurn, plumbLimit, bowRadius,
}
