package pressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	ciriaForm  = calc.Text("The form cannot be lower than what is placed: {height}.")
	ciriaCold  = calc.Text("The concrete is below {limit}, the coldest of the method. The full fluid head counts.")
	ciriaHot   = calc.Text("Heat above {limit} earns no credit.")
	ciriaWay   = calc.Text("The method holds for placing from the top with a poker inside. Otherwise the full fluid head counts.")
	ciriaFills = calc.Text("At this rise the form fills before the concrete stiffens. The full fluid head counts.")
	ciriaDrawn = calc.Text("The DIN line takes your setting time as true for this concrete temperature.")
)

func ciriaPour(in calc.Case) sharedCase {
	p := pourOf(in)
	p.form, p.column = in.Num("form-height"), in.Choice("shape") == asColumn
	return p
}

func computeCIRIA(r *calc.Recorder, in calc.Case) {
	p := ciriaPour(in)
	if calc.Under(p.form, p.height) {
		r.Refuse(calc.At("form-height"), ciriaForm, calc.Amount("height", p.height, &displays.Height))
		return
	}
	c2 := CIRIAMix(p.cement, p.retarded)
	r.Put("c1", p.c1())
	r.Put("c2", c2)
	r.Put("k", r.Use(eqCIRIAK, calc.SI(p.credit(), "°C")))
	head := r.UseFor(ofHeight, nil, eqHead, in.Num("weight"), p.height)
	own := p.ciria()
	fills := CIRIAPressure(p.weight, p.c1(), c2, 0, p.form, p.rise)
	switch {
	case !p.ciriaHolds():
	case math.IsNaN(fills): // no root: C_1·√R is above H
		r.Note(calc.LevelNotice, calc.At("rise"), ciriaFills)
	default:
		greatest := r.Use(eqCIRIA, in.Num("weight"), p.c1(), c2, CIRIATemperature(p.credit()), p.form, in.Num("rise"))
		r.Use(eqCapped, greatest, head)
	}
	sayCIRIA(r, p)
	putCompare(r, in, p, own)
	r.Note(calc.LevelNotice, calc.At("set"), ciriaDrawn)
}

func sayCIRIA(r *calc.Recorder, p sharedCase) {
	switch {
	case calc.Under(p.temp, CIRIAColdest):
		r.Note(calc.LevelWarning, calc.At("temperature"), ciriaCold, calc.Amount("limit", calc.SI(CIRIAColdest, "°C"), &displays.TemperatureAtLeast))
	case calc.Over(p.temp, CIRIAWarmest):
		r.Note(calc.LevelNotice, calc.At("temperature"), ciriaHot, calc.Amount("limit", calc.SI(CIRIAWarmest, "°C"), &displays.TemperatureAtMost))
	}
	if p.way != fromTop || p.class == selfLevels {
		r.Note(calc.LevelWarning, calc.At("way"), ciriaWay)
	}
}
