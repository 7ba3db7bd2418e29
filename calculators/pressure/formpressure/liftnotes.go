package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// addLiftsNotes explains the answer for a wall placed in lifts: the deed first.
func (c *computation) addLiftsNotes(deed string, run *liftsRun, ours ourSet) {
	c.addAsk()
	level := calc.LevelNotice
	switch deed {
	case doGo, doUnguided:
		c.tell("rating", noteGo, c.ratingOf(), amountOf(run.given.Pressure))
	case doWait:
		c.addWait(run)
	case doLess:
		c.warn("wait", noteTooLongWait, minutes("least", run.wait/60), minutes("most", c.longestWait(run)/60),
			calc.Amount("window", calc.SI(run.window, "h"), &displays.MinutesAtMost))
	case doSlow:
		if run.found {
			c.addSlower(run)
			break
		}
		fallthrough
	case doMix, doStop, doShorten:
		if run.given.Cause.ByPace() || deed == doShorten || deed == doSlow {
			c.addNoPlan(run)
		}
		if !run.given.Cause.ByPace() {
			level = calc.LevelWarning
			c.addCause(level, run.given.Cause, run.given.Rise, pressure.MethodRiseSI)
		}
		c.addMix(run)
		if deed == doMix || deed == doStop {
			c.addStop(calc.LevelWarning, pick(deed == doMix, helpDepthMix, helpDepth), c.in.Num("height"))
			c.addPace(run)
		}
	case doGuide:
		c.warn("guide-lift", noteGuideRetype)
	}
	c.addFails(deed, run.given.Pressure)
	if level == calc.LevelNotice {
		c.addCause(level, run.given.Cause, run.given.Rise, pressure.MethodRiseSI)
	}
	c.addNear(run.given.Pressure)
	c.addClass(run.given)
	c.addPlain(c.plainPressure(run.round))
	c.addSet(ours)
	c.addPause(deed, run)
	c.addHeads()
	if run.round.Back {
		c.tell("how", noteEnds)
	}
	c.care("round", noteStopped)
}

// paceUnrated warns of a rise over the greatest where the form is not checked, and sets
// the wait that brings it down.
func (c *computation) paceUnrated(run *liftsRun) {
	if c.working || !c.tooFast(run.given.Rise) {
		return
	}
	wait, found := run.round.LeastWait(func(p pressure.LiftPressure) bool { return !c.tooFast(p.Rise) })
	if found {
		c.Put("wait-rise", calc.SI(wait, "min"))
	}
	c.care("pump-rate", pick(found, noteOverRule, noteOverSlow), limitRise(c.most), c.whose(),
		minutes("wait", wait/60))
}

// addPace warns of the rise of a lower pour: it is the same as planned.
func (c *computation) addPace(run *liftsRun) {
	if run.byRise > 0 && c.tooFast(run.given.Rise) {
		c.care("pump-rate", noteOverRule, limitRise(c.most), c.whose(), minutes("wait", run.byRise/60))
	}
}

// addWait tells how long to wait after each pass, and what else does it.
func (c *computation) addWait(run *liftsRun) {
	c.warn("wait", pick(run.round.Back, helpWaitBack, helpWait),
		minutes("wait", run.wait/60), amountOf(run.round.At(run.wait).Pressure().Pressure))
	switch {
	case run.byRise > run.byForm && run.byForm > 0:
		c.tell("rise-house", noteByRise, limitRise(c.most), c.whose(), minutes("form", run.byForm/60))
	case run.byRise > run.byForm:
		c.tell("rise-house", noteByRiseOnly, limitRise(c.most), c.whose())
	case run.byRise == run.byForm:
		c.tell("rating", noteByBoth, limitRise(c.most), c.whose())
	case run.byRise > 0:
		c.tell("rating", noteByForm, limitRise(c.most), c.whose(), minutes("rise", run.byRise/60))
	default:
		c.tell("rating", noteByFormOnly, limitRise(c.most), c.whose())
	}
	if run.wait > longWait {
		c.tell("pump-rate", helpTrucks)
	}
}

// addSlower tells which slower pump helps, or that none does.
func (c *computation) addSlower(run *liftsRun) {
	if run.slowed == nil {
		c.warn("pump-rate", noteNoSlower)
		return
	}
	c.warn("pump-rate", pick(run.slowed.Wait > 0, helpSlowerWait, helpSlower), c.slowSlots(run)...)
}

// addNoPlan tells why no wait helps: the joint sets first, or no wait is enough.
func (c *computation) addNoPlan(run *liftsRun) {
	if run.window <= 0 {
		c.warn("age", noteNoWindow)
		return
	}
	window := calc.Amount("window", calc.SI(run.window, "h"), &displays.MinutesAtMost)
	if !c.inTime(run.round, run.window, 0) {
		c.warn("age", noteTooLong, minutes("before", withPauses(run.round).At(0).Between()), window)
		return
	}
	if run.found {
		c.warn("age", noteCrossed,
			minutes("before", withPauses(run.round).At(run.wait).Between()), window)
		return
	}
	if run.rises {
		c.addTooFast(run)
		return
	}
	c.warn("rating", noteNoWait, calc.Amount("most", calc.SI(pressure.MostWait, "min"),
		displayWait))
}

// addTooFast tells why no wait keeps the greatest rise: the measured one counts, or the
// longest wait is not enough.
func (c *computation) addTooFast(run *liftsRun) {
	if c.tooFast(run.round.Typed) {
		c.warn("rise", noteMeasured, calc.Amount("rise", ftPerH(run.round.Typed), &displays.Rise), limitRise(c.most),
			c.whose())
		return
	}
	c.warn("pump-rate", noteTooSlow, limitRise(c.most), c.whose(),
		calc.Amount("most", calc.SI(pressure.MostWait, "min"), displayWait))
}

// addMix tells what the mix gives that helps.
func (c *computation) addMix(run *liftsRun) {
	if run.mixed > 0 {
		c.tell("cement", pick(run.mixWait > 0, helpMixWait, helpMix), amountOf(run.mixed),
			minutes("wait", run.mixWait/60))
		if run.warmer {
			c.care("temperature", noteWarmer)
		}
	}
}

// causes are the texts of the causes of full fluid head, with their fields. A load that is
// too wet or too cold is refused before.
var causes = []struct {
	cause pressure.Cause
	field string
	text  calc.Text
}{
	{pressure.Revibrated, "vibration", noteAgain},
	{pressure.HeadTooDeep, "vibration", noteDeep},
	{pressure.SetsTooLate, "set", noteLate},
	{pressure.RisesTooFast, "pump-rate", noteRapid},
	{pressure.FillsInAnHour, "pump-rate", noteHour},
	{pressure.BeyondMethod, "temperature", noteBeyond},
}

// addCause notes why the fluid head counts, at a rise above limit or at another
// cause.
func (c *computation) addCause(level calc.Level, cause pressure.Cause, rise, limit pressure.FtPerHour) {
	for _, x := range causes {
		if x.cause == cause {
			c.note(level, x.field, x.text, limitDeep(),
				calc.Amount("rise", ftPerH(rise), &displays.Rise), limitRise(limit),
				calc.Amount("latest", calc.SI(pressure.DINSetHigh, "h"), displayLatest), limitCIRIA("ciria"),
				calc.Amount("tallest", pressure.DINHeight, &displays.HeightAtMost))
		}
	}
}

// askRound asks about a typed time of one pass, in hours, that is longer than the
// pump needs.
func (c *computation) askRound(typed, pumped float64) {
	if calc.Over(typed, pumped) {
		c.ask("round", askRound, minutes("pumped", pumped), minutes("typed", typed))
	}
}

// Notes of a wall placed in lifts.
const (
	noteGo = calc.Text(
		"The rating entered is {rating}, and the pressure {pressure}. Corners, cut blocks and weak faces may carry " +
			"less. Keep this pace, and no faster. The foreman decides and releases.",
	)
	helpWait = calc.Text(
		"After each time around, stop the pump and wait {wait} before the next lift. Then the form carries {pressure}.",
	)
	helpWaitBack = calc.Text(
		"After each pass, stop the pump at the end and wait {wait} before you go back. Then the form carries " +
			"{pressure}.",
	)
	noteByRise = calc.Text(
		"The rise governs this wait: {limit} at most by {whose}. By the rating alone it would be {form}.",
	)
	noteByRiseOnly = calc.Text(
		"The rise governs this wait: {limit} at most by {whose}. By the rating alone there would be none.",
	)
	noteByForm = calc.Text(
		"The rating of the form governs this wait. By the rise alone, {limit} at most by {whose}, it would be {rise}.",
	)
	noteByBoth = calc.Text(
		"The rating of the form and the rise, {limit} at most by {whose}, both ask for this wait.",
	)
	noteByFormOnly = calc.Text(
		"The rating of the form governs this wait. By the rise alone, {limit} at most by {whose}, there would be none.",
	)
	noteMeasured = calc.Text(
		"The rise you measured is {rise}, and {limit} is the greatest by {whose}. Stop, slow the pump, measure again " +
			"and type the new rise.",
	)
	noteTooSlow = calc.Text(
		"Even with a wait of {most} after each pass the rise is over {limit}, the greatest by {whose}. Slow the pump.",
	)
	noteGuideRetype = calc.Text(
		"Type the guide's lift as the depth of one lift, and work this page again before the first truck.",
	)
	noteOverRule = calc.Text(
		"The rise is over {limit}, the greatest by {whose}: wait {wait} after each pass, or slow down.",
	)
	noteOverSlow = calc.Text("The rise is over {limit}, the greatest by {whose}: slow down.")
	noteWarmer   = calc.Text(
		"The warmer mix counts only if the plant can deliver it and it stays that warm in the form. Measure it there.",
	)
	helpSlower = calc.Text(
		"At {flow} no wait is needed, and the form carries {pressure}. Type that rate and work this page again.",
	)
	helpSlowerWait = calc.Text(
		"At {flow} and a wait of {wait} after each pass the form carries {pressure}. Type both and work this page " +
			"again.",
	)
	noteNoSlower = calc.Text(
		"At no rate that the heads keep up with is the hose back in time. Shorten the loop or bring more heads.",
	)
	helpTrucks = calc.Text("Trucks cannot wait that long. Order fewer trucks, farther apart.")
	helpMix    = calc.Text(
		"Ask the plant for the other mix shown here. At this pace the form then carries {pressure}. Work this page " +
			"again with that ticket.",
	)
	helpMixWait = calc.Text(
		"Ask the plant for the other mix shown here. With a wait of {wait} after each pass the form then carries " +
			"{pressure}. Work this page again with that ticket.",
	)
	noteJoint = calc.Text(
		"Our joint window, {window} from the batch time, ends before the concrete sets: it counts. Fresher loads " +
			"give " +
			"more time.",
	)
	noteCrossed = calc.Text(
		"No lift plan with this mix and form. With the wait for the form and the usual pauses of the pump the hose " +
			"is back only after {before}. For the joint it must be back within {window}.",
	)
	noteTooLongWait = calc.Text(
		"Your wait is too long for the joint or for a planned pause: the hose must be back within {window}. Wait at " +
			"least {least} and at most {most} after each pass.",
	)
	noteTooLong = calc.Text(
		"No lift plan: the hose is back only after {before}, and for the joint it must be back within " +
			"{window}. Shorten the loop, or ask for a faster pump or fresher loads.",
	)
	noteNoWindow = calc.Text(
		"No lift plan: the joint sets before the hose can be back. Ask for fresher loads. A mix that sets later " +
			"buys no minute.",
	)
	noteNoWait = calc.Text("No lift plan with this mix and form: even a wait of {most} after each pass is not enough.")
	noteAgain  = calc.Text(
		"Old lifts that are vibrated again are fluid again: the full fluid head counts. Vibrate each lift once.",
	)
	noteDeep = calc.Text(
		"The head may go deeper than {deepest}: the full fluid head counts. Tape the whip where it meets the " +
			"form top with the head 6 in. (150 mm) into the old lift. Move the tape each lift.",
	)
	noteLate = calc.Text("The concrete sets later than {latest}. No method holds: the full fluid head counts.")
	noteHour = calc.Text(
		"The whole height lands within 60 min. Too little stiffens in that time: the full fluid head counts.",
	)
	noteBeyond = calc.Text(
		"CIRIA 108 ends below {ciria}, and DIN 18218 above {tallest} of height. Beyond either the full fluid head " +
			"counts.",
	)
	noteEnds = calc.Text(
		"At each end two lifts land at once and count as one. Twice the time of a pass goes by there before the next.",
	)
	noteStopped = calc.Text("After a stop nobody catches up. Never start the next pass earlier than planned.")
	askRound    = calc.Text(
		"At this pump rate one pass takes {pumped}, not {typed}. The shorter time counts. If the pump stops in " +
			"between, type that as the wait.",
	)
	askSet = calc.Text(
		"What setting time does the plant give for this mix? Until then our estimate counts.",
	)
	notePause = calc.Text(
		"This wait is a planned pause: hopper covered, hose off the wall, operator keeping the concrete moving. See " +
			"the pour day card.",
	)
	noteLongPause = calc.Text(
		"This wait is longer than a planned pause, {most} at most. Each one is a stop: the foreman releases every " +
			"restart, and the operator says how long the line may stand.",
	)
	noteHeads = calc.Text(
		"{rate} is fast for the heads. Three heads, with nine hands, keep up with {most} at most without air, and " +
			"{air} with it. See “How fast the crew can pour”.",
	)
)
