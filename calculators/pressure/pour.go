package pressure

import "coursebook/calculators/calc"

// The limits of the US edition. Each limit is inside, as published. Beyond it
// the full fluid head applies, or the fast equation.
const (
	SlowHeight     Feet       = 14 // tallest placement of the slow equation
	SlowRise       FtPerHour  = 7  // from here on the fast equation
	MethodRise     FtPerHour  = 15 // fastest rise of any equation
	MethodSlump    Inches     = 7  // wettest mix of any equation
	VibrationDepth Feet       = 4  // deepest internal vibration of any equation
	ColdBelow      Fahrenheit = 40 // coolest concrete of the printed tables
	HotAbove       Fahrenheit = 90 // warmer concrete counts as this warm
)

// The limits that the SI edition prints in whole figures. Each is stricter than
// that of the US edition. Source: ACI 347R-14, SI edition, from memory.
const (
	SlowHeightSI Feet      = 4.2 / 0.3048    // 4.2 m
	SlowRiseSI   FtPerHour = 2.1 / 0.3048    // 2.1 m/h
	MethodRiseSI FtPerHour = 14.7            // 4.5 m/h, rounded down as it is printed
	leastSI      PSF       = 30 / 0.04788026 // 30 kPa
)

// The rules.
const (
	Slow  Rule = "slow"  // WallSlow
	Fast  Rule = "fast"  // WallFast
	Fluid Rule = "fluid" // full fluid head
	Floor Rule = "floor" // LeastPressure
)

// The results of HighestInOneGo.
const (
	ByRise      Reach = iota // the form is loaded to its rating at the rise given
	AnyRise                  // the full fluid head is within the rating
	FluidAnyway              // slump, cold or vibration: fluid regardless of the rise
	NoRise                   // no rise is slow enough
)

// Rule is what sets the pressure.
type Rule string

// Pour is one placement, without its rise.
type Pour struct {
	Height Feet // placed in one go
	Weight PCF
	Cw, Cc float64
	Temp   Fahrenheit // of the concrete
	Slump  Inches
	// Shaken is true if vibration keeps the whole height fluid: deeper than
	// VibrationDepth, again, or from outside.
	Shaken bool
	// SI selects the limits and the floor of the SI edition.
	SI bool
}

// Head is the fluid head over the whole placement.
func (p Pour) Head() PSF { return FluidHead(p.Weight, p.Height) }

// limits are the limits and the floor of the edition.
func (p Pour) limits() (height Feet, slow, most FtPerHour, least PSF) {
	if p.SI {
		return SlowHeightSI, SlowRiseSI, MethodRiseSI, LeastPressureSI(p.Cw)
	}
	return SlowHeight, SlowRise, MethodRise, LeastPressure(p.Cw)
}

// Wet reports whether the mix is wetter than the equations allow.
func (p Pour) Wet() bool { return calc.Over(float64(p.Slump), float64(MethodSlump)) }

// Cold reports whether the concrete is cooler than the equations are used for.
func (p Pour) Cold() bool { return calc.Under(float64(p.Temp), float64(ColdBelow)) }

// Tall reports whether the placement is too high for the slow equation.
func (p Pour) Tall() bool {
	height, _, _, _ := p.limits()
	return calc.Over(float64(p.Height), float64(height))
}

// Credit is the temperature put into the equations.
func (p Pour) Credit() Fahrenheit { return min(p.Temp, HotAbove) }

// Equation is the rule whose equation applies at a rise: Slow, Fast or Fluid. At
// 7 ft/h slow and fast agree. Just above 14 ft and 15 ft/h the pressure jumps up.
func (p Pour) Equation(r FtPerHour) Rule {
	_, slow, most, _ := p.limits()
	switch {
	case p.Wet() || p.Cold() || p.Shaken || calc.Over(float64(r), float64(most)):
		return Fluid
	case p.Tall() || !calc.Under(float64(r), float64(slow)):
		return Fast
	}
	return Slow
}

// Pressure is the greatest pressure on the form at a rise, and what sets it.
func (p Pour) Pressure(r FtPerHour) (PSF, Rule) {
	rule := p.Equation(r)
	if rule == Fluid {
		return p.Head(), Fluid
	}
	equation := WallSlow(p.Cw, p.Cc, r, p.Credit())
	if rule == Fast {
		equation = WallFast(p.Cw, p.Cc, r, p.Credit())
	}
	_, _, _, floor := p.limits()
	if equation < floor {
		rule = Floor
	}
	bounded := Bounded(equation, floor, p.Head())
	if bounded == p.Head() {
		rule = Fluid
	}
	return bounded, rule
}

// Stricter is the larger pressure of the US and the SI edition at a rise, and
// what sets it.
func (p Pour) Stricter(r FtPerHour) (PSF, Rule) {
	us, si := p, p
	us.SI, si.SI = false, true
	a, rule := us.Pressure(r)
	if b, other := si.Pressure(r); b > a {
		return b, other
	}
	return a, rule
}

// AtDepth is the pressure at a depth below the top, given the greatest one:
// the fluid head down to the depth where it reaches the greatest, then constant.
func (p Pour) AtDepth(d Feet, greatest PSF) PSF { return min(FluidHead(p.Weight, d), greatest) }

// Reach is whether, and by what, the rise of a form is limited.
type Reach uint8
