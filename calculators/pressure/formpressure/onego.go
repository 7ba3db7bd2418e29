package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// oneGoRun is a wall placed to its full height at each stop.
type oneGoRun struct {
	given   pressure.LiftPressure // at the hose
	reach   pressure.Reach
	highest pressure.FtPerHour // fastest rise at the hose, by the rating and over an hour
	flow    float64            // m³/s, highest pump rate over one stop
	fast    bool               // an hour adds more than the greatest rise
}

// computeOneGo computes the pressure of a wall placed in one go. The rise at the
// hose decides. A measured rise can raise it, never lower it.
func (c *computation) computeOneGo() {
	flow, core := c.in.Num("pump-rate"), c.in.Num("thickness")
	average := c.UseFor(ofAverage, nil, pressure.RiseFormula, flow, c.in.Num("length"), core)
	local := c.UseFor(ofLocal, nil, pressure.RiseFormula, flow, c.in.Num("stop"), core)
	c.askRise(local)
	local = max(local, c.in.Num("rise"))
	c.pour.Shaken = c.isBelow() || c.in.Choice("vibration") != marked || c.isOutside()
	place := c.place()
	rise := pressure.FtPerHour(calc.From(local, "ft/h"))
	run := oneGoRun{given: place.InOneGo(rise)}
	// In one go no hour adds more than the height placed.
	run.fast = c.tooFast(min(rise, pressure.FtPerHour(float64(c.pour.Height)/pressure.WholeHour)))
	us, rule := c.pour.Pressure(rise)
	c.Put("pressure-us", pressure.SI(us))
	c.PutChoice("equation", string(rule))
	c.stepsOneGo(run.given)
	c.putPressure(run.given)
	c.Put("rise-average", average)
	c.putGuide(rise, c.in.Num("height"))
	beyond := c.overGuideRate(rise) || c.overGuideLift(c.in.Num("height"))
	deed := c.putDeed(c.oneGoDeed(&run, &place), beyond)
	ours := c.setInOneGo(deed, run, &place)
	c.addOneGoNotes(c.putWritten(deed, ours), run, &place, ours)
}

// stepsOneGo records the worked example: the fluid head, the equation for the rise at
// the hose if one applies, and the strictest method.
func (c *computation) stepsOneGo(given pressure.LiftPressure) {
	head := c.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, c.in.Num("weight"), c.in.Num("height"))
	pour := c.pour // of the stricter edition
	us, _ := pour.Pressure(given.Rise)
	pour.SI = given.ACI > us
	equation := pressure.WallSlowFormula
	switch pour.Equation(given.Rise) {
	case pressure.Fast:
		equation = pressure.WallFastFormula
	case pressure.Fluid:
		return
	}
	p := c.UseFor(ofLocal, nil, equation, c.pour.Cw, c.pour.Cc, ftPerH(given.Rise),
		calc.SI(float64(c.pour.Credit()), "°F"))
	least := c.Use(pressure.LeastPressureFormula, c.pour.Cw)
	c.Use(pressure.StrictestFormula, p, least, pressure.SI(given.CIRIA), pressure.SI(given.DIN), head)
}

// oneGoDeed is what to do by pressure and rise alone. It sets the highest rise of the
// run.
func (c *computation) oneGoDeed(run *oneGoRun, place *pressure.Lifts) string {
	if !c.planned() {
		return unchecked
	}
	run.highest, run.reach = place.HighestInOneGo(c.rating)
	ruled := c.tooFast(pressure.FtPerHour(float64(c.pour.Height) / pressure.WholeHour))
	if run.fast && run.reach == pressure.AnyRise || ruled && run.highest > c.most {
		run.highest = c.most
	}
	if run.reach != pressure.AnyRise {
		c.Put("highest-rise", ftPerH(run.highest)) // 0 if no rise is slow enough
	}
	if run.highest > 0 {
		run.flow = pressure.FlowFormula.Value(ftPerH(run.highest), c.in.Num("stop"), c.in.Num("thickness"))
		if runs(run.flow) {
			c.Put("highest-flow", run.flow)
		}
	}
	switch {
	case c.covers(run.given.Pressure) && !run.fast:
		return doGo
	case runs(run.flow):
		return doSlow
	case run.reach == pressure.FluidAnyway:
		return doStop
	}
	return doLifts
}

// askRise asks about a measured rise below the computed one, in m/s.
func (c *computation) askRise(computed float64) {
	if c.in.Has("rise") && calc.Under(c.in.Num("rise"), computed) {
		c.ask("rise", askRise, calc.Amount("computed", computed, &displays.Rise))
	}
}
