package strength

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansMean   = calc.Text("mean temperature of the interval")
	meansHours  = calc.Text("length of the interval")
	meansDatum  = calc.Text("datum temperature")
	meansFactor = calc.Text("temperature-time factor")
	meansS      = calc.Text("strength")
	meansQ      = calc.Text("activation energy over gas constant, K")
	sameMix     = calc.Text("For the one mix of the curve, up to the largest factor tested.")
)

// GasConstant is the molar gas constant, J/(mol·K): 8.314462618 (CODATA 2018,
// exact by the definitions of the SI).
const GasConstant = 8.314462618

// TimeFactor is the increment of the temperature-time factor for an interval, °C·h:
//
//	ΔM = max(T_a − T_0, 0)·Δt
//
// with the mean temperature of the interval and the datum temperature in °C
// and the length of the interval in h. Below the datum nothing is added.
// Source: Nurse and Saul, as in ASTM C1074 and the highway manuals.
func TimeFactor(mean, datum, hours float64) float64 {
	return math.Max(mean-datum, 0) * hours
}

// TimeFactorFormula declares TimeFactor.
var TimeFactorFormula = &calc.Formula{
	ID: "factor", Title: calc.Text("Temperature-time factor"),
	Expr:   "max(T_a - T_0, 0)*t",
	Result: calc.Var{Symbol: "M", Meaning: meansFactor, Unit: "C°·h", US: "F°·h"},
	Vars: []calc.Var{
		{Symbol: "T_a", Meaning: meansMean, Unit: "°C", US: "°F"},
		{Symbol: "T_0", Meaning: meansDatum, Unit: "°C", US: "°F"},
		{Symbol: "t", Meaning: meansHours, Unit: "h", US: "h"},
	},
	Fn: calc.Func3(TimeFactor), Go: "strength.TimeFactor", Source: "iowa",
	Limits: calc.Text("Summed over all intervals. Best between 0 and 40 °C (32 and 104 °F)."),
}

// ActivationRatio is the activation energy divided by the gas constant, K:
//
//	Q = 1000·E/8.314462618
//
// with E in kJ/mol. Source: ASTM C1074, from memory.
func ActivationRatio(energy float64) float64 { return 1000 * energy / GasConstant }

// ActivationRatioFormula declares ActivationRatio.
var ActivationRatioFormula = &calc.Formula{
	ID: "ratio", Title: calc.Text("Activation energy as a temperature"),
	Expr:   "1000*E/8.314462618",
	Result: calc.Var{Symbol: "Q", Meaning: meansQ},
	Vars:   []calc.Var{{Symbol: "E", Meaning: calc.Text("activation energy, kJ/mol")}},
	Fn:     calc.Func1(ActivationRatio), Go: "strength.ActivationRatio", Source: "c1074",
}

// EquivalentAge is the increment of the equivalent age for an interval, h:
//
//	Δt_e = exp(−Q·(1/T − 1/T_s))·Δt
//
// with the mean temperature and the reference temperature in K and the length
// of the interval in h. Source: Freiesleben Hansen and Pedersen, as in ASTM
// C1074, from memory.
func EquivalentAge(ratio, mean, reference, hours float64) float64 {
	return math.Exp(-ratio*(1/mean-1/reference)) * hours
}

// EquivalentAgeFormula declares EquivalentAge.
var EquivalentAgeFormula = &calc.Formula{
	ID: "age", Title: calc.Text("Equivalent age"),
	Expr:   "exp(-Q*(1/T - 1/T_s))*t",
	Result: calc.Var{Symbol: "t_e", Meaning: calc.Text("equivalent age of the interval"), Unit: "h"},
	Vars: []calc.Var{{Symbol: "Q", Meaning: meansQ}, {Symbol: "T", Meaning: meansMean, Unit: "K"},
		{
			Symbol:  "T_s",
			Meaning: calc.Text("reference temperature"),
			Unit:    "K",
		}, {Symbol: "t", Meaning: meansHours, Unit: "h"}},
	Fn: calc.Func4(EquivalentAge), Go: "strength.EquivalentAge", Source: "c1074",
	Limits: calc.Text("Summed over all intervals. Temperatures in kelvin: °C + 273.15."),
}

// EurocodeAge is the increment of the temperature-adjusted age for an interval, h:
//
//	Δt_T = exp(13.65 − 4000/(273 + T))·Δt
//
// with the mean temperature in °C, 0 to 80 °C, and the reference at 20 °C.
// Source: EN 1992-1-1:2004, eq. (B.10).
func EurocodeAge(mean, hours float64) float64 {
	return math.Exp(13.65-4000/(273+mean)) * hours
}

// EurocodeAgeFormula declares EurocodeAge.
var EurocodeAgeFormula = &calc.Formula{
	ID: "age-ec", Title: calc.Text("Age by Eurocode 2"),
	Expr:   "exp(13.65 - 4000/(273 + T))*t",
	Result: calc.Var{Symbol: "t_T", Meaning: calc.Text("age of the interval at 20 °C"), Unit: "h"},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansMean, Unit: "°C"}, {Symbol: "t", Meaning: meansHours, Unit: "h"}},
	Fn:     calc.Func2(EurocodeAge), Go: "strength.EurocodeAge", Source: "ec2",
	Limits: calc.Text("Summed over all intervals, between 0 and 80 °C (32 and 176 °F)."),
}

// LogStrength is the strength by a logarithmic calibration curve:
//
//	S = a + b·log10(M)
//
// with M in °C·h; a and b in the unit of the strength. It holds only for the
// mix and the range of M of the calibration.
// Source: ASTM C1074 and highway manuals.
func LogStrength(a, b, factor float64) float64 {
	return a + float64(b*math.Log(factor)/math.Log(10))
}

// LogStrengthFormula declares LogStrength.
var LogStrengthFormula = &calc.Formula{
	ID: "log", Title: calc.Text("Strength, logarithmic curve"),
	Expr:   "a + b*ln(M)/ln(10)",
	Result: calc.Var{Symbol: "S", Meaning: meansS, Unit: "MPa", US: "psi"},
	Vars: []calc.Var{{Symbol: "a", Meaning: calc.Text("strength at a factor of 1 °C·h"), Unit: "MPa", US: "psi"},
		{Symbol: "b", Meaning: calc.Text("gain for each tenfold factor"), Unit: "MPa", US: "psi"},
		{Symbol: "M", Meaning: meansFactor, Unit: "C°·h"}},
	Fn: calc.Func3(LogStrength), Go: "strength.LogStrength", Source: "c1074", Limits: sameMix,
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

// HyperbolicStrengthFormula declares HyperbolicStrength.
var HyperbolicStrengthFormula = &calc.Formula{
	ID: "hyperbolic", Title: calc.Text("Strength, hyperbolic curve"),
	Expr:   "S_u*k*(M - M_0)/(1 + k*(M - M_0))",
	Result: calc.Var{Symbol: "S", Meaning: meansS, Unit: "MPa", US: "psi"},
	Vars: []calc.Var{{Symbol: "S_u", Meaning: calc.Text("limiting strength"), Unit: "MPa", US: "psi"},
		{Symbol: "k", Meaning: calc.Text("rate, per °C·h")}, {Symbol: "M", Meaning: meansFactor, Unit: "C°·h"},
		{Symbol: "M_0", Meaning: calc.Text("factor where the gain starts"), Unit: "C°·h"}},
	Fn: calc.Func4(HyperbolicStrength), Go: "strength.HyperbolicStrength", Source: "c1074", Limits: sameMix,
}
