package pumpsetup

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/placing"
)

const (
	title    = calc.Text("A pad beside the cut")
	desc     = calc.Text("A cut {depth} deep. The pad is {setback} or more from its edge.")
	labelPad = calc.Text("pad")
)

// draw shows the cut in section with the nearest pad, on one scale. Without a cut
// there is only the pad. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const edge, top, wide, bottom = 70.0, 60.0, 180.0, 200.0
	depth, back := in.Num("depth"), res.Out.Num("setback")
	scale := math.Min(wide/math.Max(back, 0.5), (bottom-top-10)/math.Max(depth, 0.5))
	pad := edge + float64(scale*back)
	foot := top + float64(scale*depth)
	nodes := []figure.Node{
		figure.Polygon(figure.Ground, figure.Point{X: 0, Y: foot}, figure.Point{X: edge, Y: foot},
			figure.Point{X: edge, Y: top}, figure.Point{X: figure.ChartWidth, Y: top},
			figure.Point{X: figure.ChartWidth, Y: bottom}, figure.Point{X: 0, Y: bottom}),
		figure.Rect(figure.Foam, figure.Point{X: pad, Y: top - 8}, 46, 8),
		figure.Segment(figure.Steel, figure.Point{X: pad + 23, Y: 8}, figure.Point{X: pad + 23, Y: top - 8}),
		figure.Text(figure.Label, figure.Point{X: pad + 30, Y: top - 14}, figure.Start, v.Say(labelPad)),
	}
	if back > 0 {
		nodes = append(nodes, figure.Dimension(figure.Point{X: edge, Y: top - 20}, figure.Point{X: pad, Y: top - 20},
			placing.Write(v, back, &distance)))
	}
	if depth > 0 {
		nodes = append(nodes, figure.Dimension(figure.Point{X: 14, Y: top}, figure.Point{X: 14, Y: foot},
			v.Write(inputs[0], calc.Num(depth))))
	}
	return figure.Drawing{Width: figure.ChartWidth, Height: bottom, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(desc, calc.Amount("depth", depth, inputs[0].Display), calc.Amount("setback", back, &distance))}
}
