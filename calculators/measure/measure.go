// Package measure holds how the calculators write their quantities and the
// reasons they give for a limit, wherever several of them share one.
//
// The ways are variables and the reasons constants, so that a declaration
// that takes the address of one (Show: &measure.Height) is data, not code.
package measure

import "coursebook/calculators/quantity"

// Lengths. A tape shows a wall to the quarter inch and a part to a sixteenth.
var (
	Wall   = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 0.25}, Metric: quantity.Scale{Unit: "m", Step: 0.001}}
	Height = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1}, Metric: quantity.Scale{Unit: "m", Step: 0.01}}
	Part   = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16}, Metric: quantity.Scale{Unit: "mm", Step: 1}}
	Inches = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.Scale{Unit: "mm", Step: 5}}

	// A greatest spacing or height is rounded down, what is needed up.
	PartAtMost    = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16, Way: quantity.Down}, Metric: quantity.Scale{Unit: "mm", Step: 1, Way: quantity.Down}}
	InchesAtMost  = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "mm", Step: 5, Way: quantity.Down}}
	InchesAtLeast = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 1, Way: quantity.Up}, Metric: quantity.Scale{Unit: "mm", Step: 5, Way: quantity.Up}}
	HeightAtMost  = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "m", Step: 0.01, Way: quantity.Down}}
)

// Numbers without a unit.
var (
	Count        = quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 1}}
	CountUp      = quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 1, Way: quantity.Up}}
	Factor       = quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 0.01}}
	Tenths       = quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 0.1}}
	Percent      = quantity.Show{Dim: quantity.Ratio, US: quantity.Scale{Unit: "%", Step: 1}}
	Degrees      = quantity.Show{Dim: quantity.Angle, US: quantity.Scale{Unit: "°", Step: 0.5}}
	WholeDegrees = quantity.Show{Dim: quantity.Angle, US: quantity.Scale{Unit: "°", Step: 1}}
)

// Areas and volumes. CubicYards and CubicMetres keep their unit for every
// reader; Volume is told in the reader's.
var (
	Area        = quantity.Show{Dim: quantity.Area, US: quantity.Scale{Unit: "ft²", Step: 0.5}, Metric: quantity.Scale{Unit: "m²", Step: 0.05}}
	Volume      = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "yd³", Step: 0.1}, Metric: quantity.Scale{Unit: "m³", Step: 0.1}}
	CubicYards  = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "yd³", Step: 0.01}}
	CubicMetres = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "m³", Step: 0.01}}

	// An order is written so that it is never short in the other unit.
	CubicYardsUp  = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "yd³", Step: 0.01, Way: quantity.Up}}
	CubicMetresUp = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "m³", Step: 0.01, Way: quantity.Up}}
)

// Loads. What acts is rounded up, what a part may carry down.
var (
	Pressure    = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psf", Step: 10, Way: quantity.Up}, Metric: quantity.Scale{Unit: "kPa", Step: 0.5, Way: quantity.Up}}
	Rating      = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psf", Step: 5}, Metric: quantity.Scale{Unit: "kPa", Step: 0.1}}
	Strength    = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psi", Step: 10}, Metric: quantity.Scale{Unit: "MPa", Step: 0.1}}
	Force       = quantity.Show{Dim: quantity.Force, US: quantity.Scale{Unit: "lbf", Step: 10, Way: quantity.Up}, Metric: quantity.Scale{Unit: "kN", Step: 0.05, Way: quantity.Up}}
	ForceAtMost = quantity.Show{Dim: quantity.Force, US: quantity.Scale{Unit: "lbf", Step: 10, Way: quantity.Down}, Metric: quantity.Scale{Unit: "kN", Step: 0.05, Way: quantity.Down}}
	Mass        = quantity.Show{Dim: quantity.Mass, US: quantity.Scale{Unit: "lb", Step: 1}, Metric: quantity.Scale{Unit: "kg", Step: 1}}
	MassUp      = quantity.Show{Dim: quantity.Mass, US: quantity.Scale{Unit: "lb", Step: 1, Way: quantity.Up}, Metric: quantity.Scale{Unit: "kg", Step: 1, Way: quantity.Up}}
	UnitWeight  = quantity.Show{Dim: quantity.Density, US: quantity.Scale{Unit: "lb/ft³", Step: 1}, Metric: quantity.Scale{Unit: "kg/m³", Step: 10}}
)

// Rates and times.
var (
	PumpRate        = quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "yd³/h", Step: 0.1}, Metric: quantity.Scale{Unit: "m³/h", Step: 0.1}}
	PumpRateAtMost  = quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "yd³/h", Step: 0.1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "m³/h", Step: 0.1, Way: quantity.Down}}
	Rise            = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "ft/h", Step: 0.1, Way: quantity.Up}, Metric: quantity.Scale{Unit: "m/h", Step: 0.05, Way: quantity.Up}}
	RiseAtMost      = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "ft/h", Step: 0.1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "m/h", Step: 0.05, Way: quantity.Down}}
	RiseTyped       = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "ft/h", Step: 0.1}, Metric: quantity.Scale{Unit: "m/h", Step: 0.05}}
	Wind            = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "mph", Step: 1}, Metric: quantity.Scale{Unit: "m/s", Step: 0.5}}
	Minutes         = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 1}}
	MinutesAtMost   = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 1, Way: quantity.Down}}
	FiveMinutes     = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 5}}
	Hours           = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h", Step: 0.25}}
	HalfHoursAtMost = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h", Step: 0.5, Way: quantity.Down}}
	Days            = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "d", Step: 1}}
	Temperature     = quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 1}, Metric: quantity.Scale{Unit: "°C", Step: 1}}
	// A limit falls on the strict side when it is converted.
	TemperatureAtMost  = quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "°C", Step: 1, Way: quantity.Down}}
	TemperatureAtLeast = quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 1, Way: quantity.Up}, Metric: quantity.Scale{Unit: "°C", Step: 1, Way: quantity.Up}}
)
