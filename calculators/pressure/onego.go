package pressure

import "coursebook/calculators/calc"

// InOneGo is the pressure at a place that is filled without a stop and rises at
// rise: the strictest of ACI 347 (the stricter edition), CIRIA Report 108 and
// DIN 18218 (class F4). Passes, Average, Reach and Cause do not count.
func (w *Lifts) InOneGo(rise FtPerHour) LiftPressure {
	out, _ := w.byMethods(rise)
	return out
}

// HighestInOneGo is the fastest rise at which InOneGo does not exceed the rating of
// a form. The rise is 0 unless the result is ByEquation, ByMethod or ByOthers.
func (w *Lifts) HighestInOneGo(rating PSF) (FtPerHour, Reach) {
	high, reach := w.HighestRise(rating)
	if reach != ByEquation && reach != ByMethod {
		return 0, reach
	}
	within := func(r FtPerHour) bool { return !calc.Over(float64(w.InOneGo(r).Pressure), float64(rating)) }
	high = min(high, MethodRiseSI)
	if within(high) {
		return high, reach
	}
	low := FtPerHour(0)
	for range 50 { // the pressure never falls with the rise
		if middle := (low + high) / 2; within(middle) {
			low = middle
		} else {
			high = middle
		}
	}
	if low == 0 {
		return 0, NoRise
	}
	return low, ByOthers
}

// Strictest is the largest pressure of the three methods.
func Strictest(aci, ciria, din PSF) PSF { return max(aci, ciria, din) }

// StrictestFormula declares Strictest.
var StrictestFormula = &calc.Formula{
	ID: "strictest", Title: calc.Text("Strictest of three methods"),
	Expr: "max(p_a, p_c, p_d)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "p_a", Meaning: nameACI, Unit: "kPa", US: "psf"},
		{Symbol: "p_c", Meaning: nameCIRIA, Unit: "kPa", US: "psf"},
		{Symbol: "p_d", Meaning: nameDIN, Unit: "kPa", US: "psf"},
	},
	Fn: calc.FuncN(func(v []float64) float64 { return float64(Strictest(PSF(v[0]), PSF(v[1]), PSF(v[2]))) }),
	Go: "pressure.Strictest", Source: "own",
}
