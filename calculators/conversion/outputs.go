package conversion

import "coursebook/calculators/calc"

const (
	inOwn     = calc.Text("In your units")
	inOther   = calc.Text("In the other units")
	inHours   = calc.Text("In hours")
	inMinutes = calc.Text("In minutes")
	perMinute = calc.Text("In a minute")
	perSecond = calc.Text("In a second")
)

// conversionOut holds a pair for each kind, of which only the chosen kind's
// is given, and the list of all units of that kind.
var conversionOut = []calc.Field{
	{ID: "length-own", Label: inOwn, Display: &lengthOwn, Lead: true},
	{ID: "length-other", Label: inOther, Display: &lengthOther, Lead: true},
	{ID: "area-own", Label: inOwn, Display: &areaOwn, Lead: true},
	{ID: "area-other", Label: inOther, Display: &areaOther, Lead: true},
	{ID: "volume-own", Label: inOwn, Display: &volumeOwn, Lead: true},
	{ID: "volume-other", Label: inOther, Display: &volumeOther, Lead: true},
	{ID: "mass-own", Label: inOwn, Display: &massOwn, Lead: true},
	{ID: "mass-other", Label: inOther, Display: &massOther, Lead: true},
	{ID: "force-own", Label: inOwn, Display: &forceOwn, Lead: true},
	{ID: "force-other", Label: inOther, Display: &forceOther, Lead: true},
	{ID: "pressure-own", Label: inOwn, Display: &pressureOwn, Lead: true},
	{ID: "pressure-other", Label: inOther, Display: &pressureOther, Lead: true},
	{ID: "density-own", Label: inOwn, Display: &densityOwn, Lead: true},
	{ID: "density-other", Label: inOther, Display: &densityOther, Lead: true},
	{ID: "speed-own", Label: inOwn, Display: &speedOwn, Lead: true},
	{ID: "speed-other", Label: inOther, Display: &speedOther, Lead: true},
	{ID: "flow-own", Label: inOwn, Display: &flowOwn, Lead: true},
	{ID: "flow-other", Label: inOther, Display: &flowOther, Lead: true},
	{ID: "temperature-own", Label: inOwn, Display: &temperatureOwn, Lead: true},
	{ID: "temperature-other", Label: inOther, Display: &temperatureOther, Lead: true},
	{ID: "temperature-difference-own", Label: inOwn, Display: &differenceOwn, Lead: true},
	{ID: "temperature-difference-other", Label: inOther, Display: &differenceOther, Lead: true},
	{ID: "duration-own", Label: inHours, Display: &durationOwn, Lead: true},
	{ID: "duration-other", Label: inMinutes, Display: &durationOther, Lead: true},
	{ID: "evaporation-own", Label: inOwn, Display: &evaporationOwn, Lead: true},
	{ID: "evaporation-other", Label: inOther, Display: &evaporationOther, Lead: true},
	{ID: "line-load-own", Label: inOwn, Display: &lineLoadOwn, Lead: true},
	{ID: "line-load-other", Label: inOther, Display: &lineLoadOther, Lead: true},
	{ID: "mass-per-length-own", Label: inOwn, Display: &massPerLengthOwn, Lead: true},
	{ID: "mass-per-length-other", Label: inOther, Display: &massPerLengthOther, Lead: true},
	{ID: "mass-per-area-own", Label: inOwn, Display: &massPerAreaOwn, Lead: true},
	{ID: "mass-per-area-other", Label: inOther, Display: &massPerAreaOther, Lead: true},
	{ID: "steel-own", Label: inOwn, Display: &steelOwn, Lead: true},
	{ID: "steel-other", Label: inOther, Display: &steelOther, Lead: true},
	{ID: "moment-own", Label: inOwn, Display: &momentOwn, Lead: true},
	{ID: "moment-other", Label: inOther, Display: &momentOther, Lead: true},
	{ID: "energy-own", Label: inOwn, Display: &energyOwn, Lead: true},
	{ID: "energy-other", Label: inOther, Display: &energyOther, Lead: true},
	{ID: "power-own", Label: inOwn, Display: &powerOwn, Lead: true},
	{ID: "power-other", Label: inOther, Display: &powerOther, Lead: true},
	{ID: "frequency-own", Label: perMinute, Display: &frequencyOwn, Lead: true},
	{ID: "frequency-other", Label: perSecond, Display: &frequencyOther, Lead: true},
	{ID: "temperature-rate-own", Label: inOwn, Display: &temperatureRateOwn, Lead: true},
	{ID: "temperature-rate-other", Label: inOther, Display: &temperatureRateOther, Lead: true},
	{ID: "maturity-own", Label: inOwn, Display: &maturityOwn, Lead: true},
	{ID: "maturity-other", Label: inOther, Display: &maturityOther, Lead: true},
	{ID: "units", Label: calc.Text("In every unit of the kind"), Kind: calc.Rows, Cols: []calc.Field{
		{ID: "value", Label: calc.Text("Value"), Display: &listed, Exact: true},
		{ID: "unit", Label: calc.Text("Unit"), Kind: calc.FreeText},
	}},
}
