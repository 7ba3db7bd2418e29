package strength

import "coursebook/calculators/calc"

const (
	meansMean   = calc.Text("mean temperature of the interval")
	meansHours  = calc.Text("length of the interval")
	meansDatum  = calc.Text("datum temperature")
	meansFactor = calc.Text("temperature-time factor")
	meansS      = calc.Text("strength")
	meansQ      = calc.Text("activation energy over gas constant, K")
	sameMix     = calc.Text("For the one mix of the curve, up to the largest factor tested.")
)

var timeFactor = &calc.Formula{
	ID: "factor", Title: calc.Text("Temperature-time factor"),
	Expr:   "max(T_a - T_0, 0)*t",
	Result: calc.Var{Symbol: "M", Meaning: meansFactor, Unit: "C°·h", US: "F°·h"},
	Vars: []calc.Var{{Symbol: "T_a", Meaning: meansMean, Unit: "°C", US: "°F"}, {Symbol: "T_0", Meaning: meansDatum, Unit: "°C", US: "°F"},
		{Symbol: "t", Meaning: meansHours, Unit: "h", US: "h"}},
	Fn: calc.Func3(TimeFactor), Go: "strength.TimeFactor", Source: "iowa",
	Limits: calc.Text("Summed over all intervals. Best between 0 and 40 °C (32 and 104 °F)."),
}

var activationRatio = &calc.Formula{
	ID: "ratio", Title: calc.Text("Activation energy as a temperature"),
	Expr:   "1000*E/8.314462618",
	Result: calc.Var{Symbol: "Q", Meaning: meansQ},
	Vars:   []calc.Var{{Symbol: "E", Meaning: calc.Text("activation energy, kJ/mol")}},
	Fn:     calc.Func1(ActivationRatio), Go: "strength.ActivationRatio", Source: "c1074",
}

var equivalentAge = &calc.Formula{
	ID: "age", Title: calc.Text("Equivalent age"),
	Expr:   "exp(-Q*(1/T - 1/T_s))*t",
	Result: calc.Var{Symbol: "t_e", Meaning: calc.Text("equivalent age of the interval"), Unit: "h"},
	Vars: []calc.Var{{Symbol: "Q", Meaning: meansQ}, {Symbol: "T", Meaning: meansMean, Unit: "K"},
		{Symbol: "T_s", Meaning: calc.Text("reference temperature"), Unit: "K"}, {Symbol: "t", Meaning: meansHours, Unit: "h"}},
	Fn: calc.Func4(EquivalentAge), Go: "strength.EquivalentAge", Source: "c1074",
	Limits: calc.Text("Summed over all intervals. Temperatures in kelvin: °C + 273.15."),
}

var eurocodeAge = &calc.Formula{
	ID: "age-ec", Title: calc.Text("Age by Eurocode 2"),
	Expr:   "exp(13.65 - 4000/(273 + T))*t",
	Result: calc.Var{Symbol: "t_T", Meaning: calc.Text("age of the interval at 20 °C"), Unit: "h"},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansMean, Unit: "°C"}, {Symbol: "t", Meaning: meansHours, Unit: "h"}},
	Fn:     calc.Func2(EurocodeAge), Go: "strength.EurocodeAge", Source: "ec2",
	Limits: calc.Text("Summed over all intervals, between 0 and 80 °C (32 and 176 °F)."),
}

var logStrength = &calc.Formula{
	ID: "log", Title: calc.Text("Strength, logarithmic curve"),
	Expr:   "a + b*ln(M)/ln(10)",
	Result: calc.Var{Symbol: "S", Meaning: meansS, Unit: "MPa", US: "psi"},
	Vars: []calc.Var{{Symbol: "a", Meaning: calc.Text("strength at a factor of 1 °C·h"), Unit: "MPa", US: "psi"},
		{Symbol: "b", Meaning: calc.Text("gain for each tenfold factor"), Unit: "MPa", US: "psi"},
		{Symbol: "M", Meaning: meansFactor, Unit: "C°·h"}},
	Fn: calc.Func3(LogStrength), Go: "strength.LogStrength", Source: "c1074", Limits: sameMix,
}

var hyperbolicStrength = &calc.Formula{
	ID: "hyperbolic", Title: calc.Text("Strength, hyperbolic curve"),
	Expr:   "S_u*k*(M - M_0)/(1 + k*(M - M_0))",
	Result: calc.Var{Symbol: "S", Meaning: meansS, Unit: "MPa", US: "psi"},
	Vars: []calc.Var{{Symbol: "S_u", Meaning: calc.Text("limiting strength"), Unit: "MPa", US: "psi"},
		{Symbol: "k", Meaning: calc.Text("rate, per °C·h")}, {Symbol: "M", Meaning: meansFactor, Unit: "C°·h"},
		{Symbol: "M_0", Meaning: calc.Text("factor where the gain starts"), Unit: "C°·h"}},
	Fn: calc.Func4(HyperbolicStrength), Go: "strength.HyperbolicStrength", Source: "c1074", Limits: sameMix,
}

var maturityFormulas = []*calc.Formula{timeFactor, activationRatio, equivalentAge, eurocodeAge, logStrength, hyperbolicStrength}
