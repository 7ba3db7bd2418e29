package lasttruck

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title      = calc.Text("Open wall against what is on hand")
	labelNeed  = calc.Text("Open wall, with waste")
	labelDrums = calc.Text("Counted from the drums")
	labelOrder = calc.Text("To call")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	desc := ""
	for _, part := range []struct {
		name calc.Text
		role figure.Role
		size float64
	}{
		{labelNeed, figure.Foam, res.Out.Num("with-waste-m")},
		{labelDrums, figure.Concrete, res.Out.Num("usable-m")},
		{labelOrder, figure.Concrete, res.Out.Num("order-m")},
	} {
		size := placing.Write(v, part.size, &displays.Volume)
		bars = append(bars, figure.Bar{Role: part.role, Name: v.Say(part.name), Text: size, Size: part.size})
		desc += v.Say(part.name) + ": " + size + ". "
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Desc: desc, Nodes: nodes}
}
