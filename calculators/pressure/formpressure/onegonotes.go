package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/pressure"
)

// addOneGoNotes explains the answer for a wall placed in one go.
func (c *computation) addOneGoNotes(deed string, run oneGoRun, place *pressure.Lifts, ours ourSet) {
	c.addAsk()
	if deed == doGo || deed == doUnguided {
		c.tell("rating", noteGo, c.ratingOf(), amountOf(run.given.Pressure))
	}
	c.addFails(deed, run.given.Pressure)
	if c.planned() {
		if run.fast {
			c.warn("rise-house", noteFast, limitRise(c.most), c.whose())
		}
		c.addOneGoHelp(deed, run)
	} else if run.fast && (!c.working || len(c.looser) > 0) {
		c.care("rise-house", noteFast, limitRise(c.most), c.whose())
	}
	c.addOneGoCauses(run)
	c.addNear(run.given.Pressure)
	c.addClass(run.given)
	plain := *place
	c.makePlain(&plain)
	c.addPlain(plain.InOneGo(run.given.Rise).Pressure)
	c.addSet(ours)
	if run.reach == pressure.AnyRise && c.covers(run.given.Pressure) {
		c.tell("rating", noteAny)
	}
}

// helps are the texts that name what helps where no pump rate does.
var helps = []struct {
	reach pressure.Reach
	field string
	text  calc.Text
}{
	{pressure.FluidAnyway, "rating", helpFluid},
	{pressure.NoRise, "rating", helpNone},
	{pressure.AnyRise, "how", helpLifts},
	{pressure.ByRise, "how", helpLifts},
}

// addOneGoHelp names the remedies.
func (c *computation) addOneGoHelp(deed string, run oneGoRun) {
	for _, x := range helps {
		if x.reach == run.reach && (deed == doLifts || deed == doStop) {
			c.tell(x.field, x.text, calc.Amount("least", calc.SI(placing.LeastPump, "yd³/h"), &displays.PumpRate))
		}
	}
	if deed == doSlow {
		c.tell("pump-rate", helpSlow, calc.Amount("rise", ftPerH(run.highest), &displays.RiseAtMost),
			calc.Amount("flow", run.flow, &displays.PumpRateAtMost))
	}
	if deed == doStop {
		c.addStop(calc.LevelWarning, helpDepth, ftPerH(c.most)*calc.SI(pressure.WholeHour, "h"))
	}
}

// addOneGoCauses notes why the fluid head applies.
func (c *computation) addOneGoCauses(run oneGoRun) {
	cause := pressure.NoCause
	switch {
	case c.pour.Shaken:
		c.tell("vibration", noteShaken, limitDeep())
	case calc.Over(float64(run.given.Rise), float64(pressure.MethodRiseSI)):
		cause = pressure.RisesTooFast
	}
	c.addCause(calc.LevelNotice, cause, run.given.Rise, pressure.MethodRiseSI)
}

// Notes of a wall placed in one go.
const (
	noteRapid = calc.Text(
		"The concrete rises at {rise}. Above {limit} the form carries the full fluid head.",
	)
	noteShaken = calc.Text(
		"Placed from below, or shaken deeper than {deepest}, again or from outside: the full fluid head counts over " +
			"the whole height.",
	)
	noteFast   = calc.Text("In one go an hour adds more than {limit}, the greatest by {whose}.")
	refuseStop = calc.Text("The hose cannot fill more than the wall: {length} at most.")
	noteAny    = calc.Text("The full fluid head of this height is within the rating.")
	helpSlow   = calc.Text("Slow the pump to a rise of {rise} at the hose: {flow} over one stop.")
	helpNone   = calc.Text("By the strictest of three methods no rise is slow enough for this rating.")
	helpLifts  = calc.Text(
		"Place in lifts. In one go the pump would have to run below {least}, and no pump runs that slowly.",
	)
	helpFluid = calc.Text(
		"Slowing down does not help: the vibration or the hose keeps the concrete fluid. Change that first.",
	)
)
