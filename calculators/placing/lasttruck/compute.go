package lasttruck

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/geometry"
	"coursebook/calculators/placing"
)

const (
	askLeast  = calc.Text("What is the least the plant sends? A smaller order goes up to that.")
	askNeeded = calc.Text("By what time must it be in the hopper? Without that there is no time to call.")
	askLead   = calc.Text("How long from your word to the hopper? Ask dispatch. Without that there is no time to call.")
	askCutOff = calc.Text("When does the plant stop taking calls? Ask dispatch.")
	askHalf   = calc.Text("Over {limit} is more than one truck carries. Ask the plant for two, and the time of each.")

	noteCutOff = calc.Text("The plant stops taking calls at {time}, earlier than the pour asks for. Call before that.")
	noteLate   = calc.Text(
		"It will reach the hopper {late} too late. Slow the rounds, keep every top fresh, and call at once.",
	)
	noteClosed = calc.Text("The plant has stopped taking calls. Call at once, then a second plant. Plan a joint.")
	noteDay    = calc.Text("The time to call is on the day before.")
	noteEnough = calc.Text(
		"The drums cover the open wall, with waste. Measure again at half a truck: a guess is a guess.",
	)
	noteMeasure = calc.Text(
		"Without the guess {missing} is missing. Measure again, or call the plant's least load.",
	)
	noteGuess = calc.Text("The guesses count half. If all of each is usable, {over} more is left over.")
	noteLeast = calc.Text("The plant's least load is more than what is missing. Have a place for {over}.")
)

// oneTruck is the volume above which an order is noted to need two trucks.
var oneTruck = calc.SI(10, "yd³")

// compute sets the last order and the time to call. It refuses nothing; it asks
// for what is not known.
func compute(r *calc.Recorder, in calc.Case) {
	open := openVolume(r, in)
	fullLoads, guessed := drums(in)
	need := r.Use(geometry.WithWasteFormula, open, in.Num("waste"))
	usable := r.Use(placing.UsableFormula, fullLoads, guessed)
	takeOn := 0.0
	if takesMore(in) {
		takeOn = in.Num("take-on")
	}
	hopper := in.Num("hopper")
	missing := r.Use(placing.MissingFormula, need, takeOn, usable, hopper)
	if missing < calc.Slack*(need+takeOn) {
		missing = 0 // the rest of a subtraction of equal volumes
	}
	order := lastOrder(r, in, missing)
	over := math.Max(0, order+fullLoads+guessed+hopper-open-takeOn)
	geometry.PutVolume(r, "open", open)
	geometry.PutVolume(r, "with-waste", need)
	geometry.PutVolume(r, "usable", usable)
	geometry.PutVolume(r, "missing", missing)
	geometry.PutVolume(r, "over", over)
	if sure := placing.Missing(need, takeOn, fullLoads, hopper); missing == 0 && sure > calc.Slack*(need+takeOn) {
		r.PutChoice("verdict", measure)
		r.Note(calc.LevelCaution, calc.At("drums"), noteMeasure, calc.Amount("missing", sure, &displays.Volume))
		return
	}
	geometry.PutVolume(r, "order", order)
	if missing == 0 {
		r.PutChoice("verdict", nothing)
		r.Note(calc.LevelNotice, calc.At("drums"), noteEnough)
		return
	}
	if guessed > 0 {
		r.Note(calc.LevelNotice, calc.At("drums"), noteGuess, calc.Amount("over", guessed/2, &displays.Volume))
	}
	if calc.Over(order, oneTruck) {
		r.Note(calc.LevelAsk, calc.At(""), askHalf, calc.Amount("limit", oneTruck, &displays.Volume))
	}
	callTime(r, in)
}

// openVolume returns the volume still open, in m³. The first stretch is a step of
// the worked example.
func openVolume(r *calc.Recorder, in calc.Case) (volume float64) {
	if typed(in) {
		return in.Num("open")
	}
	for i, w := range in.Rows("walls") {
		compute := placing.OpenWallFormula.Value
		if i == 0 {
			compute = func(si ...float64) float64 { return r.Use(placing.OpenWallFormula, si...) }
		}
		volume += compute(w.Num("length"), w.Num("core"), w.Num("height"))
	}
	return volume
}

// drums returns the volumes, in m³, that are known by tickets and that are
// guessed.
func drums(in calc.Case) (fullLoads, guessed float64) {
	for _, d := range in.Rows("drums") {
		if d.Choice("how") == full {
			fullLoads += d.Num("volume")
		} else {
			guessed += d.Num("volume")
		}
	}
	return fullLoads, guessed
}

// lastOrder returns the order for what is missing, in m³, rounded up in the unit
// that the plant sells in; 0 if nothing is missing. It asks for the plant's least
// load if that is not known.
func lastOrder(r *calc.Recorder, in calc.Case, missing float64) float64 {
	if missing == 0 {
		return 0
	}
	f, suffix := placing.LastOrderYardsFormula, "-yd"
	if geometry.SoldInM(in) {
		f, suffix = placing.LastOrderMetersFormula, "-m"
	}
	least := in.Num("least" + suffix)
	order := r.Use(f, missing, least, in.Num("step"+suffix))
	if !in.Has("least" + suffix) {
		r.Note(calc.LevelAsk, calc.At("least"+suffix), askLeast)
	}
	if calc.Over(least, missing) {
		r.Note(calc.LevelNotice, calc.At("least"+suffix), noteLeast,
			calc.Amount("over", order-missing, &displays.Volume))
	}
	return order
}

// callTime sets the time to call, the plant's cut-off included, and the verdict.
// It asks for the times that are not known; without a time needed and a lead it
// sets no time.
func callTime(r *calc.Recorder, in calc.Case) {
	r.PutChoice("verdict", ask)
	for _, q := range []struct {
		field string
		text  calc.Text
	}{{"needed", askNeeded}, {"lead", askLead}, {"cut-off", askCutOff}} {
		if !in.Has(q.field) {
			r.Note(calc.LevelAsk, calc.At(q.field), q.text)
		}
	}
	if !in.Has("needed") || !in.Has("lead") {
		return
	}
	needed := in.Num("needed")
	by := placing.WholeMinute(r.Use(placing.CallByFormula, needed, in.Num("lead")))
	latest := by
	cutOff := nearest(in.Num("cut-off"), needed)
	if in.Has("cut-off") && cutOff < by {
		latest = cutOff
		r.Note(calc.LevelNotice, calc.At("cut-off"), noteCutOff, calc.WordSlot("time", calc.FormatClock(cutOff)))
	}
	r.Put("call-by", latest)
	if latest < 0 {
		r.Note(calc.LevelNotice, calc.At("needed"), noteDay)
	}
	if in.Has("cut-off") {
		r.PutChoice("verdict", call)
	}
	if !in.Has("now") {
		return
	}
	now := nearest(in.Num("now"), needed)
	if now > by {
		r.PutChoice("verdict", late)
		r.Note(calc.LevelCaution, calc.At("now"), noteLate, calc.Amount("late", now-by, &displays.Minutes))
	}
	if in.Has("cut-off") && now > cutOff {
		r.PutChoice("verdict", late)
		r.Note(calc.LevelCaution, calc.At("cut-off"), noteClosed)
	}
}

// day and halfDay are in s.
const (
	day     = 24 * 3600
	halfDay = day / 2
)

// nearest returns a time of day, in s, shifted by a day if needed so that it is
// within half a day of another: before a pour past midnight, 23:00 is on the day
// before.
func nearest(clock, other float64) float64 {
	switch {
	case clock-other > halfDay:
		return clock - day
	case other-clock > halfDay:
		return clock + day
	}
	return clock
}
