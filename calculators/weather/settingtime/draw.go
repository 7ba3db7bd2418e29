package settingtime

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather"
)

const (
	title = calc.Text("Setting time over temperature")
	desc  = calc.Text(
		"Initial set falls as the concrete warms. At {t} it is about {initial}, final set about {final}.",
	)
	labelInit  = calc.Text("Initial set: {time}")
	labelFinal = calc.Text("Final set: {time}")
	labelHours = calc.Text("Hours since batching")
)

// temperatureMarks are the temperatures marked on the axis.
var temperatureMarks = [2][]float64{
	{40, 60, 80, 100}, // °F
	{5, 15, 25, 35},   // °C
}

// curve returns points of the setting time in h over temperature in K, for the
// time of the input id.
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

// draw returns the drawing of a result. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	unit, marks := "°F", temperatureMarks[0]
	if v.Style.System == quantity.Metric {
		unit, marks = "°C", temperatureMarks[1]
	}
	from, to := calc.SI(33, "°F"), calc.SI(110, "°F")
	initial, final := curve(in, "initial", from, to), curve(in, "final", from, to)
	number := quantity.Display{Dim: quantity.Number}
	x := figure.Axis{Title: unit, From: from, To: to}
	for _, m := range marks {
		x.Marks = append(x.Marks, figure.Mark{At: calc.SI(m, unit), Text: quantity.Format(m, number, v.Style)})
	}
	step := math.Max(0.5, math.Ceil(final[0].Y/4))
	y := figure.Axis{Title: v.Say(labelHours), To: 4 * step}
	for i := range 5 {
		y.Marks = append(
			y.Marks,
			figure.Mark{At: float64(i) * step, Text: quantity.Format(float64(i)*step, number, v.Style)},
		)
	}
	t, set := in.Num("concrete"), res.Out.Num("initial-set")
	nodes, foot := figure.Plot(
		x,
		y,
		[]figure.Curve{
			{
				Role:   figure.Line,
				Name:   v.Say(labelInit, calc.WordSlot("time", weather.Amount(v, res.Out, "initial-set"))),
				Points: initial,
			},
			{
				Role:   figure.Ink,
				Name:   v.Say(labelFinal, calc.WordSlot("time", weather.Amount(v, res.Out, "final-set"))),
				Points: final,
			},
		},
		[]figure.Marker{{Role: figure.Within, At: figure.Point{X: t, Y: calc.From(set, "h")}}},
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.WordSlot("t", weather.Amount(v, in, "concrete")),
			calc.WordSlot("initial", weather.Amount(v, res.Out, "initial-set")),
			calc.WordSlot("final", weather.Amount(v, res.Out, "final-set")),
		)}
}
