package steel

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansFy   = calc.Text("yield strength of the bar")
	meansFc   = calc.Text("strength of the concrete")
	meansLd   = calc.Text("development length")
	meansCase = calc.Text("constant of bar size and of cover and spacing")
	meansLam  = calc.Text("1, or 0.75 for lightweight concrete")
)

// Development318 is the length that develops a bar in tension by the simple
// form of ACI 318, in:
//
//	l_d = f_y·ψ·ψ_g/(c·λ·min(√f'c, 100))·d
//
// in US units only: f_y and f'c in psi, d in in. ψ is ψ_t·ψ_e, at most 1.7;
// ψ_g goes with the grade; c is 25 for #6 and smaller and 20 for #7 and larger
// with the cover and spacing required, else 50/3 and 40/3. At least 12 in.
// Source: ACI 318-14, table 25.4.2.2 (ψ_g: 318-19, from memory).
func Development318(fy, psi, lambda, fc, c, grade, d float64) float64 {
	return fy * psi * grade / (c * lambda * math.Min(math.Sqrt(fc), 100)) * d
}

// Development318Formula declares Development318.
var Development318Formula = &calc.Formula{ID: "aci", Title: calc.Text("Development by ACI 318"),
	Expr:   "f_y*psi*psi_g/(c*lambda*min(sqrt(f'c), 100))*d",
	Result: calc.Var{Symbol: "l_d", Meaning: meansLd, Unit: "in"},
	Vars: []calc.Var{{Symbol: "f_y", Meaning: meansFy, Unit: "psi"},
		{Symbol: "psi", Meaning: calc.Text("1.3 for top bars times 1.2 or 1.5 for epoxy, at most 1.7")},
		{
			Symbol:  "lambda",
			Meaning: meansLam,
		}, {Symbol: "f'c", Meaning: meansFc, Unit: "psi"}, {Symbol: "c", Meaning: meansCase},
		{Symbol: "psi_g", Meaning: calc.Text("1; 1.15 above Grade 60; 1.3 above Grade 80")},
		{Symbol: "d", Meaning: meansD, Unit: "in"}},
	Fn: calc.FuncN(func(v []float64) float64 { return Development318(v[0], v[1], v[2], v[3], v[4], v[5], v[6]) }),
	Go: "steel.Development318", Source: "aci318",
	Limits: calc.Text(
		"Cover kept: clear cover of one bar, clear spacing of two, or one with ties. Then c is 25 to #6, 20 above; " +
			"else 16.67 and 13.33. At least 12 in (300 mm).",
	)}

// DevelopmentA23 is the same length by the simple form of CSA A23.3, mm:
//
//	l_d = c·k·k_4·f_y/min(√f'c, 8)·d
//
// in metric units only: f_y and f'c in MPa, d in mm. k is k_1·k_2·k_3; k_4 is
// 0.8 up to 20M and 1 above; c is 0.45 with the cover and spacing required, else
// 0.6. At least 300 mm. Source: CSA A23.3, 12.2.3 and table 12.1.
func DevelopmentA23(c, k, size, fy, fc, d float64) float64 {
	return c * k * size * fy / math.Min(math.Sqrt(fc), 8) * d
}

// DevelopmentA23Formula declares DevelopmentA23.
var DevelopmentA23Formula = &calc.Formula{ID: "csa", Title: calc.Text("Development by CSA A23.3"),
	Expr: "c*k*k_4*f_y/min(sqrt(f'c), 8)*d", Result: calc.Var{Symbol: "l_d", Meaning: meansLd, Unit: "mm"},
	Vars: []calc.Var{{Symbol: "c", Meaning: meansCase},
		{
			Symbol:  "k",
			Meaning: calc.Text("1.3 for top bars times 1.2 or 1.5 for epoxy, at most 1.7; times 1.3 if lightweight"),
		},
		{Symbol: "k_4", Meaning: calc.Text("0.8 up to 20M, else 1")}, {Symbol: "f_y", Meaning: meansFy, Unit: "MPa"},
		{Symbol: "f'c", Meaning: meansFc, Unit: "MPa"}, {Symbol: "d", Meaning: meansD, Unit: "mm"}},
	Fn: calc.FuncN(func(v []float64) float64 { return DevelopmentA23(v[0], v[1], v[2], v[3], v[4], v[5]) }),
	Go: "steel.DevelopmentA23", Source: "a233",
	Limits: calc.Text("c is 0.45 where cover and spacing are kept, else 0.6. At least 300 mm (12 in).")}

// ClassB is the Class B lap of a development length, in its unit:
// l_st = max(1.3·l_d, l_min). Source: ACI 318-14, 25.5.2.1; CSA A23.3, 12.15.
func ClassB(development, least float64) float64 { return math.Max(1.3*development, least) }

// ClassBFormula declares ClassB.
var ClassBFormula = &calc.Formula{ID: "class-b", Title: calc.Text("Class B lap"),
	Expr: "max(1.3*l_d, l_min)", Result: calc.Var{Symbol: "l_st", Meaning: calc.Text("lap length"), Unit: "mm",
		US: "in"},
	Vars: []calc.Var{
		{Symbol: "l_d", Meaning: meansLd, Unit: "mm", US: "in"},
		{Symbol: "l_min", Meaning: calc.Text("12 in (CSA: 300 mm)"), Unit: "mm", US: "in"},
	},
	Fn: calc.Func2(ClassB), Go: "steel.ClassB", Source: "aci318",
	Limits: calc.Text(
		"Class A is 1.0 of it: only where half the bars or fewer are lapped, with twice the steel needed. No laps " +
			"above #11 or 35M.",
	)}

// LapIRC is the lap of the residential code's table, in its unit:
// l = n·d, with n 60 for Grade 60 and 40 for Grade 40 bars.
// Source: IRC, table R608.5.4(1); the rule is inferred from its cells.
func LapIRC(n, d float64) float64 { return n * d }

// LapIRCFormula declares LapIRC.
var LapIRCFormula = &calc.Formula{ID: "irc", Title: calc.Text("Lap by the IRC table"),
	Expr: "n*d", Result: calc.Var{Symbol: "l", Meaning: calc.Text("lap length"), Unit: "mm", US: "in"},
	Vars: []calc.Var{
		{Symbol: "n", Meaning: calc.Text("60 for Grade 60, 40 for Grade 40")},
		{Symbol: "d", Meaning: meansD, Unit: "mm", US: "in"},
	},
	Fn: calc.Func2(LapIRC), Go: "steel.LapIRC", Source: "irc",
	Limits: calc.Text(
		"#4 to #6, Grade 40 or 60, in walls by that code. Its development length is the lap over 1.3, cut to the inch.",
	)}

// Hook318 is the length that develops a standard hook by ACI 318-14, in:
//
//	l_dh = max(f_y·ψ_e/(50·λ·min(√f'c, 100))·d, 8·d, 6)
//
// in US units only. Side cover of 2-1/2 in. and 2 in. behind a 90° tail allow
// 0.7 of the first term. Source: ACI 318-14, 25.4.3.1.
func Hook318(fy, coating, lambda, fc, d float64) float64 {
	return math.Max(fy*coating/(50*lambda*math.Min(math.Sqrt(fc), 100))*d, math.Max(8*d, 6))
}

// Hook318Formula declares Hook318.
var Hook318Formula = &calc.Formula{ID: "hook", Title: calc.Text("Hook by ACI 318-14"),
	Expr:   "max(f_y*psi_e/(50*lambda*min(sqrt(f'c), 100))*d, max(8*d, 6))",
	Result: calc.Var{Symbol: "l_dh", Meaning: calc.Text("development length of the hook"), Unit: "in"},
	Vars: []calc.Var{
		{Symbol: "f_y", Meaning: meansFy, Unit: "psi"},
		{Symbol: "psi_e", Meaning: calc.Text("1, or 1.2 for epoxy")},
		{
			Symbol:  "lambda",
			Meaning: meansLam,
		},
		{Symbol: "f'c", Meaning: meansFc, Unit: "psi"},
		{Symbol: "d", Meaning: meansD, Unit: "in"},
	},
	Fn: calc.Func5(Hook318), Go: "steel.Hook318", Source: "aci318",
	Limits: calc.Text("The 2019 edition has another form. Well covered: 0.7 of the first term, at #11 and smaller.")}
