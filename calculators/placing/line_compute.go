package placing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	meansBore = calc.Text("inside diameter")
	meansHose = calc.Text("filled hose")
	meansPipe = calc.Text("length of the line")
)

var lineVolume = &calc.Formula{
	ID: "volume", Title: calc.Text("Volume in a line"), Expr: "pi/4*d^2*L",
	Result: calc.Var{Symbol: "V", Meaning: calc.Text("volume in the line"), Unit: "m³", US: "ft³"},
	Vars:   []calc.Var{{Symbol: "d", Meaning: meansBore, Unit: "m", US: "ft"}, {Symbol: "L", Meaning: meansPipe, Unit: "m", US: "ft"}},
	Fn:     calc.Func2(LineVolume), Go: "placing.LineVolume", Source: "geometry",
}

var primeOf = &calc.Formula{
	ID: "prime", Title: calc.Text("Grout that coats a line"), Expr: "pi*d*L*f",
	Result: calc.Var{Symbol: "P", Meaning: calc.Text("grout for the prime"), Unit: "m³", US: "ft³"},
	Vars: []calc.Var{{Symbol: "d", Meaning: meansBore, Unit: "m", US: "ft"}, {Symbol: "L", Meaning: meansPipe, Unit: "m", US: "ft"},
		{Symbol: "f", Meaning: calc.Text("film of grout"), Unit: "m", US: "ft"}},
	Fn: calc.Func3(PrimeVolume), Go: "placing.PrimeVolume", Source: "prime",
}

var hoseWeight = &calc.Formula{
	ID: "hose", Title: calc.Text("Filled hose, by length"), Expr: "pi/4*d^2*w + e",
	Result: calc.Var{Symbol: "m", Meaning: meansHose, Unit: "kg/m", US: "lb/ft"},
	Vars: []calc.Var{{Symbol: "d", Meaning: meansBore, Unit: "m", US: "ft"},
		{Symbol: "w", Meaning: calc.Text("unit weight of the concrete"), Unit: "kg/m³", US: "lb/ft³"},
		{Symbol: "e", Meaning: calc.Text("empty hose"), Unit: "kg/m", US: "lb/ft"}},
	Fn: calc.Func3(HoseWeight), Go: "placing.HoseWeight", Source: "hose",
}

var hangingOf = &calc.Formula{
	ID: "hanging", Title: calc.Text("The hanging hose"), Expr: "m*l",
	Result: calc.Var{Symbol: "M", Meaning: calc.Text("mass that hangs"), Unit: "kg", US: "lb"},
	Vars: []calc.Var{{Symbol: "m", Meaning: meansHose, Unit: "kg/m", US: "lb/ft"},
		{Symbol: "l", Meaning: calc.Text("length that hangs"), Unit: "m", US: "ft"}},
	Fn: calc.Func2(Hanging), Go: "placing.Hanging", Source: "hose",
}

const (
	noteLift   = calc.Text("The filled hose weighs {mass}. One person lifts {limit} at most. Let the boom or a rope carry it and only guide.")
	noteStone  = calc.Text("The stone is over a third of the smallest diameter, {bore}. Such lines plug, and a plug makes the hose whip.")
	noteNarrow = calc.Text("Hoses up to {bore} take stone of {limit} only.")
	noteEnd    = calc.Text("No row has the end hose's diameter. Is it in the list of pipes and hoses?")
	notePrime  = calc.Text("The prime comes apart from the order. It never goes into the wall.")
	ofFirstRow = calc.Text("First row")
	drawHeld   = calc.Text("What line and hopper hold")
	drawHeldIn = calc.Text("Line and hose hold {line}, with the hopper {held}. The hanging hose weighs {mass} filled.")
	drawPiece  = calc.Text("{bore} × {length}")
	drawHopper = calc.Text("Hopper")
	drawBoth   = calc.Text("{yd} · {m}")
)

// oneLift is the load constant of the NIOSH lifting equation, in lb.
const oneLift = 51

func computeLine(r *calc.Recorder, in calc.Case) {
	var line, least, most float64
	smallest, listed := math.Inf(1), false
	for i, row := range in.Rows("lines") {
		bore, length := row.Num("bore"), row.Num("length")
		if i == 0 {
			r.UseFor(ofFirstRow, nil, lineVolume, bore, length)
			r.UseFor(ofFirstRow, nil, primeOf, bore, length, calc.SI(0.25, "in"))
		}
		line += lineVolume.Value(bore, length)
		least += primeOf.Value(bore, length, calc.SI(0.25, "in"))
		most += primeOf.Value(bore, length, calc.SI(0.5, "in"))
		smallest = math.Min(smallest, bore)
		listed = listed || math.Abs(bore-in.Num("hose")) < 1e-6
	}
	held := line + in.Num("hopper")
	extra := held
	if in.Choice("at-end") == "placed" {
		extra = in.Num("hopper")
	}
	putBoth(r, "line", line)
	putBoth(r, "held", held)
	putBoth(r, "extra", extra)
	putBoth(r, "prime-least", least)
	putBoth(r, "prime-most", most)
	weigh(r, in)
	r.Note(calc.LevelNotice, calc.At("lines"), notePrime)
	if !listed {
		r.Note(calc.LevelAsk, calc.At("hose"), noteEnd)
	}
	sayStone(r, in.Num("stone"), math.Min(smallest, in.Num("hose")))
}

func weigh(r *calc.Recorder, in calc.Case) {
	each := r.Use(hoseWeight, in.Num("hose"), in.Num("weight"), in.Num("empty"))
	mass := r.Use(hangingOf, each, in.Num("hanging"))
	r.Put("hose-mass", each)
	r.Put("hanging-mass", mass)
	if limit := calc.SI(oneLift, "lb"); calc.Over(mass, limit) {
		r.Note(calc.LevelWarning, calc.At("hanging"), noteLift, calc.Amount("mass", mass, &displays.MassUp), calc.Amount("limit", limit, &massDown))
	}
}

func sayStone(r *calc.Recorder, stone, bore float64) {
	narrow, fine := calc.SI(2.5, "in"), calc.SI(0.375, "in")
	switch {
	case calc.Over(stone, bore/3):
		r.Note(calc.LevelWarning, calc.At("stone"), noteStone, calc.Amount("bore", bore, &displays.Part))
	case !calc.Over(bore, narrow) && calc.Over(stone, fine):
		r.Note(calc.LevelWarning, calc.At("stone"), noteNarrow, calc.Amount("bore", narrow, &displays.Part), calc.Amount("limit", fine, &partDown))
	}
}

func drawLine(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	var bars []figure.Bar
	for _, row := range in.Rows("lines") {
		size := lineVolume.Value(row.Num("bore"), row.Num("length"))
		name := v.Say(drawPiece, calc.Amount("bore", row.Num("bore"), &displays.Part), calc.Amount("length", row.Num("length"), &displays.Height))
		bars = append(bars, figure.Bar{Role: figure.Concrete, Name: name, Text: both(v, size), Size: size})
	}
	bars = append(bars, figure.Bar{Role: figure.Foam, Name: v.Say(drawHopper), Text: both(v, in.Num("hopper")), Size: in.Num("hopper")})
	nodes, foot := figure.Bars(0, bars, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(drawHeld), Nodes: nodes,
		Desc: v.Say(drawHeldIn, calc.Word("line", both(v, res.Out.Num("line-yd"))), calc.Word("held", both(v, res.Out.Num("held-yd"))),
			calc.Amount("mass", res.Out.Num("hanging-mass"), &displays.MassUp))}
}

// both writes a volume in cubic yards and in cubic metres.
func both(v calc.Locale, si float64) string {
	return v.Say(drawBoth, calc.Amount("yd", si, &displays.CubicYards), calc.Amount("m", si, &displays.CubicMetres))
}
