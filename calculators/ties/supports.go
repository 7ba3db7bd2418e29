package ties

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansQ     = calc.Text("load per length")
	meansWide  = calc.Text("width of the board")
	meansThin  = calc.Text("thickness of the board")
	meansDepth = calc.Text("depth below the top of the concrete")
	meansSpan  = calc.Text("spacing of supports")
)

// Head is the pressure at a depth of fluid concrete, w·d. Any coherent units.
func Head(w, d float64) float64 { return w * d }

// HeadFormula declares Head.
var HeadFormula = &calc.Formula{
	ID: "head", Title: calc.Text("Fluid head at a depth"),
	Expr: "w*d", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"},
		{Symbol: "d", Meaning: meansDepth, Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(Head), Go: "ties.Head", Source: "hurd",
}

// Lower is the lower of two pressures: the fluid head and the form pressure.
func Lower(p, most float64) float64 { return math.Min(p, most) }

// LowerFormula declares Lower.
var LowerFormula = &calc.Formula{
	ID: "lower", Title: calc.Text("Capped by the form pressure"),
	Expr: "min(p, p_f)", Result: calc.Var{Symbol: "p_s", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
		{Symbol: "p_f", Meaning: calc.Text("form pressure"), Unit: "kPa", US: "psf"},
	},
	Fn: calc.Func2(Lower), Go: "ties.Lower", Source: "statics",
	Limits: calc.Text("For jambs and sill. The head carries all that stands on it."),
}

// LineLoad is the load per length of board, p·t: pressure times the width of
// concrete that bears on the board. Any coherent units.
func LineLoad(p, width float64) float64 { return p * width }

// LineLoadFormula declares LineLoad.
var LineLoadFormula = &calc.Formula{
	ID: "line", Title: calc.Text("Load per length of board"),
	Expr: "p*t", Result: calc.Var{Symbol: "q", Meaning: meansQ, Unit: "kN/m", US: "lbf/ft"},
	Vars: []calc.Var{
		{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
		{Symbol: "t", Meaning: calc.Text("width of concrete that bears on the board"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(LineLoad), Go: "ties.LineLoad", Source: "florida",
}

// BendSpan is the span in inches at which a board b in. wide and d in. thick,
// laid flat, reaches the bending stress f psi under q lbf/ft:
// √(2·n·F·b·d²/q). The moment is q·L²/n. Source: beam theory; with n = 10 it
// is the span equation L = 10.95·√(F·S/w) of form design.
func BendSpan(n, f, b, d, q float64) float64 { return math.Sqrt(2 * n * f * b * d * d / q) }

// BendSpanFormula declares BendSpan.
var BendSpanFormula = &calc.Formula{
	ID: "bend", Title: calc.Text("Span by stress in the board"),
	Expr: "sqrt(2*n*F*b*d^2/q)", Result: calc.Var{Symbol: "L", Meaning: meansSpan, Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "n", Meaning: calc.Text("8 for a simple beam, 10 for three or more spans")},
		{Symbol: "F", Meaning: calc.Text("allowed bending stress"), Unit: "psi"},
		{
			Symbol:  "b",
			Meaning: meansWide,
			Unit:    "in",
		}, {Symbol: "d", Meaning: meansThin, Unit: "in"}, {Symbol: "q", Meaning: meansQ, Unit: "lbf/ft"},
	},
	Fn: calc.Func5(BendSpan), Go: "ties.BendSpan", Source: "florida",
	Limits: calc.Text("Board laid flat, load even along it. Shear is not checked."),
}

// SagSpan is the span in inches at which a board b in. wide and d in. thick,
// of modulus e psi, deflects by one part in r of its span under q lbf/ft:
// ∛(m·E·b·d³/(q·r)). The deflection is q·L⁴/(m·E·I). Source: beam theory;
// with m = 145 and r = 360 it is L = 1.69·∛(E·I/w) of form design.
func SagSpan(m, e, b, d, q, r float64) float64 {
	return math.Pow(m*e*b*math.Pow(d, 3)/(q*r), 1.0/3)
}

// SagSpanFormula declares SagSpan.
var SagSpanFormula = &calc.Formula{
	ID: "sag", Title: calc.Text("Span by bending of the board"),
	Expr: "(m*E*b*d^3/(q*r))^(1/3)", Result: calc.Var{Symbol: "L", Meaning: meansSpan, Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "m", Meaning: calc.Text("76.8 for a simple beam, 145 for three or more spans")},
		{Symbol: "E", Meaning: calc.Text("modulus of elasticity"), Unit: "psi"},
		{
			Symbol:  "b",
			Meaning: meansWide,
			Unit:    "in",
		}, {Symbol: "d", Meaning: meansThin, Unit: "in"}, {Symbol: "q", Meaning: meansQ, Unit: "lbf/ft"},
		{Symbol: "r", Meaning: calc.Text("the board may bend by one part in r of its span")},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return SagSpan(v[0], v[1], v[2], v[3], v[4], v[5]) }),
	Go: "ties.SagSpan", Source: "florida",
}

// SupportSpan is the spacing at which a support carries its rating, S/(k·q), with
// k = 1 for boards cut at each support and 1.25 for a continuous board. Any
// coherent units.
func SupportSpan(rating, k, q float64) float64 { return rating / (k * q) }

// SupportSpanFormula declares SupportSpan.
var SupportSpanFormula = &calc.Formula{
	ID: "support", Title: calc.Text("Span by rating of a support"),
	Expr: "S/(k*q)", Result: calc.Var{Symbol: "L", Meaning: meansSpan, Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "S", Meaning: calc.Text("rating of one support"), Unit: "kN", US: "lbf"},
		{Symbol: "k", Meaning: calc.Text("1 for a simple beam, 1.25 for one board that runs through")},
		{Symbol: "q", Meaning: meansQ, Unit: "kN/m", US: "lbf/ft"},
	},
	Fn: calc.Func3(SupportSpan), Go: "ties.SupportSpan", Source: "statics",
}
