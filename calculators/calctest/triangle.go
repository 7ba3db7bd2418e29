package calctest

import "math"

// Triangle is the full geometry of a braced wall, by coordinates: the wall turns about its
// base at (0, 0) by an angle, and the brace runs from its foot to a point on
// the wall. It does not use the small-movement
// formulas, so it is their reference. All in one unit of length.
type Triangle struct{ Run, Attach, Below float64 }

// Length is that of the brace when the wall leans away from it by an angle, in
// radians.
func (g Triangle) Length(lean float64) float64 {
	x, y := g.Attach*math.Sin(lean), g.Attach*math.Cos(lean)
	return math.Hypot(x+g.Run, y+g.Below)
}

// Lean is the angle that belongs to a length, by bisection: the length grows
// with the angle.
func (g Triangle) Lean(length float64) float64 {
	low, high := -0.2, 0.2
	for range 80 {
		if mid := (low + high) / 2; g.Length(mid) < length {
			low = mid
		} else {
			high = mid
		}
	}
	return (low + high) / 2
}
