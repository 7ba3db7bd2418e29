// Package strength holds the equations of strength gain: published curves of
// strength with age, and maturity.
package strength

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// StrengthAtLeast displays an estimated strength, rounded down.
var StrengthAtLeast = quantity.Display{
	Dim:    quantity.Pressure,
	US:     quantity.UnitDisplay{Unit: "psi", Step: 50, Rounding: quantity.Down},
	Metric: quantity.UnitDisplay{Unit: "MPa", Step: 0.5, Rounding: quantity.Down},
}

// InKilograms displays an estimated strength in kg/cm², rounded down: the unit in which
// Mexican plants sell concrete.
var InKilograms = quantity.Display{
	Dim: quantity.Pressure,
	US:  quantity.UnitDisplay{Unit: "kg/cm²", Step: 5, Rounding: quantity.Down},
}

// Reasons of limits and a caution that several calculators share.
const (
	WhyBoiling   = calc.Text("No wall gets this hot. Check the reading.")
	EstimateOnly = calc.Text(
		"Estimate only. It does not let you strip, load or backfill. Those wait for the engineer's word.",
	)
)

// Axis returns an axis with about five marks at round values, whose ends are the
// marks at or beyond low and high. low must be below high.
func Axis(low, high float64) figure.Axis {
	step := math.Pow(10, math.Floor(math.Log10((high-low)/5)))
	for _, times := range []float64{1, 2, 5, 10} {
		if (high-low)/(step*times) <= 6 {
			step *= times
			break
		}
	}
	a := figure.Axis{From: float64(math.Floor(low/step) * step), To: float64(math.Ceil(high/step) * step)}
	for k := math.Round(a.From / step); float64(k*step) <= a.To+step/2; k++ {
		a.Marks = append(a.Marks, figure.Mark{At: k * step, Text: strconv.FormatFloat(k*step, 'g', 4, 64)})
	}
	return a
}
