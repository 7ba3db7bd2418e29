package batterypacks

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title        = calc.Text("Packs with and without charging")
	labelWith    = calc.Text("Chargers on site")
	labelWithout = calc.Text("No charging")
	desc         = calc.Text("{with} packs with charging, {without} without, spare not counted. A pack lasts {lasts}.")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	count := func(id string) string { return quantity.Format(res.Out.Num(id), displays.Count, v.Style) }
	nodes, foot := figure.Bars(0, []figure.Bar{
		{Role: figure.Steel, Name: v.Say(labelWith), Text: count("with"), Size: res.Out.Num("with")},
		{Role: figure.Concrete, Name: v.Say(labelWithout), Text: count("without"), Size: res.Out.Num("without")},
	}, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(desc, calc.WordSlot("with", count("with")), calc.WordSlot("without", count("without")),
			calc.Amount("lasts", res.Out.Num("lasts"), &displays.Minutes))}
}
