package formpressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// depthRows is in how many equal steps the pressure is listed by depth.
const depthRows = 8

// side is one of the two rises and what it does to the form.
type side struct {
	rise     pressure.FtPerHour
	pressure pressure.PSF
	rule     pressure.Rule
}

// job is one run: the pour in the units of the method, and what came of it.
type job struct {
	*calc.Recorder
	in             calc.Case
	pour           pressure.Pour
	local, average side
	rated          bool
	rating         pressure.PSF
}

func compute(r *calc.Recorder, in calc.Case) {
	j := &job{Recorder: r, in: in, rated: in.Has("rating")}
	if calc.Over(in.Num("stop"), in.Num("length")) {
		r.Refuse(calc.At("stop"), refuseStop, calc.Amount("length", in.Num("length"), &displays.Height))
		return
	}
	j.rating = pressure.PSF(j.us("rating", "psf"))
	j.rises()
	j.mix()
	j.local.pressure, j.local.rule = j.pour.Pressure(j.local.rise)
	j.average.pressure, j.average.rule = j.pour.Pressure(j.average.rise)
	j.steps()
	j.putPressures()
	j.putDepths()
	j.putVerdict()
	j.say()
	j.putGuide()
}

// us is an input in a unit of the method.
func (j *job) us(id, unit string) float64 { return calc.From(j.in.Num(id), unit) }

// rises finds the rise at the hose and on average. A rise measured below the
// average of the whole wall cannot be the greatest anywhere: the average
// replaces it.
func (j *job) rises() {
	flow, core := j.in.Num("pump-rate"), j.in.Num("thickness")
	average := j.UseFor(ofAverage, nil, pressure.RiseFormula, flow, j.in.Num("length"), core)
	local := j.in.Num("rise")
	switch {
	case !j.in.Has("rise"):
		local = j.UseFor(ofLocal, nil, pressure.RiseFormula, flow, j.in.Num("stop"), core)
	case calc.Under(local, average):
		local = average
		j.Note(calc.LevelAsk, calc.At("rise"), askRise)
	}
	j.local.rise = pressure.FtPerHour(calc.From(local, "ft/h"))
	j.average.rise = pressure.FtPerHour(calc.From(average, "ft/h"))
}

// mix reads the pour and settles its coefficients.
func (j *job) mix() {
	j.pour = pressure.Pour{
		Height: pressure.Feet(j.us("height", "ft")),
		Weight: pressure.PCF(j.us("weight", "lb/ft³")),
		Temp:   pressure.Fahrenheit(j.us("temperature", "°F")),
		Slump:  pressure.Inches(j.us("slump", "in")),
		Cc: pressure.ChemistryCoefficient(
			pressure.Cement(j.in.Choice("cement")),
			j.in.Choice("admixture") != pressure.AdmixNone,
		),
	}
	j.pour.Cw = pressure.WeightCoefficient(j.pour.Weight)
	if shaken(j.in) {
		j.pour.Disturbed = j.pour.Height
		if j.in.Has("disturbed") {
			j.pour.Disturbed = pressure.Feet(j.us("disturbed", "ft"))
		}
	}
	weight := float64(j.pour.Weight)
	switch {
	case calc.Under(weight, float64(pressure.LightBelow)):
		j.Use(pressure.LightWeightFormula, j.in.Num("weight"))
	case calc.Over(weight, float64(pressure.HeavyAbove)):
		j.Use(pressure.HeavyWeightFormula, j.in.Num("weight"))
	}
}

// steps works the example by hand: the fluid head, and the equation of the
// rise at the hose or, where that is fluid, of the average.
func (j *job) steps() {
	head := j.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, j.in.Num("weight"), j.in.Num("height"))
	of, shown := ofLocal, j.local
	if j.pour.Equation(shown.rise) == pressure.Fluid {
		of, shown = ofAverage, j.average
	}
	equation := map[pressure.Rule]*calc.Formula{pressure.Slow: pressure.WallSlowFormula,
		pressure.Fast: pressure.WallFastFormula}[j.pour.Equation(shown.rise)]
	if equation == nil {
		return
	}
	p := j.UseFor(
		of,
		nil,
		equation,
		j.pour.Cw,
		j.pour.Cc,
		calc.SI(float64(shown.rise), "ft/h"),
		calc.SI(float64(j.pour.Credit()), "°F"),
	)
	least := max(pressure.LeastPressure(j.pour.Cw), pressure.FluidHead(j.pour.Weight, j.pour.Depth()))
	j.UseFor(of, nil, pressure.BoundedFormula, p, pressure.SI(least), head)
}

func ft(h pressure.Feet) float64 { return calc.SI(float64(h), "ft") }

func ftPerH(r pressure.FtPerHour) float64 { return calc.SI(float64(r), "ft/h") }

func (j *job) putPressures() {
	j.Put("pressure-local", pressure.SI(j.local.pressure))
	j.Put("pressure-average", pressure.SI(j.average.pressure))
	j.Put("rise-local", ftPerH(j.local.rise))
	j.Put("rise-average", ftPerH(j.average.rise))
	j.PutChoice("rule", string(j.local.rule))
	j.PutChoice("rule-average", string(j.average.rule))
	j.Put("fluid-depth", ft(pressure.FluidDepth(j.local.pressure, j.pour.Weight)))
	j.Put("floor", pressure.SI(min(pressure.LeastPressure(j.pour.Cw), j.pour.Head())))
	j.Put("cw", j.pour.Cw)
	j.Put("cc", j.pour.Cc)
}

func (j *job) putDepths() {
	rows := make([]calc.Case, depthRows)
	for i := range rows {
		depth := j.pour.Height * pressure.Feet(i+1) / depthRows
		rows[i] = j.NewRow("by-depth").
			With("depth", calc.Num(ft(depth))).
			With("local", calc.Num(pressure.SI(j.pour.AtDepth(depth, j.local.pressure)))).
			With("average", calc.Num(pressure.SI(j.pour.AtDepth(depth, j.average.pressure)))).
			With("head", calc.Num(pressure.SI(pressure.FluidHead(j.pour.Weight, depth))))
	}
	j.PutRows("by-depth", rows)
}

// takes reports whether the form's rating covers a pressure.
func (j *job) takes(p pressure.PSF) bool { return !calc.Over(float64(p), float64(j.rating)) }

// putVerdict judges by the rise at the hose and turns the method round.
func (j *job) putVerdict() {
	if !j.rated {
		j.PutChoice("verdict", unrated)
		return
	}
	verdict := fails
	if j.takes(j.local.pressure) {
		verdict = holds
	}
	j.PutChoice("verdict", verdict)
	j.Put("fluid-limit", j.UseFor(ofRating, nil, pressure.FluidDepthFormula, j.in.Num("rating"), j.in.Num("weight")))
	rise, reach := j.pour.HighestRise(j.rating)
	switch reach {
	case pressure.ByEquation, pressure.ByMethod:
		j.putHighest(rise, reach)
	}
}

// putHighest shows the highest rise and the pump rates that go with it.
func (j *job) putHighest(rise pressure.FtPerHour, reach pressure.Reach) {
	inverse := pressure.RiseSlowFormula
	if j.pour.Equation(rise) == pressure.Fast {
		inverse = pressure.RiseFastFormula
	}
	if reach == pressure.ByEquation {
		j.UseFor(
			ofRating,
			nil,
			inverse,
			j.pour.Cw,
			j.pour.Cc,
			j.in.Num("rating"),
			calc.SI(float64(j.pour.Credit()), "°F"),
		)
	}
	core := j.in.Num("thickness")
	j.Put("highest-rise", ftPerH(rise))
	j.Put("highest-flow", pressure.FlowFormula.Value(ftPerH(rise), j.in.Num("stop"), core))
	j.Put("highest-flow-average", pressure.FlowFormula.Value(ftPerH(rise), j.in.Num("length"), core))
}

// putGuide checks the form maker's lift and rise, apart from the rating.
func (j *job) putGuide() {
	lift, rate := j.in.Has("guide-lift"), j.in.Has("guide-rate")
	if !lift || !rate {
		j.PutChoice("guide", guideNone)
		j.askGuide(lift, rate)
		return
	}
	fill := math.Min(j.in.Num("guide-lift"), j.in.Num("height"))
	most := j.in.Num("guide-rate")
	verdict := guideBeyond
	switch limit := calc.From(most, "ft/h"); {
	case !calc.Over(float64(j.local.rise), limit):
		verdict = guideWithin
	case !calc.Over(float64(j.average.rise), limit):
		verdict = guideAverage
	}
	j.PutChoice("guide", verdict)
	j.Put("guide-lifts", calc.Ceil(j.in.Num("height")/fill))
	j.Put("guide-time", fill/most)
	j.Put("guide-flow", pressure.FlowFormula.Value(most, j.in.Num("length"), j.in.Num("thickness")))
	j.sayGuide(verdict, fill, fill/most)
}
