package weather

import (
	"math"

	"coursebook/calculators/calc"
)

const (
	meansKnown = calc.Text("setting time known")
	meansSet   = calc.Text("setting time")
	meansQ     = calc.Text("activation energy over the gas constant")
	meansSpeed = calc.Text("times as fast as at 70 °F (21 °C)")
	meansRef   = calc.Text("temperature it is known at")
)

// The setting times that count where the plant gives none, in hours at UsualSetAt in °F:
// setting-time opens on them, and form-pressure counts no earlier final set. They are our
// own estimate.
const (
	UsualInitial = 5.0
	UsualFinal   = 7.0
	UsualSetAt   = 73.0
)

// UsualQ is the constant of the Arrhenius equation in K that setting-time opens on.
// Source: ASTM C1074.
const UsualQ = 5000.0

// LatestFinal is the final set in hours at t in °F where the plant gives none: the later of
// the usual one and of the estimate for the mix, in hours at t. usual reports that the usual
// one is the later.
func LatestFinal(byMix, t float64) (hours float64, usual bool) {
	at := SetArrhenius(UsualFinal, UsualQ, calc.SI(t, "°F"), calc.SI(UsualSetAt, "°F"))
	return max(byMix, at), at > byMix
}

// SetArrhenius is the setting time at the temperature T from a setting time t_r at
// T_r, both in K: t_r·exp(Q·(1/T - 1/T_r)), the inverse of the equivalent age. Q
// is the activation energy over the gas constant, in K. The result has the unit of
// t_r.
// Source: ASTM C1074; Q of 5000 K there, 4000 K in EN 1992-1-1.
func SetArrhenius(known, q, t, reference float64) float64 {
	return known * math.Exp(q*(1/t-1/reference))
}

// SetArrheniusFormula declares SetArrhenius.
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

// SetDoubling is the setting time by the rule of thumb, t_r·2^((T_r - T)/20), with
// temperatures in °F. Source: Frame Building News, October 2020.
func SetDoubling(known, t, reference float64) float64 { return known * pow2((reference-t)/20) }

// SetDoublingFormula declares SetDoubling.
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

// Speed is the rate of setting at t in °F over the rate at 70 °F,
// 2^((T - 70)/20). Source: the rule of thumb that 20 °F doubles or halves it.
func Speed(t float64) float64 { return pow2((t - 70) / 20) }

// SpeedFormula declares Speed.
var SpeedFormula = &calc.Formula{
	ID: "speed", Title: calc.Text("How much faster it sets"),
	Expr: "2^((T - 70)/20)", Result: calc.Var{Symbol: "n", Meaning: meansSpeed},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansTc, Unit: "°F"}},
	Fn:   calc.Func1(Speed), Go: "weather.Speed", Source: "nfba",
	Limits: calc.Text("A rule of thumb for plain mixes. A retarder changes it."),
}

// Least and greatest constant of the Arrhenius equation in K, the bounds of an
// estimate of the setting time.
const (
	LeastQ = 4000
	MostQ  = 6000
)

// EarliestSet returns the least setting time, in s, of the rule of thumb and of
// the Arrhenius equation with Q of LeastQ and of MostQ, and the formula that gives
// it. q is its constant in K, 0 for the rule of thumb. known is the setting time
// in s at the temperature reference; both temperatures are in K.
func EarliestSet(known, t, reference float64) (set float64, governs *calc.Formula, q float64) {
	set, governs = SetDoublingFormula.Value(known, t, reference), SetDoublingFormula
	for _, bound := range [...]float64{LeastQ, MostQ} {
		if by := SetArrheniusFormula.Value(known, bound, t, reference); by < set {
			set, governs, q = by, SetArrheniusFormula, bound
		}
	}
	return set, governs, q
}
