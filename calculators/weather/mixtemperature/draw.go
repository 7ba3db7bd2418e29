package mixtemperature

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/weather"
)

const (
	sayLeverTitle = calc.Text("Which part carries the heat")
	sayLeverDesc  = calc.Text("The mix comes to {t}. Cooling the sand and stone by {n} degrees cools it by one.")
	sayAggregate  = calc.Text("Sand and stone")
	sayCement     = calc.Text("Cement")
	sayWater      = calc.Text("Mixing water and ice")
	sayMoisture   = calc.Text("Free water")
	sayShare      = calc.Text("{share} of the heat")
)

// draw shows how the heat capacity of the mix is shared among its parts.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	parts := []struct {
		name calc.Text
		role figure.Role
		heat float64
	}{
		{
			sayAggregate,
			figure.Ground,
			solidHeat * in.Num("aggregate"),
		}, {sayWater, figure.Line, in.Num("water") + in.Num("ice")},
		{sayCement, figure.Concrete, solidHeat * in.Num("cement")}, {sayMoisture, figure.Opening, in.Num("moisture")},
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
			Text: v.Say(sayShare, calc.Amount("share", p.heat/total, &displays.Percent)),
			Size: p.heat,
		}
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(sayLeverTitle), Nodes: nodes,
		Desc: v.Say(
			sayLeverDesc,
			calc.WordSlot("t", weather.Amount(v, res.Out, "temperature")),
			calc.WordSlot("n", weather.Amount(v, res.Out, "lever-aggregate")),
		)}
}
