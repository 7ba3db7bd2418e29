package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// near is the share of a limit within which a jump just beyond it is told.
const near = 0.05

// nearSlump is how close to its limit a slump counts as near: loads differ
// by more than this.
const nearSlump Inches = 0.5

func closeBelow(x, limit float64) bool { return !calc.Over(x, limit) && x > limit*(1-near) }

// say adds every note on the pressure, the verdict and what helps.
func (j *job) say() {
	j.sayFluid()
	j.sayNear()
	j.sayVerdict()
}

func limitFt(h Feet) calc.Slot        { return calc.Amount("limit", ft(h), &displays.Height) }
func limitRise(r FtPerHour) calc.Slot { return calc.Amount("limit", ftPerH(r), &displays.RiseTyped) }
func limitSlump() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(MethodSlump), "in"), showWettest)
}
func limitCold() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(ColdBelow), "°F"), &displays.TemperatureAtLeast)
}
func limitHot() calc.Slot {
	return calc.Amount("limit", calc.SI(float64(HotAbove), "°F"), &displays.TemperatureAtMost)
}
func amountOf(p PSF) calc.Slot { return calc.Amount("pressure", psf(p), &displays.Pressure) }

// sayFluid tells why the fluid head counts, or the floor, or less heat than
// the concrete has.
func (j *job) sayFluid() {
	if j.pour.Wet() {
		j.Note(calc.LevelNotice, calc.At("slump"), noteWet, limitSlump())
	}
	if j.pour.Cold() {
		j.Note(calc.LevelNotice, calc.At("temperature"), noteCold, limitCold())
	}
	if calc.Over(float64(j.local.rise), float64(MethodRise)) {
		j.Note(calc.LevelNotice, j.hose(), noteRapid, calc.Amount("rise", ftPerH(j.local.rise), &displays.Rise), limitRise(MethodRise))
	}
	if shaken(j.in) {
		j.Note(calc.LevelNotice, calc.At("vibration"), noteShaken, calc.Amount("depth", ft(j.pour.Depth()), &displays.Height))
		if j.in.Choice("vibration") == "deep" && !calc.Over(float64(j.pour.Disturbed), float64(VibrationDepth)) && j.in.Has("disturbed") {
			j.Note(calc.LevelAsk, calc.At("disturbed"), askDisturbed, limitFt(VibrationDepth), calc.Amount("depth", j.in.Num("disturbed"), &displays.Height))
		}
	}
	if calc.Over(float64(j.pour.Temp), float64(HotAbove)) {
		j.Note(calc.LevelNotice, calc.At("temperature"), noteHot, limitHot())
	}
	if j.local.rule == Floor {
		j.Note(calc.LevelNotice, calc.Path{}, noteFloor, calc.Amount("floor", psf(j.local.pressure), &displays.Pressure))
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
	if closeBelow(float64(j.pour.Height), float64(SlowHeight)) {
		taller := j.pour
		taller.Height = SlowHeight * (1 + near)
		if beyond, _ := taller.Pressure(j.local.rise); beyond > j.local.pressure {
			j.Note(calc.LevelCaution, calc.At("height"), noteHeight, limitFt(SlowHeight), amountOf(beyond))
		}
	}
	if closeBelow(float64(j.local.rise), float64(MethodRise)) {
		j.Note(calc.LevelCaution, j.hose(), noteRise, limitRise(MethodRise), amountOf(head))
	}
	if j.pour.Slump >= MethodSlump-nearSlump {
		j.Note(calc.LevelCaution, calc.At("slump"), noteSlump, limitSlump(), amountOf(head))
	}
	if j.pour.Temp < ColdBelow*(1+near) {
		j.Note(calc.LevelCaution, calc.At("temperature"), noteChilly, limitCold(), amountOf(head))
	}
}

// sayVerdict tells what the verdict means and what helps.
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
	j.Note(calc.LevelWarning, calc.At("rating"), noteFails, calc.Amount("rating", j.in.Num("rating"), &displays.Rating), amountOf(j.local.pressure))
	if j.takes(j.average.pressure) {
		j.Note(calc.LevelWarning, j.hose(), noteAverage)
	}
	j.sayHelp(reach)
}

func (j *job) sayHolds(reach Reach) {
	switch reach {
	case AnyRise:
		j.Note(calc.LevelNotice, calc.At("rating"), noteAny)
	case ByMethod:
		j.Note(calc.LevelNotice, calc.At("rating"), noteMethod, limitRise(MethodRise))
	}
}

func (j *job) sayHelp(reach Reach) {
	switch reach {
	case BelowFloor:
		j.Note(calc.LevelNotice, calc.At("rating"), helpBelow, calc.Amount("floor", psf(LeastPressure(j.pour.Cw)), &displays.Pressure))
	case FluidAnyway:
		j.Note(calc.LevelNotice, calc.At("rating"), helpFluid)
	case TooTall:
		j.Note(calc.LevelNotice, calc.At("height"), helpTall, limitFt(SlowHeight))
	case ByEquation, ByMethod:
		rise, _ := j.pour.HighestRise(j.rating)
		flow := eqFlow.Value(ftPerH(rise), j.in.Num("stop"), j.in.Num("thickness"))
		j.Note(calc.LevelNotice, calc.At("pump-rate"), helpSlow, calc.Amount("rise", ftPerH(rise), &displays.RiseAtMost), calc.Amount("flow", flow, &displays.PumpRateAtMost))
	}
	j.Note(calc.LevelNotice, calc.At("height"), helpDepth, calc.Amount("depth", ft(FluidDepth(j.rating, j.pour.Weight)), &displays.HeightAtMost))
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

// sayGuide tells what the form maker's guide means for this pour; fill is the
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
		j.Note(calc.LevelNotice, calc.At("guide-lift"), noteLifts, calc.Amount("lift", fill, &displays.HeightAtMost), calc.Amount("time", time, showTime))
	}
	weighs := FluidHead(j.pour.Weight, Feet(calc.From(fill, "ft")))
	if j.rated && !j.takes(weighs) {
		j.Note(calc.LevelWarning, calc.At("guide-lift"), noteGuideLift, amountOf(weighs))
	}
}
