// Package weather holds the equations of concreting in cold, hot and dry
// weather: mix temperature, setting, evaporation, discharge and cooling.
package weather

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// ShowDrop displays a difference of temperature, rounded down.
var ShowDrop = quantity.Display{
	Dim:    quantity.TemperatureDifference,
	US:     quantity.UnitDisplay{Unit: "F°", Step: 1, Rounding: quantity.Down},
	Metric: quantity.UnitDisplay{Unit: "C°", Step: 1, Rounding: quantity.Down},
}

// Reasons of limits that several calculators share.
const (
	WhyLand = calc.Text("No job site is outside this. Check the number and its unit.")
	WhyGel  = calc.Text("Fresh concrete outside this is frozen or spoiled.")
)

// CautionStiffened separates stiffened from initial set.
const CautionStiffened = calc.Text(
	"Stiffened is not initial set. A wall can stop answering its braces hours before its concrete reaches initial set.",
)

// Meanings of symbols that several formulas share.
const (
	meansTc = calc.Text("temperature of the concrete")
	meansTa = calc.Text("temperature of the air")
)

// pow2 returns 2 to the power x.
func pow2(x float64) float64 { return math.Pow(2, x) }

// Amount returns the field id of a case for display in a locale; "" if it is unset
// or there is no such field.
func Amount(v calc.Locale, c calc.Case, id string) string {
	for i, f := range c.Fields() {
		if f.ID == id {
			return v.Write(f, c.At(i))
		}
	}
	return ""
}

// HotLoad is the temperature over which specifications refuse a load, in K. Source: UFGS
// 03300A, for humid air.
var HotLoad = calc.SI(90, "°F")

// HotAir is the temperature of the air in K over which the hottest load depends on the
// humidity, MiddleLoad that of a load with 40 to 60 % and DryLoad with less. Source: UFGS
// 03300A.
var (
	HotAir     = calc.SI(85, "°F")
	MiddleLoad = calc.SI(85, "°F")
	DryLoad    = calc.SI(80, "°F")
)
