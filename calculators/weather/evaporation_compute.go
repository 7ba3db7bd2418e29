package weather

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
)

const (
	noteAct    = calc.Text("Fog, break the wind, shade, or cover at once. Start curing as soon as the top is finished. Do not sprinkle water and trowel it in.")
	noteCare   = calc.Text("Have fog, covers and a wind break at hand before the next load.")
	noteSplit  = calc.Text("Menzel's equation gives {rate}, on the other side of the limit. Take the stricter.")
	noteDew    = calc.Text("Dew falls on the concrete: nothing dries.")
	noteGrid   = calc.Text("Outside 50 to 104 °F (10 to 40 °C) or above 25 mph (40 km/h) the equations were not compared. Take the rate as a hint.")
	noteLow    = calc.Text("The wind at 20 in. (0.5 m) holds on open short grass only. The verdict keeps the wind as read.")
	ofConcrete = calc.Text("At the concrete")
	ofAir      = calc.Text("In the air")
)

// dryLimit is the rate in lb/ft²/h from which a mix must be protected: the
// US figure of each pair, the stricter by 2 %.
func dryLimit(mix string) float64 {
	switch mix {
	case mixBlend:
		return 0.15
	case mixSilica:
		return 0.1
	}
	return 0.2
}

// windHeight is where the equations want the wind, in m.
const windHeight = 0.5

func computeEvaporation(r *calc.Recorder, in calc.Case) {
	concrete, air, humidity, wind := in.Num("concrete"), in.Num("air"), in.Num("humidity"), in.Num("wind")
	raw := r.Use(eqUno, concrete, air, humidity, wind)
	rate := math.Max(0, raw)
	e0, ea := r.UseFor(ofConcrete, nil, eqVapour, concrete), r.UseFor(ofAir, nil, eqVapour, air)
	menzel := math.Max(0, r.Use(eqMenzel, e0, ea, humidity, wind))
	limit := calc.SI(dryLimit(in.Choice("mix")), "lb/ft²/h")
	r.Put("rate", rate)
	r.Put("menzel", menzel)
	r.Put("uno-si", math.Max(0, r.Use(eqUnoSI, concrete, air, humidity, wind)))
	r.Put("limit", limit)
	r.Put("careful", limit/2)
	switch {
	case !calc.Under(rate, limit):
		r.PutChoice("verdict", dryAct)
		r.Note(calc.LevelNotice, calc.Path{}, noteAct)
	case !calc.Under(rate, limit/2):
		r.PutChoice("verdict", dryCare)
		r.Note(calc.LevelNotice, calc.Path{}, noteCare)
	default:
		r.PutChoice("verdict", dryLow)
	}
	if !calc.Under(rate, limit) != !calc.Under(menzel, limit) {
		r.Note(calc.LevelNotice, calc.Path{}, noteSplit, calc.Amount("rate", menzel, &showRate))
	}
	if raw < 0 {
		r.Note(calc.LevelNotice, calc.At("humidity"), noteDew)
	}
	if t := calc.From(concrete, "°C"); t < 10-calc.Slack || t > 40+calc.Slack || calc.Over(calc.From(wind, "km/h"), 40.3) {
		r.Note(calc.LevelNotice, calc.At("concrete"), noteGrid)
	}
	lowerWind(r, in)
}

// lowerWind shows what the wind near the ground would make of it. It never
// touches the verdict: a site is no meadow.
func lowerWind(r *calc.Recorder, in calc.Case) {
	if !in.Has("wind-height") {
		return
	}
	low := r.Use(eqWind, in.Num("wind"), windHeight, in.Num("wind-height"))
	r.Put("wind-low", low)
	r.Put("rate-low", math.Max(0, eqUno.Value(in.Num("concrete"), in.Num("air"), in.Num("humidity"), low)))
	r.Note(calc.LevelNotice, calc.At("wind-height"), noteLow)
}

const (
	sayDryTitle = calc.Text("Evaporation by each equation")
	sayDryDesc  = calc.Text("Uno gives {uno} and Menzel {menzel}. The dashed line is the limit of {limit}.")
	sayUno      = calc.Text("Uno, decides")
	sayMenzel   = calc.Text("Menzel")
	sayUnoSI    = calc.Text("Uno, rounded SI form")
)

func drawEvaporation(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	out, limit := res.Out, res.Out.Num("limit")
	bar := func(name calc.Text, id string) figure.Bar {
		role := figure.Within
		if !calc.Under(out.Num(id), limit) {
			role = figure.Beyond
		}
		return figure.Bar{Role: role, Name: v.Say(name), Text: amount(v, out, id), Size: out.Num(id)}
	}
	nodes, foot := figure.Bars(0, []figure.Bar{bar(sayUno, "rate"), bar(sayMenzel, "menzel"), bar(sayUnoSI, "uno-si")}, limit)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(sayDryTitle), Nodes: nodes,
		Desc: v.Say(sayDryDesc, calc.Word("uno", amount(v, out, "rate")), calc.Word("menzel", amount(v, out, "menzel")), calc.Word("limit", amount(v, out, "limit")))}
}

// amount is an output as the reader sees it.
func amount(v calc.Locale, c calc.Case, id string) string {
	for i, f := range c.Fields() {
		if f.ID == id {
			return v.Write(f, c.At(i))
		}
	}
	return ""
}
