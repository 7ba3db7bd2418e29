package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/weather"
)

// SetAt is the temperature of a setting time from the plant.
const SetAt Fahrenheit = 70

// Heat is the activation energy over the gas constant, in K; leastHeat and mostHeat
// bound it. Source: ASTM C1074, EN 1992-1-1.
const (
	Heat      = 5000
	leastHeat = 4000
	mostHeat  = 6000
)

// initialShare is initial set over final set: our own estimate, 5 h of 7 h.
const initialShare = 5.0 / 7

// EstimatedSet is our own estimate in hours of the final set at SetAt. An unknown
// group has the latest set.
func EstimatedSet(c Cement, retarded bool) float64 {
	switch c {
	case Plain:
		return pick(retarded, 6.5, 5)
	case Blend:
		return pick(retarded, 8, 6.5)
	}
	return pick(retarded, 10, 8)
}

func setTo(hours, q float64, t Fahrenheit) float64 {
	return weather.SetArrhenius(hours, q, calc.SI(float64(t), "°F"), calc.SI(float64(SetAt), "°F"))
}

// FinalSet is the final set in hours at a temperature, from that at SetAt.
func FinalSet(hours float64, t Fahrenheit) float64 { return setTo(hours, Heat, t) }

// EarliestSet is the earliest initial set in hours at a temperature, from the
// final set at SetAt. It is the least of the estimates of package weather.
func EarliestSet(hours float64, t Fahrenheit) float64 {
	initial := initialShare * hours
	return min(setTo(initial, leastHeat, t), setTo(initial, mostHeat, t),
		weather.SetDoubling(initial, float64(t), float64(SetAt)))
}
