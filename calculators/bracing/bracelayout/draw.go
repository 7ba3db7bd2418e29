package bracelayout

import (
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	title        = calc.Text("Braces from above")
	desc         = calc.Text("A wall {length} long with {count} braces. The largest gap is {gap}.")
	labelOpening = calc.Text("opening")
	labelStack   = calc.Text("stacked joints")
	labelGap     = calc.Text("Largest gap {gap}")
)

// Layout of the drawing: the wall in plan, its braces below it.
const (
	left   = 14.0
	wide   = figure.ChartWidth - 2*left
	wall   = 44.0
	thick  = 18.0
	foot   = 104.0
	height = 172.0
	digits = 18.0 // width of a number
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	length := in.Num("length")
	x := func(at float64) float64 { return left + wide*at/length }
	nodes := []figure.Node{
		figure.Dimension(
			figure.Point{X: left, Y: 28},
			figure.Point{X: left + wide, Y: 28},
			v.Write(inputs[0], calc.Num(length)),
		),
		figure.Rect(figure.Foam, figure.Point{X: left, Y: wall}, wide, thick),
	}
	for _, o := range in.Rows("openings") {
		from := x(o.Num("start"))
		nodes = append(
			nodes,
			figure.Rect(figure.Opening, figure.Point{X: from, Y: wall}, x(o.Num("start")+o.Num("width"))-from, thick),
		)
	}
	for _, s := range in.Rows("stacks") {
		at := x(s.Num("at"))
		nodes = append(
			nodes,
			figure.Segment(figure.Limit, figure.Point{X: at, Y: wall - 6}, figure.Point{X: at, Y: wall + thick + 6}),
		)
	}
	nodes = append(nodes, braceMarks(res.Out.Rows("braces"), x)...)
	gap := calc.Amount("gap", res.Out.Num("largest"), &displays.Wall)
	nodes = append(nodes,
		figure.Rect(figure.Opening, figure.Point{X: left, Y: 134}, 22, 10),
		figure.Text(figure.Label, figure.Point{X: left + 30, Y: 144}, figure.Start, v.Say(labelOpening)),
		figure.Segment(figure.Limit, figure.Point{X: 166, Y: 130}, figure.Point{X: 166, Y: 148}),
		figure.Text(figure.Label, figure.Point{X: 176, Y: 144}, figure.Start, v.Say(labelStack)),
		figure.Text(figure.Number, figure.Point{X: left, Y: 166}, figure.Start, v.Say(labelGap, gap)))
	return figure.Drawing{Width: figure.ChartWidth, Height: height, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Amount("length", length, &displays.Wall),
			calc.Count("count", len(res.Out.Rows("braces"))),
			gap,
		)}
}

// braceMarks returns the drawing of each brace with its foot, and with its number
// if that does not overlap the last one. x converts a position in m to the
// drawing.
func braceMarks(braces []calc.Case, x func(float64) float64) (nodes []figure.Node) {
	free := 0.0
	for i, b := range braces {
		at := x(b.Num("at"))
		nodes = append(nodes,
			figure.Segment(figure.Steel, figure.Point{X: at, Y: wall + thick}, figure.Point{X: at, Y: foot}),
			figure.Rect(figure.Ground, figure.Point{X: at - 4, Y: foot - 4}, 8, 8))
		if at >= free {
			nodes = append(
				nodes,
				figure.Text(figure.Number, figure.Point{X: at, Y: foot + 20}, figure.Middle, strconv.Itoa(i+1)),
			)
			free = at + digits
		}
	}
	return nodes
}
