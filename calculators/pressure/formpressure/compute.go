package formpressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/pressure"
	"coursebook/calculators/weather"
)

// depthRows is the number of equal steps of depth in the list of pressures.
const depthRows = 8

// runs reports whether a pump runs at a rate in m³/s.
func runs(rate float64) bool { return !calc.Under(calc.From(rate, "yd³/h"), placing.LeastPump) }

// computation holds one run, in the units of the method.
type computation struct {
	*calc.Recorder
	in    calc.Case
	pour  pressure.Pour
	rated bool
	// working reports whether the rating is an allowed working pressure of the form
	// maker's data. No plan is proved by any other figure.
	working bool
	rating  pressure.PSF
	guided  bool // the form maker's guide gives both lift and rise
	// refused is why no load like this goes in, a deed, or "".
	refused string
	looser  []calc.Field       // inputs that are looser than the amount of their house rule
	most    pressure.FtPerHour // greatest mean rise
}

func compute(r *calc.Recorder, in calc.Case) {
	asked := in
	in = worst(in)
	c := &computation{Recorder: r, in: in, rated: in.Has("rating"),
		working: in.Has("rating") && in.Choice("rating-is") == ratingWorking,
		guided:  in.Has("guide-lift") && in.Has("guide-rate")}
	if inOneGo(in) && calc.Over(in.Num("stop"), in.Num("length")) {
		r.Refuse(calc.At("stop"), refuseStop, calc.Amount("length", in.Num("length"), &displays.Height))
		return
	}
	c.rating = pressure.PSF(c.inUnit("rating", "psf"))
	c.pour = c.mix()
	if c.refused = c.refusal(); c.refused != "" {
		c.refuseLoad()
		return
	}
	c.askMissing(asked)
	c.putMix()
	c.looser = c.looserInputs()
	c.most = c.mostRise()
	if inLifts(in) {
		c.computeLifts()
	} else {
		c.computeOneGo()
	}
}

// inUnit is an input in a unit of the method.
func (c *computation) inUnit(id, unit string) float64 { return calc.From(c.in.Num(id), unit) }

// refuseLoad sets the deed for a load that does not go in, and says why. There is no
// pressure and no table: a number below the refusal would look like a plan.
func (c *computation) refuseLoad() {
	c.PutChoice("deed", c.refused)
	c.addRefusal()
}

// refusal is the deed where no plan is proved: the load is wetter or stiffer than the wall
// takes, colder than its core takes, or hotter or older than the house rule. It is "" otherwise.
func (c *computation) refusal() string {
	switch {
	case c.pour.Wet():
		return doRefuse
	case calc.Under(c.in.Num("slump"), calc.SI(placing.HoseLeast, "in")):
		return doTooStiff
	case calc.Under(c.in.Num("temperature"), c.leastTemperature()):
		return doTooCold
	case calc.Over(c.in.Num("temperature"), c.held("hottest")):
		return doTooHot
	case calc.Over(c.in.Num("age"), c.held("age-most")):
		return doTooOld
	}
	return ""
}

// leastTemperature is the least temperature of a load as it is placed, in K, by the
// thickness of the core. It is that of cold weather, because the air is not asked for.
func (c *computation) leastTemperature() float64 { return leastTemperature(c.in) }

func leastTemperature(in calc.Case) float64 {
	return calc.SI(weather.ColdLimitsFor(calc.From(in.Num("thickness"), "in")).Placed, "°F")
}

// held is an input that does not count where it is looser than its house rule: the least of
// the two.
func (c *computation) held(id string) float64 { return held(c.in, id) }

func held(in calc.Case, id string) float64 {
	if house, ok := in.HouseAmount(id); ok {
		return min(in.Num(id), house)
	}
	return in.Num(id)
}

// worst returns the inputs with the worst that may go in for each that is not answered: the
// coldest load that the core takes, the wettest that the equations take, the oldest that is
// allowed, and no mark on the whip.
func worst(in calc.Case) calc.Case {
	if !in.Has("temperature") {
		in = in.With("temperature", calc.Num(leastTemperature(in)))
	}
	if !in.Has("slump") {
		in = in.With("slump", calc.In(float64(pressure.MethodSlump), "in"))
	}
	if !in.Has("age") {
		in = in.With("age", calc.Num(held(in, "age-most")))
	}
	if !in.Has("vibration") {
		in = in.With("vibration", calc.ChoiceOf(unmarked))
	}
	return in
}

// looserInputs returns the inputs that are asked for and looser than the amount of their
// house rule, where no such input is held to the rule.
func (c *computation) looserInputs() (list []calc.Field) {
	for _, f := range inputs {
		if !f.HoldsRule && c.in.LooserThanHouse(f.ID) {
			list = append(list, f)
		}
	}
	return list
}

// mostRise is the greatest mean rise: the lower of the house rule's and the form maker's.
func (c *computation) mostRise() pressure.FtPerHour {
	house := c.inUnit("rise-house", "ft/h")
	if c.in.Has("guide-rate") {
		house = min(house, c.inUnit("guide-rate", "ft/h"))
	}
	return pressure.FtPerHour(house)
}

// tooFast reports whether a mean rise is above the greatest.
func (c *computation) tooFast(rise pressure.FtPerHour) bool {
	return calc.Over(float64(rise), float64(c.most))
}

// retards reports whether the set may be slow. An unknown admixture counts as one
// that slows it.
func (c *computation) retards() bool { return c.in.Choice("admixture") != pressure.AdmixNone }

func (c *computation) cement() pressure.Cement { return pressure.Cement(c.in.Choice("cement")) }

// mix reads the pour and its coefficients.
func (c *computation) mix() pressure.Pour {
	pour := pressure.Pour{
		Height: pressure.Feet(c.inUnit("height", "ft")),
		Weight: pressure.PCF(c.inUnit("weight", "lb/ft³")),
		Temp:   pressure.Fahrenheit(c.inUnit("temperature", "°F")),
		Slump:  pressure.Inches(c.inUnit("slump", "in")),
		Cc:     pressure.ChemistryCoefficient(c.cement(), c.retards()),
	}
	pour.Cw = pressure.WeightCoefficient(pour.Weight)
	return pour
}

// putMix sets the coefficients and the least pressures.
func (c *computation) putMix() {
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

// putPressure sets the pressure that decides, the methods side by side, and the list
// by depth.
func (c *computation) putPressure(given pressure.LiftPressure) {
	p := given.Pressure
	c.Put("pressure-local", pressure.SI(p))
	c.Put("rise-local", ftPerH(given.Rise))
	c.PutChoice("rule", c.rule(given))
	c.PutRows("methods", []calc.Case{c.method(byACI, given.ACI, given.HalfLift),
		c.method(byCIRIA, given.CIRIA, given.HalfLift), c.method(byDIN, given.DIN, given.HalfLift)})
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
	if c.planned() {
		c.Put("fluid-limit", c.UseFor(ofRating, nil, pressure.FluidDepthFormula, c.in.Num("rating"),
			c.in.Num("weight")))
	}
}

// place returns one place of the wall, with the setting time at the coldest load.
func (c *computation) place() pressure.Lifts {
	set, by := c.set()
	at := pressure.FinalSet(set, c.pour.Temp)
	c.PutChoice("set-by", by)
	if c.pour.Temp != pressure.SetAt {
		c.UseFor(ofSet, nil, weather.SetArrheniusFormula, calc.SI(set, "h"), pressure.Heat, c.in.Num("temperature"),
			calc.SI(float64(pressure.SetAt), "°F"))
	}
	c.Put("set-used", calc.SI(at, "h"))
	return pressure.Lifts{Pour: c.pour, Cement: c.cement(), Retarded: c.retards(), Set: at,
		Form: pressure.Feet(c.inUnit("form-height", "ft"))}
}

// method is the row of one method: its pressure, and in lifts that with half a lift.
func (c *computation) method(id string, p, half pressure.PSF) calc.Case {
	row := c.NewRow("methods").With("method", calc.ChoiceOf(id)).With("pressure", calc.Num(pressure.SI(p)))
	if inOneGo(c.in) {
		return row
	}
	return row.With("lift", calc.Num(pressure.SI(min(p+half, c.pour.Head()))))
}

// rule is what sets the pressure.
func (c *computation) rule(p pressure.LiftPressure) string {
	switch {
	case !calc.Under(float64(p.Pressure), float64(c.pour.Head())):
		return string(pressure.Fluid)
	case p.Landed >= p.Strictest()+p.HalfLift:
		return byLanded
	case p.ACI >= p.Strictest():
		return byACI
	case p.CIRIA >= p.Strictest():
		return byCIRIA
	}
	return byDIN
}

// planned reports whether a rating and a plan that may be proved are given. A plan that is
// looser than a house rule is not proved: someone else answers for it.
func (c *computation) planned() bool {
	return c.working && !c.isOutside() && !c.isBelow() && len(c.looser) == 0
}

// isBelow reports whether the concrete comes in from below its top.
func (c *computation) isBelow() bool { return c.in.Choice("hose") != fromTop }

// isOutside reports whether a tool shakes the form where the answer cannot prove it.
func (c *computation) isOutside() bool {
	return c.in.Choice("outside") == outsideAbove || inOneGo(c.in) && c.in.Choice("outside") != outsideNone
}

// putDeed sets what to do and returns it. deed is the answer by pressure alone. A
// tool on the outside and placing from below may push harder than the fluid head:
// no rating proves them. A plan over a house rule is asked about first. The form maker's
// guide allows no better answer than its own.
func (c *computation) putDeed(deed string, beyondGuide bool) string {
	switch {
	case !c.rated:
		deed = unchecked
	case !c.working || c.isOutside() || c.isBelow():
		deed = doAsk
	case len(c.looser) > 0:
		deed = doHouse
	case beyondGuide && (deed == doGo || deed == doWait || deed == doLess || deed == doSlow):
		deed = doGuide
	case deed == doGo && c.guideMissing():
		deed = doUnguided
	}
	c.PutChoice("deed", deed)
	return deed
}

// guideMissing reports whether the form maker's guide is not entered, or only half of it,
// and nobody has said that it gives no lift and no rise.
func (c *computation) guideMissing() bool {
	return !c.guided && !(hasNoGuide(c.in) && c.in.Choice("guide-gives") == guideSilent)
}

// putGuide checks the form maker's lift and rise against those of the plan.
func (c *computation) putGuide(rise pressure.FtPerHour, lift float64) {
	if !c.guided {
		c.PutChoice("guide", pick(c.guideMissing(), guideNone, guideSilent))
		return
	}
	beyond := c.overGuideRate(rise) || c.overGuideLift(lift)
	c.PutChoice("guide", pick(beyond, guideBeyond, guideWithin))
	fill := math.Min(c.in.Num("guide-lift"), c.in.Num("height"))
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

func pick[T any](first bool, a, b T) T {
	if first {
		return a
	}
	return b
}
