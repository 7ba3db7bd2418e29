package rateofrise

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
	"coursebook/calculators/weather"
)

const (
	title = calc.Text("One lift against the joint window")
	desc  = calc.Text(
		"Concrete is {age} old when placed. One pass takes {loop}. The joint window is {window}.",
	)
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	age, loop, window := in.Num("age"), res.Out.Num("loop-time"), weather.JointWindow(in, "window")
	bars := []figure.Bar{
		{Role: figure.Foam, Name: v.Say(labelAge), Text: placing.Write(v, age, &displays.Minutes), Size: age},
		{Role: figure.Concrete, Name: v.Say(labelLoop), Text: placing.Write(v, loop, &placing.MinutesUp), Size: loop},
	}
	if res.Out.Has("return-age") {
		role := figure.Within
		if res.Out.Choice("verdict") == tooLate {
			role = figure.Beyond
		}
		back := res.Out.Num("return-age")
		bars = append(
			bars,
			figure.Bar{
				Role: role,
				Name: v.Say(labelReturn),
				Text: placing.Write(v, back, &placing.MinutesUp),
				Size: back,
			},
		)
	}
	bars = append(
		bars,
		figure.Bar{
			Role: figure.Opening,
			Name: v.Say(weather.LabelWindow),
			Text: placing.Write(v, window, &displays.Minutes),
			Size: window,
		},
	)
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Amount("age", age, &displays.Minutes),
			calc.Amount("loop", loop, &placing.MinutesUp),
			calc.Amount("window", window, &displays.Minutes),
		)}
}
