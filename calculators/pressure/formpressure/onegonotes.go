package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// addOneGoNotes explains the answer for a wall placed in one go; mean is the
// pressure by the average rise.
func (c *computation) addOneGoNotes(deed string, run oneGoRun, mean pressure.PSF, place *pressure.Lifts) {
	c.addFails(run.given.Pressure)
	c.addAsk()
	if c.planned() {
		if run.fast {
			c.warn("rise-house", noteFast, limitRise(c.most), c.whose())
		}
		c.addOneGoHelp(deed, run, mean)
	}
	c.addOneGoCauses(run)
	c.addOneGoNear(run, place)
	plain := *place
	c.makePlain(&plain)
	c.addPlain(plain.InOneGo(run.given.Rise).Pressure)
	c.askSet()
	if c.covers(run.given.Pressure) {
		switch run.reach {
		case pressure.AnyRise:
			c.tell("rating", noteAny)
		case pressure.ByMethod:
			c.tell("rating", noteMethod, limitRise(pressure.MethodRiseSI))
		}
	}
}

// helps are the texts that name what helps where no pump rate does.
var helps = []struct {
	reach pressure.Reach
	field string
	text  calc.Text
}{
	{pressure.BelowFloor, "rating", helpBelow},
	{pressure.FluidAnyway, "rating", helpFluid},
	{pressure.TooTall, "height", helpTall},
	{pressure.NoRise, "rating", helpNone},
	{pressure.AnyRise, "how", helpLifts},
	{pressure.ByOthers, "how", helpLifts},
	{pressure.ByEquation, "how", helpLifts},
	{pressure.ByMethod, "how", helpLifts},
}

// addOneGoHelp names the remedies.
func (c *computation) addOneGoHelp(deed string, run oneGoRun, mean pressure.PSF) {
	for _, x := range helps {
		if x.reach == run.reach && deed != doSlow && deed != doGo {
			c.tell(x.field, x.text, limitHeight(), calc.Amount("least", calc.SI(leastPump, "yd³/h"),
				&displays.PumpRate),
				calc.Amount("floor", pressure.SI(pressure.LeastPressure(c.pour.Cw)), &displays.Pressure))
		}
	}
	if deed == doSlow {
		c.tell("pump-rate", helpSlow, calc.Amount("rise", ftPerH(run.highest), &displays.RiseAtMost),
			calc.Amount("flow", run.flow, &displays.PumpRateAtMost))
	}
	if c.covers(run.given.Pressure) {
		return
	}
	c.addStop(calc.LevelNotice)
	if c.covers(mean) {
		c.tell("stop", noteAverage)
	}
}

// addOneGoCauses notes why the fluid head or the floor applies.
func (c *computation) addOneGoCauses(run oneGoRun) {
	cause := pressure.NoCause
	switch {
	case c.pour.Shaken:
		c.tell("vibration", noteShaken, limitDeep())
	case c.pour.Wet():
		cause = pressure.TooWet
	case c.pour.Cold():
		cause = pressure.TooCold
	case calc.Over(float64(run.given.Rise), float64(pressure.MethodRiseSI)):
		cause = pressure.RisesTooFast
	case run.us == pressure.Floor && c.rule(run.given) == byACI:
		c.tell("", noteFloor, calc.Amount("floor", pressure.SI(run.given.Pressure), &displays.Pressure))
	}
	c.addCause(calc.LevelNotice, cause, run.given.Rise, pressure.MethodRiseSI)
}

// addOneGoNear warns of inputs just below a limit at which the pressure jumps.
func (c *computation) addOneGoNear(run oneGoRun, place *pressure.Lifts) {
	p, rise := run.given.Pressure, run.given.Rise
	c.addNear(p)
	head := c.pour.Head()
	if p >= head {
		return
	}
	if closeBelow(float64(c.pour.Height), float64(pressure.SlowHeightSI)) {
		taller := *place
		taller.Height = pressure.SlowHeightSI * (1 + near)
		if beyond := taller.InOneGo(rise).Pressure; beyond > p {
			c.care("height", noteHeight, calc.Amount("height", ft(pressure.SlowHeightSI), &displays.HeightAtMost),
				amountOf(beyond))
		}
	}
	if closeBelow(float64(rise), float64(pressure.MethodRiseSI)) {
		c.care("stop", noteRise, limitRise(pressure.MethodRiseSI), amountOf(head))
	}
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
	noteFast    = calc.Text("In one go an hour adds more than {limit}, the greatest by {whose}.")
	noteFloor   = calc.Text("The rise is so slow that the least design pressure of {floor} counts.")
	noteHeight  = calc.Text("The height is close to {height}. Above it the pressure jumps to {pressure}.")
	noteRise    = calc.Text("The rise at the hose is close to {limit}. Above it the pressure jumps to {pressure}.")
	refuseStop  = calc.Text("The hose cannot fill more than the wall: {length} at most.")
	noteAverage = calc.Text("By the average rise the pressure is within the rating. Where the hose is it is not.")
	noteAny     = calc.Text("The full fluid head of this height is within the rating.")
	noteMethod  = calc.Text("By the equation the form would take a faster rise. The method ends at {limit}.")
	helpBelow   = calc.Text(
		"The rating is below the least design pressure of {floor}. Slowing down cannot prove this form.",
	)
	helpSlow  = calc.Text("Slow the pump to a rise of {rise} at the hose: {flow} over one stop.")
	helpNone  = calc.Text("By the strictest of three methods no rise is slow enough for this rating.")
	helpLifts = calc.Text(
		"Place in lifts. In one go the pump would have to run below {least}, and no pump runs that slowly.",
	)
	helpFluid = calc.Text(
		"Slowing down does not help: slump, cold or vibration keeps the concrete fluid. Change that first.",
	)
	helpTall = calc.Text("Above {height} no rise is slow enough for this rating. Place less height in one go.")
)
