package bracing

import "math"

// DesignWind is the basic wind lowered for the time the wall stands braced,
// V = f V_b.
//
// Units: any speed. Limits: not for hurricane country in its season. Source:
// ASCE 37: 0.75 up to 6 weeks, 0.8 to 1 year, 0.85 to 2 years, 0.9 to 5.
func DesignWind(factor, basic float64) float64 { return factor * basic }

// HeightFactor is the velocity pressure exposure coefficient,
// K_z = 2.01 (max(z, 15) / z_g)^(2/α).
//
// Units: ft. Limits: z up to z_g. Source: ASCE 7-05 to 7-16; α and z_g are 7
// and 1200 for exposure B, 9.5 and 900 for C, 11.5 and 700 for D.
func HeightFactor(height, gradient, alpha float64) float64 {
	return 2.01 * math.Pow(math.Max(height, 15)/gradient, 2/alpha)
}

// GroundFactor tells the thinner air of high ground, K_e = exp(−0.0000362 z_e).
//
// Units: ft above sea level. Limits: none; 1 is on the safe side above sea
// level. Source: ASCE 7-16, table 26.9-1.
func GroundFactor(elevation float64) float64 { return math.Exp(-0.0000362 * elevation) }

// VelocityPressure is q_z = 0.00256 K_z K_zt K_d K_e V². In Pa and m/s the
// constant is printed as 0.613; both are half the density of air, and differ
// by 0.06 %.
//
// Units: psf, mph. Limits: V is the 3-second gust at 33 ft. Source: ASCE 7.
func VelocityPressure(height, hill, direction, ground, wind float64) float64 {
	return 0.00256 * height * hill * direction * ground * wind * wind
}

// PlainPressure is the velocity pressure of a wind read at the wall,
// q = 0.00256 V².
//
// Units: psf, mph. Limits: as VelocityPressure with all factors 1. Source: as
// that.
func PlainPressure(wind float64) float64 { return 0.00256 * wind * wind }

// WallPressure is the net wind pressure on both faces of a wall,
// p = γ q_z G C_f, with the gust factor G and the force coefficient C_f.
//
// Units: any pressure. Limits: rigid wall. Source: ASCE 7, solid freestanding
// walls; γ is 1, or 0.6 for allowable loads with the wind maps since 2010.
func WallPressure(factor, velocity, gust, force float64) float64 {
	return factor * velocity * gust * force
}

// WindLine is the wind force on a length of wall, w = p h.
//
// Units: any coherent. Limits: wall on the ground. Source: definition.
func WindLine(pressure, height float64) float64 { return pressure * height }

// WindMoment is the moment of the wind about the base of the wall for each
// length of it, M = 0.55 w h: the wind acts 5 % of the height above the middle.
//
// Units: any coherent; a moment for a length is a force. Limits: wall on the
// ground. Source: ASCE 7, figure for solid freestanding walls, note 3.
func WindMoment(line, height float64) float64 { return 0.55 * line * height }

// LeastMoment is what wall forms are braced for at least,
// M = max(15 h² / 2, 100 h): 15 psf of wind, or 100 lb on each foot at the top.
//
// Units: lbf for each foot times ft, ft. Limits: wall forms. Source: ACI 347.
func LeastMoment(height float64) float64 {
	return math.Max(float64(15*height*height)/2, 100*height)
}

// BraceHold is the level force in one brace, H = M s / a: the moment of its
// share of the wall over the height where it holds.
//
// Units: any coherent. Limits: the base of the wall stays put and gives no
// moment. Source: moments about the base; US Army and textbook brace design.
func BraceHold(moment, share, attach float64) float64 { return moment * share / attach }

// BraceForce is the force along the brace, F = H L / d.
//
// Units: any coherent. Limits: d > 0. Source: triangle of wall, ground and
// brace.
func BraceForce(level, length, run float64) float64 { return level * length / run }

// AnchorUplift is the upright force at the foot, U = H (a + f) / d.
//
// Units: any coherent. Limits: d > 0. Source: as BraceForce.
func AnchorUplift(level, attach, below, run float64) float64 {
	return level * (attach + below) / run
}

// PlankLoad is the load of a platform on one brace, P = u b s.
//
// Units: any coherent. Limits: uniform load. Source: 29 CFR 1926 Subpart L.
func PlankLoad(uniform, width, share float64) float64 { return uniform * width * share }

// PlankHold is the level force that the loaded platform adds where the brace
// holds, H_P = P c / a, with its middle at c from the wall.
//
// Units: any coherent. Limits: the bracket hangs on the brace's upright.
// Source: moments about the base.
func PlankHold(load, out, attach float64) float64 { return load * out / attach }

// ClearZone is how far from a wall nobody stays in the wind, Z = h + 4 ft.
//
// Units: ft. Limits: published for masonry walls. Source: NCMA TEK 3-4B,
// 29 CFR 1926.706.
func ClearZone(height float64) float64 { return height + 4 }

// Aspects and coefficients of solid walls that stand on the ground: of the
// whole wall, and of its windward end over one height, the latter already
// times 0.8 for a wall without a gap below.
var (
	wholeAspect = []float64{0.05, 0.1, 0.2, 0.5, 1, 2, 4, 5, 10}
	wholeForce  = []float64{1.80, 1.70, 1.65, 1.55, 1.45, 1.40, 1.35, 1.35, 1.30}
	endAspect   = []float64{2, 3, 4, 5, 6, 7, 8, 9, 10, 13, 45}
	endForce    = []float64{2.25, 2.60, 2.90, 3.10, 3.30, 3.40, 3.55, 3.65, 3.75, 4.00, 4.30}
)

// endShare is 1.8 − s/h for a wall without a gap below it, s = h.
const endShare = 0.8

// ForceWhole is the force coefficient of a whole wall by its length over its
// height, linear between the columns of the table and level beyond them.
//
// Units: none. Limits: solid wall on the ground. Source: ASCE 7, figure for
// solid freestanding walls, cases A and B, s/h = 1.
func ForceWhole(aspect float64) float64 { return between(wholeAspect, wholeForce, aspect) }

// ForceEnd is the force coefficient of the windward end of a wall, one height
// long. A wall shorter than two heights has no end of its own.
//
// Units: none. Limits: no return corner. Source: ASCE 7, case C, s/h = 1.
func ForceEnd(aspect float64) float64 {
	if aspect < endAspect[0] {
		return ForceWhole(aspect)
	}
	return endShare * between(endAspect, endForce, aspect)
}

// between reads a table with straight lines between its places.
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
