package blockoutuplift

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/ties"
)

const (
	title = calc.Text("Block-out in the wall")
	desc  = calc.Text(
		"Concrete stands {a} high on side A and {b} on side B. Uplift {uplift}, push to the lower side {push}, " +
			"straps {straps}.",
	)
	labelLevel  = calc.Text("{side}: {level}")
	labelUplift = calc.Text("Uplift: {uplift}, straps: {straps}")
	labelPush   = calc.Text("Push to the lower side: {push}")
)

// draw shows the block-out in elevation, with the level of the concrete on each
// side, the uplift and the net push. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const foot, tall, left, right = 200.0, 150.0, 120.0, 220.0
	a, b, h := in.Num("side-a"), in.Num("side-b"), in.Num("height")
	most := math.Max(h, math.Max(a, b))
	y := func(level float64) float64 { return foot - float64(tall*level/most) }
	slots := []calc.Slot{
		calc.Amount("a", a, &displays.Height), calc.Amount("b", b, &displays.Height),
		calc.Amount(
			"uplift",
			res.Out.Num("uplift"),
			&displays.Force,
		), calc.Amount("push", res.Out.Num("push"), &displays.Force),
		strapsSlot(res.Out),
	}
	level := func(x float64, name string, at float64) figure.Node {
		text := v.Say(labelLevel, calc.WordSlot("side", name), calc.Amount("level", at, &displays.Height))
		return figure.Text(figure.Label, figure.Point{X: x, Y: y(at) - 6}, figure.Middle, text)
	}
	nodes := []figure.Node{
		figure.Rect(figure.Concrete, figure.Point{X: 10, Y: y(a)}, left-10, foot-y(a)+24),
		figure.Rect(figure.Concrete, figure.Point{X: right, Y: y(b)}, figure.ChartWidth-10-right, foot-y(b)+24),
		figure.Rect(figure.Concrete, figure.Point{X: left, Y: foot}, right-left, 24),
	}
	if a > h && b > h { // covered: what is above it
		top := math.Min(a, b)
		nodes = append(nodes, figure.Rect(figure.Concrete, figure.Point{X: left, Y: y(top)}, right-left, y(h)-y(top)))
	}
	nodes = append(nodes,
		figure.Rect(figure.Opening, figure.Point{X: left, Y: y(h)}, right-left, foot-y(h)),
		level(65, "A", a), level(275, "B", b),
		ties.Arrow(figure.Point{X: 170, Y: foot + 20}, figure.Point{X: 170, Y: foot - 24}))
	if push := res.Out.Num("push"); push > 0 {
		from, to := figure.Point{X: left - 30, Y: foot - 8}, figure.Point{X: left + 30, Y: foot - 8}
		if b > a {
			from, to = figure.Point{X: right + 30, Y: foot - 8}, figure.Point{X: right - 30, Y: foot - 8}
		}
		nodes = append(nodes, ties.Arrow(from, to))
	}
	nodes = append(nodes,
		figure.Text(figure.Number, figure.Point{X: 10, Y: foot + 46}, figure.Start, v.Say(labelUplift, slots...)),
		figure.Text(figure.Number, figure.Point{X: 10, Y: foot + 66}, figure.Start, v.Say(labelPush, slots...)))
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot + 76,
		Title:  v.Say(title),
		Desc:   v.Say(desc, slots...),
		Nodes:  nodes,
	}
}

// strapsSlot returns the slot straps with the number of straps; with a dash if no
// rating is known.
func strapsSlot(out calc.Case) calc.Slot {
	if !out.Has("straps") {
		return calc.WordSlot("straps", "–")
	}
	return calc.Amount("straps", out.Num("straps"), &displays.Count)
}
