// Package displays holds the formats of quantities and the reasons of limits
// that several calculators share.
//
// The formats are variables, so that a declaration that takes the address of
// one (Display: &displays.Height) is data, not code.
package displays

import "coursebook/calculators/quantity"

// Lengths. A wall is measured to a quarter of an inch, a part to a sixteenth.
var (
	Wall = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001},
	}
	Height = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.01},
	}
	Part = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1},
	}
	Inches = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5},
	}

	// A greatest spacing or height is rounded down, a least one up.
	PartAtMost = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1.0 / 16, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 1, Rounding: quantity.Down},
	}
	InchesAtMost = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down},
	}
	InchesAtLeast = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Up},
	}
	HeightAtMost = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.01, Rounding: quantity.Down},
	}
)

// Numbers without a unit.
var (
	Count        = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1}}
	CountUp      = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 1, Rounding: quantity.Up}}
	Factor       = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.01}}
	Tenths       = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.1}}
	Percent      = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 1}}
	Degrees      = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.5}}
	WholeDegrees = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 1}}
)

// Areas and volumes. CubicYards and CubicMetres have the same unit for
// every reader; Volume is in the reader's unit.
var (
	Area = quantity.Display{
		Dim:    quantity.Area,
		US:     quantity.UnitDisplay{Unit: "ft²", Step: 0.5},
		Metric: quantity.UnitDisplay{Unit: "m²", Step: 0.05},
	}
	Volume = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "yd³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.1},
	}
	CubicYards  = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "yd³", Step: 0.01}}
	CubicMetres = quantity.Display{Dim: quantity.Volume, US: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}

	// An order is rounded up, so that it is not short in the other unit.
	CubicYardsUp = quantity.Display{
		Dim: quantity.Volume,
		US:  quantity.UnitDisplay{Unit: "yd³", Step: 0.01, Rounding: quantity.Up},
	}
	CubicMetresUp = quantity.Display{
		Dim: quantity.Volume,
		US:  quantity.UnitDisplay{Unit: "m³", Step: 0.01, Rounding: quantity.Up},
	}
)

// Loads. An acting load is rounded up, an allowed one down.
var (
	Pressure = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psf", Step: 10, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kPa", Step: 0.5, Rounding: quantity.Up},
	}
	Rating = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psf", Step: 5},
		Metric: quantity.UnitDisplay{Unit: "kPa", Step: 0.1},
	}
	Strength = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psi", Step: 10},
		Metric: quantity.UnitDisplay{Unit: "MPa", Step: 0.1},
	}
	Force = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "lbf", Step: 10, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.05, Rounding: quantity.Up},
	}
	ForceAtMost = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "lbf", Step: 10, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.05, Rounding: quantity.Down},
	}
	Mass = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "lb", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kg", Step: 1},
	}
	MassUp = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "lb", Step: 1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "kg", Step: 1, Rounding: quantity.Up},
	}
	UnitWeight = quantity.Display{
		Dim:    quantity.Density,
		US:     quantity.UnitDisplay{Unit: "lb/ft³", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kg/m³", Step: 10},
	}
)

// Rates and times.
var (
	PumpRate = quantity.Display{
		Dim:    quantity.FlowRate,
		US:     quantity.UnitDisplay{Unit: "yd³/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³/h", Step: 0.1},
	}
	PumpRateAtMost = quantity.Display{
		Dim:    quantity.FlowRate,
		US:     quantity.UnitDisplay{Unit: "yd³/h", Step: 0.1, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "m³/h", Step: 0.1, Rounding: quantity.Down},
	}
	Rise = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "ft/h", Step: 0.1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "m/h", Step: 0.05, Rounding: quantity.Up},
	}
	RiseAtMost = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "ft/h", Step: 0.1, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "m/h", Step: 0.05, Rounding: quantity.Down},
	}
	RiseTyped = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "ft/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m/h", Step: 0.05},
	}
	Wind = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "mph", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "m/s", Step: 0.5},
	}
	Minutes       = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "min", Step: 1}}
	MinutesAtMost = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "min", Step: 1, Rounding: quantity.Down},
	}
	FiveMinutes     = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "min", Step: 5}}
	Hours           = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.25}}
	HalfHoursAtMost = quantity.Display{
		Dim: quantity.Duration,
		US:  quantity.UnitDisplay{Unit: "h", Step: 0.5, Rounding: quantity.Down},
	}
	Days        = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "d", Step: 1}}
	Temperature = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "°C", Step: 1},
	}
	// A converted limit is rounded to the strict side.
	TemperatureAtMost = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F", Step: 1, Rounding: quantity.Down},
		Metric: quantity.UnitDisplay{Unit: "°C", Step: 1, Rounding: quantity.Down},
	}
	TemperatureAtLeast = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F", Step: 1, Rounding: quantity.Up},
		Metric: quantity.UnitDisplay{Unit: "°C", Step: 1, Rounding: quantity.Up},
	}
)

// OneLift is the most that one person lifts, in lb: the load constant of the NIOSH lifting
// equation.
const OneLift = 51
