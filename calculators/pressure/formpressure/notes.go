package formpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// near is the share of a limit within which a jump just beyond it is noted.
const near = 0.05

// nearSlump is how close to its limit a slump counts as near: loads differ
// by more than this.
const nearSlump pressure.Inches = 0.5

func closeBelow(x, limit float64) bool { return !calc.Over(x, limit) && x > limit*(1-near) }

// say adds every note on the pressure, the verdict and what helps.
func (j *job) say() {
	j.sayFluid()
	j.sayNear()
	j.sayVerdict()
}

func limitFt(h pressure.Feet) calc.Slot { return calc.Amount("limit", ft(h), &displays.Height) }

func limitRise(r pressure.FtPerHour) calc.Slot {
	return calc.Amount("limit", ftPerH(r), &displays.RiseTyped)
}

func limitSlump() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(pressure.MethodSlump), "in"), showWettest)
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

// sayFluid notes why the fluid head counts, or the floor, or less heat than
// the concrete has.
func (j *job) sayFluid() {
	if j.pour.Wet() {
		j.Note(calc.LevelNotice, calc.At("slump"), noteWet, limitSlump())
	}
	if j.pour.Cold() {
		j.Note(calc.LevelNotice, calc.At("temperature"), noteCold, limitCold())
	}
	if calc.Over(float64(j.local.rise), float64(pressure.MethodRise)) {
		j.Note(
			calc.LevelNotice,
			j.hose(),
			noteRapid,
			calc.Amount("rise", ftPerH(j.local.rise), &displays.Rise),
			limitRise(pressure.MethodRise),
		)
	}
	if shaken(j.in) {
		j.Note(
			calc.LevelNotice,
			calc.At("vibration"),
			noteShaken,
			calc.Amount("depth", ft(j.pour.Depth()), &displays.Height),
		)
		if j.in.Choice("vibration") == "deep" &&
			!calc.Over(float64(j.pour.Disturbed), float64(pressure.VibrationDepth)) &&
			j.in.Has("disturbed") {
			j.Note(
				calc.LevelAsk,
				calc.At("disturbed"),
				askDisturbed,
				limitFt(pressure.VibrationDepth),
				calc.Amount("depth", j.in.Num("disturbed"), &displays.Height),
			)
		}
	}
	if calc.Over(float64(j.pour.Temp), float64(pressure.HotAbove)) {
		j.Note(calc.LevelNotice, calc.At("temperature"), noteHot, limitHot())
	}
	if j.local.rule == pressure.Floor {
		j.Note(
			calc.LevelNotice,
			calc.Path{},
			noteFloor,
			calc.Amount("floor", pressure.SI(j.local.pressure), &displays.Pressure),
		)
	}
}

// hose points at the input that sets the rise at the hose.
func (j *job) hose() calc.Path {
	if j.in.Has("rise") {
		return calc.At("rise")
	}
	return calc.At("stop")
}

// sayNear warns where a little more of something makes the pressure jump.
func (j *job) sayNear() {
	head := j.pour.Head()
	if j.local.pressure >= head {
		return
	}
	if closeBelow(float64(j.pour.Height), float64(pressure.SlowHeight)) {
		taller := j.pour
		taller.Height = pressure.SlowHeight * (1 + near)
		if beyond, _ := taller.Pressure(j.local.rise); beyond > j.local.pressure {
			j.Note(calc.LevelCaution, calc.At("height"), noteHeight, limitFt(pressure.SlowHeight), amountOf(beyond))
		}
	}
	if closeBelow(float64(j.local.rise), float64(pressure.MethodRise)) {
		j.Note(calc.LevelCaution, j.hose(), noteRise, limitRise(pressure.MethodRise), amountOf(head))
	}
	if j.pour.Slump >= pressure.MethodSlump-nearSlump {
		j.Note(calc.LevelCaution, calc.At("slump"), noteSlump, limitSlump(), amountOf(head))
	}
	if j.pour.Temp < pressure.ColdBelow*(1+near) {
		j.Note(calc.LevelCaution, calc.At("temperature"), noteChilly, limitCold(), amountOf(head))
	}
}

// sayVerdict notes what the verdict means and what helps.
func (j *job) sayVerdict() {
	if !j.rated {
		j.Note(calc.LevelAsk, calc.At("rating"), askRating)
		return
	}
	_, reach := j.pour.HighestRise(j.rating)
	if j.takes(j.local.pressure) {
		j.sayHolds(reach)
		return
	}
	j.Note(
		calc.LevelWarning,
		calc.At("rating"),
		noteFails,
		calc.Amount("rating", j.in.Num("rating"), &displays.Rating),
		amountOf(j.local.pressure),
	)
	if j.takes(j.average.pressure) {
		j.Note(calc.LevelWarning, j.hose(), noteAverage)
	}
	j.sayHelp(reach)
}

func (j *job) sayHolds(reach pressure.Reach) {
	switch reach {
	case pressure.AnyRise:
		j.Note(calc.LevelNotice, calc.At("rating"), noteAny)
	case pressure.ByMethod:
		j.Note(calc.LevelNotice, calc.At("rating"), noteMethod, limitRise(pressure.MethodRise))
	}
}

func (j *job) sayHelp(reach pressure.Reach) {
	switch reach {
	case pressure.BelowFloor:
		j.Note(
			calc.LevelNotice,
			calc.At("rating"),
			helpBelow,
			calc.Amount("floor", pressure.SI(pressure.LeastPressure(j.pour.Cw)), &displays.Pressure),
		)
	case pressure.FluidAnyway:
		j.Note(calc.LevelNotice, calc.At("rating"), helpFluid)
	case pressure.TooTall:
		j.Note(calc.LevelNotice, calc.At("height"), helpTall, limitFt(pressure.SlowHeight))
	case pressure.ByEquation, pressure.ByMethod:
		rise, _ := j.pour.HighestRise(j.rating)
		flow := pressure.FlowFormula.Value(ftPerH(rise), j.in.Num("stop"), j.in.Num("thickness"))
		j.Note(
			calc.LevelNotice,
			calc.At("pump-rate"),
			helpSlow,
			calc.Amount("rise", ftPerH(rise), &displays.RiseAtMost),
			calc.Amount("flow", flow, &displays.PumpRateAtMost),
		)
	}
	j.Note(
		calc.LevelNotice,
		calc.At("height"),
		helpDepth,
		calc.Amount("depth", ft(pressure.FluidDepth(j.rating, j.pour.Weight)), &displays.HeightAtMost),
	)
}

// askGuide asks for the guide where half of it is given, and where nothing
// else proves the form.
func (j *job) askGuide(lift, rate bool) {
	switch {
	case lift:
		j.Note(calc.LevelAsk, calc.At("guide-rate"), askGuideBoth)
	case rate:
		j.Note(calc.LevelAsk, calc.At("guide-lift"), askGuideBoth)
	case !j.rated || !j.takes(j.local.pressure):
		j.Note(calc.LevelAsk, calc.At("guide-lift"), askGuide)
	}
}

// sayGuide notes what the form maker's guide means for this pour; fill is the
// depth of one lift in m, time its least duration in s.
func (j *job) sayGuide(verdict string, fill, time float64) {
	rate := calc.Amount("rate", j.in.Num("guide-rate"), &displays.RiseTyped)
	switch verdict {
	case guideWithin:
		j.Note(calc.LevelNotice, calc.At("guide-rate"), noteGuideWithin, rate)
	case guideAverage:
		j.Note(calc.LevelCaution, calc.At("guide-rate"), noteGuideAverage, rate)
	case guideBeyond:
		j.Note(calc.LevelWarning, calc.At("guide-rate"), noteGuideBeyond, rate)
	}
	if j.in.Num("guide-lift") < j.in.Num("height") {
		j.Note(
			calc.LevelNotice,
			calc.At("guide-lift"),
			noteLifts,
			calc.Amount("lift", fill, &displays.HeightAtMost),
			calc.Amount("time", time, showTime),
		)
	}
	weighs := pressure.FluidHead(j.pour.Weight, pressure.Feet(calc.From(fill, "ft")))
	if j.rated && !j.takes(weighs) {
		j.Note(calc.LevelWarning, calc.At("guide-lift"), noteGuideLift, amountOf(weighs))
	}
}

// Why the fluid head counts.
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

// What else the reader should know about the number.
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

// The verdict and what helps.
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

// What the formulas of the worked example are used for.
const (
	ofLocal   = calc.Text("Where the hose stands")
	ofAverage = calc.Text("On average, whole wall")
	ofRating  = calc.Text("For the rating of the form")
)

// The standing cautions.
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
