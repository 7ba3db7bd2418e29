package weather

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// How the quantities of this package are written. A limit that is least is
// rounded up and one that is greatest is rounded down.
var ShowDrop = quantity.Display{
	Dim:    quantity.TemperatureDifference,
	US:     quantity.UnitDisplay{Unit: "F°", Step: 1, Rounding: quantity.Down},
	Metric: quantity.UnitDisplay{Unit: "C°", Step: 1, Rounding: quantity.Down},
}

// The reasons that several limits share.
const (
	WhyLand = calc.Text("No job site is outside this. Check the number and its unit.")
	WhyGel  = calc.Text("Fresh concrete outside this is frozen or spoiled.")
)

// The symbols that several formulas share.
const (
	meansTc = calc.Text("temperature of the concrete")
	meansTa = calc.Text("temperature of the air")
)

// pow2 is 2 to the power x.
func pow2(x float64) float64 { return math.Pow(2, x) }

// Amount is an output as the reader sees it.
func Amount(v calc.Locale, c calc.Case, id string) string {
	for i, f := range c.Fields() {
		if f.ID == id {
			return v.Write(f, c.At(i))
		}
	}
	return ""
}
