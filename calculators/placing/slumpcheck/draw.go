package slumpcheck

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title      = calc.Text("Slump against what goes in the wall")
	desc       = calc.Text("Dashed: at most {limit} goes in the wall.")
	labelOrder = calc.Text("By the order, at most")
	labelChute = calc.Text("At the chute")
	labelHose  = calc.Text("At the hose")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	limit := res.Out.Num("wall-most")
	text := ""
	var bars []figure.Bar
	add := func(name calc.Text, size float64, role figure.Role) {
		if calc.Over(size, limit) && role != figure.Foam {
			role = figure.Beyond
		}
		s := placing.Write(v, size, &reading)
		bars = append(bars, figure.Bar{Role: role, Name: v.Say(name), Text: s, Size: size})
		text += v.Say(name) + ": " + s + ". "
	}
	add(labelOrder, res.Out.Num("most"), figure.Foam)
	add(labelChute, res.Out.Num("goes-by"), figure.Concrete)
	if in.Has("hose") {
		add(labelHose, in.Num("hose"), figure.Concrete)
	}
	nodes, foot := figure.Bars(0, bars, limit)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: text + v.Say(desc, calc.Amount("limit", limit, &slump))}
}
