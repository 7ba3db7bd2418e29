package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// addOneGoNotes explains the answer for a wall placed in one go; mean is the
// pressure by the average rise.
func (c *computation) addOneGoNotes(deed string, run oneGoRun, mean pressure.PSF) {
	c.addFails(run.stricter)
	c.addAsk()
	if c.rated && deed != doAsk && !c.covers(run.stricter) {
		c.addOneGoHelp(deed, run, mean)
	}
	c.addOneGoCauses(run)
	c.addOneGoNear(run)
	c.addEditions(run)
	if calc.Over(c.inUnit("stop", "ft"), longStop) {
		c.ask("stop", askStop, calc.Amount("limit", calc.SI(longStop, "ft"), &displays.Height))
	}
	plain := c.pour
	plain.Cc = pressure.ChemistryCoefficient(pressure.Plain, false)
	p, _ := plain.Stricter(run.rise)
	c.addPlain(p)
	if c.rated && c.covers(run.stricter) {
		switch run.reach {
		case pressure.AnyRise:
			c.tell("rating", noteAny)
		case pressure.ByMethod:
			c.tell("rating", noteMethod, limitRise(pressure.MethodRise))
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
	{pressure.ByEquation, "how", helpLifts},
	{pressure.ByMethod, "how", helpLifts},
}

// addOneGoHelp names the remedies.
func (c *computation) addOneGoHelp(deed string, run oneGoRun, mean pressure.PSF) {
	for _, x := range helps {
		if x.reach == run.reach && deed != doSlow {
			c.tell(x.field, x.text, limitHeight(), calc.Amount("least", calc.SI(leastPump, "yd³/h"),
				&displays.PumpRate),
				calc.Amount("floor", pressure.SI(pressure.LeastPressure(c.pour.Cw)), &displays.Pressure))
		}
	}
	if deed == doSlow {
		c.tell("pump-rate", helpSlow, calc.Amount("rise", ftPerH(run.highest), &displays.RiseAtMost),
			calc.Amount("flow", run.flow, &displays.PumpRateAtMost))
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
	case calc.Over(float64(run.rise), float64(pressure.MethodRise)):
		cause = pressure.RisesTooFast
	case run.rule == pressure.Floor:
		c.tell("", noteFloor, calc.Amount("floor", pressure.SI(run.pressure), &displays.Pressure))
	}
	c.addCause(calc.LevelNotice, cause, run.rise, pressure.MethodRise)
}

// addOneGoNear warns of inputs just below a limit at which the pressure jumps.
func (c *computation) addOneGoNear(run oneGoRun) {
	c.addNear(run.pressure)
	head := c.pour.Head()
	if run.pressure >= head {
		return
	}
	if closeBelow(float64(c.pour.Height), float64(pressure.SlowHeight)) {
		taller := c.pour
		taller.Height = pressure.SlowHeight * (1 + near)
		if beyond, _ := taller.Pressure(run.rise); beyond > run.pressure {
			c.care("height", noteHeight, limitHeight(), amountOf(beyond))
		}
	}
	if closeBelow(float64(run.rise), float64(pressure.MethodRise)) {
		c.care("stop", noteRise, limitRise(pressure.MethodRise), amountOf(head))
	}
}

// addEditions notes that the SI edition gives more and counts.
func (c *computation) addEditions(run oneGoRun) {
	if calc.Over(float64(run.stricter), float64(run.pressure)) {
		c.tell("", noteEdition, amountOf(run.stricter))
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
	noteFloor  = calc.Text("The rise is so slow that the least design pressure of {floor} counts.")
	noteHeight = calc.Text("The height is close to {height}. Above it the pressure jumps to {pressure}.")
	noteRise   = calc.Text("The rise at the hose is close to {limit}. Above it the pressure jumps to {pressure}.")
	refuseStop = calc.Text("The hose cannot fill more than the wall: {length} at most.")
	askStop    = calc.Text(
		"Does more than {limit} of wall rise at once at one stop? If the hose moves on, type the length of one stop.",
	)
	noteAverage = calc.Text("By the average rise the form seems to hold. Where the hose is it does not.")
	noteAny     = calc.Text(
		"The form takes the full fluid head of this height. No rise is too fast for it by pressure alone.",
	)
	noteMethod  = calc.Text("By the equation the form would take a faster rise. The method ends at {limit}.")
	noteEdition = calc.Text("The SI edition of the same guide gives {pressure}. The stricter one counts.")
	helpBelow   = calc.Text(
		"The rating is below the least design pressure of {floor}. Slowing down cannot prove this form.",
	)
	helpSlow  = calc.Text("Slow the pump. This form takes a rise of {rise} at the hose: {flow} over one stop.")
	helpLifts = calc.Text(
		"Place in lifts. In one go the pump would have to run below {least}, and no pump runs that slowly.",
	)
	helpFluid = calc.Text(
		"Slowing down does not help: slump, cold or vibration keeps the concrete fluid. Change that first.",
	)
	helpTall = calc.Text("Above {height} no rise is slow enough for this rating. Place less height in one go.")
)
