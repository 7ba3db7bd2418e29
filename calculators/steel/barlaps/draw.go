package barlaps

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/steel"
)

const (
	title        = calc.Text("Laps by each rule")
	desc         = calc.Text("Class B or table laps of {bar}, from {low} to {high}. None is picked.")
	labelDrawing = calc.Text("Dashed: the drawing's {drawn}")
	labelNoLaps  = calc.Text("No laps in bars this large")
)

// draw shows the laps of every rule on one scale, and the lap of the drawing as a
// dashed line. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	low, high := math.Inf(1), 0.0
	for _, row := range res.Out.Rows("laps") {
		column := "lap-b"
		if !row.Has(column) {
			column = "development"
		}
		x := row.Num(column)
		low, high = math.Min(low, x), math.Max(high, x)
		for _, o := range rules {
			if o.ID == row.Choice("rule") {
				bars = append(
					bars,
					figure.Bar{
						Role: figure.Steel,
						Name: v.Say(o.Label),
						Text: quantity.Format(x, length, v.Style),
						Size: x,
					},
				)
			}
		}
	}
	nodes, foot := figure.Bars(0, bars, in.Num("drawn"))
	line := ""
	switch {
	case steel.BarOf(in, "bar").Diameter > largestBar:
		line = v.Say(labelNoLaps)
	case in.Has("drawn"):
		line = v.Say(labelDrawing, calc.Amount("drawn", in.Num("drawn"), &length))
	}
	if line != "" {
		nodes = append(nodes, figure.Text(figure.Limit, figure.Point{X: 10, Y: foot + 8}, figure.Start, line))
		foot += 18
	}
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.WordSlot("bar", v.Write(in.Fields()[0], in.At(0))),
			calc.Amount("low", low, &length),
			calc.Amount("high", high, &length),
		)}
}
