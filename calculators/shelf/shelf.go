// Package shelf is the list of calculators, in the order of the pour.
package shelf

import (
	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/conversion"
	"coursebook/calculators/daylight"
	"coursebook/calculators/geometry"
	"coursebook/calculators/placing"
	"coursebook/calculators/pressure"
	"coursebook/calculators/steel"
	"coursebook/calculators/strength"
	"coursebook/calculators/ties"
	"coursebook/calculators/weather"
)

// All lists every calculator once. A test finds two with one ID.
func All() []*calc.Calculator {
	return []*calc.Calculator{
		// quantities
		geometry.WallVolume,
		geometry.FootingVolume,
		geometry.RadiusWall,
		geometry.CourseTakeOff,
		geometry.Squaring,
		// pressure
		pressure.FormPressure,
		pressure.CiriaPressure,
		pressure.DINPressure,
		ties.TieLoad,
		ties.BlockOutUplift,
		ties.WindowSupports,
		// placing
		placing.RateOfRise,
		placing.TruckSpacing,
		placing.PourTime,
		placing.WaterAdded,
		placing.PumpLine,
		// consolidation
		consolidation.InternalVibrator,
		consolidation.BatteryPacks,
		consolidation.OutsideVibration,
		// bracing
		bracing.BraceLayout,
		bracing.WindOnWall,
		bracing.StringLine,
		bracing.LineRounds,
		bracing.PlumbCheck,
		// weather and time
		weather.Evaporation,
		weather.MixTemp,
		weather.ColdWeather,
		weather.HotWeather,
		weather.SettingTime,
		strength.Maturity,
		strength.StrengthGain,
		daylight.Daylight,
		// steel
		steel.BarData,
		steel.BarTakeOff,
		steel.BarLaps,
		steel.AggregateSize,
		// general
		conversion.UnitConversion,
	}
}
