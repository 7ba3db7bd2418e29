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
	minutesUp  = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 1, Way: quantity.Up}}
	hoursUp    = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h", Step: 0.25, Way: quantity.Up}}
	wholeHours = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h", Step: 1}}
	clockHour  = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h", Step: 0.05}}
	small      = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "yd³", Step: 0.05}, Metric: quantity.Scale{Unit: "m³", Step: 0.05}}
	water      = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "US gal", Step: 0.5}, Metric: quantity.Scale{Unit: "L", Step: 1}}
	waterDown  = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "US gal", Step: 0.5, Way: quantity.Down}, Metric: quantity.Scale{Unit: "L", Step: 1, Way: quantity.Down}}
	gallons    = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "US gal", Step: 0.1}}
	litres     = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "L", Step: 0.5}}
	rough      = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psi", Step: 50}, Metric: quantity.Scale{Unit: "MPa", Step: 0.5}}
	cement     = quantity.Show{Dim: quantity.Density, US: quantity.Scale{Unit: "lb/yd³", Step: 1}, Metric: quantity.Scale{Unit: "kg/m³", Step: 1}}
	perLength  = quantity.Show{Dim: quantity.MassPerLength, US: quantity.Scale{Unit: "lb/ft", Step: 0.1}, Metric: quantity.Scale{Unit: "kg/m", Step: 0.1}}
	massDown   = quantity.Show{Dim: quantity.Mass, US: quantity.Scale{Unit: "lb", Step: 1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "kg", Step: 1, Way: quantity.Down}}
	partDown   = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1.0 / 8, Way: quantity.Down}, Metric: quantity.Scale{Unit: "mm", Step: 1, Way: quantity.Down}}
)

// Reasons of limits that several calculators here share.
const (
	whyPump  = calc.Text("placing.why.pump: No pump fills a wall at this rate. Check the unit.")
	whyStill = calc.Text("placing.why.still: A pump that never runs places nothing.")
	whyAll   = calc.Text("placing.why.all: There is no more than all of the time.")
	whyClock = calc.Text("placing.why.clock: The clock runs from 0 to 24 h.")
	whyTruck = calc.Text("placing.why.truck: No truck mixer is this small or this big. Check the unit.")
	whyDay   = calc.Text("placing.why.day: This is longer than a working day.")
)

// write is a quantity in the reader's own words, for a drawing.
func write(v calc.Voice, si float64, show *quantity.Show) string {
	return quantity.Format(si, *show, v.Style)
}

// putBoth fills a volume in cubic yards and the same in cubic metres.
func putBoth(r *calc.Run, id string, si float64) {
	r.Put(id+"-yd", si)
	r.Put(id+"-m", si)
}
