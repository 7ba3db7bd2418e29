package maturity

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/strength"
)

const (
	title            = calc.Text("Temperature over time")
	desc             = calc.Text("Concrete between {low} and {high} over {time}. Factor {factor}.")
	labelTemperature = calc.Text("Temperature, {unit}")
	labelHours       = calc.Text("Hours since placing")
	labelConcrete    = calc.Text("Concrete, straight between readings")
	labelDatum       = calc.Text("Datum: below it nothing counts")
)

// draw plots the readings over time, with the datum as a limit. A refused case
// gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	unit := "°F"
	if v.Style.System == quantity.Metric {
		unit = "°C"
	}
	points := readings(in, unit)
	last, datum := points[len(points)-1].X, calc.From(in.Num("datum"), unit)
	low, high := datum, datum+10
	coolest, warmest := points[0].Y, points[0].Y
	for _, p := range points {
		coolest, warmest = math.Min(coolest, p.Y), math.Max(warmest, p.Y)
	}
	low, high = math.Min(low, coolest), math.Max(high, warmest)
	x, y := strength.Axis(0, last), strength.Axis(low, high)
	x.Title, y.Title = v.Say(labelHours), v.Say(labelTemperature, calc.WordSlot("unit", unit))
	nodes, foot := figure.Plot(x, y, []figure.Curve{
		{Role: figure.Line, Name: v.Say(labelConcrete), Points: points},
		{
			Role:   figure.Limit,
			Name:   v.Say(labelDatum),
			Points: []figure.Point{{X: x.From, Y: datum}, {X: x.To, Y: datum}},
		},
	}, nil)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Amount("low", calc.SI(coolest, unit), &reading),
			calc.Amount("high", calc.SI(warmest, unit), &reading),
			calc.Amount(
				"time",
				calc.SI(last, "h"),
				&tenthHours,
			),
			calc.Amount("factor", res.Out.Num("factor"), &factorSize),
		)}
}

// readings returns the readings as points: hours and temperature in the unit. A
// single reading gives a level line from the time of placing.
func readings(in calc.Case, unit string) []figure.Point {
	var points []figure.Point
	for _, row := range in.Rows("readings") {
		points = append(
			points,
			figure.Point{X: calc.From(row.Num("time"), "h"), Y: calc.From(row.Num("temperature"), unit)},
		)
	}
	if len(points) == 1 {
		points = append([]figure.Point{{X: 0, Y: points[0].Y}}, points...)
	}
	return points
}
