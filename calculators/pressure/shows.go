package pressure

import "coursebook/calculators/quantity"

// How quantities of this topic are written that no other topic has.
var (
	showCore   = &quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 1}}
	showFactor = &quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.001}}
	showTime   = &quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "min", Step: 5, Rounding: quantity.Up}}

	// Limits of the method fall on the strict side when they are converted.
	showWettest = &quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in", Form: quantity.Inches, Step: 0.25}, Metric: quantity.UnitDisplay{Unit: "mm", Step: 5, Rounding: quantity.Down}}
)
