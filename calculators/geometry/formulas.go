// Package geometry computes volumes of concrete walls and what to order for
// them. Formulas take and give SI units unless a named type says otherwise.
package geometry

import "math"

// CubicFeet and CubicYards are the units of the published US take-offs.
type (
	CubicFeet  float64
	CubicYards float64
)

// Prism is the volume of count equal boxes, V = n w h d: a straight wall, an
// opening through a wall or a block-out in one.
//
// Units: m, m³ (any coherent set). Limits: none; exact for square-cut boxes.
// Source: NAVEDTRA 14070, take-off of figure 5-2.
func Prism(count, width, height, depth float64) float64 {
	return count * width * height * depth
}

// CentreLine is the length along the middle of a wall whose length was taken
// along a face, L_c = L − c t.
//
// At a right-angled corner the line through the middle is shorter than the
// line along the outer face by half a thickness on each leg, so by t. c
// counts outside corners less inside corners for lengths on the outside face,
// the negative of that on the inside face, and is 0 on the centre line. In a
// closed plan with right angles only, outside corners exceed inside corners
// by four, hence the trade's rule "outside less four thicknesses".
//
// Units: m. Limits: right angles only. Source: derived; reproduces the sum of
// NAVEDTRA 14070, figure 5-2.
func CentreLine(length, corners, thickness float64) float64 {
	return length - float64(corners*thickness)
}

// WallsVolume is the volume of straight walls before deductions,
// V = t (A − c t h_c), with A the sum of length × height along the measured
// line and c as in CentreLine.
//
// With one height throughout it equals t × h × CentreLine and is exact. Where
// heights differ, h_c stands for the heights at the corners, which are not
// asked for.
//
// Units: m, m², m³. Limits: right angles only. Source: derived.
func WallsVolume(thickness, area, corners, cornerHeight float64) float64 {
	return thickness * (area - float64(corners*thickness*cornerHeight))
}

// ChordRadius is the radius of an arc from its chord and its rise over the
// chord, R = (c²/4 + s²) / (2 s).
//
// Units: m. Limits: s > 0. Source: chord and rise relation of the handbooks.
func ChordRadius(chord, rise float64) float64 {
	return (float64(chord*chord)/4 + float64(rise*rise)) / (2 * rise)
}

// ChordAngle is the angle an arc turns through, θ = 4 atan(2 s / c), which
// also holds beyond the half circle.
//
// Units: m, degrees. Limits: c > 0. Source: half-angle form of ChordRadius.
func ChordAngle(chord, rise float64) float64 {
	return 4 * math.Atan(2*rise/chord) * 180 / math.Pi
}

// CentreRadius is the radius of the middle of a curved wall from that of its
// outside face, R_c = R − t/2.
//
// Units: m. Limits: R > t. Source: geometry.
func CentreRadius(radius, thickness float64) float64 {
	return radius - thickness/2
}

// ArcLength is the length of an arc, b = π θ R / 180.
//
// Units: degrees, m. Limits: 0 to 360°. Source: geometry.
func ArcLength(degrees, radius float64) float64 {
	return math.Pi * degrees / 180 * radius
}

// ArcVolume is the volume of a curved wall, V = b t h, with b along the
// middle of the core. By Pappus' theorem this is exact, not approximate.
//
// Units: m, m³. Limits: inside radius above 0. Source: geometry.
func ArcVolume(length, thickness, height float64) float64 {
	return length * thickness * height
}

// NetVolume is what is left of the walls without their holes, V = V_g − V_h.
//
// Units: m³. Limits: V_h < V_g. Source: Le Jeune, foundation walls.
func NetVolume(walls, holes float64) float64 { return walls - holes }

// WithWaste adds an allowance in percent, V_w = V (1 + w/100).
//
// Units: m³ and %. Limits: w ≥ 0. Source: NAVEDTRA 14070, figure 5-2.
func WithWaste(volume, percent float64) float64 {
	return volume * (1 + percent/100)
}

// InCubicYards divides by the 27 ft³ of a cubic yard.
//
// Limits: none, exact. Source: NIST SP 811, table of units.
func InCubicYards(v CubicFeet) CubicYards { return CubicYards(v / 27) }

// stepSlack keeps the noise of binary arithmetic from buying a whole further
// step when the volume is a whole number of steps already.
const stepSlack = 1e-9

// RoundUp is the order: the smallest whole number of steps that holds the
// volume, V_o = ⌈V / s⌉ s.
//
// Units: any, the same for both. Limits: s > 0. Source: rounding down runs
// short, as the printed 21 yd³ of NAVEDTRA 14070 does.
func RoundUp(volume, step float64) float64 {
	return math.Ceil(volume/step-stepSlack) * step
}

// Loads is the number of trucks an order fills, N = ⌈V_o / T⌉.
//
// Units: any, the same for both. Limits: T > 0. Source: ready-mix producer's
// guide "Calculating truck requirements".
func Loads(order, truck float64) float64 {
	return math.Ceil(order/truck - stepSlack)
}

// LastLoad is what is left for the last truck, V_l = V_o − (N − 1) T.
//
// Units: any, the same throughout. Limits: N = Loads. Source: arithmetic.
func LastLoad(order, loads, truck float64) float64 {
	return order - float64((loads-1)*truck)
}

// Extra is what an order holds over the net volume, in percent of the net
// volume, p = 100 (V_o − V) / V.
//
// Units: m³, %. Limits: V > 0. Source: Concrete Construction, "Yield problems
// and waste allowance".
func Extra(order, net float64) float64 {
	return 100 * (order - net) / net
}
