package rateofrise

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/pressure"
	"coursebook/calculators/weather"
)

const (
	refuseStop = calc.Text("One stop cannot be longer than the pass, {length}.")
	noteFluid  = calc.Text(
		"At the hose the wall rises at {rise}. Above {limit} the form carries the full fluid head. Check it in Form " +
			"pressure.",
	)
	noteLiftFluid = calc.Text(
		"At the hose this lift fills at {rise}, over {limit}: it is fluid from top to bottom, {lift} deep. Check the " +
			"lift and the average rise in Form pressure.",
	)
	noteEnds = calc.Text(
		"There and back, the ends wait twice as long for the hose as one pass takes. Test the lift there first.",
	)
	noteFast = calc.Text(
		"Even the average rise is over {limit}, where the Army's manual stops, and over the house rule of {house}, " +
			"which counts. Slow the pump.",
	)
	noteHouse = calc.Text(
		"Even the average rise is over {limit}, the house rule. Wait after each pass or slow the pump. Form pressure " +
			"gives the wait.",
	)
	noteLate = calc.Text(
		"The hose is back {time} too late: a cold joint. Shorten the pass to {length}, ask for a faster pump or " +
			"fresher loads, or stop at a planned joint. A mix that sets later buys no minute.",
	)
	noteStale = calc.Text(
		"The window is over before this concrete is in the wall. Ask for fresher loads, or stop at a planned joint. " +
			"A mix that sets later buys no minute.",
	)
	noteTight = calc.Text("Only {time} to spare. One late truck makes a cold joint.")
	noteAlive = calc.Text(
		"Test before each new lift. A running vibrator head that sinks in by its own weight shows the lift below is " +
			"still soft.",
	)
	ofHose  = calc.Text("At the hose")
	ofLoop  = calc.Text("All walls")
	ofLift  = calc.Text("One lift, one pass")
	ofWhole = calc.Text("The whole height")
)

// The greatest rises without a note, in m/s: at the hose by the stricter edition of ACI 347,
// as in form pressure, on average by US Army EN5466.
const (
	mostLocal   = float64(pressure.MethodRiseSI) * 0.3048 / 3600
	mostAverage = 5 * 0.3048 / 3600 // 5 ft/h
)

// tightSpare is the time to spare below which a late truck is noted, in s.
const tightSpare = 15 * 60

// compute sets the rise, the times and the verdict on the next lift. It refuses a
// stop longer than the wall.
func compute(r *calc.Recorder, in calc.Case) {
	length, core, flow, share := in.Num("length"), in.Num("core"), in.Num("rate"), in.Num("moving")
	if calc.Over(in.Num("stop"), length) {
		r.Refuse(calc.At("stop"), refuseStop, calc.Amount("length", length, &displays.Height))
		return
	}
	height := in.Num("height")
	lift := math.Min(in.Num("lift"), height)
	local := r.UseFor(ofHose, nil, placing.RiseFormula, flow, in.Num("stop"), core)
	average := r.UseFor(ofLoop, nil, placing.RiseFormula, flow, length, core)
	lifts := r.Use(placing.LiftsFormula, height, lift)
	loop := r.UseFor(ofLift, nil, placing.LiftTimeFormula, length, core, lift, flow, share)
	r.Put("rise-local", local)
	r.Put("rise-average", average)
	r.Put("lifts", lifts)
	wait := 0.0
	if lifts > 1 {
		wait = in.Num("wait")
	}
	// The rise that counts has the planned waits and no other pauses, as in form pressure.
	held := lift / (placing.LiftTime(length, core, lift, flow, 1) + wait)
	r.Put("loop-time", loop+wait)
	r.Put("stop-time", placing.LiftTimeFormula.Value(in.Num("stop"), core, lift, flow, 1))
	r.Put("pour-time", r.UseFor(ofWhole, nil, placing.LiftTimeFormula, length, core, height, flow, share)+
		float64(wait*(lifts-1)))
	if in.Has("wanted") {
		r.Put("rate-average", r.UseFor(ofLoop, nil, placing.FlowFormula, in.Num("wanted"), length, core))
		r.Put("rate-stop", placing.FlowFormula.Value(in.Num("wanted"), in.Num("stop"), core))
	}
	noteHose(r, local, lift, lifts)
	fast := tooSteep(r, in, held)
	verdict := single
	if lifts > 1 {
		verdict = byAge(r, in, lift, loop, wait)
	}
	if fast && verdict != tooLate {
		verdict = tooFast
	}
	r.PutChoice("verdict", verdict)
}

// tooSteep reports whether a rise in m/s is over the house rule, or over the Army's where there
// is no rule, and notes it.
func tooSteep(r *calc.Recorder, in calc.Case, held float64) bool {
	most := mostAverage
	if house, ruled := in.HouseAmount("wanted"); ruled {
		most = math.Min(most, house)
	}
	switch {
	case calc.Over(held, mostAverage):
		r.Note(calc.LevelWarning, calc.At("rate"), noteFast,
			calc.Amount("limit", mostAverage, &displays.RiseAtMost), calc.Amount("house", most, &displays.RiseAtMost))
	case calc.Over(held, most):
		r.Note(calc.LevelCaution, calc.At("rate"), noteHouse, calc.Amount("limit", most, &displays.RiseAtMost))
	}
	return calc.Over(held, most)
}

// noteHose notes a rise at the hose above which concrete is fluid: over one lift,
// or over the whole height where that is placed in one lift.
func noteHose(r *calc.Recorder, local, lift, lifts float64) {
	if !calc.Over(local, mostLocal) {
		return
	}
	rise := calc.Amount("rise", local, &displays.Rise)
	limit := calc.Amount("limit", mostLocal, &displays.RiseAtMost)
	if lifts > 1 {
		r.Note(calc.LevelNotice, calc.At("stop"), noteLiftFluid, rise, limit,
			calc.Amount("lift", lift, &displays.Height))
		return
	}
	r.Note(calc.LevelWarning, calc.At("stop"), noteFluid, rise, limit)
}

// passes returns the number of passes, 1 or 2, after which the hose is back at
// each place.
func passes(in calc.Case) float64 {
	if in.Choice("way") == thereAndBack {
		return 2
	}
	return 1
}

// byAge sets the age of the lift below when the hose is back, and returns the
// verdict on the next lift by it, an ID of the output verdict. lift is in m; loop,
// the time of a pass, and the wait after it are in s.
func byAge(r *calc.Recorder, in calc.Case, lift, loop, wait float64) (verdict string) {
	age, window := in.Num("age"), weather.JointWindow(in, "window")
	back := r.Use(placing.AgeOnReturnFormula, age, passes(in), loop+wait)
	spare := window - back
	r.Put("return-age", back)
	r.Put("back-by", math.Max(window-age, 0))
	r.Put("spare", spare)
	longest := 0.0
	if open := window - float64(passes(in)*wait); open > age {
		longest = r.Use(placing.LongestLoopFormula, open, age, in.Num("rate"), in.Num("moving"), passes(in),
			in.Num("core"), lift)
	}
	r.Put("longest", longest)
	verdict = inTime
	switch {
	case window <= age:
		verdict = tooLate
		r.Note(calc.LevelNotice, calc.At("age"), noteStale)
	case calc.Over(back, window):
		verdict = tooLate
		r.Note(
			calc.LevelNotice,
			calc.At("length"),
			noteLate,
			calc.Amount("time", -spare, &placing.MinutesUp),
			calc.Amount("length", longest, &showLoop),
		)
	case spare < tightSpare:
		r.Note(
			calc.LevelNotice,
			calc.At("window"),
			noteTight,
			calc.Amount("time", math.Max(spare, 0), &displays.MinutesAtMost),
		)
	}
	if in.Choice("way") == thereAndBack {
		r.Note(calc.LevelNotice, calc.At("way"), noteEnds)
	}
	r.Note(calc.LevelNotice, calc.At("window"), noteAlive)
	return verdict
}
