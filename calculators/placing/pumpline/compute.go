package pumpline

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
)

const (
	noteLift = calc.Text(
		"The filled hose weighs {mass}. One person lifts {limit} at most. Let the boom or a rope carry it and only " +
			"guide.",
	)
	noteStone = calc.Text(
		"The stone is over a third of the smallest diameter, {bore}. Such lines plug, and a plug makes the hose whip.",
	)
	noteNarrow = calc.Text("Hoses up to {bore} take stone of {limit} only.")
	noteEnd    = calc.Text("No row has the end hose's diameter. Is it in the list of pipes and hoses?")
	notePrime  = calc.Text("The prime comes apart from the order. It never goes into the wall.")
	ofFirstRow = calc.Text("First row")
)

// compute sets the volumes and the weight of a pump line. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	var line, least, most float64
	smallest, listed := math.Inf(1), false
	for i, row := range in.Rows("lines") {
		bore, length := row.Num("bore"), row.Num("length")
		if i == 0 {
			r.UseFor(ofFirstRow, nil, placing.LineVolumeFormula, bore, length)
			r.UseFor(ofFirstRow, nil, placing.PrimeVolumeFormula, bore, length, calc.SI(0.25, "in"))
		}
		line += placing.LineVolumeFormula.Value(bore, length)
		least += placing.PrimeVolumeFormula.Value(bore, length, calc.SI(0.25, "in"))
		most += placing.PrimeVolumeFormula.Value(bore, length, calc.SI(0.5, "in"))
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
	checkStone(r, in.Num("stone"), math.Min(smallest, in.Num("hose")))
}

// weigh sets the weight of the hose, and warns of one that is too heavy to lift.
func weigh(r *calc.Recorder, in calc.Case) {
	each := r.Use(placing.HoseWeightFormula, in.Num("hose"), in.Num("weight"), in.Num("empty"))
	mass := r.Use(placing.HangingFormula, each, in.Num("hanging"))
	r.Put("hose-mass", each)
	r.Put("hanging-mass", mass)
	if limit := calc.SI(displays.OneLift, "lb"); calc.Over(mass, limit) {
		r.Note(
			calc.LevelWarning,
			calc.At("hanging"),
			noteLift,
			calc.Amount("mass", mass, &displays.MassUp),
			calc.Amount("limit", limit, &massDown),
		)
	}
}

// checkStone warns of a stone too large for the smallest bore, both in m.
func checkStone(r *calc.Recorder, stone, bore float64) {
	narrow, fine := calc.SI(2.5, "in"), calc.SI(0.375, "in")
	switch {
	case calc.Over(stone, bore/3):
		r.Note(calc.LevelWarning, calc.At("stone"), noteStone, calc.Amount("bore", bore, &displays.Part))
	case !calc.Over(bore, narrow) && calc.Over(stone, fine):
		r.Note(
			calc.LevelWarning,
			calc.At("stone"),
			noteNarrow,
			calc.Amount("bore", narrow, &displays.Part),
			calc.Amount("limit", fine, &partDown),
		)
	}
}
