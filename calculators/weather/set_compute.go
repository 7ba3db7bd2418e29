package weather

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	refuseOrder = calc.Text("The final set must come after the initial set, {initial}.")
	noteSetCold = calc.Text("Below 50 °F (10 °C) setting is slow and uncertain. Form pressure stays high for hours longer.")
	noteSetHot  = calc.Text("Above 90 °F (32 °C) mixes set faster than any estimate. Have the next lift at hand before you start one.")
	noteJoint   = calc.Text("The last lift is near or past its initial set. Test it. Where the vibrator does not sink, a cold joint is there: tell the engineer.")
	noteSoon    = calc.Text("Place the next lift now, and run the vibrator 6 in. (150 mm) into the last one.")
	ofInitial   = calc.Text("Initial set")
	ofFinal     = calc.Text("Final set")
)

// The sensitivities in K that frame the estimate.
const (
	leastQ = 4000
	mostQ  = 6000
)

func computeSet(r *calc.Recorder, in calc.Case) {
	initial, final := in.Num("initial"), in.Num("final")
	t, ref, q := in.Num("concrete"), in.Num("reference"), in.Num("q")
	if final <= initial {
		r.Refuse(calc.At("final"), refuseOrder, calc.Amount("initial", initial, &displays.HalfHoursAtMost))
		return
	}
	set := r.UseFor(ofInitial, nil, eqArrhenius, initial, q, t, ref)
	rule := r.UseFor(ofInitial, nil, eqDoubling, initial, t, ref)
	low, high := eqArrhenius.Value(initial, leastQ, t, ref), eqArrhenius.Value(initial, mostQ, t, ref)
	r.Put("initial-set", set)
	r.Put("final-set", r.UseFor(ofFinal, nil, eqArrhenius, final, q, t, ref))
	r.Put("rule-set", rule)
	earliest := min(set, rule, low, high)
	r.Put("earliest", earliest)
	r.Put("latest", max(set, rule, low, high))
	f := calc.From(t, "°F")
	if hours, ok := setByTable(f); ok {
		r.Put("by-table", calc.SI(hours, "h"))
	}
	switch {
	case f < 50-calc.Slack:
		r.Note(calc.LevelNotice, calc.At("concrete"), noteSetCold)
	case f > 90+calc.Slack:
		r.Note(calc.LevelNotice, calc.At("concrete"), noteSetHot)
	}
	if !in.Has("age") {
		return
	}
	r.Put("left", math.Max(0, earliest-in.Num("age")))
	switch age := in.Num("age"); {
	case !calc.Under(age, earliest):
		r.Note(calc.LevelNotice, calc.At("age"), noteJoint)
	case age > earliest/2:
		r.Note(calc.LevelNotice, calc.At("age"), noteSoon)
	}
}

const (
	saySetTitle = calc.Text("Setting time over temperature")
	saySetDesc  = calc.Text("Initial set falls as the concrete warms. At {t} it is about {initial}, final set about {final}.")
	saySetInit  = calc.Text("Initial set: {time}")
	saySetFinal = calc.Text("Final set: {time}")
	saySetHours = calc.Text("Hours since batching")
)

// setMarks are the temperatures marked on the drawing, in K.
var setMarks = [2][]float64{
	{40, 60, 80, 100}, // °F
	{5, 15, 25, 35},   // °C
}

// setCurve is the setting time over temperature, in K and h.
func setCurve(in calc.Case, id string, from, to float64) []figure.Point {
	points := make([]figure.Point, 13)
	for i := range points {
		t := from + (to-from)*float64(i)/12
		points[i] = figure.Point{X: t, Y: calc.From(eqArrhenius.Value(in.Num(id), in.Num("q"), t, in.Num("reference")), "h")}
	}
	return points
}

func drawSet(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	unit, marks := "°F", setMarks[0]
	if v.Style.System == quantity.Metric {
		unit, marks = "°C", setMarks[1]
	}
	from, to := calc.SI(33, "°F"), calc.SI(110, "°F")
	initial, final := setCurve(in, "initial", from, to), setCurve(in, "final", from, to)
	plain := quantity.Display{Dim: quantity.Number}
	x := figure.Axis{Title: unit, From: from, To: to}
	for _, m := range marks {
		x.Marks = append(x.Marks, figure.Mark{At: calc.SI(m, unit), Text: quantity.Format(m, plain, v.Style)})
	}
	step := math.Max(0.5, math.Ceil(final[0].Y/4))
	y := figure.Axis{Title: v.Say(saySetHours), To: 4 * step}
	for i := range 5 {
		y.Marks = append(y.Marks, figure.Mark{At: float64(i) * step, Text: quantity.Format(float64(i)*step, plain, v.Style)})
	}
	t, set := in.Num("concrete"), res.Out.Num("initial-set")
	nodes, foot := figure.Plot(x, y, []figure.Curve{{Role: figure.Line, Name: v.Say(saySetInit, calc.Word("time", amount(v, res.Out, "initial-set"))), Points: initial}, {Role: figure.Ink, Name: v.Say(saySetFinal, calc.Word("time", amount(v, res.Out, "final-set"))), Points: final}},
		[]figure.Spot{{Role: figure.Within, At: figure.Point{X: t, Y: calc.From(set, "h")}}})
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(saySetTitle), Nodes: nodes,
		Desc: v.Say(saySetDesc, calc.Word("t", amount(v, in, "concrete")), calc.Word("initial", amount(v, res.Out, "initial-set")), calc.Word("final", amount(v, res.Out, "final-set")))}
}
