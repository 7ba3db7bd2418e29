package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/pressure"
)

// nearSlump is the distance from its limit within which a note warns about the
// slump; loads differ by more than this.
const nearSlump pressure.Inches = 0.5

// note adds a note at a field, or at the whole calculator if field is empty.
func (c *computation) note(level calc.Level, field string, text calc.Text, slots ...calc.Slot) {
	c.Note(level, calc.At(field), text, slots...)
}

func (c *computation) warn(field string, text calc.Text, slots ...calc.Slot) {
	c.note(calc.LevelWarning, field, text, slots...)
}

func (c *computation) care(field string, text calc.Text, slots ...calc.Slot) {
	c.note(calc.LevelCaution, field, text, slots...)
}

func (c *computation) tell(field string, text calc.Text, slots ...calc.Slot) {
	c.note(calc.LevelNotice, field, text, slots...)
}

func (c *computation) ask(field string, text calc.Text, slots ...calc.Slot) {
	c.note(calc.LevelAsk, field, text, slots...)
}

func limitDeep() calc.Slot {
	return calc.Amount("deepest", ft(pressure.VibrationDepth), &displays.Height)
}

func limitRise(r pressure.FtPerHour) calc.Slot {
	return calc.Amount("limit", ftPerH(r), &displays.RiseAtMost)
}

func limitSlump() calc.Slot {
	return calc.Amount("wettest", calc.SI(float64(pressure.MethodSlump), "in"), displayWettest)
}

func limitCIRIA(name string) calc.Slot {
	return calc.Amount(name, calc.SI(pressure.CIRIAColdest, "°C"), &displays.TemperatureAtLeast)
}

func limitHot() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(pressure.HotAbove), "°F"), &displays.TemperatureAtMost)
}

func amountOf(p pressure.PSF) calc.Slot {
	return calc.Amount("pressure", pressure.SI(p), &displays.Pressure)
}

func minutes(name string, hours float64) calc.Slot {
	return calc.Amount(name, calc.SI(hours, "h"), displayWait)
}

func (c *computation) ratingOf() calc.Slot {
	return calc.Amount("rating", c.in.Num("rating"), &displays.Rating)
}

// addStop names the height at which the form holds at any pace, at most that in m.
func (c *computation) addStop(level calc.Level, text calc.Text, most float64) {
	depth := min(ft(pressure.FluidDepth(c.rating, c.pour.Weight)), most)
	c.note(level, "height", text, calc.Amount("depth", depth, &displays.HeightAtMost))
}

// addNear warns of a wet mix just inside the limit at which the pressure jumps to the
// fluid head, and of heat above the limit of ACI 347.
func (c *computation) addNear(p pressure.PSF) {
	if calc.Over(float64(c.pour.Temp), float64(pressure.HotAbove)) {
		c.tell("temperature", noteHot, limitHot())
	}
	head := c.pour.Head()
	if p >= head {
		return
	}
	if c.pour.Slump >= pressure.MethodSlump-nearSlump {
		c.care("slump", noteSlump, limitSlump(), amountOf(head))
	}
}

// addClass names the class of the mix where DIN 18218 decides. The table of the methods has it
// in any case.
func (c *computation) addClass(given pressure.LiftPressure) {
	if c.rule(given) == byDIN {
		c.care("slump", noteClass)
	}
}

// whose names who gives the greatest rise.
func (c *computation) whose() calc.Slot {
	house := c.most == pressure.FtPerHour(c.inUnit("rise-house", "ft/h"))
	return calc.TextSlot("whose", pick(house, byHouse, byGuide))
}

// addFails warns that the plan is beyond the rating. With the deed to wait it is so only
// without the wait.
func (c *computation) addFails(deed string, p pressure.PSF) {
	if c.rated && !c.covers(p) {
		c.warn("rating", pick(deed == doWait, noteFailsNow, noteFails), c.ratingOf(), amountOf(p))
	}
}

// addRefusal tells which load does not go in.
func (c *computation) addRefusal() {
	switch c.refused {
	case doRefuse:
		c.warn("slump", noteWet, limitSlump())
	case doTooCold:
		c.warn("temperature", noteTooCold, calc.Amount("least", c.leastTemperature(), &displays.TemperatureAtLeast))
	case doTooStiff:
		c.warn("slump", noteTooStiff, calc.Amount("least", calc.SI(placing.HoseLeast, "in"), &displays.Inches))
	case doTooHot:
		c.warn("temperature", noteTooHot, calc.Amount("limit", c.held("hottest"), &displays.TemperatureAtMost))
	case doTooOld:
		c.warn("age", noteTooOld, calc.Amount("limit", c.held("age-most"), &displays.MinutesAtMost))
	}
}

// addAsk tells what gets no answer without a written word.
func (c *computation) addAsk() {
	for _, f := range c.looser {
		house, _ := c.in.HouseAmount(f.ID)
		c.warn(f.ID, noteHouse, calc.TextSlot("label", f.Label), calc.Amount("house", house, f.Display))
	}
	if c.rated && !c.working {
		c.warn("rating-is", pick(c.in.Choice("rating-is") == ratingTest, noteTestFigure, noteNotKnown), c.ratingOf())
	}
	if c.isBelow() {
		c.warn("hose", noteBelow)
	}
	switch {
	case c.isOutside() && inOneGo(c.in):
		c.warn("outside", noteOutsideOnce)
	case c.isOutside():
		c.warn("outside", noteOutside)
	case c.in.Choice("outside") == outsideFirst:
		c.care("outside", noteFirst)
	}
}

// askMissing asks for the rating, for the maker's guide and for what asked leaves open and
// worst has filled in.
func (c *computation) askMissing(asked calc.Case) {
	if !c.rated {
		c.ask("rating", askRating)
	}
	if !asked.Has("vibration") {
		c.ask("vibration", askVibration)
	}
	if !asked.Has("temperature") {
		c.ask("temperature", askTemperature,
			calc.Amount("limit", c.in.Num("temperature"), &displays.TemperatureAtLeast))
	}
	if !asked.Has("slump") {
		c.ask("slump", askSlump, limitSlump())
	}
	if !asked.Has("age") {
		c.ask("age", askAge, calc.Amount("limit", c.in.Num("age"), &displays.MinutesAtMost))
	}
	lift, rate := c.in.Has("guide-lift"), c.in.Has("guide-rate")
	switch {
	case lift && !rate:
		c.ask("guide-rate", askGuideBoth)
	case rate && !lift:
		c.ask("guide-lift", askGuideBoth)
	case !lift && c.guideMissing():
		c.ask("guide-lift", askGuide)
	}
}

// unknownMix reports whether the ticket leaves the chemistry open.
func (c *computation) unknownMix() bool {
	return c.in.Choice("cement") == pressure.Unknown || c.in.Choice("admixture") == pressure.Unknown
}

// addPlain tells what plain concrete gives where the chemistry is unknown.
func (c *computation) addPlain(plain pressure.PSF) {
	if c.unknownMix() {
		c.ask("cement", notePlain, amountOf(plain))
	}
}

// addGuideNotes applies the form maker's guide to this pour; fill is the depth of
// one lift in m. Where a house rule is stricter than the guide, the time of a lift goes by
// the rule.
func (c *computation) addGuideNotes(beyond bool, fill float64) {
	rate := calc.Amount("rate", c.in.Num("guide-rate"), &displays.RiseTyped)
	lift := calc.Amount("lift", fill, &displays.HeightAtMost)
	if beyond {
		c.warn("guide-rate", noteGuideBeyond, lift, rate)
	} else {
		c.tell("guide-rate", noteGuideWithin, lift, rate)
	}
	c.askLooser("guide-rate", "rise-house", c.in.Num("rise-house"))
	strict := fill
	if house, ok := c.in.HouseAmount("lift"); ok {
		c.askLooser("guide-lift", "lift", house)
		strict = min(fill, house)
	}
	c.Put("guide-time", strict/ftPerH(c.most))
	if strict < c.in.Num("height") {
		c.tell("guide-lift", noteLifts, calc.Amount("lift", strict, &displays.HeightAtMost),
			calc.Amount("time", strict/ftPerH(c.most), displayTime))
	}
	weighs := pressure.FluidHead(c.pour.Weight, pressure.Feet(calc.From(fill, "ft")))
	if c.rated && !c.covers(weighs) {
		c.warn("guide-lift", noteGuideLift, amountOf(weighs))
	}
}

// askLooser asks about a figure of the guide that is looser than the amount of the house
// rule of an input.
func (c *computation) askLooser(guide, id string, house float64) {
	if calc.Over(c.in.Num(guide), house) {
		c.ask(guide, askLooser, calc.Amount("guide", c.in.Num(guide), fieldOf(inputs, guide).Display),
			calc.Amount("house", house, fieldOf(inputs, id).Display))
	}
}

// Notes of both ways to place.
const (
	noteHot     = calc.Text("Heat above {limit} earns no credit: the pressure is worked out for {limit}.")
	noteSlump   = calc.Text("The slump is close to {wettest}. A wetter load brings the full fluid head of {pressure}.")
	noteTooCold = calc.Text(
		"The coldest load is below {least}, the least for a core this thick in cold weather. Call the plant before " +
			"the next truck leaves. In mild weather the engineer may allow a colder load, in writing.",
	)
	noteTooStiff = calc.Text(
		"Below {least} at the hose the concrete is too stiff to flow around bars and frames. Stop the pump and call " +
			"the plant. Water does not bring it back.",
	)
	noteTooHot = calc.Text(
		"Even the coldest load is over {limit}, the hottest that the house rule allows. Call the plant before the " +
			"next truck leaves.",
	)
	noteTooOld = calc.Text(
		"The oldest load is over {limit}, the oldest that the house rule allows. Call the plant before the next " +
			"truck leaves.",
	)
	noteHouse = calc.Text(
		"{label}: the house rule allows {house} at most. Before the first truck, ask the foreman and the engineer. " +
			"Or type {house}.",
	)
	noteWet   = calc.Text("The slump is over {wettest}. No wall equation holds: the form carries the full fluid head.")
	noteFails = calc.Text(
		"The form may open. It is rated for {rating} and carries {pressure}. Do not place this way.",
	)
	noteFirst = calc.Text(
		"The tool on the outside counts as used only in the first lift, after the whip, before anything lands on " +
			"that lift. It must never run above it.",
	)
	noteFailsNow = calc.Text(
		"Without that wait the form may open: it is rated for {rating} and carries {pressure}.",
	)
	noteOutside = calc.Text(
		"A tool on the outside shakes the concrete fluid again, and may push harder than its weight. Above the first " +
			"lift, use it only with the written word of the form maker or the engineer.",
	)
	noteOutsideOnce = calc.Text(
		"A tool on the outside shakes the concrete fluid again, and may push harder than its weight. In one go the " +
			"whole wall is fluid. Use it only with the written word of the form maker or the engineer.",
	)
	noteBelow = calc.Text(
		"Placed from below, or with the hose end buried, the concrete may push harder than its weight. Keep the end " +
			"above the concrete.",
	)
	notePlain = calc.Text(
		"What cement and admixtures are in the mix? Not known counts as the worst. Plain concrete with nothing that " +
			"slows the set would give {pressure}.",
	)
	noteClass = calc.Text(
		"DIN 18218 counts class F4, for a slump up to 7 in. (175 mm), from memory: check it against the standard. A " +
			"load of class F5 is refused.",
	)
	headWait      = calc.Text("Wait {wait} after each pass")
	headWaitSet   = calc.Text("Only with the plant's set in writing: wait {wait}")
	headWaitSetOr = calc.Text("Only with the plant's set in writing: wait {wait}. Without it: {longer}")
	headWaitStop  = calc.Text("Wait {wait}: each one is a stop")
	headSlow      = calc.Text("Slow the pump to {flow}")
	headSlowWait  = calc.Text("Slow the pump to {flow}, wait {wait}")
	headStop      = calc.Text("End today's pour at {depth}")
	askVibration  = calc.Text(
		"Is the mark on the whip, 6 in. into the old lift? Until you answer, the head counts as reaching all the " +
			"way down.",
	)
	askTemperature = calc.Text(
		"How warm is the coldest load? Until you answer, the coldest that may go in counts, {limit}.",
	)
	askSlump = calc.Text(
		"What is the slump at the hose? Until you answer, the wettest that may go in counts, {wettest}.",
	)
	askAge    = calc.Text("How old is the oldest load? Until you answer, the oldest allowed counts, {limit}.")
	askRating = calc.Text(
		"What pressure is the form rated for? Without the form maker's figure the form is not checked.",
	)
	noteNotKnown = calc.Text(
		"Is {rating} the allowed working pressure, with the safety already in it? Until the form maker's data " +
			"answers that, there is no plan.",
	)
	noteTestFigure = calc.Text(
		"A form breaks at a test or breaking figure such as {rating}. Ask the form maker for the allowed working " +
			"pressure and type that.",
	)
	askRise = calc.Text(
		"The rise you measured is less than the {computed} that pump and length give. The larger one counts. Check " +
			"the pump rate and measure again.",
	)
	askGuide = calc.Text(
		"The form maker's guide is not entered. Does it give a lift and a rise? Enter both, or say that it gives " +
			"none.",
	)
	askGuideBoth = calc.Text("The guide's lift and rise go together. Enter this one too.")
	askLooser    = calc.Text(
		"The guide gives {guide}, and the house rule only {house}. The stricter counts. May the crew go by the " +
			"guide? Ask who set the rule.",
	)
	helpDepth = calc.Text(
		"End today's pour at {depth}, and lower at corners, cut blocks and weak faces. Go on only when the form " +
			"maker's guide or the engineer allows it.",
	)
	helpDepthMix = calc.Text(
		"With the mix as it is, end today's pour at {depth}, and lower at corners, cut blocks and weak faces. Go on " +
			"only when the form maker's guide or the engineer allows it.",
	)
	noteLifts = calc.Text(
		"By guide and house rule: fill to {lift}, move on, and come back no sooner than {time} later.",
	)
	noteGuideWithin = calc.Text("The plan is within the form maker's guide: lifts of {lift}, {rate}.")
	noteGuideBeyond = calc.Text(
		"The plan as typed is beyond the form maker's guide: lifts of {lift}, {rate}. The guide comes first.",
	)
	noteGuideLift = calc.Text(
		"One lift of the guide presses with {pressure} while fluid. That is more than the rating. Ask the form maker.",
	)
)

// Who gives the greatest rise.
const (
	byHouse = calc.Text("the house rule")
	byGuide = calc.Text("the form maker's guide")
)

// The purposes of the steps of the worked example.
const (
	ofLocal   = calc.Text("Where the hose is")
	ofAverage = calc.Text("On average, whole wall")
	ofRating  = calc.Text("For the rating of the form")
	ofPlace   = calc.Text("At one place")
	ofSet     = calc.Text("At the coldest load")
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
