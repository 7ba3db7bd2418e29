package radiuswall

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/geometry"
)

const (
	curveDrawTitle = calc.Text("Curved wall from above")
	curveDrawDesc  = calc.Text(
		"The wall turns {angle} at a radius of {radius}. It takes {cuts} cuts, {spacing} apart, and each closes {gap}.",
	)
	curveDraw        = calc.Text("Radius {radius} · angle {angle}")
	curveDrawChord   = calc.Text("Chord {chord} · rise {rise}")
	curveDrawOutside = calc.Text("Core outside {out} · inside {in}")
	curveDrawCuts    = calc.Text("{cuts} cuts, {spacing} apart, close {gap}")
)

// The frame of the plan, in user units, and the number of segments of an arc.
const (
	planWide  = 300.0
	planTall  = 170.0
	planTop   = 12.0
	planSteps = 48
	planCuts  = 90 // more cuts than these would overlap
)

// plan maps points of the curved wall to the page, its middle axis upward.
type plan struct {
	half    float64 // half the angle, rad
	scale   float64
	x, y    float64 // of the centre of the circle on the page
	in, out float64 // radii of the form's faces, m
	foot    float64 // y of the lower edge of the wall on the page
}

// newPlan returns the plan of an angle, in radians, between the radii in and out,
// in m, scaled to the drawing.
func newPlan(angle, in, out float64) plan {
	p := plan{half: angle / 2, in: in, out: out}
	wide := out
	if p.half < math.Pi/2 {
		wide = out * math.Sin(p.half)
	}
	low := math.Min(in*math.Cos(p.half), out*math.Cos(p.half))
	p.scale = math.Min(planWide/(2*wide), planTall/(out-low))
	p.x = figure.ChartWidth / 2
	p.y = planTop + float64(out*p.scale)
	p.foot = planTop + float64((out-low)*p.scale)
	return p
}

// at returns the point at a radius, in m, and an angle, in radians from the
// middle.
func (p plan) at(radius, angle float64) figure.Point {
	return figure.Point{
		X: p.x + float64(radius*p.scale*math.Sin(angle)),
		Y: p.y - float64(radius*p.scale*math.Cos(angle)),
	}
}

// ring returns the area between two radii, in m.
func (p plan) ring(role figure.Role, in, out float64) figure.Node {
	points := make([]figure.Point, 0, 2*planSteps+2)
	for i := 0; i <= planSteps; i++ {
		points = append(points, p.at(out, p.half*(2*float64(i)/planSteps-1)))
	}
	for i := planSteps; i >= 0; i-- {
		points = append(points, p.at(in, p.half*(2*float64(i)/planSteps-1)))
	}
	return figure.Polygon(role, points...)
}

// drawCurvedWall draws the wall from above with its cuts and chord, and the
// numbers below. A refused case gives an empty drawing.
func drawCurvedWall(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	out := res.Out
	core, foam, inner := in.Num("core"), in.Num("foam"), out.Num("radius-inside")
	p := newPlan(out.Num("curve-angle"), inner, inner+core+2*foam)
	nodes := []figure.Node{p.ring(figure.Foam, p.in, p.out), p.ring(figure.Concrete, p.in+foam, p.out-foam)}
	if n := out.Num("cuts"); n <= planCuts {
		for i := 0.5; i < n; i++ {
			angle := p.half * (2*i/n - 1)
			nodes = append(nodes,
				figure.Segment(figure.Ink, p.at(p.in, angle), p.at(p.in+math.Max(foam, core/3), angle)))
		}
	}
	r := out.Num("curve-radius")
	nodes = append(nodes, figure.Segment(figure.Measure, p.at(r, -p.half), p.at(r, p.half)))
	slots := []calc.Slot{
		calc.Amount("radius", r, &displays.Wall), calc.Amount("angle", out.Num("curve-angle"), &geometry.TurnAngle),
		calc.Amount("chord", out.Num("curve-chord"),
			&displays.Wall), calc.Amount("rise", out.Num("curve-rise"), &displays.Wall),
		calc.Amount("out", out.Num("core-outside"),
			&displays.Wall), calc.Amount("in", out.Num("core-inside"), &displays.Wall),
		calc.Amount("cuts", out.Num("cuts"),
			&displays.Count), calc.Amount("spacing", out.Num("cut-spacing"), &displays.Part),
		calc.Amount("gap", out.Num("cut-gap"), &displays.Part),
	}
	y := p.foot + 8
	for _, t := range []calc.Text{curveDraw, curveDrawChord, curveDrawOutside, curveDrawCuts} {
		y += geometry.LineStep
		nodes = append(nodes,
			figure.Text(figure.Label, figure.Point{X: geometry.FrameMargin, Y: y}, figure.Start, v.Say(t, slots...)))
	}
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: y + 10,
		Title:  v.Say(curveDrawTitle),
		Desc:   v.Say(curveDrawDesc, slots...),
		Nodes:  nodes,
	}
}
