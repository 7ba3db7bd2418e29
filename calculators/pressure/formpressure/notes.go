package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// near is the share of a limit within which a note warns of a jump beyond it.
const near = 0.05

// nearSlump is the distance from its limit within which a note warns about the
// slump; loads differ by more than this.
const nearSlump pressure.Inches = 0.5

func closeBelow(x, limit float64) bool { return !calc.Over(x, limit) && x > limit*(1-near) }

// addNotes adds the notes on the pressure, the verdict and the remedies.
func (c *computation) addNotes() {
	c.addFluidNotes()
	c.addNearNotes()
	c.addVerdictNotes()
}

func limitFt(h pressure.Feet) calc.Slot { return calc.Amount("limit", ft(h), &displays.Height) }

func limitRise(r pressure.FtPerHour) calc.Slot {
	return calc.Amount("limit", ftPerH(r), &displays.RiseTyped)
}

func limitSlump() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(pressure.MethodSlump), "in"), displayWettest)
}

func limitCold() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(pressure.ColdBelow), "°F"), &displays.TemperatureAtLeast)
}

func limitHot() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(pressure.HotAbove), "°F"), &displays.TemperatureAtMost)
}

func amountOf(p pressure.PSF) calc.Slot {
	return calc.Amount("pressure", pressure.SI(p), &displays.Pressure)
}

// addFluidNotes notes why the fluid head or the floor applies, or a lower
// temperature than that of the concrete.
func (c *computation) addFluidNotes() {
	if c.pour.Wet() {
		c.Note(calc.LevelNotice, calc.At("slump"), noteWet, limitSlump())
	}
	if c.pour.Cold() {
		c.Note(calc.LevelNotice, calc.At("temperature"), noteCold, limitCold())
	}
	if calc.Over(float64(c.local.rise), float64(pressure.MethodRise)) {
		c.Note(calc.LevelNotice, c.hose(), noteRapid, calc.Amount("rise", ftPerH(c.local.rise), &displays.Rise),
			limitRise(pressure.MethodRise))
	}
	if shaken(c.in) {
		c.Note(calc.LevelNotice, calc.At("vibration"), noteShaken,
			calc.Amount("depth", ft(c.pour.Depth()), &displays.Height))
		if c.in.Choice("vibration") == "deep" &&
			!calc.Over(float64(c.pour.Disturbed), float64(pressure.VibrationDepth)) &&
			c.in.Has("disturbed") {
			c.Note(calc.LevelAsk, calc.At("disturbed"), askDisturbed, limitFt(pressure.VibrationDepth),
				calc.Amount("depth", c.in.Num("disturbed"), &displays.Height))
		}
	}
	if calc.Over(float64(c.pour.Temp), float64(pressure.HotAbove)) {
		c.Note(calc.LevelNotice, calc.At("temperature"), noteHot, limitHot())
	}
	if c.local.rule == pressure.Floor {
		c.Note(calc.LevelNotice, calc.Path{}, noteFloor,
			calc.Amount("floor", pressure.SI(c.local.pressure), &displays.Pressure))
	}
}

// hose points at the input that sets the rise at the hose.
func (c *computation) hose() calc.Path {
	if c.in.Has("rise") {
		return calc.At("rise")
	}
	return calc.At("stop")
}

// addNearNotes warns of inputs just below a limit at which the pressure jumps.
func (c *computation) addNearNotes() {
	head := c.pour.Head()
	if c.local.pressure >= head {
		return
	}
	if closeBelow(float64(c.pour.Height), float64(pressure.SlowHeight)) {
		taller := c.pour
		taller.Height = pressure.SlowHeight * (1 + near)
		if beyond, _ := taller.Pressure(c.local.rise); beyond > c.local.pressure {
			c.Note(calc.LevelCaution, calc.At("height"), noteHeight, limitFt(pressure.SlowHeight), amountOf(beyond))
		}
	}
	if closeBelow(float64(c.local.rise), float64(pressure.MethodRise)) {
		c.Note(calc.LevelCaution, c.hose(), noteRise, limitRise(pressure.MethodRise), amountOf(head))
	}
	if c.pour.Slump >= pressure.MethodSlump-nearSlump {
		c.Note(calc.LevelCaution, calc.At("slump"), noteSlump, limitSlump(), amountOf(head))
	}
	if c.pour.Temp < pressure.ColdBelow*(1+near) {
		c.Note(calc.LevelCaution, calc.At("temperature"), noteChilly, limitCold(), amountOf(head))
	}
}

// addVerdictNotes explains the verdict and the remedies.
func (c *computation) addVerdictNotes() {
	if !c.rated {
		c.Note(calc.LevelAsk, calc.At("rating"), askRating)
		return
	}
	_, reach := c.pour.HighestRise(c.rating)
	if c.covers(c.local.pressure) {
		c.addHoldsNotes(reach)
		return
	}
	c.Note(calc.LevelWarning, calc.At("rating"), noteFails,
		calc.Amount("rating", c.in.Num("rating"), &displays.Rating), amountOf(c.local.pressure))
	if c.covers(c.average.pressure) {
		c.Note(calc.LevelWarning, c.hose(), noteAverage)
	}
	c.addHelpNotes(reach)
}

func (c *computation) addHoldsNotes(reach pressure.Reach) {
	switch reach {
	case pressure.AnyRise:
		c.Note(calc.LevelNotice, calc.At("rating"), noteAny)
	case pressure.ByMethod:
		c.Note(calc.LevelNotice, calc.At("rating"), noteMethod, limitRise(pressure.MethodRise))
	}
}

func (c *computation) addHelpNotes(reach pressure.Reach) {
	switch reach {
	case pressure.BelowFloor:
		c.Note(calc.LevelNotice, calc.At("rating"), helpBelow,
			calc.Amount("floor", pressure.SI(pressure.LeastPressure(c.pour.Cw)), &displays.Pressure))
	case pressure.FluidAnyway:
		c.Note(calc.LevelNotice, calc.At("rating"), helpFluid)
	case pressure.TooTall:
		c.Note(calc.LevelNotice, calc.At("height"), helpTall, limitFt(pressure.SlowHeight))
	case pressure.ByEquation, pressure.ByMethod:
		rise, _ := c.pour.HighestRise(c.rating)
		flow := pressure.FlowFormula.Value(ftPerH(rise), c.in.Num("stop"), c.in.Num("thickness"))
		c.Note(
			calc.LevelNotice,
			calc.At("pump-rate"),
			helpSlow,
			calc.Amount("rise", ftPerH(rise), &displays.RiseAtMost),
			calc.Amount("flow", flow, &displays.PumpRateAtMost),
		)
	}
	c.Note(calc.LevelNotice, calc.At("height"), helpDepth,
		calc.Amount("depth", ft(pressure.FluidDepth(c.rating, c.pour.Weight)), &displays.HeightAtMost))
}

// askGuide asks for the guide if half of it is given, or if the rating does not
// cover the pressure.
func (c *computation) askGuide(lift, rate bool) {
	switch {
	case lift:
		c.Note(calc.LevelAsk, calc.At("guide-rate"), askGuideBoth)
	case rate:
		c.Note(calc.LevelAsk, calc.At("guide-lift"), askGuideBoth)
	case !c.rated || !c.covers(c.local.pressure):
		c.Note(calc.LevelAsk, calc.At("guide-lift"), askGuide)
	}
}

// addGuideNotes applies the form maker's guide to this pour; fill is the depth of
// one lift in m, time its least duration in s.
func (c *computation) addGuideNotes(verdict string, fill, time float64) {
	rate := calc.Amount("rate", c.in.Num("guide-rate"), &displays.RiseTyped)
	switch verdict {
	case guideWithin:
		c.Note(calc.LevelNotice, calc.At("guide-rate"), noteGuideWithin, rate)
	case guideAverage:
		c.Note(calc.LevelCaution, calc.At("guide-rate"), noteGuideAverage, rate)
	case guideBeyond:
		c.Note(calc.LevelWarning, calc.At("guide-rate"), noteGuideBeyond, rate)
	}
	if c.in.Num("guide-lift") < c.in.Num("height") {
		c.Note(calc.LevelNotice, calc.At("guide-lift"), noteLifts,
			calc.Amount("lift", fill, &displays.HeightAtMost), calc.Amount("time", time, displayTime))
	}
	weighs := pressure.FluidHead(c.pour.Weight, pressure.Feet(calc.From(fill, "ft")))
	if c.rated && !c.covers(weighs) {
		c.Note(calc.LevelWarning, calc.At("guide-lift"), noteGuideLift, amountOf(weighs))
	}
}

// The reasons for the fluid head.
const (
	noteRapid = calc.Text(
		"At the hose the concrete rises at {rise}. Above {limit} the form carries the full fluid head.",
	)
	noteWet  = calc.Text("The slump is over {limit}. No wall equation holds: the form carries the full fluid head.")
	noteCold = calc.Text(
		"The concrete is below {limit}. It stays fluid too long for the wall equations: the full fluid head counts.",
	)
	noteShaken = calc.Text(
		"Vibration keeps the concrete fluid down to {depth}. There the form carries the full fluid head.",
	)
)

// Further notes on the pressure.
const (
	noteHot    = calc.Text("Heat above {limit} earns no credit: the pressure is worked out for {limit}.")
	noteFloor  = calc.Text("The rise is so slow that the least design pressure of {floor} counts.")
	noteHeight = calc.Text("The height is close to {limit}. Above it the pressure jumps to {pressure}.")
	noteRise   = calc.Text("The rise at the hose is close to {limit}. Above it the pressure jumps to {pressure}.")
	noteSlump  = calc.Text("The slump is close to {limit}. A wetter load brings the full fluid head of {pressure}.")
	noteChilly = calc.Text(
		"The concrete is close to {limit}. A colder load brings the full fluid head of {pressure}.",
	)
	askRise = calc.Text(
		"The measured rise is below the average of the whole wall. The average is used. Measure again, while the " +
			"hose stands.",
	)
	askDisturbed = calc.Text("You chose a poker deeper than {limit}, but entered {depth}. Which is right?")
	refuseStop   = calc.Text("The hose cannot fill more than the wall: {length} at most.")
)

// The verdict and the remedies.
const (
	askRating = calc.Text(
		"What pressure is the form rated for? Without the form maker's figure there is no verdict.",
	)
	noteFails = calc.Text(
		"The form may open. It is rated for {rating} and carries {pressure}. Do not place this way.",
	)
	noteAverage = calc.Text("By the average rise the form seems to hold. Where the hose stands it does not.")
	noteAny     = calc.Text(
		"The form takes the full fluid head of this height. No rise is too fast for it by pressure alone.",
	)
	noteMethod = calc.Text("By the equation the form would take a faster rise. The method ends at {limit}.")
	helpDepth  = calc.Text(
		"Keep the fluid concrete to {depth}. Place no more until the form maker's guide or the engineer lets you go " +
			"on.",
	)
	helpBelow = calc.Text(
		"The rating is below the least design pressure of {floor}. Slowing down cannot prove this form.",
	)
	helpSlow  = calc.Text("Slow the pump. This form takes a rise of {rise} at the hose: {flow} over one stop.")
	helpFluid = calc.Text(
		"Slowing down does not help: slump, cold or vibration keeps the concrete fluid. Change that first.",
	)
	helpTall     = calc.Text("Above {limit} no rise is slow enough for this rating. Place less height in one go.")
	askGuide     = calc.Text("Does the form maker's guide give a lift and a rise? Enter both.")
	askGuideBoth = calc.Text("The guide's lift and rise go together. Enter this one too.")
)

// The form maker's guide.
const (
	noteLifts = calc.Text(
		"By the form maker's guide: fill to {lift}, move on, and come back no sooner than {time} later.",
	)
	noteGuideWithin  = calc.Text("By the form maker's guide the rise at the hose is within {rate}.")
	noteGuideAverage = calc.Text(
		"By the form maker's guide only the average rise is within {rate}. Ask the maker if lifts at this pump rate " +
			"are allowed.",
	)
	noteGuideBeyond = calc.Text("Even the average rise is beyond the form maker's guide of {rate}. Slow the pump.")
	noteGuideLift   = calc.Text(
		"One lift of the guide presses with {pressure} while fluid. That is more than the rating. Ask the form maker.",
	)
)

// The purposes of the steps of the worked example.
const (
	ofLocal   = calc.Text("Where the hose stands")
	ofAverage = calc.Text("On average, whole wall")
	ofRating  = calc.Text("For the rating of the form")
)

// The cautions.
var cautions = []calc.Caution{
	{
		Level: calc.LevelWarning,
		Text: calc.Text(
			"Forms that open bury and crush. Stand clear of the form below the hose, and stop at the first bulge or " +
				"crack.",
		),
	},
	{
		Level: calc.LevelWarning,
		Text: calc.Text(
			"The form maker's data, the engineer and the local code govern. This page does not replace them.",
		),
	},
	{
		Level: calc.LevelWarning,
		Text: calc.Text(
			"A form is as strong as its weakest part. Corners, cut blocks, stacked joints and block-outs may carry " +
				"less than the rating.",
		),
	},
}
