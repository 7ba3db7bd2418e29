package daylight

import "coursebook/calculators/calc"

// The symbols of the equations.
const (
	meansT      = calc.Text("time since 2000, in centuries")
	meansL      = calc.Text("sun's mean longitude, full turns left in")
	meansM      = calc.Text("sun's mean anomaly, full turns left in")
	meansLambda = calc.Text("sun's apparent longitude")
	meansTheta  = calc.Text("tilt of the earth's axis")
	meansOrbit  = calc.Text("eccentricity of the earth's orbit")
	meansY      = calc.Text("tangent of half the tilt, squared")
	meansDelta  = calc.Text("declination of the sun")
	meansE      = calc.Text("equation of time")
	meansH      = calc.Text("hour angle")
	meansPlace  = calc.Text("longitude of the site, east is plus")
	meansZone   = calc.Text("clock ahead of UTC")
	meansClock  = calc.Text("time after midnight, by the clock")
)

var eqCentury = &calc.Formula{
	ID: "century", Title: calc.Text("Time in centuries"),
	Expr: "(D + t/1440 - 10957.5)/36525", Result: calc.Var{Symbol: "T", Meaning: meansT},
	Vars: []calc.Var{
		{Symbol: "D", Meaning: calc.Text("days since 1970-01-01, by UTC")},
		{Symbol: "t", Meaning: calc.Text("time of day, by UTC"), Unit: "min"},
	},
	Fn: calc.Func2(Century), Go: "daylight.Century", Source: "meeus",
	Limits: calc.Text("The time is that of the event itself. It is found by repeating the steps until it stays."),
}

var eqMean = &calc.Formula{
	ID: "mean-longitude", Title: calc.Text("Mean longitude of the sun"),
	Expr: "280.46646 + T*(36000.76983 + 0.0003032*T)", Result: calc.Var{Symbol: "L", Meaning: meansL, Unit: "°"},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:   calc.Func1(MeanLongitude), Go: "daylight.MeanLongitude", Source: "meeus",
}

var eqAnomaly = &calc.Formula{
	ID: "anomaly", Title: calc.Text("Mean anomaly of the sun"),
	Expr: "357.52911 + T*(35999.05029 - 0.0001537*T)", Result: calc.Var{Symbol: "M", Meaning: meansM, Unit: "°"},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:   calc.Func1(Anomaly), Go: "daylight.Anomaly", Source: "meeus",
}

var eqLongitude = &calc.Formula{
	ID: "longitude", Title: calc.Text("Apparent longitude of the sun"),
	Expr: "L + (1.914602 - T*(0.004817 + 0.000014*T))*sin(M*pi/180) + (0.019993 - 0.000101*T)*sin(2*M*pi/180)" +
		" + 0.000289*sin(3*M*pi/180) - 0.00569 - 0.00478*sin((125.04 - 1934.136*T)*pi/180)",
	Result: calc.Var{Symbol: "lambda", Meaning: meansLambda, Unit: "°"},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansT}, {Symbol: "L", Meaning: meansL, Unit: "°"}, {Symbol: "M", Meaning: meansM, Unit: "°"}},
	Fn:     calc.Func3(Longitude), Go: "daylight.Longitude", Source: "meeus",
}

var eqTilt = &calc.Formula{
	ID: "tilt", Title: calc.Text("Tilt of the earth's axis"),
	Expr: "23 + (26 + (21.448 - T*(46.815 + T*(0.00059 - 0.001813*T)))/60)/60" +
		" + 0.00256*cos((125.04 - 1934.136*T)*pi/180)",
	Result: calc.Var{Symbol: "theta", Meaning: meansTheta, Unit: "°"},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:     calc.Func1(Tilt), Go: "daylight.Tilt", Source: "meeus",
}

var eqDeclination = &calc.Formula{
	ID: "declination", Title: calc.Text("Declination of the sun"),
	Expr:   "180/pi*asin(sin(theta*pi/180)*sin(lambda*pi/180))",
	Result: calc.Var{Symbol: "delta", Meaning: meansDelta, Unit: "°"},
	Vars:   []calc.Var{{Symbol: "theta", Meaning: meansTheta, Unit: "°"}, {Symbol: "lambda", Meaning: meansLambda, Unit: "°"}},
	Fn:     calc.Func2(Declination), Go: "daylight.Declination", Source: "meeus",
}

var eqEccentricity = &calc.Formula{
	ID: "eccentricity", Title: calc.Text("Eccentricity of the earth's orbit"),
	Expr: "0.016708634 - T*(0.000042037 + 0.0000001267*T)", Result: calc.Var{Symbol: "e", Meaning: meansOrbit},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:   calc.Func1(Eccentricity), Go: "daylight.Eccentricity", Source: "meeus",
}

var eqSquare = &calc.Formula{
	ID: "tilt-square", Title: calc.Text("Tangent of half the tilt, squared"),
	Expr: "tan(theta/2*pi/180)^2", Result: calc.Var{Symbol: "y", Meaning: meansY},
	Vars: []calc.Var{{Symbol: "theta", Meaning: meansTheta, Unit: "°"}},
	Fn:   calc.Func1(TiltSquare), Go: "daylight.TiltSquare", Source: "meeus",
}

var eqTime = &calc.Formula{
	ID: "equation-of-time", Title: calc.Text("Equation of time"),
	Expr: "720/pi*(y*sin(2*L*pi/180) - 2*e*sin(M*pi/180) + 4*e*y*sin(M*pi/180)*cos(2*L*pi/180)" +
		" - 0.5*y^2*sin(4*L*pi/180) - 1.25*e^2*sin(2*M*pi/180))",
	Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "min"},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansL, Unit: "°"}, {Symbol: "M", Meaning: meansM, Unit: "°"},
		{Symbol: "e", Meaning: meansOrbit}, {Symbol: "y", Meaning: meansY}},
	Fn: calc.Func4(EquationOfTime), Go: "daylight.EquationOfTime", Source: "meeus",
}

var eqHourAngle = &calc.Formula{
	ID: "hour-angle", Title: calc.Text("Hour angle of the event"),
	Expr:   "180/pi*acos(cos(Z*pi/180)/(cos(phi*pi/180)*cos(delta*pi/180)) - tan(phi*pi/180)*tan(delta*pi/180))",
	Result: calc.Var{Symbol: "H", Meaning: meansH, Unit: "°"},
	Vars: []calc.Var{
		{Symbol: "Z", Meaning: calc.Text("sun's distance from straight up"), Unit: "°"},
		{Symbol: "phi", Meaning: calc.Text("latitude, north is plus"), Unit: "°"},
		{Symbol: "delta", Meaning: meansDelta, Unit: "°"},
	},
	Fn: calc.Func3(HourAngle), Go: "daylight.HourAngle", Source: "noaa",
	Limits: calc.Text("Sunrise and sunset at 90° 50', which allows for air and the sun's own size. Civil twilight ends at 96°. Near the poles there is no answer on some days."),
}

var (
	varPlace = calc.Var{Symbol: "l", Meaning: meansPlace, Unit: "°"}
	varHour  = calc.Var{Symbol: "H", Meaning: meansH, Unit: "°"}
	varTime  = calc.Var{Symbol: "E", Meaning: meansE, Unit: "min"}
	varZone  = calc.Var{Symbol: "z", Meaning: meansZone, Unit: "min"}
)

var eqNoon = &calc.Formula{
	ID: "noon", Title: calc.Text("Noon by the sun"),
	Expr: "720 - 4*l - E + z", Result: calc.Var{Symbol: "t_n", Meaning: meansClock, Unit: "min"},
	Vars: []calc.Var{varPlace, varTime, varZone},
	Fn:   calc.Func3(Noon), Go: "daylight.Noon", Source: "noaa",
}

var eqRising = &calc.Formula{
	ID: "rising", Title: calc.Text("Sunrise"),
	Expr: "720 - 4*(l + H) - E + z", Result: calc.Var{Symbol: "t_r", Meaning: meansClock, Unit: "min"},
	Vars: []calc.Var{varPlace, varHour, varTime, varZone},
	Fn:   calc.Func4(Rising), Go: "daylight.Rising", Source: "noaa",
}

var eqSetting = &calc.Formula{
	ID: "setting", Title: calc.Text("Sunset"),
	Expr: "720 - 4*(l - H) - E + z", Result: calc.Var{Symbol: "t_s", Meaning: meansClock, Unit: "min"},
	Vars: []calc.Var{varPlace, varHour, varTime, varZone},
	Fn:   calc.Func4(Setting), Go: "daylight.Setting", Source: "noaa",
}

var eqDayLength = &calc.Formula{
	ID: "day-length", Title: calc.Text("Length of the day, to check"),
	Expr: "2*H/15", Result: calc.Var{Symbol: "N", Meaning: calc.Text("time the sun is up"), Unit: "h"},
	Vars: []calc.Var{varHour},
	Fn:   calc.Func1(DayLength), Go: "daylight.DayLength", Source: "fao",
	Limits: calc.Text("A check by hand. The calculator takes sunset less sunrise."),
}

var equations = []*calc.Formula{
	eqCentury, eqMean, eqAnomaly, eqLongitude, eqTilt, eqDeclination, eqEccentricity, eqSquare, eqTime, eqHourAngle, eqNoon, eqRising, eqSetting, eqDayLength,
}
