package vibrator

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title      = calc.Text("Places in the core, from above")
	labelAbove = calc.Text("Core from above, to scale")
	labelPump  = calc.Text("The pump fills the lift in")
	labelPass  = calc.Text("A pass with {count} takes up to")
	desc       = calc.Text(
		"Places {spacing} apart in a core of {core}, {places} in the lift. The pump takes {fill}, the pass {pass} " +
			"with {count} vibrators.",
	)
)

// Layout of the plan view: three places, their fields, the form.
const (
	margin    = 10.0
	fieldWide = (figure.ChartWidth - 2*margin) / 5 // radius of a field on paper
	mostHalf  = 90.0                               // half the core on paper
	foamThick = 14.0
	pictureY  = 30.0
)

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	out := res.Out
	spacing, core := out.Num("spacing"), in.Num("core")
	radius := spacing / consolidation.Spacing(1)
	scale := math.Min(fieldWide/radius, mostHalf/(core/2))
	r, half, step := radius*scale, core/2*scale, spacing*scale
	mid := pictureY + math.Max(r, half+foamThick)
	const from, wide = margin, figure.ChartWidth - 2*margin
	nodes := []figure.Node{
		figure.Text(figure.Label, figure.Point{X: from, Y: 18}, figure.Start, v.Say(labelAbove)),
		figure.Rect(figure.Foam, figure.Point{X: from, Y: mid - half - foamThick}, wide, foamThick),
		figure.Rect(figure.Concrete, figure.Point{X: from, Y: mid - half}, wide, 2*half),
		figure.Rect(figure.Foam, figure.Point{X: from, Y: mid + half}, wide, foamThick),
	}
	centre := from + wide/2
	for i := -1.0; i <= 1; i++ {
		at := figure.Point{X: centre + i*step, Y: mid}
		nodes = append(nodes, figure.Circle(figure.Limit, at, r), figure.Circle(figure.Steel, at, 5))
	}
	y := mid + math.Max(r, half+foamThick) + 24
	nodes = append(
		nodes,
		figure.Dimension(
			figure.Point{X: centre, Y: y},
			figure.Point{X: centre + step, Y: y},
			quantity.Format(spacing, showApart, v.Style),
		),
	)
	count := calc.Count("count", int(out.Num("vibrators")))
	fill, pass := out.Num("fill"), out.Num("pass-high")/out.Num("vibrators")
	time := func(s float64) string { return quantity.Format(s, displays.Minutes, v.Style) }
	bars, foot := figure.Bars(y+8, []figure.Bar{
		{Role: figure.Concrete, Name: v.Say(labelPump), Text: time(fill), Size: fill},
		{Role: figure.Steel, Name: v.Say(labelPass, count), Text: time(pass), Size: pass},
	}, 0)
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: foot,
		Title:  v.Say(title),
		Nodes:  append(nodes, bars...),
		Desc: v.Say(
			desc,
			count,
			calc.Amount("spacing", spacing, &showApart),
			calc.Amount("core", core, &displays.Part),
			calc.Count("places", int(out.Num("places"))),
			calc.WordSlot("fill", time(fill)),
			calc.WordSlot("pass", time(pass)),
		),
	}
}
