package weather

import "coursebook/calculators/calc"

const (
	meansE  = calc.Text("evaporation rate")
	meansR  = calc.Text("relative humidity, 0 to 1")
	meansV  = calc.Text("wind just above the concrete")
	meansE0 = calc.Text("vapour pressure at the concrete")
	meansEa = calc.Text("full vapour pressure of the air")
	meansEs = calc.Text("full vapour pressure")
	meansT  = calc.Text("temperature")
	meansU  = calc.Text("wind as read")
	meansH  = calc.Text("height wanted")
	meansZ  = calc.Text("height of the reading")
)

var eqUno = &calc.Formula{
	ID: "uno", Title: calc.Text("Uno, US form"),
	Expr: "(T_c^2.5 - r*T_a^2.5)*(1 + 0.4*V)/1000000", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "lb/ft²/h"},
	Vars: []calc.Var{{Symbol: "T_c", Meaning: meansTc, Unit: "°F"}, {Symbol: "T_a", Meaning: meansTa, Unit: "°F"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "mph"}},
	Fn: calc.Func4(UnoUS), Go: "weather.UnoUS", Source: "uno",
	Limits: calc.Text("Free water on a level surface, while it bleeds. Within about 20 % of Menzel."),
}

var eqUnoSI = &calc.Formula{
	ID: "uno-si", Title: calc.Text("Uno, SI form"),
	Expr: "5*((T_c + 18)^2.5 - r*(T_a + 18)^2.5)*(V + 4)/1000000", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "kg/m²/h"},
	Vars: []calc.Var{{Symbol: "T_c", Meaning: meansTc, Unit: "°C"}, {Symbol: "T_a", Meaning: meansTa, Unit: "°C"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "km/h"}},
	Fn: calc.Func4(UnoSI), Go: "weather.UnoSI", Source: "ccaa",
	Limits: calc.Text("Its constants are rounded: it reads about 4 % below the US form."),
}

var eqVapour = &calc.Formula{
	ID: "vapour", Title: calc.Text("Vapour pressure over water"),
	Expr: "0.6108*exp(17.27*T/(T + 237.3))", Result: calc.Var{Symbol: "e", Meaning: meansEs, Unit: "kPa"},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT, Unit: "°C"}},
	Fn:   calc.Func1(VapourPressure), Go: "weather.VapourPressure", Source: "fao",
	Limits: calc.Text("0 to 50 °C (32 to 122 °F)."),
}

var eqMenzel = &calc.Formula{
	ID: "menzel", Title: calc.Text("Menzel, US form"),
	Expr: "0.44*(e_0 - r*e_a)*(0.253 + 0.096*V)", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "lb/ft²/h"},
	Vars: []calc.Var{{Symbol: "e_0", Meaning: meansE0, Unit: "psi"}, {Symbol: "e_a", Meaning: meansEa, Unit: "psi"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "mph"}},
	Fn: calc.Func4(MenzelUS), Go: "weather.MenzelUS", Source: "menzel",
	Limits: calc.Text("Pressures in psi. In inches of mercury the answer would be double."),
}

var eqMenzelSI = &calc.Formula{
	ID: "menzel-si", Title: calc.Text("Menzel, SI form"),
	Expr: "0.315*(e_0 - r*e_a)*(0.253 + 0.06*V)", Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "kg/m²/h"},
	Vars: []calc.Var{{Symbol: "e_0", Meaning: meansE0, Unit: "kPa"}, {Symbol: "e_a", Meaning: meansEa, Unit: "kPa"},
		{Symbol: "r", Meaning: meansR}, {Symbol: "V", Meaning: meansV, Unit: "km/h"}},
	Fn: calc.Func4(MenzelSI), Go: "weather.MenzelSI", Source: "menzel",
}

var eqWind = &calc.Formula{
	ID: "wind", Title: calc.Text("Wind at another height"),
	Expr: "u*ln(67.8*h - 5.42)/ln(67.8*z - 5.42)", Result: calc.Var{Symbol: "V", Meaning: meansV, Unit: "m/s", US: "mph"},
	Vars: []calc.Var{{Symbol: "u", Meaning: meansU, Unit: "m/s", US: "mph"}, {Symbol: "h", Meaning: meansH, Unit: "m"}, {Symbol: "z", Meaning: meansZ, Unit: "m"}},
	Fn:   calc.Func3(WindAt), Go: "weather.WindAt", Source: "fao",
	Limits: calc.Text("Open short grass. Forms, fences and houses change the wind."),
}
