// Package placing plans the pour itself: how fast the wall rises and when the
// hose comes round again, trucks, the clock, water at the truck and what the
// pump line holds.
package placing

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// How quantities are written here. Time that is needed is rounded up, time
// that is left down, and so are a rate or a length that must not be exceeded.
var (
	minutesUp  = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "min", Step: 1, Rounding: quantity.Up}}
	hoursUp    = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.25, Rounding: quantity.Up}}
	wholeHours = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 1}}
	clockHour  = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.05}}
	small      = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "yd³", Step: 0.05}, Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.05}}
	water      = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "US gal", Step: 0.5}, Metric: quantity.UnitDisplay{Unit: "L", Step: 1}}
	waterDown  = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "US gal", Step: 0.5, Rounding: quantity.Down}, Metric: quantity.UnitDisplay{Unit: "L", Step: 1, Rounding: quantity.Down}}
	gallons    = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "US gal", Step: 0.1}}
	litres     = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "L", Step: 0.5}}
	rough      = quantity.Display{Dim: quantity.Pressure, US: quantity.UnitDisplay{Unit: "psi", Step: 50}, Metric: quantity.UnitDisplay{Unit: "MPa", Step: 0.5}}
	cement     = quantity.Display{Dim: quantity.Density, US: quantity.UnitDisplay{Unit: "lb/yd³", Step: 1}, Metric: quantity.UnitDisplay{Unit: "kg/m³", Step: 1}}
	perLength  = quantity.Display{Dim: quantity.MassPerLength, US: quantity.UnitDisplay{Unit: "lb/ft", Step: 0.1}, Metric: quantity.UnitDisplay{Unit: "kg/m", Step: 0.1}}
	massDown   = quantity.Display{Dim: quantity.Mass, US: quantity.UnitDisplay{Unit: "lb", Step: 1, Rounding: quantity.Down}, Metric: quantity.UnitDisplay{Unit: "kg", Step: 1, Rounding: quantity.Down}}
	partDown   = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1.0 / 8, Rounding: quantity.Down}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 1, Rounding: quantity.Down}}
)

// Reasons of limits that several calculators here share.
const (
	whyPump  = calc.Text("No pump fills a wall at this rate. Check the unit.")
	whyStill = calc.Text("A pump that never runs places nothing.")
	whyAll   = calc.Text("There is no more than all of the time.")
	whyClock = calc.Text("The clock runs from 0 to 24 h.")
	whyTruck = calc.Text("No truck mixer is this small or this big. Check the unit.")
	whyDay   = calc.Text("This is longer than a working day.")
)

// write is a quantity in the reader's own words, for a drawing.
func write(v calc.Locale, si float64, show *quantity.Display) string {
	return quantity.Format(si, *show, v.Style)
}

// putBoth fills a volume in cubic yards and the same in cubic metres.
func putBoth(r *calc.Recorder, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
