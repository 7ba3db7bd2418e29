package pressure

import "math"

// The limits of CIRIA Report 108. Beyond them the full fluid head counts.
const (
	CIRIAColdest = 5.0  // °C, coolest concrete of the method
	CIRIAWarmest = 30.0 // °C; more heat earns no credit
	CIRIAWall    = 1.0  // C_1 where a plan size is 2 m or more
	CIRIAColumn  = 1.5  // C_1 where both plan sizes are under 2 m
)

// CIRIATemperature is the temperature coefficient K of concrete at t °C:
// (36/(T + 16))². It is 1 at 20 °C; cooler concrete presses more. Not to be
// rounded before use. Source: CIRIA Report 108.
func CIRIATemperature(t float64) float64 {
	k := 36 / (t + 16)
	return k * k
}

// CIRIAPressure is the greatest pressure in kPa on a form that is high m
// high, with concrete of d kN/m³ that rises at r m/h:
// D·(C_1·√R + C_2·K·√(H − C_1·√R)). It is no number where C_1·√R exceeds H:
// there the full fluid head counts. Source: CIRIA Report 108.
func CIRIAPressure(d, c1, c2, k, high, r float64) float64 {
	fresh := float64(c1 * math.Sqrt(r))
	return d * (fresh + float64(c2*k*math.Sqrt(high-fresh)))
}

// CIRIAMix is the coefficient C_2 of a binder. A group it does not know
// counts as the worst. Source: CIRIA Report 108, concrete groups.
func CIRIAMix(c Cement, retarded bool) float64 {
	switch c {
	case Plain:
		return pick(retarded, 0.45, 0.30)
	case Blend:
		return pick(retarded, 0.60, 0.45)
	}
	return 0.60
}

// Capped keeps a pressure at or below the full fluid head.
func Capped(pressure, head float64) float64 { return math.Min(pressure, head) }
