package windowsupports

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/ties"
)

const (
	title = calc.Text("Frame with its supports")
	desc  = calc.Text(
		"Opening {width} by {height}. Load on the head {head}, under the sill {sill}. Posts {posts}, spreaders " +
			"{spreaders}, at most {spacing} apart.",
	)
	labelHead    = calc.Text("Head: {head}")
	labelSill    = calc.Text("Jamb foot and sill: {sill}")
	labelCounts  = calc.Text("Posts: {posts}, spreaders: {spreaders}")
	labelSpacing = calc.Text("At most {spacing} apart")
)

// draw shows the frame in elevation, its supports and the forces on it. A refused
// case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const wide, tall, foot = 200.0, 160.0, 230.0
	scale := math.Min(wide/in.Num("width"), tall/in.Num("height"))
	w, h := scale*in.Num("width"), scale*in.Num("height")
	left, top := (figure.ChartWidth-w)/2, 36+(tall-h)/2
	rows := res.Out.Rows("sides")
	slots := []calc.Slot{
		calc.Amount(
			"width",
			in.Num("width"),
			&displays.Inches,
		), calc.Amount("height", in.Num("height"), &displays.Inches),
		calc.Amount("head", rows[0].Num("load"), &lineLoad), calc.Amount("sill", rows[2].Num("load"), &lineLoad),
		calc.Amount(
			"posts",
			res.Out.Num("posts"),
			&displays.Count,
		), calc.Amount("spreaders", res.Out.Num("spreaders"), &displays.Count),
		calc.Amount("spacing", res.Out.Num("spacing"), &displays.InchesAtMost),
	}
	nodes := []figure.Node{
		figure.Rect(figure.Concrete, figure.Point{X: 10, Y: 6}, figure.ChartWidth-20, foot-6),
		figure.Rect(figure.Opening, figure.Point{X: left, Y: top}, w, h),
	}
	posts, spreaders := positions(res.Out.Num("posts")), positions(res.Out.Num("spreaders"))
	for _, s := range posts {
		x := left + float64(w*s)
		nodes = append(nodes, figure.Segment(figure.Steel, figure.Point{X: x, Y: top}, figure.Point{X: x, Y: top + h}))
	}
	for _, s := range spreaders {
		y := top + float64(h*s)
		nodes = append(
			nodes,
			figure.Segment(figure.Steel, figure.Point{X: left, Y: y}, figure.Point{X: left + w, Y: y}),
		)
	}
	mid, low := left+w/2, top+float64(h*0.8)
	nodes = append(nodes,
		ties.Arrow(figure.Point{X: mid, Y: top - 22}, figure.Point{X: mid, Y: top - 2}),
		ties.Arrow(figure.Point{X: mid, Y: top + h + 22}, figure.Point{X: mid, Y: top + h + 2}),
		ties.Arrow(figure.Point{X: left - 26, Y: low}, figure.Point{X: left - 2, Y: low}),
		ties.Arrow(figure.Point{X: left + w + 26, Y: low}, figure.Point{X: left + w + 2, Y: low}))
	y := foot
	for i, text := range []calc.Text{labelCounts, labelSpacing, labelHead, labelSill} {
		y += 20
		role := figure.Label
		if i < 2 {
			role = figure.Number
		}
		nodes = append(nodes, figure.Text(role, figure.Point{X: 10, Y: y}, figure.Start, v.Say(text, slots...)))
	}
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: y + 10,
		Title:  v.Say(title),
		Desc:   v.Say(desc, slots...),
		Nodes:  nodes,
	}
}

// positions returns the positions of n supports as fractions of the side. At
// most 24 are drawn.
func positions(n float64) []float64 {
	count := int(math.Min(n, 24))
	at := make([]float64, count)
	for i := range at {
		at[i] = float64(i+1) / float64(count+1)
	}
	return at
}
