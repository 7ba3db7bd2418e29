package dinpressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
)

const (
	rise   = calc.Text("The rise is above {limit}, the fastest of the method. The full fluid head counts.")
	height = calc.Text("More than {limit} is placed in one go. The method ends there: the full fluid head counts.")
	long   = calc.Text("The setting time is above 20 h. The method ends there: the full fluid head counts.")
	short  = calc.Text("A setting time below 5 h earns no credit. It is counted as 5 h.")
	way    = calc.Text(
		"The method holds for placing from the top, with a vibrator inside. Otherwise the full fluid head counts.",
	)
	dinCool = calc.Text(
		"The concrete is cooler than its setting time holds for. It sets later: 3% more for each °C (1.8 °F).",
	)
	design = calc.Text(
		"For limit state design multiply the pressure shown by 1.5. Ratings as allowed pressure take it as it is.",
	)
	drawn = calc.Text("The CIRIA line is drawn for a wall form just as high as what is placed.")
)

func pour(in calc.Case) pressure.SharedCase {
	p := pressure.PourOf(in)
	p.Ref = calc.From(in.Num("set-at"), "°C")
	return p
}

func compute(r *calc.Recorder, in calc.Case) {
	p, c := pour(in), pressure.ClassOf(in.Choice("class"))
	set := calc.SI(p.Hours(), "h")
	cool := r.Use(pressure.DINCoolFormula, in.Num("set-at"), in.Num("temperature"))
	k1 := p.Hours() / pressure.DINSetLow
	if !c.Flows() {
		k1 = r.Use(pressure.DINSetFormula, c.Set, set)
	}
	r.Put("cool", cool)
	r.Put("k1", k1)
	head := r.UseFor(pressure.OfHeight, nil, pressure.FluidHeadFormula, in.Num("weight"), p.Height)
	if p.DINHolds() {
		var greatest float64
		if c.Flows() {
			greatest = r.Use(pressure.DINFlowingFormula, c.Reach, in.Num("rise"), set, cool, in.Num("weight"))
		} else {
			greatest = r.Use(pressure.DINStiffFormula, c.Slope, pressure.KPa(c.Base), in.Num("rise"), k1, cool,
				in.Num("weight"))
		}
		r.Use(pressure.CappedFormula, greatest, head)
	}
	addNotes(r, p, cool)
	result := p.DIN()
	pressure.PutComparison(r, in, p, result)
	r.Note(calc.LevelNotice, calc.Path{}, design)
	r.Note(calc.LevelNotice, calc.Path{}, drawn)
}

func addNotes(r *calc.Recorder, p pressure.SharedCase, cool float64) {
	if p.Way != pressure.FromTop {
		r.Note(calc.LevelWarning, calc.At("way"), way)
	}
	if calc.Over(p.Rise, pressure.DINRise) {
		r.Note(calc.LevelWarning, calc.At("rise"), rise,
			calc.Amount("limit", calc.SI(pressure.DINRise, "m/h"), &displays.RiseAtMost))
	}
	if calc.Over(p.Height, pressure.DINHeight) {
		r.Note(calc.LevelWarning, calc.At("height"), height,
			calc.Amount("limit", pressure.DINHeight, &displays.HeightAtMost))
	}
	switch {
	case calc.Over(p.Set, pressure.DINSetHigh):
		r.Note(calc.LevelWarning, calc.At("set"), long)
	case calc.Under(p.Set, pressure.DINSetLow):
		r.Note(calc.LevelNotice, calc.At("set"), short)
	}
	if calc.Over(cool, 1) {
		r.Note(calc.LevelNotice, calc.At("temperature"), dinCool)
	}
}
