package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// ourSet is the plan with our own estimate of the final set, where an earlier one is typed.
type ourSet struct {
	pressure pressure.PSF // as planned, without a wait that is to come
	waited   pressure.PSF // with the wait, and the pump rate, that the answer asks for; 0 if it asks for none
	slowed   bool         // the answer asks for a slower pump
	flips    bool         // a plan with the set that is typed is none with our estimate
	wait     float64      // min, the shortest wait with our estimate; 0 if that is not the matter
	rise     float64      // m/s, the highest rise in one go with our estimate; 0 if that is not the matter
}

// setInLifts returns the plan in lifts with our own estimate of the final set. A wait is
// compared with the wait it would be.
func (c *computation) setInLifts(deed string, run *liftsRun) (ours ourSet) {
	hours, _ := c.estimated()
	r := *run.round
	r.Set = pressure.FinalSet(hours, r.Temp)
	p := r.Pressure()
	ours.pressure = p.Pressure
	if deed == doWait || deed == doLess {
		p = r.At(run.wait).Pressure()
		ours.waited = p.Pressure
	}
	ours.flips = within(deed) && !c.fits(p)
	if deed == doSlow && run.slowed != nil {
		r = *run.slowed
		r.Set = pressure.FinalSet(hours, r.Temp)
		p = r.Pressure()
		ours.waited, ours.slowed, ours.flips = p.Pressure, true, !c.fits(p)
	}
	if wait, ok := r.LeastWait(c.fits); ours.flips && deed != doGo && deed != doUnguided && ok &&
		c.inTime(&r, run.window, wait) {
		ours.wait = wait
	}
	return ours
}

// setInOneGo returns the plan in one go with our own estimate of the final set.
func (c *computation) setInOneGo(deed string, run oneGoRun, place *pressure.Lifts) (ours ourSet) {
	hours, _ := c.estimated()
	w := *place
	w.Set = pressure.FinalSet(hours, w.Temp)
	ours.pressure = w.InOneGo(run.given.Rise).Pressure
	ours.flips = within(deed) && !c.covers(ours.pressure)
	if deed == doSlow {
		highest, reach := w.HighestInOneGo(c.rating)
		if reach != pressure.AnyRise && highest < run.highest {
			ours.flips, ours.rise = true, ftPerH(highest)
		}
	}
	return ours
}

// putWritten replaces the deed of a plan that holds only with the set that is typed, and
// returns the deed. A plan that asks for another wait is returned as it was, for its notes.
func (c *computation) putWritten(deed string, ours ourSet) string {
	if _, earlier := c.estimated(); !earlier || !ours.flips || !within(deed) {
		return deed
	}
	c.PutChoice("deed", doWritten)
	if deed == doWait || deed == doLess {
		return deed
	}
	return doWritten
}

// within reports whether a deed is a plan that the rating carries, with a wait or without.
func within(deed string) bool {
	return deed == doGo || deed == doUnguided || deed == doWait || deed == doLess
}

// addSet asks for the setting time that only the plant knows. A set that is typed and
// earlier than our estimate counts only as the plant's figure in writing: the answer shows
// the pressure by our estimate beside it, and whether the plan holds by that figure alone.
func (c *computation) addSet(ours ourSet) {
	if !c.in.Has("set") {
		c.ask("set", askSet)
		return
	}
	hours, earlier := c.estimated()
	if !earlier {
		return
	}
	c.PutChoice("set-typed", pick(ours.flips, setDecides, setEarly))
	c.Put("pressure-estimate", pressure.SI(ours.pressure))
	if ours.waited > 0 && !ours.slowed {
		c.Put("estimate-wait", pressure.SI(ours.waited))
	}
	c.care("set", noteEarlySet, calc.Amount("typed", c.in.Num("set"), &displays.Hours),
		calc.Amount("estimate", calc.SI(hours, "h"), displayLatestSet))
	switch {
	case ours.flips && ours.wait > 0:
		c.care("set", noteSetWait, amountOf(ours.waited), minutes("wait", ours.wait/60))
	case ours.rise > 0:
		c.care("set", noteSetSlow, calc.Amount("rise", ours.rise, &displays.RiseAtMost))
	case ours.flips:
		c.care("set", noteSetFlips, amountOf(ours.pressure), c.ratingOf())
	}
}

// addPause tells what a wait after each pass is to the crew: a planned pause, or a stop
// where it is longer than the house rule allows a pause to be.
func (c *computation) addPause(deed string, run *liftsRun) {
	if !c.in.Has("pause-most") {
		return
	}
	wait := c.in.Num("wait")
	if deed == doWait {
		wait = max(wait, calc.SI(run.wait, "min"))
	}
	switch most := c.held("pause-most"); {
	case calc.Over(wait, most):
		c.care("wait", noteLongPause, calc.Amount("most", most, &displays.MinutesAtMost))
	case wait > 0:
		c.tell("wait", notePause)
	}
}

// addHeads tells where the pump is faster than the heads of a usual crew in concrete without air.
func (c *computation) addHeads() {
	most := c.headsFlow(consolidation.RestPlain)
	if calc.Over(c.in.Num("pump-rate"), most) {
		c.care("pump-rate", noteHeads, calc.Amount("rate", c.in.Num("pump-rate"), &displays.PumpRate),
			calc.Amount("most", most, &displays.PumpRateAtMost),
			calc.Amount("air", c.headsFlow(consolidation.RestAir), &displays.PumpRateAtMost))
	}
}

// Notes on the setting time.
const (
	noteEarlySet = calc.Text(
		"The final set you typed, {typed}, is earlier than our estimate of {estimate} at 70 °F (21 °C). It counts " +
			"only as the plant's own figure for this mix. Have it in writing before the first truck.",
	)
	noteSetFlips = calc.Text(
		"By our estimate of the set the form carries {pressure}, and it is rated for {rating}. The plan holds only " +
			"with the plant's figure. Without it in writing, do not place this way.",
	)
	noteSetSlow = calc.Text(
		"By our estimate of the set the rise is {rise} at most. Without the plant's figure in writing, slow the pump " +
			"to that.",
	)
	noteSetWait = calc.Text(
		"By our estimate of the set the form carries {pressure} even with that wait, over its rating. Without the " +
			"plant's figure in writing, wait {wait} after each pass.",
	)
)
