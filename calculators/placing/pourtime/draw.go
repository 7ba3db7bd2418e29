package pourtime

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title     = calc.Text("The day of the pour")
	labelSpan = calc.Text("{from} to {to}")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	at := in.Num("start")
	var bars []figure.Bar
	desc := ""
	for _, part := range []struct {
		name calc.Text
		role figure.Role
		time float64
	}{
		{labelSetUp, figure.Foam, in.Num("set-up")},
		{labelPumping, figure.Concrete, res.Out.Num("pumping")},
		{labelCleanUp, figure.Foam, in.Num("clean-up")},
	} {
		span := v.Say(labelSpan, calc.WordSlot("from", clock(at)), calc.WordSlot("to", clock(at+part.time)))
		bars = append(bars, figure.Bar{Role: part.role, Name: v.Say(part.name), Text: span, Size: part.time})
		desc += v.Say(part.name) + ", " + placing.Write(v, part.time, &displays.Minutes) + ", " + span + ". "
		at += part.time
	}
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Desc: desc, Nodes: nodes}
}
