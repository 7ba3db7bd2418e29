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
	Heat      = weather.UsualQ
	leastHeat = 4000
	mostHeat  = 6000
)

// initialShare is initial set over final set: our own estimate.
const initialShare = weather.UsualInitial / weather.UsualFinal

// EarliestFinal is the earliest of our estimates of the final set, in hours at SetAt.
const EarliestFinal = 5.0

// MostRetarded is how much later, in hours, a retarding admixture may make the final set:
// the most that ASTM C494/C494M allows types B and D, from memory.
const MostRetarded = 3.5

// EstimatedSet is the final set in hours at SetAt that the pressure counts where the plant
// gives none: the later of our estimate for the mix and of the usual final set that
// setting-time opens on, and MostRetarded more with a retarder. usual reports that it is the
// usual one.
func EstimatedSet(c Cement, retarded bool) (hours float64, usual bool) {
	hours, usual = weather.LatestFinal(mixSet(c), float64(SetAt))
	if retarded {
		return hours + MostRetarded, false
	}
	return hours, usual
}

// mixSet is our own estimate in hours of the final set at SetAt by the cement alone. An
// unknown group has the latest set.
func mixSet(c Cement) float64 {
	switch c {
	case Plain:
		return EarliestFinal
	case Blend:
		return 6.5
	}
	return 8
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
