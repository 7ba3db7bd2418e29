package pressure

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansK1   = calc.Text("factor for the setting time")
	meansCool = calc.Text("factor for cool concrete")
	meansSet  = calc.Text("setting time, at least 5 h")
)

// The limits of DIN 18218:2010-01. Beyond them the full fluid head applies.
const (
	DINRise    = 7.0  // m/h, fastest rise
	DINHeight  = 10.0 // m, tallest placement
	DINSetLow  = 5.0  // h; a shorter setting time counts as this long
	DINSetHigh = 20.0 // h, longest setting time

	DINLeastStiff   = 25.0 // kPa, least pressure of F1 to F4
	DINLeastFlowing = 30.0 // kPa, least pressure of F5, F6 and SCC
)

// flowClasses are in the order of the standard, which gives the flowing ones as
// 25 + 30·v·K_1 and 25 + 38·v·K_1 with K_1 = t_E/5 at 25 kN/m³.
var flowClasses = [...]FlowClass{
	{id: "f1", Slope: 5, Base: 21, Set: 0.03},
	{id: "f2", Slope: 10, Base: 19, Set: 0.053},
	{id: "f3", Slope: 14, Base: 18, Set: 0.077},
	{id: "f4", Slope: 17, Base: 17, Set: 0.14},
	{id: "f5", Reach: 0.24},
	{id: "f6", Reach: 0.304},
	{id: "scc", Reach: 0.26},
}

// FlowClass has the constants of one class of consistency. The pressure of the
// stiff classes F1 to F4 is (slope·v + base)·K_1, of the flowing ones
// γ·(1 + reach·v·t_E).
type FlowClass struct {
	id          string
	Slope, Base float64 // kPa per m/h, kPa; stiff classes
	Set         float64 // 1/h, growth of K_1 with the setting time; stiff classes
	Reach       float64 // flowing classes, 0 for the stiff
}

// ClassOf finds a class by ID; an unknown ID gives F6, the class with the greatest
// pressure.
func ClassOf(id string) FlowClass {
	for _, c := range flowClasses {
		if c.id == id {
			return c
		}
	}
	return ClassOf("f6")
}

// Flows reports whether the class is a flowing one.
func (c FlowClass) Flows() bool { return c.Reach > 0 }

// DINSet is the factor K_1 of the classes F1 to F4 for a setting time in
// hours: 1 + k·(t_E − 5). Source: DIN 18218:2010-01.
func DINSet(k, set float64) float64 { return 1 + float64(k*(set-5)) }

// DINSetFormula declares DINSet.
var DINSetFormula = &calc.Formula{
	ID: "set", Title: calc.Text("Setting time factor, F1 to F4"),
	Expr: "1 + k*(t_E - 5)", Result: calc.Var{Symbol: "K_1", Meaning: meansK1},
	Vars: []calc.Var{
		{Symbol: "k", Meaning: calc.Text("growth per hour, by class")},
		{Symbol: "t_E", Meaning: meansSet, Unit: "h"},
	},
	Fn: calc.Func2(DINSet), Go: "pressure.DINSet", Source: "din-memory",
	Limits: calc.Text("For 5 to 20 h. The growth is 0.03 for F1, 0.053 for F2, 0.077 for F3 and 0.14 for F4."),
}

// DINCool is the factor for concrete placed cooler, at t °C, than the
// temperature ref °C of its setting time: 3 % more for each degree. It is 1 for
// warmer concrete. Source: DIN 18218:2010-01.
func DINCool(ref, t float64) float64 { return math.Max(1, 1+float64(0.03*(ref-t))) }

// DINCoolFormula declares DINCool.
var DINCoolFormula = &calc.Formula{
	ID: "cool", Title: calc.Text("Temperature factor"),
	Expr: "max(1, 1 + 0.03*(T_r - T))", Result: calc.Var{Symbol: "f_T", Meaning: meansCool},
	Vars: []calc.Var{
		{Symbol: "T_r", Meaning: calc.Text("temperature the setting time holds for"), Unit: "°C"},
		{Symbol: "T", Meaning: meansTC, Unit: "°C"},
	},
	Fn: calc.Func2(DINCool), Go: "pressure.DINCool", Source: "din-memory",
	Limits: calc.Text("Warmer concrete earns no credit."),
}

// DINStiff is the characteristic pressure in kPa of the classes F1 to F4:
// (a·v + b)·K_1·f_T·γ/25, at least DINLeastStiff; v in m/h, γ in kN/m³. The
// rule is SetByEquation or SetByLeast. Source: DIN 18218:2010-01.
func DINStiff(a, b, v, k1, cool, gamma float64) (kPa float64, rule string) {
	return atLeast(DINLeastStiff, (float64(a*v)+b)*k1*cool*gamma/25)
}

// DINStiffFormula declares DINStiff.
var DINStiffFormula = &calc.Formula{
	ID: "stiff", Title: calc.Text("Pressure of F1 to F4"),
	Expr: "max(25, (a*v + b)*K_1*f_T*gamma/25)", Result: calc.Var{Symbol: "sigma", Meaning: meansP, Unit: "kPa"},
	Vars: []calc.Var{
		{Symbol: "a", Meaning: calc.Text("growth with the rise, by class")},
		{Symbol: "b", Meaning: calc.Text("pressure at rest, by class"), Unit: "kPa"},
		{
			Symbol:  "v",
			Meaning: meansR,
			Unit:    "m/h",
		}, {Symbol: "K_1", Meaning: meansK1}, {Symbol: "f_T", Meaning: meansCool},
		{Symbol: "gamma", Meaning: meansW, Unit: "kN/m³"},
	},
	Fn: calc.FuncN(func(v []float64) float64 {
		kPa, _ := DINStiff(v[0], v[1], v[2], v[3], v[4], v[5])
		return kPa
	}),
	Go: "pressure.DINStiff", Source: "din-memory",
	Limits: calc.Text(
		"Rise to 7 m/h, height to 10 m, placed from the top, vibrator inside. By class: 5v + 21, 10v + 19, 14v + 18, " +
			"17v + 17.",
	),
}

// DINFlowing is the characteristic pressure in kPa of the classes F5 and F6
// and of self-compacting concrete: (1 + c·v·t_E)·γ·f_T, at least
// DINLeastFlowing; v in m/h, t_E in h, γ in kN/m³. The rule is SetByEquation
// or SetByLeast. Source: DIN 18218:2010-01, Eq. (1) for self-compacting
// concrete.
func DINFlowing(c, v, set, cool, gamma float64) (kPa float64, rule string) {
	return atLeast(DINLeastFlowing, (1+float64(c*v*set))*gamma*cool)
}

// atLeast bounds the pressure of an equation from below, both in kPa, and
// returns which of the two sets it.
func atLeast(least, equation float64) (kPa float64, rule string) {
	if equation <= least {
		return least, SetByLeast
	}
	return equation, SetByEquation
}

// DINFlowingFormula declares DINFlowing.
var DINFlowingFormula = &calc.Formula{
	ID: "flowing", Title: calc.Text("Pressure of F5, F6 and SCC"),
	Expr: "max(30, (1 + c*v*t_E)*gamma*f_T)", Result: calc.Var{Symbol: "sigma", Meaning: meansP, Unit: "kPa"},
	Vars: []calc.Var{
		{Symbol: "c", Meaning: calc.Text("share of the rise that stays fluid, by class")},
		{Symbol: "v", Meaning: meansR, Unit: "m/h"}, {Symbol: "t_E", Meaning: meansSet, Unit: "h"},
		{Symbol: "f_T", Meaning: meansCool}, {Symbol: "gamma", Meaning: meansW, Unit: "kN/m³"},
	},
	Fn: calc.Func5(func(c, v, set, cool, gamma float64) float64 {
		kPa, _ := DINFlowing(c, v, set, cool, gamma)
		return kPa
	}), Go: "pressure.DINFlowing", Source: "din",
	Limits: calc.Text(
		"Rise to 7 m/h, height to 10 m, placed from the top. The share is 0.24 for F5, 0.304 for F6 and 0.26 for SCC.",
	),
}
