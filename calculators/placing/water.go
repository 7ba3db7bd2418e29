package placing

import "coursebook/calculators/calc"

// Meanings of the symbols.
const (
	meansW    = calc.Text("water added")
	meansEach = calc.Text("so much for 1 gal in each yd³")
	meansPer  = calc.Text("gallons in each yd³")
	meansDrum = calc.Text("concrete in the drum")
	ruleHolds = calc.Text("A rule of thumb for plain mixes of 3 to 6 in (75 to 150 mm) of slump.")
)

// PerYard is the water added to each cubic yard, W/V in gal/yd³, from US gal and
// yd³.
func PerYard(gallons, yards float64) float64 { return gallons / yards }

// PerYardFormula declares PerYard.
var PerYardFormula = &calc.Formula{
	ID: "per-yard", Title: calc.Text("Water in each cubic yard"), Expr: "W/V",
	Result: calc.Var{Symbol: "w", Meaning: meansPer},
	Vars:   []calc.Var{{Symbol: "W", Meaning: meansW, Unit: "US gal"}, {Symbol: "V", Meaning: meansDrum, Unit: "yd³"}},
	Fn:     calc.Func2(PerYard), Go: "placing.PerYard", Source: "slump",
}

// ByRule applies a rule of thumb, k·w: a change of k for each gal/yd³ of water.
// Limits: plain mixes at 3 to 6 in. of slump. Source: Concrete Construction,
// "Adjusting slump in the field" and "Adding water".
func ByRule(each, perYard float64) float64 { return each * perYard }

// SlumpGainFormula declares ByRule for the gain of slump, in inches.
var SlumpGainFormula = &calc.Formula{
	ID: "slump", Title: calc.Text("Slump gained"), Expr: "k*w",
	Result: calc.Var{Symbol: "s", Meaning: calc.Text("slump gained"), Unit: "in"},
	Vars:   []calc.Var{{Symbol: "k", Meaning: meansEach, Unit: "in"}, {Symbol: "w", Meaning: meansPer}},
	Fn:     calc.Func2(ByRule), Go: "placing.ByRule", Source: "slump", Limits: ruleHolds,
}

// StrengthLossFormula declares ByRule for the loss of strength, in psi.
var StrengthLossFormula = &calc.Formula{
	ID: "strength", Title: calc.Text("Strength lost"), Expr: "k*w",
	Result: calc.Var{Symbol: "f", Meaning: calc.Text("strength lost"), Unit: "psi"},
	Vars:   []calc.Var{{Symbol: "k", Meaning: meansEach, Unit: "psi"}, {Symbol: "w", Meaning: meansPer}},
	Fn:     calc.Func2(ByRule), Go: "placing.ByRule", Source: "air", Limits: ruleHolds,
}

// WaterCement is the water-cement ratio after water went in at the truck,
// r + 8.34·(W − W_h)/(V·c), with r the ratio of the mix design, which counts
// the water withheld. A US gallon of water weighs 8.34 lb. W and W_h in US
// gal, V in yd³, c in lb/yd³. Source: definition of the ratio.
func WaterCement(design, added, withheld, yards, cement float64) float64 {
	return design + float64(8.34*(added-withheld))/(yards*cement)
}

// WaterCementFormula declares WaterCement.
var WaterCementFormula = &calc.Formula{
	ID: "ratio", Title: calc.Text("Water-cement ratio after"), Expr: "r + 8.34*(W - W_h)/(V*c)",
	Result: calc.Var{Symbol: "r_a", Meaning: calc.Text("ratio after")},
	Vars: []calc.Var{
		{Symbol: "r", Meaning: calc.Text("ratio of the mix design")},
		{Symbol: "W", Meaning: meansW, Unit: "US gal"},
		{
			Symbol:  "W_h",
			Meaning: calc.Text("water withheld"),
			Unit:    "US gal",
		},
		{Symbol: "V", Meaning: meansDrum, Unit: "yd³"},
		{Symbol: "c", Meaning: calc.Text("cement in the mix"), Unit: "lb/yd³"},
	},
	Fn: calc.Func5(WaterCement), Go: "placing.WaterCement", Source: "weight",
}

// CementLost is the cement in lb whose strength the water costs: a quarter of a
// 94 lb bag for each gal/yd³, so 23.5 lb for each US gal.
// Source: Concrete Construction, "Adjusting slump in the field".
func CementLost(gallons float64) float64 { return 23.5 * gallons }

// CementLostFormula declares CementLost.
var CementLostFormula = &calc.Formula{
	ID: "cement", Title: calc.Text("Cement wasted"), Expr: "23.5*W",
	Result: calc.Var{Symbol: "m", Meaning: calc.Text("cement wasted"), Unit: "lb"},
	Vars:   []calc.Var{{Symbol: "W", Meaning: meansW, Unit: "US gal"}},
	Fn:     calc.Func1(CementLost), Go: "placing.CementLost", Source: "slump", Limits: ruleHolds,
}
