package strengthgain

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/strength"
)

const (
	title       = calc.Text("Strength with age")
	desc        = calc.Text("At {age}: {aci} by ACI 209, {ec} by Eurocode 2. Estimate only.")
	labelShare  = calc.Text("Share of 28-day strength, %")
	labelAge    = calc.Text("Age, days")
	labelTarget = calc.Text("Share looked for")
)

// draw plots both curves over age and marks the age entered. A refused case gives
// an empty drawing.
func draw(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	aci, ec := constants(in)
	age, target := calc.From(in.Num("age"), "d"), 100*in.Num("target")
	x := strength.Axis(0, math.Max(fullAge, age))
	y := strength.Axis(
		0,
		100*math.Max(1.2, math.Max(strength.Share209(x.To, aci.a, aci.b), strength.ShareEC(ec.s, x.To))),
	)
	x.Title, y.Title = v.Say(labelAge), v.Say(labelShare)
	var one, two []figure.Point
	for i := range 60 {
		// Closer together where the curves are steep.
		t := 1 + (x.To-1)*math.Pow(float64(i)/59, 2)
		one = append(one, figure.Point{X: t, Y: 100 * strength.Share209(t, aci.a, aci.b)})
		two = append(two, figure.Point{X: t, Y: 100 * strength.ShareEC(ec.s, t)})
	}
	byACI, byEC := res.Out.Num("share-aci"), res.Out.Num("share-ec")
	nodes, foot := figure.Plot(x, y, []figure.Curve{
		{Role: figure.Line, Name: v.Say(nameACI) + ": " + percent(v, byACI), Points: one},
		{Role: figure.Ink, Name: v.Say(nameEC) + ": " + percent(v, byEC), Points: two},
		{
			Role:   figure.Limit,
			Name:   v.Say(labelTarget) + ": " + percent(v, in.Num("target")),
			Points: []figure.Point{{X: 0, Y: target}, {X: x.To, Y: target}},
		},
	}, []figure.Marker{{Role: figure.Ink, At: figure.Point{X: age, Y: 100 * byACI}},
		{Role: figure.Ink, At: figure.Point{X: age, Y: 100 * byEC}}})
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(title), Nodes: nodes,
		Desc: v.Say(
			desc,
			calc.Amount("age", in.Num("age"), &ageDays),
			calc.WordSlot("aci", percent(v, byACI)),
			calc.WordSlot("ec", percent(v, byEC)),
		)}
}

// percent returns a share, 1 for all, as text in percent.
func percent(v calc.Locale, share float64) string {
	return quantity.Format(share, displays.Percent, v.Style)
}
