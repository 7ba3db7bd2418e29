package daylighthours

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The US Naval Observatory's tables, turned to clock text: what the crew
// reads. Atlanta, 6 September 2009, daylight time, as in the manual of a library of astronomy.
func TestClockAsPrinted(t *testing.T) {
	res := calctest.Run(t, Calculator, "date=2009-09-06", "latitude=33.8", "longitude=-84.4", "zone=-4", "start=")
	for id, want := range map[string]string{"dawn": "6:50", "sunrise": "7:15", "sunset": "19:56", "dusk": "20:21"} {
		if got := calc.FormatClock(res.Out.Num(id)); got != want {
			t.Errorf("%s is %s, printed %s", id, got, want)
		}
	}
}

// Polar day, polar night and white nights are shown as such.
// Anchorage in June 2020 has no civil twilight by the US Naval Observatory.
func TestSkies(t *testing.T) {
	for _, c := range []struct {
		date, latitude, sky string
		rows                int
		note                calc.Text
	}{
		{"2020-06-15", "61.216667", "usual", 3, noteNoDark},
		{"2020-06-25", "61.216667", "usual", 3, noteNoDark},
		{"2020-06-05", "61.216667", "usual", 5, ""},
		{"2020-06-21", "70", "up", 1, noteUp},
		{"2020-12-21", "70", "down", 3, noteDown}, // civil twilight at noon
		{"2020-12-21", "80", "down", 1, noteDown},
		{"2020-12-21", "-70", "up", 1, noteUp},
		{"2020-06-21", "66", "up", 1, noteUp},
		{"2020-06-21", "65", "usual", 3, noteNoDark},
	} {
		res := calctest.Run(t, Calculator, "date="+c.date, "latitude="+c.latitude, "longitude=-149.866667", "zone=-9")
		if res.State != calc.OK || res.Out.Choice("sky") != c.sky || len(res.Out.Rows("events")) != c.rows {
			t.Errorf(
				"%s at %s: %s, %s, %d rows",
				c.date,
				c.latitude,
				res.State,
				res.Out.Choice("sky"),
				len(res.Out.Rows("events")),
			)
		}
		for _, note := range []calc.Text{noteNoDark, noteUp, noteDown} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%s at %s: note %s", c.date, c.latitude, note.EN())
			}
		}
	}
}

// Between the polar circles the day is longer with a higher sun, a little over 12 h
// at the equinox, and reversed between the hemispheres.
func TestDayLength(t *testing.T) {
	length := func(date, latitude string) float64 {
		return calctest.Run(
			t,
			Calculator,
			"date="+date,
			"latitude="+latitude,
			"longitude=0",
			"zone=0",
		).Out.Num(
			"day-length",
		) / 3600
	}
	for _, lat := range []string{"25", "45", "60"} {
		last := 0.0
		for _, date := range []string{"2026-12-21", "2026-02-01", "2026-03-20", "2026-05-01", "2026-06-21"} {
			if got := length(date, lat); got <= last {
				t.Errorf("%s at %s: %v h is no longer than %v", date, lat, got, last)
			} else {
				last = got
			}
		}
		if got := length("2026-03-20", lat); got < 12 || got > 12.4 {
			t.Errorf("equinox at %s: %v h", lat, got)
		}
		north, south := length("2026-06-21", lat), length("2026-12-21", "-"+lat)
		if math.Abs(north-south) > 0.03 {
			t.Errorf("midsummer at %s: %v h north, %v h south", lat, north, south)
		}
	}
}

// An hour of zone shifts every time by an hour, a degree of longitude by four
// minutes.
func TestZoneAndLongitude(t *testing.T) {
	sunset := func(lon, zone string) float64 {
		res := calctest.Run(t, Calculator, "longitude="+lon, "zone="+zone)
		return res.Out.Rows("events")[3].Num("since") / 60
	}
	if got := sunset("-93.2", "-5") - sunset("-93.2", "-6"); math.Abs(got-60) > 1e-6 {
		t.Errorf("an hour of zone moves sunset by %v min", got)
	}
	if got := sunset("-93.2", "-6") - sunset("-92.2", "-6"); math.Abs(got-4) > 0.01 {
		t.Errorf("a degree of longitude moves sunset by %v min", got)
	}
	if got := sunset("-93.2", "-5.75") - sunset("-93.2", "-6"); math.Abs(got-15) > 1e-6 {
		t.Errorf("a quarter of an hour of zone moves sunset by %v min", got)
	}
}

// The worked steps end at the sunset that is shown.
func TestStepsEndAtSunset(t *testing.T) {
	res := calctest.Run(t, Calculator)
	last := res.Steps[len(res.Steps)-1]
	if got := res.Out.Rows("events")[3].Num("since"); math.Abs(last.Out-got) > 0.5 {
		t.Errorf("steps give %v s, shown %v s", last.Out, got)
	}
}

func TestPour(t *testing.T) {
	for _, c := range []struct {
		start, pour string
		note        calc.Text // the only one about the pour
	}{
		{"11:00", "3.5 h", ""}, {"6:00", "3 h", noteDarkStart}, {"6:50", "3 h", noteEarly},
		{"12:30", "3 h", ""}, {"13:10", "3 h", noteLate}, {"14:00", "3 h", noteDarkEnd}, {"11:00", "14 h", noteDarkEnd},
	} {
		res := calctest.Run(t, Calculator, "start="+c.start, "pour="+c.pour, "after=45 min")
		for _, note := range []calc.Text{noteDarkStart, noteEarly, noteDarkEnd, noteLate} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("start %s for %s: note %s", c.start, c.pour, note.EN())
			}
		}
		rise, set := res.Out.Rows("events")[1].Num("since"), res.Out.Rows("events")[3].Num("since")
		start, _ := calc.ParseClock(c.start)
		if got, want := res.Out.Num("left"), set-math.Max(start, rise); math.Abs(got-want) > 1e-6 {
			t.Errorf("start %s: %v s left, want %v", c.start, got, want)
		}
		hours := calc.From(res.Out.Num("margin"), "h")
		if late := c.note == noteLate || c.note == noteDarkEnd; late != (hours < 0) {
			t.Errorf("start %s: margin %v h", c.start, hours)
		}
	}
}

func TestRefusals(t *testing.T) {
	for _, c := range []struct {
		path, text string
		note       calc.Text
	}{
		{"date", "1900-12-31", refuseYear}, {"date", "2100-01-01", refuseYear},
		{"zone", "-6.1", refuseZone},
	} {
		if res := calctest.Run(t, Calculator, c.path+"="+c.text); res.State != calc.Refused ||
			!calctest.Noted(res, c.note) {
			t.Errorf("%s=%s is %s: %v", c.path, c.text, res.State, res.Notes)
		}
	}
	for _, date := range []string{"1901-01-01", "2099-12-31"} {
		if res := calctest.Run(t, Calculator, "date="+date); res.State != calc.OK {
			t.Errorf("%s is %s", date, res.State)
		}
	}
}

// A west longitude entered as east is noted because of the time of noon.
func TestAskForNoon(t *testing.T) {
	if res := calctest.Run(t, Calculator); calctest.Noted(res, askNoon) {
		t.Error("the default asks about noon")
	}
	if res := calctest.Run(t, Calculator, "longitude=93.2"); !calctest.Noted(res, askNoon) {
		t.Error("nothing asked for a longitude of the wrong sign")
	}
	if res := calctest.Run(t, Calculator, "latitude=65.5"); !calctest.Noted(res, noteNorth) {
		t.Error("no note on high latitudes")
	}
	if res := calctest.Run(t, Calculator, "latitude=65"); calctest.Noted(res, noteNorth) {
		t.Error("the far north starts beyond 65°")
	}
}
