package placing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

// What the symbols mean.
const (
	meansW    = calc.Text("water added")
	meansEach = calc.Text("so much for 1 gal in each yd³")
	meansPer  = calc.Text("gallons in each yd³")
	meansDrum = calc.Text("concrete in the drum")
	ruleHolds = calc.Text("A rule of thumb for plain mixes of 3 to 6 in (75 to 150 mm) of slump.")
	ofMost    = calc.Text("At most")
)

var perYardOf = &calc.Formula{
	ID: "per-yard", Title: calc.Text("Water in each cubic yard"), Expr: "W/V", Result: calc.Var{Symbol: "w", Meaning: meansPer},
	Vars: []calc.Var{{Symbol: "W", Meaning: meansW, Unit: "US gal"}, {Symbol: "V", Meaning: meansDrum, Unit: "yd³"}},
	Fn:   calc.Func2(PerYard), Go: "placing.PerYard", Source: "slump",
}

var slumpGain = &calc.Formula{
	ID: "slump", Title: calc.Text("Slump gained"), Expr: "k*w",
	Result: calc.Var{Symbol: "s", Meaning: calc.Text("slump gained"), Unit: "in"},
	Vars:   []calc.Var{{Symbol: "k", Meaning: meansEach, Unit: "in"}, {Symbol: "w", Meaning: meansPer}},
	Fn:     calc.Func2(ByRule), Go: "placing.ByRule", Source: "slump", Limits: ruleHolds,
}

var strengthLoss = &calc.Formula{
	ID: "strength", Title: calc.Text("Strength lost"), Expr: "k*w",
	Result: calc.Var{Symbol: "f", Meaning: calc.Text("strength lost"), Unit: "psi"},
	Vars:   []calc.Var{{Symbol: "k", Meaning: meansEach, Unit: "psi"}, {Symbol: "w", Meaning: meansPer}},
	Fn:     calc.Func2(ByRule), Go: "placing.ByRule", Source: "air", Limits: ruleHolds,
}

var waterCement = &calc.Formula{
	ID: "ratio", Title: calc.Text("Water-cement ratio after"), Expr: "r + 8.34*(W - W_h)/(V*c)",
	Result: calc.Var{Symbol: "r_a", Meaning: calc.Text("ratio after")},
	Vars: []calc.Var{{Symbol: "r", Meaning: calc.Text("ratio of the mix design")}, {Symbol: "W", Meaning: meansW, Unit: "US gal"},
		{Symbol: "W_h", Meaning: calc.Text("water withheld"), Unit: "US gal"}, {Symbol: "V", Meaning: meansDrum, Unit: "yd³"},
		{Symbol: "c", Meaning: calc.Text("cement in the mix"), Unit: "lb/yd³"}},
	Fn: calc.Func5(WaterCement), Go: "placing.WaterCement", Source: "weight",
}

var cementLost = &calc.Formula{
	ID: "cement", Title: calc.Text("Cement wasted"), Expr: "23.5*W",
	Result: calc.Var{Symbol: "m", Meaning: calc.Text("cement wasted"), Unit: "lb"},
	Vars:   []calc.Var{{Symbol: "W", Meaning: meansW, Unit: "US gal"}},
	Fn:     calc.Func1(CementLost), Go: "placing.CementLost", Source: "slump", Limits: ruleHolds,
}

const (
	refuseSoup  = calc.Text("This much water makes soup: no rule holds for it. Check the number and its unit.")
	noteTooMuch = calc.Text("{water} more than was withheld. It takes strength the wall never gets back. Call the plant, or send the load back.")
	noteNone    = calc.Text("Without withheld water on the ticket all the design water is in. Ask the plant for a water reducer.")
	noteRatio   = calc.Text("The water-cement ratio goes over the design. Where salt, frost or ground water bite, that limit is law.")
	noteWet     = calc.Text("The slump may pass {limit}. Above it the form carries the full fluid head. Check Form pressure first.")
	noteRange   = calc.Text("The rules were made for slumps of 3 to 6 in (75 to 150 mm). At your slump they are rougher still.")
	noteHeavy   = calc.Text("The rules were shown for up to 3 gal in a yard (15 L in a m³). This is more.")
	drawTicket  = calc.Text("Water against the ticket")
	drawSaid    = calc.Text("You would add {water}. The ticket shows {withheld} withheld. Strength lost: {least} to {most}.")
	drawLoss    = calc.Text("Strength lost: {least} to {most}")
)

// Rules of thumb for each gal/yd³: inches of slump, and psi of strength by
// what is known of the air.
const slumpLeast, slumpMost = 1.0, 1.25

func strengthRule(air string) (least, most float64) {
	switch air {
	case "no":
		return 150, 200
	case "yes":
		return 200, 400
	}
	return 150, 400
}

func computeWater(r *calc.Recorder, in calc.Case) {
	load, added, slump := in.Num("load"), in.Num("water"), in.Num("slump")
	each := r.Use(perYardOf, added, load)
	after := slump + slumpGain.Value(calc.SI(slumpLeast, "in"), each)
	if calc.Over(after, calc.SI(11, "in")) {
		r.Refuse(calc.At("water"), refuseSoup)
		return
	}
	wettest := math.Min(slump+r.UseFor(ofMost, nil, slumpGain, calc.SI(slumpMost, "in"), each), calc.SI(12, "in"))
	least, most := strengthRule(in.Choice("air"))
	r.Put("gal-per-yd", calc.SI(each, "US gal"))
	r.Put("litres-per-m", added/load)
	r.Put("slump-least", after)
	r.Put("slump-most", wettest)
	r.Put("strength-least", strengthLoss.Value(calc.SI(least, "psi"), each))
	r.Put("strength-most", r.UseFor(ofMost, nil, strengthLoss, calc.SI(most, "psi"), each))
	r.Put("cement-lost", r.Use(cementLost, added))
	ticket(r, in, added, load)
	if limit := calc.SI(7, "in"); calc.Over(wettest, limit) {
		r.Note(calc.LevelWarning, calc.At("slump"), noteWet, calc.Amount("limit", limit, &displays.Inches))
	}
	if calc.Over(calc.SI(3, "in"), slump) || calc.Over(slump, calc.SI(6, "in")) {
		r.Note(calc.LevelNotice, calc.At("slump"), noteRange)
	}
	if calc.Over(each, 3) {
		r.Note(calc.LevelNotice, calc.At("water"), noteHeavy)
	}
}

// ticket holds the water against what the ticket withheld.
func ticket(r *calc.Recorder, in calc.Case, added, load float64) {
	withheld := in.Num("withheld")
	tooMuch := math.Max(0, added-withheld)
	if !calc.Over(added, withheld) {
		tooMuch = 0
	}
	r.Put("may-add", withheld)
	r.Put("too-much", tooMuch)
	switch {
	case withheld == 0:
		r.PutChoice("verdict", none)
		r.Note(calc.LevelCaution, calc.At("withheld"), noteNone)
	case tooMuch > 0:
		r.PutChoice("verdict", beyond)
		r.Note(calc.LevelCaution, calc.At("water"), noteTooMuch, calc.Amount("water", tooMuch, &water))
	default:
		r.PutChoice("verdict", within)
	}
	if in.Has("cement") && in.Has("ratio") {
		r.Put("ratio-after", r.Use(waterCement, in.Num("ratio"), added, withheld, load, in.Num("cement")))
		if tooMuch > 0 {
			r.Note(calc.LevelNotice, calc.At("ratio"), noteRatio)
		}
	}
}

func drawWater(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	added, withheld := in.Num("water"), in.Num("withheld")
	role := figure.Beyond
	if res.Out.Choice("verdict") == within {
		role = figure.Within
	}
	slots := []calc.Slot{calc.Amount("water", added, &water), calc.Amount("withheld", withheld, &water),
		calc.Amount("least", res.Out.Num("strength-least"), &rough), calc.Amount("most", res.Out.Num("strength-most"), &rough)}
	nodes, foot := figure.Bars(0, []figure.Bar{
		{Role: figure.Foam, Name: v.Say(labelWithheld), Text: write(v, withheld, &water), Size: withheld},
		{Role: role, Name: v.Say(labelWater), Text: write(v, added, &water), Size: added},
	}, 0)
	nodes = append(nodes, figure.Text(figure.Number, figure.Point{X: 10, Y: foot + 10}, figure.Start, v.Say(drawLoss, slots...)))
	return figure.Drawing{Width: figure.ChartWidth, Height: foot + 18, Title: v.Say(drawTicket), Desc: v.Say(drawSaid, slots...), Nodes: nodes}
}
