package bardata

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/steel"
)

const (
	noteHeavy = calc.Text("One bar weighs {weight}. Carry it with two or more, or lift it by machine.")
	noteCSA   = calc.Text("For hooks of metric bars, see CSA A23.1 or the drawings.")
)

// heavyLift is the mass above which one bar is more than one hand should
// carry, kg: common practice, 50 lb.
const heavyLift = 50 * 0.45359237

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
	if calc.Over(one, heavyLift) {
		r.Note(calc.LevelCaution, calc.At("length"), noteHeavy, calc.Amount("weight", one, &displays.MassUp))
	}
}

// steelDensity is the density of reinforcing steel, kg/m³: 7850 (490 lb/ft³).
const steelDensity = 7850
