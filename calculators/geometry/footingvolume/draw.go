package footingvolume

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	drawTitle = calc.Text("Volume by kind, and the order")
	drawDesc  = calc.Text("Net volume {net-yd} or {net-m}. Order with waste, rounded up: {order-yd} or {order-m}.")
	drawOrder = calc.Text("Order")
	drawPair  = calc.Text("{yd} · {m}")
)

// drawFootings draws each kind and the order as bars on one scale. A refused case
// gives an empty drawing.
func drawFootings(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	for _, row := range res.Out.Rows("by-kind") {
		bars = append(
			bars,
			figure.Bar{Role: figure.Concrete, Name: v.Write(row.Fields()[0], row.Value("kind")), Size: row.Num("m"),
				Text: v.Say(drawPair, calc.Amount("yd", row.Num("yd"), &displays.CubicYards),
					calc.Amount("m", row.Num("m"), &displays.CubicMetres))},
		)
	}
	order := res.Out.Num("order-m")
	bars = append(bars, figure.Bar{Role: figure.Foam, Name: v.Say(drawOrder), Size: order,
		Text: v.Say(drawPair, calc.Amount("yd", order, &displays.CubicYardsUp),
			calc.Amount("m", order, &displays.CubicMetresUp))})
	nodes, foot := figure.Bars(0, bars, 0)
	net := res.Out.Num("net-m")
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(drawTitle), Nodes: nodes,
		Desc: v.Say(
			drawDesc,
			calc.Amount("net-yd", net, &displays.CubicYards),
			calc.Amount("net-m", net, &displays.CubicMetres),
			calc.Amount("order-yd", order, &displays.CubicYardsUp),
			calc.Amount("order-m", order, &displays.CubicMetresUp),
		)}
}
