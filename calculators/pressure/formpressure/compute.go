package formpressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

// depthRows is the number of equal steps of depth in the list of pressures.
const depthRows = 8

// leastPump is the slowest rate that a pump runs at, in yd³/h. Below it the answer
// names a wait. It is our own limit.
const leastPump = 5

// runs reports whether a pump runs at a rate in m³/s.
func runs(rate float64) bool { return !calc.Under(calc.From(rate, "yd³/h"), leastPump) }

// computation holds one run, in the units of the method.
type computation struct {
	*calc.Recorder
	in     calc.Case
	pour   pressure.Pour
	rated  bool
	rating pressure.PSF
	guided bool // the form maker's guide gives both lift and rise
}

func compute(r *calc.Recorder, in calc.Case) {
	c := &computation{Recorder: r, in: in, rated: in.Has("rating"),
		guided: in.Has("guide-lift") && in.Has("guide-rate")}
	if inOneGo(in) && calc.Over(in.Num("stop"), in.Num("length")) {
		r.Refuse(calc.At("stop"), refuseStop, calc.Amount("length", in.Num("length"), &displays.Height))
		return
	}
	c.rating = pressure.PSF(c.inUnit("rating", "psf"))
	c.askMissing()
	c.mix()
	if inLifts(in) {
		c.computeLifts()
	} else {
		c.computeOneGo()
	}
}

// inUnit is an input in a unit of the method.
func (c *computation) inUnit(id, unit string) float64 { return calc.From(c.in.Num(id), unit) }

// retards reports whether the set may be slow. An unknown admixture counts as one
// that slows it.
func (c *computation) retards() bool { return c.in.Choice("admixture") != pressure.AdmixNone }

func (c *computation) cement() pressure.Cement { return pressure.Cement(c.in.Choice("cement")) }

// mix reads the pour and computes its coefficients.
func (c *computation) mix() {
	c.pour = pressure.Pour{
		Height: pressure.Feet(c.inUnit("height", "ft")),
		Weight: pressure.PCF(c.inUnit("weight", "lb/ft³")),
		Temp:   pressure.Fahrenheit(c.inUnit("temperature", "°F")),
		Slump:  pressure.Inches(c.inUnit("slump", "in")),
		Cc:     pressure.ChemistryCoefficient(c.cement(), c.retards()),
	}
	c.pour.Cw = pressure.WeightCoefficient(c.pour.Weight)
	weight := float64(c.pour.Weight)
	switch {
	case calc.Under(weight, float64(pressure.LightBelow)):
		c.Use(pressure.LightWeightFormula, c.in.Num("weight"))
	case calc.Over(weight, float64(pressure.HeavyAbove)):
		c.Use(pressure.HeavyWeightFormula, c.in.Num("weight"))
	}
	c.Put("cw", c.pour.Cw)
	c.Put("cc", c.pour.Cc)
	c.Put("floor", pressure.SI(min(pressure.LeastPressure(c.pour.Cw), c.pour.Head())))
	c.Put("floor-si", pressure.SI(min(pressure.LeastPressureSI(c.pour.Cw), c.pour.Head())))
}

func ft(h pressure.Feet) float64 { return calc.SI(float64(h), "ft") }

func ftPerH(r pressure.FtPerHour) float64 { return calc.SI(float64(r), "ft/h") }

// covers reports whether the form's rating covers a pressure.
func (c *computation) covers(p pressure.PSF) bool { return !calc.Over(float64(p), float64(c.rating)) }

// putPressure sets the pressure that decides, and the list by depth.
func (c *computation) putPressure(p pressure.PSF, rise pressure.FtPerHour, rule string) {
	c.Put("pressure-local", pressure.SI(p))
	c.Put("rise-local", ftPerH(rise))
	c.PutChoice("rule", rule)
	c.Put("fluid-depth", ft(pressure.FluidDepth(p, c.pour.Weight)))
	rows := make([]calc.Case, depthRows)
	for i := range rows {
		depth := c.pour.Height * pressure.Feet(i+1) / depthRows
		rows[i] = c.NewRow("by-depth").
			With("depth", calc.Num(ft(depth))).
			With("local", calc.Num(pressure.SI(c.pour.AtDepth(depth, p)))).
			With("head", calc.Num(pressure.SI(pressure.FluidHead(c.pour.Weight, depth))))
	}
	c.PutRows("by-depth", rows)
	if c.rated && !c.isOutside() && !c.isBelow() {
		c.Put("fluid-limit", c.UseFor(ofRating, nil, pressure.FluidDepthFormula, c.in.Num("rating"),
			c.in.Num("weight")))
	}
}

// isBelow reports whether the concrete comes in from below its top.
func (c *computation) isBelow() bool { return c.in.Choice("hose") != fromTop }

// isOutside reports whether a tool shakes the form where the answer cannot prove it.
func (c *computation) isOutside() bool {
	return c.in.Choice("outside") == outsideAbove || inOneGo(c.in) && c.in.Choice("outside") != outsideNone
}

// putDeed sets what to do and returns it. deed is the answer by pressure alone. A
// tool on the outside and placing from below may push harder than the fluid head:
// no rating proves them. The form maker's guide allows no better answer than its own.
func (c *computation) putDeed(deed string, beyondGuide bool) string {
	switch {
	case !c.rated:
		deed = unchecked
	case c.isOutside() || c.isBelow():
		deed = doAsk
	case beyondGuide && (deed == doGo || deed == doWait || deed == doSlow):
		deed = doGuide
	}
	c.PutChoice("deed", deed)
	return deed
}

// putGuide checks the form maker's lift and rise against those of the plan.
func (c *computation) putGuide(rise pressure.FtPerHour, lift float64) {
	if !c.guided {
		c.PutChoice("guide", guideNone)
		return
	}
	beyond := c.overGuideRate(rise) || c.overGuideLift(lift)
	c.PutChoice("guide", pick(beyond, guideBeyond, guideWithin))
	fill := math.Min(c.in.Num("guide-lift"), c.in.Num("height"))
	c.Put("guide-time", fill/c.in.Num("guide-rate"))
	c.addGuideNotes(beyond, fill)
}

// overGuideRate reports whether a rise is above the form maker's.
func (c *computation) overGuideRate(rise pressure.FtPerHour) bool {
	return c.guided && calc.Over(ftPerH(rise), c.in.Num("guide-rate"))
}

// overGuideLift reports whether a lift in m is above the form maker's.
func (c *computation) overGuideLift(lift float64) bool {
	return c.guided && calc.Over(math.Min(lift, c.in.Num("height")), c.in.Num("guide-lift"))
}

func pick(first bool, a, b string) string {
	if first {
		return a
	}
	return b
}
