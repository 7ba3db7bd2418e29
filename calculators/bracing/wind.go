package bracing

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
const (
	meansWind     = calc.Text("wind, 3-second gust")
	meansQ        = calc.Text("velocity pressure")
	meansHigh     = calc.Text("height of the wall")
	meansMoment   = calc.Text("moment for each length of wall")
	meansLevel    = calc.Text("level force in the brace")
	meansAttach   = calc.Text("height where the brace holds")
	meansRun      = calc.Text("foot of the brace from the wall")
	meansShare    = calc.Text("length of wall on one brace")
	meansPlank    = calc.Text("planks' load on one brace")
	meansLine     = calc.Text("wind on each length of wall")
	meansPressure = calc.Text("pressure on the wall")
)

// Aspects and force coefficients of solid walls on the ground: of the whole wall,
// and of its windward end over one height, the latter times 0.8 for a wall
// without a gap below.
var (
	wholeAspect = []float64{0.05, 0.1, 0.2, 0.5, 1, 2, 4, 5, 10}
	wholeForce  = []float64{1.80, 1.70, 1.65, 1.55, 1.45, 1.40, 1.35, 1.35, 1.30}
	endAspect   = []float64{2, 3, 4, 5, 6, 7, 8, 9, 10, 13, 45}
	endForce    = []float64{2.25, 2.60, 2.90, 3.10, 3.30, 3.40, 3.55, 3.65, 3.75, 4.00, 4.30}
)

// endShare is 1.8 − s/h for a wall without a gap below it, s = h.
const endShare = 0.8

// BraceLength is the length of a brace from its foot to the wall,
// L = √(d² + (a + f)²), with its foot at distance d from the wall and f below
// the wall's base, and its head at height a above the base.
//
// Units: m. Limits: none. Source: Pythagoras; right triangle of the US Army's
// brace design, EN5466.
func BraceLength(run, attach, below float64) float64 {
	return math.Sqrt(float64(run*run) + float64((attach+below)*(attach+below)))
}

// BraceLengthFormula declares BraceLength.
var BraceLengthFormula = &calc.Formula{
	ID: "brace-length", Title: calc.Text("Length of the brace"), Expr: "sqrt(d^2 + (a + f)^2)", Result: varLong,
	Vars: []calc.Var{varRun, varAttach, varBelow},
	Fn:   calc.Func3(BraceLength), Go: "bracing.BraceLength", Source: "army",
}

// BraceAngle is the angle of a brace with the ground,
// θ = atan((a + f) / d).
//
// Units: m, degrees. Limits: d > 0. Source: as BraceLength.
func BraceAngle(run, attach, below float64) float64 {
	return math.Atan((attach+below)/run) * 180 / math.Pi
}

// BraceAngleFormula declares BraceAngle.
var BraceAngleFormula = &calc.Formula{
	ID: "angle", Title: calc.Text("Slope of the brace"), Expr: "atan((a + f)/d)*180/pi",
	Result: calc.Var{Symbol: "theta", Meaning: calc.Text("slope over the ground"), Unit: "°", US: "°"},
	Vars:   []calc.Var{varRun, varAttach, varBelow},
	Fn:     calc.Func3(BraceAngle), Go: "bracing.BraceAngle", Source: "army",
}

// DesignWind is the basic wind speed reduced for the time that the wall is
// braced, V = f V_b.
//
// Units: any speed. Limits: not for hurricane regions in the season. Source:
// ASCE 37: 0.75 up to 6 weeks, 0.8 to 1 year, 0.85 to 2 years, 0.9 to 5.
func DesignWind(factor, basic float64) float64 { return factor * basic }

// DesignWindFormula declares DesignWind.
var DesignWindFormula = &calc.Formula{
	ID: "design-wind", Title: calc.Text("Wind for the construction time"), Expr: "f*V_b",
	Result: calc.Var{Symbol: "V", Meaning: meansWind, Unit: "m/s", US: "mph"},
	Vars: []calc.Var{
		{Symbol: "f", Meaning: calc.Text("factor for the time")},
		{Symbol: "V_b", Meaning: calc.Text("basic wind of the map"), Unit: "m/s", US: "mph"}},
	Fn: calc.Func2(DesignWind), Go: "bracing.DesignWind", Source: "asce37",
	Limits: calc.Text("Not for hurricane country in its season."),
}

// HeightFactor is the velocity pressure exposure coefficient,
// K_z = 2.01 (max(z, 15) / z_g)^(2/α).
//
// Units: ft. Limits: z up to z_g. Source: ASCE 7-05 to 7-16; α and z_g are 7
// and 1200 for exposure B, 9.5 and 900 for C, 11.5 and 700 for D.
func HeightFactor(height, gradient, alpha float64) float64 {
	return 2.01 * math.Pow(math.Max(height, 15)/gradient, 2/alpha)
}

// HeightFactorFormula declares HeightFactor.
var HeightFactorFormula = &calc.Formula{
	ID: "height-factor", Title: calc.Text("Height factor"), Expr: "2.01*(max(z, 15)/z_g)^(2/alpha)",
	Result: calc.Var{Symbol: "K_z", Meaning: calc.Text("factor for height and exposure")},
	Vars: []calc.Var{
		{Symbol: "z", Meaning: calc.Text("top of the wall over the ground"), Unit: "ft"},
		{Symbol: "z_g", Meaning: calc.Text("gradient height of the exposure"), Unit: "ft"},
		{Symbol: "alpha", Meaning: calc.Text("exponent of the exposure")}},
	Fn: calc.Func3(HeightFactor), Go: "bracing.HeightFactor", Source: "asce7",
	Limits: calc.Text("Editions 7-05 to 7-16. The 2022 edition gives the same for low walls."),
}

// GroundFactor is the factor for the lower density of air on high ground,
// K_e = exp(−0.0000362 z_e).
//
// Units: ft above sea level. Limits: none; 1 is on the safe side above sea
// level. Source: ASCE 7-16, table 26.9-1.
func GroundFactor(elevation float64) float64 { return math.Exp(-0.0000362 * elevation) }

// GroundFactorFormula declares GroundFactor.
var GroundFactorFormula = &calc.Formula{
	ID: "ground-factor", Title: calc.Text("Factor for high ground"), Expr: "exp(-0.0000362*z_e)",
	Result: calc.Var{Symbol: "K_e", Meaning: calc.Text("factor for thinner air")},
	Vars:   []calc.Var{{Symbol: "z_e", Meaning: calc.Text("ground over sea level"), Unit: "ft"}},
	Fn:     calc.Func1(GroundFactor), Go: "bracing.GroundFactor", Source: "asce716",
}

// VelocityPressure is q_z = 0.00256 K_z K_zt K_d K_e V². In Pa and m/s the
// constant is printed as 0.613; both are half the density of air, and differ
// by 0.06 %.
//
// Units: psf, mph. Limits: V is the 3-second gust at 33 ft. Source: ASCE 7.
func VelocityPressure(height, hill, direction, ground, wind float64) float64 {
	return 0.00256 * height * hill * direction * ground * wind * wind
}

// VelocityPressureFormula declares VelocityPressure.
var VelocityPressureFormula = &calc.Formula{
	ID: "velocity-pressure", Title: calc.Text("Velocity pressure"), Expr: "0.00256*K_z*K_zt*K_d*K_e*V^2",
	Result: calc.Var{Symbol: "q_z", Meaning: meansQ, Unit: "psf"},
	Vars: []calc.Var{
		{Symbol: "K_z", Meaning: calc.Text("height factor")},
		{Symbol: "K_zt", Meaning: calc.Text("factor for a hill or ridge")},
		{Symbol: "K_d", Meaning: calc.Text("factor for direction")},
		{Symbol: "K_e", Meaning: calc.Text("factor for high ground")},
		{Symbol: "V", Meaning: meansWind, Unit: "mph"}},
	Fn: calc.Func5(VelocityPressure), Go: "bracing.VelocityPressure", Source: "asce7",
}

// MeasuredPressure is the velocity pressure of a wind measured at the wall,
// q = 0.00256 V².
//
// Units: psf, mph. Limits: VelocityPressure with all factors 1. Source: as
// VelocityPressure.
func MeasuredPressure(wind float64) float64 { return 0.00256 * wind * wind }

// MeasuredPressureFormula declares MeasuredPressure.
var MeasuredPressureFormula = &calc.Formula{
	ID: "plain-pressure", Title: calc.Text("Pressure of a wind read on site"), Expr: "0.00256*V^2",
	Result: calc.Var{Symbol: "q", Meaning: meansQ, Unit: "psf"},
	Vars:   []calc.Var{{Symbol: "V", Meaning: meansWind, Unit: "mph"}},
	Fn:     calc.Func1(MeasuredPressure), Go: "bracing.MeasuredPressure", Source: "asce7",
}

// WallPressure is the net wind pressure on both faces of a wall,
// p = γ q_z G C_f, with the gust factor G and the force coefficient C_f.
//
// Units: any pressure. Limits: rigid wall. Source: ASCE 7, solid freestanding
// walls; γ is 1, or 0.6 for allowable loads with the wind maps since 2010.
func WallPressure(factor, velocity, gust, force float64) float64 {
	return factor * velocity * gust * force
}

// WallPressureFormula declares WallPressure.
var WallPressureFormula = &calc.Formula{
	ID: "wall-pressure", Title: calc.Text("Pressure on the wall"), Expr: "gamma*q_z*G*C_f",
	Result: calc.Var{Symbol: "p", Meaning: meansPressure, Unit: "Pa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "gamma", Meaning: calc.Text("load factor")},
		{Symbol: "q_z", Meaning: meansQ, Unit: "Pa", US: "psf"},
		{Symbol: "G", Meaning: calc.Text("gust factor")},
		{Symbol: "C_f", Meaning: calc.Text("force coefficient, both faces")}},
	Fn: calc.Func4(WallPressure), Go: "bracing.WallPressure", Source: "walls",
}

// WindLine is the wind force per length of wall, w = p h.
//
// Units: any coherent. Limits: wall on the ground. Source: definition.
func WindLine(pressure, height float64) float64 { return pressure * height }

// WindLineFormula declares WindLine.
var WindLineFormula = &calc.Formula{
	ID: "wind-line", Title: calc.Text("Wind on each length of wall"), Expr: "p*h",
	Result: calc.Var{Symbol: "w", Meaning: meansLine, Unit: "N/m", US: "lbf/ft"},
	Vars: []calc.Var{
		{Symbol: "p", Meaning: meansPressure, Unit: "Pa", US: "psf"},
		{Symbol: "h", Meaning: meansHigh, Unit: "m", US: "ft"}},
	Fn: calc.Func2(WindLine), Go: "bracing.WindLine", Source: "statics",
}

// WindMoment is the moment of the wind about the base of the wall per length of
// wall, M = 0.55 w h: the wind acts 5 % of the height above the middle.
//
// Units: any coherent; a moment per length is a force. Limits: wall on the
// ground. Source: ASCE 7, figure for solid freestanding walls, note 3.
func WindMoment(line, height float64) float64 { return 0.55 * line * height }

// WindMomentFormula declares WindMoment.
var WindMomentFormula = &calc.Formula{
	ID: "wind-moment", Title: calc.Text("Moment of the wind"), Expr: "0.55*w*h",
	Result: calc.Var{Symbol: "M", Meaning: meansMoment, Unit: "N", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "w", Meaning: meansLine, Unit: "N/m", US: "lbf/ft"},
		{Symbol: "h", Meaning: meansHigh, Unit: "m", US: "ft"}},
	Fn: calc.Func2(WindMoment), Go: "bracing.WindMoment", Source: "walls",
}

// LeastMoment is the least moment about the base that wall forms are braced for,
// per length of wall, M = max(15 h² / 2, 100 h): 15 psf of wind, or 100 lb on each
// foot at the top.
//
// Units: lbf for each foot times ft, ft. Limits: wall forms. Source: ACI 347.
func LeastMoment(height float64) float64 {
	return math.Max(float64(15*height*height)/2, 100*height)
}

// LeastMomentFormula declares LeastMoment.
var LeastMomentFormula = &calc.Formula{
	ID: "least-moment", Title: calc.Text("Least moment for a wall form"), Expr: "max(15*h^2/2, 100*h)",
	Result: calc.Var{Symbol: "M_0", Meaning: meansMoment, Unit: "lbf"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: meansHigh, Unit: "ft"}},
	Fn:     calc.Func1(LeastMoment), Go: "bracing.LeastMoment", Source: "aci347",
}

// BraceReaction is the horizontal force in one brace, H = M s / a: the moment
// of the length of wall on the brace over the height where the brace holds.
//
// Units: any coherent. Limits: the base of the wall does not move and resists
// no moment. Source: moments about the base; US Army and textbook brace design.
func BraceReaction(moment, share, attach float64) float64 { return moment * share / attach }

// BraceReactionFormula declares BraceReaction.
var BraceReactionFormula = &calc.Formula{
	ID: "brace-hold", Title: calc.Text("Level force in the brace"), Expr: "M*s/a",
	Result: calc.Var{Symbol: "H", Meaning: meansLevel, Unit: "N", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "M", Meaning: meansMoment, Unit: "N", US: "lbf"},
		{Symbol: "s", Meaning: meansShare, Unit: "m", US: "ft"},
		{Symbol: "a", Meaning: meansAttach, Unit: "m", US: "ft"}},
	Fn: calc.Func3(BraceReaction), Go: "bracing.BraceReaction", Source: "statics",
}

// BraceForce is the force along the brace, F = H L / d.
//
// Units: any coherent. Limits: d > 0. Source: triangle of wall, ground and
// brace.
func BraceForce(level, length, run float64) float64 { return level * length / run }

// BraceForceFormula declares BraceForce.
var BraceForceFormula = &calc.Formula{
	ID: "brace-force", Title: calc.Text("Force along the brace"), Expr: "H*L/d",
	Result: calc.Var{Symbol: "F", Meaning: calc.Text("force along the brace"), Unit: "N", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "H", Meaning: meansLevel, Unit: "N", US: "lbf"},
		{Symbol: "L", Meaning: calc.Text("length of the brace"), Unit: "m", US: "ft"},
		{Symbol: "d", Meaning: meansRun, Unit: "m", US: "ft"}},
	Fn: calc.Func3(BraceForce), Go: "bracing.BraceForce", Source: "statics",
}

// AnchorUplift is the vertical force at the foot, U = H (a + f) / d.
//
// Units: any coherent. Limits: d > 0. Source: as BraceForce.
func AnchorUplift(level, attach, below, run float64) float64 {
	return level * (attach + below) / run
}

// AnchorUpliftFormula declares AnchorUplift.
var AnchorUpliftFormula = &calc.Formula{
	ID: "uplift", Title: calc.Text("Upright force at the foot"), Expr: "H*(a + f)/d",
	Result: calc.Var{Symbol: "U", Meaning: calc.Text("upright force at the foot"), Unit: "N", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "H", Meaning: meansLevel, Unit: "N", US: "lbf"},
		{Symbol: "a", Meaning: meansAttach, Unit: "m", US: "ft"},
		{Symbol: "f", Meaning: calc.Text("foot below the wall base"), Unit: "m", US: "ft"},
		{Symbol: "d", Meaning: meansRun, Unit: "m", US: "ft"}},
	Fn: calc.Func4(AnchorUplift), Go: "bracing.AnchorUplift", Source: "statics",
}

// PlankLoad is the load of a platform on one brace, P = u b s.
//
// Units: any coherent. Limits: uniform load. Source: 29 CFR 1926 Subpart L.
func PlankLoad(uniform, width, share float64) float64 { return uniform * width * share }

// PlankLoadFormula declares PlankLoad.
var PlankLoadFormula = &calc.Formula{
	ID: "plank-load", Title: calc.Text("Planks on one brace"), Expr: "u*b*s",
	Result: calc.Var{Symbol: "P", Meaning: meansPlank, Unit: "N", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "u", Meaning: calc.Text("load on the planks"), Unit: "Pa", US: "psf"},
		{Symbol: "b", Meaning: calc.Text("width of the platform"), Unit: "m", US: "ft"},
		{Symbol: "s", Meaning: meansShare, Unit: "m", US: "ft"}},
	Fn: calc.Func3(PlankLoad), Go: "bracing.PlankLoad", Source: "osha-l",
}

// PlankReaction is the horizontal force that the loaded platform adds where the
// brace holds, H_P = P c / a, with the middle of the platform at c from the
// wall.
//
// Units: any coherent. Limits: the bracket hangs on the brace's upright.
// Source: moments about the base.
func PlankReaction(load, out, attach float64) float64 { return load * out / attach }

// PlankReactionFormula declares PlankReaction.
var PlankReactionFormula = &calc.Formula{
	ID: "plank-hold", Title: calc.Text("Level force from the planks"), Expr: "P*c/a",
	Result: calc.Var{Symbol: "H_P", Meaning: meansLevel, Unit: "N", US: "lbf"},
	Vars: []calc.Var{
		{Symbol: "P", Meaning: meansPlank, Unit: "N", US: "lbf"},
		{Symbol: "c", Meaning: calc.Text("middle of the planks from the wall"), Unit: "m", US: "ft"},
		{Symbol: "a", Meaning: meansAttach, Unit: "m", US: "ft"}},
	Fn: calc.Func3(PlankReaction), Go: "bracing.PlankReaction", Source: "statics",
}

// ClearZone is the distance from a wall to keep clear in the wind, Z = h + 4 ft.
//
// Units: ft. Limits: published for masonry walls. Source: NCMA TEK 3-4B,
// 29 CFR 1926.706.
func ClearZone(height float64) float64 { return height + 4 }

// ClearZoneFormula declares ClearZone.
var ClearZoneFormula = &calc.Formula{
	ID: "zone", Title: calc.Text("Fall zone"), Expr: "h + 4",
	Result: calc.Var{Symbol: "Z", Meaning: calc.Text("zone on each side of the wall"), Unit: "ft"},
	Vars:   []calc.Var{{Symbol: "h", Meaning: meansHigh, Unit: "ft"}},
	Fn:     calc.Func1(ClearZone), Go: "bracing.ClearZone", Source: "masonry",
}

// ForceWhole is the force coefficient of a whole wall by its length over its
// height, linear between the columns of the table and level beyond them.
//
// Units: none. Limits: solid wall on the ground. Source: ASCE 7, figure for
// solid freestanding walls, cases A and B, s/h = 1.
func ForceWhole(aspect float64) float64 { return between(wholeAspect, wholeForce, aspect) }

// ForceEnd is the force coefficient of the windward end of a wall, one height
// long. A wall shorter than two heights has no end zone.
//
// Units: none. Limits: no return corner. Source: ASCE 7, case C, s/h = 1.
func ForceEnd(aspect float64) float64 {
	if aspect < endAspect[0] {
		return ForceWhole(aspect)
	}
	return endShare * between(endAspect, endForce, aspect)
}

// between returns the value at x by linear interpolation in a table, at in rising
// order. Beyond an end it returns the value of that end.
func between(at, value []float64, x float64) float64 {
	if x <= at[0] {
		return value[0]
	}
	for i := 1; i < len(at); i++ {
		if x <= at[i] {
			share := (x - at[i-1]) / (at[i] - at[i-1])
			return value[i-1] + float64(share*(value[i]-value[i-1]))
		}
	}
	return value[len(value)-1]
}
