package coldweather

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/weather"
)

const (
	title = calc.Text("Section of the wall in the cold")
	desc  = calc.Text(
		"A wall between two foam faces, its top under a cover. The core stays at {placed} or warmer; the air falls " +
			"to {air}.",
	)
	labelCover = calc.Text("Cover the top")
	labelKeep  = calc.Text("at least")
	labelAir   = calc.Text("Air {air}")
	labelFoam  = calc.Text("Foam")
	labelFoot  = calc.Text("Footing: thawed")
)

// draw shows a section: foam, core, footing and cover. A refused case gives an
// empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	placed, air := calc.WordSlot(
		"placed",
		weather.Amount(v, res.Out, "placed"),
	), calc.Amount(
		"air",
		in.Num("air"),
		&displays.Temperature,
	)
	const left, wide, foam, top, foot = 130.0, 90.0, 24.0, 50.0, 220.0
	at := func(x, y float64) figure.Point { return figure.Point{X: x, Y: y} }
	return figure.Drawing{
		Width:  figure.ChartWidth,
		Height: 270,
		Title:  v.Say(title),
		Desc:   v.Say(desc, placed, air),
		Nodes: []figure.Node{
			figure.Rect(figure.Ground, at(left-foam-30, foot), wide+2*foam+60, 30),
			figure.Rect(figure.Foam, at(left-foam, top), foam, foot-top),
			figure.Rect(figure.Foam, at(left+wide, top), foam, foot-top),
			figure.Rect(figure.Concrete, at(left, top), wide, foot-top),
			figure.Rect(figure.Limit, at(left-foam-8, top-14), wide+2*foam+16, 10),
			figure.Text(figure.Label, at(left+wide/2, 24), figure.Middle, v.Say(labelCover)),
			figure.Text(figure.Label, at(left+wide/2, 125), figure.Middle, v.Say(labelKeep)),
			figure.Text(figure.Number, at(left+wide/2, 145), figure.Middle, weather.Amount(v, res.Out, "placed")),
			figure.Text(figure.Label, at(left+wide+foam+8, 145), figure.Start, v.Say(labelAir, air)),
			figure.Text(figure.Label, at(left-foam-8, 145), figure.End, v.Say(labelFoam)),
			figure.Text(figure.Label, at(left+wide/2, foot+44), figure.Middle, v.Say(labelFoot)),
		},
	}
}
