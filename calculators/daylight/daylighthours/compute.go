package daylighthours

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/daylight"
	"coursebook/calculators/displays"
)

const (
	refuseYear   = calc.Text("The series is held good for 1901 to 2099 only.")
	refuseZone   = calc.Text("Zones run in quarter hours. Write it like -7, 5.5 or 5.75.")
	noteUp       = calc.Text("At this place the sun stays up the whole day.")
	noteDown     = calc.Text("At this place the sun does not rise that day. Work by lights.")
	noteNoDark   = calc.Text("Twilight lasts all night. There is some light the whole day.")
	noteOtherDay = calc.Text("One of these times falls on the day before or after.")
	noteNorth    = calc.Text("Beyond {limit} from the equator the air can shift sunrise and sunset by several minutes.")
	askNoon      = calc.Text(
		"By these inputs the sun stands highest at {noon}. Check the sign of the longitude, and the zone.",
	)

	noteDarkStart = calc.Text("The pour starts in the dark. First light is at {dawn}. Have lights up, or start later.")
	noteEarly     = calc.Text("The pour starts before sunrise, in twilight.")
	noteDarkEnd   = calc.Text(
		"The crew is done at {finish}. Last light is at {dusk}. Have lights up before sunset, or start sooner.",
	)
	noteLate = calc.Text("The crew is done at {finish}, after sunset. Twilight lasts until {dusk}.")
)

// The first and the last day for which the method is valid, in days since
// 1970-01-01, the latitude above which refraction is noted, and the bounds of a
// plausible noon in minutes after midnight.
const (
	firstDay       = -25202 // 1901-01-01
	lastDay        = 47481  // 2099-12-31
	steadyLatitude = 65.0   // degrees
	noonEarly      = 9.5 * 60
	noonLate       = 15.5 * 60
	quarter        = 15.0 // minutes
	zoneSlack      = 1e-6
	minuteInSI     = 60.0
)

// compute sets the events of the day and the light that a pour has. It refuses a
// date outside the years of the method, and a zone that is no multiple of a
// quarter hour.
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
	p := daylight.Place{Day: float64(in.Days("date")), Latitude: calc.From(in.Num("latitude"), "°"),
		Longitude: calc.From(in.Num("longitude"), "°"), Zone: zone}
	d := p.Light()
	putDay(r, d)
	steps(r, p, d)
	addNotes(r, p, d)
	if in.Has("start") {
		putPour(r, in, d, in.Num("start")/minuteInSI)
	}
}

// putDay sets the events of the day that take place, and the length of the day.
func putDay(r *calc.Recorder, d daylight.Light) {
	var rows []calc.Case
	add := func(event string, minutes float64) {
		rows = append(rows, r.NewRow("events").With("event", calc.ChoiceOf(event)).
			With("clock", calc.Num(minutes*minuteInSI)).With("since", calc.Num(minutes*minuteInSI)))
		if event != "noon" {
			r.Put(event, minutes*minuteInSI)
		}
	}
	if d.Twilight == daylight.Crosses {
		add("dawn", d.Dawn)
	}
	sky, length := "usual", d.Set-d.Rise
	switch d.Sky {
	case daylight.Crosses:
		add("sunrise", d.Rise)
	case daylight.Above:
		sky, length = "up", 1440
	case daylight.Stays:
		sky, length = "down", 0
	}
	add("noon", d.Noon)
	if d.Sky == daylight.Crosses {
		add("sunset", d.Set)
	}
	if d.Twilight == daylight.Crosses {
		add("dusk", d.Dusk)
	}
	r.PutRows("events", rows)
	r.PutChoice("sky", sky)
	r.Put("day-length", length*minuteInSI)
}

// steps records the worked steps of sunset, and none if the sun does not set.
func steps(r *calc.Recorder, p daylight.Place, d daylight.Light) {
	if d.Sky != daylight.Crosses {
		return
	}
	deg := func(x float64) float64 { return calc.SI(x, "°") }
	t := r.Use(daylight.CenturyFormula, p.Day, d.AtSet.Minutes*minuteInSI)
	l, m := r.Use(daylight.MeanLongitudeFormula, t), r.Use(daylight.AnomalyFormula, t)
	longitude := r.Use(daylight.LongitudeFormula, t, l, m)
	tilt := r.Use(daylight.TiltFormula, t)
	declination := r.Use(daylight.DeclinationFormula, tilt, longitude)
	e := r.Use(
		daylight.EquationOfTimeFormula,
		l,
		m,
		daylight.EccentricityFormula.Value(t),
		daylight.TiltSquareFormula.Value(tilt),
	)
	h := r.Use(daylight.HourAngleFormula, deg(daylight.ZenithRise), deg(p.Latitude), declination)
	r.Use(daylight.SettingFormula, deg(p.Longitude), h, e, p.Zone*minuteInSI)
}

// addNotes records a note for a day without sunrise or dark, times on another day,
// a high latitude and a noon that does not fit the zone.
func addNotes(r *calc.Recorder, p daylight.Place, d daylight.Light) {
	switch d.Sky {
	case daylight.Above:
		r.Note(calc.LevelNotice, calc.At("latitude"), noteUp)
	case daylight.Stays:
		r.Note(calc.LevelCaution, calc.At("latitude"), noteDown)
	case daylight.Crosses:
		if d.Twilight == daylight.Above {
			r.Note(calc.LevelNotice, calc.At("latitude"), noteNoDark)
		}
		if d.Rise < 0 || d.Set >= 1440 || d.Twilight == daylight.Crosses && (d.Dawn < 0 || d.Dusk >= 1440) {
			r.Note(calc.LevelNotice, calc.At("date"), noteOtherDay)
		}
	}
	if math.Abs(p.Latitude) > steadyLatitude {
		r.Note(
			calc.LevelNotice,
			calc.At("latitude"),
			noteNorth,
			calc.Amount("limit", calc.SI(steadyLatitude, "°"), &displays.WholeDegrees),
		)
	}
	if d.Noon < noonEarly || d.Noon > noonLate {
		r.Note(calc.LevelAsk, calc.At("longitude"), askNoon, calc.WordSlot("noon", clockText(d.Noon)))
	}
}

// putPour sets the finish of a pour that begins at start, in minutes after
// midnight, and compares it with the daylight, noting work in the dark. On a day
// without sunrise it sets the finish alone.
func putPour(r *calc.Recorder, in calc.Case, d daylight.Light, start float64) {
	finish := start + (in.Num("pour")+in.Num("after"))/minuteInSI
	r.Put("finish", finish*minuteInSI)
	if d.Sky != daylight.Crosses {
		return
	}
	r.Put("left", math.Max(0, d.Set-math.Max(start, d.Rise))*minuteInSI)
	r.Put("margin", (d.Set-finish)*minuteInSI)
	dark := d.Twilight == daylight.Crosses
	switch {
	case dark && start < d.Dawn:
		r.Note(calc.LevelCaution, calc.At("start"), noteDarkStart, calc.WordSlot("dawn", clockText(d.Dawn)))
	case start < d.Rise:
		r.Note(calc.LevelNotice, calc.At("start"), noteEarly)
	}
	done := calc.WordSlot("finish", clockText(finish))
	switch {
	case dark && finish > d.Dusk:
		r.Note(calc.LevelCaution, calc.At("start"), noteDarkEnd, done, calc.WordSlot("dusk", clockText(d.Dusk)))
	case dark && finish > d.Set:
		r.Note(calc.LevelNotice, calc.At("start"), noteLate, done, calc.WordSlot("dusk", clockText(d.Dusk)))
	}
}
