package weather

import "coursebook/calculators/calc"

// coldRow is one column of the cold-weather table, for one range of the least
// dimension: temperatures in °F, the drop in F°.
type coldRow struct {
	placed float64    // least as placed and kept
	mixed  [3]float64 // least as mixed: air above 30 °F, 0 to 30 °F, below 0 °F
	drop   float64    // greatest gradual fall in the first 24 h after protection
}

// The table of ACI 306R-88, by least dimension: below 12 in., 12 to 36 in.,
// above 36 to 72 in., above 72 in. The first two as repeated in Masonry and
// Concrete, Fig. 3-37; the last two from memory.
var coldRows = [...]coldRow{
	{55, [3]float64{60, 65, 70}, 50},
	{50, [3]float64{55, 60, 65}, 40},
	{45, [3]float64{50, 55, 60}, 30},
	{40, [3]float64{45, 50, 55}, 20},
}

// coldColumn is the row of the table for a least dimension in in. A limit
// itself belongs to the warmer, stricter row but for 12 in., as printed.
func coldColumn(inches float64) *coldRow {
	switch {
	case calc.Under(inches, 12):
		return &coldRows[0]
	case !calc.Over(inches, 36):
		return &coldRows[1]
	case !calc.Over(inches, 72):
		return &coldRows[2]
	}
	return &coldRows[3]
}

// airRange is the column of coldRow.mixed for an air temperature in °F.
func airRange(air float64) int {
	switch {
	case air > 30+calc.Slack:
		return 0
	case air >= -calc.Slack:
		return 1
	}
	return 2
}

// protection is days of protection, for usual cement and for early strength.
type protection struct{ frost, strength [2]float64 }

// The services, by what the wall bears and sees while young.
const (
	serviceSheltered = "sheltered"
	serviceExposed   = "exposed"
	servicePartly    = "partly"
	serviceLoaded    = "loaded"
)

// protectionDays is the days of ACI 306R, as repeated in Masonry and Concrete,
// Fig. 3-38. A fully loaded member has no days for strength: it must be proved
// in place. Source: ACI 306R.
func protectionDays(service string) protection {
	switch service {
	case serviceSheltered:
		return protection{[2]float64{2, 1}, [2]float64{2, 1}}
	case servicePartly:
		return protection{[2]float64{3, 2}, [2]float64{6, 4}}
	case serviceLoaded:
		return protection{frost: [2]float64{3, 2}}
	}
	return protection{[2]float64{3, 2}, [2]float64{3, 2}}
}

// CoolingTime is the least time in h for uncovering: 24·(T_c - T_a)/D, the
// fall from the concrete to the air at the greatest drop D for 24 h.
// Source: the limit of ACI 306R, spread evenly.
func CoolingTime(concrete, air, drop float64) float64 { return 24 * (concrete - air) / drop }
