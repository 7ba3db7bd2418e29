// Package daylight computes sunrise, sunset and civil twilight at a place from the
// position of the sun, by the low-accuracy series of Meeus.
package daylight

import (
	"math"

	"coursebook/calculators/calc"
)

// Meanings of the symbols.
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

var (
	varPlace = calc.Var{Symbol: "l", Meaning: meansPlace, Unit: "°"}
	varHour  = calc.Var{Symbol: "H", Meaning: meansH, Unit: "°"}
	varTime  = calc.Var{Symbol: "E", Meaning: meansE, Unit: "min"}
	varZone  = calc.Var{Symbol: "z", Meaning: meansZone, Unit: "min"}
)

// sin, cos and tan take degrees.
func sin(x float64) float64 { return math.Sin(x * math.Pi / 180) }

func cos(x float64) float64 { return math.Cos(x * math.Pi / 180) }

func tan(x float64) float64 { return math.Tan(x * math.Pi / 180) }

// Century is the time since noon of 2000-01-01 in centuries of 36525 days: (D +
// t/1440 − 10957.5)/36525. D is days from 1970-01-01, t minutes UTC. The
// difference of about a minute between UTC and terrestrial time moves the sun
// by less than a second of arc.
// Source: Meeus, Astronomical Algorithms, eq. 25.1.
func Century(days, minutes float64) float64 {
	return (days + minutes/1440 - 10957.5) / 36525
}

// CenturyFormula declares Century.
var CenturyFormula = &calc.Formula{
	ID: "century", Title: calc.Text("Time in centuries"),
	Expr: "(D + t/1440 - 10957.5)/36525", Result: calc.Var{Symbol: "T", Meaning: meansT},
	Vars: []calc.Var{
		{Symbol: "D", Meaning: calc.Text("days since 1970-01-01, by UTC")},
		{Symbol: "t", Meaning: calc.Text("time of day, by UTC"), Unit: "min"},
	},
	Fn: calc.Func2(Century), Go: "daylight.Century", Source: "meeus",
	Limits: calc.Text("The time is that of the event itself. It is found by repeating the steps until it stays."),
}

// MeanLongitude is the sun's mean longitude in degrees, full turns included,
// 280.46646 + T(36000.76983 + 0.0003032 T).
// Source: Meeus, eq. 25.2.
func MeanLongitude(t float64) float64 {
	return 280.46646 + float64(t*(36000.76983+float64(0.0003032*t)))
}

// MeanLongitudeFormula declares MeanLongitude.
var MeanLongitudeFormula = &calc.Formula{
	ID: "mean-longitude", Title: calc.Text("Mean longitude of the sun"),
	Expr: "280.46646 + T*(36000.76983 + 0.0003032*T)", Result: calc.Var{Symbol: "L", Meaning: meansL, Unit: "°"},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:   calc.Func1(MeanLongitude), Go: "daylight.MeanLongitude", Source: "meeus",
}

// Anomaly is the sun's mean anomaly in degrees, full turns included,
// 357.52911 + T(35999.05029 − 0.0001537 T). Source: Meeus, eq. 25.3.
func Anomaly(t float64) float64 {
	return 357.52911 + float64(t*(35999.05029-float64(0.0001537*t)))
}

// AnomalyFormula declares Anomaly.
var AnomalyFormula = &calc.Formula{
	ID: "anomaly", Title: calc.Text("Mean anomaly of the sun"),
	Expr: "357.52911 + T*(35999.05029 - 0.0001537*T)", Result: calc.Var{Symbol: "M", Meaning: meansM, Unit: "°"},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:   calc.Func1(Anomaly), Go: "daylight.Anomaly", Source: "meeus",
}

// Longitude is the sun's apparent longitude in degrees: the mean one plus the
// equation of the centre, less aberration, with the main term of nutation.
// Accurate to 0.01°. Source: Meeus, ch. 25, low accuracy.
func Longitude(t, l, m float64) float64 {
	first := float64((1.914602 - float64(t*(0.004817+float64(0.000014*t)))) * sin(m))
	second := float64((0.019993 - float64(0.000101*t)) * sin(2*m))
	third := float64(0.000289 * sin(3*m))
	return l + first + second + third - 0.00569 - float64(0.00478*sin(125.04-float64(1934.136*t)))
}

// LongitudeFormula declares Longitude.
var LongitudeFormula = &calc.Formula{
	ID: "longitude", Title: calc.Text("Apparent longitude of the sun"),
	Expr: "L + (1.914602 - T*(0.004817 + 0.000014*T))*sin(M*pi/180) + (0.019993 - 0.000101*T)*sin(2*M*pi/180)" +
		" + 0.000289*sin(3*M*pi/180) - 0.00569 - 0.00478*sin((125.04 - 1934.136*T)*pi/180)",
	Result: calc.Var{Symbol: "lambda", Meaning: meansLambda, Unit: "°"},
	Vars: []calc.Var{
		{Symbol: "T", Meaning: meansT},
		{Symbol: "L", Meaning: meansL, Unit: "°"},
		{Symbol: "M", Meaning: meansM, Unit: "°"},
	},
	Fn: calc.Func3(Longitude), Go: "daylight.Longitude", Source: "meeus",
}

// Tilt is the obliquity of the ecliptic in degrees, corrected for the main
// term of nutation. Source: Meeus, eq. 22.2 and 25.8.
func Tilt(t float64) float64 {
	seconds := 21.448 - float64(t*(46.815+float64(t*(0.00059-float64(0.001813*t)))))
	return 23 + (26+seconds/60)/60 + float64(0.00256*cos(125.04-float64(1934.136*t)))
}

// TiltFormula declares Tilt.
var TiltFormula = &calc.Formula{
	ID: "tilt", Title: calc.Text("Tilt of the earth's axis"),
	Expr: "23 + (26 + (21.448 - T*(46.815 + T*(0.00059 - 0.001813*T)))/60)/60" +
		" + 0.00256*cos((125.04 - 1934.136*T)*pi/180)",
	Result: calc.Var{Symbol: "theta", Meaning: meansTheta, Unit: "°"},
	Vars:   []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:     calc.Func1(Tilt), Go: "daylight.Tilt", Source: "meeus",
}

// Declination is the declination of the sun in degrees, north positive,
// asin(sin θ sin λ). Source: Meeus, eq. 25.7.
func Declination(tilt, longitude float64) float64 {
	return 180 / math.Pi * math.Asin(sin(tilt)*sin(longitude))
}

// DeclinationFormula declares Declination.
var DeclinationFormula = &calc.Formula{
	ID: "declination", Title: calc.Text("Declination of the sun"),
	Expr:   "180/pi*asin(sin(theta*pi/180)*sin(lambda*pi/180))",
	Result: calc.Var{Symbol: "delta", Meaning: meansDelta, Unit: "°"},
	Vars: []calc.Var{
		{Symbol: "theta", Meaning: meansTheta, Unit: "°"},
		{Symbol: "lambda", Meaning: meansLambda, Unit: "°"},
	},
	Fn: calc.Func2(Declination), Go: "daylight.Declination", Source: "meeus",
}

// Eccentricity is the eccentricity of the earth's orbit. Source: Meeus, eq. 25.4.
func Eccentricity(t float64) float64 {
	return 0.016708634 - float64(t*(0.000042037+float64(0.0000001267*t)))
}

// EccentricityFormula declares Eccentricity.
var EccentricityFormula = &calc.Formula{
	ID: "eccentricity", Title: calc.Text("Eccentricity of the earth's orbit"),
	Expr: "0.016708634 - T*(0.000042037 + 0.0000001267*T)", Result: calc.Var{Symbol: "e", Meaning: meansOrbit},
	Vars: []calc.Var{{Symbol: "T", Meaning: meansT}},
	Fn:   calc.Func1(Eccentricity), Go: "daylight.Eccentricity", Source: "meeus",
}

// TiltSquare is y = tan²(θ/2) of the tilt in degrees. Source: Meeus, ch. 28.
func TiltSquare(tilt float64) float64 { return math.Pow(tan(tilt/2), 2) }

// TiltSquareFormula declares TiltSquare.
var TiltSquareFormula = &calc.Formula{
	ID: "tilt-square", Title: calc.Text("Tangent of half the tilt, squared"),
	Expr: "tan(theta/2*pi/180)^2", Result: calc.Var{Symbol: "y", Meaning: meansY},
	Vars: []calc.Var{{Symbol: "theta", Meaning: meansTheta, Unit: "°"}},
	Fn:   calc.Func1(TiltSquare), Go: "daylight.TiltSquare", Source: "meeus",
}

// EquationOfTime is the minutes by which the true sun is ahead of the mean sun,
// from the mean longitude and anomaly in degrees, the eccentricity and
// tan²(θ/2). It differs from the full method by a few seconds.
// Source: Smart's series in Meeus, eq. 28.3.
func EquationOfTime(l, m, e, y float64) float64 {
	turn := float64(y*sin(2*l)) - float64(2*e*sin(m)) + float64(4*e*y*sin(m)*cos(2*l)) -
		float64(0.5*math.Pow(y, 2)*sin(4*l)) - float64(1.25*math.Pow(e, 2)*sin(2*m))
	return 720 / math.Pi * turn
}

// EquationOfTimeFormula declares EquationOfTime.
var EquationOfTimeFormula = &calc.Formula{
	ID: "equation-of-time", Title: calc.Text("Equation of time"),
	Expr: "720/pi*(y*sin(2*L*pi/180) - 2*e*sin(M*pi/180) + 4*e*y*sin(M*pi/180)*cos(2*L*pi/180)" +
		" - 0.5*y^2*sin(4*L*pi/180) - 1.25*e^2*sin(2*M*pi/180))",
	Result: calc.Var{Symbol: "E", Meaning: meansE, Unit: "min"},
	Vars: []calc.Var{{Symbol: "L", Meaning: meansL, Unit: "°"}, {Symbol: "M", Meaning: meansM, Unit: "°"},
		{Symbol: "e", Meaning: meansOrbit}, {Symbol: "y", Meaning: meansY}},
	Fn: calc.Func4(EquationOfTime), Go: "daylight.EquationOfTime", Source: "meeus",
}

// HourAngle is the hour angle of the sun at the zenith distance Z, in degrees:
// acos(cos Z/(cos φ cos δ) − tan φ tan δ). It is NaN where the sun does not reach
// Z on that day.
// Source: NOAA, general solar position calculations.
func HourAngle(zenith, latitude, declination float64) float64 {
	return 180 / math.Pi * math.Acos(cosHourAngle(zenith, latitude, declination))
}

// HourAngleFormula declares HourAngle.
var HourAngleFormula = &calc.Formula{
	ID: "hour-angle", Title: calc.Text("Hour angle of the event"),
	Expr:   "180/pi*acos(cos(Z*pi/180)/(cos(phi*pi/180)*cos(delta*pi/180)) - tan(phi*pi/180)*tan(delta*pi/180))",
	Result: calc.Var{Symbol: "H", Meaning: meansH, Unit: "°"},
	Vars: []calc.Var{
		{Symbol: "Z", Meaning: calc.Text("sun's distance from straight up"), Unit: "°"},
		{Symbol: "phi", Meaning: calc.Text("latitude, north is plus"), Unit: "°"},
		{Symbol: "delta", Meaning: meansDelta, Unit: "°"},
	},
	Fn: calc.Func3(HourAngle), Go: "daylight.HourAngle", Source: "noaa",
	Limits: calc.Text(
		"Sunrise and sunset at 90° 50', which allows for air and the sun's own size. Civil twilight ends at 96°. " +
			"Near the poles there is no answer on some days.",
	),
}

// cosHourAngle is the cosine of HourAngle. It is above 1 where the sun stays below
// the zenith distance all day and below −1 where it stays above.
func cosHourAngle(zenith, latitude, declination float64) float64 {
	return cos(zenith)/(cos(latitude)*cos(declination)) - float64(tan(latitude)*tan(declination))
}

// Noon is the time of the highest sun in minutes after midnight by the
// clock: 720 − 4·longitude − E + zone. zone is in minutes ahead of UTC.
// Source: NOAA, general solar position calculations.
func Noon(longitude, equation, zone float64) float64 {
	return 720 - float64(4*longitude) - equation + zone
}

// NoonFormula declares Noon.
var NoonFormula = &calc.Formula{
	ID: "noon", Title: calc.Text("Noon by the sun"),
	Expr: "720 - 4*l - E + z", Result: calc.Var{Symbol: "t_n", Meaning: meansClock, Unit: "min"},
	Vars: []calc.Var{varPlace, varTime, varZone},
	Fn:   calc.Func3(Noon), Go: "daylight.Noon", Source: "noaa",
}

// Rising is the time at which the sun is at an hour angle before noon, in minutes
// after midnight by the clock: the earth turns one degree in four minutes.
// Source: NOAA, general solar position calculations.
func Rising(longitude, hourAngle, equation, zone float64) float64 {
	return 720 - float64(4*(longitude+hourAngle)) - equation + zone
}

// RisingFormula declares Rising.
var RisingFormula = &calc.Formula{
	ID: "rising", Title: calc.Text("Sunrise"),
	Expr: "720 - 4*(l + H) - E + z", Result: calc.Var{Symbol: "t_r", Meaning: meansClock, Unit: "min"},
	Vars: []calc.Var{varPlace, varHour, varTime, varZone},
	Fn:   calc.Func4(Rising), Go: "daylight.Rising", Source: "noaa",
}

// Setting is the time at which the sun is at an hour angle after noon, in minutes
// after midnight by the clock.
// Source: NOAA, general solar position calculations.
func Setting(longitude, hourAngle, equation, zone float64) float64 {
	return 720 - float64(4*(longitude-hourAngle)) - equation + zone
}

// SettingFormula declares Setting.
var SettingFormula = &calc.Formula{
	ID: "setting", Title: calc.Text("Sunset"),
	Expr: "720 - 4*(l - H) - E + z", Result: calc.Var{Symbol: "t_s", Meaning: meansClock, Unit: "min"},
	Vars: []calc.Var{varPlace, varHour, varTime, varZone},
	Fn:   calc.Func4(Setting), Go: "daylight.Setting", Source: "noaa",
}

// DayLength is the time from sunrise to sunset in hours for a constant
// declination, 2H/15. Source: FAO Irrigation and Drainage Paper 56,
// eq. 34, with the hour angle in degrees.
func DayLength(hourAngle float64) float64 { return 2 * hourAngle / 15 }

// DayLengthFormula declares DayLength.
var DayLengthFormula = &calc.Formula{
	ID: "day-length", Title: calc.Text("Length of the day, to check"),
	Expr: "2*H/15", Result: calc.Var{Symbol: "N", Meaning: calc.Text("time the sun is up"), Unit: "h"},
	Vars: []calc.Var{varHour},
	Fn:   calc.Func1(DayLength), Go: "daylight.DayLength", Source: "fao",
	Limits: calc.Text("A check by hand. The calculator takes sunset less sunrise."),
}
