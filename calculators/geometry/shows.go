package geometry

import "coursebook/calculators/quantity"

// Ways to write that only this package needs. An order is rounded up in both
// units, so that it is never short in the other one. A triple laid out in
// feet or in metres keeps its unit for every reader.
var (
	extraShow = quantity.Show{Dim: quantity.Ratio, US: quantity.Scale{Unit: "%", Step: 0.1}}
	wasteShow = quantity.Show{Dim: quantity.Ratio, US: quantity.Scale{Unit: "%", Step: 0.5}}
	fineAngle = quantity.Show{Dim: quantity.Angle, US: quantity.Scale{Unit: "°", Step: 0.01}}
	turnAngle = quantity.Show{Dim: quantity.Angle, US: quantity.Scale{Unit: "°", Step: 0.1}}
	tapeFine  = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16}, Metric: quantity.Scale{Unit: "m", Step: 0.001}}
	wholeFeet = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Step: 1}}
	inMetre   = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "m", Step: 0.1}}
	tenTo     = quantity.Show{Dim: quantity.Number, US: quantity.Scale{Step: 10, Way: quantity.Down}}
)
