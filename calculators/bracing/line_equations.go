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
	sayOneTurn = calc.Text("travel of one turn")
)

// Symbols that several formulas share.
var (
	varOff    = small("e", calc.Text("off the line; minus is too near the string"))
	varRun    = large("d", calc.Text("foot of the brace from the wall"))
	varAttach = large("a", calc.Text("height of the brace on the wall"))
	varBelow  = large("f", calc.Text("foot below the wall base"))
	varLong   = large("L", calc.Text("length of the brace"))
	varString = large("h_s", calc.Text("height of the string"))
	varTravel = small("p", sayOneTurn)
	varChange = small("b", calc.Text("change of the brace's length"))
	varAt     = small("x", calc.Text("movement of the wall at the brace"))
	varEnds   = calc.Var{Symbol: "m", Meaning: calc.Text("threaded ends")}
	smallMove = calc.Text("Small movements; the base of the wall stays put.")
)

var (
	deviation = &calc.Formula{
		ID: "deviation", Title: calc.Text("Off the line"), Expr: "g - k", Result: varOff,
		Vars: []calc.Var{small("g", calc.Text("gap read")), small("k", calc.Text("end block"))},
		Fn:   calc.Func2(Deviation), Go: "bracing.Deviation", Source: "practice",
	}
	braceLength = &calc.Formula{
		ID: "brace-length", Title: calc.Text("Length of the brace"), Expr: "sqrt(d^2 + (a + f)^2)", Result: varLong,
		Vars: []calc.Var{varRun, varAttach, varBelow},
		Fn:   calc.Func3(BraceLength), Go: "bracing.BraceLength", Source: "army",
	}
	braceAngle = &calc.Formula{
		ID: "angle", Title: calc.Text("Slope of the brace"), Expr: "atan((a + f)/d)*180/pi",
		Result: calc.Var{Symbol: "theta", Meaning: calc.Text("slope over the ground"), Unit: "°", US: "°"},
		Vars:   []calc.Var{varRun, varAttach, varBelow},
		Fn:     calc.Func3(BraceAngle), Go: "bracing.BraceAngle", Source: "army",
	}
	atBrace = &calc.Formula{
		ID: "at-brace", Title: calc.Text("Movement where the brace holds"), Expr: "e*a/h_s", Result: varAt,
		Vars: []calc.Var{varOff, varAttach, varString},
		Fn:   calc.Func3(AtBrace), Go: "bracing.AtBrace", Source: "derived", Limits: smallMove,
	}
	braceChange = &calc.Formula{
		ID: "brace-change", Title: calc.Text("Change of the brace's length"), Expr: "x*d/L", Result: varChange,
		Vars: []calc.Var{varAt, varRun, varLong},
		Fn:   calc.Func3(BraceChange), Go: "bracing.BraceChange", Source: "derived", Limits: smallMove,
	}
	travelByThreads = &calc.Formula{
		ID: "travel-by-threads", Title: calc.Text("Travel of one turn, by threads"), Expr: "m/N",
		Result: calc.Var{Symbol: "p", Meaning: sayOneTurn, Unit: "in"},
		Vars:   []calc.Var{varEnds, {Symbol: "N", Meaning: calc.Text("threads in one inch")}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(TravelByThreads(v[0], v[1])) }), Go: "bracing.TravelByThreads", Source: "thread",
	}
	travelByPitch = &calc.Formula{
		ID: "travel-by-pitch", Title: calc.Text("Travel of one turn, by pitch"), Expr: "m*P", Result: varTravel,
		Vars: []calc.Var{varEnds, small("P", calc.Text("pitch of the thread"))},
		Fn:   calc.Func2(TravelByPitch), Go: "bracing.TravelByPitch", Source: "thread",
	}
	turnsFor = &calc.Formula{
		ID: "turns", Title: calc.Text("Turns of the adjuster"), Expr: "abs(b)/p",
		Result: calc.Var{Symbol: "n", Meaning: calc.Text("turns")}, Vars: []calc.Var{varChange, varTravel},
		Fn: calc.Func2(Turns), Go: "bracing.Turns", Source: "derived",
	}
	perTurn = &calc.Formula{
		ID: "per-turn", Title: calc.Text("One turn at the string"), Expr: "p*L/d*h_s/a",
		Result: small("y", calc.Text("movement at the string")), Vars: []calc.Var{varTravel, varLong, varRun, varString, varAttach},
		Fn: calc.Func5(PerTurn), Go: "bracing.PerTurn", Source: "derived", Limits: smallMove,
	}
	plumbLimit = &calc.Formula{
		ID: "plumb-limit", Title: calc.Text("Plumb limit at the string"), Expr: "min(0.003*h, 1)",
		Result: calc.Var{Symbol: "u", Meaning: calc.Text("most lean at this height"), Unit: "in"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: calc.Text("height of the string"), Unit: "in"}},
		Fn:     calc.FuncN(func(v []float64) float64 { return float64(PlumbLimit(Inches(v[0]))) }), Go: "bracing.PlumbLimit", Source: "aci117",
		Limits: calc.Text("Heights up to 83 ft 4 in. (25.4 m)."),
	}
	bowRadius = &calc.Formula{
		ID: "bow-radius", Title: calc.Text("Radius of a shallow bow"), Expr: "L^2/(8*s)",
		Result: large("R", calc.Text("radius")),
		Vars:   []calc.Var{large("L", calc.Text("length from end to end")), large("s", calc.Text("offset in the middle"))},
		Fn:     calc.Func2(BowRadius), Go: "bracing.BowRadius", Source: "chord",
	}
)

var lineFormulas = []*calc.Formula{
	deviation, braceLength, braceAngle, travelByThreads, travelByPitch, atBrace, braceChange, turnsFor, perTurn, plumbLimit, bowRadius,
}
