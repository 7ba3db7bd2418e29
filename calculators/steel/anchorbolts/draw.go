package anchorbolts

import (
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title      = calc.Text("The plates from above, with their bolts")
	desc       = calc.Text("{count} bolts in {length} of plate. The largest spacing in a piece is {gap}.")
	labelGap   = calc.Text("gap in the wall")
	labelCleat = calc.Text("cleat")
)

// draw shows the plates in plan, each bolt as a dot with its number where it does
// not overlap the last one.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const left, wide, top, tall, digits = 14.0, figure.ChartWidth - 28, 44.0, 18.0, 18.0
	whole := 0.0
	for _, p := range in.Rows("pieces") {
		whole += p.Num("length")
	}
	x := func(at float64) float64 { return left + wide*at/whole }
	nodes := []figure.Node{figure.Dimension(figure.Point{X: left, Y: 28}, figure.Point{X: left + wide, Y: 28},
		quantity.Format(whole, displays.Wall, v.Style))}
	at := 0.0
	for _, p := range in.Rows("pieces") {
		from := x(at)
		at += p.Num("length")
		nodes = append(nodes, figure.Rect(figure.Foam, figure.Point{X: from, Y: top}, x(at)-from, tall))
	}
	for _, g := range in.Rows("gaps") {
		from := x(g.Num("start"))
		nodes = append(nodes,
			figure.Rect(figure.Opening, figure.Point{X: from, Y: top}, x(g.Num("start")+g.Num("width"))-from, tall))
	}
	for _, c := range in.Rows("cleats") {
		if c.Num("at") <= whole {
			nodes = append(nodes, figure.Segment(figure.Limit, figure.Point{X: x(c.Num("at")), Y: top - 8},
				figure.Point{X: x(c.Num("at")), Y: top + tall + 8}))
		}
	}
	free := 0.0
	for i, b := range res.Out.Rows("bolts") {
		place := figure.Point{X: x(b.Num("at")), Y: top + tall/2}
		nodes = append(nodes, figure.Circle(figure.Steel, place, 3))
		if place.X >= free {
			nodes = append(nodes, figure.Text(figure.Number, figure.Point{X: place.X, Y: top + tall + 24},
				figure.Middle, strconv.Itoa(i+1)))
			free = place.X + digits
		}
	}
	nodes = append(nodes,
		figure.Rect(figure.Opening, figure.Point{X: left, Y: 100}, 22, 10),
		figure.Text(figure.Label, figure.Point{X: left + 30, Y: 110}, figure.Start, v.Say(labelGap)),
		figure.Segment(figure.Limit, figure.Point{X: 206, Y: 96}, figure.Point{X: 206, Y: 114}),
		figure.Text(figure.Label, figure.Point{X: 216, Y: 110}, figure.Start, v.Say(labelCleat)))
	return figure.Drawing{Width: figure.ChartWidth, Height: 122, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(desc, calc.Count("count", len(res.Out.Rows("bolts"))),
			calc.Amount("length", res.Out.Num("length"), &displays.Wall),
			calc.Amount("gap", res.Out.Num("largest"), &displays.Wall))}
}
