package truckspacing

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title = calc.Text("Truck loads over time")
	desc  = calc.Text(
		"{trucks} trucks, one every {spacing}. The last of each is out {age} after loading starts.",
	)
	labelSpacing   = calc.Text("One truck every {spacing}")
	labelHaul      = calc.Text("Load, drive, wait")
	labelDischarge = calc.Text("Discharge")
)

// draw shows up to six trucks on one time axis, a row each: loading and driving as
// a line, discharge as a block. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const left, right, step, tall = 30.0, 330.0, 26.0, 14.0
	gap := res.Out.Num("spacing") + res.Out.Num("pump-wait")
	first, last := res.Out.Num("age-first"), res.Out.Num("age-last")
	rows := int(math.Min(res.Out.Num("loads"), 6))
	scale := (right - left) / (float64(float64(rows-1)*gap) + last)
	spacing := calc.Amount("spacing", gap, &displays.Minutes)
	nodes := []figure.Node{
		figure.Text(figure.Number, figure.Point{X: 10, Y: 16}, figure.Start, v.Say(labelSpacing, spacing)),
	}
	for i := range rows {
		y := 26 + float64(float64(i)*step)
		start := left + float64(float64(i)*gap*scale)
		out, end := start+float64(first*scale), math.Min(start+float64(last*scale), right)
		nodes = append(nodes,
			figure.Text(figure.Label, figure.Point{X: 10, Y: y + tall - 2}, figure.Start, strconv.Itoa(i+1)),
			figure.Segment(figure.Measure, figure.Point{X: start, Y: y + tall/2}, figure.Point{X: out, Y: y + tall/2}),
			figure.Rect(figure.Concrete, figure.Point{X: out, Y: y}, math.Max(end-out, 0), tall))
	}
	y := 26 + float64(float64(rows)*step) + 14
	nodes = append(nodes,
		figure.Segment(figure.Measure, figure.Point{X: 10, Y: y - 5}, figure.Point{X: 30, Y: y - 5}),
		figure.Text(figure.Label, figure.Point{X: 36, Y: y}, figure.Start, v.Say(labelHaul)),
		figure.Rect(figure.Concrete, figure.Point{X: 220, Y: y - tall + 2}, 20, tall),
		figure.Text(figure.Label, figure.Point{X: 246, Y: y}, figure.Start, v.Say(labelDischarge)))
	return figure.Drawing{Width: figure.ChartWidth, Height: y + 10, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Count("trucks", int(res.Out.Num("trucks"))),
			spacing,
			calc.Amount("age", last, &placing.MinutesUp),
		)}
}
