package pressure

import "coursebook/calculators/calc"

// The symbols of the equations.
const (
	meansP     = calc.Text("pressure on the form")
	meansRate  = calc.Text("rated pressure of the form")
	meansCw    = calc.Text("coefficient for unit weight")
	meansCc    = calc.Text("coefficient for chemistry")
	meansR     = calc.Text("rise of the concrete")
	meansT     = calc.Text("temperature of the concrete")
	meansW     = calc.Text("unit weight of the concrete")
	meansH     = calc.Text("depth of fluid concrete")
	meansQ     = calc.Text("pump rate")
	meansL     = calc.Text("length that fills")
	meansB     = calc.Text("core thickness")
	meansEq    = calc.Text("pressure by the wall equation")
	meansFloor = calc.Text("least design pressure")
)

// The variables that several equations share. The plain ones are those of
// equations that hold in either system.
var (
	varCw  = calc.Var{Symbol: "C_w", Meaning: meansCw}
	varCc  = calc.Var{Symbol: "C_c", Meaning: meansCc}
	varR   = calc.Var{Symbol: "R", Meaning: meansR, Unit: "ft/h"}
	varT   = calc.Var{Symbol: "T", Meaning: meansT, Unit: "°F"}
	plainW = calc.Var{Symbol: "w", Meaning: meansW, Unit: "kN/m³", US: "lb/ft³"}
	plainR = calc.Var{Symbol: "R", Meaning: meansR, Unit: "m/h", US: "ft/h"}
	plainQ = calc.Var{Symbol: "Q", Meaning: meansQ, Unit: "m³/h", US: "ft³/h"}
)

var eqSlow = &calc.Formula{
	ID: "slow", Title: calc.Text("Slow wall equation"),
	Expr: "C_w*C_c*(150 + 9000*R/T)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "psf"},
	Vars: []calc.Var{varCw, varCc, varR, varT},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(WallSlow(v[0], v[1], FtPerHour(v[2]), Fahrenheit(v[3])))
	}),
	Go: "pressure.WallSlow", Source: "aci",
	Limits: calc.Text("Walls placed no higher than 14 ft (4.3 m), rising slower than 7 ft/h (2.1 m/h). Slump no more than 7 in. (175 mm). Poker no deeper than 4 ft (1.2 m)."),
}

var eqFast = &calc.Formula{
	ID: "fast", Title: calc.Text("Fast wall equation"),
	Expr: "C_w*C_c*(150 + 43400/T + 2800*R/T)", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "psf"},
	Vars: []calc.Var{varCw, varCc, varR, varT},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(WallFast(v[0], v[1], FtPerHour(v[2]), Fahrenheit(v[3])))
	}),
	Go: "pressure.WallFast", Source: "aci",
	Limits: calc.Text("Rise of 7 to 15 ft/h (2.1 to 4.6 m/h), or up to 15 ft/h (4.6 m/h) where more than 14 ft (4.3 m) is placed. It meets the slow one at 7 ft/h. Slump no more than 7 in. (175 mm). Poker no deeper than 4 ft (1.2 m)."),
}

var eqHead = &calc.Formula{
	ID: "head", Title: headTitle,
	Expr: "w*h", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{plainW, calc.Var{Symbol: "h", Meaning: meansH, Unit: "m", US: "ft"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(FluidHead(PCF(v[0]), Feet(v[1]))) }),
	Go:   "pressure.FluidHead", Source: "hurd",
	Limits: calc.Text("Always true of fluid concrete. No coefficient goes with it."),
}

var eqDepth = &calc.Formula{
	ID: "depth", Title: calc.Text("Depth of fluid for a pressure"),
	Expr: "p/w", Result: calc.Var{Symbol: "h", Meaning: meansH, Unit: "m", US: "ft"},
	Vars: []calc.Var{calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"}, plainW},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(FluidDepth(PSF(v[0]), PCF(v[1]))) }),
	Go:   "pressure.FluidDepth", Source: "hurd",
}

var eqFloor = &calc.Formula{
	ID: "floor", Title: calc.Text("Least design pressure"),
	Expr: "600*C_w", Result: calc.Var{Symbol: "p_min", Meaning: meansFloor, Unit: "psf"},
	Vars: []calc.Var{varCw},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(LeastPressure(v[0])) }),
	Go:   "pressure.LeastPressure", Source: "aci",
	Limits: calc.Text("Never more than the full fluid head."),
}

var eqBounded = &calc.Formula{
	ID: "bounds", Title: calc.Text("Between floor and fluid head"),
	Expr: "min(p_h, max(p_e, p_min))", Result: calc.Var{Symbol: "p", Meaning: meansP, Unit: "kPa", US: "psf"},
	Vars: []calc.Var{calc.Var{Symbol: "p_e", Meaning: meansEq, Unit: "kPa", US: "psf"}, calc.Var{Symbol: "p_min", Meaning: meansFloor, Unit: "kPa", US: "psf"}, calc.Var{Symbol: "p_h", Meaning: meansHead, Unit: "kPa", US: "psf"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return float64(Bounded(PSF(v[0]), PSF(v[1]), PSF(v[2]))) }),
	Go:   "pressure.Bounded", Source: "hurd",
}

var eqRise = &calc.Formula{
	ID: "rise", Title: calc.Text("Rise of the concrete"),
	Expr: "Q/(L*b)", Result: plainR,
	Vars: []calc.Var{plainQ, calc.Var{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"}, calc.Var{Symbol: "b", Meaning: meansB, Unit: "m", US: "ft"}},
	Fn:   calc.Func3(Rise),
	Go:   "pressure.Rise", Source: "army",
}

var eqFlow = &calc.Formula{
	ID: "flow", Title: calc.Text("Pump rate for a rise"),
	Expr: "R*L*b", Result: plainQ,
	Vars: []calc.Var{plainR, calc.Var{Symbol: "L", Meaning: meansL, Unit: "m", US: "ft"}, calc.Var{Symbol: "b", Meaning: meansB, Unit: "m", US: "ft"}},
	Fn:   calc.Func3(Flow),
	Go:   "pressure.Flow", Source: "army",
}

var eqRiseSlow = &calc.Formula{
	ID: "rise-slow", Title: calc.Text("Highest rise, slow equation"),
	Expr: "T*(p/(C_w*C_c) - 150)/9000", Result: varR,
	Vars: []calc.Var{varCw, varCc, calc.Var{Symbol: "p", Meaning: meansRate, Unit: "psf"}, varT},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(RiseSlow(v[0], v[1], PSF(v[2]), Fahrenheit(v[3])))
	}),
	Go: "pressure.RiseSlow", Source: "aci",
	Limits: calc.Text("Up to 7 ft/h (2.1 m/h), and only for a rating of at least 600 psf (28.7 kPa) times the weight coefficient."),
}

var eqRiseFast = &calc.Formula{
	ID: "rise-fast", Title: calc.Text("Highest rise, fast equation"),
	Expr: "(T*(p/(C_w*C_c) - 150) - 43400)/2800", Result: varR,
	Vars: []calc.Var{varCw, varCc, calc.Var{Symbol: "p", Meaning: meansRate, Unit: "psf"}, varT},
	Fn: calc.FuncN(func(v []float64) float64 {
		return float64(RiseFast(v[0], v[1], PSF(v[2]), Fahrenheit(v[3])))
	}),
	Go: "pressure.RiseFast", Source: "aci",
	Limits: calc.Text("Up to 15 ft/h (4.6 m/h), and only for a rating of at least 600 psf (28.7 kPa) times the weight coefficient."),
}

var eqLight = &calc.Formula{
	ID: "light", Title: calc.Text("Weight coefficient, light mix"),
	Expr: "max(0.8, 0.5*(1 + w/145))", Result: varCw,
	Vars: []calc.Var{{Symbol: "w", Meaning: meansW, Unit: "lb/ft³"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return LightWeight(PCF(v[0])) }),
	Go:   "pressure.LightWeight", Source: "aci",
	Limits: calc.Text("Below 140 lb/ft³ (2240 kg/m³). From there to 150 lb/ft³ (2400 kg/m³) the coefficient is 1; it steps at both."),
}

var eqHeavy = &calc.Formula{
	ID: "heavy", Title: calc.Text("Weight coefficient, heavy mix"),
	Expr: "w/145", Result: varCw,
	Vars: []calc.Var{{Symbol: "w", Meaning: meansW, Unit: "lb/ft³"}},
	Fn:   calc.FuncN(func(v []float64) float64 { return HeavyWeight(PCF(v[0])) }),
	Go:   "pressure.HeavyWeight", Source: "aci",
	Limits: calc.Text("Above 150 lb/ft³ (2400 kg/m³)."),
}

var equations = []*calc.Formula{
	eqRise, eqSlow, eqFast, eqHead, eqFloor, eqBounded, eqDepth, eqRiseSlow, eqRiseFast, eqFlow, eqLight, eqHeavy,
}
