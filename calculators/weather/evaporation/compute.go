package evaporation

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/weather"
)

const (
	noteAct = calc.Text(
		"Fog, break the wind, shade, or cover at once. Start curing as soon as the top is finished. Do not sprinkle " +
			"water and trowel it in.",
	)
	noteCare  = calc.Text("Have fog, covers and a wind break at hand before the next load.")
	noteSplit = calc.Text("Uno's equation gives {uno} and Menzel's {menzel}. The faster one counts.")
	noteDew   = calc.Text(
		"Dew falls on the concrete and nothing dries. Cover the top, and do not trowel it while water stands on it. " +
			"The rates below zero are shown as 0.",
	)
	noteOneDew = calc.Text("By {equation} water condenses on the concrete. That rate is below zero and shown as 0.")
	noteBlend  = calc.Text(
		"No document gives a limit for blends. Three quarters of the limit for plain cement is common practice.",
	)
	nameUno    = calc.Text("Uno")
	nameMenzel = calc.Text("Menzel")
	noteGrid   = calc.Text(
		"Outside 50 to 104 °F (10 to 40 °C) or above 25 mph (40 km/h) the equations were not compared. Take the rate " +
			"as a hint.",
	)
	noteLow = calc.Text(
		"The wind at 20 in. (0.5 m) holds on open short grass only. The verdict keeps the wind as read.",
	)
	ofConcrete = calc.Text("At the concrete")
	ofAir      = calc.Text("In the air")
)

// rateLimit returns the rate in lb/ft²/h from which a mix must be protected: of
// each published pair the US value, which is lower by 2 %.
func rateLimit(mix string) float64 {
	switch mix {
	case mixBlend:
		return 0.15
	case mixSilica:
		return 0.1
	}
	return 0.2
}

// windHeight is the height of the wind in the equations, in m.
const windHeight = 0.5

// compute sets the rates of evaporation and the verdict. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	concrete, air, humidity, wind := in.Num("concrete"), in.Num("air"), in.Num("humidity"), in.Num("wind")
	raw := r.Use(weather.UnoUSFormula, concrete, air, humidity, wind)
	rate := math.Max(0, raw)
	e0, ea := r.UseFor(
		ofConcrete,
		nil,
		weather.VapourPressureFormula,
		concrete,
	), r.UseFor(
		ofAir,
		nil,
		weather.VapourPressureFormula,
		air,
	)
	rawMenzel := r.Use(weather.MenzelUSFormula, e0, ea, humidity, wind)
	menzel := math.Max(0, rawMenzel)
	limit := calc.SI(rateLimit(in.Choice("mix")), "lb/ft²/h")
	worst := math.Max(rate, menzel)
	r.Put("worst", worst)
	r.Put("rate", rate)
	r.Put("menzel", menzel)
	r.Put("uno-si", math.Max(0, r.Use(weather.UnoSIFormula, concrete, air, humidity, wind)))
	r.Put("limit", limit)
	r.Put("careful", limit/2)
	switch {
	case !calc.Under(worst, limit):
		r.PutChoice("verdict", rateAct)
		r.Note(calc.LevelNotice, calc.Path{}, noteAct)
	case !calc.Under(worst, limit/2):
		r.PutChoice("verdict", rateCare)
		r.Note(calc.LevelNotice, calc.Path{}, noteCare)
	case raw < 0 && rawMenzel < 0:
		r.PutChoice("verdict", rateDew)
	default:
		r.PutChoice("verdict", rateLow)
	}
	if !calc.Under(rate, limit) != !calc.Under(menzel, limit) {
		r.Note(calc.LevelNotice, calc.Path{}, noteSplit,
			calc.Amount("uno", rate, &showRate), calc.Amount("menzel", menzel, &showRate))
	}
	noteCondensing(r, raw, rawMenzel)
	if in.Choice("mix") == mixBlend {
		r.Note(calc.LevelNotice, calc.At("mix"), noteBlend)
	}
	if t := calc.From(concrete, "°C"); t < 10-calc.Slack || t > 40+calc.Slack ||
		calc.Over(calc.From(wind, "km/h"), 40.3) {
		r.Note(calc.LevelNotice, calc.At("concrete"), noteGrid)
	}
	putLowWind(r, in)
}

// noteCondensing notes the rates that are below zero and shown as 0.
func noteCondensing(r *calc.Recorder, uno, menzel float64) {
	switch {
	case uno < 0 && menzel < 0:
		r.Note(calc.LevelCaution, calc.At("humidity"), noteDew)
	case uno < 0:
		r.Note(calc.LevelNotice, calc.At("humidity"), noteOneDew, calc.TextSlot("equation", nameUno))
	case menzel < 0:
		r.Note(calc.LevelNotice, calc.At("humidity"), noteOneDew, calc.TextSlot("equation", nameMenzel))
	}
}

// putLowWind puts the rate for the wind at the height of the equations. The verdict
// does not depend on it: a site is no open short grass.
func putLowWind(r *calc.Recorder, in calc.Case) {
	if !in.Has("wind-height") {
		return
	}
	low := r.Use(weather.WindAtFormula, in.Num("wind"), windHeight, in.Num("wind-height"))
	r.Put("wind-low", low)
	r.Put(
		"rate-low",
		math.Max(0, weather.UnoUSFormula.Value(in.Num("concrete"), in.Num("air"), in.Num("humidity"), low)),
	)
	r.Note(calc.LevelNotice, calc.At("wind-height"), noteLow)
}
