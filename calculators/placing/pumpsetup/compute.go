package pumpsetup

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
)

const (
	askLoad = calc.Text("What load does the plate at the outrigger give? Without it no pad can be sized.")
	askHose = calc.Text("How long is the end hose? Measure it: the clear ring is farther than that.")

	askSpot = calc.Text(
		"{soil} is more than a table gives such ground. Is the report for this spot? No pad is sized until you say so.",
	)
	askWire = calc.Text("A voltage is entered, but no power line. Is one near? Then say so.")

	noteLoose = calc.Text(
		"This ground may hold no more than a slope of 1-1/2 to 1. So the pump stays farther back.",
	)
	noteFill = calc.Text(
		"No table has a pressure for ground that is not known, wet, loose or filled. Ask the engineer before the " +
			"outriggers go down.",
	)
	noteSmall = calc.Text("Your pads press {pressure} on the ground. It may carry {soil}. Use bigger pads.")
	noteTable = calc.Text("The table value is for ground that was never dug. The soil report comes before it.")
	noteKV    = calc.Text("If nobody knows the voltage, the boom stays {distance} off. Ask the power company.")
	noteOver  = calc.Text("Above 1000 kV the power company sets the distance. Do not set up before it has.")
)

// unknown is the distance from a power line of unknown voltage, in ft.
const unknown = 50

// carry returns the presumptive pressure of the ground in psf, and the factor of
// the setback. The pressure is 0 if no table has one.
func carry(ground string) (psf, factor float64) {
	switch ground {
	case clay:
		return 1500, 1
	case sand:
		return 2000, 1.5
	case gravel:
		return 3000, 1.5
	}
	return 0, 1.5
}

// compute sets the distances of a pump and the pads of its outriggers. It refuses
// nothing; it asks for what is not known.
func compute(r *calc.Recorder, in calc.Case) {
	psf, factor := carry(in.Choice("ground"))
	r.Put("setback", r.Use(placing.SetbackFormula, factor, in.Num("depth"), in.Num("asked")))
	if factor > 1 && in.Num("depth") > 0 {
		r.Note(calc.LevelNotice, calc.At("ground"), noteLoose)
	}
	putWire(r, in)
	if in.Has("hose") {
		r.Put("ring", in.Num("hose"))
	} else {
		r.Note(calc.LevelAsk, calc.At("hose"), askHose)
	}
	allowed := calc.SI(psf, "psf")
	if in.Has("report") {
		allowed = in.Num("report")
	}
	putPad(r, in, allowed)
}

// putWire sets the distance from a power line, the strictest that applies. Above
// the voltages of the table it warns and sets none unless the power company gave
// one.
func putWire(r *calc.Recorder, in calc.Case) {
	if !wired(in) {
		if in.Has("kv") {
			r.Note(calc.LevelAsk, calc.At("wire"), askWire)
		}
		return
	}
	feet := float64(unknown)
	if in.Has("kv") {
		kV := in.Num("kv") * (1 - calc.Slack)
		feet = placing.PumpFromWire(kV)
		if crane, known := placing.CraneFromWire(kV); known {
			r.Put("crane", calc.SI(crane, "ft"))
			feet = math.Max(feet, crane)
		} else {
			r.Note(calc.LevelDanger, calc.At("kv"), noteOver)
			if !in.Has("wire-asked") {
				return
			}
		}
	} else {
		r.Note(calc.LevelAsk, calc.At("kv"), noteKV, calc.Amount("distance", calc.SI(unknown, "ft"), &distance))
	}
	r.Put("wire-distance", math.Max(calc.SI(feet, "ft"), in.Num("wire-asked")))
}

// putPad sets the pad for one outrigger and checks the pads at hand. allowed is
// the pressure in Pa that the ground may carry, 0 if nothing gives it; it then
// warns and sets nothing. Nor does it where it asks about a pressure over the tables.
func putPad(r *calc.Recorder, in calc.Case, allowed float64) {
	if allowed == 0 {
		r.Note(calc.LevelWarning, calc.At("report"), noteFill)
		return
	}
	if hardReport(in) && !in.Flag("this-spot") {
		r.Note(calc.LevelAsk, calc.At("report"), askSpot, calc.Amount("soil", allowed, &soil))
		return
	}
	r.Put("soil", allowed)
	if !in.Has("report") {
		r.Note(calc.LevelNotice, calc.At("report"), noteTable)
	}
	if !in.Has("load") {
		r.Note(calc.LevelAsk, calc.At("load"), askLoad)
		return
	}
	load := in.Num("load")
	needed := r.Use(placing.PadAreaFormula, load, allowed)
	r.Put("pad-area", needed)
	r.Put("pad-side", r.Use(placing.PadSideFormula, needed))
	if !in.Has("pad") {
		return
	}
	pressure := r.Use(placing.PadPressureFormula, load, in.Num("pad"))
	r.Put("pad-pressure", pressure)
	r.PutChoice("own", carries)
	if calc.Over(pressure, allowed) {
		r.PutChoice("own", small)
		r.Note(calc.LevelDanger, calc.At("pad"), noteSmall,
			calc.Amount("pressure", pressure, &displays.Pressure), calc.Amount("soil", allowed, &soil))
	}
}
