package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// longStop is the longest stop, in ft, that rises at once while the hose is there.
// It is our own limit.
const longStop = 15

// oneGoRun is a wall placed to its full height at each stop.
type oneGoRun struct {
	rise     pressure.FtPerHour
	pressure pressure.PSF
	rule     pressure.Rule
	stricter pressure.PSF // of both editions
	reach    pressure.Reach
	highest  pressure.FtPerHour
	flow     float64 // m³/s, highest pump rate over one stop
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
	run := oneGoRun{rise: pressure.FtPerHour(calc.From(local, "ft/h"))}
	run.pressure, run.rule = c.pour.Pressure(run.rise)
	run.stricter, _ = c.pour.Stricter(run.rise)
	c.stepsOneGo(run.rise)
	c.putPressure(run.pressure, run.rise, string(run.rule))
	c.Put("pressure-si", pressure.SI(run.stricter))
	mean, _ := c.pour.Pressure(pressure.FtPerHour(calc.From(average, "ft/h")))
	c.Put("pressure-average", pressure.SI(mean))
	c.Put("rise-average", average)
	c.putGuide(run.rise, c.in.Num("height"))
	beyond := c.overGuideRate(run.rise) || c.overGuideLift(c.in.Num("height"))
	deed := c.putDeed(c.oneGoDeed(&run), beyond)
	c.addOneGoNotes(deed, run, mean)
}

// stepsOneGo records the worked example: the fluid head, and the equation for the
// rise at the hose if one applies.
func (c *computation) stepsOneGo(rise pressure.FtPerHour) {
	head := c.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, c.in.Num("weight"), c.in.Num("height"))
	equation := pressure.WallSlowFormula
	switch c.pour.Equation(rise) {
	case pressure.Fast:
		equation = pressure.WallFastFormula
	case pressure.Fluid:
		return
	}
	p := c.UseFor(ofLocal, nil, equation, c.pour.Cw, c.pour.Cc, ftPerH(rise), calc.SI(float64(c.pour.Credit()), "°F"))
	c.UseFor(ofLocal, nil, pressure.BoundedFormula, p, pressure.SI(pressure.LeastPressure(c.pour.Cw)), head)
}

// oneGoDeed is what to do by pressure alone. It sets the highest rise of the run.
func (c *computation) oneGoDeed(run *oneGoRun) string {
	if !c.rated {
		return unchecked
	}
	run.highest, run.reach = c.pour.HighestRise(c.rating)
	byRise := run.reach == pressure.ByEquation || run.reach == pressure.ByMethod
	if byRise {
		run.flow = c.putHighest(run.highest, run.reach)
	}
	switch {
	case c.covers(run.stricter):
		return doGo
	case byRise && runs(run.flow):
		return doSlow
	case run.reach == pressure.FluidAnyway:
		return doStop
	}
	return doLifts
}

// putHighest sets the highest rise, and the pump rate over one stop if a pump runs
// that slowly. It returns the pump rate.
func (c *computation) putHighest(rise pressure.FtPerHour, reach pressure.Reach) float64 {
	inverse := pressure.RiseSlowFormula
	if c.pour.Equation(rise) == pressure.Fast {
		inverse = pressure.RiseFastFormula
	}
	if reach == pressure.ByEquation {
		c.UseFor(ofRating, nil, inverse, c.pour.Cw, c.pour.Cc, c.in.Num("rating"),
			calc.SI(float64(c.pour.Credit()), "°F"))
	}
	c.Put("highest-rise", ftPerH(rise))
	flow := pressure.FlowFormula.Value(ftPerH(rise), c.in.Num("stop"), c.in.Num("thickness"))
	if runs(flow) {
		c.Put("highest-flow", flow)
	}
	return flow
}

// askRise asks about a measured rise below the computed one, in m/s.
func (c *computation) askRise(computed float64) {
	if c.in.Has("rise") && calc.Under(c.in.Num("rise"), computed) {
		c.ask("rise", askRise, calc.Amount("computed", computed, &displays.Rise))
	}
}
