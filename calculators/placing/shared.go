// Package placing holds the equations of placing concrete: rise and lifts,
// trucks, pump lines, shifts and added water.
package placing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Displays that several calculators share. A time that is needed is rounded up.
var (
	MinutesUp = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "min", Step: 1, Rounding: quantity.Up},
	}
	HoursUp = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 0.25, Rounding: quantity.Up},
	}
)

// Reasons of limits that several calculators share.
const (
	WhyPump  = calc.Text("No pump fills a wall at this rate. Check the unit.")
	WhyStill = calc.Text("A pump that never runs places nothing.")
	WhyAll   = calc.Text("There is no more than all of the time.")
	WhyTruck = calc.Text("No truck mixer is this small or this big. Check the unit.")
)

// UsualShare is the share of the time that a pump runs where none is typed. It is the usual
// value of rate of rise.
const UsualShare = 0.75

// LeastPump is the slowest rate in yd³/h at which a line pump keeps its line moving. It is
// our own limit.
const LeastPump = 5

// Write returns an SI value as text by a display, in the style of a locale.
func Write(v calc.Locale, si float64, show *quantity.Display) string {
	return quantity.Format(si, *show, v.Style)
}

// WholeMinute returns a latest time, in s, rounded down to the minute. A time that
// is short of a minute by rounding alone counts as that minute.
func WholeMinute(s float64) float64 { return math.Floor(s/60+1e-6) * 60 }
