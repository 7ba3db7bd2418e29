package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/weather"
)

// liftsRun is a wall placed in lifts: its schedule, the pressure as planned, and the
// limits of the time from pass to pass.
type liftsRun struct {
	round  *pressure.Round
	given  pressure.LiftPressure
	window float64 // h, longest time between passes at one place, for the joint
	wait   float64 // min, shortest wait that form and rise allow
	found  bool    // there is such a wait
	rises  bool    // no wait keeps the greatest rise
	byForm float64 // min, shortest wait by the rating alone
	byRise float64 // min, shortest wait by the greatest rise alone
	// mixed is the pressure with another mix and a wait of mixWait minutes; 0 if none helps.
	mixed   pressure.PSF
	mixWait float64
	warmer  bool // the other mix is warmer
	// slowed is the round with a slower pump and its wait, and slowRate its rate in m³/s; nil
	// if none helps or none is needed.
	slowed   *pressure.Round
	slowRate float64
	stops    bool // the wait is longer than a planned pause, and no slower pump makes it shorter
}

// computeLifts computes the pressure of a wall placed in lifts.
func (c *computation) computeLifts() {
	run := &liftsRun{}
	run.round = c.round()
	run.given = run.round.Pressure()
	run.window = c.window(c.early(), c.pour.Temp)
	c.putLifts(run)
	c.paceUnrated(run)
	c.putGuide(run.given.Rise, c.in.Num("lift"))
	deed := c.putDeed(c.liftsDeed(run), c.overGuideLift(c.in.Num("lift")))
	ours := c.setInLifts(deed, run)
	deed = c.putWritten(deed, ours)
	c.putHeadline(deed, run, ours)
	c.addLiftsNotes(deed, run, ours)
}

// window returns the time in h that is left for the next pass: to the earliest initial
// set of concrete with that final set in h at SetAt, or to the end of the joint window if
// that is earlier, both counted from the batch time of the oldest load.
func (c *computation) window(set float64, t pressure.Fahrenheit) float64 {
	open := pressure.EarliestSet(set, t)
	if c.in.Has("joint-most") {
		open = min(open, calc.From(weather.JointWindow(c.in, "joint-most"), "h"))
	}
	return open - c.inUnit("age", "h")
}

// round returns the schedule of the typed inputs, never nil. A typed time of one pass
// that is longer than the pump needs is asked about and not used.
func (c *computation) round() *pressure.Round {
	area := c.in.Num("length") * c.in.Num("thickness")
	volume := area * c.in.Num("lift")
	pumped := calc.From(volume/c.in.Num("pump-rate"), "h")
	r := &pressure.Round{
		Lifts: c.place(),
		Lift:  pressure.Feet(c.inUnit("lift", "ft")),
		Hours: pumped, Pumped: pumped,
		Wait:  c.inUnit("wait", "h"),
		Back:  c.in.Choice("how") == back,
		Typed: pressure.FtPerHour(c.inUnit("rise", "ft/h")),
	}
	r.Cause, r.Reach = c.cause(), c.reach(r.Lift)
	if c.in.Has("round") {
		typed := c.inUnit("round", "h")
		c.askRound(typed, pumped)
		r.Hours = min(typed, pumped)
	}
	c.askRise(calc.SI(float64(r.Lift)/(pumped+r.Wait), "ft/h"))
	return r
}

// putHeadline sets the deed with its amount: how long to wait, or where to end. A wait that
// is enough only with the set that is typed says so.
func (c *computation) putHeadline(deed string, run *liftsRun, ours ourSet) {
	wait := calc.Amount("wait", calc.SI(run.wait, "min"), displayWait)
	switch {
	case ours.flips && ours.wait > 0 && (deed == doWait || deed == doLess):
		c.Headline(headWaitSetOr, wait, minutes("longer", ours.wait/60))
	case deed == doWait || deed == doLess && ours.flips:
		c.Headline(pick(ours.flips, headWaitSet, pick(run.stops, headWaitStop, headWait)), wait)
	case deed == doSlow && run.slowed != nil:
		c.Headline(pick(run.slowed.Wait > 0, headSlowWait, headSlow), c.slowSlots(run)...)
	case deed == doStop:
		depth := min(ft(pressure.FluidDepth(c.rating, c.pour.Weight)), c.in.Num("height"))
		c.Headline(headStop, calc.Amount("depth", depth, &displays.HeightAtMost))
	}
}

// slowSlots are the pump rate that helps, its wait and its pressure.
func (c *computation) slowSlots(run *liftsRun) []calc.Slot {
	return []calc.Slot{calc.Amount("flow", run.slowRate, &displays.PumpRateAtMost), minutes("wait", run.slowed.Wait),
		amountOf(run.slowed.Pressure().Pressure)}
}

// reach is how deep the head goes into the old lift. Without a mark on the whip it
// is what the head can reach, and without that the whole height.
func (c *computation) reach(lift pressure.Feet) pressure.Feet {
	if c.in.Choice("vibration") != unmarked {
		return pressure.MarkedReach
	}
	if !c.in.Has("reach") {
		return c.pour.Height
	}
	return max(pressure.MarkedReach, pressure.Feet(c.inUnit("reach", "ft"))-lift)
}

// cause is why no equation applies, as seen on site.
func (c *computation) cause() pressure.Cause {
	switch {
	case c.isBelow():
		return pressure.FromBelow
	case c.in.Choice("vibration") == again:
		return pressure.Revibrated
	case c.in.Choice("vibration") == deep:
		return pressure.HeadTooDeep
	case c.isOutside():
		return pressure.OutsideTool
	}
	return pressure.NoCause
}

// set is the final set in hours at pressure.SetAt, the plant's or our estimate, and what it
// is taken from, an option of the output set-by.
func (c *computation) set() (hours float64, by string) {
	if c.in.Has("set") {
		return c.inUnit("set", "h"), setTyped
	}
	hours, usual := pressure.EstimatedSet(c.cement(), c.retards())
	return hours, pick(usual, setUsual, setMix)
}

// estimated is our own estimate of the final set in hours at pressure.SetAt, and whether a
// set is typed that is earlier.
func (c *computation) estimated() (hours float64, earlier bool) {
	hours, _ = pressure.EstimatedSet(c.cement(), c.retards())
	return hours, c.in.Has("set") && calc.Under(c.inUnit("set", "h"), hours)
}

// early is the final set in hours that the setting window counts from: the plant's, or
// the earliest of our estimates. A late estimate would let the joint set.
func (c *computation) early() float64 {
	if c.in.Has("set") {
		return c.inUnit("set", "h")
	}
	return pressure.EarliestFinal
}

// putLifts sets the pressure as planned, its parts and its steps.
func (c *computation) putLifts(run *liftsRun) {
	given := run.given
	c.UseFor(ofPlace, nil, pressure.LiftRiseFormula, c.in.Num("lift"), calc.SI(run.round.Hours+run.round.Wait, "h"))
	head := c.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, c.in.Num("weight"), c.in.Num("height"))
	if given.Cause == pressure.NoCause {
		r := run.round
		c.Use(pressure.LandedFormula, c.in.Num("weight"), c.in.Num("height"), ft(given.Passed),
			ft(min(r.Lift, r.Height)), ftPerH(given.Rise), calc.SI(pressure.StillFluid, "h"), ft(r.Reach))
		c.Use(pressure.InLiftsFormula, pressure.SI(given.Strictest()), pressure.SI(given.HalfLift),
			pressure.SI(given.Landed), head)
	}
	c.putPressure(given)
	c.Put("landed", pressure.SI(given.Landed))
}
