package conversion

import "coursebook/calculators/quantity"

// How a typed value is written: as it was typed, without rounding; a length in
// feet to 1/64 in.
var (
	lengthTyped          = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 64}, Metric: quantity.Scale{Unit: "m"}}
	areaTyped            = quantity.Show{Dim: quantity.Area, US: quantity.Scale{Unit: "ft²"}, Metric: quantity.Scale{Unit: "m²"}}
	volumeTyped          = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "yd³"}, Metric: quantity.Scale{Unit: "m³"}}
	massTyped            = quantity.Show{Dim: quantity.Mass, US: quantity.Scale{Unit: "lb"}, Metric: quantity.Scale{Unit: "kg"}}
	forceTyped           = quantity.Show{Dim: quantity.Force, US: quantity.Scale{Unit: "lbf"}, Metric: quantity.Scale{Unit: "kN"}}
	pressureTyped        = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psf"}, Metric: quantity.Scale{Unit: "kPa"}}
	densityTyped         = quantity.Show{Dim: quantity.Density, US: quantity.Scale{Unit: "lb/ft³"}, Metric: quantity.Scale{Unit: "kg/m³"}}
	speedTyped           = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "mph"}, Metric: quantity.Scale{Unit: "km/h"}}
	flowTyped            = quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "yd³/h"}, Metric: quantity.Scale{Unit: "m³/h"}}
	temperatureTyped     = quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F"}, Metric: quantity.Scale{Unit: "°C"}}
	differenceTyped      = quantity.Show{Dim: quantity.TemperatureDifference, US: quantity.Scale{Unit: "F°"}, Metric: quantity.Scale{Unit: "C°"}}
	durationTyped        = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h"}, Metric: quantity.Scale{Unit: "min"}}
	evaporationTyped     = quantity.Show{Dim: quantity.EvaporationRate, US: quantity.Scale{Unit: "lb/ft²/h"}, Metric: quantity.Scale{Unit: "kg/m²/h"}}
	lineLoadTyped        = quantity.Show{Dim: quantity.LineLoad, US: quantity.Scale{Unit: "lbf/ft"}, Metric: quantity.Scale{Unit: "kN/m"}}
	massPerLengthTyped   = quantity.Show{Dim: quantity.MassPerLength, US: quantity.Scale{Unit: "lb/ft"}, Metric: quantity.Scale{Unit: "kg/m"}}
	massPerAreaTyped     = quantity.Show{Dim: quantity.MassPerArea, US: quantity.Scale{Unit: "lb/ft²"}, Metric: quantity.Scale{Unit: "kg/m²"}}
	steelTyped           = quantity.Show{Dim: quantity.AreaPerLength, US: quantity.Scale{Unit: "in²/ft"}, Metric: quantity.Scale{Unit: "mm²/m"}}
	momentTyped          = quantity.Show{Dim: quantity.Moment, US: quantity.Scale{Unit: "ft·lbf"}, Metric: quantity.Scale{Unit: "N·m"}}
	energyTyped          = quantity.Show{Dim: quantity.Energy, US: quantity.Scale{Unit: "Btu"}, Metric: quantity.Scale{Unit: "kJ"}}
	powerTyped           = quantity.Show{Dim: quantity.Power, US: quantity.Scale{Unit: "hp"}, Metric: quantity.Scale{Unit: "kW"}}
	frequencyTyped       = quantity.Show{Dim: quantity.Frequency, US: quantity.Scale{Unit: "vpm"}, Metric: quantity.Scale{Unit: "Hz"}}
	temperatureRateTyped = quantity.Show{Dim: quantity.TemperatureRate, US: quantity.Scale{Unit: "F°/h"}, Metric: quantity.Scale{Unit: "C°/h"}}
	maturityTyped        = quantity.Show{Dim: quantity.Maturity, US: quantity.Scale{Unit: "F°·h"}, Metric: quantity.Scale{Unit: "C°·h"}}
)

// How the answer is written, rounded as it is used in the field: in the
// reader's own system, and in the other one. The list of all units holds what
// the rounding hides. Time and vibrations have one pair for every reader.
var (
	lengthOwn            = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16}, Metric: quantity.Scale{Unit: "m", Step: 0.001}}
	lengthOther          = quantity.Show{Dim: quantity.Length, US: quantity.Scale{Unit: "m", Step: 0.001}, Metric: quantity.Scale{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16}}
	areaOwn              = quantity.Show{Dim: quantity.Area, US: quantity.Scale{Unit: "ft²", Step: 0.1}, Metric: quantity.Scale{Unit: "m²", Step: 0.01}}
	areaOther            = quantity.Show{Dim: quantity.Area, US: quantity.Scale{Unit: "m²", Step: 0.01}, Metric: quantity.Scale{Unit: "ft²", Step: 0.1}}
	volumeOwn            = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "yd³", Step: 0.01}, Metric: quantity.Scale{Unit: "m³", Step: 0.01}}
	volumeOther          = quantity.Show{Dim: quantity.Volume, US: quantity.Scale{Unit: "m³", Step: 0.01}, Metric: quantity.Scale{Unit: "yd³", Step: 0.01}}
	massOwn              = quantity.Show{Dim: quantity.Mass, US: quantity.Scale{Unit: "lb", Step: 0.1}, Metric: quantity.Scale{Unit: "kg", Step: 0.1}}
	massOther            = quantity.Show{Dim: quantity.Mass, US: quantity.Scale{Unit: "kg", Step: 0.1}, Metric: quantity.Scale{Unit: "lb", Step: 0.1}}
	forceOwn             = quantity.Show{Dim: quantity.Force, US: quantity.Scale{Unit: "lbf", Step: 1}, Metric: quantity.Scale{Unit: "kN", Step: 0.01}}
	forceOther           = quantity.Show{Dim: quantity.Force, US: quantity.Scale{Unit: "kN", Step: 0.01}, Metric: quantity.Scale{Unit: "lbf", Step: 1}}
	pressureOwn          = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "psf", Step: 1}, Metric: quantity.Scale{Unit: "kPa", Step: 0.1}}
	pressureOther        = quantity.Show{Dim: quantity.Pressure, US: quantity.Scale{Unit: "kPa", Step: 0.1}, Metric: quantity.Scale{Unit: "psf", Step: 1}}
	densityOwn           = quantity.Show{Dim: quantity.Density, US: quantity.Scale{Unit: "lb/ft³", Step: 0.1}, Metric: quantity.Scale{Unit: "kg/m³", Step: 1}}
	densityOther         = quantity.Show{Dim: quantity.Density, US: quantity.Scale{Unit: "kg/m³", Step: 1}, Metric: quantity.Scale{Unit: "lb/ft³", Step: 0.1}}
	speedOwn             = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "mph", Step: 0.1}, Metric: quantity.Scale{Unit: "km/h", Step: 0.1}}
	speedOther           = quantity.Show{Dim: quantity.Speed, US: quantity.Scale{Unit: "km/h", Step: 0.1}, Metric: quantity.Scale{Unit: "mph", Step: 0.1}}
	flowOwn              = quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "yd³/h", Step: 0.1}, Metric: quantity.Scale{Unit: "m³/h", Step: 0.1}}
	flowOther            = quantity.Show{Dim: quantity.FlowRate, US: quantity.Scale{Unit: "m³/h", Step: 0.1}, Metric: quantity.Scale{Unit: "yd³/h", Step: 0.1}}
	temperatureOwn       = quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°F", Step: 0.1}, Metric: quantity.Scale{Unit: "°C", Step: 0.1}}
	temperatureOther     = quantity.Show{Dim: quantity.Temperature, US: quantity.Scale{Unit: "°C", Step: 0.1}, Metric: quantity.Scale{Unit: "°F", Step: 0.1}}
	differenceOwn        = quantity.Show{Dim: quantity.TemperatureDifference, US: quantity.Scale{Unit: "F°", Step: 0.1}, Metric: quantity.Scale{Unit: "C°", Step: 0.1}}
	differenceOther      = quantity.Show{Dim: quantity.TemperatureDifference, US: quantity.Scale{Unit: "C°", Step: 0.1}, Metric: quantity.Scale{Unit: "F°", Step: 0.1}}
	durationOwn          = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "h", Step: 0.01}}
	durationOther        = quantity.Show{Dim: quantity.Duration, US: quantity.Scale{Unit: "min", Step: 1}}
	evaporationOwn       = quantity.Show{Dim: quantity.EvaporationRate, US: quantity.Scale{Unit: "lb/ft²/h", Step: 0.001}, Metric: quantity.Scale{Unit: "kg/m²/h", Step: 0.01}}
	evaporationOther     = quantity.Show{Dim: quantity.EvaporationRate, US: quantity.Scale{Unit: "kg/m²/h", Step: 0.01}, Metric: quantity.Scale{Unit: "lb/ft²/h", Step: 0.001}}
	lineLoadOwn          = quantity.Show{Dim: quantity.LineLoad, US: quantity.Scale{Unit: "lbf/ft", Step: 1}, Metric: quantity.Scale{Unit: "kN/m", Step: 0.01}}
	lineLoadOther        = quantity.Show{Dim: quantity.LineLoad, US: quantity.Scale{Unit: "kN/m", Step: 0.01}, Metric: quantity.Scale{Unit: "lbf/ft", Step: 1}}
	massPerLengthOwn     = quantity.Show{Dim: quantity.MassPerLength, US: quantity.Scale{Unit: "lb/ft", Step: 0.001}, Metric: quantity.Scale{Unit: "kg/m", Step: 0.001}}
	massPerLengthOther   = quantity.Show{Dim: quantity.MassPerLength, US: quantity.Scale{Unit: "kg/m", Step: 0.001}, Metric: quantity.Scale{Unit: "lb/ft", Step: 0.001}}
	massPerAreaOwn       = quantity.Show{Dim: quantity.MassPerArea, US: quantity.Scale{Unit: "lb/ft²", Step: 0.1}, Metric: quantity.Scale{Unit: "kg/m²", Step: 1}}
	massPerAreaOther     = quantity.Show{Dim: quantity.MassPerArea, US: quantity.Scale{Unit: "kg/m²", Step: 1}, Metric: quantity.Scale{Unit: "lb/ft²", Step: 0.1}}
	steelOwn             = quantity.Show{Dim: quantity.AreaPerLength, US: quantity.Scale{Unit: "in²/ft", Step: 0.001}, Metric: quantity.Scale{Unit: "mm²/m", Step: 1}}
	steelOther           = quantity.Show{Dim: quantity.AreaPerLength, US: quantity.Scale{Unit: "mm²/m", Step: 1}, Metric: quantity.Scale{Unit: "in²/ft", Step: 0.001}}
	momentOwn            = quantity.Show{Dim: quantity.Moment, US: quantity.Scale{Unit: "ft·lbf", Step: 1}, Metric: quantity.Scale{Unit: "N·m", Step: 1}}
	momentOther          = quantity.Show{Dim: quantity.Moment, US: quantity.Scale{Unit: "N·m", Step: 1}, Metric: quantity.Scale{Unit: "ft·lbf", Step: 1}}
	energyOwn            = quantity.Show{Dim: quantity.Energy, US: quantity.Scale{Unit: "Btu", Step: 1}, Metric: quantity.Scale{Unit: "kJ", Step: 1}}
	energyOther          = quantity.Show{Dim: quantity.Energy, US: quantity.Scale{Unit: "kJ", Step: 1}, Metric: quantity.Scale{Unit: "Btu", Step: 1}}
	powerOwn             = quantity.Show{Dim: quantity.Power, US: quantity.Scale{Unit: "hp", Step: 0.1}, Metric: quantity.Scale{Unit: "kW", Step: 0.01}}
	powerOther           = quantity.Show{Dim: quantity.Power, US: quantity.Scale{Unit: "kW", Step: 0.01}, Metric: quantity.Scale{Unit: "hp", Step: 0.1}}
	frequencyOwn         = quantity.Show{Dim: quantity.Frequency, US: quantity.Scale{Unit: "vpm", Step: 1}}
	frequencyOther       = quantity.Show{Dim: quantity.Frequency, US: quantity.Scale{Unit: "Hz", Step: 0.1}}
	temperatureRateOwn   = quantity.Show{Dim: quantity.TemperatureRate, US: quantity.Scale{Unit: "F°/h", Step: 0.1}, Metric: quantity.Scale{Unit: "C°/h", Step: 0.1}}
	temperatureRateOther = quantity.Show{Dim: quantity.TemperatureRate, US: quantity.Scale{Unit: "C°/h", Step: 0.1}, Metric: quantity.Scale{Unit: "F°/h", Step: 0.1}}
	maturityOwn          = quantity.Show{Dim: quantity.Maturity, US: quantity.Scale{Unit: "F°·h", Step: 1}, Metric: quantity.Scale{Unit: "C°·h", Step: 1}}
	maturityOther        = quantity.Show{Dim: quantity.Maturity, US: quantity.Scale{Unit: "C°·h", Step: 1}, Metric: quantity.Scale{Unit: "F°·h", Step: 1}}
)

// listed writes the list: up to 7 significant digits, the unit beside it.
var listed = quantity.Show{Dim: quantity.Number}
