package unitconversion

import "coursebook/calculators/quantity"

// Displays of the values entered: not rounded, except a length in feet to 1/64 in.
var (
	lengthTyped = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 64},
		Metric: quantity.UnitDisplay{Unit: "m"},
	}
	areaTyped = quantity.Display{
		Dim:    quantity.Area,
		US:     quantity.UnitDisplay{Unit: "ft²"},
		Metric: quantity.UnitDisplay{Unit: "m²"},
	}
	volumeTyped = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "yd³"},
		Metric: quantity.UnitDisplay{Unit: "m³"},
	}
	massTyped = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "lb"},
		Metric: quantity.UnitDisplay{Unit: "kg"},
	}
	forceTyped = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "lbf"},
		Metric: quantity.UnitDisplay{Unit: "kN"},
	}
	pressureTyped = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psf"},
		Metric: quantity.UnitDisplay{Unit: "kPa"},
	}
	densityTyped = quantity.Display{
		Dim:    quantity.Density,
		US:     quantity.UnitDisplay{Unit: "lb/ft³"},
		Metric: quantity.UnitDisplay{Unit: "kg/m³"},
	}
	speedTyped = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "mph"},
		Metric: quantity.UnitDisplay{Unit: "km/h"},
	}
	flowTyped = quantity.Display{
		Dim:    quantity.FlowRate,
		US:     quantity.UnitDisplay{Unit: "yd³/h"},
		Metric: quantity.UnitDisplay{Unit: "m³/h"},
	}
	temperatureTyped = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F"},
		Metric: quantity.UnitDisplay{Unit: "°C"},
	}
	differenceTyped = quantity.Display{
		Dim:    quantity.TemperatureDifference,
		US:     quantity.UnitDisplay{Unit: "F°"},
		Metric: quantity.UnitDisplay{Unit: "C°"},
	}
	durationTyped = quantity.Display{
		Dim:    quantity.Duration,
		US:     quantity.UnitDisplay{Unit: "h"},
		Metric: quantity.UnitDisplay{Unit: "min"},
	}
	evaporationTyped = quantity.Display{
		Dim:    quantity.EvaporationRate,
		US:     quantity.UnitDisplay{Unit: "lb/ft²/h"},
		Metric: quantity.UnitDisplay{Unit: "kg/m²/h"},
	}
	lineLoadTyped = quantity.Display{
		Dim:    quantity.LineLoad,
		US:     quantity.UnitDisplay{Unit: "lbf/ft"},
		Metric: quantity.UnitDisplay{Unit: "kN/m"},
	}
	massPerLengthTyped = quantity.Display{
		Dim:    quantity.MassPerLength,
		US:     quantity.UnitDisplay{Unit: "lb/ft"},
		Metric: quantity.UnitDisplay{Unit: "kg/m"},
	}
	massPerAreaTyped = quantity.Display{
		Dim:    quantity.MassPerArea,
		US:     quantity.UnitDisplay{Unit: "lb/ft²"},
		Metric: quantity.UnitDisplay{Unit: "kg/m²"},
	}
	steelTyped = quantity.Display{
		Dim:    quantity.AreaPerLength,
		US:     quantity.UnitDisplay{Unit: "in²/ft"},
		Metric: quantity.UnitDisplay{Unit: "mm²/m"},
	}
	momentTyped = quantity.Display{
		Dim:    quantity.Moment,
		US:     quantity.UnitDisplay{Unit: "ft·lbf"},
		Metric: quantity.UnitDisplay{Unit: "N·m"},
	}
	energyTyped = quantity.Display{
		Dim:    quantity.Energy,
		US:     quantity.UnitDisplay{Unit: "Btu"},
		Metric: quantity.UnitDisplay{Unit: "kJ"},
	}
	powerTyped = quantity.Display{
		Dim:    quantity.Power,
		US:     quantity.UnitDisplay{Unit: "hp"},
		Metric: quantity.UnitDisplay{Unit: "kW"},
	}
	frequencyTyped = quantity.Display{
		Dim:    quantity.Frequency,
		US:     quantity.UnitDisplay{Unit: "vpm"},
		Metric: quantity.UnitDisplay{Unit: "Hz"},
	}
	temperatureRateTyped = quantity.Display{
		Dim:    quantity.TemperatureRate,
		US:     quantity.UnitDisplay{Unit: "F°/h"},
		Metric: quantity.UnitDisplay{Unit: "C°/h"},
	}
	maturityTyped = quantity.Display{
		Dim:    quantity.Maturity,
		US:     quantity.UnitDisplay{Unit: "F°·h"},
		Metric: quantity.UnitDisplay{Unit: "C°·h"},
	}
)

// Displays of the results, rounded as used in the field: in the reader's system and
// in the other one. The list of all units is not rounded. Duration and frequency
// have the same pair in both systems.
var (
	lengthOwn = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001},
	}
	lengthOther = quantity.Display{
		Dim:    quantity.Length,
		US:     quantity.UnitDisplay{Unit: "m", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1.0 / 16},
	}
	areaOwn = quantity.Display{
		Dim:    quantity.Area,
		US:     quantity.UnitDisplay{Unit: "ft²", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m²", Step: 0.01},
	}
	areaOther = quantity.Display{
		Dim:    quantity.Area,
		US:     quantity.UnitDisplay{Unit: "m²", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "ft²", Step: 0.1},
	}
	volumeOwn = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "yd³", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01},
	}
	volumeOther = quantity.Display{
		Dim:    quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "m³", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "yd³", Step: 0.01},
	}
	massOwn = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "lb", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "kg", Step: 0.1},
	}
	massOther = quantity.Display{
		Dim:    quantity.Mass,
		US:     quantity.UnitDisplay{Unit: "kg", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "lb", Step: 0.1},
	}
	forceOwn = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "lbf", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kN", Step: 0.01},
	}
	forceOther = quantity.Display{
		Dim:    quantity.Force,
		US:     quantity.UnitDisplay{Unit: "kN", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "lbf", Step: 1},
	}
	pressureOwn = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "psf", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kPa", Step: 0.1},
	}
	pressureOther = quantity.Display{
		Dim:    quantity.Pressure,
		US:     quantity.UnitDisplay{Unit: "kPa", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "psf", Step: 1},
	}
	densityOwn = quantity.Display{
		Dim:    quantity.Density,
		US:     quantity.UnitDisplay{Unit: "lb/ft³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "kg/m³", Step: 1},
	}
	densityOther = quantity.Display{
		Dim:    quantity.Density,
		US:     quantity.UnitDisplay{Unit: "kg/m³", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "lb/ft³", Step: 0.1},
	}
	speedOwn = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "mph", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "km/h", Step: 0.1},
	}
	speedOther = quantity.Display{
		Dim:    quantity.Speed,
		US:     quantity.UnitDisplay{Unit: "km/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "mph", Step: 0.1},
	}
	flowOwn = quantity.Display{
		Dim:    quantity.FlowRate,
		US:     quantity.UnitDisplay{Unit: "yd³/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³/h", Step: 0.1},
	}
	flowOther = quantity.Display{
		Dim:    quantity.FlowRate,
		US:     quantity.UnitDisplay{Unit: "m³/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "yd³/h", Step: 0.1},
	}
	temperatureOwn = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°F", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "°C", Step: 0.1},
	}
	temperatureOther = quantity.Display{
		Dim:    quantity.Temperature,
		US:     quantity.UnitDisplay{Unit: "°C", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "°F", Step: 0.1},
	}
	differenceOwn = quantity.Display{
		Dim:    quantity.TemperatureDifference,
		US:     quantity.UnitDisplay{Unit: "F°", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "C°", Step: 0.1},
	}
	differenceOther = quantity.Display{
		Dim:    quantity.TemperatureDifference,
		US:     quantity.UnitDisplay{Unit: "C°", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "F°", Step: 0.1},
	}
	durationOwn    = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "h", Step: 0.01}}
	durationOther  = quantity.Display{Dim: quantity.Duration, US: quantity.UnitDisplay{Unit: "min", Step: 1}}
	evaporationOwn = quantity.Display{
		Dim:    quantity.EvaporationRate,
		US:     quantity.UnitDisplay{Unit: "lb/ft²/h", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "kg/m²/h", Step: 0.01},
	}
	evaporationOther = quantity.Display{
		Dim:    quantity.EvaporationRate,
		US:     quantity.UnitDisplay{Unit: "kg/m²/h", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "lb/ft²/h", Step: 0.001},
	}
	lineLoadOwn = quantity.Display{
		Dim:    quantity.LineLoad,
		US:     quantity.UnitDisplay{Unit: "lbf/ft", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kN/m", Step: 0.01},
	}
	lineLoadOther = quantity.Display{
		Dim:    quantity.LineLoad,
		US:     quantity.UnitDisplay{Unit: "kN/m", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "lbf/ft", Step: 1},
	}
	massPerLengthOwn = quantity.Display{
		Dim:    quantity.MassPerLength,
		US:     quantity.UnitDisplay{Unit: "lb/ft", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "kg/m", Step: 0.001},
	}
	massPerLengthOther = quantity.Display{
		Dim:    quantity.MassPerLength,
		US:     quantity.UnitDisplay{Unit: "kg/m", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "lb/ft", Step: 0.001},
	}
	massPerAreaOwn = quantity.Display{
		Dim:    quantity.MassPerArea,
		US:     quantity.UnitDisplay{Unit: "lb/ft²", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "kg/m²", Step: 1},
	}
	massPerAreaOther = quantity.Display{
		Dim:    quantity.MassPerArea,
		US:     quantity.UnitDisplay{Unit: "kg/m²", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "lb/ft²", Step: 0.1},
	}
	steelOwn = quantity.Display{
		Dim:    quantity.AreaPerLength,
		US:     quantity.UnitDisplay{Unit: "in²/ft", Step: 0.001},
		Metric: quantity.UnitDisplay{Unit: "mm²/m", Step: 1},
	}
	steelOther = quantity.Display{
		Dim:    quantity.AreaPerLength,
		US:     quantity.UnitDisplay{Unit: "mm²/m", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "in²/ft", Step: 0.001},
	}
	momentOwn = quantity.Display{
		Dim:    quantity.Moment,
		US:     quantity.UnitDisplay{Unit: "ft·lbf", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "N·m", Step: 1},
	}
	momentOther = quantity.Display{
		Dim:    quantity.Moment,
		US:     quantity.UnitDisplay{Unit: "N·m", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "ft·lbf", Step: 1},
	}
	energyOwn = quantity.Display{
		Dim:    quantity.Energy,
		US:     quantity.UnitDisplay{Unit: "Btu", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "kJ", Step: 1},
	}
	energyOther = quantity.Display{
		Dim:    quantity.Energy,
		US:     quantity.UnitDisplay{Unit: "kJ", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "Btu", Step: 1},
	}
	powerOwn = quantity.Display{
		Dim:    quantity.Power,
		US:     quantity.UnitDisplay{Unit: "hp", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "kW", Step: 0.01},
	}
	powerOther = quantity.Display{
		Dim:    quantity.Power,
		US:     quantity.UnitDisplay{Unit: "kW", Step: 0.01},
		Metric: quantity.UnitDisplay{Unit: "hp", Step: 0.1},
	}
	frequencyOwn       = quantity.Display{Dim: quantity.Frequency, US: quantity.UnitDisplay{Unit: "vpm", Step: 1}}
	frequencyOther     = quantity.Display{Dim: quantity.Frequency, US: quantity.UnitDisplay{Unit: "Hz", Step: 0.1}}
	temperatureRateOwn = quantity.Display{
		Dim:    quantity.TemperatureRate,
		US:     quantity.UnitDisplay{Unit: "F°/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "C°/h", Step: 0.1},
	}
	temperatureRateOther = quantity.Display{
		Dim:    quantity.TemperatureRate,
		US:     quantity.UnitDisplay{Unit: "C°/h", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "F°/h", Step: 0.1},
	}
	maturityOwn = quantity.Display{
		Dim:    quantity.Maturity,
		US:     quantity.UnitDisplay{Unit: "F°·h", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "C°·h", Step: 1},
	}
	maturityOther = quantity.Display{
		Dim:    quantity.Maturity,
		US:     quantity.UnitDisplay{Unit: "C°·h", Step: 1},
		Metric: quantity.UnitDisplay{Unit: "F°·h", Step: 1},
	}
)

// listed displays the values of the list: up to 5 significant digits, no unit.
var listed = quantity.Display{Dim: quantity.Number, US: quantity.UnitDisplay{Digits: 5}}
