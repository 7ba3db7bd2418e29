package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/pressure"
	"coursebook/calculators/weather"
)

// liftsRun is a wall placed in lifts: its schedule, the pressure as planned, and the
// limits of the time from pass to pass.
type liftsRun struct {
	round  *pressure.Round
	given  pressure.LiftPressure
	window float64 // h, longest time between passes at one place, for the joint
	wait   float64 // min, shortest wait that the form allows
	found  bool    // there is such a wait
	// mixed is the pressure with another mix and a wait of mixWait minutes; 0 if none helps.
	mixed   pressure.PSF
	mixWait float64
}

// computeLifts computes the pressure of a wall placed in lifts.
func (c *computation) computeLifts() {
	run := &liftsRun{}
	run.round = c.round()
	set := c.set()
	run.round.Set = pressure.FinalSet(set, c.pour.Temp)
	if c.pour.Temp != pressure.SetAt {
		c.UseFor(ofSet, nil, weather.SetArrheniusFormula, calc.SI(set, "h"), pressure.Heat, c.in.Num("temperature"),
			calc.SI(float64(pressure.SetAt), "°F"))
	}
	c.Put("set-used", calc.SI(run.round.Set, "h"))
	run.given = run.round.Pressure()
	run.window = pressure.EarliestSet(c.early(), c.pour.Temp) - c.inUnit("age", "h")
	c.putLifts(run)
	c.putGuide(run.given.Rise, c.in.Num("lift"))
	deed := c.putDeed(c.liftsDeed(run), c.overGuideLift(c.in.Num("lift")))
	c.addLiftsNotes(deed, run)
}

// round returns the schedule of the typed inputs, never nil. A typed time of one pass
// that is longer than the pump needs is asked about and not used.
func (c *computation) round() *pressure.Round {
	area := c.in.Num("length") * c.in.Num("thickness")
	volume := area * c.in.Num("lift")
	pumped := calc.From(volume/c.in.Num("pump-rate"), "h")
	r := &pressure.Round{
		Lifts: pressure.Lifts{Pour: c.pour, Cement: c.cement(), Retarded: c.retards(), Cause: c.cause()},
		Lift:  pressure.Feet(c.inUnit("lift", "ft")),
		Hours: pumped, Pumped: pumped,
		Wait:  c.inUnit("wait", "h"),
		Back:  c.in.Choice("how") == back,
		Typed: pressure.FtPerHour(c.inUnit("rise", "ft/h")),
	}
	r.Reach = c.reach(r.Lift)
	if c.in.Has("round") {
		typed := c.inUnit("round", "h")
		c.askRound(typed, pumped)
		r.Hours = min(typed, pumped)
	}
	c.askRise(calc.SI(float64(r.Lift)/(pumped+r.Wait), "ft/h"))
	return r
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

// set is the final set in hours at pressure.SetAt: the plant's, or our estimate.
func (c *computation) set() float64 {
	if c.in.Has("set") {
		return c.inUnit("set", "h")
	}
	return pressure.EstimatedSet(c.cement(), c.retards())
}

// early is the final set in hours that the setting window counts from. An unknown
// mix counts as one that sets early.
func (c *computation) early() float64 {
	if c.in.Has("set") {
		return c.inUnit("set", "h")
	}
	cement, retarded := c.cement(), c.in.Choice("admixture") == pressure.AdmixRetards
	if cement == pressure.Unknown {
		cement = pressure.Plain
	}
	return pressure.EstimatedSet(cement, retarded)
}

// putLifts sets the pressure as planned, its parts and its steps.
func (c *computation) putLifts(run *liftsRun) {
	given := run.given
	c.UseFor(ofPlace, nil, pressure.LiftRiseFormula, c.in.Num("lift"), calc.SI(run.round.Hours+run.round.Wait, "h"))
	head := c.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, c.in.Num("weight"), c.in.Num("height"))
	if given.Cause == pressure.NoCause {
		c.Use(pressure.InLiftsFormula, pressure.SI(given.Strictest()), pressure.SI(given.HalfLift),
			pressure.SI(given.Landed), head)
	}
	c.putPressure(given.Pressure, given.Rise, c.liftsRule(given))
	c.Put("landed", pressure.SI(given.Landed))
	c.PutRows("methods", []calc.Case{c.method(byACI, given.ACI, given.HalfLift),
		c.method(byCIRIA, given.CIRIA, given.HalfLift), c.method(byDIN, given.DIN, given.HalfLift)})
}

// method is the row of one method: its pressure, and that with half a lift.
func (c *computation) method(id string, p, half pressure.PSF) calc.Case {
	return c.NewRow("methods").With("method", calc.ChoiceOf(id)).With("pressure", calc.Num(pressure.SI(p))).
		With("lift", calc.Num(pressure.SI(min(p+half, c.pour.Head()))))
}

// liftsRule is what sets the pressure in lifts.
func (c *computation) liftsRule(p pressure.LiftPressure) string {
	switch {
	case p.Pressure >= c.pour.Head():
		return string(pressure.Fluid)
	case p.Landed >= p.Strictest()+p.HalfLift:
		return byLanded
	case p.ACI >= p.Strictest():
		return byACI
	case p.CIRIA >= p.Strictest():
		return byCIRIA
	}
	return byDIN
}
