package pressure

import "coursebook/calculators/calc"

const headTitle = calc.Text("Full fluid head")

// The symbols of the equations.
const (
	meansCc    = calc.Text("coefficient for chemistry")
	meansT     = calc.Text("temperature of the concrete")
	meansH     = calc.Text("depth of fluid concrete")
	meansQ     = calc.Text("pump rate")
	meansL     = calc.Text("length that fills")
	meansB     = calc.Text("core thickness")
	meansEq    = calc.Text("pressure by the wall equation")
	meansFloor = calc.Text("least design pressure")
)

// The variables that several equations share. The ones with a US unit are for
// equations that hold in both systems.
var (
	varCc = calc.Var{Symbol: "C_c", Meaning: meansCc}
	varR  = calc.Var{Symbol: "R", Meaning: meansR, Unit: "ft/h"}
	varT  = calc.Var{Symbol: "T", Meaning: meansT, Unit: "°F"}
	bothW = calc.Var{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"}
	bothR = calc.Var{Symbol: "R", Meaning: meansR, Unit: "m/h", US: "ft/h"}
	bothQ = calc.Var{Symbol: "Q", Meaning: meansQ, Unit: "m³/h", US: "ft³/h"}
)

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

// WallSlowFormula declares WallSlow.
var WallSlowFormula = &calc.Formula{
	ID: "slow", Title: calc.Text("Slow wall equation"),
	Expr: "C_w*C_c*(150 + 9000*R/T)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "psf"},
	Vars: []calc.Var{varCw, varCc, varR, varT},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(WallSlow(v[0], v[1], FtPerHour(v[2]), Fahrenheit(v[3])))
	}),
	Go: "pressure.WallSlow", Source: "aci",
	Limits: calc.Text(
		"Walls placed no higher than 14 ft (4.3 m), rising slower than 7 ft/h (2.1 m/h). Slump no more than 7 in. " +
			"(175 mm). Vibrator no deeper than 4 ft (1.2 m).",
	),
}

// WallFast is the pressure in psf of a wall that rises at 7 to 15 ft/h, and
// of one taller than 14 ft at any rise up to 15 ft/h:
// C_w·C_c·(150 + 43400/T + 2800·R/T). It meets WallSlow at 7 ft/h.
// Source: ACI 347-04 sec. 2.2.2 and 347R-14, wall equations.
func WallFast(cw, cc float64, r FtPerHour, t Fahrenheit) PSF {
	return PSF(cw * cc * (150 + 43400/float64(t) + 2800*float64(r)/float64(t)))
}

// WallFastFormula declares WallFast.
var WallFastFormula = &calc.Formula{
	ID: "fast", Title: calc.Text("Fast wall equation"),
	Expr: "C_w*C_c*(150 + 43400/T + 2800*R/T)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "psf"},
	Vars: []calc.Var{varCw, varCc, varR, varT},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(WallFast(v[0], v[1], FtPerHour(v[2]), Fahrenheit(v[3])))
	}),
	Go: "pressure.WallFast", Source: "aci",
	Limits: calc.Text(
		"Rise of 7 to 15 ft/h (2.1 to 4.6 m/h). Up to 15 ft/h (4.6 m/h) where more than 14 ft (4.3 m) is placed. It " +
			"meets the slow one at 7 ft/h. Slump no more than 7 in. (175 mm). Vibrator no deeper than 4 ft (1.2 m).",
	),
}

// FluidHead is the pressure in psf under a depth of fluid concrete: w·h, with
// no coefficient. Source: ACI 347-04 sec. 2.2.2.
func FluidHead(w PCF, h Feet) PSF { return PSF(float64(w) * float64(h)) }

// FluidHeadFormula declares FluidHead.
var FluidHeadFormula = &calc.Formula{
	ID: "head", Title: headTitle,
	Expr: "w*h", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{bothW, calc.Var{Symbol: "h", Meaning: meansH, Unit: "m", US: "ft"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(FluidHead(PCF(v[0]), Feet(v[1]))) }),
	Go:   "pressure.FluidHead", Source: "hurd",
	Limits: calc.Text("Always true of fluid concrete. No coefficient goes with it."),
}

// FluidDepth is the depth in ft at which the fluid head reaches p: p/w. w is
// above 0. Source: algebra on FluidHead.
func FluidDepth(p PSF, w PCF) Feet { return Feet(float64(p) / float64(w)) }

// FluidDepthFormula declares FluidDepth.
var FluidDepthFormula = &calc.Formula{
	ID: "depth", Title: calc.Text("Depth of fluid for a pressure"),
	Expr: "p/w", Result: calc.Var{Symbol: "h", Meaning: meansH, Unit: "m", US: "ft"},
	Vars: []calc.Var{calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"}, bothW},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(FluidDepth(PSF(v[0]), PCF(v[1]))) }),
	Go:   "pressure.FluidDepth", Source: "hurd",
}

// LeastPressure is the least design pressure in psf, 600·C_w, at any rise,
// unless the full fluid head is less. Source: ACI 347R-14.
func LeastPressure(cw float64) PSF { return PSF(600 * cw) }

// LeastPressureSI is the least design pressure of the SI edition in psf:
// 30 kPa times C_w. Source: ACI 347R-14, SI edition, from memory.
func LeastPressureSI(cw float64) PSF { return leastSI * PSF(cw) }

// LeastOfBoth is the least design pressure in psf that counts: the larger of both
// editions, max(600·C_w psf, 30 kPa·C_w). It is that of the SI edition.
func LeastOfBoth(cw float64) PSF { return max(LeastPressure(cw), LeastPressureSI(cw)) }

// LeastPressureFormula declares LeastOfBoth.
var LeastPressureFormula = &calc.Formula{
	ID: "floor", Title: calc.Text("Least design pressure, larger of both editions"),
	Expr: "max(600*C_w, 30/0.04788026*C_w)", Result: calc.Var{Symbol: "p_min", Meaning: meansFloor, Unit: "psf"},
	Vars: []calc.Var{varCw},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(LeastOfBoth(v[0])) }),
	Go:   "pressure.LeastOfBoth", Source: "si",
	Limits: calc.Text(
		"The US edition gives 600 psf and the SI edition 30 kPa, which is 626.6 psf. So the SI edition governs. " +
			"Never more than the full fluid head.",
	),
}

// Bounded limits the pressure of an equation to the range from the floor to the
// fluid head. If the floor exceeds the head, the result is the head. Source: ACI 347-04 sec. 2.2.2.
func Bounded(equation, floor, head PSF) PSF { return min(head, max(equation, floor)) }

// Rise is the rate of rise of concrete if a flow q fills a length of wall of the
// given thickness: q/(length·thickness). Any coherent units; length and
// thickness are above 0.
func Rise(q, length, thickness float64) float64 { return q / (length * thickness) }

// RiseFormula declares Rise.
var RiseFormula = &calc.Formula{
	ID: "rise", Title: calc.Text("Rise of the concrete"),
	Expr: "Q/(L*b)", Result: bothR,
	Vars: []calc.Var{
		bothQ,
		calc.Var{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"},
		calc.Var{Symbol: "b", Meaning: meansB, Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(Rise),
	Go: "pressure.Rise", Source: "army",
}

// Flow is the inverse of Rise: the flow at which a length of wall rises at r.
func Flow(r, length, thickness float64) float64 { return r * length * thickness }

// FlowFormula declares Flow.
var FlowFormula = &calc.Formula{
	ID: "flow", Title: calc.Text("Pump rate for a rise"),
	Expr: "R*L*b", Result: bothQ,
	Vars: []calc.Var{
		bothR,
		calc.Var{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"},
		calc.Var{Symbol: "b", Meaning: meansB, Unit: "m", US: "ft"},
	},
	Fn: calc.Func3(Flow),
	Go: "pressure.Flow", Source: "army",
}
