// Package consolidation plans the vibrating of a wall: the places and the time
// it takes to keep up with the pump, the packs that run the tools, and what
// is and is not known about shaking a form from outside.
package consolidation

import (
	"math"

	"coursebook/calculators/calc"
)

// overlap is the share of the radius of action by which two places lie apart:
// their fields overlap by a quarter of their width.
// Source: ACI 309R, from memory.
const overlap = 1.5

// countUp rounds a count up.
func countUp(x float64) float64 { return math.Ceil(x * (1 - calc.Slack)) }

// Spacing is how far apart the head goes in: s = 1.5 R. Any unit of length.
// Source: ACI 309R, from memory.
func Spacing(radius float64) float64 { return overlap * radius }

// Reach is how far the fields of two neighbours reach to each side, half way
// between them: √(R² − (s/2)²). Any unit of length. s is below 2 R.
// Source: geometry of two circles.
func Reach(radius, spacing float64) float64 {
	return math.Sqrt(math.Pow(radius, 2) - math.Pow(spacing/2, 2))
}

// Along is the number of places along a wall: ⌈L/s⌉, the first half a spacing
// from the end. Any unit of length. Source: arithmetic.
func Along(length, spacing float64) float64 { return countUp(length / spacing) }

// Places is the number of places of one pass: n + N(2 + k), one more at each
// side of each of N openings and k more at its sill.
// Source: common practice, after ACI 309R and 304R, from memory.
func Places(along, openings, sill float64) float64 {
	return along + float64(openings*(2+sill))
}

// Each is the time for one place: at rest in the concrete, out through lift
// and overlap at a speed, on to the next: t + d/v + m.
// Source: US Army EN5466 for the time at rest; arithmetic.
func Each(rest, depth, speed, move float64) float64 { return rest + depth/speed + move }

// Pass is the time one vibrator takes for all places: N t. In minutes, with
// the time for one place in seconds.
func Pass(places, each float64) float64 { return places * each / 60 }

// Fill is the time the pump takes for a lift: L b h/Q. Coherent units.
func Fill(length, core, lift, flow float64) float64 { return length * core * lift / flow }

// KeepUp is the number of vibrators that finish a pass while the pump fills
// the next lift: ⌈T/t⌉. Any unit of time.
func KeepUp(pass, fill float64) float64 { return countUp(pass / fill) }

// ByRate is the number of vibrators for a pump rate by the published rate of
// one: ⌈Q/q⌉. Any unit of flow. Source: CCANZ table 1, column of rates.
func ByRate(flow, rate float64) float64 { return countUp(flow / rate) }

// Unreached is the foot of the wall that the head does not come down to:
// max(0, H + a − w) for a wall of height H, a whip of length w and a length a
// of it that stays above the form. Any unit of length.
func Unreached(height, above, whip float64) float64 { return math.Max(0, height+above-whip) }
