package calctest

import "math"

// Triangle is the exact geometry of a braced wall, by coordinates. The wall turns
// about its base at (0, 0) by an angle, and the brace runs from its foot to a
// point on the wall. It is the reference for the formulas for small movements.
// All lengths are in one unit.
type Triangle struct{ Run, Attach, Below float64 }

// Length is the length of the brace if the wall is off plumb by an angle in
// radians, away from the brace.
func (g Triangle) Length(lean float64) float64 {
	x, y := g.Attach*math.Sin(lean), g.Attach*math.Cos(lean)
	return math.Hypot(x+g.Run, y+g.Below)
}

// OffPlumb returns the angle in radians, −0.2 to 0.2, at which the brace has a
// length: the inverse of Length, by bisection, since the length grows with the
// angle. A length beyond that range gives its nearer end.
func (g Triangle) OffPlumb(length float64) float64 {
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
