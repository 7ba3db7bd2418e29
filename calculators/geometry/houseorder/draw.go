package houseorder

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/geometry"
)

// The frame of the plan, in user units.
const (
	frameWide = 320.0
	planWide  = 220.0
	planTall  = 150.0
	planLeft  = 20.0
	planTop   = 34.0
	leastWall = 5.0 // a thinner wall would not show
)

const (
	drawTitle  = calc.Text("The house from above")
	drawDesc   = calc.Text("A house of {length} by {width}, core {core}, walls {height} high.")
	drawHeight = calc.Text("{height} high, core {core}")
)

// draw draws the four walls from above, to scale as far as a thin wall shows. A refused
// case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	length, width := outside(in, in.Num("length")), outside(in, in.Num("width"))
	scale := min(planWide/length, planTall/width)
	wide, tall := float64(length*scale), float64(width*scale)
	wall := min(max(in.Num("core")*scale, leastWall), min(wide, tall)/3)
	at := figure.Point{X: planLeft, Y: planTop}
	write := func(id string) string { return v.Write(field(id), in.Value(id)) }
	slots := []calc.Slot{calc.WordSlot("length", write("length")), calc.WordSlot("width", write("width")),
		calc.WordSlot("height", write("height")), calc.WordSlot("core", write("core"))}
	foot := planTop + tall + geometry.LineStep
	return figure.Drawing{
		Width: frameWide, Height: foot + 8, Title: v.Say(drawTitle), Desc: v.Say(drawDesc, slots...),
		Nodes: []figure.Node{
			figure.Rect(figure.Concrete, at, wide, tall),
			figure.Rect(figure.Label, figure.Point{X: at.X + wall, Y: at.Y + wall}, wide-2*wall, tall-2*wall),
			figure.Text(figure.Label, figure.Point{X: planLeft, Y: planTop - 10}, figure.Start, write("length")),
			figure.Text(figure.Label, figure.Point{X: planLeft + wide + 8, Y: planTop + tall/2 + 5}, figure.Start,
				write("width")),
			figure.Text(figure.Label, figure.Point{X: planLeft, Y: foot}, figure.Start, v.Say(drawHeight, slots...)),
		},
	}
}

// field returns an input by its ID.
func field(id string) calc.Field {
	for _, f := range inputs {
		if f.ID == id {
			return f
		}
	}
	panic("houseorder: no input " + id)
}
