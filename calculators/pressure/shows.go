package pressure

import "coursebook/calculators/quantity"

// How quantities of this topic are written that no other topic has.
var (
	showCore   = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.Scale{Unit: "mm", Step: 1}}
	showFactor = &quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 0.001}}
	showTime   = &quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 5, Way: quantity.Up}}

	// Limits of the method fall on the strict side when they are converted.
	showWettest = &quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.Scale{Unit: "mm", Step: 5, Way: quantity.Down}}
)
