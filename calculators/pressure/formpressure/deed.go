package formpressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/pressure"
	"coursebook/calculators/weather"
)

// longWait is the wait, in minutes, above which trucks cannot hold and fewer trucks are
// the answer. It is our own limit.
const longWait = 30

// fits reports whether a pressure in lifts is within the rating of the form, and its
// rise within the greatest.
func (c *computation) fits(p pressure.LiftPressure) bool {
	return c.covers(p.Pressure) && !c.tooFast(p.Rise)
}

// findWait sets the shortest wait of a run, by the form, by the rise and by both.
func (c *computation) findWait(run *liftsRun) {
	var byForm, byRise bool
	run.byForm, byForm = run.round.LeastWait(func(p pressure.LiftPressure) bool { return c.covers(p.Pressure) })
	run.byRise, byRise = run.round.LeastWait(func(p pressure.LiftPressure) bool { return !c.tooFast(p.Rise) })
	if byForm {
		c.Put("wait-form", calc.SI(run.byForm, "min"))
	}
	if byRise {
		c.Put("wait-rise", calc.SI(run.byRise, "min"))
	}
	run.wait, run.found, run.rises = max(run.byForm, run.byRise), byForm && byRise, !byRise
	if !run.found && c.fits(run.given) { // a typed wait beyond those that a plan asks for
		run.wait, run.found = c.inUnit("wait", "min"), true
	}
}

// liftsDeed is what to do, tried in this order: as planned; a wait after each pass;
// a slower pump; a shorter wait than the one typed; another mix; a lower wall today.
// A lower wall does not help where a pass takes
// longer than the concrete stays open.
func (c *computation) liftsDeed(run *liftsRun) string {
	c.Put("back-by", calc.SI(max(run.window, 0), "h"))
	if run.window < pressure.EarliestSet(c.early(), c.pour.Temp)-c.inUnit("age", "h") {
		c.Note(calc.LevelNotice, calc.At("age"), noteJoint,
			calc.Amount("window", weather.JointWindow(c.in, "joint-most"), &displays.Minutes))
	}
	switch {
	case !c.planned():
		return unchecked // no wait is proved
	case c.overGuideLift(c.in.Num("lift")):
		return doGuide // a wait for this lift is none for the guide's
	}
	c.Put("highest-rise", ftPerH(run.round.HighestRise(c.most, c.fits)))
	c.findWait(run)
	wait := max(run.wait, c.inUnit("wait", "min"))
	if run.found {
		c.Put("not-before", calc.SI(run.round.At(run.wait).Between(), "h"))
	}
	switch {
	case run.found && c.inTime(run.round, run.window, run.wait):
		return c.paced(run, c.inTime(run.round, run.window, wait))
	case !run.found && run.rises && c.inTime(run.round, run.window, 0):
		return doSlow
	case c.putOther(run):
		return doMix
	case !c.inTime(run.round, run.window, 0):
		return doShorten
	}
	return doStop
}

// paced is what to do where the plan holds with run.wait. A pump that no usual crew's heads
// keep up with, and a wait longer than a planned pause, are no plan: the pump is slowed. Where
// no slower pump is back in time either, each such wait is a stop. inTime reports whether the
// crew is back in time with the wait that is typed.
func (c *computation) paced(run *liftsRun, inTime bool) string {
	typed := c.inUnit("wait", "min")
	heads := calc.From(c.headsFlow(consolidation.RestPlain), "yd³/h")
	flow := c.inUnit("pump-rate", "yd³/h")
	tooFast := calc.Over(c.in.Num("pump-rate"), c.headsFlow(consolidation.RestAir))
	stops := calc.Over(run.wait, c.longestPause())
	run.stops = stops && !tooFast
	if tooFast || stops {
		below := min(math.Floor(heads+calc.Slack), math.Ceil(flow-calc.Slack)-1)
		if c.slowDown(run, below, c.longestPause()) || tooFast && c.slowDown(run, below, pressure.MostWait) ||
			tooFast {
			if calc.Over(run.wait, typed) {
				c.Put("wait", calc.SI(run.wait, "min"))
			}
			return doSlow
		}
	}
	switch {
	case calc.Over(run.wait, typed) || run.stops:
		c.Put("wait", calc.SI(run.wait, "min"))
		return doWait
	case !inTime || calc.Over(typed, c.longestPause()):
		return doLess
	}
	return doGo
}

// headsFlow is the pump rate in m³/s that the heads of the largest usual crew keep up with at a
// time at rest in s. Whether the concrete has air is not asked: a rate that no crew keeps up with
// is over the one with air, and a rate that is offered is at most the one without.
func (c *computation) headsFlow(rest float64) float64 {
	return consolidation.CrewFlow(rest, c.in.Num("thickness"), c.in.Num("lift"), ft(pressure.MarkedReach))
}

// longestPause is the longest planned pause in minutes by the house rule; there is no limit
// without one.
func (c *computation) longestPause() float64 {
	if !c.in.Has("pause-most") {
		return math.Inf(1)
	}
	return calc.From(c.held("pause-most"), "min")
}

// slowDown sets the round of the fastest pump rate, in whole yd³/h from fastest down, whose
// wait is at most that in minutes and with which the crew is back in time. It returns false if
// there is none.
func (c *computation) slowDown(run *liftsRun, fastest, most float64) bool {
	for rate := fastest; rate >= calc.From(calc.SI(placing.LeastPump, "yd³/h"), "yd³/h"); rate-- {
		r := *run.round.At(0)
		longer := c.inUnit("pump-rate", "yd³/h") / rate
		r.Hours, r.Pumped = r.Hours*longer, r.Pumped*longer
		wait, ok := r.LeastWait(c.fits)
		if ok && !calc.Over(wait, most) && c.inTime(&r, run.window, wait) {
			run.slowed, run.slowRate = r.At(wait), calc.SI(rate, "yd³/h")
			return true
		}
	}
	return false
}

// inTime reports whether the crew with that wait in minutes is back within the window in h,
// with the usual pauses of the pump.
func (c *computation) inTime(r *pressure.Round, window, wait float64) bool {
	return !calc.Over(withPauses(r).At(wait).Between(), window)
}

// withPauses returns the round with the time of a pass that the usual pauses of the pump
// make longer. The pressure counts without them, because nobody can plan on a pause; the
// joint counts with them, as in rate of rise.
func withPauses(r *pressure.Round) *pressure.Round {
	longer := *r
	longer.Hours /= placing.UsualShare
	return &longer
}

// longestWait is the longest wait in whole minutes with which the crew is back before the
// concrete sets, and no longer than a planned pause.
func (c *computation) longestWait(run *liftsRun) float64 {
	longer := withPauses(run.round)
	passes := longer.At(0).Between() / longer.Hours
	return min(math.Floor((run.window/passes-longer.Hours)*60+calc.Slack), c.longestPause())
}

// mostWarmer is how much warmer than the coldest load another mix may be asked for, in
// °F. It is our own limit: cold foam and cold air cool warm concrete again.
const mostWarmer = 20

// putOther sets another mix that is within the rating: without what slows the set, warmer,
// or both. The first that helps counts. Its setting time is the estimate for the mix. It
// returns false if there is none.
func (c *computation) putOther(run *liftsRun) bool {
	for _, id := range []string{mixFree, mixBoth, mixWarm} {
		r, ok := c.another(run.round, id)
		if !ok {
			continue
		}
		wait, ok := r.LeastWait(c.fits)
		set := c.early()
		if id != mixWarm {
			set = min(set, pressure.EarliestFinal)
		}
		if !ok || calc.Over(withPauses(r).At(wait).Between(), c.window(set, r.Temp)) {
			continue
		}
		run.mixed, run.mixWait = r.At(wait).Pressure().Pressure, wait
		c.PutChoice("mix", id)
		if run.warmer = id != mixFree; run.warmer {
			c.Put("mix-temperature", calc.SI(float64(r.Temp), "°F"))
		}
		return true
	}
	return false
}

// another is the round with another mix. ok is false if the mix is that already.
func (c *computation) another(given *pressure.Round, id string) (_ *pressure.Round, ok bool) {
	r := *given
	set, _ := c.set()
	if id != mixWarm {
		if !r.Retarded {
			return nil, false
		}
		r.Retarded = false
		r.Cc = pressure.ChemistryCoefficient(r.Cement, false)
		free, _ := pressure.EstimatedSet(r.Cement, false)
		set = min(set, free) // what slows the set never makes it earlier
	}
	if id != mixFree {
		if r.Temp >= pressure.SetAt {
			return nil, false
		}
		r.Temp = min(pressure.SetAt, r.Temp+mostWarmer)
	}
	r.Set = pressure.FinalSet(set, r.Temp)
	return &r, true
}

// plainPressure is the pressure in lifts with plain cement and nothing that slows
// the set, as planned otherwise.
func (c *computation) plainPressure(given *pressure.Round) pressure.PSF {
	r := *given
	c.makePlain(&r.Lifts)
	return r.Pressure().Pressure
}

// makePlain makes the mix of a place plain cement with nothing that slows the set.
func (c *computation) makePlain(l *pressure.Lifts) {
	l.Cement, l.Retarded = pressure.Plain, false
	l.Cc = pressure.ChemistryCoefficient(l.Cement, false)
	if !c.in.Has("set") {
		set, _ := pressure.EstimatedSet(l.Cement, false)
		l.Set = pressure.FinalSet(set, l.Temp)
	}
}
