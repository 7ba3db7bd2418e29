// Package ties says what fresh concrete does to the small parts that hold a
// wall form together and open: ties, block-outs and window frames.
package ties

import (
	"math"

	"coursebook/calculators/calc"
)

// TieArea is the face that one tie holds: s_h·s_v, and its share of the n
// missing ties that m whole ones round them must carry: times (1 + n/m). With
// two to share, this is the even split along a row. Source: tributary area.
func TieArea(sh, sv, missing, sharing float64) float64 {
	return sh * sv * (1 + missing/sharing)
}

// TieForce is the load on a tie: pressure times the face it holds.
func TieForce(p, area float64) float64 { return p * area }

// WorkingLoad is what a tie may carry: breaking strength over a factor.
func WorkingLoad(strength, factor float64) float64 { return strength / factor }

// TieSpacing turns TieForce round: the widest spacing along the wall at which
// a tie carries no more than its working load.
func TieSpacing(working, p, sv, missing, sharing float64) float64 {
	return working / (p * sv * (1 + missing/sharing))
}

// FaceHeight is the depth of fluid concrete that brings a face to its
// capacity: q/w.
func FaceHeight(capacity, w float64) float64 { return capacity / w }

// Submerged is the volume of a box of length l, width b and height h that
// stands in concrete to the level a above its underside.
func Submerged(l, b, h, a float64) float64 { return l * b * math.Min(a, h) }

// Uplift is what lifts a body in fluid concrete: the weight of the concrete
// it takes the place of, less its own. It is negative for a body that sinks.
// Source: Archimedes.
func Uplift(w, volume, own float64) float64 { return float64(w*volume) - own }

// SidePush is the force on one side of a box of width b and height h, in
// fluid concrete to the level a above its underside: w·b·m·(a − m/2), with m
// the wetted height. Below the top it is w·b·a²/2.
func SidePush(w, b, h, a float64) float64 {
	wet := math.Min(a, h)
	return w * b * wet * (a - wet/2)
}

// StrapShare is how many straps a force needs, not yet rounded up.
func StrapShare(factor, force, rating float64) float64 { return factor * force / rating }

// Head is the pressure at a depth of fluid concrete: w·d.
func Head(w, d float64) float64 { return w * d }

// Lower is the lower of two pressures.
func Lower(p, most float64) float64 { return math.Min(p, most) }

// LineLoad is the load on a run of board: pressure times the width it acts on.
func LineLoad(p, width float64) float64 { return p * width }

// BendSpan is the span in inches at which a board b in. wide and d in. thick,
// laid flat, reaches the bending stress f psi under q lbf/ft:
// √(2·n·F·b·d²/q). The moment is q·L²/n. Source: beam theory; with n = 10 it
// is the span equation L = 10.95·√(F·S/w) of form design.
func BendSpan(n, f, b, d, q float64) float64 { return math.Sqrt(2 * n * f * b * d * d / q) }

// SagSpan is the span in inches at which a board b in. wide and d in. thick,
// of modulus e psi, bends by one part in r of its span under q lbf/ft:
// ∛(m·E·b·d³/(q·r)). The deflection is q·L⁴/(m·E·I). Source: beam theory;
// with m = 145 and r = 360 it is L = 1.69·∛(E·I/w) of form design.
func SagSpan(m, e, b, d, q, r float64) float64 {
	return math.Pow(m*e*b*math.Pow(d, 3)/(q*r), 1.0/3)
}

// SupportSpan is the spacing at which a support carries its rating: s/(k·q).
// k is 1 for boards cut at each support and 1.25 for one that runs through.
func SupportSpan(rating, k, q float64) float64 { return rating / (k * q) }

// upTo is the least whole number that is not below x.
func upTo(x float64) float64 { return math.Max(0, math.Ceil(x-calc.Slack)) }
