package pressure

import "coursebook/calculators/quantity"

func decimal(unit string, step float64, way quantity.Way) quantity.Scale {
	return quantity.Scale{Unit: unit, Step: step, Way: way}
}

func feet(way quantity.Way) quantity.Scale {
	return quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1, Way: way}
}

func inches(step float64) quantity.Scale {
	return quantity.Scale{Unit: "in", Form: quantity.Inches, Step: step}
}

// How each quantity is written. A load is rounded up and what a form or a
// pump is allowed is rounded down, so that rounding never makes a form hold.
var (
	showHeight   = &quantity.Show{Dim: quantity.Length, US: feet(quantity.Nearest), Metric: decimal("m", 0.01, quantity.Nearest)}
	showGuide    = &quantity.Show{Dim: quantity.Speed, US: decimal("ft/h", 0.1, quantity.Nearest), Metric: decimal("m/h", 0.05, quantity.Nearest)}
	showDepth    = &quantity.Show{Dim: quantity.Length, US: feet(quantity.Nearest), Metric: decimal("m", 0.01, quantity.Nearest)}
	showAllowed  = &quantity.Show{Dim: quantity.Length, US: feet(quantity.Down), Metric: decimal("m", 0.01, quantity.Down)}
	showCore     = &quantity.Show{Dim: quantity.Length, US: inches(0.25), Metric: decimal("mm", 1, quantity.Nearest)}
	showSlump    = &quantity.Show{Dim: quantity.Length, US: inches(0.25), Metric: decimal("mm", 5, quantity.Nearest)}
	showFlow     = &quantity.Show{Dim: quantity.FlowRate, US: decimal("yd³/h", 0.1, quantity.Nearest), Metric: decimal("m³/h", 0.1, quantity.Nearest)}
	showMayFlow  = &quantity.Show{Dim: quantity.FlowRate, US: decimal("yd³/h", 0.1, quantity.Down), Metric: decimal("m³/h", 0.1, quantity.Down)}
	showRise     = &quantity.Show{Dim: quantity.Speed, US: decimal("ft/h", 0.1, quantity.Up), Metric: decimal("m/h", 0.05, quantity.Up)}
	showMayRise  = &quantity.Show{Dim: quantity.Speed, US: decimal("ft/h", 0.1, quantity.Down), Metric: decimal("m/h", 0.05, quantity.Down)}
	showWeight   = &quantity.Show{Dim: quantity.Density, US: decimal("lb/ft³", 1, quantity.Nearest), Metric: decimal("kg/m³", 10, quantity.Nearest)}
	showTemp     = &quantity.Show{Dim: quantity.Temperature, US: decimal("°F", 1, quantity.Nearest), Metric: decimal("°C", 1, quantity.Nearest)}
	showPressure = &quantity.Show{Dim: quantity.Pressure, US: decimal("psf", 10, quantity.Up), Metric: decimal("kPa", 0.5, quantity.Up)}
	showRating   = &quantity.Show{Dim: quantity.Pressure, US: decimal("psf", 5, quantity.Nearest), Metric: decimal("kPa", 0.1, quantity.Nearest)}
	showFactor   = &quantity.Show{Dim: quantity.Number, US: decimal("", 0.001, quantity.Nearest)}
	showCount    = &quantity.Show{Dim: quantity.Number, US: decimal("", 1, quantity.Nearest)}
	showTime     = &quantity.Show{Dim: quantity.Duration, US: decimal("min", 5, quantity.Up)}

	// Limits of the method fall on the strict side when they are converted.
	showWettest = &quantity.Show{Dim: quantity.Length, US: inches(0.25), Metric: decimal("mm", 5, quantity.Down)}
	showCoolest = &quantity.Show{Dim: quantity.Temperature, US: decimal("°F", 1, quantity.Up), Metric: decimal("°C", 1, quantity.Up)}
	showWarmest = &quantity.Show{Dim: quantity.Temperature, US: decimal("°F", 1, quantity.Down), Metric: decimal("°C", 1, quantity.Down)}
)
