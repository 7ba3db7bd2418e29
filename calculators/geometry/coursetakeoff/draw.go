package coursetakeoff

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/geometry"
)

const (
	drawTitle = calc.Text("Courses at a corner of the tallest wall")
	drawDesc  = calc.Text(
		"{courses} courses, the top one {top} high. {straights} straight, {left} left and {right} right blocks.",
	)
	drawCount = calc.Text("{courses} courses")
	drawTop   = calc.Text("top {top}")
	drawKey   = calc.Text("Corner block")
	drawFoam  = calc.Text("Straight block")
)

// The frame of the elevation, in user units.
const (
	stackWide = 215.0
	stackTall = 190.0
	stackTop  = 14.0
	stackLong = 2.5 // block lengths shown beside the corner block
)

// drawCourses draws the courses at one corner to scale, with corner blocks of
// alternating hand and the height of the cut course. A refused case gives an empty
// drawing.
func drawCourses(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	n, top, course := res.Out.Num("courses"), res.Out.Num("top"), in.Num("course")
	high := float64((n-1)*course) + top
	legs := [2]float64{in.Num("long-leg"), in.Num("short-leg")}
	// The left end of a wall is drawn, seen from outside: a left corner block
	// has its long leg round the corner, on the next wall.
	if in.Choice("start") == geometry.LeftHand {
		legs[0], legs[1] = legs[1], legs[0]
	}
	wide := math.Max(legs[0], legs[1]) + float64(stackLong*in.Num("block"))
	scale := math.Min(stackWide/wide, stackTall/high)
	base := stackTop + float64(high*scale)
	var nodes []figure.Node
	for i := 0.0; i < n; i++ {
		tall := course
		if i == n-1 {
			tall = top
		}
		y := base - float64((float64(i*course)+tall)*scale)
		nodes = append(nodes, stack(y, tall*scale, wide*scale, legs[int(i)%2]*scale, in.Num("block")*scale)...)
	}
	slots := []calc.Slot{calc.Amount("courses", n, &displays.Count), calc.Amount("top", top, &displays.Part),
		calc.Amount("straights", res.Out.Num("straights"), &displays.Count),
		calc.Amount("left", res.Out.Num("left"),
			&displays.Count), calc.Amount("right", res.Out.Num("right"), &displays.Count)}
	right := geometry.FrameMargin + float64(wide*scale) + 8
	nodes = append(
		nodes,
		figure.Segment(figure.Ground, figure.Point{X: geometry.FrameMargin, Y: base},
			figure.Point{X: right - 8, Y: base}),
		figure.Text(figure.Label, figure.Point{X: right, Y: stackTop + 10}, figure.Start, v.Say(drawTop, slots...)),
		figure.Text(figure.Number, figure.Point{X: right, Y: math.Max(base-6, stackTop+34)}, figure.Start,
			v.Say(drawCount, slots...)),
	)
	foot := math.Max(base, stackTop+34) + 12
	nodes = append(
		nodes,
		figure.Rect(figure.Concrete, figure.Point{X: geometry.FrameMargin, Y: foot}, 12, 12),
		figure.Text(figure.Label, figure.Point{X: geometry.FrameMargin + 20, Y: foot + 11}, figure.Start,
			v.Say(drawKey)),
		figure.Rect(figure.Foam, figure.Point{X: 170, Y: foot}, 12, 12),
		figure.Text(figure.Label, figure.Point{X: 190, Y: foot + 11}, figure.Start, v.Say(drawFoam)),
	)
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot + 22,
		Title:  v.Say(drawTitle),
		Desc:   v.Say(drawDesc, slots...),
		Nodes:  nodes,
	}
}

// stack returns one course: the corner block at its left end, then straight blocks
// up to the edge of the drawing. All in user units.
func stack(y, tall, wide, leg, block float64) []figure.Node {
	nodes := []figure.Node{figure.Rect(figure.Concrete, figure.Point{X: geometry.FrameMargin, Y: y}, leg, tall)}
	for x := leg; x < wide-1e-6; x += block {
		nodes = append(nodes,
			figure.Rect(figure.Foam, figure.Point{X: geometry.FrameMargin + x, Y: y}, math.Min(block, wide-x), tall))
	}
	return nodes
}
