package bracing

import (
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	layoutTitle = calc.Text("Braces from above")
	layoutDesc  = calc.Text("A wall {length} long with {count} braces. The largest gap is {gap}.")
	layoutOpen  = calc.Text("opening")
	layoutStack = calc.Text("stacked joints")
	layoutGap   = calc.Text("Largest gap {gap}")
)

// The frame of the drawing: the wall lies level, its braces below it.
const (
	layoutLeft   = 14.0
	layoutWide   = figure.ChartWidth - 2*layoutLeft
	layoutWall   = 44.0
	layoutThick  = 18.0
	layoutFoot   = 104.0
	layoutHeight = 172.0
	layoutDigits = 18.0 // what a number needs beside the last one
)

func drawLayout(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	length := in.Num("length")
	x := func(at float64) float64 { return layoutLeft + layoutWide*at/length }
	nodes := []figure.Node{
		figure.Dimension(figure.Point{X: layoutLeft, Y: 28}, figure.Point{X: layoutLeft + layoutWide, Y: 28}, v.Write(layoutIn[0], calc.Num(length))),
		figure.Rect(figure.Foam, figure.Point{X: layoutLeft, Y: layoutWall}, layoutWide, layoutThick),
	}
	for _, o := range in.Rows("openings") {
		from := x(o.Num("start"))
		nodes = append(nodes, figure.Rect(figure.Opening, figure.Point{X: from, Y: layoutWall}, x(o.Num("start")+o.Num("width"))-from, layoutThick))
	}
	for _, s := range in.Rows("stacks") {
		at := x(s.Num("at"))
		nodes = append(nodes, figure.Segment(figure.Limit, figure.Point{X: at, Y: layoutWall - 6}, figure.Point{X: at, Y: layoutWall + layoutThick + 6}))
	}
	nodes = append(nodes, braceMarks(res.Out.Rows("braces"), x)...)
	gap := calc.Amount("gap", res.Out.Num("largest"), &displays.Wall)
	nodes = append(nodes,
		figure.Rect(figure.Opening, figure.Point{X: layoutLeft, Y: 134}, 22, 10),
		figure.Text(figure.Label, figure.Point{X: layoutLeft + 30, Y: 144}, figure.Start, v.Say(layoutOpen)),
		figure.Segment(figure.Limit, figure.Point{X: 166, Y: 130}, figure.Point{X: 166, Y: 148}),
		figure.Text(figure.Label, figure.Point{X: 176, Y: 144}, figure.Start, v.Say(layoutStack)),
		figure.Text(figure.Number, figure.Point{X: layoutLeft, Y: 166}, figure.Start, v.Say(layoutGap, gap)))
	return figure.Drawing{Width: figure.ChartWidth, Height: layoutHeight, Title: v.Say(layoutTitle), Nodes: nodes,
		Desc: v.Say(layoutDesc, calc.Amount("length", length, &displays.Wall), calc.Count("count", len(res.Out.Rows("braces"))), gap)}
}

// braceMarks draws each brace with its foot; its number only where there is
// room for it.
func braceMarks(braces []calc.Case, x func(float64) float64) (nodes []figure.Node) {
	free := 0.0
	for i, b := range braces {
		at := x(b.Num("at"))
		nodes = append(nodes,
			figure.Segment(figure.Steel, figure.Point{X: at, Y: layoutWall + layoutThick}, figure.Point{X: at, Y: layoutFoot}),
			figure.Rect(figure.Ground, figure.Point{X: at - 4, Y: layoutFoot - 4}, 8, 8))
		if at >= free {
			nodes = append(nodes, figure.Text(figure.Number, figure.Point{X: at, Y: layoutFoot + 20}, figure.Middle, strconv.Itoa(i+1)))
			free = at + layoutDigits
		}
	}
	return nodes
}
