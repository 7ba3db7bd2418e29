package maturity

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/strength"
)

const (
	// hottest and cold are the bounds of the temperatures tested, °C.
	hottest = 40.0
	coldest = 0.0
	// longest is the time in s between readings for which a strength is given: our
	// own limit.
	longest = 24 * 3600
)

const (
	refuseOrder  = calc.Text("This reading is earlier than the one before it. Put them in order.")
	refuseNoTime = calc.Text("The readings cover no time. Enter a later one.")
	ofFirst      = calc.Text("Interval that ends at {time}")
	noteSteady   = calc.Text("One reading only: it counts as the temperature since placing.")
	noteLate     = calc.Text("The first {time} before the first reading count for nothing.")
	noteJump     = calc.Text("Two rows have the same time. Is that a jump in temperature, or a slip?")
	noteBelow    = calc.Text(
		"At or below {limit} the concrete does not mature. No equivalent age and no strength are given: ask for a " +
			"test.",
	)
	noteFar = calc.Text(
		"More than {limit} without a reading. No strength is given: the concrete may have been colder.",
	)
	noteHot     = calc.Text("Hotter than {limit}. Concrete hot at first ends weaker than its maturity says.")
	noteCold    = calc.Text("Colder than {limit}. Young concrete that freezes is damaged. Maturity does not show it.")
	askCurve    = calc.Text("No strength without all figures of the curve. Enter them from the report.")
	noteNothing = calc.Text("By this curve the concrete has no strength yet.")
	noteRange   = calc.Text("The factor is past the largest tested. The curve ends there, so no strength is given.")
	askRange    = calc.Text("Up to what factor was the curve tested? Without it no strength is given.")
)

// history holds the sums over the readings.
type history struct {
	*calc.Recorder
	in            calc.Case
	ratio         float64 // Q, K
	factor        float64 // °C·h in SI, K·s
	age, ageEC    float64 // s
	heat          float64 // K·s over absolute zero, for the mean
	covered       float64 // s
	low, high     float64 // °C, of the readings
	gap           float64 // s, the longest time between readings
	cold, stepped bool    // cold: an age and a strength would mean nothing
	rows          []calc.Case
}

// compute sets maturity and, with a curve, strength. It refuses readings that are
// not in the order of time or span no time.
func compute(r *calc.Recorder, in calc.Case) {
	h := &history{Recorder: r, in: in, low: math.Inf(1), high: math.Inf(-1)}
	h.ratio = r.Use(strength.ActivationRatioFormula, in.Num("energy"))
	list := in.Rows("readings")
	for _, row := range list {
		t := calc.From(row.Num("temperature"), "°C")
		h.low, h.high = math.Min(h.low, t), math.Max(h.high, t)
	}
	h.cold = h.low <= math.Max(coldest, calc.From(in.Num("datum"), "°C"))+calc.Slack
	for i, row := range list {
		if i > 0 && !h.between(list[i-1], row) {
			return
		}
	}
	if len(list) == 1 {
		h.interval(list[0].Num("time"), list[0].Num("time"), list[0].Num("temperature"))
	}
	if !(h.covered > 0) {
		r.Refuse(calc.At("readings"), refuseNoTime)
		return
	}
	h.put()
	h.addNotes(list)
	if hasCurve(in) {
		h.strength()
	}
}

// between adds the interval from one reading to the next. It refuses a reading
// earlier than the one before and returns false.
func (h *history) between(a, b calc.Case) bool {
	long := b.Num("time") - a.Num("time")
	switch {
	case long < -calc.Slack*b.Num("time"):
		h.Refuse(calc.Cell("readings", b.RowNumber(), "time"), refuseOrder)
		return false
	case long <= calc.Slack*b.Num("time"):
		h.Note(calc.LevelAsk, calc.Cell("readings", b.RowNumber(), "time"), noteJump)
	default:
		h.interval(long, b.Num("time"), (a.Num("temperature")+b.Num("temperature"))/2)
	}
	return true
}

// interval adds an interval of long seconds that ends at end, with its mean
// temperature in K. The first interval is recorded as worked steps.
func (h *history) interval(long, end, mean float64) {
	use := func(f *calc.Formula, si ...float64) float64 { return f.Value(si...) }
	if !h.stepped {
		h.stepped = true
		use = func(f *calc.Formula, si ...float64) float64 {
			return h.UseFor(ofFirst, []calc.Slot{calc.Amount("time", end, &tenthHours)}, f, si...)
		}
	}
	h.factor += use(strength.TimeFactorFormula, mean, h.in.Num("datum"), long)
	if !h.cold {
		h.age += use(strength.EquivalentAgeFormula, h.ratio, mean, h.in.Num("reference"), long)
		h.ageEC += use(strength.EurocodeAgeFormula, mean, long)
	}
	h.heat += float64(mean * long)
	h.covered += long
	h.gap = math.Max(h.gap, long)
	row := h.NewRow("intervals").
		With("to", calc.Num(end)).With("mean", calc.Num(mean)).With("factor", calc.Num(h.factor))
	if !h.cold {
		row = row.With("age", calc.Num(h.age))
	}
	h.rows = append(h.rows, row)
}

// put sets the outputs of the history. Concrete that was frozen or at its datum has no
// equivalent age.
func (h *history) put() {
	h.Put("factor", h.factor)
	h.Put("factor-f", h.factor)
	if !h.cold {
		h.Put("age", h.age)
		h.Put("age-ec", h.ageEC)
	}
	h.Put("elapsed", h.covered)
	h.Put("mean", h.heat/h.covered)
	h.PutRows("intervals", h.rows)
}

// addNotes records the notes on readings that start late, are outside the range of
// the method or below the datum.
func (h *history) addNotes(list []calc.Case) {
	at := calc.At("readings")
	if len(list) == 1 {
		h.Note(calc.LevelNotice, at, noteSteady)
	} else if first := list[0].Num("time"); first > 0 {
		h.Note(calc.LevelNotice, at, noteLate, calc.Amount("time", first, &tenthHours))
	}
	if h.cold {
		h.Note(calc.LevelWarning, at, noteBelow, calc.Amount("limit",
			math.Max(calc.SI(coldest, "°C"), h.in.Num("datum")), &reading))
	}
	if h.high > hottest+calc.Slack {
		h.Note(calc.LevelWarning, at, noteHot, calc.Amount("limit", calc.SI(hottest, "°C"), &reading))
	}
	if h.low < coldest-calc.Slack {
		h.Note(calc.LevelWarning, at, noteCold, calc.Amount("limit", calc.SI(coldest, "°C"), &reading))
	}
}

// strength sets the strength by the calibration curve entered, up to the largest
// factor tested. It sets nothing for concrete that was cold, for readings too far
// apart or for a factor above the largest tested, and warns. If a figure of the curve
// is missing, it asks for it and sets nothing.
func (h *history) strength() {
	in, s := h.in, 0.0
	switch {
	case h.cold:
		return
	case h.gap > longest*(1+calc.Slack):
		h.Note(calc.LevelWarning, calc.At("readings"), noteFar, calc.Amount("limit", longest, &tenthHours))
		return
	case isLog(in) && in.Has("curve-a") && in.Has("curve-b"):
		if h.factor > 0 {
			s = h.Use(strength.LogStrengthFormula, in.Num("curve-a"), in.Num("curve-b"), h.factor)
		}
	case isHyper(in) && in.Has("curve-limit") && in.Has("curve-rate"):
		if h.factor > in.Num("curve-start") {
			s = h.Use(
				strength.HyperbolicStrengthFormula,
				in.Num("curve-limit"),
				in.Num("curve-rate"),
				h.factor,
				in.Num("curve-start"),
			)
		}
	default:
		h.Note(calc.LevelAsk, calc.At("curve"), askCurve)
		return
	}
	switch most := in.Num("curve-to"); {
	case !in.Has("curve-to"):
		h.Note(calc.LevelAsk, calc.At("curve-to"), askRange)
		return
	case calc.Over(h.factor, most):
		h.Note(calc.LevelWarning, calc.At("curve-to"), noteRange)
		return
	}
	h.Put("strength", math.Max(s, 0))
	if s <= 0 {
		h.Note(calc.LevelNotice, calc.At("curve"), noteNothing)
	}
}
