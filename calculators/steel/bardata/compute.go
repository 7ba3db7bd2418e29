package bardata

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

const (
	noteShare = calc.Text(
		"One bar weighs {weight}. {count} people carry it, spread along the bar: one person lifts {limit} at most.",
	)
	noteMachine = calc.Text(
		"One bar weighs {weight}. Lift it by machine. {most} people could lift {limit} each, and more cannot keep " +
			"step on one bar: our own limit.",
	)
	noteCSA = calc.Text("For hooks of metric bars, see CSA A23.1 or the drawings.")
)

// mostCarry is the greatest number of people on one bar. Our own limit.
const mostCarry = 4

// compute sets dimensions and weight of the bars. It refuses nothing; a bar
// without a known bend gets no hook.
func compute(r *calc.Recorder, in calc.Case) {
	b, length, count := steel.BarOf(in, "bar"), in.Num("length"), in.Num("count")
	one := b.Mass * length
	r.Put("weight", r.Use(steel.BarWeightFormula, b.Mass, length, count))
	r.Put("one", one)
	r.Put("diameter", b.Diameter)
	r.Put("area", b.Area)
	r.Put("mass", b.Mass)
	r.Put("total", length*count)
	r.Use(steel.RoundAreaFormula, b.Diameter)
	r.Use(steel.MassPerLengthFormula, steelDensity, b.Area)
	if b.Bend > 0 {
		r.Put("bend", b.Bend*b.Diameter)
		r.Put("hook", r.Use(steel.HookLengthFormula, b.Diameter, b.Bend))
	} else {
		r.Note(calc.LevelNotice, calc.At("bar"), noteCSA)
	}
	noteCarry(r, one)
}

// noteCarry notes the people that one bar of a mass in kg takes, or that it takes a machine.
func noteCarry(r *calc.Recorder, one float64) {
	limit := calc.SI(displays.OneLift, "lb")
	weight, each := calc.Amount("weight", one, &displays.MassUp), calc.Amount("limit", limit, &displays.Mass)
	switch people := calc.Ceil(one / limit); {
	case people > mostCarry:
		r.Note(calc.LevelWarning, calc.At("length"), noteMachine, weight, calc.Count("most", mostCarry), each)
	case people > 1:
		r.Note(calc.LevelCaution, calc.At("length"), noteShare, weight, calc.Count("count", int(people)), each)
	}
}

// steelDensity is the density of reinforcing steel, kg/m³: 7850 (490 lb/ft³).
const steelDensity = 7850
