package steel

import "math"

// steelDensity is the density of reinforcing steel, kg/m³: 7850 (490 lb/ft³).
const steelDensity = 7850

// RoundArea is the area of a round bar, mm² from mm or in² from in:
//
//	A = π·d²/4
//
// Standards round it: a #4 bar is 0.20 in², not 0.196.
// Source: geometry; ASTM A615 gives nominal sizes of a plain round bar.
func RoundArea(d float64) float64 { return math.Pi * math.Pow(d, 2) / 4 }

// MassPerLength is the mass of a metre or a foot of steel:
//
//	w = ρ·A
//
// in kg/m from kg/m³ and m², or lb/ft from lb/ft³ and ft². With 490 lb/ft³
// it is 3.4 lb/ft for each square inch. Source: Concrete Construction, PCI.
func MassPerLength(density, area float64) float64 { return density * area }

// BarWeight is the weight of bars of one length, kg or lb:
//
//	W = w·L·n
//
// with the mass per length w, the length of one bar and their number.
// Source: arithmetic.
func BarWeight(mass, length, count float64) float64 { return mass * length * count }

// HookLength is the length from the outside of a standard 90° hook to the end
// of its tail:
//
//	A = 12·d + k·d/2 + d
//
// with the bar diameter d and the inside bend diameter k·d; k is 6 for #3 to
// #8, 8 for #9 to #11, 10 for #14 and #18. Source: PCI Design Handbook,
// 7th ed., p. 15-34; ACI 318.
func HookLength(d, k float64) float64 { return float64(12*d) + float64(k*d/2) + d }
