package windonwall

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	title       = calc.Text("Forces on one brace")
	desc        = calc.Text("Wind of {line} on the wall. Push along the brace {push}, uplift at the anchor {uplift}.")
	labelWind   = calc.Text("wind {line}")
	labelPush   = calc.Text("push or pull {push}")
	labelUplift = calc.Text("uplift {uplift}")
	labelLevel  = calc.Text("level {level}")
)

// Layout of the drawing: a section, the brace to the right of the wall.
const (
	wallX = 118.0
	thick = 20.0
	top   = 40.0
	base  = 220.0
	most  = 322.0 // greatest x of a brace foot
	tall  = 306.0
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	height, run, below := in.Num("height"), in.Num("run"), in.Num("below")
	scale := math.Min((base-top)/height, (most-wallX-thick)/run)
	scale = math.Min(scale, 34/math.Max(below, 0.01))
	top, hold := base-scale*height, base-scale*in.Num("attach")
	face := wallX + thick
	foot := figure.Point{X: face + scale*run, Y: base + scale*below}
	role := figure.Foam
	if in.Choice("wall") == "fresh" {
		role = figure.Concrete
	}
	nodes := []figure.Node{
		figure.Segment(figure.Ground, figure.Point{X: 10, Y: base}, figure.Point{X: face + 8, Y: base}),
		figure.Segment(
			figure.Ground,
			figure.Point{X: face + 8, Y: foot.Y},
			figure.Point{X: figure.ChartWidth - 6, Y: foot.Y},
		),
		figure.Rect(role, figure.Point{X: wallX, Y: top}, thick, base-top),
		figure.Segment(figure.Steel, figure.Point{X: face, Y: hold}, foot),
		figure.Rect(figure.Ground, figure.Point{X: foot.X - 5, Y: foot.Y - 5}, 10, 10),
	}
	for k := 0.0; k < 4; k++ {
		nodes = append(nodes, blow(wallX-6, top+8+k*(base-top-16)/3)...)
	}
	if withPlanks(in) {
		out, wide := scale*in.Num("out"), scale*in.Num("width")
		left := math.Max(face, face+out-wide/2)
		wide = math.Min(wide, figure.ChartWidth-left)
		nodes = append(
			nodes,
			figure.Segment(figure.Ink, figure.Point{X: face, Y: hold}, figure.Point{X: left + wide, Y: hold}),
			figure.Rect(figure.Steel, figure.Point{X: left, Y: hold - 5}, wide, 5),
		)
	}
	line, push := calc.Amount(
		"line",
		res.Out.Num("line"),
		&showLineLoad,
	), calc.Amount(
		"push",
		res.Out.Num("push"),
		&displays.Force,
	)
	uplift := calc.Amount("uplift", res.Out.Num("uplift"), &displays.Force)
	nodes = append(
		nodes,
		figure.Text(figure.Label, figure.Point{X: 10, Y: 20}, figure.Start, v.Say(labelWind, line)),
		figure.Text(figure.Number, figure.Point{X: 170, Y: 272}, figure.Middle, v.Say(labelPush, push)),
		figure.Text(figure.Number, figure.Point{X: 10, Y: 296}, figure.Start, v.Say(labelUplift, uplift)),
		figure.Text(
			figure.Number,
			figure.Point{X: 330, Y: 296},
			figure.End,
			v.Say(labelLevel, calc.Amount("level", res.Out.Num("level"), &displays.Force)),
		),
	)
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: tall,
		Title:  v.Say(title),
		Desc:   v.Say(desc, line, push, uplift),
		Nodes:  nodes,
	}
}

// blow returns one arrow of the wind, its tip at x, y.
func blow(x, y float64) []figure.Node {
	return []figure.Node{
		figure.Segment(figure.Ink, figure.Point{X: x - 60, Y: y}, figure.Point{X: x, Y: y}),
		figure.Polyline(
			figure.Ink,
			figure.Point{X: x - 7, Y: y - 5},
			figure.Point{X: x, Y: y},
			figure.Point{X: x - 7, Y: y + 5},
		),
	}
}
