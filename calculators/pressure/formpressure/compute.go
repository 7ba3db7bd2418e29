package formpressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// depthRows is the number of equal steps of depth in the list of pressures.
const depthRows = 8

// riseResult is one of the two rises with its pressure.
type riseResult struct {
	rise     pressure.FtPerHour
	pressure pressure.PSF
	rule     pressure.Rule
}

// computation holds one run: the pour in the units of the method, and the
// results at both rises.
type computation struct {
	*calc.Recorder
	in             calc.Case
	pour           pressure.Pour
	local, average riseResult
	rated          bool
	rating         pressure.PSF
}

func compute(r *calc.Recorder, in calc.Case) {
	c := &computation{Recorder: r, in: in, rated: in.Has("rating")}
	if calc.Over(in.Num("stop"), in.Num("length")) {
		r.Refuse(calc.At("stop"), refuseStop, calc.Amount("length", in.Num("length"), &displays.Height))
		return
	}
	c.rating = pressure.PSF(c.inUnit("rating", "psf"))
	c.rises()
	c.mix()
	c.local.pressure, c.local.rule = c.pour.Pressure(c.local.rise)
	c.average.pressure, c.average.rule = c.pour.Pressure(c.average.rise)
	c.steps()
	c.putPressures()
	c.putDepths()
	c.putVerdict()
	c.addNotes()
	c.putGuide()
}

// inUnit is an input in a unit of the method.
func (c *computation) inUnit(id, unit string) float64 { return calc.From(c.in.Num(id), unit) }

// rises computes the rise at the hose and on average. A measured rise below the
// average of the whole wall cannot be the greatest and is replaced by it.
func (c *computation) rises() {
	flow, core := c.in.Num("pump-rate"), c.in.Num("thickness")
	average := c.UseFor(ofAverage, nil, pressure.RiseFormula, flow, c.in.Num("length"), core)
	local := c.in.Num("rise")
	switch {
	case !c.in.Has("rise"):
		local = c.UseFor(ofLocal, nil, pressure.RiseFormula, flow, c.in.Num("stop"), core)
	case calc.Under(local, average):
		local = average
		c.Note(calc.LevelAsk, calc.At("rise"), askRise)
	}
	c.local.rise = pressure.FtPerHour(calc.From(local, "ft/h"))
	c.average.rise = pressure.FtPerHour(calc.From(average, "ft/h"))
}

// mix reads the pour and computes its coefficients.
func (c *computation) mix() {
	c.pour = pressure.Pour{
		Height: pressure.Feet(c.inUnit("height", "ft")),
		Weight: pressure.PCF(c.inUnit("weight", "lb/ft³")),
		Temp:   pressure.Fahrenheit(c.inUnit("temperature", "°F")),
		Slump:  pressure.Inches(c.inUnit("slump", "in")),
		Cc: pressure.ChemistryCoefficient(pressure.Cement(c.in.Choice("cement")),
			c.in.Choice("admixture") != pressure.AdmixNone),
	}
	c.pour.Cw = pressure.WeightCoefficient(c.pour.Weight)
	if shaken(c.in) {
		c.pour.Disturbed = c.pour.Height
		if c.in.Has("disturbed") {
			c.pour.Disturbed = pressure.Feet(c.inUnit("disturbed", "ft"))
		}
	}
	weight := float64(c.pour.Weight)
	switch {
	case calc.Under(weight, float64(pressure.LightBelow)):
		c.Use(pressure.LightWeightFormula, c.in.Num("weight"))
	case calc.Over(weight, float64(pressure.HeavyAbove)):
		c.Use(pressure.HeavyWeightFormula, c.in.Num("weight"))
	}
}

// steps records the worked example: the fluid head, and the equation for the rise
// at the hose or, if no equation applies there, for the average.
func (c *computation) steps() {
	head := c.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, c.in.Num("weight"), c.in.Num("height"))
	of, shown := ofLocal, c.local
	if c.pour.Equation(shown.rise) == pressure.Fluid {
		of, shown = ofAverage, c.average
	}
	equation := map[pressure.Rule]*calc.Formula{pressure.Slow: pressure.WallSlowFormula,
		pressure.Fast: pressure.WallFastFormula}[c.pour.Equation(shown.rise)]
	if equation == nil {
		return
	}
	p := c.UseFor(of, nil, equation, c.pour.Cw, c.pour.Cc, calc.SI(float64(shown.rise), "ft/h"),
		calc.SI(float64(c.pour.Credit()), "°F"))
	least := max(pressure.LeastPressure(c.pour.Cw), pressure.FluidHead(c.pour.Weight, c.pour.Depth()))
	c.UseFor(of, nil, pressure.BoundedFormula, p, pressure.SI(least), head)
}

func ft(h pressure.Feet) float64 { return calc.SI(float64(h), "ft") }

func ftPerH(r pressure.FtPerHour) float64 { return calc.SI(float64(r), "ft/h") }

func (c *computation) putPressures() {
	c.Put("pressure-local", pressure.SI(c.local.pressure))
	c.Put("pressure-average", pressure.SI(c.average.pressure))
	c.Put("rise-local", ftPerH(c.local.rise))
	c.Put("rise-average", ftPerH(c.average.rise))
	c.PutChoice("rule", string(c.local.rule))
	c.PutChoice("rule-average", string(c.average.rule))
	c.Put("fluid-depth", ft(pressure.FluidDepth(c.local.pressure, c.pour.Weight)))
	c.Put("floor", pressure.SI(min(pressure.LeastPressure(c.pour.Cw), c.pour.Head())))
	c.Put("cw", c.pour.Cw)
	c.Put("cc", c.pour.Cc)
}

func (c *computation) putDepths() {
	rows := make([]calc.Case, depthRows)
	for i := range rows {
		depth := c.pour.Height * pressure.Feet(i+1) / depthRows
		rows[i] = c.NewRow("by-depth").
			With("depth", calc.Num(ft(depth))).
			With("local", calc.Num(pressure.SI(c.pour.AtDepth(depth, c.local.pressure)))).
			With("average", calc.Num(pressure.SI(c.pour.AtDepth(depth, c.average.pressure)))).
			With("head", calc.Num(pressure.SI(pressure.FluidHead(c.pour.Weight, depth))))
	}
	c.PutRows("by-depth", rows)
}

// covers reports whether the form's rating covers a pressure.
func (c *computation) covers(p pressure.PSF) bool { return !calc.Over(float64(p), float64(c.rating)) }

// putVerdict sets the verdict for the rise at the hose, and the highest rise.
func (c *computation) putVerdict() {
	if !c.rated {
		c.PutChoice("verdict", unrated)
		return
	}
	verdict := fails
	if c.covers(c.local.pressure) {
		verdict = holds
	}
	c.PutChoice("verdict", verdict)
	c.Put("fluid-limit", c.UseFor(ofRating, nil, pressure.FluidDepthFormula, c.in.Num("rating"), c.in.Num("weight")))
	rise, reach := c.pour.HighestRise(c.rating)
	switch reach {
	case pressure.ByEquation, pressure.ByMethod:
		c.putHighest(rise, reach)
	}
}

// putHighest sets the highest rise and the pump rates at that rise.
func (c *computation) putHighest(rise pressure.FtPerHour, reach pressure.Reach) {
	inverse := pressure.RiseSlowFormula
	if c.pour.Equation(rise) == pressure.Fast {
		inverse = pressure.RiseFastFormula
	}
	if reach == pressure.ByEquation {
		c.UseFor(ofRating, nil, inverse, c.pour.Cw, c.pour.Cc, c.in.Num("rating"),
			calc.SI(float64(c.pour.Credit()), "°F"))
	}
	core := c.in.Num("thickness")
	c.Put("highest-rise", ftPerH(rise))
	c.Put("highest-flow", pressure.FlowFormula.Value(ftPerH(rise), c.in.Num("stop"), core))
	c.Put("highest-flow-average", pressure.FlowFormula.Value(ftPerH(rise), c.in.Num("length"), core))
}

// putGuide checks the form maker's lift and rise, separately from the rating.
func (c *computation) putGuide() {
	lift, rate := c.in.Has("guide-lift"), c.in.Has("guide-rate")
	if !lift || !rate {
		c.PutChoice("guide", guideNone)
		c.askGuide(lift, rate)
		return
	}
	fill := math.Min(c.in.Num("guide-lift"), c.in.Num("height"))
	most := c.in.Num("guide-rate")
	verdict := guideBeyond
	switch limit := calc.From(most, "ft/h"); {
	case !calc.Over(float64(c.local.rise), limit):
		verdict = guideWithin
	case !calc.Over(float64(c.average.rise), limit):
		verdict = guideAverage
	}
	c.PutChoice("guide", verdict)
	c.Put("guide-lifts", calc.Ceil(c.in.Num("height")/fill))
	c.Put("guide-time", fill/most)
	c.Put("guide-flow", pressure.FlowFormula.Value(most, c.in.Num("length"), c.in.Num("thickness")))
	c.addGuideNotes(verdict, fill, fill/most)
}
