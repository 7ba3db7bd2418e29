package bracing

import "coursebook/calculators/calc"

// Texts that several formulas share.
const (
	sayWind     = calc.Text("wind-on-wall.var.V: wind, 3-second gust")
	sayQ        = calc.Text("wind-on-wall.var.q: velocity pressure")
	sayHigh     = calc.Text("wind-on-wall.var.h: height of the wall")
	sayMoment   = calc.Text("wind-on-wall.var.M: moment for each length of wall")
	sayLevel    = calc.Text("wind-on-wall.var.H: level force in the brace")
	sayAttach   = calc.Text("wind-on-wall.var.a: height where the brace holds")
	sayRun      = calc.Text("wind-on-wall.var.d: foot of the brace from the wall")
	sayShare    = calc.Text("wind-on-wall.var.s: length of wall on one brace")
	sayPlank    = calc.Text("wind-on-wall.var.P: planks' load on one brace")
	sayLine     = calc.Text("wind-on-wall.var.w: wind on each length of wall")
	sayPressure = calc.Text("wind-on-wall.var.p: pressure on the wall")
)

var (
	designWind = &calc.Formula{
		ID: "design-wind", Title: calc.Text("wind-on-wall.f.design-wind: Wind for the construction time"), Expr: "f*V_b",
		Result: calc.Var{Symbol: "V", Meaning: sayWind, Unit: "m/s", US: "mph"},
		Vars: []calc.Var{
			{Symbol: "f", Meaning: calc.Text("wind-on-wall.var.f: factor for the time")},
			{Symbol: "V_b", Meaning: calc.Text("wind-on-wall.var.V_b: basic wind of the map"), Unit: "m/s", US: "mph"}},
		Fn: calc.Func2(DesignWind), Go: "bracing.DesignWind", Source: "asce37",
		Limits: calc.Text("wind-on-wall.limits.season: Not for hurricane country in its season."),
	}
	heightFactor = &calc.Formula{
		ID: "height-factor", Title: calc.Text("wind-on-wall.f.height-factor: Height factor"), Expr: "2.01*(max(z, 15)/z_g)^(2/alpha)",
		Result: calc.Var{Symbol: "K_z", Meaning: calc.Text("wind-on-wall.var.K_z: factor for height and exposure")},
		Vars: []calc.Var{
			{Symbol: "z", Meaning: calc.Text("wind-on-wall.var.z: top of the wall over the ground"), Unit: "ft"},
			{Symbol: "z_g", Meaning: calc.Text("wind-on-wall.var.z_g: gradient height of the exposure"), Unit: "ft"},
			{Symbol: "alpha", Meaning: calc.Text("wind-on-wall.var.alpha: exponent of the exposure")}},
		Fn: calc.Func3(HeightFactor), Go: "bracing.HeightFactor", Source: "asce7",
		Limits: calc.Text("wind-on-wall.limits.editions: Editions 7-05 to 7-16. The 2022 edition gives the same for low walls."),
	}
	groundFactor = &calc.Formula{
		ID: "ground-factor", Title: calc.Text("wind-on-wall.f.ground-factor: Factor for high ground"), Expr: "exp(-0.0000362*z_e)",
		Result: calc.Var{Symbol: "K_e", Meaning: calc.Text("wind-on-wall.var.K_e: factor for thinner air")},
		Vars:   []calc.Var{{Symbol: "z_e", Meaning: calc.Text("wind-on-wall.var.z_e: ground over sea level"), Unit: "ft"}},
		Fn:     calc.Func1(GroundFactor), Go: "bracing.GroundFactor", Source: "asce716",
	}
	velocityPressure = &calc.Formula{
		ID: "velocity-pressure", Title: calc.Text("wind-on-wall.f.velocity-pressure: Velocity pressure"), Expr: "0.00256*K_z*K_zt*K_d*K_e*V^2",
		Result: calc.Var{Symbol: "q_z", Meaning: sayQ, Unit: "psf"},
		Vars: []calc.Var{
			{Symbol: "K_z", Meaning: calc.Text("wind-on-wall.var.K_z-in: height factor")},
			{Symbol: "K_zt", Meaning: calc.Text("wind-on-wall.var.K_zt: factor for a hill or ridge")},
			{Symbol: "K_d", Meaning: calc.Text("wind-on-wall.var.K_d: factor for direction")},
			{Symbol: "K_e", Meaning: calc.Text("wind-on-wall.var.K_e-in: factor for high ground")},
			{Symbol: "V", Meaning: sayWind, Unit: "mph"}},
		Fn: calc.Func5(VelocityPressure), Go: "bracing.VelocityPressure", Source: "asce7",
	}
	wallPressure = &calc.Formula{
		ID: "wall-pressure", Title: calc.Text("wind-on-wall.f.wall-pressure: Pressure on the wall"), Expr: "gamma*q_z*G*C_f",
		Result: calc.Var{Symbol: "p", Meaning: sayPressure, Unit: "Pa", US: "psf"},
		Vars: []calc.Var{
			{Symbol: "gamma", Meaning: calc.Text("wind-on-wall.var.gamma: load factor")},
			{Symbol: "q_z", Meaning: sayQ, Unit: "Pa", US: "psf"},
			{Symbol: "G", Meaning: calc.Text("wind-on-wall.var.G: gust factor")},
			{Symbol: "C_f", Meaning: calc.Text("wind-on-wall.var.C_f: force coefficient, both faces")}},
		Fn: calc.Func4(WallPressure), Go: "bracing.WallPressure", Source: "walls",
	}
	windLine = &calc.Formula{
		ID: "wind-line", Title: calc.Text("wind-on-wall.f.wind-line: Wind on each length of wall"), Expr: "p*h",
		Result: calc.Var{Symbol: "w", Meaning: sayLine, Unit: "N/m", US: "lbf/ft"},
		Vars: []calc.Var{
			{Symbol: "p", Meaning: sayPressure, Unit: "Pa", US: "psf"},
			{Symbol: "h", Meaning: sayHigh, Unit: "m", US: "ft"}},
		Fn: calc.Func2(WindLine), Go: "bracing.WindLine", Source: "statics",
	}
	windMoment = &calc.Formula{
		ID: "wind-moment", Title: calc.Text("wind-on-wall.f.wind-moment: Moment of the wind"), Expr: "0.55*w*h",
		Result: calc.Var{Symbol: "M", Meaning: sayMoment, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "w", Meaning: sayLine, Unit: "N/m", US: "lbf/ft"},
			{Symbol: "h", Meaning: sayHigh, Unit: "m", US: "ft"}},
		Fn: calc.Func2(WindMoment), Go: "bracing.WindMoment", Source: "walls",
	}
	leastMoment = &calc.Formula{
		ID: "least-moment", Title: calc.Text("wind-on-wall.f.least-moment: Least moment for a wall form"), Expr: "max(15*h^2/2, 100*h)",
		Result: calc.Var{Symbol: "M_0", Meaning: sayMoment, Unit: "lbf"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: sayHigh, Unit: "ft"}},
		Fn:     calc.Func1(LeastMoment), Go: "bracing.LeastMoment", Source: "aci347",
	}
	braceHold = &calc.Formula{
		ID: "brace-hold", Title: calc.Text("wind-on-wall.f.brace-hold: Level force in the brace"), Expr: "M*s/a",
		Result: calc.Var{Symbol: "H", Meaning: sayLevel, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "M", Meaning: sayMoment, Unit: "N", US: "lbf"},
			{Symbol: "s", Meaning: sayShare, Unit: "m", US: "ft"},
			{Symbol: "a", Meaning: sayAttach, Unit: "m", US: "ft"}},
		Fn: calc.Func3(BraceHold), Go: "bracing.BraceHold", Source: "statics",
	}
	braceForce = &calc.Formula{
		ID: "brace-force", Title: calc.Text("wind-on-wall.f.brace-force: Force along the brace"), Expr: "H*L/d",
		Result: calc.Var{Symbol: "F", Meaning: calc.Text("wind-on-wall.var.F: force along the brace"), Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "H", Meaning: sayLevel, Unit: "N", US: "lbf"},
			{Symbol: "L", Meaning: calc.Text("wind-on-wall.var.L: length of the brace"), Unit: "m", US: "ft"},
			{Symbol: "d", Meaning: sayRun, Unit: "m", US: "ft"}},
		Fn: calc.Func3(BraceForce), Go: "bracing.BraceForce", Source: "statics",
	}
	anchorUplift = &calc.Formula{
		ID: "uplift", Title: calc.Text("wind-on-wall.f.uplift: Upright force at the foot"), Expr: "H*(a + f)/d",
		Result: calc.Var{Symbol: "U", Meaning: calc.Text("wind-on-wall.var.U: upright force at the foot"), Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "H", Meaning: sayLevel, Unit: "N", US: "lbf"},
			{Symbol: "a", Meaning: sayAttach, Unit: "m", US: "ft"},
			{Symbol: "f", Meaning: calc.Text("wind-on-wall.var.f-below: foot below the wall base"), Unit: "m", US: "ft"},
			{Symbol: "d", Meaning: sayRun, Unit: "m", US: "ft"}},
		Fn: calc.Func4(AnchorUplift), Go: "bracing.AnchorUplift", Source: "statics",
	}
	plankLoad = &calc.Formula{
		ID: "plank-load", Title: calc.Text("wind-on-wall.f.plank-load: Planks on one brace"), Expr: "u*b*s",
		Result: calc.Var{Symbol: "P", Meaning: sayPlank, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "u", Meaning: calc.Text("wind-on-wall.var.u: load on the planks"), Unit: "Pa", US: "psf"},
			{Symbol: "b", Meaning: calc.Text("wind-on-wall.var.b: width of the platform"), Unit: "m", US: "ft"},
			{Symbol: "s", Meaning: sayShare, Unit: "m", US: "ft"}},
		Fn: calc.Func3(PlankLoad), Go: "bracing.PlankLoad", Source: "osha-l",
	}
	plankHold = &calc.Formula{
		ID: "plank-hold", Title: calc.Text("wind-on-wall.f.plank-hold: Level force from the planks"), Expr: "P*c/a",
		Result: calc.Var{Symbol: "H_P", Meaning: sayLevel, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "P", Meaning: sayPlank, Unit: "N", US: "lbf"},
			{Symbol: "c", Meaning: calc.Text("wind-on-wall.var.c: middle of the planks from the wall"), Unit: "m", US: "ft"},
			{Symbol: "a", Meaning: sayAttach, Unit: "m", US: "ft"}},
		Fn: calc.Func3(PlankHold), Go: "bracing.PlankHold", Source: "statics",
	}
	plainPressure = &calc.Formula{
		ID: "plain-pressure", Title: calc.Text("wind-on-wall.f.plain-pressure: Pressure of a wind read on site"), Expr: "0.00256*V^2",
		Result: calc.Var{Symbol: "q", Meaning: sayQ, Unit: "psf"},
		Vars:   []calc.Var{{Symbol: "V", Meaning: sayWind, Unit: "mph"}},
		Fn:     calc.Func1(PlainPressure), Go: "bracing.PlainPressure", Source: "asce7",
	}
	clearZone = &calc.Formula{
		ID: "zone", Title: calc.Text("wind-on-wall.f.zone: Fall zone"), Expr: "h + 4",
		Result: calc.Var{Symbol: "Z", Meaning: calc.Text("wind-on-wall.var.Z: zone on each side of the wall"), Unit: "ft"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: sayHigh, Unit: "ft"}},
		Fn:     calc.Func1(ClearZone), Go: "bracing.ClearZone", Source: "masonry",
	}
)

var windFormulas = []*calc.Formula{
	designWind, heightFactor, groundFactor, velocityPressure, wallPressure, windLine, windMoment, leastMoment,
	plankLoad, plankHold, braceHold, braceLength, braceForce, anchorUplift, plainPressure, clearZone,
}
