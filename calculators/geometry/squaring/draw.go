package squaring

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/geometry"
)

const (
	drawTitle    = calc.Text("Rectangle and its diagonal")
	drawDesc     = calc.Text("Sides {a} and {b}. When square, the diagonal is {diagonal}.")
	drawSides    = calc.Text("a {a} · b {b}")
	drawLine     = calc.Text("Diagonal when square {diagonal}")
	drawShift    = calc.Text("Shift the end of b by {shift}")
	titleOutline = calc.Text("Outline from above")
	drawCloses   = calc.Text("The outline is {perimeter} long and misses its start by {gap}.")
	drawStart    = calc.Text("Start")
	drawGap      = calc.Text("Gap {gap}")
	drawLong     = calc.Text("Outline {perimeter}")
)

// The frame of both drawings, in user units.
const (
	layoutWide = 296.0
	layoutTall = 170.0
	layoutLeft = 22.0
	layoutTop  = 26.0
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	switch {
	case res.State != calc.OK:
		return figure.Drawing{}
	case outline(in):
		return drawOutline(v, in.Rows("runs"), res.Out)
	}
	return drawRectangle(v, in, res.Out)
}

// under returns nodes with lines of text below y, and the y of their lower edge.
func under(nodes []figure.Node, y float64, lines ...string) ([]figure.Node, float64) {
	for _, text := range lines {
		y += geometry.LineStep
		nodes = append(nodes,
			figure.Text(figure.Label, figure.Point{X: geometry.FrameMargin, Y: y}, figure.Start, text))
	}
	return nodes, y + 10
}

// drawRectangle draws the sides to scale, the diagonal, and the largest
// 3-4-5 triangle in the corner between a and b.
func drawRectangle(v calc.Locale, in, out calc.Case) figure.Drawing {
	a, b := in.Num("side-a"), in.Num("side-b")
	scale := math.Min(layoutWide/a, layoutTall/b)
	wide, tall := a*scale, b*scale
	base := layoutTop + tall
	corner := figure.Point{X: layoutLeft, Y: base}
	far := figure.Point{X: layoutLeft + wide, Y: base}
	nodes := []figure.Node{figure.Rect(figure.Ground, figure.Point{X: layoutLeft, Y: layoutTop}, wide, tall)}
	if rows := out.Rows("triples"); len(rows) > 0 {
		x, y := rows[0].Num("four")*scale, rows[0].Num("three")*scale
		if a < b {
			x, y = rows[0].Num("three")*scale, rows[0].Num("four")*scale
		}
		nodes = append(
			nodes,
			figure.Polygon(figure.Foam, corner, figure.Point{X: corner.X + x, Y: base},
				figure.Point{X: corner.X, Y: base - y}),
		)
	}
	nodes = append(nodes, figure.Segment(figure.Line, far, figure.Point{X: layoutLeft, Y: layoutTop}),
		figure.Text(figure.Label, figure.Point{X: layoutLeft + wide/2, Y: base + 16}, figure.Middle, "a"),
		figure.Text(figure.Label, figure.Point{X: layoutLeft - 6, Y: layoutTop + tall/2}, figure.End, "b"))
	slots := []calc.Slot{calc.Amount("a", a, &tapeFine), calc.Amount("b", b, &tapeFine),
		calc.Amount("diagonal", out.Num("diagonal"), &tapeFine), calc.Amount("shift", out.Num("shift"), &displays.Part)}
	lines := []string{v.Say(drawSides, slots...), v.Say(drawLine, slots...)}
	if out.Has("shift") {
		lines = append(lines, v.Say(drawShift, slots...))
		nodes = append(nodes, figure.Circle(figure.Beyond, figure.Point{X: layoutLeft, Y: layoutTop}, 5))
	}
	nodes, foot := under(nodes, base+20, lines...)
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot,
		Title:  v.Say(drawTitle),
		Desc:   v.Say(drawDesc, slots...),
		Nodes:  nodes,
	}
}

// drawOutline draws the runs to scale, start and end, and the gap.
func drawOutline(v calc.Locale, runs []calc.Case, out calc.Case) figure.Drawing {
	xs, ys, _ := outlinePoints(runs)
	var west, east, south, north float64
	for i := range xs {
		west, east = math.Min(west, xs[i]), math.Max(east, xs[i])
		south, north = math.Min(south, ys[i]), math.Max(north, ys[i])
	}
	scale := math.Min(layoutWide/math.Max(east-west, 1e-9), layoutTall/math.Max(north-south, 1e-9))
	points := make([]figure.Point, len(xs))
	for i := range xs {
		points[i] = figure.Point{
			X: layoutLeft + float64((xs[i]-west)*scale),
			Y: layoutTop + float64((north-ys[i])*scale),
		}
	}
	start, end := points[0], points[len(points)-1]
	side, text := figure.Start, start.X+10
	if start.X > figure.ChartWidth/2 {
		side, text = figure.End, start.X-10
	}
	slots := []calc.Slot{
		calc.Amount("gap", out.Num("gap"), &tapeFine),
		calc.Amount("perimeter", out.Num("perimeter"), &tapeFine),
	}
	nodes := []figure.Node{
		figure.Polyline(figure.Line, points...), figure.Segment(figure.Limit, end, start),
		figure.Circle(figure.Within, start, 5), figure.Circle(figure.Beyond, end, 4),
		figure.Text(figure.Label, figure.Point{X: text, Y: start.Y - 8}, side, v.Say(drawStart)),
	}
	nodes, foot := under(nodes, layoutTop+float64((north-south)*scale)+6, v.Say(drawLong, slots...),
		v.Say(drawGap, slots...))
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot,
		Title:  v.Say(titleOutline),
		Desc:   v.Say(drawCloses, slots...),
		Nodes:  nodes,
	}
}
