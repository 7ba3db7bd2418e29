// Package ties computes the loads that fresh concrete puts on the small parts
// of a wall form: ties, block-outs and window frames.
package ties

import "coursebook/calculators/calc"

const (
	meansArea  = calc.Text("face that one tie holds")
	meansMiss  = calc.Text("ties missing")
	meansShare = calc.Text("whole ties that take over")
	meansUp    = calc.Text("ties apart up the wall")
	meansWork  = calc.Text("working load of a tie")
)

// TieArea is the area of the face that one tie holds, s_h·s_v·(1 + n/m): its
// tributary area and its share of n missing ties whose load m whole ties around
// them carry. With m = 2 it is the even split along a row. Any coherent units.
// Source: tributary area.
func TieArea(sh, sv, missing, sharing float64) float64 {
	return sh * sv * (1 + missing/sharing)
}

// TieAreaFormula declares TieArea.
var TieAreaFormula = &calc.Formula{
	ID: "area", Title: calc.Text("Face that one tie holds"),
	Expr: "s_h*s_v*(1 + n/m)", Result: calc.Var{Symbol: "A", Meaning: meansArea, Unit: "m²", US: "ft²"},
	Vars: []calc.Var{
		{Symbol: "s_h", Meaning: calc.Text("ties apart along the wall"), Unit: "m", US: "ft"},
		{Symbol: "s_v", Meaning: meansUp, Unit: "m", US: "ft"},
		{Symbol: "n", Meaning: meansMiss}, {Symbol: "m", Meaning: meansShare},
	},
	Fn: calc.Func4(TieArea), Go: "ties.TieArea", Source: "sharing",
	Limits: calc.Text("For ties only. It says nothing about the foam between them."),
}

// TieForce is the load on a tie, p·A: pressure times the area it holds. Any
// coherent units.
func TieForce(p, area float64) float64 { return p * area }

// TieForceFormula declares TieForce.
var TieForceFormula = &calc.Formula{
	ID: "load", Title: calc.Text("Load on a tie"),
	Expr: "p*A", Result: calc.Var{Symbol: "F", Meaning: meansF, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
		{Symbol: "A", Meaning: meansArea, Unit: "m²", US: "ft²"},
	},
	Fn: calc.Func2(TieForce), Go: "ties.TieForce", Source: "florida",
}

// WorkingLoad is the load a tie may carry, F_b/k: breaking strength over a factor
// of safety. Any unit of force.
func WorkingLoad(strength, factor float64) float64 { return strength / factor }

// WorkingLoadFormula declares WorkingLoad.
var WorkingLoadFormula = &calc.Formula{
	ID: "working", Title: calc.Text("Working load"),
	Expr: "F_b/k", Result: calc.Var{Symbol: "F_w", Meaning: meansWork, Unit: "kN", US: "lbf"},
	Vars: []calc.Var{{Symbol: "F_b", Meaning: calc.Text("breaking strength of a tie"), Unit: "kN", US: "lbf"},
		{Symbol: "k", Meaning: calc.Text("factor on breaking")}},
	Fn: calc.Func2(WorkingLoad), Go: "ties.WorkingLoad", Source: "factor",
}

// TieSpacing is the inverse of TieForce and TieArea: the widest spacing along the
// wall at which a tie carries no more than its working load. Any coherent units.
func TieSpacing(working, p, sv, missing, sharing float64) float64 {
	return working / (p * sv * (1 + missing/sharing))
}

// TieSpacingFormula declares TieSpacing.
var TieSpacingFormula = &calc.Formula{
	ID: "widest", Title: calc.Text("Widest spacing"),
	Expr: "F_w/(p*s_v*(1 + n/m))", Result: calc.Var{Symbol: "s", Meaning: calc.Text("widest spacing along the wall"),
		Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{
			Symbol:  "F_w",
			Meaning: meansWork,
			Unit:    "kN",
			US:      "lbf",
		}, {Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
		{
			Symbol:  "s_v",
			Meaning: meansUp,
			Unit:    "m",
			US:      "ft",
		}, {Symbol: "n", Meaning: meansMiss}, {Symbol: "m", Meaning: meansShare},
	},
	Fn: calc.Func5(TieSpacing), Go: "ties.TieSpacing", Source: "army",
	Limits: calc.Text("Rounded down. The working load has its factor in it already."),
}

// FaceHeight is the depth of fluid concrete at which the pressure reaches the
// capacity of a face, q/w. Any coherent units.
func FaceHeight(capacity, w float64) float64 { return capacity / w }

// FaceHeightFormula declares FaceHeight.
var FaceHeightFormula = &calc.Formula{
	ID: "face", Title: calc.Text("Fluid height for a face"),
	Expr: "q/w", Result: calc.Var{Symbol: "h", Meaning: calc.Text("depth of fluid concrete"), Unit: "m", US: "ft"},
	Vars: []calc.Var{
		{Symbol: "q", Meaning: calc.Text("capacity of the face"), Unit: "kPa", US: "psf"},
		{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"},
	},
	Fn: calc.Func2(FaceHeight), Go: "ties.FaceHeight", Source: "statics",
}
