// Package bracing computes what keeps a wall form straight: the string line
// and the turns of the adjusters. Formulas take and give SI units unless a
// named type says otherwise.
package bracing

import "math"

// Inches is the unit of the published plumb tolerance.
type Inches float64

// Deviation is how far the wall is off the string, e = g − k: the gap read at
// a brace less the thickness of the end blocks. Above zero the wall stands
// too far from the string, below zero too near.
//
// Units: any, the same for both. Limits: the string runs free from block to
// block. Source: common practice.
func Deviation(gap, block float64) float64 { return gap - block }

// BraceLength is the length of a brace from its foot to the wall,
// L = √(d² + (a + f)²), with its foot at distance d from the wall and f below
// the wall's base, and its head at height a above the base.
//
// Units: m. Limits: none. Source: Pythagoras; right triangle of the US Army's
// brace design, EN5466.
func BraceLength(run, attach, below float64) float64 {
	return math.Sqrt(float64(run*run) + float64((attach+below)*(attach+below)))
}

// BraceAngle is the slope of a brace over the ground,
// θ = atan((a + f) / d).
//
// Units: m, degrees. Limits: d > 0. Source: as BraceLength.
func BraceAngle(run, attach, below float64) float64 {
	return math.Atan((attach+below)/run) * 180 / math.Pi
}

// AtBrace is how far the wall must move where the brace holds it so that it
// moves by e at the string, x = e a / h_s. The wall turns about its base, so
// movements grow with height.
//
// Units: m. Limits: the part of the wall at the brace stays straight and its
// base stays put. Source: derived.
func AtBrace(deviation, attach, stringHeight float64) float64 {
	return deviation * attach / stringHeight
}

// BraceChange is the change of a brace's length that moves the wall by x
// level with the ground, b = x d / L = x cos θ.
//
// Derivation: with the base of the wall as origin, the brace's head at height
// a swings to (x, √(a² − x²)); the foot stands at (−d, −f). Then
//
//	L(x)² = (d + x)² + (f + √(a² − x²))²
//	      = L² + 2 d x + 2 f (√(a² − x²) − a)
//
// and so dL/dx = d/L = cos θ at x = 0. The next term is at most about
// x²/(2 L) (1 + |f|/a): for a wall off by 1 in. on an 8 ft brace under 1/100
// in., far below a quarter turn. A longer brace pushes the wall away.
//
// Units: m. Limits: x small beside a and L. Source: derived.
func BraceChange(x, run, length float64) float64 { return x * run / length }

// TravelByThreads is the travel of one turn from the threads in an inch,
// p = m / N, with m the number of threaded ends: left and right threads of a
// turnbuckle both count.
//
// Units: inches, threads per inch. Limits: single-start threads. Source:
// definition of the thread, ASME B1.1 and B1.5.
func TravelByThreads(ends, perInch float64) Inches { return Inches(ends / perInch) }

// TravelByPitch is the travel of one turn from the pitch, p = m P.
//
// Units: any length. Limits: single-start threads. Source: as TravelByThreads.
func TravelByPitch(ends, pitch float64) float64 { return ends * pitch }

// Turns is the number of turns for a change of length, n = |b| / p. Which way
// to turn is told apart, in words.
//
// Units: any length, the same for both. Limits: p > 0. Source: definition.
func Turns(change, travel float64) float64 { return math.Abs(change) / travel }

// PerTurn is how far one turn moves the wall at the string,
// y = p (L / d) (h_s / a): AtBrace and BraceChange backwards.
//
// Units: m. Limits: as for those. Source: derived.
func PerTurn(travel, length, run, stringHeight, attach float64) float64 {
	return travel * length / run * stringHeight / attach
}

// PlumbLimit is how far a wall may lean at height h, min(0.003 h, 1 in.).
//
// Units: inches. Limits: heights up to 83 ft 4 in. Source: ACI 117-10,
// section 4.1.1. The 1990 edition allowed 1 in. at any height.
func PlumbLimit(height Inches) Inches { return Inches(math.Min(0.003*float64(height), 1)) }

// BowRadius is the radius of a shallow bow, R = L² / (8 s), with L from end
// to end and s the offset in the middle.
//
// Units: m. Limits: s far below L; exact is (L²/4 + s²) / (2 s). Source: chord
// and rise relation.
func BowRadius(length, offset float64) float64 { return length * length / (8 * offset) }
