package hotweather

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
	"coursebook/calculators/weather"
)

const (
	title = calc.Text("Age of the load against its limit")
	desc  = calc.Text("The load is {age} old and empty at {empty}; the limit that counts is {limit}, so {left} are " +
		"left.")
	labelAge   = calc.Text("Age now")
	labelEmpty = calc.Text("Age when it is empty")
	labelLimit = calc.Text("Limit that counts")
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	age, limit := in.Num("age"), res.Out.Num("limit")
	empty := age + res.Out.Num("empty-time")
	role := func(age float64) figure.Role {
		if calc.Over(age, limit) {
			return figure.Beyond
		}
		return figure.Within
	}
	ageText, limitText := weather.Amount(v, in, "age"), weather.Amount(v, res.Out, "limit")
	nodes, foot := figure.Bars(0, []figure.Bar{
		{Role: role(age), Name: v.Say(labelAge), Text: ageText, Size: age},
		{Role: role(empty), Name: v.Say(labelEmpty), Text: placing.Write(v, empty, &placing.MinutesUp), Size: empty},
		{Role: figure.Concrete, Name: v.Say(labelLimit), Text: limitText, Size: limit},
	}, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.WordSlot("age", ageText),
			calc.WordSlot("empty", placing.Write(v, empty, &placing.MinutesUp)),
			calc.WordSlot("limit", limitText),
			calc.WordSlot("left", weather.Amount(v, res.Out, "left")),
		)}
}
