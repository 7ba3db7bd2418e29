package geometry

import "coursebook/calculators/quantity"

// Ways to write that only this package needs. An order is rounded up in both
// units, so that it is never short in the other one. A triple laid out in
// feet or in metres keeps its unit for every reader.
var (
	extraShow = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 0.1}}
	wasteShow = quantity.Display{Dim: quantity.Ratio, US: quantity.UnitDisplay{Unit: "%", Step: 0.5}}
	fineAngle = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.01}}
	turnAngle = quantity.Display{Dim: quantity.Angle, US: quantity.UnitDisplay{Unit: "°", Step: 0.1}}
	tapeFine  = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16}, Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001}}
	wholeFeet = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "ft", Step: 1}}
	inMetre   = quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "m", Step: 0.1}}
	tenTo     = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Step: 10, Rounding: quantity.Down}}
)
