package pressure

import (
	"math"

	"coursebook/calculators/calc"
)

// The options of how the concrete is placed, and of the shape of the form.
const (
	FromTop    = "top"
	SelfLevels = "scc"
)

// The options of what sets the pressure by a method.
const (
	SetByEquation = "equation"
	SetByLeast    = "least"
	SetByFluid    = "fluid"
	SetByOutside  = "outside"
)

// SharedCase is one pour for all three methods, in the units of the European
// ones.
type SharedCase struct {
	Height, Form float64 // m, placed in one go and of the form
	Rise         float64 // m/h
	Weight       float64 // kN/m³
	Temp         float64 // °C
	Set, Ref     float64 // h, and the temperature in °C it is for
	Cement       Cement
	Retarded     bool
	Class, Way   string
	Column       bool
}

// Greatest is the greatest pressure by one method and what sets it.
type Greatest struct {
	Pressure float64 // kPa
	rule     string
}

func (p SharedCase) head() float64 { return p.Weight * p.Height }

func (p SharedCase) fluid(rule string) Greatest { return Greatest{p.head(), rule} }

// capped limits the pressure of an equation to the fluid head.
func (p SharedCase) capped(pressure float64, rule string) Greatest {
	if !(pressure < p.head()) {
		return p.fluid(SetByFluid)
	}
	return Greatest{pressure, rule}
}

// wetter reports whether the class exceeds the slump of the ACI equations: F4 runs from 6 to over 8 in. of slump.
func (p SharedCase) wetter() bool { return p.Class == "f4" || ClassOf(p.Class).Flows() }

// aci is the result of the ACI wall equations, the same as form-pressure gives.
func (p SharedCase) aci() Greatest {
	if p.wetter() || p.Way != FromTop || p.Column {
		return p.fluid(SetByOutside)
	}
	pour := Pour{
		Height: Feet(calc.From(p.Height, "ft")),
		Weight: PCF(calc.From(calc.SI(p.Weight, "kN/m³"), "lb/ft³")),
		Temp:   Fahrenheit(calc.From(calc.SI(p.Temp, "°C"), "°F")),
		Cc:     ChemistryCoefficient(p.Cement, p.Retarded),
	}
	pour.Cw = WeightCoefficient(pour.Weight)
	rise := FtPerHour(calc.From(calc.SI(p.Rise, "m/h"), "ft/h"))
	greatest, rule := pour.Pressure(rise)
	if pour.Equation(rise) == Fluid {
		return p.fluid(SetByOutside)
	}
	kPa := calc.From(SI(greatest), "kPa")
	if rule == Floor {
		return p.capped(kPa, SetByLeast)
	}
	return p.capped(kPa, SetByEquation)
}

// C1 is the coefficient of the form's shape in plan.
func (p SharedCase) C1() float64 { return pick(p.Column, CIRIAColumn, CIRIAWall) }

// Credit is the temperature put into the CIRIA equation.
func (p SharedCase) Credit() float64 { return math.Min(p.Temp, CIRIAWarmest) }

// CIRIAHolds reports whether the pour is within the limits of CIRIA Report 108.
func (p SharedCase) CIRIAHolds() bool {
	return p.Way == FromTop && p.Class != SelfLevels && !calc.Under(p.Temp, CIRIAColdest)
}

// CIRIA is the result of CIRIA Report 108. It is the fluid head if the concrete
// fills the form before it stiffens.
func (p SharedCase) CIRIA() Greatest {
	if !p.CIRIAHolds() {
		return p.fluid(SetByOutside)
	}
	c2 := CIRIAMix(p.Cement, p.Retarded)
	return p.capped(CIRIAPressure(p.Weight, p.C1(), c2, CIRIATemperature(p.Credit()), p.Form, p.Rise), SetByEquation)
}

// DINHolds reports whether the pour is within the limits of DIN 18218.
func (p SharedCase) DINHolds() bool {
	return p.Way == FromTop && !calc.Over(p.Rise, DINRise) && !calc.Over(p.Height, DINHeight) &&
		!calc.Over(p.Set, DINSetHigh)
}

// Hours is the setting time put into the DIN equations.
func (p SharedCase) Hours() float64 { return math.Max(p.Set, DINSetLow) }

// DIN is the characteristic pressure by DIN 18218.
func (p SharedCase) DIN() Greatest {
	if !p.DINHolds() {
		return p.fluid(SetByOutside)
	}
	c, cool := ClassOf(p.Class), DINCool(p.Ref, p.Temp)
	if c.Flows() {
		return p.capped(DINFlowing(c.Reach, p.Rise, p.Hours(), cool, p.Weight))
	}
	return p.capped(DINStiff(c.Slope, c.Base, p.Rise, DINSet(c.Set, p.Hours()), cool, p.Weight))
}
