// Package weather says what heat, cold, wind and time do to fresh concrete:
// how fast its top dries, how warm it leaves the mixer, what protection cold
// asks for, how long a load may wait and when it sets.
package weather

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// How the quantities of this package are written. A limit that is least is
// rounded up and one that is greatest is rounded down.
var (
	showRate    = quantity.Display{Dim: quantity.EvaporationRate, US: quantity.UnitDisplay{Unit: "lb/ft²/h", Step: 0.01}, Metric: quantity.UnitDisplay{Unit: "kg/m²/h", Step: 0.05}}
	showWind    = quantity.Display{Dim: quantity.Speed, US: quantity.UnitDisplay{Unit: "mph", Step: 1}, Metric: quantity.UnitDisplay{Unit: "km/h", Step: 1}}
	showHeight  = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1}, Metric: quantity.UnitDisplay{Unit: "m", Step: 0.1}}
	showDrop    = quantity.Display{Dim: quantity.TemperatureDifference, US: quantity.UnitDisplay{Unit: "F°", Step: 1, Rounding: quantity.Down}, Metric: quantity.UnitDisplay{Unit: "C°", Step: 1, Rounding: quantity.Down}}
	showHoursUp = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 1, Rounding: quantity.Up}}
	showLatest  = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.5, Rounding: quantity.Up}}
	showHours   = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.5}}
	showQuarter = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "min", Step: 15, Rounding: quantity.Down}}
)

// The reasons that several limits share.
const (
	whyThaw = calc.Text("Liquid water is not colder.")
	whyLand = calc.Text("No job site is outside this. Check the number and its unit.")
	whyGel  = calc.Text("Fresh concrete outside this is frozen or spoiled.")
)

// The symbols that several formulas share.
const (
	meansTc = calc.Text("temperature of the concrete")
	meansTa = calc.Text("temperature of the air")
)
