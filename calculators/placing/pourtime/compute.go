package pourtime

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
)

const (
	noteClock    = calc.Text("First concrete at {first}, last at {last}, clean and done at {finish}.")
	noteOverrun  = calc.Text("Done at {finish}, after {before}. Start by {latest}, or place less today.")
	noteMidnight = calc.Text("The pour runs past midnight. Split it at a planned joint.")
	noteDayPrior = calc.Text("The latest start falls on the day before. The pour does not fit into one day.")
	noteLong     = calc.Text("Over {limit} on site. Tired people get hurt: plan relief, or split the pour.")
	askSetUp     = calc.Text("The set-up of {time} is assumed. How long does your own crew take?")
	noteSmooth   = calc.Text("Hardly a pour runs over 90% of the time. Is that what your own jobs show?")
)

const day = 24 * 3600 // s

// usualSetUp is the set-up that the calculator opens on, in s. It is our own example.
const usualSetUp = 45 * 60

// longDay is the time on site above which fatigue is noted, in s.
const longDay = 10 * 3600

// compute sets the times of the pour. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	setUp, start := in.Num("set-up"), in.Num("start")
	if calc.Under(math.Abs(setUp-usualSetUp), 1) {
		r.Note(calc.LevelAsk, calc.At("set-up"), askSetUp, calc.Amount("time", setUp, &displays.Minutes))
	}
	pumping := r.Use(placing.PumpingFormula, in.Num("volume"), in.Num("rate"), in.Num("moving"))
	total := r.Use(placing.ShiftFormula, setUp, pumping, in.Num("clean-up"))
	r.Put("pumping", pumping)
	r.Put("total", total)
	r.Put("booked", r.Use(placing.WholeHoursFormula, total))
	r.Put("crew-hours", r.Use(placing.CrewHoursFormula, in.Num("crew"), total))
	r.Put("standing", pumping-float64(pumping*in.Num("moving")))
	finish := r.Use(placing.FinishFormula, start, total)
	first := start + setUp
	rows := []calc.Case{
		moment(r, "start", start),
		moment(r, "first", first),
		moment(r, "last", first+pumping),
		moment(r, "finish", finish),
	}
	r.Note(
		calc.LevelNotice,
		calc.At("start"),
		noteClock,
		calc.WordSlot("first", clock(first)),
		calc.WordSlot("last", clock(first+pumping)),
		calc.WordSlot("finish", clock(finish)),
	)
	if in.Has("before") {
		before := in.Num("before")
		if calc.Under(before, start) {
			before += day
		}
		latest := r.Use(placing.LatestStartFormula, before, total)
		rows = append(rows, moment(r, "latest", placing.WholeMinute(latest)))
		noteLatest(r, finish, before, latest)
	}
	r.PutRows("clock", rows)
	if calc.Over(finish, day) {
		r.Note(calc.LevelNotice, calc.At("start"), noteMidnight)
	}
	if calc.Over(total, longDay) {
		r.Note(calc.LevelCaution, calc.At("volume"), noteLong, calc.Amount("limit", longDay, &wholeHours))
	}
	if calc.Over(in.Num("moving"), 0.9) {
		r.Note(calc.LevelAsk, calc.At("moving"), noteSmooth)
	}
}

// noteLatest notes a finish after the time before, with the latest start, all in s
// after midnight, or that the start is on the day before.
func noteLatest(r *calc.Recorder, finish, before, latest float64) {
	switch {
	case latest < -calc.Slack:
		r.Note(calc.LevelNotice, calc.At("before"), noteDayPrior)
	case calc.Over(finish, before):
		r.Note(calc.LevelNotice, calc.At("before"), noteOverrun, calc.WordSlot("finish", clock(finish)),
			calc.WordSlot("before", clock(before)), calc.WordSlot("latest", clock(placing.WholeMinute(latest))))
	}
}

// clock returns a time in s as a time of day, rounded up to the minute.
func clock(s float64) string { return calc.FormatClock(upToMinute(s)) }

// upToMinute returns a time in s, rounded up to the minute.
func upToMinute(s float64) float64 { return math.Ceil(s/60-1e-6) * 60 }

// moment returns a row of the clock times: an event by its ID and its time, s in
// seconds after midnight, rounded up to the minute.
func moment(r *calc.Recorder, event string, s float64) calc.Case {
	return r.NewRow("clock").With("event", calc.ChoiceOf(event)).With("time", calc.Num(upToMinute(s)))
}
