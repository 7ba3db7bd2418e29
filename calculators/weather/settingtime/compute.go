package settingtime

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/weather"
)

const (
	refuseOrder = calc.Text("The final set must come after the initial set, {initial}.")
	noteCold    = calc.Text(
		"Below 50 °F (10 °C) setting is slow and uncertain. Form pressure stays high for hours longer.",
	)
	noteHot = calc.Text(
		"Above 90 °F (32 °C) mixes set faster than any estimate. Have the next lift at hand before you start one.",
	)
	noteJoint = calc.Text(
		"The last lift is near or past its initial set. Test it. Where the vibrator does not sink, a cold joint is " +
			"there: tell the engineer.",
	)
	noteWindow = calc.Text(
		"The set is not the time for the next lift. That comes within {window} of batching: {left} left. Sooner if " +
			"the plant gives less.",
	)
	noteOver = calc.Text(
		"The joint window of {window} is over. Put no lift on it: it is a planned joint now. Call the engineer.",
	)
	noteSoon  = calc.Text("Place the next lift now, and run the vibrator 6 in. (150 mm) into the last one.")
	noteEarly = calc.Text(
		"The final set you typed is earlier than our usual one, {usual} for this concrete. Have the plant's figure " +
			"in writing. A set that comes later presses the form harder.",
	)
	ofInitial = calc.Text("Initial set")
	ofFinal   = calc.Text("Final set")
)

// compute sets the setting times by each method. It refuses a final set that is
// not after the initial one.
func compute(r *calc.Recorder, in calc.Case) {
	initial, final := in.Num("initial"), in.Num("final")
	t, ref, q := in.Num("concrete"), in.Num("reference"), in.Num("q")
	if final <= initial {
		r.Refuse(calc.At("final"), refuseOrder, calc.Amount("initial", initial, &displays.HalfHoursAtMost))
		return
	}
	set := r.UseFor(ofInitial, nil, weather.SetArrheniusFormula, initial, q, t, ref)
	rule := r.UseFor(ofInitial, nil, weather.SetDoublingFormula, initial, t, ref)
	low := weather.SetArrheniusFormula.Value(initial, weather.LeastQ, t, ref)
	high := weather.SetArrheniusFormula.Value(initial, weather.MostQ, t, ref)
	r.Put("initial-set", set)
	last := r.UseFor(ofFinal, nil, weather.SetArrheniusFormula, final, q, t, ref)
	r.Put("final-set", last)
	r.Put("rule-set", rule)
	bound, _, _ := weather.EarliestSet(initial, t, ref)
	// As the reader sees it: what is left is counted from the time that is shown.
	const half = 1800
	earliest := half * math.Floor(min(set, bound)/half+calc.Slack)
	r.Put("earliest", earliest)
	r.Put("latest", max(set, rule, low, high))
	f := calc.From(t, "°F")
	noteUsual(r, f, last)
	if hours, ok := byTable(f); ok {
		r.Put("by-table", calc.SI(hours, "h"))
	}
	switch {
	case f < 50-calc.Slack:
		r.Note(calc.LevelNotice, calc.At("concrete"), noteCold)
	case f > 90+calc.Slack:
		r.Note(calc.LevelNotice, calc.At("concrete"), noteHot)
	}
	if !in.Has("age") {
		return
	}
	r.Put("left", math.Max(0, earliest-in.Num("age")))
	noteNextLift(r, in, earliest)
}

// noteUsual notes a final set, in s at t in °F, that is earlier than the one that form-pressure
// counts where the plant gives none.
func noteUsual(r *calc.Recorder, t, final float64) {
	if usual, later := weather.LatestFinal(calc.From(final, "h"), t); later && calc.Over(usual, calc.From(final, "h")) {
		r.Note(calc.LevelCaution, calc.At("final"), noteEarly, calc.Amount("usual", calc.SI(usual, "h"), &showLatest))
	}
}

// noteNextLift notes when the next lift goes on: within the joint window, and while the
// last lift has not set. earliest is its earliest initial set in s. Without a window only
// the set is judged.
func noteNextLift(r *calc.Recorder, in calc.Case, earliest float64) {
	age, window := in.Num("age"), math.Inf(1)
	if in.Has("window") {
		window = weather.JointWindow(in, "window")
	}
	shown := calc.Amount("window", window, &displays.MinutesAtMost)
	switch {
	case !calc.Under(age, earliest):
		r.Note(calc.LevelNotice, calc.At("age"), noteJoint)
	case !calc.Under(age, window):
		r.Note(calc.LevelWarning, calc.At("age"), noteOver, shown)
	case age > earliest/2:
		r.Note(calc.LevelNotice, calc.At("age"), noteSoon)
	case in.Has("window"):
		r.Note(calc.LevelNotice, calc.At("age"), noteWindow, shown,
			calc.Amount("left", window-age, &displays.MinutesAtMost))
	}
}
