package settingtime

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

const (
	sayTitle = calc.Text("Setting time over temperature")
	sayDesc  = calc.Text(
		"Initial set falls as the concrete warms. At {t} it is about {initial}, final set about {final}.",
	)
	sayInit  = calc.Text("Initial set: {time}")
	sayFinal = calc.Text("Final set: {time}")
	sayHours = calc.Text("Hours since batching")
)

// setMarks are the temperatures marked on the drawing, in K.
var setMarks = [2][]float64{
	{40, 60, 80, 100}, // °F
	{5, 15, 25, 35},   // °C
}

// curve is the setting time over temperature, in K and h.
func curve(in calc.Case, id string, from, to float64) []figure.Point {
	points := make([]figure.Point, 13)
	for i := range points {
		t := from + (to-from)*float64(i)/12
		points[i] = figure.Point{
			X: t,
			Y: calc.From(weather.SetArrheniusFormula.Value(in.Num(id), in.Num("q"), t, in.Num("reference")), "h"),
		}
	}
	return points
}

func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	unit, marks := "°F", setMarks[0]
	if v.Style.System == quantity.Metric {
		unit, marks = "°C", setMarks[1]
	}
	from, to := calc.SI(33, "°F"), calc.SI(110, "°F")
	initial, final := curve(in, "initial", from, to), curve(in, "final", from, to)
	plain := quantity.Display{Dim: quantity.Number}
	x := figure.Axis{Title: unit, From: from, To: to}
	for _, m := range marks {
		x.Marks = append(x.Marks, figure.Mark{At: calc.SI(m, unit), Text: quantity.Format(m, plain, v.Style)})
	}
	step := math.Max(0.5, math.Ceil(final[0].Y/4))
	y := figure.Axis{Title: v.Say(sayHours), To: 4 * step}
	for i := range 5 {
		y.Marks = append(
			y.Marks,
			figure.Mark{At: float64(i) * step, Text: quantity.Format(float64(i)*step, plain, v.Style)},
		)
	}
	t, set := in.Num("concrete"), res.Out.Num("initial-set")
	nodes, foot := figure.Plot(
		x,
		y,
		[]figure.Curve{
			{
				Role:   figure.Line,
				Name:   v.Say(sayInit, calc.WordSlot("time", weather.Amount(v, res.Out, "initial-set"))),
				Points: initial,
			},
			{
				Role:   figure.Ink,
				Name:   v.Say(sayFinal, calc.WordSlot("time", weather.Amount(v, res.Out, "final-set"))),
				Points: final,
			},
		},
		[]figure.Marker{{Role: figure.Within, At: figure.Point{X: t, Y: calc.From(set, "h")}}},
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(sayTitle), Nodes: nodes,
		Desc: v.Say(
			sayDesc,
			calc.WordSlot("t", weather.Amount(v, in, "concrete")),
			calc.WordSlot("initial", weather.Amount(v, res.Out, "initial-set")),
			calc.WordSlot("final", weather.Amount(v, res.Out, "final-set")),
		)}
}
