package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/pressure"
)

// longWait is the wait, in minutes, above which trucks cannot hold and a slower
// pump or fewer trucks are the answer. It is our own limit.
const longWait = 30

// fits reports whether the form holds a pressure in lifts, by its rating and by the
// rise of the form maker's guide.
func (c *computation) fits(p pressure.LiftPressure) bool {
	return c.covers(p.Pressure) && !c.overGuideRate(p.Rise)
}

// liftsDeed is what to do, tried in this order: as planned; a wait after each pass;
// another mix; a lower wall today. A lower wall does not help where a pass takes
// longer than the concrete stays open.
func (c *computation) liftsDeed(run *liftsRun) string {
	c.Put("back-by", calc.SI(max(run.window, 0), "h"))
	if !c.rated || c.isOutside() || c.isBelow() {
		return unchecked // no wait is proved
	}
	run.wait, run.found = run.round.LeastWait(c.fits)
	typed := c.inUnit("wait", "min")
	if !run.found && c.fits(run.given) { // a typed wait beyond those that a plan asks for
		run.wait, run.found = typed, true
	}
	wait := max(run.wait, typed)
	if run.found {
		c.Put("not-before", calc.SI(run.round.At(run.wait).Between(), "h"))
	}
	switch {
	case run.found && c.inTime(run, wait):
		if !calc.Over(run.wait, typed) {
			return doGo
		}
		c.Put("wait", calc.SI(run.wait, "min"))
		return doWait
	case c.putMix(run):
		return doMix
	case !c.inTime(run, 0):
		return doShorten
	}
	return doStop
}

// inTime reports whether the crew with that wait in minutes is back before the
// concrete sets.
func (c *computation) inTime(run *liftsRun, wait float64) bool {
	return !calc.Over(run.round.At(wait).Between(), run.window)
}

// slower is the pump rate in m³/s that needs no wait, or 0.
func (c *computation) slower(run *liftsRun) float64 {
	rate := c.in.Num("pump-rate") * run.round.Pumped / (run.round.Hours + run.wait/60)
	if run.wait <= longWait || !runs(rate) {
		return 0
	}
	return rate
}

// putMix sets another mix with which the form holds: without what slows the set,
// warmer, or both. The one with the shortest wait counts. Its setting time is the
// estimate for the mix. It returns false if there is none.
func (c *computation) putMix(run *liftsRun) bool {
	for _, id := range []string{mixFree, mixWarm, mixBoth} {
		r, ok := c.another(run.round, id)
		if !ok {
			continue
		}
		wait, ok := r.LeastWait(c.fits)
		window := pressure.EarliestSet(c.early(), r.Temp) - c.inUnit("age", "h")
		if !ok || calc.Over(r.At(wait).Between(), window) || run.mixed > 0 && wait >= run.mixWait {
			continue
		}
		run.mixed, run.mixWait = r.At(wait).Pressure().Pressure, wait
		c.PutChoice("mix", id)
	}
	return run.mixed > 0
}

// another is the round with another mix. ok is false if the mix is that already.
func (c *computation) another(given *pressure.Round, id string) (_ *pressure.Round, ok bool) {
	r := *given
	set := c.set()
	if id != mixWarm {
		if !r.Retarded {
			return nil, false
		}
		r.Retarded = false
		r.Cc = pressure.ChemistryCoefficient(r.Cement, false)
		set = pressure.EstimatedSet(r.Cement, false)
	}
	if id != mixFree {
		if r.Temp >= pressure.SetAt {
			return nil, false
		}
		r.Temp = pressure.SetAt
	}
	r.Set = pressure.FinalSet(set, r.Temp)
	return &r, true
}

// plainPressure is the pressure in lifts with plain cement and nothing that slows
// the set, as planned otherwise.
func (c *computation) plainPressure(given *pressure.Round) pressure.PSF {
	r := *given
	r.Cement, r.Retarded = pressure.Plain, false
	r.Cc = pressure.ChemistryCoefficient(r.Cement, false)
	if !c.in.Has("set") {
		r.Set = pressure.FinalSet(pressure.EstimatedSet(r.Cement, false), r.Temp)
	}
	return r.Pressure().Pressure
}
