package strength

import "math"

// GasConstant is the molar gas constant, J/(mol·K): 8.314462618 (CODATA 2018,
// exact by the definitions of the SI).
const GasConstant = 8.314462618

// TimeFactor is what an interval adds to the temperature-time factor, °C·h:
//
//	ΔM = max(T_a − T_0, 0)·Δt
//
// with the mean temperature of the interval and the datum temperature in °C
// and the length of the interval in h. Below the datum nothing is added.
// Source: Nurse and Saul, as in ASTM C1074 and the highway manuals.
func TimeFactor(mean, datum, hours float64) float64 {
	return math.Max(mean-datum, 0) * hours
}

// ActivationRatio is the activation energy divided by the gas constant, K:
//
//	Q = 1000·E/8.314462618
//
// with E in kJ/mol. Source: ASTM C1074, from memory.
func ActivationRatio(energy float64) float64 { return 1000 * energy / GasConstant }

// EquivalentAge is what an interval adds to the equivalent age, h:
//
//	Δt_e = exp(−Q·(1/T − 1/T_s))·Δt
//
// with the mean temperature and the reference temperature in K and the length
// of the interval in h. Source: Freiesleben Hansen and Pedersen, as in ASTM
// C1074, from memory.
func EquivalentAge(ratio, mean, reference, hours float64) float64 {
	return math.Exp(-ratio*(1/mean-1/reference)) * hours
}

// EurocodeAge is what an interval adds to the age adjusted for temperature, h:
//
//	Δt_T = exp(13.65 − 4000/(273 + T))·Δt
//
// with the mean temperature in °C, 0 to 80 °C, and the reference at 20 °C.
// Source: EN 1992-1-1:2004, eq. (B.10).
func EurocodeAge(mean, hours float64) float64 {
	return math.Exp(13.65-4000/(273+mean)) * hours
}

// LogStrength is the strength by a logarithmic calibration curve:
//
//	S = a + b·log10(M)
//
// with M in °C·h; a and b in the unit of the strength. It holds only for the
// mix and the range of M that the curve was made for.
// Source: ASTM C1074 and highway manuals.
func LogStrength(a, b, factor float64) float64 {
	return a + float64(b*math.Log(factor)/math.Log(10))
}

// HyperbolicStrength is the strength by a hyperbolic calibration curve:
//
//	S = S_u·k·(M − M_0)/(1 + k·(M − M_0))
//
// with M and M_0 in °C·h and k per °C·h; S_u in the unit of the strength.
// Source: Carino, as in ASTM C1074, from memory.
func HyperbolicStrength(limit, k, factor, start float64) float64 {
	return limit * k * (factor - start) / (1 + float64(k*(factor-start)))
}
