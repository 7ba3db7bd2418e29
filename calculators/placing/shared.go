package placing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// How quantities are written here. Time that is needed is rounded up, time
// that is left down, and so are a rate or a length that must not be exceeded.
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

// Reasons of limits that several calculators here share.
const (
	WhyPump  = calc.Text("No pump fills a wall at this rate. Check the unit.")
	WhyStill = calc.Text("A pump that never runs places nothing.")
	WhyAll   = calc.Text("There is no more than all of the time.")
	WhyTruck = calc.Text("No truck mixer is this small or this big. Check the unit.")
)

// Write is a quantity in the reader's own words, for a drawing.
func Write(v calc.Locale, si float64, show *quantity.Display) string {
	return quantity.Format(si, *show, v.Style)
}
