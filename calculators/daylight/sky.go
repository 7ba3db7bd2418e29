package daylight

import "math"

// Zenith distances of the sun at the events, in degrees.
const (
	ZenithRise     = 90.0 + 50.0/60 // 34' of refraction and 16' of the sun's radius
	zenithTwilight = 96.0           // sun's centre 6° below the level horizon
)

// rounds is the number of iterations for the time of an event. After three the
// error is below a second, except where the sun only grazes the horizon.
const rounds = 8

// Place is a site and a day: the day as its number since 1970-01-01, latitude and
// longitude in degrees, the zone of the clock in minutes ahead of UTC.
type Place struct {
	Day, Latitude, Longitude, Zone float64
}

// Sun is the position of the sun at one moment, with the intermediate results.
type Sun struct {
	Minutes            float64 // UTC, from midnight of the day
	century, mean      float64
	anomaly, longitude float64
	tilt, declination  float64
	equation           float64
}

// at returns the sun at a time of the clock, in minutes after midnight of the day.
func (p Place) at(clock float64) (s Sun) {
	s.Minutes = clock - p.Zone
	s.century = Century(p.Day, s.Minutes)
	s.mean, s.anomaly, s.tilt = MeanLongitude(s.century), Anomaly(s.century), Tilt(s.century)
	s.longitude = Longitude(s.century, s.mean, s.anomaly)
	s.declination = Declination(s.tilt, s.longitude)
	s.equation = EquationOfTime(s.mean, s.anomaly, Eccentricity(s.century), TiltSquare(s.tilt))
	return s
}

// noon returns the time of the highest sun by the clock, in minutes after
// midnight, and the sun then. The time is reduced to the day, 0 to under 1440,
// where site and zone do not match.
func (p Place) noon() (clock float64, s Sun) {
	clock = 720
	for range rounds {
		s = p.at(clock)
		clock = Noon(p.Longitude, s.equation, p.Zone)
		clock -= float64(1440 * math.Floor(clock/1440))
	}
	return clock, s
}

// Crossing is whether the sun crosses a zenith distance on a day.
type Crossing int8

// The values of Crossing.
const (
	Stays   Crossing = -1 // below all day
	Crosses Crossing = 0
	Above   Crossing = 1 // above all day
)

// event returns the time by the clock, in minutes after midnight, at which the sun
// is at a zenith distance in degrees: before noon for side −1, after noon for side
// 1. It may be below 0 or above 1440. It also returns the sun then. If the sun
// does not cross that distance on the day, the time is 0 and how is Stays (below
// it) or Above.
func (p Place) event(zenith, side float64) (clock float64, s Sun, how Crossing) {
	noon, _ := p.noon()
	clock = noon
	for range rounds {
		s = p.at(clock)
		c := cosHourAngle(zenith, p.Latitude, s.declination)
		switch {
		case !(c <= 1):
			return 0, s, Stays
		case c < -1:
			return 0, s, Above
		}
		// Noon by the equation of time then, on the same day as the first noon.
		n := Noon(p.Longitude, s.equation, p.Zone)
		n += float64(1440 * math.Round((noon-n)/1440))
		clock = n + float64(side*4*HourAngle(zenith, p.Latitude, s.declination))
	}
	return clock, s, Crosses
}

// Light holds the events of a day, in minutes after midnight by the clock. Sky is
// of sunrise and sunset, Twilight of dawn and dusk, AtSet the sun at sunset.
type Light struct {
	Dawn, Rise, Noon, Set, Dusk float64
	Sky, Twilight               Crossing
	AtSet                       Sun
}

// Light returns the events of the day. If Sky or Twilight is not Crosses, the
// times of those events are not to be used.
func (p Place) Light() (d Light) {
	d.Noon, _ = p.noon()
	d.Rise, _, d.Sky = p.event(ZenithRise, -1)
	d.Dawn, _, d.Twilight = p.event(zenithTwilight, -1)
	set, s, sky := p.event(ZenithRise, 1)
	dusk, _, twilight := p.event(zenithTwilight, 1)
	d.Set, d.Dusk, d.AtSet = set, dusk, s
	// Where the sun grazes the horizon only one of the two events may be found.
	// The day then counts as having neither.
	if sky != Crosses {
		d.Sky = sky
	}
	if twilight != Crosses {
		d.Twilight = twilight
	}
	return d
}
