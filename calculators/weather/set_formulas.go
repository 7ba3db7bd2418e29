package weather

import (
	"math"

	"coursebook/calculators/calc"
)

// pow2 is 2 to the power x.
func pow2(x float64) float64 { return math.Pow(2, x) }

// SetArrhenius carries a setting time t_r known at T_r to the temperature T,
// both in K: t_r·exp(Q·(1/T - 1/T_r)), the equivalent age turned round. Q is
// the activation energy over the gas constant, in K.
// Source: ASTM C1074; Q of 5000 K there, 4000 K in EN 1992-1-1.
func SetArrhenius(known, q, t, reference float64) float64 {
	return known * math.Exp(q*(1/t-1/reference))
}

// SetDoubling carries a setting time by the rule of thumb, temperatures in
// °F: t_r·2^((T_r - T)/20). Source: Frame Building News, October 2020.
func SetDoubling(known, t, reference float64) float64 { return known * pow2((reference-t)/20) }

// setTable is the approximate setting time in h of a plain mix at 30 to
// 100 °F in steps of 10. Source: a table reprinted on secondary pages, 40 and
// 50 °F from memory.
var setTable = [...]float64{19, 14.67, 10.67, 8, 6, 4, 2.67, 1.67}

// setByTable reads setTable at t in °F, straight between its rows; not ok
// outside it.
func setByTable(t float64) (hours float64, ok bool) {
	x := (t - 30) / 10
	if x < -calc.Slack || x > float64(len(setTable)-1)+calc.Slack {
		return 0, false
	}
	i := max(0, min(int(x), len(setTable)-2))
	part := x - float64(i)
	return setTable[i] + float64(part*(setTable[i+1]-setTable[i])), true
}
