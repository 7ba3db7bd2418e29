package bracing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	windTitle  = calc.Text("Forces on one brace")
	windDesc   = calc.Text("Wind of {line} on the wall. Push along the brace {push}, uplift at the anchor {uplift}.")
	windArrow  = calc.Text("wind {line}")
	windPush   = calc.Text("push or pull {push}")
	windUplift = calc.Text("uplift {uplift}")
	windLevel  = calc.Text("level {level}")
)

// The frame of the drawing: a section, the brace to the right of the wall.
const (
	windWallX = 118.0
	windThick = 20.0
	windTop   = 40.0
	windBase  = 220.0
	windMost  = 322.0 // rightmost place of a brace foot
	windTall  = 306.0
)

func drawWind(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	height, run, below := in.Num("height"), in.Num("run"), in.Num("below")
	scale := math.Min((windBase-windTop)/height, (windMost-windWallX-windThick)/run)
	scale = math.Min(scale, 34/math.Max(below, 0.01))
	top, hold := windBase-scale*height, windBase-scale*in.Num("attach")
	face := windWallX + windThick
	foot := figure.Point{X: face + scale*run, Y: windBase + scale*below}
	role := figure.Foam
	if in.Choice("wall") == "fresh" {
		role = figure.Concrete
	}
	nodes := []figure.Node{
		figure.Segment(figure.Ground, figure.Point{X: 10, Y: windBase}, figure.Point{X: face + 8, Y: windBase}),
		figure.Segment(figure.Ground, figure.Point{X: face + 8, Y: foot.Y}, figure.Point{X: figure.ChartWidth - 6, Y: foot.Y}),
		figure.Rect(role, figure.Point{X: windWallX, Y: top}, windThick, windBase-top),
		figure.Segment(figure.Steel, figure.Point{X: face, Y: hold}, foot),
		figure.Rect(figure.Ground, figure.Point{X: foot.X - 5, Y: foot.Y - 5}, 10, 10),
	}
	for k := 0.0; k < 4; k++ {
		nodes = append(nodes, windBlow(windWallX-6, top+8+k*(windBase-top-16)/3)...)
	}
	if withPlanks(in) {
		out, wide := scale*in.Num("out"), scale*in.Num("width")
		left := math.Max(face, face+out-wide/2)
		wide = math.Min(wide, figure.ChartWidth-left)
		nodes = append(nodes, figure.Segment(figure.Ink, figure.Point{X: face, Y: hold}, figure.Point{X: left + wide, Y: hold}),
			figure.Rect(figure.Steel, figure.Point{X: left, Y: hold - 5}, wide, 5))
	}
	line, push := calc.Amount("line", res.Out.Num("line"), &lineLoadShow), calc.Amount("push", res.Out.Num("push"), &displays.Force)
	uplift := calc.Amount("uplift", res.Out.Num("uplift"), &displays.Force)
	nodes = append(nodes,
		figure.Text(figure.Label, figure.Point{X: 10, Y: 20}, figure.Start, v.Say(windArrow, line)),
		figure.Text(figure.Number, figure.Point{X: 170, Y: 272}, figure.Middle, v.Say(windPush, push)),
		figure.Text(figure.Number, figure.Point{X: 10, Y: 296}, figure.Start, v.Say(windUplift, uplift)),
		figure.Text(figure.Number, figure.Point{X: 330, Y: 296}, figure.End, v.Say(windLevel, calc.Amount("level", res.Out.Num("level"), &displays.Force))))
	return figure.Drawing{Width: figure.ChartWidth, Height: windTall, Title: v.Say(windTitle), Desc: v.Say(windDesc, line, push, uplift), Nodes: nodes}
}

// windBlow is one arrow of the wind, its tip at x.
func windBlow(x, y float64) []figure.Node {
	return []figure.Node{
		figure.Segment(figure.Ink, figure.Point{X: x - 60, Y: y}, figure.Point{X: x, Y: y}),
		figure.Polyline(figure.Ink, figure.Point{X: x - 7, Y: y - 5}, figure.Point{X: x, Y: y}, figure.Point{X: x - 7, Y: y + 5}),
	}
}
