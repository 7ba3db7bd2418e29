package daylight

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	refuseYear  = calc.Text("The series is held good for 1901 to 2099 only.")
	refuseZone  = calc.Text("Zones run in quarter hours. Write it like -7, 5.5 or 5.75.")
	refuseClock = calc.Text("“{text}” is no time of day. Write it like 06:30 or 14:00.")

	noteUp       = calc.Text("At this place the sun stays up the whole day.")
	noteDown     = calc.Text("At this place the sun does not rise that day. Work by lights.")
	noteNoDark   = calc.Text("Twilight lasts all night. There is some light the whole day.")
	noteOtherDay = calc.Text("One of these times falls on the day before or after.")
	noteNorth    = calc.Text("Beyond {limit} from the equator the air can shift sunrise and sunset by several minutes.")
	askNoon      = calc.Text("By these inputs the sun stands highest at {noon}. Check the sign of the longitude, and the zone.")

	noteDarkStart = calc.Text("The pour starts in the dark. First light is at {dawn}. Have lights up, or start later.")
	noteEarly     = calc.Text("The pour starts before sunrise, in twilight.")
	noteDarkEnd   = calc.Text("The crew is done at {finish}. Last light is at {dusk}. Have lights up before sunset, or start sooner.")
	noteLate      = calc.Text("The crew is done at {finish}, after sunset. Twilight lasts until {dusk}.")
)

// The first and the last day of the years the method is held good for, in
// days since 1970-01-01, and the latitude from which the air is told of.
const (
	firstDay   = -25202 // 1901-01-01
	lastDay    = 47481  // 2099-12-31
	steadyTo   = 65.0   // degrees
	noonEarly  = 9.5 * 60
	noonLate   = 15.5 * 60
	quarter    = 15.0 // minutes
	zoneSlack  = 1e-6
	minuteInSI = 60.0
)

// light is the day at a place. Times are in minutes after midnight.
type light struct {
	dawn, rise, noon, set, dusk float64
	sky, twilight               standing
	atSet                       sun
}

func compute(r *calc.Recorder, in calc.Case) {
	if d := in.Days("date"); d < firstDay || d > lastDay {
		r.Refuse(calc.At("date"), refuseYear)
		return
	}
	zone := in.Num("zone") / minuteInSI
	if math.Abs(zone-float64(quarter*math.Round(zone/quarter))) > zoneSlack {
		r.Refuse(calc.At("zone"), refuseZone)
		return
	}
	start, ok := readClock(in.Text("start"))
	if in.Has("start") && !ok {
		r.Refuse(calc.At("start"), refuseClock, calc.Word("text", in.Text("start")))
		return
	}
	p := place{float64(in.Days("date")), calc.From(in.Num("latitude"), "°"), calc.From(in.Num("longitude"), "°"), zone}
	d := p.light()
	putDay(r, d)
	steps(r, p, d)
	sayDay(r, p, d)
	if in.Has("start") {
		putPour(r, in, d, start)
	}
}

func (p place) light() (d light) {
	d.noon, _ = p.noon()
	d.rise, _, d.sky = p.event(zenithRise, -1)
	d.dawn, _, d.twilight = p.event(zenithTwilight, -1)
	set, s, sky := p.event(zenithRise, 1)
	dusk, _, twilight := p.event(zenithTwilight, 1)
	d.set, d.dusk, d.atSet = set, dusk, s
	// Where the sun grazes the horizon only one of the two may be found; the
	// day then counts as without them.
	if sky != crosses {
		d.sky = sky
	}
	if twilight != crosses {
		d.twilight = twilight
	}
	return d
}

func putDay(r *calc.Recorder, d light) {
	var rows []calc.Case
	add := func(event string, minutes float64) {
		rows = append(rows, r.NewRow("events").With("event", calc.ChoiceOf(event)).
			With("clock", calc.TextOf(clockText(minutes))).With("since", calc.Num(minutes*minuteInSI)))
		if event != "noon" {
			r.PutChoice(event, clockText(minutes))
		}
	}
	if d.twilight == crosses {
		add("dawn", d.dawn)
	}
	sky, length := "usual", d.set-d.rise
	switch d.sky {
	case crosses:
		add("sunrise", d.rise)
	case above:
		sky, length = "up", 1440
	case stays:
		sky, length = "down", 0
	}
	add("noon", d.noon)
	if d.sky == crosses {
		add("sunset", d.set)
	}
	if d.twilight == crosses {
		add("dusk", d.dusk)
	}
	r.PutRows("events", rows)
	r.PutChoice("sky", sky)
	r.Put("day-length", length*minuteInSI)
}

// steps works sunset by hand, from the sun as it stands then.
func steps(r *calc.Recorder, p place, d light) {
	if d.sky != crosses {
		return
	}
	deg := func(x float64) float64 { return calc.SI(x, "°") }
	t := r.Use(eqCentury, p.day, d.atSet.minutes*minuteInSI)
	l, m := r.Use(eqMean, t), r.Use(eqAnomaly, t)
	longitude := r.Use(eqLongitude, t, l, m)
	tilt := r.Use(eqTilt, t)
	declination := r.Use(eqDeclination, tilt, longitude)
	e := r.Use(eqTime, l, m, eqEccentricity.Value(t), eqSquare.Value(tilt))
	h := r.Use(eqHourAngle, deg(zenithRise), deg(p.latitude), declination)
	r.Use(eqSetting, deg(p.longitude), h, e, p.zone*minuteInSI)
}

func sayDay(r *calc.Recorder, p place, d light) {
	switch d.sky {
	case above:
		r.Note(calc.LevelNotice, calc.At("latitude"), noteUp)
	case stays:
		r.Note(calc.LevelCaution, calc.At("latitude"), noteDown)
	case crosses:
		if d.twilight == above {
			r.Note(calc.LevelNotice, calc.At("latitude"), noteNoDark)
		}
		if d.rise < 0 || d.set >= 1440 || d.twilight == crosses && (d.dawn < 0 || d.dusk >= 1440) {
			r.Note(calc.LevelNotice, calc.At("date"), noteOtherDay)
		}
	}
	if math.Abs(p.latitude) > steadyTo {
		r.Note(calc.LevelNotice, calc.At("latitude"), noteNorth, calc.Amount("limit", calc.SI(steadyTo, "°"), &displays.WholeDegrees))
	}
	if d.noon < noonEarly || d.noon > noonLate {
		r.Note(calc.LevelAsk, calc.At("longitude"), askNoon, calc.Word("noon", clockText(d.noon)))
	}
}

// putPour holds the pour against the day.
func putPour(r *calc.Recorder, in calc.Case, d light, start float64) {
	finish := start + (in.Num("pour")+in.Num("after"))/minuteInSI
	r.PutChoice("finish", clockText(finish))
	if d.sky != crosses {
		return
	}
	r.Put("left", math.Max(0, d.set-math.Max(start, d.rise))*minuteInSI)
	r.Put("margin", (d.set-finish)*minuteInSI)
	dark := d.twilight == crosses
	switch {
	case dark && start < d.dawn:
		r.Note(calc.LevelCaution, calc.At("start"), noteDarkStart, calc.Word("dawn", clockText(d.dawn)))
	case start < d.rise:
		r.Note(calc.LevelNotice, calc.At("start"), noteEarly)
	}
	done := calc.Word("finish", clockText(finish))
	switch {
	case dark && finish > d.dusk:
		r.Note(calc.LevelCaution, calc.At("start"), noteDarkEnd, done, calc.Word("dusk", clockText(d.dusk)))
	case dark && finish > d.set:
		r.Note(calc.LevelNotice, calc.At("start"), noteLate, done, calc.Word("dusk", clockText(d.dusk)))
	}
}
