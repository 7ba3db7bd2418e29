// Package catalog lists the calculators, in the order of the work.
package catalog

import (
	"coursebook/calculators/bracing/bracelayout"
	"coursebook/calculators/bracing/handsoff"
	"coursebook/calculators/bracing/linerounds"
	"coursebook/calculators/bracing/plumbcheck"
	"coursebook/calculators/bracing/stringline"
	"coursebook/calculators/bracing/windonwall"
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation/batterypacks"
	"coursebook/calculators/consolidation/outsidevibration"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/conversion/unitconversion"
	"coursebook/calculators/daylight/daylighthours"
	"coursebook/calculators/geometry/coursetakeoff"
	"coursebook/calculators/geometry/footingvolume"
	"coursebook/calculators/geometry/houseorder"
	"coursebook/calculators/geometry/radiuswall"
	"coursebook/calculators/geometry/squaring"
	"coursebook/calculators/geometry/wallvolume"
	"coursebook/calculators/placing/lasttruck"
	"coursebook/calculators/placing/pourtime"
	"coursebook/calculators/placing/pumpline"
	"coursebook/calculators/placing/pumpsetup"
	"coursebook/calculators/placing/rateofrise"
	"coursebook/calculators/placing/slumpcheck"
	"coursebook/calculators/placing/truckspacing"
	"coursebook/calculators/placing/wateradded"
	"coursebook/calculators/pressure/ciriapressure"
	"coursebook/calculators/pressure/dinpressure"
	"coursebook/calculators/pressure/formpressure"
	"coursebook/calculators/steel/aggregatesize"
	"coursebook/calculators/steel/anchorbolts"
	"coursebook/calculators/steel/bardata"
	"coursebook/calculators/steel/barlaps"
	"coursebook/calculators/steel/bartakeoff"
	"coursebook/calculators/strength/maturity"
	"coursebook/calculators/strength/strengthgain"
	"coursebook/calculators/ties/blockoutuplift"
	"coursebook/calculators/ties/tieload"
	"coursebook/calculators/ties/windowsupports"
	"coursebook/calculators/weather/coldweather"
	"coursebook/calculators/weather/evaporation"
	"coursebook/calculators/weather/hotweather"
	"coursebook/calculators/weather/mixtemperature"
	"coursebook/calculators/weather/settingtime"
)

// All returns every calculator. IDs are unique.
func All() []*calc.Calculator {
	return []*calc.Calculator{
		// quantities
		wallvolume.Calculator,
		houseorder.Calculator,
		footingvolume.Calculator,
		radiuswall.Calculator,
		coursetakeoff.Calculator,
		squaring.Calculator,
		// pressure
		formpressure.Calculator,
		ciriapressure.Calculator,
		dinpressure.Calculator,
		tieload.Calculator,
		blockoutuplift.Calculator,
		windowsupports.Calculator,
		// placing
		rateofrise.Calculator,
		truckspacing.Calculator,
		pourtime.Calculator,
		lasttruck.Calculator,
		slumpcheck.Calculator,
		wateradded.Calculator,
		pumpline.Calculator,
		pumpsetup.Calculator,
		// consolidation
		vibrator.Calculator,
		batterypacks.Calculator,
		outsidevibration.Calculator,
		// bracing
		bracelayout.Calculator,
		windonwall.Calculator,
		handsoff.Calculator,
		stringline.Calculator,
		linerounds.Calculator,
		plumbcheck.Calculator,
		// weather and time
		evaporation.Calculator,
		mixtemperature.Calculator,
		coldweather.Calculator,
		hotweather.Calculator,
		settingtime.Calculator,
		maturity.Calculator,
		strengthgain.Calculator,
		daylighthours.Calculator,
		// steel
		bardata.Calculator,
		bartakeoff.Calculator,
		barlaps.Calculator,
		aggregatesize.Calculator,
		anchorbolts.Calculator,
		// general
		unitconversion.Calculator,
	}
}
