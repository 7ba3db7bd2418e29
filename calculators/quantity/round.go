package quantity

import (
	"math"
	"strconv"
)

// noise is the relative tolerance within which a value counts as a multiple of
// the step, so that a rounding error does not round 12 up to 13.
const noise = 1e-9

// significant is the number of significant digits of a value without a step, unless
// its UnitDisplay has another.
const significant = 7

// steps rounds q, a number of steps, to a whole number. A q within noise of a
// whole number is that number in any direction of rounding. A half rounds away
// from zero.
func steps(q float64, rounding Rounding) float64 {
	slack := noise * math.Max(1, math.Abs(q))
	if on := math.Round(q); math.Abs(q-on) <= slack {
		return on
	}
	switch rounding {
	case Up:
		return math.Ceil(q)
	case Down:
		return math.Floor(q)
	}
	// A half that is short by a rounding error still rounds as a half.
	return math.Copysign(math.Floor(math.Abs(q)+0.5+slack), q)
}

// tooFine bounds the number of steps that a float64 can count.
const tooFine = 1e15

// finest is the largest number of decimals of a step.
const finest = 9

// places returns how many decimals a multiple of step needs, at most finest.
func places(step float64) int {
	for n, scaled := 0, step; n < finest; n, scaled = n+1, scaled*10 {
		if isWhole(scaled) {
			return n
		}
	}
	return finest
}

// isDecimal reports whether multiples of step can be written in full with nine
// decimals; true for 0.
func isDecimal(step float64) bool { return step == 0 || isWhole(step*1e9) }

// isWhole reports whether x is a whole number of at least 1, within binary
// rounding.
func isWhole(x float64) bool {
	return x > 0.5 && math.Abs(x-math.Round(x)) <= 1e-12*x
}

// rounded rounds x, in the unit of sc, for writing: decimals is the number of
// digits after the mark, or -1 for up to sc.Digits significant digits. The value is the
// float64 nearest to the written digits, the same as parsing them gives.
func rounded(x float64, sc UnitDisplay) (value float64, decimals int) {
	switch {
	case sc.Step > 0 && math.Abs(x/sc.Step) < tooFine:
		decimals = places(sc.Step)
		x = steps(x/sc.Step, sc.Rounding) * sc.Step
		return reread(strconv.FormatFloat(x, 'f', decimals, 64)), decimals
	case sc.Step == 0 && math.Abs(x) < tooFine && math.Abs(x-math.Round(x)) <= noise*math.Abs(x):
		return math.Round(x) + 0, 0
	}
	digits := significant
	if sc.Digits > 0 {
		digits = int(sc.Digits)
	}
	return reread(strconv.FormatFloat(x, 'e', digits-1, 64)), -1
}

// reread returns the float64 nearest to decimal digits, never minus zero.
func reread(digits string) float64 {
	x, _ := strconv.ParseFloat(digits, 64)
	return x + 0 // + 0: never minus zero
}

// inUnit converts an SI value to a unit. Near the zero of a temperature scale it
// returns 0 instead of the rounding error of the offset.
func inUnit(si float64, u Unit) float64 {
	x := u.FromSI(si)
	if math.Abs(x) <= 1e-12*u.Offset {
		return 0
	}
	return x
}

// Round returns an SI value rounded as the display says: the value that Format
// writes and Parse reads back. NaN and infinities are returned unchanged.
func Round(si float64, display Display, sys System) float64 {
	u, sc := display.unit(sys), display.In(sys)
	if math.IsNaN(si) || math.IsInf(si, 0) {
		return si
	}
	if sc.Form != Decimal {
		if inches, ok := wholeSteps(si, sc); ok {
			return inchUnit().ToSI(inches)
		}
		sc = UnitDisplay{}
	}
	x, _ := rounded(inUnit(si, u), sc)
	return u.ToSI(x)
}

// finestDefault is the default step of feet and inches, in inches: the finest
// division of a tape.
const finestDefault = 1.0 / 16

// wholeSteps returns a length, si in metres, in inches rounded to the step and in
// the direction of sc; a step of 0 is 1/16 in. ok is false if there are more steps
// than a float64 can count; the result is then not rounded reliably.
func wholeSteps(si float64, sc UnitDisplay) (inches float64, ok bool) {
	step := sc.Step
	if step == 0 {
		step = finestDefault
	}
	q := inchUnit().FromSI(si) / step
	return float64(steps(q, sc.Rounding)*step) + 0, math.Abs(q) < tooFine
}

// inchUnit returns the unit inch.
func inchUnit() Unit { u, _ := Find("in"); return u }
