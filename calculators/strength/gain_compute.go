package strength

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	// The band of temperatures in which the curves are taken as they stand,
	// °C: common practice around the 20 °C of the standard.
	cool, warm = 15.0, 25.0
	// early is the age in days below which Eurocode 2 wants tests.
	early = 3.0
	// full is the age in days at which both curves mean 100 %.
	full = 28.0
)

const (
	noteCool   = calc.Text("Below {limit} the concrete is behind both curves. Use maturity or a test.")
	noteWarm   = calc.Text("Above {limit} the concrete is ahead at first and ends weaker.")
	noteEarly  = calc.Text("Before {limit} Eurocode 2 asks for tests in place of the curve.")
	noteFull   = calc.Text("Past 28 days nobody may count on more than the specified strength without tests.")
	noteNever  = calc.Text("By {curve} this concrete never reaches {share}.")
	askTemp    = calc.Text("How warm has the concrete been? Both curves are for 20 °C (68 °F).")
	nameACI    = calc.Text("ACI 209")
	nameEC     = calc.Text("Eurocode 2")
	drawTitle  = calc.Text("Strength with age")
	drawDesc   = calc.Text("At {age}: {aci} by ACI 209, {ec} by Eurocode 2. Estimate only.")
	drawShare  = calc.Text("Share of 28-day strength, %")
	drawAge    = calc.Text("Age, days")
	drawTarget = calc.Text("Share looked for")
)

// listedAges are the ages of the rows, days.
var listedAges = [...]float64{1, 3, 7, 14, 28, 56, 90}

// constants finds the two curves of a case.
func constants(in calc.Case) (aci constants209, ec classEC) {
	for _, c := range gain209 {
		if c.id == in.Choice("cement") {
			aci = c
		}
	}
	for _, c := range gainEC {
		if c.id == in.Choice("class") {
			ec = c
		}
	}
	return aci, ec
}

func computeGain(r *calc.Recorder, in calc.Case) {
	aci, ec := constants(in)
	age, f28 := in.Num("age"), in.Num("f28")
	byACI := r.Use(share209, age, aci.a, aci.b)
	byEC := r.Use(shareEC, ec.s, age)
	r.Put("share-aci", byACI)
	r.Put("share-ec", byEC)
	r.Put("strength-aci", r.UseFor(nameACI, nil, strengthOf, byACI, f28))
	r.Put("strength-ec", r.UseFor(nameEC, nil, strengthOf, byEC, f28))
	target := in.Num("target")
	if target < (1-calc.Slack)/aci.b {
		r.Put("time-aci", r.Use(age209, target, aci.a, aci.b))
	} else {
		never(r, nameACI, target)
	}
	if target < (1-calc.Slack)*math.Exp(ec.s) {
		r.Put("time-ec", r.Use(ageEC, target, ec.s))
	} else {
		never(r, nameEC, target)
	}
	rows := make([]calc.Case, len(listedAges))
	for i, d := range listedAges {
		rows[i] = r.NewRow("ages").With("age", calc.In(d, "d")).
			With("aci", calc.Num(Share209(d, aci.a, aci.b))).With("ec", calc.Num(ShareEC(ec.s, d)))
	}
	r.PutRows("ages", rows)
	sayGain(r, in)
}

func never(r *calc.Recorder, curve calc.Text, share float64) {
	r.Note(calc.LevelNotice, calc.At("target"), noteNever, calc.Said("curve", curve), calc.Amount("share", share, &displays.Percent))
}

func sayGain(r *calc.Recorder, in calc.Case) {
	age := calc.From(in.Num("age"), "d")
	if age < early*(1-calc.Slack) {
		r.Note(calc.LevelCaution, calc.At("age"), noteEarly, calc.Amount("limit", calc.SI(early, "d"), &displays.Days))
	}
	if age > full*(1+calc.Slack) {
		r.Note(calc.LevelCaution, calc.At("age"), noteFull)
	}
	switch t := calc.From(in.Num("temperature"), "°C"); {
	case !in.Has("temperature"):
		r.Note(calc.LevelAsk, calc.At("temperature"), askTemp)
	case t < cool-calc.Slack:
		r.Note(calc.LevelWarning, calc.At("temperature"), noteCool, calc.Amount("limit", calc.SI(cool, "°C"), &displays.Temperature))
	case t > warm+calc.Slack:
		r.Note(calc.LevelCaution, calc.At("temperature"), noteWarm, calc.Amount("limit", calc.SI(warm, "°C"), &displays.Temperature))
	}
}

// drawGain plots both curves over age with the age asked for.
func drawGain(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	aci, ec := constants(in)
	age, target := calc.From(in.Num("age"), "d"), 100*in.Num("target")
	x := axis(0, math.Max(full, age))
	y := axis(0, 100*math.Max(1.2, math.Max(Share209(x.To, aci.a, aci.b), ShareEC(ec.s, x.To))))
	x.Title, y.Title = v.Say(drawAge), v.Say(drawShare)
	var one, two []figure.Point
	for i := range 60 {
		// Closer together where the curves are steep.
		t := 1 + (x.To-1)*math.Pow(float64(i)/59, 2)
		one = append(one, figure.Point{X: t, Y: 100 * Share209(t, aci.a, aci.b)})
		two = append(two, figure.Point{X: t, Y: 100 * ShareEC(ec.s, t)})
	}
	byACI, byEC := res.Out.Num("share-aci"), res.Out.Num("share-ec")
	nodes, foot := figure.Plot(x, y, []figure.Curve{
		{Role: figure.Line, Name: v.Say(nameACI) + ": " + percent(v, byACI), Points: one},
		{Role: figure.Ink, Name: v.Say(nameEC) + ": " + percent(v, byEC), Points: two},
		{Role: figure.Limit, Name: v.Say(drawTarget) + ": " + percent(v, in.Num("target")), Points: []figure.Point{{X: 0, Y: target}, {X: x.To, Y: target}}},
	}, []figure.Spot{{Role: figure.Ink, At: figure.Point{X: age, Y: 100 * byACI}}, {Role: figure.Ink, At: figure.Point{X: age, Y: 100 * byEC}}})
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(drawTitle), Nodes: nodes,
		Desc: v.Say(drawDesc, calc.Amount("age", in.Num("age"), &ageDays), calc.Word("aci", percent(v, byACI)), calc.Word("ec", percent(v, byEC)))}
}

func percent(v calc.Locale, share float64) string {
	return quantity.Format(share, displays.Percent, v.Style)
}
