package evaporation

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/weather"
)

const (
	sayDryTitle = calc.Text("Evaporation by each equation")
	sayDryDesc  = calc.Text("Uno gives {uno} and Menzel {menzel}. The dashed line is the limit of {limit}.")
	sayUno      = calc.Text("Uno, decides")
	sayMenzel   = calc.Text("Menzel")
	sayUnoSI    = calc.Text("Uno, rounded SI form")
)

func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	out, limit := res.Out, res.Out.Num("limit")
	bar := func(name calc.Text, id string) figure.Bar {
		role := figure.Within
		if !calc.Under(out.Num(id), limit) {
			role = figure.Beyond
		}
		return figure.Bar{Role: role, Name: v.Say(name), Text: weather.Amount(v, out, id), Size: out.Num(id)}
	}
	nodes, foot := figure.Bars(
		0,
		[]figure.Bar{bar(sayUno, "rate"), bar(sayMenzel, "menzel"), bar(sayUnoSI, "uno-si")},
		limit,
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(sayDryTitle), Nodes: nodes,
		Desc: v.Say(
			sayDryDesc,
			calc.WordSlot("uno", weather.Amount(v, out, "rate")),
			calc.WordSlot("menzel", weather.Amount(v, out, "menzel")),
			calc.WordSlot("limit", weather.Amount(v, out, "limit")),
		)}
}
