package conversion

import "coursebook/calculators/calc"

const (
	inOwn     = calc.Text("unit-conversion.out.own: In your units")
	inOther   = calc.Text("unit-conversion.out.other: In the other units")
	inHours   = calc.Text("unit-conversion.out.hours: In hours")
	inMinutes = calc.Text("unit-conversion.out.minutes: In minutes")
	perMinute = calc.Text("unit-conversion.out.per-minute: In a minute")
	perSecond = calc.Text("unit-conversion.out.per-second: In a second")
)

// conversionOut holds a pair for each kind, of which only the chosen kind's
// is given, and the list of all units of that kind.
var conversionOut = []calc.Field{
	{ID: "length-own", Label: inOwn, Show: &lengthOwn, Lead: true},
	{ID: "length-other", Label: inOther, Show: &lengthOther, Lead: true},
	{ID: "area-own", Label: inOwn, Show: &areaOwn, Lead: true},
	{ID: "area-other", Label: inOther, Show: &areaOther, Lead: true},
	{ID: "volume-own", Label: inOwn, Show: &volumeOwn, Lead: true},
	{ID: "volume-other", Label: inOther, Show: &volumeOther, Lead: true},
	{ID: "mass-own", Label: inOwn, Show: &massOwn, Lead: true},
	{ID: "mass-other", Label: inOther, Show: &massOther, Lead: true},
	{ID: "force-own", Label: inOwn, Show: &forceOwn, Lead: true},
	{ID: "force-other", Label: inOther, Show: &forceOther, Lead: true},
	{ID: "pressure-own", Label: inOwn, Show: &pressureOwn, Lead: true},
	{ID: "pressure-other", Label: inOther, Show: &pressureOther, Lead: true},
	{ID: "density-own", Label: inOwn, Show: &densityOwn, Lead: true},
	{ID: "density-other", Label: inOther, Show: &densityOther, Lead: true},
	{ID: "speed-own", Label: inOwn, Show: &speedOwn, Lead: true},
	{ID: "speed-other", Label: inOther, Show: &speedOther, Lead: true},
	{ID: "flow-own", Label: inOwn, Show: &flowOwn, Lead: true},
	{ID: "flow-other", Label: inOther, Show: &flowOther, Lead: true},
	{ID: "temperature-own", Label: inOwn, Show: &temperatureOwn, Lead: true},
	{ID: "temperature-other", Label: inOther, Show: &temperatureOther, Lead: true},
	{ID: "temperature-difference-own", Label: inOwn, Show: &differenceOwn, Lead: true},
	{ID: "temperature-difference-other", Label: inOther, Show: &differenceOther, Lead: true},
	{ID: "duration-own", Label: inHours, Show: &durationOwn, Lead: true},
	{ID: "duration-other", Label: inMinutes, Show: &durationOther, Lead: true},
	{ID: "evaporation-own", Label: inOwn, Show: &evaporationOwn, Lead: true},
	{ID: "evaporation-other", Label: inOther, Show: &evaporationOther, Lead: true},
	{ID: "line-load-own", Label: inOwn, Show: &lineLoadOwn, Lead: true},
	{ID: "line-load-other", Label: inOther, Show: &lineLoadOther, Lead: true},
	{ID: "mass-per-length-own", Label: inOwn, Show: &massPerLengthOwn, Lead: true},
	{ID: "mass-per-length-other", Label: inOther, Show: &massPerLengthOther, Lead: true},
	{ID: "mass-per-area-own", Label: inOwn, Show: &massPerAreaOwn, Lead: true},
	{ID: "mass-per-area-other", Label: inOther, Show: &massPerAreaOther, Lead: true},
	{ID: "steel-own", Label: inOwn, Show: &steelOwn, Lead: true},
	{ID: "steel-other", Label: inOther, Show: &steelOther, Lead: true},
	{ID: "moment-own", Label: inOwn, Show: &momentOwn, Lead: true},
	{ID: "moment-other", Label: inOther, Show: &momentOther, Lead: true},
	{ID: "energy-own", Label: inOwn, Show: &energyOwn, Lead: true},
	{ID: "energy-other", Label: inOther, Show: &energyOther, Lead: true},
	{ID: "power-own", Label: inOwn, Show: &powerOwn, Lead: true},
	{ID: "power-other", Label: inOther, Show: &powerOther, Lead: true},
	{ID: "frequency-own", Label: perMinute, Show: &frequencyOwn, Lead: true},
	{ID: "frequency-other", Label: perSecond, Show: &frequencyOther, Lead: true},
	{ID: "temperature-rate-own", Label: inOwn, Show: &temperatureRateOwn, Lead: true},
	{ID: "temperature-rate-other", Label: inOther, Show: &temperatureRateOther, Lead: true},
	{ID: "maturity-own", Label: inOwn, Show: &maturityOwn, Lead: true},
	{ID: "maturity-other", Label: inOther, Show: &maturityOther, Lead: true},
	{ID: "units", Label: calc.Text("unit-conversion.out.units: In every unit of the kind"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "value", Label: calc.Text("unit-conversion.out.units.value: Value"), Show: &listed, Exact: true},
		{ID: "unit", Label: calc.Text("unit-conversion.out.units.unit: Unit"), Kind: calc.Words_},
	}},
}
