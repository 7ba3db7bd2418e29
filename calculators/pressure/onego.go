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
// a form, at most MethodRiseSI. The rise is 0 unless the result is ByRise.
func (w *Lifts) HighestInOneGo(rating PSF) (FtPerHour, Reach) {
	within := func(p PSF) bool { return !calc.Over(float64(p), float64(rating)) }
	switch {
	case within(w.Head()):
		return 0, AnyRise
	case w.Wet() || w.Cold() || w.Shaken:
		return 0, FluidAnyway
	}
	low, high := FtPerHour(0), MethodRiseSI
	for range 50 { // the pressure never falls with the rise
		if middle := (low + high) / 2; within(w.InOneGo(middle).Pressure) {
			low = middle
		} else {
			high = middle
		}
	}
	if low == 0 {
		return 0, NoRise
	}
	return low, ByRise
}

// Strictest is the pressure from its parts: the largest of the wall equation, its floor
// and the two European methods, at most the fluid head.
func Strictest(equation, floor, ciria, din, head PSF) PSF {
	return min(head, max(equation, floor, ciria, din))
}

// StrictestFormula declares Strictest.
var StrictestFormula = &calc.Formula{
	ID: "strictest", Title: calc.Text("Strictest of three methods"),
	Expr: "min(p_h, max(p_e, p_min, p_c, p_d))", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{
		{Symbol: "p_e", Meaning: meansEq, Unit: "kPa", US: "psf"},
		{Symbol: "p_min", Meaning: meansFloor, Unit: "kPa", US: "psf"},
		{Symbol: "p_c", Meaning: nameCIRIA, Unit: "kPa", US: "psf"},
		{Symbol: "p_d", Meaning: nameDIN, Unit: "kPa", US: "psf"},
		{Symbol: "p_h", Meaning: meansHead, Unit: "kPa", US: "psf"},
	},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(Strictest(PSF(v[0]), PSF(v[1]), PSF(v[2]), PSF(v[3]), PSF(v[4])))
	}),
	Go: "pressure.Strictest", Source: "own", Limits: FluidCases,
}
