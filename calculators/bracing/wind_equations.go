package bracing

import "coursebook/calculators/calc"

// Texts that several formulas share.
const (
	sayWind     = calc.Text("wind, 3-second gust")
	sayQ        = calc.Text("velocity pressure")
	sayHigh     = calc.Text("height of the wall")
	sayMoment   = calc.Text("moment for each length of wall")
	sayLevel    = calc.Text("level force in the brace")
	sayAttach   = calc.Text("height where the brace holds")
	sayRun      = calc.Text("foot of the brace from the wall")
	sayShare    = calc.Text("length of wall on one brace")
	sayPlank    = calc.Text("planks' load on one brace")
	sayLine     = calc.Text("wind on each length of wall")
	sayPressure = calc.Text("pressure on the wall")
)

var (
	designWind = &calc.Formula{
		ID: "design-wind", Title: calc.Text("Wind for the construction time"), Expr: "f*V_b",
		Result: calc.Var{Symbol: "V", Meaning: sayWind, Unit: "m/s", US: "mph"},
		Vars: []calc.Var{
			{Symbol: "f", Meaning: calc.Text("factor for the time")},
			{Symbol: "V_b", Meaning: calc.Text("basic wind of the map"), Unit: "m/s", US: "mph"}},
		Fn: calc.Func2(DesignWind), Go: "bracing.DesignWind", Source: "asce37",
		Limits: calc.Text("Not for hurricane country in its season."),
	}
	heightFactor = &calc.Formula{
		ID: "height-factor", Title: calc.Text("Height factor"), Expr: "2.01*(max(z, 15)/z_g)^(2/alpha)",
		Result: calc.Var{Symbol: "K_z", Meaning: calc.Text("factor for height and exposure")},
		Vars: []calc.Var{
			{Symbol: "z", Meaning: calc.Text("top of the wall over the ground"), Unit: "ft"},
			{Symbol: "z_g", Meaning: calc.Text("gradient height of the exposure"), Unit: "ft"},
			{Symbol: "alpha", Meaning: calc.Text("exponent of the exposure")}},
		Fn: calc.Func3(HeightFactor), Go: "bracing.HeightFactor", Source: "asce7",
		Limits: calc.Text("Editions 7-05 to 7-16. The 2022 edition gives the same for low walls."),
	}
	groundFactor = &calc.Formula{
		ID: "ground-factor", Title: calc.Text("Factor for high ground"), Expr: "exp(-0.0000362*z_e)",
		Result: calc.Var{Symbol: "K_e", Meaning: calc.Text("factor for thinner air")},
		Vars:   []calc.Var{{Symbol: "z_e", Meaning: calc.Text("ground over sea level"), Unit: "ft"}},
		Fn:     calc.Func1(GroundFactor), Go: "bracing.GroundFactor", Source: "asce716",
	}
	velocityPressure = &calc.Formula{
		ID: "velocity-pressure", Title: calc.Text("Velocity pressure"), Expr: "0.00256*K_z*K_zt*K_d*K_e*V^2",
		Result: calc.Var{Symbol: "q_z", Meaning: sayQ, Unit: "psf"},
		Vars: []calc.Var{
			{Symbol: "K_z", Meaning: calc.Text("height factor")},
			{Symbol: "K_zt", Meaning: calc.Text("factor for a hill or ridge")},
			{Symbol: "K_d", Meaning: calc.Text("factor for direction")},
			{Symbol: "K_e", Meaning: calc.Text("factor for high ground")},
			{Symbol: "V", Meaning: sayWind, Unit: "mph"}},
		Fn: calc.Func5(VelocityPressure), Go: "bracing.VelocityPressure", Source: "asce7",
	}
	wallPressure = &calc.Formula{
		ID: "wall-pressure", Title: calc.Text("Pressure on the wall"), Expr: "gamma*q_z*G*C_f",
		Result: calc.Var{Symbol: "p", Meaning: sayPressure, Unit: "Pa", US: "psf"},
		Vars: []calc.Var{
			{Symbol: "gamma", Meaning: calc.Text("load factor")},
			{Symbol: "q_z", Meaning: sayQ, Unit: "Pa", US: "psf"},
			{Symbol: "G", Meaning: calc.Text("gust factor")},
			{Symbol: "C_f", Meaning: calc.Text("force coefficient, both faces")}},
		Fn: calc.Func4(WallPressure), Go: "bracing.WallPressure", Source: "walls",
	}
	windLine = &calc.Formula{
		ID: "wind-line", Title: calc.Text("Wind on each length of wall"), Expr: "p*h",
		Result: calc.Var{Symbol: "w", Meaning: sayLine, Unit: "N/m", US: "lbf/ft"},
		Vars: []calc.Var{
			{Symbol: "p", Meaning: sayPressure, Unit: "Pa", US: "psf"},
			{Symbol: "h", Meaning: sayHigh, Unit: "m", US: "ft"}},
		Fn: calc.Func2(WindLine), Go: "bracing.WindLine", Source: "statics",
	}
	windMoment = &calc.Formula{
		ID: "wind-moment", Title: calc.Text("Moment of the wind"), Expr: "0.55*w*h",
		Result: calc.Var{Symbol: "M", Meaning: sayMoment, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "w", Meaning: sayLine, Unit: "N/m", US: "lbf/ft"},
			{Symbol: "h", Meaning: sayHigh, Unit: "m", US: "ft"}},
		Fn: calc.Func2(WindMoment), Go: "bracing.WindMoment", Source: "walls",
	}
	leastMoment = &calc.Formula{
		ID: "least-moment", Title: calc.Text("Least moment for a wall form"), Expr: "max(15*h^2/2, 100*h)",
		Result: calc.Var{Symbol: "M_0", Meaning: sayMoment, Unit: "lbf"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: sayHigh, Unit: "ft"}},
		Fn:     calc.Func1(LeastMoment), Go: "bracing.LeastMoment", Source: "aci347",
	}
	braceHold = &calc.Formula{
		ID: "brace-hold", Title: calc.Text("Level force in the brace"), Expr: "M*s/a",
		Result: calc.Var{Symbol: "H", Meaning: sayLevel, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "M", Meaning: sayMoment, Unit: "N", US: "lbf"},
			{Symbol: "s", Meaning: sayShare, Unit: "m", US: "ft"},
			{Symbol: "a", Meaning: sayAttach, Unit: "m", US: "ft"}},
		Fn: calc.Func3(BraceHold), Go: "bracing.BraceHold", Source: "statics",
	}
	braceForce = &calc.Formula{
		ID: "brace-force", Title: calc.Text("Force along the brace"), Expr: "H*L/d",
		Result: calc.Var{Symbol: "F", Meaning: calc.Text("force along the brace"), Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "H", Meaning: sayLevel, Unit: "N", US: "lbf"},
			{Symbol: "L", Meaning: calc.Text("length of the brace"), Unit: "m", US: "ft"},
			{Symbol: "d", Meaning: sayRun, Unit: "m", US: "ft"}},
		Fn: calc.Func3(BraceForce), Go: "bracing.BraceForce", Source: "statics",
	}
	anchorUplift = &calc.Formula{
		ID: "uplift", Title: calc.Text("Upright force at the foot"), Expr: "H*(a + f)/d",
		Result: calc.Var{Symbol: "U", Meaning: calc.Text("upright force at the foot"), Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "H", Meaning: sayLevel, Unit: "N", US: "lbf"},
			{Symbol: "a", Meaning: sayAttach, Unit: "m", US: "ft"},
			{Symbol: "f", Meaning: calc.Text("foot below the wall base"), Unit: "m", US: "ft"},
			{Symbol: "d", Meaning: sayRun, Unit: "m", US: "ft"}},
		Fn: calc.Func4(AnchorUplift), Go: "bracing.AnchorUplift", Source: "statics",
	}
	plankLoad = &calc.Formula{
		ID: "plank-load", Title: calc.Text("Planks on one brace"), Expr: "u*b*s",
		Result: calc.Var{Symbol: "P", Meaning: sayPlank, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "u", Meaning: calc.Text("load on the planks"), Unit: "Pa", US: "psf"},
			{Symbol: "b", Meaning: calc.Text("width of the platform"), Unit: "m", US: "ft"},
			{Symbol: "s", Meaning: sayShare, Unit: "m", US: "ft"}},
		Fn: calc.Func3(PlankLoad), Go: "bracing.PlankLoad", Source: "osha-l",
	}
	plankHold = &calc.Formula{
		ID: "plank-hold", Title: calc.Text("Level force from the planks"), Expr: "P*c/a",
		Result: calc.Var{Symbol: "H_P", Meaning: sayLevel, Unit: "N", US: "lbf"},
		Vars: []calc.Var{
			{Symbol: "P", Meaning: sayPlank, Unit: "N", US: "lbf"},
			{Symbol: "c", Meaning: calc.Text("middle of the planks from the wall"), Unit: "m", US: "ft"},
			{Symbol: "a", Meaning: sayAttach, Unit: "m", US: "ft"}},
		Fn: calc.Func3(PlankHold), Go: "bracing.PlankHold", Source: "statics",
	}
	plainPressure = &calc.Formula{
		ID: "plain-pressure", Title: calc.Text("Pressure of a wind read on site"), Expr: "0.00256*V^2",
		Result: calc.Var{Symbol: "q", Meaning: sayQ, Unit: "psf"},
		Vars:   []calc.Var{{Symbol: "V", Meaning: sayWind, Unit: "mph"}},
		Fn:     calc.Func1(PlainPressure), Go: "bracing.PlainPressure", Source: "asce7",
	}
	clearZone = &calc.Formula{
		ID: "zone", Title: calc.Text("Fall zone"), Expr: "h + 4",
		Result: calc.Var{Symbol: "Z", Meaning: calc.Text("zone on each side of the wall"), Unit: "ft"},
		Vars:   []calc.Var{{Symbol: "h", Meaning: sayHigh, Unit: "ft"}},
		Fn:     calc.Func1(ClearZone), Go: "bracing.ClearZone", Source: "masonry",
	}
)

var windFormulas = []*calc.Formula{
	designWind, heightFactor, groundFactor, velocityPressure, wallPressure, windLine, windMoment, leastMoment,
	plankLoad, plankHold, braceHold, braceLength, braceForce, anchorUplift, plainPressure, clearZone,
}
