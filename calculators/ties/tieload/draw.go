package tieload

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	title = calc.Text("Face of the form with its ties")
	desc  = calc.Text(
		"Ties {across} by {up} apart, {missing} missing. The shaded face of {area} hangs on one tie: {load}.",
	)
	labelMarks = calc.Text("Cross: missing. Shaded: the face on one tie.")
	labelLoad  = calc.Text("Load on that tie: {load}")
)

// draw shows a piece of the face: whole ties as dots, missing ones as crosses, and
// the share of the busiest tie shaded. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const cols, rows, left, top, step = 8, 3, 28.0, 40.0, 40.0
	tall := math.Min(64, math.Max(26, step*in.Num("up")/in.Num("across")))
	foot := top + float64(tall*(rows-1)) + tall/2
	at := func(c, r int) figure.Point {
		return figure.Point{X: left + float64(step*float64(c)), Y: top + float64(tall*float64(r))}
	}
	gap := int(in.Num("missing"))
	share := math.Min(step*(1+in.Num("missing")/in.Num("sharing")), figure.ChartWidth-8-left-step/2)
	load, across, up := calc.Amount("load", res.Out.Num("load"), &displays.Force), in.Num("across"), in.Num("up")
	nodes := []figure.Node{
		figure.Rect(figure.Foam, figure.Point{X: 8, Y: top - tall/2}, figure.ChartWidth-16, foot-top+tall/2),
		figure.Rect(figure.Concrete, figure.Point{X: at(1, 1).X - step/2, Y: at(1, 1).Y - tall/2}, share, tall),
	}
	for r := range rows {
		for c := range cols {
			p := at(c, r)
			if r == 1 && c > 1 && c <= 1+gap {
				nodes = append(
					nodes,
					figure.Segment(
						figure.Beyond,
						figure.Point{X: p.X - 6, Y: p.Y - 6},
						figure.Point{X: p.X + 6, Y: p.Y + 6},
					),
					figure.Segment(
						figure.Beyond,
						figure.Point{X: p.X - 6, Y: p.Y + 6},
						figure.Point{X: p.X + 6, Y: p.Y - 6},
					),
				)
				continue
			}
			nodes = append(nodes, figure.Circle(figure.Steel, p, 4))
		}
	}
	nodes = append(nodes,
		figure.Text(figure.Number, figure.Point{X: 10, Y: foot + 22}, figure.Start, v.Say(labelLoad, load)),
		figure.Text(figure.Label, figure.Point{X: 10, Y: foot + 42}, figure.Start, v.Say(labelMarks)))
	return figure.Drawing{
		Width: figure.ChartWidth, Height: foot + 52, Title: v.Say(title),
		Desc: v.Say(desc, calc.Amount("across", across, &displays.Inches), calc.Amount("up", up, &displays.Inches),
			calc.Count("missing", gap), calc.Amount("area", res.Out.Num("area"), &displays.Area), load),
		Nodes: nodes,
	}
}
