package geometry

import (
	"math"

	"coursebook/calculators/calc"
)

// Symbols that several formulas of a curved wall share.
const (
	curveThetaText  = calc.Text("angle the wall turns through")
	curveCutsText   = calc.Text("number of cuts")
	curveMiddleText = calc.Text("radius to the middle of the core")
	curveFormText   = calc.Text("length of the outside face")
	curveThickText  = calc.Text("thickness of the form, foam and core")
	curveGapText    = calc.Text("gap that a cut closes")
)

var (
	curveTheta = calc.Var{Symbol: "theta", Meaning: curveThetaText, Unit: "°", US: "°"}
	curveR     = calc.Var{Symbol: "R", Meaning: calc.Text("radius of the measured line"), Unit: "m", US: "ft"}
	curveCuts  = calc.Var{Symbol: "n", Meaning: curveCutsText}
	curveThick = calc.Var{Symbol: "T", Meaning: curveThickText, Unit: "mm", US: "in"}
	curveGap   = calc.Var{Symbol: "g", Meaning: curveGapText, Unit: "mm", US: "in"}
	curveFlank = calc.Var{Symbol: "b", Meaning: curveFormText, Unit: "m", US: "ft"}
	curveApart = calc.Var{Symbol: "s", Meaning: calc.Text("spacing of the cuts"), Unit: "m", US: "ft"}
)

// ChordLength is the distance between the ends of an arc, c = 2 R sin(θ/2).
//
// Units: degrees, m. Limits: 0 to 360°. Source: geometry.
func ChordLength(radius, degrees float64) float64 {
	return 2 * radius * math.Sin(math.Pi*degrees/360)
}

// ChordLengthFormula declares ChordLength.
var ChordLengthFormula = &calc.Formula{
	ID: "chord", Title: calc.Text("Chord from radius and angle"), Expr: "2*R*sin(pi*theta/360)",
	Result: calc.Var{Symbol: "c", Meaning: calc.Text("chord"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{curveR, curveTheta}, Fn: calc.Func2(ChordLength), Go: "geometry.ChordLength", Source: "geometry",
}

// ArcRise is the distance of the middle of an arc from its chord,
// s = R (1 − cos(θ/2)), computed without cancellation at small angles.
//
// Units: degrees, m. Limits: 0 to 360°. Source: geometry.
func ArcRise(radius, degrees float64) float64 {
	half := math.Sin(math.Pi * degrees / 720)
	return 2 * radius * half * half
}

// ArcRiseFormula declares ArcRise.
var ArcRiseFormula = &calc.Formula{
	ID: "rise", Title: calc.Text("Rise from radius and angle"), Expr: "2*R*sin(pi*theta/720)^2",
	Result: calc.Var{Symbol: "s", Meaning: calc.Text("rise|of a curve"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{curveR, curveTheta}, Fn: calc.Func2(ArcRise), Go: "geometry.ArcRise", Source: "geometry",
}

// MiddleRadius is the radius of the middle of a curved wall from the radius of
// the measured line, R_c = R − e, with e from the middle out to that line: half
// a core for the outside face, minus half a core for the inside.
//
// Units: m. Limits: none. Source: geometry.
func MiddleRadius(radius, offset float64) float64 { return radius - offset }

// MiddleRadiusFormula declares MiddleRadius.
var MiddleRadiusFormula = &calc.Formula{
	ID: "middle", Title: calc.Text("Radius to the middle of the core"), Expr: "R - e",
	Result: calc.Var{Symbol: "R_c", Meaning: curveMiddleText, Unit: "m", US: "ft"},
	Vars: []calc.Var{
		curveR,
		{Symbol: "e", Meaning: calc.Text("from the middle out to the measured line, minus toward the center"),
			Unit: "m", US: "ft"},
	},
	Fn: calc.Func2(MiddleRadius), Go: "geometry.MiddleRadius", Source: "geometry",
}

// Developed is the length of a face of a curved wall laid out straight,
// b = π θ (R_c + e) / 180, with e from the middle out to the face.
//
// Units: degrees, m. Limits: R_c + e > 0. Source: geometry.
func Developed(degrees, middle, offset float64) float64 {
	return ArcLength(degrees, middle+offset)
}

// DevelopedFormula declares Developed.
var DevelopedFormula = &calc.Formula{
	ID: "developed", Title: calc.Text("Length of a face, laid straight"), Expr: "pi*theta/180*(R_c + e)",
	Result: calc.Var{Symbol: "b", Meaning: calc.Text("length of the face"), Unit: "m", US: "ft"},
	Vars: []calc.Var{curveTheta, {Symbol: "R_c", Meaning: curveMiddleText, Unit: "m", US: "ft"},
		{
			Symbol:  "e",
			Meaning: calc.Text("from the middle out to the face, minus toward the center"),
			Unit:    "m",
			US:      "ft",
		}},
	Fn: calc.Func3(Developed), Go: "geometry.Developed", Source: "geometry",
}

// CutsBySpacing is the least number of cuts that are no farther apart than the
// form maker allows, n = ⌈b / s⌉, with b along the straight form.
//
// Units: any, the same for both. Limits: s > 0. Source: common practice.
func CutsBySpacing(length, spacing float64) float64 { return calc.Ceil(length / spacing) }

// CutsBySpacingFormula declares CutsBySpacing.
var CutsBySpacingFormula = &calc.Formula{
	ID: "cuts-by-spacing", Title: calc.Text("Cuts from the greatest spacing"), Expr: "ceil(b/s)",
	Result: curveCuts, Vars: []calc.Var{curveFlank, curveApart},
	Fn: calc.Func2(CutsBySpacing), Go: "geometry.CutsBySpacing", Source: "practice",
}

// CutsByGap is the least number of cuts of width g that let the form close,
// n = ⌈π θ T / (180 g)⌉.
//
// Units: degrees; mm for both widths. Limits: g > 0. Source: the two faces of
// the bent form differ by π θ T / 180 in length.
func CutsByGap(degrees, thickness, gap float64) float64 {
	return calc.Ceil(ArcLength(degrees, thickness) / gap)
}

// CutsByGapFormula declares CutsByGap.
var CutsByGapFormula = &calc.Formula{
	ID: "cuts-by-gap", Title: calc.Text("Cuts from their width"), Expr: "ceil(pi*theta/180*T/g)",
	Result: curveCuts, Vars: []calc.Var{curveTheta, curveThick, curveGap},
	Fn: calc.Func3(CutsByGap), Go: "geometry.CutsByGap", Source: "geometry",
}

// GapPerCut is the width that each cut closes at the inside face,
// g = π θ T / (180 n), if the outside face keeps its length. T is the whole form, foam and core.
//
// Units: degrees; mm. Limits: n ≥ 1; the bend is shared evenly. Source: as
// CutsByGap.
func GapPerCut(degrees, thickness, cuts float64) float64 {
	return ArcLength(degrees, thickness) / cuts
}

// GapPerCutFormula declares GapPerCut.
var GapPerCutFormula = &calc.Formula{
	ID: "gap", Title: calc.Text("What each cut closes"), Expr: "pi*theta/180*T/n",
	Result: curveGap, Vars: []calc.Var{curveTheta, curveThick, curveCuts},
	Fn: calc.Func3(GapPerCut), Go: "geometry.GapPerCut", Source: "geometry",
	Limits: calc.Text("The outside face keeps its length, and the cuts share the bend evenly."),
}

// CutSpacing is the distance between the cuts as marked on the straight form,
// s = b / n; the first is half a spacing from the end.
//
// Units: m. Limits: n ≥ 1. Source: even share.
func CutSpacing(length, cuts float64) float64 { return length / cuts }

// CutSpacingFormula declares CutSpacing.
var CutSpacingFormula = &calc.Formula{
	ID: "spacing", Title: calc.Text("Spacing of the cuts on the straight form"), Expr: "b/n",
	Result: curveApart, Vars: []calc.Var{curveFlank, curveCuts},
	Fn: calc.Func2(CutSpacing), Go: "geometry.CutSpacing", Source: "geometry",
}

// FlatOffset is the distance of a straight piece between two cuts from the true
// curve at its middle, f = R (1 − cos(θ / 2n)).
//
// Units: degrees, m. Limits: n ≥ 1; the form bends at the cuts only.
// Source: ArcRise of one piece.
func FlatOffset(radius, degrees, cuts float64) float64 { return ArcRise(radius, degrees/cuts) }

// FlatOffsetFormula declares FlatOffset.
var FlatOffsetFormula = &calc.Formula{
	ID: "flat", Title: calc.Text("Flat piece off the true curve"), Expr: "2*R*sin(pi*theta/(720*n))^2",
	Result: calc.Var{Symbol: "f", Meaning: calc.Text("greatest distance off the curve"), Unit: "mm", US: "in"},
	Vars: []calc.Var{{Symbol: "R", Meaning: calc.Text("radius of the outside face"), Unit: "mm", US: "in"},
		curveTheta, curveCuts},
	Fn: calc.Func3(FlatOffset), Go: "geometry.FlatOffset", Source: "geometry",
}
