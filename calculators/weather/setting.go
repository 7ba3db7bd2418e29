package weather

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansKnown = calc.Text("setting time known")
	meansSet   = calc.Text("setting time")
	meansQ     = calc.Text("activation energy over the gas constant")
	meansRef   = calc.Text("temperature it is known at")
)

// SetArrhenius carries a setting time t_r known at T_r to the temperature T,
// both in K: t_r·exp(Q·(1/T - 1/T_r)), the equivalent age turned round. Q is
// the activation energy over the gas constant, in K.
// Source: ASTM C1074; Q of 5000 K there, 4000 K in EN 1992-1-1.
func SetArrhenius(known, q, t, reference float64) float64 {
	return known * math.Exp(q*(1/t-1/reference))
}

var SetArrheniusFormula = &calc.Formula{
	ID: "arrhenius", Title: calc.Text("Setting time at another temperature"),
	Expr: "t_r*exp(Q*(1/T - 1/T_r))", Result: calc.Var{Symbol: "t", Meaning: meansSet, Unit: "h"},
	Vars: []calc.Var{
		{Symbol: "t_r", Meaning: meansKnown, Unit: "h"},
		{Symbol: "Q", Meaning: meansQ, Unit: "K"},
		{Symbol: "T", Meaning: meansTc, Unit: "K"},
		{Symbol: "T_r", Meaning: meansRef, Unit: "K"},
	},
	Fn: calc.Func4(SetArrhenius), Go: "weather.SetArrhenius", Source: "c1074",
	Limits: calc.Text("The same mix, at one even temperature. Best within 50 to 90 °F (10 to 32 °C)."),
}

// SetDoubling carries a setting time by the rule of thumb, temperatures in
// °F: t_r·2^((T_r - T)/20). Source: Frame Building News, October 2020.
func SetDoubling(known, t, reference float64) float64 { return known * pow2((reference-t)/20) }

var SetDoublingFormula = &calc.Formula{
	ID: "doubling", Title: calc.Text("Rule of thumb"),
	Expr: "t_r*2^((T_r - T)/20)", Result: calc.Var{Symbol: "t", Meaning: meansSet, Unit: "h"},
	Vars: []calc.Var{
		{Symbol: "t_r", Meaning: meansKnown, Unit: "h"},
		{Symbol: "T", Meaning: meansTc, Unit: "°F"},
		{Symbol: "T_r", Meaning: meansRef, Unit: "°F"},
	},
	Fn: calc.Func3(SetDoubling), Go: "weather.SetDoubling", Source: "nfba",
	Limits: calc.Text(
		"20 °F (11 °C) colder doubles it, 20 °F warmer halves it. Within about 30 % of the old site table.",
	),
}
