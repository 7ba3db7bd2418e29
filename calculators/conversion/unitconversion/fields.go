package unitconversion

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	coldest = calc.Text("Nothing is colder than absolute zero.")
	tooMuch = calc.Text("No job has so much. Check the number and its unit.")
	value   = calc.Text("Value with its unit")
	anyUnit = calc.Text("Type any unit of this kind. A bare number takes your usual unit.")
)

func isLength(c calc.Case) bool { return c.Choice("kind") == "length" }

func isArea(c calc.Case) bool { return c.Choice("kind") == "area" }

func isVolume(c calc.Case) bool { return c.Choice("kind") == "volume" }

func isMass(c calc.Case) bool { return c.Choice("kind") == "mass" }

func isForce(c calc.Case) bool { return c.Choice("kind") == "force" }

func isPressure(c calc.Case) bool { return c.Choice("kind") == "pressure" }

func isDensity(c calc.Case) bool { return c.Choice("kind") == "density" }

func isSpeed(c calc.Case) bool { return c.Choice("kind") == "speed" }

func isFlow(c calc.Case) bool { return c.Choice("kind") == "flow" }

func isTemperature(c calc.Case) bool { return c.Choice("kind") == "temperature" }

func isDifference(c calc.Case) bool { return c.Choice("kind") == "temperature-difference" }

func isDuration(c calc.Case) bool { return c.Choice("kind") == "duration" }

func isEvaporation(c calc.Case) bool { return c.Choice("kind") == "evaporation" }

func isLineLoad(c calc.Case) bool { return c.Choice("kind") == "line-load" }

func isMassPerLength(c calc.Case) bool { return c.Choice("kind") == "mass-per-length" }

func isMassPerArea(c calc.Case) bool { return c.Choice("kind") == "mass-per-area" }

func isSteel(c calc.Case) bool { return c.Choice("kind") == "steel" }

func isMoment(c calc.Case) bool { return c.Choice("kind") == "moment" }

func isEnergy(c calc.Case) bool { return c.Choice("kind") == "energy" }

func isPower(c calc.Case) bool { return c.Choice("kind") == "power" }

func isFrequency(c calc.Case) bool { return c.Choice("kind") == "frequency" }

func isTemperatureRate(c calc.Case) bool { return c.Choice("kind") == "temperature-rate" }

func isMaturity(c calc.Case) bool { return c.Choice("kind") == "maturity" }

var kinds = []calc.Option{
	{ID: "length", Label: calc.Text("Length|dimension")},
	{ID: "area", Label: calc.Text("Area")},
	{ID: "volume", Label: calc.Text("Volume")},
	{ID: "mass", Label: calc.Text("Mass, weight on a scale")},
	{ID: "force", Label: calc.Text("Force")},
	{ID: "pressure", Label: calc.Text("Pressure, strength")},
	{ID: "density", Label: calc.Text("Unit weight")},
	{ID: "speed", Label: calc.Text("Speed")},
	{ID: "flow", Label: calc.Text("Flow, pump rate")},
	{ID: "temperature", Label: calc.Text("Temperature")},
	{ID: "temperature-difference", Label: calc.Text("Temperature difference")},
	{ID: "duration", Label: calc.Text("Time")},
	{ID: "evaporation", Label: calc.Text("Evaporation rate")},
	{ID: "line-load", Label: calc.Text("Load on a length")},
	{ID: "mass-per-length", Label: calc.Text("Mass of a length")},
	{ID: "mass-per-area", Label: calc.Text("Mass on an area")},
	{ID: "steel", Label: calc.Text("Steel area on a length")},
	{ID: "moment", Label: calc.Text("Moment, torque")},
	{ID: "energy", Label: calc.Text("Energy, heat")},
	{ID: "power", Label: calc.Text("Power")},
	{ID: "frequency", Label: calc.Text("Vibrations")},
	{ID: "temperature-rate", Label: calc.Text("Rate of cooling or warming")},
	{ID: "maturity", Label: calc.Text("Maturity")},
}

// inputs are the kind, and one value for each kind, shown for the kind chosen.
var inputs = []calc.Field{
	{ID: "kind", Decides: 1, Label: calc.Text("What to convert"), Kind: calc.Choice, Usual: "length", Options: kinds},
	{ID: "length", Decides: 2, Label: value, Help: anyUnit, Display: &lengthTyped, When: isLength, Usual: "9 ft 6 in",
		Range: "0 to 1000000 ft", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "area", Decides: 2, Label: value, Help: anyUnit, Display: &areaTyped, When: isArea, Usual: "320 ft²",
		Range: "0 to 1000000 ft²", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "volume", Decides: 2, Label: value, Help: anyUnit, Display: &volumeTyped, When: isVolume, Usual: "9.5 yd³",
		Range: "0 to 1000000 yd³", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "mass", Decides: 2, Label: value, Help: anyUnit, Display: &massTyped, When: isMass, Usual: "94 lb",
		Range: "0 to 1000000 lb", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "force", Decides: 2, Label: value, Help: anyUnit, Display: &forceTyped, When: isForce, Usual: "3000 lbf",
		Range: "0 to 1000000 lbf", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "pressure", Decides: 2, Label: value, Help: anyUnit, Display: &pressureTyped, When: isPressure,
		Usual: "600 psf",
		Range: "0 to 1000000 psf", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "density", Decides: 2, Label: value, Help: anyUnit, Display: &densityTyped, When: isDensity,
		Usual: "150 lb/ft³",
		Range: "0 to 1000000 lb/ft³", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "speed", Decides: 2, Label: value, Help: anyUnit, Display: &speedTyped, When: isSpeed, Usual: "15 mph",
		Range: "0 to 1000000 mph", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "flow", Decides: 2, Label: value, Help: anyUnit, Display: &flowTyped, When: isFlow, Usual: "30 yd³/h",
		Range: "0 to 1000000 yd³/h", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "temperature", Decides: 2, Label: value, Help: anyUnit, Display: &temperatureTyped, When: isTemperature,
		Usual: "70 °F",
		Range: "0 K to 5000 °F", Why: coldest, WhyMost: tooMuch},
	{
		ID:      "temperature-difference",
		Decides: 2,
		Label:   value,
		Help:    anyUnit,
		Display: &differenceTyped,
		When:    isDifference,
		Usual:   "35 F°",
		Range:   "-5000 to 5000 F°",
		Why:     tooMuch,
	},
	{ID: "duration", Decides: 2, Label: value, Help: anyUnit, Display: &durationTyped, When: isDuration,
		Usual: "90 min",
		Range: "0 to 1000000 h", Why: displays.NotMinus, WhyMost: tooMuch},
	{
		ID:      "evaporation",
		Decides: 2,
		Label:   value,
		Help:    anyUnit,
		Display: &evaporationTyped,
		When:    isEvaporation,
		Usual:   "0.2 lb/ft²/h",
		Range:   "0 to 1000000 lb/ft²/h",
		Why:     displays.NotMinus,
		WhyMost: tooMuch,
	},
	{ID: "line-load", Decides: 2, Label: value, Help: anyUnit, Display: &lineLoadTyped, When: isLineLoad,
		Usual: "400 lbf/ft",
		Range: "0 to 1000000 lbf/ft", Why: displays.NotMinus, WhyMost: tooMuch},
	{
		ID:      "mass-per-length",
		Decides: 2,
		Label:   value,
		Help:    anyUnit,
		Display: &massPerLengthTyped,
		When:    isMassPerLength,
		Usual:   "0.668 lb/ft",
		Range:   "0 to 1000000 lb/ft",
		Why:     displays.NotMinus,
		WhyMost: tooMuch,
	},
	{
		ID:      "mass-per-area",
		Decides: 2,
		Label:   value,
		Help:    anyUnit,
		Display: &massPerAreaTyped,
		When:    isMassPerArea,
		Usual:   "75 lb/ft²",
		Range:   "0 to 1000000 lb/ft²",
		Why:     displays.NotMinus,
		WhyMost: tooMuch,
	},
	{ID: "steel", Decides: 2, Label: value, Help: anyUnit, Display: &steelTyped, When: isSteel, Usual: "0.31 in²/ft",
		Range: "0 to 1000000 in²/ft", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "moment", Decides: 2, Label: value, Help: anyUnit, Display: &momentTyped, When: isMoment, Usual: "500 ft·lbf",
		Range: "0 to 1000000 ft·lbf", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "energy", Decides: 2, Label: value, Help: anyUnit, Display: &energyTyped, When: isEnergy, Usual: "200 Btu",
		Range: "0 to 1000000 Btu", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "power", Decides: 2, Label: value, Help: anyUnit, Display: &powerTyped, When: isPower, Usual: "5 hp",
		Range: "0 to 1000000 hp", Why: displays.NotMinus, WhyMost: tooMuch},
	{ID: "frequency", Decides: 2, Label: value, Help: anyUnit, Display: &frequencyTyped, When: isFrequency,
		Usual: "10000 vpm",
		Range: "0 to 1000000 vpm", Why: displays.NotMinus, WhyMost: tooMuch},
	{
		ID:      "temperature-rate",
		Decides: 2,
		Label:   value,
		Help:    anyUnit,
		Display: &temperatureRateTyped,
		When:    isTemperatureRate,
		Usual:   "5 F°/h",
		Range:   "-5000 to 5000 F°/h",
		Why:     tooMuch,
	},
	{ID: "maturity", Decides: 2, Label: value, Help: anyUnit, Display: &maturityTyped, When: isMaturity,
		Usual: "3000 F°·h",
		Range: "0 to 1000000 F°·h", Why: displays.NotMinus, WhyMost: tooMuch},
}

const (
	labelOwn     = calc.Text("In your units")
	labelOther   = calc.Text("In the other units")
	labelHours   = calc.Text("In hours")
	labelMinutes = calc.Text("In minutes")
	perMinute    = calc.Text("In a minute")
	perSecond    = calc.Text("In a second")
)

// outputs are a pair for each kind, put for the kind chosen, and the list of all
// units of that kind.
var outputs = []calc.Field{
	{ID: "length-own", Label: labelOwn, Display: &lengthOwn, Lead: true},
	{ID: "length-other", Label: labelOther, Display: &lengthOther, Lead: true},
	{ID: "area-own", Label: labelOwn, Display: &areaOwn, Lead: true},
	{ID: "area-other", Label: labelOther, Display: &areaOther, Lead: true},
	{ID: "volume-own", Label: labelOwn, Display: &volumeOwn, Lead: true},
	{ID: "volume-other", Label: labelOther, Display: &volumeOther, Lead: true},
	{ID: "mass-own", Label: labelOwn, Display: &massOwn, Lead: true},
	{ID: "mass-other", Label: labelOther, Display: &massOther, Lead: true},
	{ID: "force-own", Label: labelOwn, Display: &forceOwn, Lead: true},
	{ID: "force-other", Label: labelOther, Display: &forceOther, Lead: true},
	{ID: "pressure-own", Label: labelOwn, Display: &pressureOwn, Lead: true},
	{ID: "pressure-other", Label: labelOther, Display: &pressureOther, Lead: true},
	{ID: "density-own", Label: labelOwn, Display: &densityOwn, Lead: true},
	{ID: "density-other", Label: labelOther, Display: &densityOther, Lead: true},
	{ID: "speed-own", Label: labelOwn, Display: &speedOwn, Lead: true},
	{ID: "speed-other", Label: labelOther, Display: &speedOther, Lead: true},
	{ID: "flow-own", Label: labelOwn, Display: &flowOwn, Lead: true},
	{ID: "flow-other", Label: labelOther, Display: &flowOther, Lead: true},
	{ID: "temperature-own", Label: labelOwn, Display: &temperatureOwn, Lead: true},
	{ID: "temperature-other", Label: labelOther, Display: &temperatureOther, Lead: true},
	{ID: "temperature-difference-own", Label: labelOwn, Display: &differenceOwn, Lead: true},
	{ID: "temperature-difference-other", Label: labelOther, Display: &differenceOther, Lead: true},
	{ID: "duration-own", Label: labelHours, Display: &durationOwn, Lead: true},
	{ID: "duration-other", Label: labelMinutes, Display: &durationOther, Lead: true},
	{ID: "evaporation-own", Label: labelOwn, Display: &evaporationOwn, Lead: true},
	{ID: "evaporation-other", Label: labelOther, Display: &evaporationOther, Lead: true},
	{ID: "line-load-own", Label: labelOwn, Display: &lineLoadOwn, Lead: true},
	{ID: "line-load-other", Label: labelOther, Display: &lineLoadOther, Lead: true},
	{ID: "mass-per-length-own", Label: labelOwn, Display: &massPerLengthOwn, Lead: true},
	{ID: "mass-per-length-other", Label: labelOther, Display: &massPerLengthOther, Lead: true},
	{ID: "mass-per-area-own", Label: labelOwn, Display: &massPerAreaOwn, Lead: true},
	{ID: "mass-per-area-other", Label: labelOther, Display: &massPerAreaOther, Lead: true},
	{ID: "steel-own", Label: labelOwn, Display: &steelOwn, Lead: true},
	{ID: "steel-other", Label: labelOther, Display: &steelOther, Lead: true},
	{ID: "moment-own", Label: labelOwn, Display: &momentOwn, Lead: true},
	{ID: "moment-other", Label: labelOther, Display: &momentOther, Lead: true},
	{ID: "energy-own", Label: labelOwn, Display: &energyOwn, Lead: true},
	{ID: "energy-other", Label: labelOther, Display: &energyOther, Lead: true},
	{ID: "power-own", Label: labelOwn, Display: &powerOwn, Lead: true},
	{ID: "power-other", Label: labelOther, Display: &powerOther, Lead: true},
	{ID: "frequency-own", Label: perMinute, Display: &frequencyOwn, Lead: true},
	{ID: "frequency-other", Label: perSecond, Display: &frequencyOther, Lead: true},
	{ID: "temperature-rate-own", Label: labelOwn, Display: &temperatureRateOwn, Lead: true},
	{ID: "temperature-rate-other", Label: labelOther, Display: &temperatureRateOther, Lead: true},
	{ID: "maturity-own", Label: labelOwn, Display: &maturityOwn, Lead: true},
	{ID: "maturity-other", Label: labelOther, Display: &maturityOther, Lead: true},
	{ID: "units", Label: calc.Text("In every unit of the kind"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "value", Label: calc.Text("Value"), Display: &listed, Exact: true},
		{ID: "unit", Label: calc.Text("Unit"), Kind: calc.FreeText},
	}},
}
