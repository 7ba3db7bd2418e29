package bracing

import "math"

// Movement is how far a brace moved between two rounds, m = g_2 − g_1. Above
// zero the wall went away from the string.
//
// Units: any length. Limits: the same string on the same blocks. Source:
// definition.
func Movement(before, after float64) float64 { return after - before }

// LeftOver is the share of an error that is left after a round,
// q = |e_2| / |e_1|. Below 1 the round did good; near 2 the brace was turned
// the wrong way.
//
// Units: any length, the same for both; a pure number. Limits: e_1 not 0.
// Source: definition.
func LeftOver(before, after float64) float64 { return math.Abs(after) / math.Abs(before) }
