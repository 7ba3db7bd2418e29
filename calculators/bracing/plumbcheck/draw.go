package plumbcheck

import (
	"math"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	title = calc.Text("Readings up the wall")
	desc  = calc.Text(
		"The worst reading is out of plumb by {worst}. The limit of ACI 117-10 at the top is {limit}.",
	)
	labelHeight = calc.Text("Height")
	labelOff    = calc.Text("out of plumb, enlarged")
	labelNew    = calc.Text("limit of ACI 117-10, {limit} at the top")
	labelOld    = calc.Text("limit of ACI 117-90, {limit}")
	labelWall   = calc.Text("the wall as read")
)

// axisHeight displays heights on the axis: whole feet, to fit beside it.
var axisHeight = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "ft", Form: quantity.FeetInches, Step: 1},
	Metric: quantity.UnitDisplay{Unit: "m", Step: 0.1},
}

// limitSteps is the number of segments of the limit that bends.
const limitSteps = 24

// draw plots deviation over height, the deviation enlarged, with the limits of the
// two editions. A refused case gives an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	height, old, limit := in.Num("height"), oldLimit(in), newLimit(in)
	most := 1.15 * math.Max(old, res.Out.Num("worst"))
	var left, right []figure.Point
	for k := 0; k <= limitSteps; k++ {
		up := height * float64(k) / limitSteps
		x := limit.Value(up)
		left, right = append(left, figure.Point{X: -x, Y: up}), append(right, figure.Point{X: x, Y: up})
	}
	wall := []figure.Point{{}}
	var marks []figure.Marker
	for _, x := range wallReadings(in) {
		at := figure.Point{X: x.off, Y: x.up}
		role := figure.Within
		if bracing.Exceeds(math.Abs(x.off), limit.Value(x.up)) {
			role = figure.Beyond
		}
		wall = append(wall, at)
		marks = append(marks, figure.Marker{Role: role, At: at})
	}
	if n := len(marks); n > 0 {
		marks[n-1].Text = v.Write(inputs[1].Cols[1], calc.Num(marks[n-1].At.X))
	}
	top := calc.Amount("limit", limit.Value(height), &displays.PartAtMost)
	nodes, foot := figure.Plot(
		figure.Axis{Title: v.Say(labelOff), From: -most, To: most, Marks: []figure.Mark{{At: 0, Text: "0"}}},
		figure.Axis{
			Title: v.Say(labelHeight),
			To:    height,
			Marks: []figure.Mark{{At: height, Text: quantity.Format(height, axisHeight, v.Style)}},
		},
		[]figure.Curve{
			{Role: figure.Limit, Points: left}, {Role: figure.Limit, Name: v.Say(labelNew, top), Points: right},
			{Role: figure.Measure, Points: []figure.Point{{X: -old}, {X: -old, Y: height}}},
			{
				Role:   figure.Measure,
				Name:   v.Say(labelOld, calc.Amount("limit", old, &displays.Part)),
				Points: []figure.Point{{X: old}, {X: old, Y: height}},
			},
			{Role: figure.Concrete, Name: v.Say(labelWall), Points: wall},
		},
		marks,
	)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(desc, calc.Amount("worst", res.Out.Num("worst"), &displays.Part), top)}
}
