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
	SlowHeightSI Feet      = 4.2 / 0.3048             // 4.2 m
	SlowRiseSI   FtPerHour = 2.1 / 0.3048             // 2.1 m/h
	MethodRiseSI FtPerHour = 4.5 / 0.3048             // 4.5 m/h
	leastSI      PSF       = 30000 / 47.8802589803358 // 30 kPa
)

// The rules.
const (
	Slow  Rule = "slow"  // WallSlow
	Fast  Rule = "fast"  // WallFast
	Fluid Rule = "fluid" // full fluid head
	Floor Rule = "floor" // LeastPressure
)

// The results of HighestRise and HighestInOneGo; the last two are of the latter only.
const (
	ByEquation  Reach = iota // the equation reaches the rating at the rise given
	ByMethod                 // the form holds at a faster rise, but the method ends at MethodRise
	AnyRise                  // the form holds the full fluid head
	BelowFloor               // rated below 600·C_w: no rise is slow enough
	FluidAnyway              // slump, cold or vibration: fluid regardless of the rise
	TooTall                  // taller than 14 ft, and the fast equation exceeds the rating at any rise
	ByOthers                 // the SI edition or another method reaches the rating at the rise given
	NoRise                   // the SI edition or another method exceeds the rating at any rise
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

// HighestRise is the fastest rise at which Pressure does not exceed the rating of
// a form. The rise is 0 unless the result is ByEquation or ByMethod.
func (p Pour) HighestRise(rating PSF) (FtPerHour, Reach) {
	held := func(x PSF) bool { return !calc.Over(float64(x), float64(rating)) }
	switch {
	case held(p.Head()):
		return 0, AnyRise
	case p.Wet() || p.Cold() || p.Shaken:
		return 0, FluidAnyway
	case !held(LeastPressure(p.Cw)):
		return 0, BelowFloor
	}
	r := RiseSlow(p.Cw, p.Cc, rating, p.Credit())
	if p.Tall() || r >= SlowRise {
		r = RiseFast(p.Cw, p.Cc, rating, p.Credit())
	}
	switch {
	case r <= 0:
		return 0, TooTall
	case r >= MethodRise:
		return MethodRise, ByMethod
	}
	return r, ByEquation
}
