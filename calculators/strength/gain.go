package strength

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansAge   = calc.Text("age")
	meansShare = calc.Text("share of the 28-day strength")
	meansA     = calc.Text("constant of cement and curing, days")
	meansB     = calc.Text("constant of cement and curing")
	meansClass = calc.Text("coefficient of the cement class")
)

// Share209 is the fraction of the 28-day strength by ACI 209:
//
//	f(t)/f28 = t/(a + b·t)
//
// with the age t in days, at least 1, and the constants a in days and b
// by cement and curing. With a = 4.0 and b = 0.85 it gives 1.007 at 28 days.
// Source: ACI 209R-92, eq. (2-1).
func Share209(age, a, b float64) float64 { return age / (a + float64(b*age)) }

// Share209Formula declares Share209.
var Share209Formula = &calc.Formula{ID: "share-aci", Title: calc.Text("Share by ACI 209"),
	Expr: "t/(a + b*t)", Result: calc.Var{Symbol: "p", Meaning: meansShare},
	Vars: []calc.Var{
		{Symbol: "t", Meaning: meansAge, Unit: "d"},
		{Symbol: "a", Meaning: meansA},
		{Symbol: "b", Meaning: meansB},
	},
	Fn: calc.Func3(Share209), Go: "strength.Share209", Source: "aci209",
	Limits: calc.Text(
		"From 1 day on. Type I moist: a = 4.0, b = 0.85, which gives 100.7% at 28 days. Measured plain mixes lay " +
			"lower: median 65% at 7 days.",
	)}

// Age209 is the inverse of Share209, the age in days for a fraction p:
//
//	t = a·p/(1 − b·p)
//
// for p below 1/b, the limit of the curve.
// Source: ACI 209R-92, eq. (2-1), solved for the age.
func Age209(share, a, b float64) float64 { return a * share / (1 - float64(b*share)) }

// Age209Formula declares Age209.
var Age209Formula = &calc.Formula{ID: "time-aci", Title: calc.Text("Time to a share, ACI 209"),
	Expr: "a*p/(1 - b*p)", Result: calc.Var{Symbol: "t", Meaning: meansAge, Unit: "d"},
	Vars: []calc.Var{
		{Symbol: "p", Meaning: meansShare},
		{Symbol: "a", Meaning: meansA},
		{Symbol: "b", Meaning: meansB},
	},
	Fn: calc.Func3(Age209), Go: "strength.Age209", Source: "aci209",
	Limits: calc.Text("For shares below 1/b, which the curve never reaches.")}

// ShareEC is the fraction of the 28-day mean strength by Eurocode 2:
//
//	β_cc = exp(s·(1 − √(28/t)))
//
// with the age t in days, at a mean of 20 °C, and s by cement class.
// Source: EN 1992-1-1:2004, eq. (3.2).
func ShareEC(s, age float64) float64 { return math.Exp(s * (1 - math.Sqrt(28/age))) }

// ShareECFormula declares ShareEC.
var ShareECFormula = &calc.Formula{ID: "share-ec", Title: calc.Text("Share by Eurocode 2"),
	Expr: "exp(s*(1 - sqrt(28/t)))", Result: calc.Var{Symbol: "beta", Meaning: meansShare},
	Vars: []calc.Var{{Symbol: "s", Meaning: meansClass}, {Symbol: "t", Meaning: meansAge, Unit: "d"}},
	Fn:   calc.Func2(ShareEC), Go: "strength.ShareEC", Source: "ec2",
	Limits: calc.Text("Of the mean strength, at a mean of 20 °C (68 °F). It must not excuse a failed 28-day test.")}

// AgeEC is the inverse of ShareEC, the age in days for a fraction p:
//
//	t = 28/(1 − ln(p)/s)²
//
// for p below e^s, the limit of the curve.
// Source: EN 1992-1-1:2004, eq. (3.2), solved for the age.
func AgeEC(share, s float64) float64 { return 28 / math.Pow(1-math.Log(share)/s, 2) }

// AgeECFormula declares AgeEC.
var AgeECFormula = &calc.Formula{ID: "time-ec", Title: calc.Text("Time to a share, Eurocode 2"),
	Expr: "28/(1 - ln(p)/s)^2", Result: calc.Var{Symbol: "t", Meaning: meansAge, Unit: "d"},
	Vars: []calc.Var{{Symbol: "p", Meaning: meansShare}, {Symbol: "s", Meaning: meansClass}},
	Fn:   calc.Func2(AgeEC), Go: "strength.AgeEC", Source: "ec2",
	Limits: calc.Text("For shares below e^s, which the curve never reaches.")}

// Strength is a fraction of the 28-day strength, in its unit: f(t) = p·f28.
// Source: either standard.
func Strength(share, f28 float64) float64 { return share * f28 }

// StrengthFormula declares Strength.
var StrengthFormula = &calc.Formula{ID: "strength", Title: calc.Text("Strength from the share"),
	Expr: "p*f_28", Result: calc.Var{Symbol: "f", Meaning: calc.Text("strength at that age"), Unit: "MPa", US: "psi"},
	Vars: []calc.Var{
		{Symbol: "p", Meaning: meansShare},
		{Symbol: "f_28", Meaning: calc.Text("strength at 28 days"), Unit: "MPa", US: "psi"},
	},
	Fn: calc.Func2(Strength), Go: "strength.Strength", Source: "aci209"}
