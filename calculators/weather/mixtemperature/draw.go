package mixtemperature

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/weather"
)

const (
	title          = calc.Text("Which part carries the heat")
	desc           = calc.Text("The mix comes to {t}. Cooling the sand and stone by {n} degrees cools it by one.")
	labelAggregate = calc.Text("Sand and stone")
	labelCement    = calc.Text("Cement")
	labelWater     = calc.Text("Mixing water and ice")
	labelMoisture  = calc.Text("Free water")
	labelShare     = calc.Text("{share} of the heat")
)

// draw shows the heat capacity of each part of the mix. A refused case gives an
// empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	parts := []struct {
		name calc.Text
		role figure.Role
		heat float64
	}{
		{labelAggregate, figure.Ground, solidHeat * in.Num("aggregate")},
		{labelWater, figure.Line, in.Num("water") + in.Num("ice")},
		{labelCement, figure.Concrete, solidHeat * in.Num("cement")},
		{labelMoisture, figure.Opening, in.Num("moisture")},
	}
	total := 0.0
	for _, p := range parts {
		total += p.heat
	}
	bars := make([]figure.Bar, len(parts))
	for i, p := range parts {
		bars[i] = figure.Bar{
			Role: p.role,
			Name: v.Say(p.name),
			Text: v.Say(labelShare, calc.Amount("share", p.heat/total, &displays.Percent)),
			Size: p.heat,
		}
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.WordSlot("t", weather.Amount(v, res.Out, "temperature")),
			calc.WordSlot("n", weather.Amount(v, res.Out, "lever-aggregate")),
		)}
}
