package evaporation

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/weather"
)

const (
	title       = calc.Text("Evaporation by each equation")
	desc        = calc.Text("Uno gives {uno} and Menzel {menzel}. The dashed line is the limit of {limit}.")
	labelUno    = calc.Text("Uno, decides")
	labelMenzel = calc.Text("Menzel")
	labelUnoSI  = calc.Text("Uno, rounded SI form")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
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
		[]figure.Bar{bar(labelUno, "rate"), bar(labelMenzel, "menzel"), bar(labelUnoSI, "uno-si")},
		limit,
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.WordSlot("uno", weather.Amount(v, out, "rate")),
			calc.WordSlot("menzel", weather.Amount(v, out, "menzel")),
			calc.WordSlot("limit", weather.Amount(v, out, "limit")),
		)}
}
