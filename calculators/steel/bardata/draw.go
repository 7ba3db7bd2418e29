package bardata

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/steel"
)

const (
	title = calc.Text("Weight of the bar and its neighbors")
	desc  = calc.Text("{bar}: {mass}. {count} bars weigh {weight}.")
)

// draw shows the mass per length of the bar and of its neighbours in the list. A
// refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	at := 0
	for i, b := range steel.Bars {
		if b.ID == in.Choice("bar") {
			at = i
		}
	}
	var bars []figure.Bar
	for i := max(at-2, 0); i < min(at+3, len(steel.Bars)); i++ {
		if steel.Bars[i].Canadian() != steel.Bars[at].Canadian() {
			continue
		}
		role := figure.Foam
		if i == at {
			role = figure.Steel
		}
		bars = append(
			bars,
			figure.Bar{
				Role: role,
				Name: v.Say(steel.BarOptions[i].Label),
				Text: quantity.Format(steel.Bars[i].Mass, barMass, v.Style),
				Size: steel.Bars[i].Mass,
			},
		)
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.TextSlot("bar", steel.BarOptions[at].Label),
			calc.Amount("mass", steel.Bars[at].Mass, &barMass),
			calc.Amount(
				"count",
				in.Num("count"),
				&displays.Count,
			),
			calc.Amount("weight", res.Out.Num("weight"), &displays.MassUp),
		)}
}
