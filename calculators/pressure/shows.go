package pressure

import "coursebook/calculators/quantity"

// How each quantity is written. A load is rounded up and what a form or a
// pump is allowed is rounded down, so that rounding never makes a form hold.
var (
	showHeight   = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1}, Metric: quantity.Scale{Unit: "m", Step: 0.01}}
	showGuide    = &quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "ft/h", Step: 0.1}, Metric: quantity.Scale{Unit: "m/h", Step: 0.05}}
	showDepth    = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1}, Metric: quantity.Scale{Unit: "m", Step: 0.01}}
	showAllowed  = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "m", Step: 0.01, Way: quantity.Down}}
	showCore     = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.Scale{Unit: "mm", Step: 1}}
	showSlump    = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.Scale{Unit: "mm", Step: 5}}
	showFlow     = &quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "yd³/h", Step: 0.1}, Metric: quantity.Scale{Unit: "m³/h", Step: 0.1}}
	showMayFlow  = &quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "yd³/h", Step: 0.1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "m³/h", Step: 0.1, Way: quantity.Down}}
	showRise     = &quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "ft/h", Step: 0.1, Way: quantity.Up}, Metric: quantity.Scale{Unit: "m/h", Step: 0.05, Way: quantity.Up}}
	showMayRise  = &quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "ft/h", Step: 0.1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "m/h", Step: 0.05, Way: quantity.Down}}
	showWeight   = &quantity.Show{Dim: quantity.Density, US: quantity.Scale{Unit: "lb/ft³", Step: 1}, Metric: quantity.Scale{Unit: "kg/m³", Step: 10}}
	showTemp     = &quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 1}, Metric: quantity.Scale{Unit: "°C", Step: 1}}
	showPressure = &quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psf", Step: 10, Way: quantity.Up}, Metric: quantity.Scale{Unit: "kPa", Step: 0.5, Way: quantity.Up}}
	showRating   = &quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psf", Step: 5}, Metric: quantity.Scale{Unit: "kPa", Step: 0.1}}
	showFactor   = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 0.001}}
	showCount    = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 1}}
	showTime     = &quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 5, Way: quantity.Up}}

	// Limits of the method fall on the strict side when they are converted.
	showWettest = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.Scale{Unit: "mm", Step: 5, Way: quantity.Down}}
	showCoolest = &quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 1, Way: quantity.Up}, Metric: quantity.Scale{Unit: "°C", Step: 1, Way: quantity.Up}}
	showWarmest = &quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 1, Way: quantity.Down}, Metric: quantity.Scale{Unit: "°C", Step: 1, Way: quantity.Down}}
)
