package quantity

import "math"

// The exact definitions of the units. Go constants are exact, so every factor is
// the float64 nearest to its exact value. Source: NIST Special Publication 811
// (2008), appendix B.
const (
	inch     = 0.0254                   // m; international inch, 25.4 mm
	foot     = 12 * inch                // m; international foot, 0.3048 m
	yard     = 3 * foot                 // m; international yard, 0.9144 m
	mile     = 5280 * foot              // m; international mile, 1609.344 m
	pound    = 0.45359237               // kg; avoirdupois pound
	ounce    = pound / 16               // kg; avoirdupois ounce
	shortTon = 2000 * pound             // kg; short ton
	tonne    = 1000                     // kg; metric ton
	gravity  = 9.80665                  // m/s²; standard acceleration of free fall
	lbForce  = pound * gravity          // N; pound-force: a pound under standard gravity
	kip      = 1000 * lbForce           // N; 1000 pounds-force
	gallon   = 231 * inch * inch * inch // m³; US gallon, 231 in³
	quart    = gallon / 4               // m³; US liquid quart
	flOunce  = gallon / 128             // m³; US fluid ounce
	litre    = 0.001                    // m³; cubic decimetre
	minute   = 60                       // s
	hour     = 3600                     // s
	day      = 86400                    // s
	fahren   = 5.0 / 9                  // K; one degree Fahrenheit as a difference, 1/1.8
	btu      = 1055.05585262            // J; International Table Btu
	horse    = 550 * foot * lbForce     // W; horsepower, 550 ft·lbf/s
)

// units is the table of units. Within a dimension they are in the order of
// the list in a parse error. Aliases are unique within a dimension.
//
// A pound, where a force is asked for, is a pound-force; kN/m³, where a
// density is asked for, is the weight per volume under standard gravity.
var units = []Unit{
	// A number without a unit.
	{Symbol: "", Dim: Number, Scale: 1},

	{Symbol: "ft", Dim: Length, Scale: foot, // 0.3048 m exactly
		Aliases: []string{"'", "feet", "foot", "pie", "pies"}},
	{Symbol: "in", Dim: Length, Scale: inch, // 0.0254 m exactly
		Aliases: []string{`"`, "inch", "inches", "pulgada", "pulgadas"}},
	{Symbol: "yd", Dim: Length, Scale: yard, Aliases: []string{"yds", "yard", "yards"}}, // 0.9144 m exactly
	{Symbol: "mi", Dim: Length, Scale: mile, Aliases: []string{"mile", "miles"}},        // 1609.344 m exactly
	{Symbol: "m", Dim: Length, Scale: 1, // SI base unit
		Aliases: []string{"metre", "metres", "meter", "meters"}},
	{Symbol: "cm", Dim: Length, Scale: 0.01, // SI prefix
		Aliases: []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
	{Symbol: "mm", Dim: Length, Scale: 0.001, // SI prefix
		Aliases: []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
	{Symbol: "km", Dim: Length, Scale: 1000, // SI prefix
		Aliases: []string{"kilometre", "kilometres", "kilometer", "kilometers"}},

	{Symbol: "ft²", Dim: Area, Scale: foot * foot, // square of the foot
		Aliases: []string{"sf", "sqft", "squarefeet", "squarefoot"}},
	{Symbol: "in²", Dim: Area, Scale: inch * inch, // square of the inch
		Aliases: []string{"sqin", "squareinches", "squareinch"}},
	{Symbol: "yd²", Dim: Area, Scale: yard * yard, // square of the yard
		Aliases: []string{"sqyd", "squareyards", "squareyard"}},
	{Symbol: "m²", Dim: Area, Scale: 1, Aliases: []string{"sqm", "squaremetres", "squaremeters"}}, // SI
	{Symbol: "cm²", Dim: Area, Scale: 1e-4, Aliases: []string{"sqcm"}},                            // (0.01 m)²
	{Symbol: "mm²", Dim: Area, Scale: 1e-6, Aliases: []string{"sqmm"}},                            // (0.001 m)²

	{Symbol: "yd³", Dim: Volume, Scale: yard * yard * yard, // cube of the yard; a yard of concrete
		Aliases: []string{"cy", "cuyd", "cubicyards", "cubicyard", "yd", "yds", "yard", "yards"}},
	{Symbol: "ft³", Dim: Volume, Scale: foot * foot * foot, // cube of the foot
		Aliases: []string{"cf", "cuft", "cubicfeet", "cubicfoot"}},
	{Symbol: "in³", Dim: Volume, Scale: inch * inch * inch, // cube of the inch
		Aliases: []string{"cuin", "cubicinches", "cubicinch"}},
	{Symbol: "US gal", Dim: Volume, Scale: gallon, // 231 in³ exactly
		Aliases: []string{"gal", "gals", "gallon", "gallons"}},
	{Symbol: "US qt", Dim: Volume, Scale: quart, // a quarter of the gallon
		Aliases: []string{"qt", "qts", "quart", "quarts"}},
	{Symbol: "US fl oz", Dim: Volume, Scale: flOunce, // 1/128 of the gallon
		Aliases: []string{"floz", "fluidounce", "fluidounces"}},
	{Symbol: "m³", Dim: Volume, Scale: 1, Aliases: []string{"cum", "cubicmetres", "cubicmeters"}}, // SI
	{Symbol: "L", Dim: Volume, Scale: litre, // 10⁻³ m³ exactly
		Aliases: []string{"litre", "litres", "liter", "liters"}},
	{Symbol: "mL", Dim: Volume, Scale: litre / 1000, Aliases: []string{"cm3", "cc"}}, // 10⁻⁶ m³ exactly

	{Symbol: "lb", Dim: Mass, Scale: pound, // 0.45359237 kg exactly
		Aliases: []string{"lbs", "lbm", "pound", "pounds"}},
	{Symbol: "oz", Dim: Mass, Scale: ounce, Aliases: []string{"ounce", "ounces"}},                        // 1/16 lb
	{Symbol: "US ton", Dim: Mass, Scale: shortTon, Aliases: []string{"shortton", "shorttons", "UStons"}}, // 2000 lb
	{Symbol: "kg", Dim: Mass, Scale: 1, // SI base unit
		Aliases: []string{"kgs", "kilogram", "kilograms", "kilo", "kilos"}},
	{Symbol: "g", Dim: Mass, Scale: 0.001, Aliases: []string{"gram", "grams"}},   // SI
	{Symbol: "t", Dim: Mass, Scale: tonne, Aliases: []string{"tonne", "tonnes"}}, // 1000 kg exactly

	{Symbol: "lbf", Dim: Force, Scale: lbForce, // lb × standard gravity, 4.4482216152605 N exactly
		Aliases: []string{"lb", "lbs", "pound", "pounds"}},
	{Symbol: "kip", Dim: Force, Scale: kip, Aliases: []string{"kips"}},          // 1000 lbf
	{Symbol: "N", Dim: Force, Scale: 1, Aliases: []string{"newton", "newtons"}}, // kg·m/s²
	{Symbol: "kN", Dim: Force, Scale: 1000, Aliases: nil},                       // SI prefix

	{Symbol: "psf", Dim: Pressure, Scale: lbForce / (foot * foot), // lbf/ft²
		Aliases: []string{"lb/ft2", "lbs/ft2", "lbf/ft2"}},
	{Symbol: "psi", Dim: Pressure, Scale: lbForce / (inch * inch), // lbf/in²
		Aliases: []string{"lb/in2", "lbs/in2", "lbf/in2"}},
	{Symbol: "ksi", Dim: Pressure, Scale: kip / (inch * inch), // kip/in²
		Aliases: []string{"kip/in2", "kips/in2"}},
	{Symbol: "ksf", Dim: Pressure, Scale: kip / (foot * foot), // kip/ft²
		Aliases: []string{"kip/ft2", "kips/ft2"}},
	{Symbol: "kPa", Dim: Pressure, Scale: 1e3, Aliases: []string{"kN/m2"}}, // SI prefix
	{Symbol: "MPa", Dim: Pressure, Scale: 1e6, Aliases: []string{"N/mm2"}}, // SI prefix
	{Symbol: "Pa", Dim: Pressure, Scale: 1, Aliases: []string{"N/m2"}},     // N/m²
	{Symbol: "bar", Dim: Pressure, Scale: 1e5, Aliases: []string{"bars"}},  // 100 kPa exactly
	{Symbol: "kg/cm²", Dim: Pressure, Scale: 98066.5, // kgf/cm²; NIST SP 811, appendix B
		Aliases: []string{"kgf/cm2"}},

	{Symbol: "lb/ft³", Dim: Density, Scale: pound / (foot * foot * foot), // lb/ft³
		Aliases: []string{"pcf", "lbs/ft3", "lbf/ft3"}},
	{Symbol: "lb/yd³", Dim: Density, Scale: pound / (yard * yard * yard), // lb/yd³
		Aliases: []string{"pcy", "lbs/yd3"}},
	{Symbol: "kg/m³", Dim: Density, Scale: 1, Aliases: nil}, // SI
	{Symbol: "kN/m³", Dim: Density, Scale: 1000 / gravity, // weight density over standard gravity, 9.80665 m/s²
		Aliases: nil},

	{Symbol: "ft/h", Dim: Speed, Scale: foot / hour, Aliases: []string{"ft/hr", "ft/hour", "fph"}}, // ft/h
	{Symbol: "in/h", Dim: Speed, Scale: inch / hour, Aliases: []string{"in/hr", "in/hour"}},        // in/h
	{Symbol: "ft/min", Dim: Speed, Scale: foot / minute, Aliases: []string{"fpm"}},                 // ft/min
	{Symbol: "ft/s", Dim: Speed, Scale: foot, Aliases: []string{"fps", "ft/sec"}},                  // ft/s
	{Symbol: "in/s", Dim: Speed, Scale: inch, Aliases: []string{"ips", "in/sec"}},                  // in/s
	{Symbol: "mph", Dim: Speed, Scale: mile / hour, Aliases: []string{"mi/h", "mi/hr"}},            // mi/h
	{Symbol: "m/h", Dim: Speed, Scale: 1.0 / hour, Aliases: []string{"m/hr", "m/hour"}},            // m/h
	{Symbol: "m/s", Dim: Speed, Scale: 1, Aliases: []string{"m/sec"}},                              // SI
	{Symbol: "mm/s", Dim: Speed, Scale: 0.001, Aliases: []string{"mm/sec"}},                        // mm/s
	{Symbol: "km/h", Dim: Speed, Scale: 1000.0 / hour, Aliases: []string{"km/hr", "kph", "kmh"}},   // km/h
	{Symbol: "kn", Dim: Speed, Scale: 1852.0 / hour, // nautical mile of 1852 m per hour, NIST SP 811
		Aliases: []string{"kt", "kts", "knot", "knots", "nudo", "nudos"}},

	{Symbol: "yd³/h", Dim: FlowRate, Scale: yard * yard * yard / hour, // yd³/h
		Aliases: []string{"yd3/hr", "cy/h", "cy/hr", "cuyd/h", "cuyd/hr", "yd/h", "yd/hr"}},
	{Symbol: "ft³/h", Dim: FlowRate, Scale: foot * foot * foot / hour, // ft³/h
		Aliases: []string{"ft3/hr", "cf/h", "cf/hr", "cuft/h", "cuft/hr"}},
	{Symbol: "ft³/min", Dim: FlowRate, Scale: foot * foot * foot / minute, Aliases: []string{"cfm"}}, // ft³/min
	{Symbol: "US gal/min", Dim: FlowRate, Scale: gallon / minute, // US gal/min
		Aliases: []string{"gal/min", "gpm"}},
	{Symbol: "m³/h", Dim: FlowRate, Scale: 1.0 / hour, Aliases: []string{"m3/hr"}}, // m³/h
	{Symbol: "m³/s", Dim: FlowRate, Scale: 1, Aliases: nil},                        // SI
	{Symbol: "L/min", Dim: FlowRate, Scale: litre / minute, Aliases: nil},          // L/min
	{Symbol: "L/s", Dim: FlowRate, Scale: litre, Aliases: nil},                     // L/s

	{Symbol: "°F", Dim: Temperature, Scale: fahren, Offset: 459.67, // T/K = (t/°F + 459.67)/1.8
		Aliases: []string{"F", "degF", "degreesF", "fahrenheit"}},
	{Symbol: "°C", Dim: Temperature, Scale: 1, Offset: 273.15, // T/K = t/°C + 273.15
		Aliases: []string{"C", "degC", "degreesC", "celsius"}},
	{Symbol: "K", Dim: Temperature, Scale: 1, Aliases: []string{"kelvin"}}, // SI base unit

	{Symbol: "F°", Dim: TemperatureDifference, Scale: fahren, // 1/1.8 K
		Aliases: []string{"°F", "F", "Fdeg", "degF", "degreesF"}},
	{Symbol: "C°", Dim: TemperatureDifference, Scale: 1, // 1 K
		Aliases: []string{"°C", "C", "Cdeg", "degC", "degreesC", "K"}},

	{Symbol: "min", Dim: Duration, Scale: minute, Aliases: []string{"mins", "minute", "minutes"}}, // 60 s exactly
	{Symbol: "h", Dim: Duration, Scale: hour, Aliases: []string{"hr", "hrs", "hour", "hours"}},    // 3600 s exactly
	{Symbol: "d", Dim: Duration, Scale: day, Aliases: []string{"day", "days"}},                    // 86400 s exactly
	{Symbol: "s", Dim: Duration, Scale: 1, Aliases: []string{"sec", "secs", "second", "seconds"}}, // SI base unit

	{Symbol: "°", Dim: Angle, Scale: math.Pi / 180, Aliases: []string{"deg", "degs", "degree", "degrees"}}, // π/180 rad
	{Symbol: "rad", Dim: Angle, Scale: 1, Aliases: []string{"radian", "radians"}},                          // SI

	{Symbol: "%", Dim: Ratio, Scale: 0.01, Aliases: []string{"percent", "pct"}}, // one hundredth

	{Symbol: "lbf/ft", Dim: LineLoad, Scale: lbForce / foot, Aliases: []string{"lb/ft", "lbs/ft", "plf"}}, // lbf/ft
	{Symbol: "kip/ft", Dim: LineLoad, Scale: kip / foot, Aliases: []string{"kips/ft", "klf"}},             // kip/ft
	{Symbol: "N/m", Dim: LineLoad, Scale: 1, Aliases: nil},                                                // SI
	{Symbol: "kN/m", Dim: LineLoad, Scale: 1000, Aliases: nil},                                            // SI prefix

	{Symbol: "lb/ft", Dim: MassPerLength, Scale: pound / foot, Aliases: []string{"lbs/ft", "plf"}}, // lb/ft
	{Symbol: "kg/m", Dim: MassPerLength, Scale: 1, Aliases: nil},                                   // SI

	{Symbol: "lb/ft²", Dim: MassPerArea, Scale: pound / (foot * foot), Aliases: []string{"lbs/ft2", "psf"}}, // lb/ft²
	{Symbol: "kg/m²", Dim: MassPerArea, Scale: 1, Aliases: nil},                                             // SI

	{Symbol: "in²/ft", Dim: AreaPerLength, Scale: inch * inch / foot, Aliases: nil}, // in²/ft
	{Symbol: "mm²/m", Dim: AreaPerLength, Scale: 1e-6, Aliases: nil},                // mm²/m
	{Symbol: "cm²/m", Dim: AreaPerLength, Scale: 1e-4, Aliases: nil},                // cm²/m

	{Symbol: "vpm", Dim: Frequency, Scale: 1.0 / minute, Aliases: []string{"rpm"}}, // vibrations a minute, 1/60 Hz
	{Symbol: "Hz", Dim: Frequency, Scale: 1, Aliases: []string{"hertz"}},           // 1/s

	{Symbol: "ft/s²", Dim: Acceleration, Scale: foot, Aliases: nil},           // ft/s²
	{Symbol: "m/s²", Dim: Acceleration, Scale: 1, Aliases: nil},               // SI
	{Symbol: "gₙ", Dim: Acceleration, Scale: gravity, Aliases: []string{"g"}}, // standard gravity, 9.80665 m/s² exactly

	{Symbol: "ft·lbf", Dim: Moment, Scale: foot * lbForce, // ft × lbf
		Aliases: []string{"ftlb", "ftlbs", "ft-lb", "ft-lbs", "ft-lbf", "lbfft", "lbft"}},
	{Symbol: "in·lbf", Dim: Moment, Scale: inch * lbForce, // in × lbf
		Aliases: []string{"inlb", "inlbs", "in-lb", "in-lbs", "in-lbf"}},
	{Symbol: "kip·ft", Dim: Moment, Scale: kip * foot, Aliases: []string{"ftkip", "kip-ft", "kft"}}, // kip × ft
	{Symbol: "N·m", Dim: Moment, Scale: 1, Aliases: nil},                                            // SI
	{Symbol: "kN·m", Dim: Moment, Scale: 1000, Aliases: nil},                                        // SI prefix

	{Symbol: "Btu", Dim: Energy, Scale: btu, Aliases: nil},         // International Table Btu, 1055.05585262 J exactly
	{Symbol: "J", Dim: Energy, Scale: 1, Aliases: nil},             // N·m
	{Symbol: "kJ", Dim: Energy, Scale: 1e3, Aliases: nil},          // SI prefix
	{Symbol: "MJ", Dim: Energy, Scale: 1e6, Aliases: nil},          // SI prefix
	{Symbol: "kWh", Dim: Energy, Scale: 1000 * hour, Aliases: nil}, // 3.6 MJ exactly

	{Symbol: "hp", Dim: Power, Scale: horse, Aliases: nil},                        // 550 ft·lbf/s
	{Symbol: "Btu/h", Dim: Power, Scale: btu / hour, Aliases: []string{"Btu/hr"}}, // Btu/h
	{Symbol: "W", Dim: Power, Scale: 1, Aliases: []string{"watt", "watts"}},       // J/s
	{Symbol: "kW", Dim: Power, Scale: 1000, Aliases: nil},                         // SI prefix

	{Symbol: "lb/ft²/h", Dim: EvaporationRate, Scale: pound / (foot * foot) / hour, // lb/(ft²·h)
		Aliases: []string{"lb/ft2/hr", "lb/ft2h", "lb/ft2hr", "psf/h", "psf/hr"}},
	{Symbol: "kg/m²/h", Dim: EvaporationRate, Scale: 1.0 / hour, // kg/(m²·h)
		Aliases: []string{"kg/m2/hr", "kg/m2h", "kg/m2hr"}},

	{Symbol: "F°/h", Dim: TemperatureRate, Scale: fahren / hour, // 1/1.8 K per hour
		Aliases: []string{"°F/h", "F/h", "°F/hr", "F/hr"}},
	{Symbol: "C°/h", Dim: TemperatureRate, Scale: 1.0 / hour, // K per hour
		Aliases: []string{"°C/h", "C/h", "°C/hr", "C/hr"}},

	{Symbol: "F°·h", Dim: Maturity, Scale: fahren * hour, // 1/1.8 K × hour
		Aliases: []string{"°Fh", "Fh", "°F-h", "°Fhr"}},
	{Symbol: "C°·h", Dim: Maturity, Scale: hour, Aliases: []string{"°Ch", "Ch", "°C-h", "°Chr"}}, // K × hour
	{Symbol: "C°·d", Dim: Maturity, Scale: day, Aliases: []string{"°Cd", "Cd", "°C-d"}},          // K × day
}
