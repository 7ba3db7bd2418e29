package pressure

import "coursebook/calculators/calc"

// The groups of ACI 347R-14.
const (
	Plain Cement = "plain" // Types I, II and III
	Blend Cement = "blend" // other types, and blends below 70 % slag or 40 % fly ash
	Rich  Cement = "rich"  // blends with more slag or fly ash
)

// Unit weights in lb/ft³ between which the coefficient is 1. Both limits
// are inside; the coefficient has a step at each.
const (
	LightBelow PCF = 140
	HeavyAbove PCF = 150
)

// Cement is a group of binders with the same effect on the pressure.
type Cement string

// LightWeight is the unit weight coefficient of concrete below 140 lb/ft³:
// 0.5·(1 + w/145), at least 0.80. Source: ACI 347R-14.
func LightWeight(w PCF) float64 { return max(0.8, 0.5*(1+float64(w)/145)) }

// LightWeightFormula declares LightWeight.
var LightWeightFormula = &calc.Formula{
	ID: "light", Title: calc.Text("Weight coefficient, light mix"),
	Expr: "max(0.8, 0.5*(1 + w/145))", Result: varCw,
	Vars: []calc.Var{{Symbol: "w", Meaning: meansW, Unit: "lb/ft³"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return LightWeight(PCF(v[0])) }),
	Go:   "pressure.LightWeight", Source: "aci",
	Limits: calc.Text(
		"Below 140 lb/ft³ (2240 kg/m³). From there to 150 lb/ft³ (2400 kg/m³) the coefficient is 1; it steps at both.",
	),
}

// HeavyWeight is the unit weight coefficient of concrete above 150 lb/ft³:
// w/145. Source: ACI 347R-14.
func HeavyWeight(w PCF) float64 { return float64(w) / 145 }

// HeavyWeightFormula declares HeavyWeight.
var HeavyWeightFormula = &calc.Formula{
	ID: "heavy", Title: calc.Text("Weight coefficient, heavy mix"),
	Expr: "w/145", Result: varCw,
	Vars: []calc.Var{{Symbol: "w", Meaning: meansW, Unit: "lb/ft³"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return HeavyWeight(PCF(v[0])) }),
	Go:   "pressure.HeavyWeight", Source: "aci",
	Limits: calc.Text("Above 150 lb/ft³ (2400 kg/m³)."),
}

// WeightCoefficient is C_w for a unit weight in lb/ft³. Source: ACI 347R-14.
func WeightCoefficient(w PCF) float64 {
	switch {
	case calc.Under(float64(w), float64(LightBelow)):
		return LightWeight(w)
	case calc.Over(float64(w), float64(HeavyAbove)):
		return HeavyWeight(w)
	}
	return 1
}

// ChemistryCoefficient is C_c. A retarder is any admixture that slows the
// set, as most water reducers do. An unknown group has the greatest coefficient. Source: ACI 347R-14.
func ChemistryCoefficient(c Cement, retarded bool) float64 {
	switch c {
	case Plain:
		return pick(retarded, 1.2, 1.0)
	case Blend:
		return pick(retarded, 1.4, 1.2)
	}
	return pick(retarded, 1.5, 1.4)
}

func pick(first bool, a, b float64) float64 {
	if first {
		return a
	}
	return b
}
