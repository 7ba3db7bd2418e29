// Package pressure says what fresh concrete does to the form of a wall, and
// how fast it may rise: typed formulas, the method that chooses among them,
// and the calculator declared on top.
//
// The rate equations were published for US units and are kept in them, one
// named type per unit, so that a kilopascal never meets a constant in psf.
package pressure

// The units of the published equations.
type (
	PSF        float64 // pressure, lbf/ft²
	PCF        float64 // unit weight, lb/ft³
	Feet       float64 // height or depth, ft
	Inches     float64 // slump, in.
	FtPerHour  float64 // rise of the concrete in the form, ft/h
	Fahrenheit float64 // temperature of the concrete, °F
)

// WallSlow is the pressure in psf of a wall no taller than 14 ft that rises
// slower than 7 ft/h: C_w·C_c·(150 + 9000·R/T). cw and cc are the unit weight
// and the chemistry coefficient, t the temperature of the concrete itself.
// The bounds by 600·C_w and the fluid head are not part of it.
// Source: ACI 347-04 sec. 2.2.2 and 347R-14, wall equations.
func WallSlow(cw, cc float64, r FtPerHour, t Fahrenheit) PSF {
	return PSF(cw * cc * (150 + 9000*float64(r)/float64(t)))
}

// WallFast is the pressure in psf of a wall that rises at 7 to 15 ft/h, and
// of one taller than 14 ft at any rise up to 15 ft/h:
// C_w·C_c·(150 + 43400/T + 2800·R/T). It meets WallSlow at 7 ft/h.
// Source: ACI 347-04 sec. 2.2.2 and 347R-14, wall equations.
func WallFast(cw, cc float64, r FtPerHour, t Fahrenheit) PSF {
	return PSF(cw * cc * (150 + 43400/float64(t) + 2800*float64(r)/float64(t)))
}

// RiseSlow turns WallSlow round: the rise in ft/h at which it reaches p. It
// is negative where p is below 150·C_w·C_c. Source: algebra on WallSlow.
func RiseSlow(cw, cc float64, p PSF, t Fahrenheit) FtPerHour {
	return FtPerHour(float64(t) * (float64(p)/(cw*cc) - 150) / 9000)
}

// RiseFast turns WallFast round: the rise in ft/h at which it reaches p. It
// is negative where the equation exceeds p at any rise.
// Source: algebra on WallFast.
func RiseFast(cw, cc float64, p PSF, t Fahrenheit) FtPerHour {
	atRest := float64(float64(t) * (float64(p)/(cw*cc) - 150))
	return FtPerHour((atRest - 43400) / 2800)
}

// FluidHead is the pressure in psf under a depth of fluid concrete: w·h, with
// no coefficient. Source: ACI 347-04 sec. 2.2.2.
func FluidHead(w PCF, h Feet) PSF { return PSF(float64(w) * float64(h)) }

// FluidDepth is the depth in ft at which the fluid head reaches p: p/w. w is
// above 0. Source: algebra on FluidHead.
func FluidDepth(p PSF, w PCF) Feet { return Feet(float64(p) / float64(w)) }

// LeastPressure is the floor in psf, 600·C_w: no wall is designed for less,
// however slow, unless its full fluid head is less. Source: ACI 347R-14.
func LeastPressure(cw float64) PSF { return PSF(600 * cw) }

// Bounded keeps the pressure of an equation between the floor and the fluid
// head; where the two cross, the fluid head has the last word.
// Source: ACI 347-04 sec. 2.2.2.
func Bounded(equation, floor, head PSF) PSF { return min(head, max(equation, floor)) }

// Rise is how fast concrete rises where a flow q fills a length of wall of
// the given thickness: q/(length·thickness). Any coherent units; length and
// thickness are above 0.
func Rise(q, length, thickness float64) float64 { return q / (length * thickness) }

// Flow turns Rise round: the flow that makes a length of wall rise at r.
func Flow(r, length, thickness float64) float64 { return r * length * thickness }
