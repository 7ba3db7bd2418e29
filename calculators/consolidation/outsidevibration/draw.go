package outsidevibration

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	drawShook   = calc.Text("Peak acceleration of {a} at the tool. The least quoted for concrete itself is {least}.")
	drawShaking = calc.Text("Peak acceleration")
	drawAtTool  = calc.Text("At the tool")
	drawLeast   = calc.Text("Least quoted, in concrete")
	drawBehind  = calc.Text("Behind the foam")
	drawUnknown = calc.Text("not known")
)

func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	a := res.Out.Num("acceleration")
	g := func(x float64) string { return quantity.Format(x, showG, v.Style) }
	bars := []figure.Bar{
		{Role: figure.Steel, Name: v.Say(drawAtTool), Text: g(a), Size: a},
		{Role: figure.Concrete, Name: v.Say(drawLeast), Text: g(leastG), Size: leastG},
	}
	if !stiff(in) {
		bars = append(bars, figure.Bar{Role: figure.Foam, Name: v.Say(drawBehind), Text: v.Say(drawUnknown)})
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(drawShaking), Nodes: nodes,
		Desc: v.Say(drawShook, calc.WordSlot("a", g(a)), calc.WordSlot("least", g(leastG)))}
}
