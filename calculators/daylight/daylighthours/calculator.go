// Package daylighthours computes sunrise, sunset and civil twilight at a site,
// and how much of a pour is in daylight.
package daylighthours

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/daylight"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Calculator declares inputs, outputs, formulas and sources of the calculator.
var Calculator = &calc.Calculator{
	ID:       "daylight",
	Title:    calc.Text("Daylight for a pour"),
	Purpose:  calc.Text("When it gets light and dark on the day, and how long a pour can see."),
	In:       inputs,
	Out:      outputs,
	Formulas: formulas,
	Sources:  sources,
	Cautions: []calc.Caution{
		{
			Level: calc.LevelWarning,
			Text: calc.Text(
				"People fall and get struck where they cannot see. Set up lights before dusk, or do not start.",
			),
		},
		{
			Level: calc.LevelNotice,
			Text: calc.Text(
				"The times are for level ground and a clear sky. Hills, trees, deep pits and clouds make it dark " +
					"sooner.",
			),
		},
	},
	Tables:  tables,
	Compute: compute,
	Draw:    draw,
}

// clockText returns minutes after midnight as a time of day.
func clockText(minutes float64) string { return calc.FormatClock(minutes * minuteInSI) }

// Displays. Latitude and longitude are shown to a ten-thousandth of a degree, some
// 30 ft, as on maps.
var (
	showPlace = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.0001}}
	showSpan  = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 0.1, Rounding: quantity.Down},
	}
)

const (
	whyPole  = calc.Text("At the poles there is one sunrise a year.")
	whyRound = calc.Text("The earth has 180° each way. East is plus, west is minus.")
	whyZone  = calc.Text("Zones run from 12 hours behind UTC to 14 ahead.")
	whyPour  = calc.Text("A longer pour needs a second crew and its own plan.")
)

var inputs = []calc.Field{
	{ID: "date", Decides: 1, Kind: calc.Day, Usual: "2026-11-12", Label: calc.Text("Date")},
	{ID: "latitude", Decides: 2, Display: &showPlace, Usual: "44.5", Label: calc.Text("Latitude"),
		Help:  calc.Text("North is plus, south is minus. Any map on a phone shows it."),
		Range: "-89 to 89 °", Why: whyPole},
	{ID: "longitude", Decides: 3, Display: &showPlace, Usual: "-93.2", Label: calc.Text("Longitude"),
		Help:  calc.Text("East is plus, west is minus. All of the Americas is minus."),
		Range: "-180 to 180 °", Why: whyRound},
	{ID: "zone", Decides: 4, Display: &displays.Hours, Usual: "-6 h", Label: calc.Text("Clock, hours from UTC"),
		Help:  calc.Text("As the clock stands that day, summer time included. West is minus."),
		Range: "-12 to 14 h", Why: whyZone},
	{
		ID:       "start",
		Kind:     calc.Clock,
		Optional: true,
		Example:  true,
		Usual:    "11:00",
		Label:    calc.Text("First concrete at"),
		Help:     calc.Text("Empty: daylight only."),
	},
	{ID: "pour", Display: &displays.Hours, Example: true, Usual: "3.5 h", Label: calc.Text("Length of the pour"),
		Range: "0 to 24 h", Why: displays.NotMinus, WhyMost: whyPour, When: hasStart},
	{ID: "after", Display: &displays.Hours, Usual: "1 h", Label: calc.Text("Work after the pour"),
		Help:  calc.Text("Straighten the walls, finish the top, set anchors, wash out."),
		Range: "0 to 12 h", Why: displays.NotMinus, WhyMost: whyPour, When: hasStart},
}

// hasStart reports whether the start of the pour is entered.
func hasStart(c calc.Case) bool { return c.Has("start") }

const (
	labelDawn    = calc.Text("First light")
	labelSunrise = calc.Text("Sunrise")
	labelNoon    = calc.Text("Sun highest")
	labelSunset  = calc.Text("Sunset")
	labelDusk    = calc.Text("Last light")
)

// skies are the kinds of day: with sunrise and sunset, or without.
var skies = []calc.Option{
	{ID: "usual", Label: calc.Text("Rises and sets")},
	{ID: "up", Label: calc.Text("Stays up all day")},
	{ID: "down", Label: calc.Text("Does not rise")},
}

// The rows hold the same times as minutes after midnight.
var outputs = []calc.Field{
	{ID: "sunrise", Kind: calc.Clock, Lead: true, Label: labelSunrise},
	{ID: "sunset", Kind: calc.Clock, Lead: true, Label: labelSunset},
	{ID: "left", Display: &showSpan, Lead: true, Label: calc.Text("Daylight after the start"),
		Help: calc.Text("From the first concrete to sunset.")},
	{ID: "finish", Kind: calc.Clock, Label: calc.Text("Crew done at")},
	{ID: "margin", Display: &showSpan, Label: calc.Text("Daylight left when done"),
		Help: calc.Text("Minus: the crew works so long after sunset.")},
	{ID: "day-length", Display: &showSpan, Label: calc.Text("Sunrise to sunset")},
	{
		ID:    "dawn",
		Kind:  calc.Clock,
		Label: labelDawn,
		Help:  calc.Text("Civil twilight begins. The ground can be seen in a clear sky."),
	},
	{
		ID:    "dusk",
		Kind:  calc.Clock,
		Label: labelDusk,
		Help:  calc.Text("Civil twilight ends. From here on work needs lights."),
	},
	{ID: "sky", Kind: calc.Choice, Options: skies, Label: calc.Text("The sun")},
	{ID: "events", Kind: calc.Rows, Label: calc.Text("The day in order"), Cols: []calc.Field{
		{ID: "event", Kind: calc.Choice, Label: calc.Text("Event"), Options: []calc.Option{
			{ID: "dawn", Label: labelDawn}, {ID: "sunrise", Label: labelSunrise}, {ID: "noon", Label: labelNoon},
			{ID: "sunset", Label: labelSunset}, {ID: "dusk", Label: labelDusk}}},
		{ID: "clock", Kind: calc.Clock, Label: calc.Text("Clock")},
		{ID: "since", Display: &displays.Minutes, Label: calc.Text("After midnight")},
	}},
}

var sources = []calc.Source{
	{ID: "meeus", Author: "J. Meeus", Title: "Astronomical Algorithms", Edition: "2nd ed.", Year: "1998",
		Where:  calc.Text("ch. 22, 25 and 28; examples 25.a and 28.b; the short series for the sun"),
		Status: calc.Secondary},
	{ID: "noaa", Author: "NOAA Global Monitoring Laboratory", Title: "General Solar Position Calculations",
		Where:  calc.Text("hour angle, sunrise and sunset; stated good to a minute between 72° south and north"),
		Status: calc.Confirmed},
	{ID: "usno", Author: "US Naval Observatory", Title: "Rise, set and twilight definitions",
		Where: calc.Text("sun's center at 90° 50' for rise and set, 96° for civil twilight"), Status: calc.Secondary},
	{
		ID:     "fao",
		Author: "R. G. Allen et al.",
		Title:  "Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
		Year:   "1998",
		Where:  calc.Text("eq. 34; examples 8 and 9, pp. 80 to 83"),
		Status: calc.Secondary,
	},
}

var tables = []calc.Table{{
	ID: "length", Title: calc.Text("Sunrise to sunset by date and latitude"),
	Note: calc.Text("For northern latitudes. For the south, read the date six months away."),
	Out:  "day-length", Set: []calc.Entry{{Path: "start", Text: ""}},
	Down: calc.Axis{
		Path: "date",
		US: []string{
			"2026-12-21",
			"2026-02-10",
			"2026-03-20",
			"2026-04-28",
			"2026-06-21",
			"2026-09-01",
			"2026-10-27",
		},
	},
	Across: calc.Axis{Path: "latitude", US: []string{"25", "35", "40", "45", "50", "60"}},
}}

var formulas = []*calc.Formula{
	daylight.CenturyFormula, daylight.MeanLongitudeFormula, daylight.AnomalyFormula, daylight.LongitudeFormula,
	daylight.TiltFormula, daylight.DeclinationFormula, daylight.EccentricityFormula, daylight.TiltSquareFormula,
	daylight.EquationOfTimeFormula, daylight.HourAngleFormula, daylight.NoonFormula, daylight.RisingFormula,
	daylight.SettingFormula, daylight.DayLengthFormula,
}
