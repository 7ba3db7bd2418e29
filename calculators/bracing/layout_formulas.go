package bracing

import (
	"math"

	"coursebook/calculators/calc"
)

// FillBraces is how many braces stand between two fixed ones so that no gap
// is over the largest spacing, n = ceil(g / s) − 1, at least 0.
//
// Units: any length, the same for both; a count. Limits: s > 0. Source:
// arithmetic; the spacing itself is the form maker's or the engineer's.
func FillBraces(gap, spacing float64) float64 {
	return math.Max(math.Ceil(gap/spacing-calc.Slack)-1, 0)
}

// EvenGap is the gap when n braces are spread evenly, e = g / (n + 1).
//
// Units: any length. Limits: n ≥ 0. Source: arithmetic.
func EvenGap(gap, between float64) float64 { return gap / (between + 1) }

// PlankCount is the planks of a platform along a wall,
// N = w ceil((L − k) / (p − k)): w side by side, each of length p and lapping
// the next by k.
//
// Units: any length, the same for all; a count. Limits: p > k; at least one
// plank in each line. Source: arithmetic; the lap is 29 CFR 1926.451(b)(7).
func PlankCount(side, length, plank, lap float64) float64 {
	return side * math.Max(math.Ceil((length-lap)/(plank-lap)-calc.Slack), 1)
}

// RailLength is the guardrail of a platform: the open side and both ends,
// R = L + 2 b.
//
// Units: any length. Limits: the wall closes the fourth side. Source:
// arithmetic; that the open sides and ends are railed is 29 CFR 1926.451(g).
func RailLength(length, width float64) float64 { return length + float64(2*width) }
