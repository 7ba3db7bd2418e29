package bartakeoff

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title = calc.Text("Bars in the wall")
	desc  = calc.Text(
		"{verticals} verticals and {courses} horizontals in each layer. {weight} with waste, {bars} stock bars.",
	)

	wallLeft, wallTop = 10.0, 8.0
	wallWide          = figure.ChartWidth - 2*wallLeft
	wallTall          = 170.0
	// mostLines is the most bars drawn in one direction.
	mostLines = 60
)

// draw shows one layer of bars to scale and the weight of each part. A refused
// case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	nodes, foot := elevation(v, in, res.Out)
	var bars []figure.Bar
	for _, row := range res.Out.Rows("parts") {
		for _, o := range parts {
			if o.ID == row.Choice("part") {
				bars = append(bars, figure.Bar{Role: figure.Steel, Name: v.Say(o.Label), Size: row.Num("weight"),
					Text: quantity.Format(row.Num("weight"), displays.MassUp, v.Style)})
			}
		}
	}
	chart, foot := figure.Bars(foot, bars, 0)
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot,
		Title:  v.Say(title),
		Nodes:  append(nodes, chart...),
		Desc: v.Say(
			desc,
			calc.Amount("verticals", res.Out.Num("verticals"), &displays.Count),
			calc.Amount("courses", res.Out.Num("courses"), &displays.Count),
			calc.Amount(
				"weight",
				res.Out.Num("weight"),
				&displays.MassUp,
			),
			calc.Amount("bars", res.Out.Num("stock-bars"), &displays.Count),
		),
	}
}

// elevation returns the wall to scale with one layer of its bars, and the y of its
// lower edge.
func elevation(v calc.Locale, in, out calc.Case) (nodes []figure.Node, foot float64) {
	length, height, above := in.Num("length"), in.Num("height"), in.Num("projection")
	scale := math.Min(wallWide/length, wallTall/(height+above))
	top, base := wallTop+float64(above*scale), wallTop+float64((height+above)*scale)
	nodes = append(nodes, figure.Rect(figure.Concrete, figure.Point{X: wallLeft, Y: top}, length*scale, height*scale))
	for _, at := range places(length, in.Num("first"), in.Num("spacing"), out.Num("verticals")) {
		x := wallLeft + float64(at*scale)
		nodes = append(nodes, figure.Segment(figure.Ink, figure.Point{X: x, Y: wallTop}, figure.Point{X: x, Y: base}))
	}
	first, course := in.Num("course-first"), in.Num("course")
	if n := in.Num("courses"); in.Has("courses") {
		// Counted rows have no positions: they are spread evenly.
		first, course = height/(2*n), height/n
	}
	for _, at := range places(height, first, course, out.Num("courses")) {
		y := base - float64(at*scale)
		nodes = append(
			nodes,
			figure.Segment(
				figure.Line,
				figure.Point{X: wallLeft, Y: y},
				figure.Point{X: wallLeft + float64(length*scale), Y: y},
			),
		)
	}
	foot = base + 28
	nodes = append(
		nodes,
		figure.Segment(
			figure.Measure,
			figure.Point{X: wallLeft, Y: base + 8},
			figure.Point{X: wallLeft + float64(length*scale), Y: base + 8},
		),
		figure.Text(
			figure.Label,
			figure.Point{X: wallLeft, Y: foot - 4},
			figure.Start,
			quantity.Format(length, displays.Wall, v.Style)+" × "+quantity.Format(height, displays.Wall, v.Style),
		),
	)
	return nodes, foot
}

// places returns the distances, in m, of count bars from one end, only some of
// them if there are more than mostLines.
func places(length, first, spacing, count float64) []float64 {
	step := math.Ceil(count / mostLines)
	var at []float64
	for i := 0.0; i < count; i += step {
		at = append(at, math.Min(first+float64(i*spacing), length-first))
	}
	return at
}
