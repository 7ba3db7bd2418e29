package rateofrise

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
)

const (
	refuseStop = calc.Text("The hose cannot fill more than the loop: {length} at most.")
	noteFluid  = calc.Text(
		"At the hose the wall rises at {rise}. Above {limit} the form carries the full fluid head. Check it in Form " +
			"pressure.",
	)
	noteFast = calc.Text(
		"Even the average rise is over {limit}, where the Army's manual stops. Slow the pump unless the form maker " +
			"allows it.",
	)
	noteLate = calc.Text(
		"The hose is back {time} too late: a cold joint. Shorten the loop to {length}, have the plant retard the " +
			"mix, or stop at a planned joint.",
	)
	noteStale = calc.Text(
		"The window is over before this concrete is in the wall. Have the plant retard the mix, or stop at a planned " +
			"joint.",
	)
	noteTight = calc.Text("Only {time} to spare. One late truck makes a cold joint.")
	noteAlive = calc.Text(
		"Test before each new lift. A running vibrator head that sinks in by its own weight shows the lift below is " +
			"alive.",
	)
	ofHose  = calc.Text("Where the hose stands")
	ofLoop  = calc.Text("Whole loop")
	ofLift  = calc.Text("One lift, round the loop")
	ofWhole = calc.Text("The whole height")
)

// tightSpare is the time to spare below which a late truck is noted, in s.
const tightSpare = 15 * 60

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
	r.Put("loop-time", loop)
	r.Put("stop-time", placing.LiftTimeFormula.Value(in.Num("stop"), core, lift, flow, 1))
	r.Put("pour-time", r.UseFor(ofWhole, nil, placing.LiftTimeFormula, length, core, height, flow, share))
	if in.Has("wanted") {
		r.Put("rate-average", r.UseFor(ofLoop, nil, placing.FlowFormula, in.Num("wanted"), length, core))
		r.Put("rate-stop", placing.FlowFormula.Value(in.Num("wanted"), in.Num("stop"), core))
	}
	if limit := calc.SI(15, "ft/h"); calc.Over(local, limit) {
		r.Note(
			calc.LevelWarning,
			calc.At("stop"),
			noteFluid,
			calc.Amount("rise", local, &displays.Rise),
			calc.Amount("limit", limit, &displays.RiseAtMost),
		)
	}
	if limit := calc.SI(5, "ft/h"); calc.Over(average, limit) {
		r.Note(calc.LevelWarning, calc.At("rate"), noteFast, calc.Amount("limit", limit, &displays.RiseAtMost))
	}
	putVerdict(r, in, lift, lifts, loop)
}

// putVerdict puts the verdict on the next lift by the age of the one below it.
func putVerdict(r *calc.Recorder, in calc.Case, lift, lifts, loop float64) {
	if lifts <= 1 {
		r.PutChoice("verdict", single)
		return
	}
	age, window := in.Num("age"), in.Num("window")
	back := r.Use(placing.AgeOnReturnFormula, age, loop)
	spare := window - back
	r.Put("return-age", back)
	r.Put("spare", spare)
	longest := 0.0
	if window > age {
		longest = r.Use(placing.LongestLoopFormula, window, age, in.Num("rate"), in.Num("moving"), in.Num("core"), lift)
	}
	r.Put("longest", longest)
	r.PutChoice("verdict", inTime)
	switch {
	case window <= age:
		r.PutChoice("verdict", tooLate)
		r.Note(calc.LevelNotice, calc.At("age"), noteStale)
	case calc.Over(back, window):
		r.PutChoice("verdict", tooLate)
		r.Note(
			calc.LevelNotice,
			calc.At("length"),
			noteLate,
			calc.Amount("time", -spare, &placing.MinutesUp),
			calc.Amount("length", longest, &displays.HeightAtMost),
		)
	case spare < tightSpare:
		r.Note(
			calc.LevelNotice,
			calc.At("window"),
			noteTight,
			calc.Amount("time", math.Max(spare, 0), &displays.MinutesAtMost),
		)
	}
	r.Note(calc.LevelNotice, calc.At("window"), noteAlive)
}
