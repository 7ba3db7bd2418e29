package strength

import "math"

// Share209 is the share of the 28-day strength by ACI 209:
//
//	f(t)/f28 = t/(a + b·t)
//
// with the age t in days, 1 day and more, and the constants a in days and b
// by cement and curing. With a = 4.0 and b = 0.85 it gives 1.007 at 28 days.
// Source: ACI 209R-92, eq. (2-1).
func Share209(age, a, b float64) float64 { return age / (a + float64(b*age)) }

// Age209 turns Share209 round: the age in days for a share,
//
//	t = a·p/(1 − b·p)
//
// for shares below 1/b, which the curve never reaches.
// Source: ACI 209R-92, eq. (2-1), solved for the age.
func Age209(share, a, b float64) float64 { return a * share / (1 - float64(b*share)) }

// ShareEC is the share of the 28-day mean strength by Eurocode 2:
//
//	β_cc = exp(s·(1 − √(28/t)))
//
// with the age t in days, at a mean of 20 °C, and s by cement class.
// Source: EN 1992-1-1:2004, eq. (3.2).
func ShareEC(s, age float64) float64 { return math.Exp(s * (1 - math.Sqrt(28/age))) }

// AgeEC turns ShareEC round: the age in days for a share,
//
//	t = 28/(1 − ln(p)/s)²
//
// for shares below e^s, which the curve never reaches.
// Source: EN 1992-1-1:2004, eq. (3.2), solved for the age.
func AgeEC(share, s float64) float64 { return 28 / math.Pow(1-math.Log(share)/s, 2) }

// Strength is a share of the 28-day strength, in its unit: f(t) = p·f28.
// Source: either standard.
func Strength(share, f28 float64) float64 { return share * f28 }

// constants209 are a in days and b of Share209.
type constants209 struct {
	id   string
	a, b float64
}

// gain209 are the constants of ACI 209R-92, table 2.2.1.
var gain209 = [...]constants209{
	{"moist-1", 4.0, 0.85}, {"moist-3", 2.3, 0.92}, {"steam-1", 1.0, 0.95}, {"steam-3", 0.70, 0.98},
}

// classEC is s of ShareEC.
type classEC struct {
	id string
	s  float64
}

// gainEC are the cement classes of EN 1992-1-1, 3.1.2(6).
var gainEC = [...]classEC{{"r", 0.20}, {"n", 0.25}, {"s", 0.38}}
