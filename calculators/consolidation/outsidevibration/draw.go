package outsidevibration

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	desc = calc.Text("Peak shake of {a} times gravity at the tool. The least quoted for concrete itself is " +
		"{least}.")
	title        = calc.Text("Peak shake, times gravity")
	labelTool    = calc.Text("At the tool")
	labelLeast   = calc.Text("Least quoted, in concrete")
	labelFoam    = calc.Text("Behind the foam")
	labelUnknown = calc.Text("not known")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	a := res.Out.Num("acceleration") * gravity
	g := func(x float64) string { return quantity.Format(x/gravity, displays.Tenths, v.Style) }
	bars := []figure.Bar{
		{Role: figure.Steel, Name: v.Say(labelTool), Text: g(a), Size: a},
		{Role: figure.Concrete, Name: v.Say(labelLeast), Text: g(leastG), Size: leastG},
	}
	if !stiff(in) {
		bars = append(bars, figure.Bar{Role: figure.Foam, Name: v.Say(labelFoam), Text: v.Say(labelUnknown)})
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(desc, calc.WordSlot("a", g(a)), calc.WordSlot("least", g(leastG)))}
}
