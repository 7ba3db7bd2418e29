package mixtemperature

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/weather"
)

const (
	refuseSlush = calc.Text(
		"This mix would come to the freezing point with ice left in it. Use less ice or warmer parts.",
	)
	refuseFrozen = calc.Text(
		"This mix would come to the freezing point. Thaw the aggregate first, or use warmer water.",
	)
	refuseStiff = calc.Text(
		"This mix would pass 120 °F (49 °C). No such concrete can be placed. Check the temperatures.",
	)
	noteFrozen = calc.Text("The aggregate is frozen. Its water counts as ice; lumps must be thawed before batching.")
	noteHot    = calc.Text(
		"A load over {limit} is refused, and it warms on the haul. Cool the mix, or pour at a cooler hour.",
	)
	noteCool  = calc.Text("Below 55 °F (13 °C), the least for thin walls in cold weather.")
	noteRough = calc.Text("Ice is more than half of the batch water. The equation is not to be trusted there.")
	noteMuch  = calc.Text("Ice may be at most 75 % of the batch water. Cool the sand and stone as well.")
	noteFar   = calc.Text("Ice cools a mix by about 20 °F (11 °C) at best. Cool the sand and stone as well.")
	noteScald = calc.Text(
		"Water above 140 °F (60 °C) must meet the stone before the cement, or the mix stiffens at once. It scalds.",
	)
	noteHeat = calc.Text(
		"Water alone does not do it: it would need more than 180 °F (82 °C). Warm the sand and stone.",
	)
	ofNow   = calc.Text("As batched")
	ofNoIce = calc.Text("With all batch water liquid")
)

// batch is one mix: masses in kg, temperatures in K.
type batch struct {
	*calc.Recorder
	in                      calc.Case
	aggregate, cement       float64
	moisture, moistureHeat  float64 // mass, and equivalent temperature
	melting, latent         float64
	capacity, liquid, water float64 // kg of water; mix without ice in K; batch water and ice in kg
}

// compute sets the temperature of the mix and what brings it to the wanted one. It
// refuses a mix that freezes or is above 120 °F.
func compute(r *calc.Recorder, in calc.Case) {
	b := &batch{
		Recorder:     r,
		in:           in,
		aggregate:    in.Num("aggregate"),
		cement:       in.Num("cement"),
		moisture:     in.Num("moisture"),
		moistureHeat: in.Num("aggregate-temp"),
		melting:      calc.SI(freezingC, "°C"),
		latent:       latentC,
	}
	if calc.Under(in.Num("aggregate-temp"), b.melting) && b.moisture > 0 {
		b.moistureHeat = r.Use(weather.FrozenMoistureFormula, in.Num("aggregate-temp"), b.melting, b.latent)
		r.Note(calc.LevelNotice, calc.At("aggregate-temp"), noteFrozen)
	}
	ice := in.Num("ice")
	b.water = in.Num("water") + ice
	t := b.mixed(ofNow, in.Num("water"), ice)
	if !calc.Over(t, b.melting) {
		if ice > 0 {
			r.Refuse(calc.At("ice"), refuseSlush)
		} else {
			r.Refuse(calc.At("aggregate-temp"), refuseFrozen)
		}
		return
	}
	if calc.Over(t, calc.SI(120, "°F")) {
		r.Refuse(calc.At("aggregate-temp"), refuseStiff)
		return
	}
	b.liquid = t
	if ice > 0 {
		b.liquid = b.mixed(ofNoIce, b.water, 0)
	}
	b.capacity = r.Use(weather.HeatCapacityFormula, b.aggregate, b.cement, b.moisture, b.water)
	r.Put("temperature", t)
	r.Put("lever-aggregate", weather.LeverFormula.Value(b.capacity, solidHeat, b.aggregate))
	r.Put("lever-water", weather.LeverFormula.Value(b.capacity, 1, b.water))
	r.Put("lever-cement", weather.LeverFormula.Value(b.capacity, solidHeat, b.cement))
	b.noteTemperature(t)
	b.noteIce(ice)
	if in.Has("wanted") {
		b.putNeed(in.Num("wanted"), t)
	}
}

// mixed returns the temperature of the mix in K with masses of water and ice in
// kg, and records it as a worked step with the purpose of.
func (b *batch) mixed(of calc.Text, water, ice float64) float64 {
	return b.UseFor(
		of,
		nil,
		weather.MixTemperatureFormula,
		b.in.Num("aggregate-temp"),
		b.aggregate,
		b.in.Num("cement-temp"),
		b.cement,
		b.in.Num("water-temp"),
		water,
		b.moistureHeat,
		b.moisture,
		b.melting,
		b.latent,
		ice,
	)
}

// noteTemperature notes a mix outside the usual temperatures.
func (b *batch) noteTemperature(t float64) {
	switch {
	case calc.Over(t, weather.HotLoad):
		b.Note(calc.LevelWarning, calc.Path{}, noteHot, calc.Amount("limit", weather.HotLoad, &displays.Temperature))
	case calc.Under(t, calc.SI(55, "°F")):
		b.Note(calc.LevelNotice, calc.Path{}, noteCool)
	}
}

// noteIce notes more ice, in kg, than the equation or practice allows.
func (b *batch) noteIce(ice float64) {
	switch {
	case calc.Over(ice, maxIce*b.water):
		b.Note(calc.LevelNotice, calc.At("ice"), noteMuch)
	case calc.Over(ice, 0.5*b.water):
		b.Note(calc.LevelNotice, calc.At("ice"), noteRough)
	}
}

// sameTemperature is the difference in K within which two temperatures are equal.
const sameTemperature = 0.3

// putNeed sets the measure for the wanted temperature: ice if the mix without ice
// is above it, warm water if it is below, nothing if now is about the same. Both
// are in K.
func (b *batch) putNeed(wanted, now float64) {
	switch {
	case now-wanted <= sameTemperature && wanted-now <= sameTemperature:
		b.PutChoice("need", needNothing)
	case b.liquid > wanted:
		b.withIce(wanted)
	default:
		b.withWater(wanted)
	}
}

// withIce sets the ice for the wanted temperature, in K; for more than practice
// allows it sets only that ice is not enough.
func (b *batch) withIce(wanted float64) {
	ice := b.Use(weather.IceNeededFormula, b.capacity, b.liquid, wanted, b.in.Num("water-temp"), b.melting, b.latent)
	if calc.Over(ice, maxIce*b.water) {
		b.PutChoice("need", needBeyond)
		b.Note(calc.LevelNotice, calc.At("wanted"), noteMuch)
		return
	}
	b.PutChoice("need", needIce)
	b.Put("ice-needed", ice)
	b.Put("ice-share", ice/b.water)
	b.Put("water-left", b.water-ice)
	b.noteIce(ice)
	if calc.Over(b.liquid-wanted, calc.SI(20, "F°")) {
		b.Note(calc.LevelNotice, calc.At("wanted"), noteFar)
	}
}

// withWater sets the temperature of the water for the wanted one, in K; above 180
// °F it sets only that water is not enough.
func (b *batch) withWater(wanted float64) {
	t := b.Use(weather.WaterNeededFormula, b.in.Num("water-temp"), b.capacity, wanted, b.liquid, b.water)
	switch {
	case calc.Over(t, calc.SI(180, "°F")):
		b.PutChoice("need", needBeyond)
		b.Note(calc.LevelNotice, calc.At("wanted"), noteHeat)
		return
	case calc.Over(t, calc.SI(140, "°F")):
		b.Note(calc.LevelCaution, calc.At("wanted"), noteScald)
	}
	b.PutChoice("need", needWarm)
	b.Put("water-needed", t)
}
