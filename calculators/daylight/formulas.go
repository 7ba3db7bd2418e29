// Package daylight tells when the sun rises and sets over a site: the sun's
// place by the short series of Meeus as the NOAA worksheet uses them, and the
// clock of a pour held against it.
//
// Angles are in degrees and times in minutes, as the series are published.
// Longitudes are positive to the east.
package daylight

import "math"

// sin, cos and tan take degrees.
func sin(x float64) float64 { return math.Sin(x * math.Pi / 180) }
func cos(x float64) float64 { return math.Cos(x * math.Pi / 180) }
func tan(x float64) float64 { return math.Tan(x * math.Pi / 180) }

// Century is the time since noon of 2000-01-01 in centuries of 36525 days:
// (D + t/1440 − 10957.5)/36525. D counts days from 1970-01-01, t is in
// minutes UTC; the minute between UTC and the uniform time of the almanac
// moves the sun by less than a second of arc.
// Source: Meeus, Astronomical Algorithms, eq. 25.1.
func Century(days, minutes float64) float64 {
	return (days + minutes/1440 - 10957.5) / 36525
}

// MeanLongitude is the sun's mean longitude in degrees with all full turns
// left in: 280.46646 + T(36000.76983 + 0.0003032 T).
// Source: Meeus, eq. 25.2.
func MeanLongitude(t float64) float64 {
	return 280.46646 + float64(t*(36000.76983+float64(0.0003032*t)))
}

// Anomaly is the sun's mean anomaly in degrees with all full turns left in:
// 357.52911 + T(35999.05029 − 0.0001537 T). Source: Meeus, eq. 25.3.
func Anomaly(t float64) float64 {
	return 357.52911 + float64(t*(35999.05029-float64(0.0001537*t)))
}

// Longitude is the sun's apparent longitude in degrees: the mean one plus the
// equation of the centre, less aberration, with the main term of nutation.
// Good to 0.01°. Source: Meeus, ch. 25, low accuracy.
func Longitude(t, l, m float64) float64 {
	first := float64((1.914602 - float64(t*(0.004817+float64(0.000014*t)))) * sin(m))
	second := float64((0.019993 - float64(0.000101*t)) * sin(2*m))
	third := float64(0.000289 * sin(3*m))
	return l + first + second + third - 0.00569 - float64(0.00478*sin(125.04-float64(1934.136*t)))
}

// Tilt is the obliquity of the ecliptic in degrees, corrected for the main
// term of nutation. Source: Meeus, eq. 22.2 and 25.8.
func Tilt(t float64) float64 {
	seconds := 21.448 - float64(t*(46.815+float64(t*(0.00059-float64(0.001813*t)))))
	return 23 + (26+seconds/60)/60 + float64(0.00256*cos(125.04-float64(1934.136*t)))
}

// Declination is how far the sun stands north of the equator, in degrees:
// asin(sin θ sin λ). Source: Meeus, eq. 25.7.
func Declination(tilt, longitude float64) float64 {
	return 180 / math.Pi * math.Asin(sin(tilt)*sin(longitude))
}

// Eccentricity is that of the earth's orbit. Source: Meeus, eq. 25.4.
func Eccentricity(t float64) float64 {
	return 0.016708634 - float64(t*(0.000042037+float64(0.0000001267*t)))
}

// TiltSquare is y = tan²(θ/2) of the tilt in degrees. Source: Meeus, ch. 28.
func TiltSquare(tilt float64) float64 { return math.Pow(tan(tilt/2), 2) }

// EquationOfTime is how many minutes the sun is ahead of the clock's mean
// sun, from the mean longitude and anomaly in degrees, the eccentricity and
// tan²(θ/2). It differs from the long method by a few seconds.
// Source: Smart's series in Meeus, eq. 28.3.
func EquationOfTime(l, m, e, y float64) float64 {
	turn := float64(y*sin(2*l)) - float64(2*e*sin(m)) + float64(4*e*y*sin(m)*cos(2*l)) -
		float64(0.5*math.Pow(y, 2)*sin(4*l)) - float64(1.25*math.Pow(e, 2)*sin(2*m))
	return 720 / math.Pi * turn
}

// HourAngle is how far the sun turns from noon until it stands at a distance
// from the zenith, in degrees: acos(cos Z/(cos φ cos δ) − tan φ tan δ). It is
// not a number where the sun does not come to stand there on that day.
// Source: NOAA, general solar position calculations.
func HourAngle(zenith, latitude, declination float64) float64 {
	return 180 / math.Pi * math.Acos(cosHourAngle(zenith, latitude, declination))
}

// cosHourAngle is above 1 where the sun stays below and below −1 where it
// stays above.
func cosHourAngle(zenith, latitude, declination float64) float64 {
	return cos(zenith)/(cos(latitude)*cos(declination)) - float64(tan(latitude)*tan(declination))
}

// Noon is when the sun stands highest, in minutes after midnight by the
// clock: 720 − 4·longitude − E + zone. zone is in minutes ahead of UTC.
// Source: NOAA, general solar position calculations.
func Noon(longitude, equation, zone float64) float64 {
	return 720 - float64(4*longitude) - equation + zone
}

// Rising is when the sun passes an hour angle before noon, in minutes after
// midnight by the clock: the earth turns one degree in four minutes.
// Source: NOAA, general solar position calculations.
func Rising(longitude, hourAngle, equation, zone float64) float64 {
	return 720 - float64(4*(longitude+hourAngle)) - equation + zone
}

// Setting is when it passes the same hour angle after noon.
// Source: NOAA, general solar position calculations.
func Setting(longitude, hourAngle, equation, zone float64) float64 {
	return 720 - float64(4*(longitude-hourAngle)) - equation + zone
}

// DayLength is the time the sun is up, in hours, when its place hardly
// changes over the day: 2H/15. Source: FAO Irrigation and Drainage Paper 56,
// eq. 34, with the hour angle in degrees.
func DayLength(hourAngle float64) float64 { return 2 * hourAngle / 15 }
