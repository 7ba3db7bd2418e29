package pressure

import (
	"math"

	"coursebook/calculators/calc"
)

// The options of how the concrete is placed, and of the shape of the form.
const (
	fromTop    = "top"
	asWall     = "wall"
	asColumn   = "column"
	selfLevels = "scc"
)

// The options of what sets the pressure by a method.
const (
	byEquation = "equation"
	byLeast    = "least"
	byFluid    = "fluid"
	byOutside  = "outside"
)

// sharedCase is one pour as all three methods see it, in the units of the
// European ones.
type sharedCase struct {
	height, form float64 // m, placed in one go and of the form
	rise         float64 // m/h
	weight       float64 // kN/m³
	temp         float64 // °C
	set, ref     float64 // h, and the °C it holds for
	cement       Cement
	retarded     bool
	class, way   string
	column       bool
}

// answer is the greatest pressure by one method and what sets it.
type answer struct {
	pressure float64 // kPa
	rule     string
}

func (p sharedCase) head() float64 { return p.weight * p.height }

func (p sharedCase) fluid(rule string) answer { return answer{p.head(), rule} }

// capped is a pressure by its equation, no more than the fluid head.
func (p sharedCase) capped(pressure float64, rule string) answer {
	if !(pressure < p.head()) {
		return p.fluid(byFluid)
	}
	return answer{pressure, rule}
}

// wetter tells that some of the class is beyond the slump of the ACI
// equations: F4 runs from 6 to over 8 in. of slump.
func (p sharedCase) wetter() bool { return p.class == "f4" || classOf(p.class).flows() }

// aci is the answer of the ACI wall equations, as form-pressure gives it.
func (p sharedCase) aci() answer {
	if p.wetter() || p.way != fromTop || p.column {
		return p.fluid(byOutside)
	}
	pour := Pour{
		Height: Feet(calc.From(p.height, "ft")),
		Weight: PCF(calc.From(calc.SI(p.weight, "kN/m³"), "lb/ft³")),
		Temp:   Fahrenheit(calc.From(calc.SI(p.temp, "°C"), "°F")),
		Cc:     ChemistryCoefficient(p.cement, p.retarded),
	}
	pour.Cw = WeightCoefficient(pour.Weight)
	rise := FtPerHour(calc.From(calc.SI(p.rise, "m/h"), "ft/h"))
	greatest, rule := pour.Pressure(rise)
	if pour.Equation(rise) == Fluid {
		return p.fluid(byOutside)
	}
	kPa := calc.From(psf(greatest), "kPa")
	if rule == Floor {
		return p.capped(kPa, byLeast)
	}
	return p.capped(kPa, byEquation)
}

func (p sharedCase) c1() float64 { return pick(p.column, CIRIAColumn, CIRIAWall) }

// credit is the temperature put into the CIRIA equation.
func (p sharedCase) credit() float64 { return math.Min(p.temp, CIRIAWarmest) }

func (p sharedCase) ciriaHolds() bool {
	return p.way == fromTop && p.class != selfLevels && !calc.Under(p.temp, CIRIAColdest)
}

// ciria is the answer of CIRIA Report 108. Where the concrete fills the form
// before it stiffens the equation has no root: fluid head.
func (p sharedCase) ciria() answer {
	if !p.ciriaHolds() {
		return p.fluid(byOutside)
	}
	c2 := CIRIAMix(p.cement, p.retarded)
	return p.capped(CIRIAPressure(p.weight, p.c1(), c2, CIRIATemperature(p.credit()), p.form, p.rise), byEquation)
}

func (p sharedCase) dinHolds() bool {
	return p.way == fromTop && !calc.Over(p.rise, DINRise) && !calc.Over(p.height, DINHeight) && !calc.Over(p.set, DINSetHigh)
}

// hours is the setting time put into the DIN equations.
func (p sharedCase) hours() float64 { return math.Max(p.set, DINSetLow) }

// din is the characteristic answer of DIN 18218.
func (p sharedCase) din() answer {
	if !p.dinHolds() {
		return p.fluid(byOutside)
	}
	c, cool := classOf(p.class), DINCool(p.ref, p.temp)
	pressure, least := DINStiff(c.slope, c.base, p.rise, DINSet(c.set, p.hours()), cool, p.weight), 25.0
	if c.flows() {
		pressure, least = DINFlowing(c.reach, p.rise, p.hours(), cool, p.weight), 30
	}
	if pressure == least {
		return p.capped(pressure, byLeast)
	}
	return p.capped(pressure, byEquation)
}
