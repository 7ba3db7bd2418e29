package ciriapressure

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

const (
	form = calc.Text("The form cannot be lower than what is placed: {height}.")
	cold = calc.Text("The concrete is below {limit}, the coldest of the method. The full fluid head counts.")
	hot  = calc.Text("Heat above {limit} earns no credit.")
	way  = calc.Text(
		"The method holds for placing from the top, with a vibrator inside. Otherwise the full fluid head counts.",
	)
	ciriaFills = calc.Text("At this rise the form fills before the concrete stiffens. The full fluid head counts.")
	drawn      = calc.Text("The DIN line takes your setting time as true for this concrete temperature.")
)

func pour(in calc.Case) pressure.SharedCase {
	p := pressure.PourOf(in)
	p.Form, p.Column = in.Num("form-height"), in.Choice("shape") == asColumn
	return p
}

func compute(r *calc.Recorder, in calc.Case) {
	p := pour(in)
	if calc.Under(p.Form, p.Height) {
		r.Refuse(calc.At("form-height"), form, calc.Amount("height", p.Height, &displays.Height))
		return
	}
	c2 := pressure.CIRIAMix(p.Cement, p.Retarded)
	r.Put("c1", p.C1())
	r.Put("c2", c2)
	r.Put("k", r.Use(pressure.CIRIATemperatureFormula, calc.SI(p.Credit(), "°C")))
	head := r.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, in.Num("weight"), p.Height)
	result := p.CIRIA()
	fills := pressure.CIRIAPressure(p.Weight, p.C1(), c2, 0, p.Form, p.Rise)
	switch {
	case !p.CIRIAHolds():
	case math.IsNaN(fills): // no root: C_1·√R is above H
		r.Note(calc.LevelNotice, calc.At("rise"), ciriaFills)
	default:
		greatest := r.Use(pressure.CIRIAPressureFormula, in.Num("weight"), p.C1(), c2,
			pressure.CIRIATemperature(p.Credit()), p.Form, in.Num("rise"))
		r.Use(pressure.CappedFormula, greatest, head)
	}
	addNotes(r, p)
	pressure.PutComparison(r, in, p, result)
	r.Note(calc.LevelNotice, calc.At("set"), drawn)
}

func addNotes(r *calc.Recorder, p pressure.SharedCase) {
	switch {
	case calc.Under(p.Temp, pressure.CIRIAColdest):
		r.Note(calc.LevelWarning, calc.At("temperature"), cold,
			calc.Amount("limit", calc.SI(pressure.CIRIAColdest, "°C"), &displays.TemperatureAtLeast))
	case calc.Over(p.Temp, pressure.CIRIAWarmest):
		r.Note(calc.LevelNotice, calc.At("temperature"), hot,
			calc.Amount("limit", calc.SI(pressure.CIRIAWarmest, "°C"), &displays.TemperatureAtMost))
	}
	if p.Way != pressure.FromTop || p.Class == pressure.SelfLevels {
		r.Note(calc.LevelWarning, calc.At("way"), way)
	}
}
