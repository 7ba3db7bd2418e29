package bracing

import "math"

// EdgeLimit is how far an exposed corner column or joint groove may lean at
// height h, min(0.002 h, 1/2 in.).
//
// Units: inches. Limits: heights up to 83 ft 4 in. Source: ACI 117-10,
// section 4.1.2, from memory.
func EdgeLimit(height Inches) Inches { return Inches(math.Min(0.002*float64(height), 0.5)) }

// HomeLimit is how far a foundation wall may lean by a home-builder guideline,
// 1.5 in. in 8 ft, taken in proportion.
//
// Units: inches. Limits: foundation walls of houses. Source: NAHB guideline
// 2-13.
func HomeLimit(height Inches) Inches { return Inches(1.5 * float64(height) / 96) }

// SlopeLimit is how far a wall may lean between two places z apart,
// max(10, z/300): 10 mm within any 3 m, and as steep beyond.
//
// Units: mm. Limits: walls and other vertical surfaces. Source: UFGS 03700,
// after ACI 117-90; 3/8 in. in 10 ft in US units, from memory.
func SlopeLimit(apart float64) float64 { return math.Max(10, apart/300) }

// Lean is the lean between two readings, x = |e_2 − e_1|.
//
// Units: any length. Limits: both read from the same plumb line. Source:
// definition.
func Lean(lower, upper float64) float64 { return math.Abs(upper - lower) }

// OutOfStraight is how far a reading lies off the straight line between two
// others, s = |e − e_1 − (e_2 − e_1) (z − z_1) / (z_2 − z_1)|.
//
// Units: any length, the same for all. Limits: z_2 ≠ z_1. Source: straight
// line through two points.
func OutOfStraight(off, high, off1, high1, off2, high2 float64) float64 {
	line := off1 + float64((off2-off1)*(high-high1)/(high2-high1))
	return math.Abs(off - line)
}
