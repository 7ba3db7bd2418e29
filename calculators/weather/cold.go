package weather

import "coursebook/calculators/calc"

// ColdLimits holds the limits for one range of the least dimension: temperatures in °F,
// the drop in F°.
type ColdLimits struct {
	Placed float64    // least as placed and during protection
	Mixed  [3]float64 // least as mixed: air above 30 °F, 0 to 30 °F, below 0 °F
	Drop   float64    // greatest gradual fall in the first 24 h after protection
}

// ColdRows are the table of ACI 306R-88, by least dimension: below 12 in., 12 to 36
// in., above 36 to 72 in., above 72 in. The first two as quoted in Masonry and
// Concrete, Fig. 3-37; the last two from memory.
var ColdRows = [...]ColdLimits{
	{55, [3]float64{60, 65, 70}, 50},
	{50, [3]float64{55, 60, 65}, 40},
	{45, [3]float64{50, 55, 60}, 30},
	{40, [3]float64{45, 50, 55}, 20},
}

// ColdLimitsFor returns the row for a least dimension in inches. A dimension
// between two rows belongs to the warmer one, except 12 in., as printed.
func ColdLimitsFor(inches float64) *ColdLimits {
	switch {
	case calc.Under(inches, 12):
		return &ColdRows[0]
	case !calc.Over(inches, 36):
		return &ColdRows[1]
	case !calc.Over(inches, 72):
		return &ColdRows[2]
	}
	return &ColdRows[3]
}
