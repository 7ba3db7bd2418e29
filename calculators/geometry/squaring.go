package geometry

import (
	"math"

	"coursebook/calculators/calc"
)

// Symbols that several formulas of squaring share.
const (
	squareAText = calc.Text("side a")
	squareBText = calc.Text("side b")
	squareSText = calc.Text("shift of the end of side b along side a, plus to shorten the diagonal")
	squareXText = calc.Text("gap along the first run")
	squareYText = calc.Text("gap to the left of the first run")
	squareGText = calc.Text("closing gap")
	squarePhi   = calc.Text("heading, to the left of the first run")
)

var (
	squareA = calc.Var{Symbol: "a", Meaning: squareAText, Unit: "m", US: "ft"}
	squareB = calc.Var{Symbol: "b", Meaning: squareBText, Unit: "m", US: "ft"}
	squareS = calc.Var{Symbol: "s", Meaning: squareSText, Unit: "m", US: "ft"}
	squareX = calc.Var{Symbol: "X", Meaning: squareXText, Unit: "m", US: "ft"}
	squareY = calc.Var{Symbol: "Y", Meaning: squareYText, Unit: "m", US: "ft"}
	squareG = calc.Var{Symbol: "g", Meaning: squareGText, Unit: "m", US: "ft"}
	runLong = calc.Var{Symbol: "L", Meaning: calc.Text("length of the run"), Unit: "m", US: "ft"}
	runHead = calc.Var{Symbol: "phi", Meaning: squarePhi, Unit: "°", US: "°"}
)

// Diagonal is the diagonal of a rectangle, d = √(a² + b²).
//
// Units: m (any, the same for all). Limits: right angle. Source: Pythagoras.
func Diagonal(a, b float64) float64 {
	return math.Sqrt(float64(a*a) + float64(b*b))
}

// DiagonalOfFormula declares DiagonalOf.
var DiagonalOfFormula = &calc.Formula{
	ID: "diagonal", Title: calc.Text("Diagonal of a rectangle"), Expr: "sqrt(a^2 + b^2)",
	Result: calc.Var{Symbol: "d", Meaning: calc.Text("diagonal"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{squareA, squareB}, Fn: calc.Func2(Diagonal), Go: "geometry.Diagonal", Source: "pythagoras",
}

// ClosingGapFormula declares ClosingGap.
var ClosingGapFormula = &calc.Formula{
	ID: "gap", Title: calc.Text("Closing gap"), Expr: "sqrt(X^2 + Y^2)",
	Result: squareG, Vars: []calc.Var{squareX, squareY}, Fn: calc.Func2(Diagonal), Go: "geometry.Diagonal",
	Source: "traverse",
}

// CornerShift is the distance that the end of side b must move along side a to
// make the corner square, s = (d² − a² − b²) / (2 a). It is positive if the
// diagonal is too long.
//
// Units: m (any, the same for all). Limits: |a − b| < d < a + b. Source: law
// of cosines, s = −b cos C.
func CornerShift(a, b, diagonal float64) float64 {
	return (float64(diagonal*diagonal) - float64(a*a) - float64(b*b)) / (2 * a)
}

// CornerShiftFormula declares CornerShift.
var CornerShiftFormula = &calc.Formula{
	ID: "shift", Title: calc.Text("How far to shift the corner"), Expr: "(d^2 - a^2 - b^2)/(2*a)",
	Result: squareS,
	Vars: []calc.Var{
		squareA,
		squareB,
		{Symbol: "d", Meaning: calc.Text("diagonal as measured"), Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(CornerShift), Go: "geometry.CornerShift", Source: "cosines",
}

// CornerError is how far the corner is over 90°, e = asin(s / b).
//
// Units: m, degrees. Limits: |s| ≤ b. Source: law of cosines,
// C = 90° + asin(s / b).
func CornerError(shift, b float64) float64 { return math.Asin(shift/b) * 180 / math.Pi }

// CornerErrorFormula declares CornerError.
var CornerErrorFormula = &calc.Formula{
	ID: "error", Title: calc.Text("Corner over 90°"), Expr: "asin(s/b)*180/pi",
	Result: calc.Var{Symbol: "e", Meaning: calc.Text("angle of the corner less 90°"), Unit: "°", US: "°"},
	Vars:   []calc.Var{squareS, squareB}, Fn: calc.Func2(CornerError), Go: "geometry.CornerError", Source: "cosines",
}

// RunAlong is the extent of a run along the first one, x = L cos φ.
//
// Units: m, degrees. Limits: none. Source: traverse computation.
func RunAlong(length, heading float64) float64 { return length * math.Cos(heading*math.Pi/180) }

// RunAlongFormula declares RunAlong.
var RunAlongFormula = &calc.Formula{
	ID: "along", Title: calc.Text("A run, along the first one"), Expr: "L*cos(phi*pi/180)",
	Result: calc.Var{Symbol: "x", Meaning: calc.Text("how far along"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{runLong, runHead}, Fn: calc.Func2(RunAlong), Go: "geometry.RunAlong", Source: "traverse",
}

// RunAcross is the extent of a run to the left of the first one, y = L sin φ.
//
// Units: m, degrees. Limits: none. Source: traverse computation.
func RunAcross(length, heading float64) float64 { return length * math.Sin(heading*math.Pi/180) }

// RunAcrossFormula declares RunAcross.
var RunAcrossFormula = &calc.Formula{
	ID: "across", Title: calc.Text("A run, to the left of the first one"), Expr: "L*sin(phi*pi/180)",
	Result: calc.Var{Symbol: "y", Meaning: calc.Text("how far to the left"), Unit: "m", US: "ft"},
	Vars:   []calc.Var{runLong, runHead}, Fn: calc.Func2(RunAcross), Go: "geometry.RunAcross", Source: "traverse",
}

// ClosingBearing is the direction of a gap, X along and Y to the left of the
// first run, as an angle to the left of that run between −180° and 180°,
// β = 2 atan(Y / (X + √(X² + Y²))).
//
// Units: m, degrees. Limits: gap above 0. Source: half-angle form of atan(Y/X)
// for all quarters.
func ClosingBearing(along, across float64) float64 {
	return math.Atan2(across, along) * 180 / math.Pi
}

// ClosingBearingFormula declares ClosingBearing.
var ClosingBearingFormula = &calc.Formula{
	ID: "bearing", Title: calc.Text("Direction of the gap"), Expr: "2*atan(Y/(X + sqrt(X^2 + Y^2)))*180/pi",
	Result: calc.Var{Symbol: "beta", Meaning: calc.Text("direction, to the left of the first run"), Unit: "°", US: "°"},
	Vars: []calc.Var{
		squareX,
		squareY,
	}, Fn: calc.Func2(ClosingBearing), Go: "geometry.ClosingBearing", Source: "traverse",
}

// ClosingRatio is the length of the outline per unit of its closing gap,
// r = P / g.
//
// Units: m. Limits: g > 0. Source: traverse computation.
func ClosingRatio(perimeter, gap float64) float64 { return perimeter / gap }

// ClosingRatioFormula declares ClosingRatio.
var ClosingRatioFormula = &calc.Formula{
	ID: "ratio", Title: calc.Text("Length per unit of gap"), Expr: "P/g",
	Result: calc.Var{Symbol: "r", Meaning: calc.Text("length of the outline per unit of gap")},
	Vars:   []calc.Var{{Symbol: "P", Meaning: calc.Text("length of the outline"), Unit: "m", US: "ft"}, squareG},
	Fn:     calc.Func2(ClosingRatio), Go: "geometry.ClosingRatio", Source: "traverse",
}
