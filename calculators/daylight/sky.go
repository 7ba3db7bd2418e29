package daylight

import "math"

// The sun's distance from straight up, in degrees, at the events.
const (
	zenithRise     = 90.0 + 50.0/60 // 34' of refraction and 16' of the sun's radius
	zenithTwilight = 96.0           // sun's centre 6° below the level horizon
)

// place is where and when: the day by its number since 1970-01-01, angles in
// degrees, the clock's zone in minutes ahead of UTC.
type place struct {
	day, latitude, longitude, zone float64
}

// sun is the sun at one moment, as the steps of the method leave it.
type sun struct {
	minutes            float64 // UTC, from midnight of the day
	century, mean      float64
	anomaly, longitude float64
	tilt, declination  float64
	equation           float64
}

// at is the sun at minutes by the clock after midnight of the day.
func (p place) at(clock float64) (s sun) {
	s.minutes = clock - p.zone
	s.century = Century(p.day, s.minutes)
	s.mean, s.anomaly, s.tilt = MeanLongitude(s.century), Anomaly(s.century), Tilt(s.century)
	s.longitude = Longitude(s.century, s.mean, s.anomaly)
	s.declination = Declination(s.tilt, s.longitude)
	s.equation = EquationOfTime(s.mean, s.anomaly, Eccentricity(s.century), TiltSquare(s.tilt))
	return s
}

// rounds is how often an event is found again from the sun at its own time.
// Three leave less than a second, save where the sun only grazes the horizon.
const rounds = 8

// noon is when the sun stands highest, in minutes after midnight by the
// clock, brought into the day where site and zone do not belong together.
func (p place) noon() (clock float64, s sun) {
	clock = 720
	for range rounds {
		s = p.at(clock)
		clock = Noon(p.longitude, s.equation, p.zone)
		clock -= float64(1440 * math.Floor(clock/1440))
	}
	return clock, s
}

// Standing says whether the sun crosses a height on a day.
type standing int8

const (
	stays   standing = -1 // it stays below all day
	crosses standing = 0
	above   standing = 1 // it stays above all day
)

// event finds when the sun comes to a distance from straight up: before noon
// for side −1, after it for side 1. The sun is the one at the event, which
// the worked steps show.
func (p place) event(zenith, side float64) (clock float64, s sun, how standing) {
	noon, _ := p.noon()
	clock = noon
	for range rounds {
		s = p.at(clock)
		c := cosHourAngle(zenith, p.latitude, s.declination)
		switch {
		case !(c <= 1):
			return 0, s, stays
		case c < -1:
			return 0, s, above
		}
		// The noon of this equation of time, on the day of the first one.
		n := Noon(p.longitude, s.equation, p.zone)
		n += float64(1440 * math.Round((noon-n)/1440))
		clock = n + float64(side*4*HourAngle(zenith, p.latitude, s.declination))
	}
	return clock, s, crosses
}
