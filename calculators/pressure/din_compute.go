package pressure

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	dinRise   = calc.Text("The rise is above {limit}, the fastest of the method. The full fluid head counts.")
	dinHeight = calc.Text("More than {limit} is placed in one go. The method ends there: the full fluid head counts.")
	dinLong   = calc.Text("The setting time is above 20 h. The method ends there: the full fluid head counts.")
	dinShort  = calc.Text("A setting time below 5 h earns no credit. It is counted as 5 h.")
	dinWay    = calc.Text("The method holds for placing from the top, with a poker inside. Otherwise the full fluid head counts.")
	dinCool   = calc.Text("The concrete is cooler than its setting time holds for. It sets later: 3% more for each °C (1.8 °F).")
	dinDesign = calc.Text("For limit state design multiply by 1.5. That would be {pressure}. Ratings as allowed pressure take the value as it is.")
	dinDrawn  = calc.Text("The CIRIA line is drawn for a wall form just as high as what is placed.")
)

func dinPour(in calc.Case) sharedCase {
	p := pourOf(in)
	p.ref = calc.From(in.Num("set-at"), "°C")
	return p
}

func computeDIN(r *calc.Recorder, in calc.Case) {
	p, c := dinPour(in), classOf(in.Choice("class"))
	set := calc.SI(p.hours(), "h")
	cool := r.Use(eqDINCool, in.Num("set-at"), in.Num("temperature"))
	k1 := p.hours() / DINSetLow
	if !c.flows() {
		k1 = r.Use(eqDINSet, c.set, set)
	}
	r.Put("cool", cool)
	r.Put("k1", k1)
	head := r.UseFor(ofHeight, nil, eqHead, in.Num("weight"), p.height)
	if p.dinHolds() {
		var greatest float64
		if c.flows() {
			greatest = r.Use(eqDINFlowing, c.reach, in.Num("rise"), set, cool, in.Num("weight"))
		} else {
			greatest = r.Use(eqDINStiff, c.slope, kPa(c.base), in.Num("rise"), k1, cool, in.Num("weight"))
		}
		r.Use(eqCapped, greatest, head)
	}
	sayDIN(r, p, cool)
	own := p.din()
	putCompare(r, in, p, own)
	r.Note(calc.LevelNotice, calc.Path{}, dinDesign, calc.Amount("pressure", kPa(DINFactor*own.pressure), &displays.Pressure))
	r.Note(calc.LevelNotice, calc.Path{}, dinDrawn)
}

func sayDIN(r *calc.Recorder, p sharedCase, cool float64) {
	if p.way != fromTop {
		r.Note(calc.LevelWarning, calc.At("way"), dinWay)
	}
	if calc.Over(p.rise, DINRise) {
		r.Note(calc.LevelWarning, calc.At("rise"), dinRise, calc.Amount("limit", calc.SI(DINRise, "m/h"), &displays.RiseAtMost))
	}
	if calc.Over(p.height, DINHeight) {
		r.Note(calc.LevelWarning, calc.At("height"), dinHeight, calc.Amount("limit", DINHeight, &displays.HeightAtMost))
	}
	switch {
	case calc.Over(p.set, DINSetHigh):
		r.Note(calc.LevelWarning, calc.At("set"), dinLong)
	case calc.Under(p.set, DINSetLow):
		r.Note(calc.LevelNotice, calc.At("set"), dinShort)
	}
	if calc.Over(cool, 1) {
		r.Note(calc.LevelNotice, calc.At("temperature"), dinCool)
	}
}
