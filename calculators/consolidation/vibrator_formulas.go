package consolidation

import "coursebook/calculators/calc"

const (
	meansR      = calc.Text("radius of action")
	meansS      = calc.Text("from place to place")
	meansL      = calc.Text("length of wall")
	meansAlong  = calc.Text("places along the wall")
	meansPlaces = calc.Text("places in the lift")
	meansEach   = calc.Text("time for one place")
	meansPass   = calc.Text("time for all places, one vibrator")
	meansFill   = calc.Text("time the pump takes for the lift")
	meansQ      = calc.Text("pump rate")
	meansCount  = calc.Text("vibrators")
)

var vibratorFormulas = []*calc.Formula{eqSpacing, eqReach, eqAlong, eqPlaces, eqEach, eqPass, eqFill, eqKeepUp, eqByRate, eqUnreached}

var eqSpacing = &calc.Formula{
	ID: "spacing", Title: calc.Text("From place to place"), Expr: "1.5*R",
	Result: calc.Var{Symbol: "s", Meaning: meansS, Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "R", Meaning: meansR, Unit: "mm", US: "in"}},
	Fn:     calc.Func1(Spacing), Go: "consolidation.Spacing", Source: "aci309",
	Limits: calc.Text("The table's radius is for the slump of its group, without ties and bars. The 18 in. (450 mm) of older manuals is for a head that reaches 12 in. (300 mm)."),
}

var eqReach = &calc.Formula{
	ID: "reach", Title: calc.Text("Reach to each side between places"), Expr: "sqrt(R^2 - (s/2)^2)",
	Result: calc.Var{Symbol: "y", Meaning: calc.Text("reach to each side"), Unit: "mm", US: "in"},
	Vars:   []calc.Var{{Symbol: "R", Meaning: meansR, Unit: "mm", US: "in"}, {Symbol: "s", Meaning: meansS, Unit: "mm", US: "in"}},
	Fn:     calc.Func2(Reach), Go: "consolidation.Reach", Source: "practice",
}

var eqAlong = &calc.Formula{
	ID: "along", Title: calc.Text("Places along the wall"), Expr: "ceil(L/s)",
	Result: calc.Var{Symbol: "n", Meaning: meansAlong},
	Vars:   []calc.Var{{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"}, {Symbol: "s", Meaning: meansS, Unit: "m", US: "ft"}},
	Fn:     calc.Func2(Along), Go: "consolidation.Along", Source: "practice",
}

var eqPlaces = &calc.Formula{
	ID: "places", Title: calc.Text("Places with the openings"), Expr: "n + o*(2 + k)",
	Result: calc.Var{Symbol: "N", Meaning: meansPlaces},
	Vars: []calc.Var{{Symbol: "n", Meaning: meansAlong}, {Symbol: "o", Meaning: calc.Text("openings in the lift")},
		{Symbol: "k", Meaning: calc.Text("more under each sill")}},
	Fn: calc.Func3(Places), Go: "consolidation.Places", Source: "practice",
}

var eqEach = &calc.Formula{
	ID: "each", Title: calc.Text("Time for one place"), Expr: "t_v + d/v + t_m",
	Result: calc.Var{Symbol: "t_1", Meaning: meansEach, Unit: "s", US: "s"},
	Vars: []calc.Var{
		{Symbol: "t_v", Meaning: calc.Text("time at rest in the concrete"), Unit: "s", US: "s"},
		{Symbol: "d", Meaning: calc.Text("lift and overlap"), Unit: "mm", US: "in"},
		{Symbol: "v", Meaning: calc.Text("speed of pulling out"), Unit: "mm/s", US: "in/s"},
		{Symbol: "t_m", Meaning: calc.Text("to the next place and in"), Unit: "s", US: "s"},
	},
	Fn: calc.Func4(Each), Go: "consolidation.Each", Source: "army",
}

var eqPass = &calc.Formula{
	ID: "pass", Title: calc.Text("Time for all places"), Expr: "N*t_1/60",
	Result: calc.Var{Symbol: "T", Meaning: meansPass, Unit: "min"},
	Vars:   []calc.Var{{Symbol: "N", Meaning: meansPlaces}, {Symbol: "t_1", Meaning: meansEach, Unit: "s"}},
	Fn:     calc.Func2(Pass), Go: "consolidation.Pass", Source: "practice",
}

var eqFill = &calc.Formula{
	ID: "fill", Title: calc.Text("Time the pump takes"), Expr: "L*b*h/Q",
	Result: calc.Var{Symbol: "t_f", Meaning: meansFill, Unit: "h", US: "h"},
	Vars: []calc.Var{
		{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"},
		{Symbol: "b", Meaning: calc.Text("core thickness"), Unit: "m", US: "ft"},
		{Symbol: "h", Meaning: calc.Text("depth of the lift"), Unit: "m", US: "ft"},
		{Symbol: "Q", Meaning: meansQ, Unit: "m³/h", US: "ft³/h"},
	},
	Fn: calc.Func4(Fill), Go: "consolidation.Fill", Source: "practice",
}

var eqKeepUp = &calc.Formula{
	ID: "keep-up", Title: calc.Text("Vibrators to keep up"), Expr: "ceil(T/t_f)",
	Result: calc.Var{Symbol: "z", Meaning: meansCount},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansPass, Unit: "min"}, {Symbol: "t_f", Meaning: meansFill, Unit: "min"}},
	Fn:     calc.Func2(KeepUp), Go: "consolidation.KeepUp", Source: "practice",
}

var eqByRate = &calc.Formula{
	ID: "by-rate", Title: calc.Text("Vibrators by published rate"), Expr: "ceil(Q/q)",
	Result: calc.Var{Symbol: "z", Meaning: meansCount},
	Vars: []calc.Var{{Symbol: "Q", Meaning: meansQ, Unit: "m³/h", US: "yd³/h"},
		{Symbol: "q", Meaning: calc.Text("rate of one vibrator"), Unit: "m³/h", US: "yd³/h"}},
	Fn: calc.Func2(ByRate), Go: "consolidation.ByRate", Source: "ccanz",
}

var eqUnreached = &calc.Formula{
	ID: "unreached", Title: calc.Text("Foot the head misses"), Expr: "max(0, H + a - w)",
	Result: calc.Var{Symbol: "u", Meaning: calc.Text("foot the head misses"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "H", Meaning: calc.Text("height of the form"), Unit: "m", US: "ft"},
		{Symbol: "a", Meaning: calc.Text("whip above the form"), Unit: "m", US: "ft"},
		{Symbol: "w", Meaning: calc.Text("whip with its head"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(Unreached), Go: "consolidation.Unreached", Source: "practice",
}
