package linerounds

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	title          = calc.Text("The wall in each round")
	desc           = calc.Text("Worst in round 1 was {first}, in the last round {last}. {count} braces to turn.")
	labelOff       = calc.Text("Off the line: up is too far")
	labelRow       = calc.Text("brace, by row")
	labelFirst     = calc.Text("round 1")
	labelNext      = calc.Text("round 2")
	labelLast      = calc.Text("last round")
	labelTolerance = calc.Text("tolerance, {tolerance}")
)

// draw plots the deviation of every brace in each round, with the readings of the
// last round marked. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	braces, rounds := readBraces(in)
	tolerance := in.Num("tolerance")
	most := tolerance
	ends := math.Max(float64(len(braces)), 2)
	curves := []figure.Curve{
		{Role: figure.Line, Points: []figure.Point{{X: 1}, {X: ends}}},
		{Role: figure.Limit, Points: []figure.Point{{X: 1, Y: -tolerance}, {X: ends, Y: -tolerance}}},
		{Role: figure.Limit, Name: v.Say(labelTolerance, calc.Amount("tolerance", tolerance, &displays.Part)),
			Points: []figure.Point{{X: 1, Y: tolerance}, {X: ends, Y: tolerance}}},
	}
	roles := []figure.Role{figure.Thin, figure.Measure, figure.Ink}[3-rounds:]
	names := []calc.Text{labelFirst, labelNext, labelLast}
	if rounds == 2 {
		names = []calc.Text{labelFirst, labelLast}
	}
	for k := range rounds {
		points := make([]figure.Point, len(braces))
		for i, b := range braces {
			points[i] = figure.Point{X: float64(i + 1), Y: b.in(k)}
			most = math.Max(most, math.Abs(b.in(k)))
		}
		curves = append(curves, figure.Curve{Role: roles[k], Name: v.Say(names[k]), Points: points})
	}
	var spots []figure.Marker
	var rows []figure.Mark
	for i, b := range braces {
		role := figure.Within
		if b.way != "good" {
			role = figure.Beyond
		}
		spots = append(spots, figure.Marker{Role: role, At: figure.Point{X: float64(i + 1), Y: b.last()}})
		if len(braces) <= 12 || (i+1)%5 == 0 {
			rows = append(rows, figure.Mark{At: float64(i + 1), Text: strconv.Itoa(i + 1)})
		}
	}
	nodes, foot := figure.Plot(
		figure.Axis{Title: v.Say(labelRow), From: 0.5, To: ends + 0.5, Marks: rows},
		figure.Axis{
			Title: v.Say(labelOff),
			From:  -1.1 * most,
			To:    1.1 * most,
			Marks: []figure.Mark{{At: 0, Text: "0"}},
		},
		curves,
		spots,
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Amount("first", res.Out.Num("first-worst"), &displays.Part),
			calc.Amount("last", res.Out.Num("worst"), &displays.Part),
			calc.Count("count", int(res.Out.Num("to-turn"))),
		)}
}
