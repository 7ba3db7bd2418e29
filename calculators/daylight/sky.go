package daylight

import "math"

// The sun's distance from straight up, in degrees, at the events.
const (
	ZenithRise     = 90.0 + 50.0/60 // 34' of refraction and 16' of the sun's radius
	zenithTwilight = 96.0           // sun's centre 6° below the level horizon
)

// rounds is how often an event is found again from the sun at its own time.
// Three leave less than a second, save where the sun only grazes the horizon.
const rounds = 8

const (
	Stays   Crossing = -1 // it stays below all day
	Crosses Crossing = 0
	Above   Crossing = 1 // it stays above all day
)

// Place is where and when: the day by its number since 1970-01-01, angles in
// degrees, the clock's zone in minutes ahead of UTC.
type Place struct {
	Day, Latitude, Longitude, Zone float64
}

// Sun is the sun at one moment, as the steps of the method leave it.
type Sun struct {
	Minutes            float64 // UTC, from midnight of the day
	century, mean      float64
	anomaly, longitude float64
	tilt, declination  float64
	equation           float64
}

// at is the sun at minutes by the clock after midnight of the day.
func (p Place) at(clock float64) (s Sun) {
	s.Minutes = clock - p.Zone
	s.century = Century(p.Day, s.Minutes)
	s.mean, s.anomaly, s.tilt = MeanLongitude(s.century), Anomaly(s.century), Tilt(s.century)
	s.longitude = Longitude(s.century, s.mean, s.anomaly)
	s.declination = Declination(s.tilt, s.longitude)
	s.equation = EquationOfTime(s.mean, s.anomaly, Eccentricity(s.century), TiltSquare(s.tilt))
	return s
}

// noon is when the sun stands highest, in minutes after midnight by the
// clock, brought into the day where site and zone do not belong together.
func (p Place) noon() (clock float64, s Sun) {
	clock = 720
	for range rounds {
		s = p.at(clock)
		clock = Noon(p.Longitude, s.equation, p.Zone)
		clock -= float64(1440 * math.Floor(clock/1440))
	}
	return clock, s
}

// Crossing says whether the sun crosses a height on a day.
type Crossing int8

// event finds when the sun comes to a distance from straight up: before noon
// for side −1, after it for side 1. The sun is the one at the event, which
// the worked steps show.
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
		// The noon of this equation of time, on the day of the first one.
		n := Noon(p.Longitude, s.equation, p.Zone)
		n += float64(1440 * math.Round((noon-n)/1440))
		clock = n + float64(side*4*HourAngle(zenith, p.Latitude, s.declination))
	}
	return clock, s, Crosses
}

// Light is the day at a place. Times are in minutes after midnight.
type Light struct {
	Dawn, Rise, Noon, Set, Dusk float64
	Sky, Twilight               Crossing
	AtSet                       Sun
}

func (p Place) Light() (d Light) {
	d.Noon, _ = p.noon()
	d.Rise, _, d.Sky = p.event(ZenithRise, -1)
	d.Dawn, _, d.Twilight = p.event(zenithTwilight, -1)
	set, s, sky := p.event(ZenithRise, 1)
	dusk, _, twilight := p.event(zenithTwilight, 1)
	d.Set, d.Dusk, d.AtSet = set, dusk, s
	// Where the sun grazes the horizon only one of the two may be found; the
	// day then counts as without them.
	if sky != Crosses {
		d.Sky = sky
	}
	if twilight != Crosses {
		d.Twilight = twilight
	}
	return d
}
