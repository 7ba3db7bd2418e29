package ties

import "coursebook/calculators/calc"

const (
	meansQ     = calc.Text("load per length")
	meansWide  = calc.Text("width of the board")
	meansThin  = calc.Text("thickness of the board")
	meansDepth = calc.Text("depth below the top of the concrete")
	meansSpan  = calc.Text("spacing of supports")
)

var eqHead = &calc.Formula{
	ID: "head", Title: calc.Text("Fluid head at a depth"),
	Expr: "w*d", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"}, {Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"}},
	Fn:   calc.Func2(Head), Go: "ties.Head", Source: "hurd",
}

var eqLower = &calc.Formula{
	ID: "lower", Title: calc.Text("Capped by the form pressure"),
	Expr: "min(p, p_f)", Result: calc.Var{Symbol: "p_s", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"}, {Symbol: "p_f", Meaning: calc.Text("form pressure"), Unit: "kPa", US: "psf"}},
	Fn:   calc.Func2(Lower), Go: "ties.Lower", Source: "statics",
	Limits: calc.Text("For jambs and sill. The head carries all that stands on it."),
}

var eqLine = &calc.Formula{
	ID: "line", Title: calc.Text("Load per length of board"),
	Expr: "p*t", Result: calc.Var{Symbol: "q", Meaning: meansQ, Unit: "kN/m", US: "lbf/ft"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"}, {Symbol: "t", Meaning: calc.Text("width of concrete that bears on the board"), Unit: "m", US: "ft"}},
	Fn:   calc.Func2(LineLoad), Go: "ties.LineLoad", Source: "florida",
}

var eqBend = &calc.Formula{
	ID: "bend", Title: calc.Text("Span by stress in the board"),
	Expr: "sqrt(2*n*F*b*d^2/q)", Result: calc.Var{Symbol: "L", Meaning: meansSpan, Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "n", Meaning: calc.Text("8 for a simple beam, 10 for three or more spans")},
		{Symbol: "F", Meaning: calc.Text("allowed bending stress"), Unit: "psi"},
		{Symbol: "b", Meaning: meansWide, Unit: "in"}, {Symbol: "d", Meaning: meansThin, Unit: "in"}, {Symbol: "q", Meaning: meansQ, Unit: "lbf/ft"},
	},
	Fn: calc.Func5(BendSpan), Go: "ties.BendSpan", Source: "florida",
	Limits: calc.Text("Board laid flat, load even along it. Shear is not checked."),
}

var eqSag = &calc.Formula{
	ID: "sag", Title: calc.Text("Span by bending of the board"),
	Expr: "(m*E*b*d^3/(q*r))^(1/3)", Result: calc.Var{Symbol: "L", Meaning: meansSpan, Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "m", Meaning: calc.Text("76.8 for a simple beam, 145 for three or more spans")},
		{Symbol: "E", Meaning: calc.Text("modulus of elasticity"), Unit: "psi"},
		{Symbol: "b", Meaning: meansWide, Unit: "in"}, {Symbol: "d", Meaning: meansThin, Unit: "in"}, {Symbol: "q", Meaning: meansQ, Unit: "lbf/ft"},
		{Symbol: "r", Meaning: calc.Text("the board may bend by one part in r of its span")},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return SagSpan(v[0], v[1], v[2], v[3], v[4], v[5]) }),
	Go: "ties.SagSpan", Source: "florida",
}

var eqSupport = &calc.Formula{
	ID: "support", Title: calc.Text("Span by rating of a support"),
	Expr: "S/(k*q)", Result: calc.Var{Symbol: "L", Meaning: meansSpan, Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "S", Meaning: calc.Text("rating of one support"), Unit: "kN", US: "lbf"},
		{Symbol: "k", Meaning: calc.Text("1 for a simple beam, 1.25 for one board that runs through")},
		{Symbol: "q", Meaning: meansQ, Unit: "kN/m", US: "lbf/ft"},
	},
	Fn: calc.Func3(SupportSpan), Go: "ties.SupportSpan", Source: "statics",
}
