package batterypacks

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
)

const (
	noteChargers = calc.Text(
		"It takes {count} chargers to keep up. With fewer the stock of packs runs down over the pour.",
	)
	notePower = calc.Text("No charging on site: every pack must come charged.")
	noteSpare = calc.Text("Without a spare, one bad pack stops a vibrator in the middle of a lift.")
	askCold   = calc.Text("Is it cold, or are the packs old? Then they run shorter than new. Enter your share.")
	noteHard  = calc.Text(
		"A pack empties faster than anyone can change and charge it. Use a tool with a cord or motor.",
	)
)

// shortest is the time between changes, in s, below which a tool with a cord or
// motor is recommended.
const shortest = 10 * 60

// compute sets the number of packs with and without charging. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	run := in.Num("minutes")
	if byLabel(in) {
		run = r.Use(
			consolidation.RunTimeFormula,
			r.Use(consolidation.WattHoursFormula, in.Num("volts"), in.Num("amp-hours")),
			in.Num("draw"),
		)
	}
	lasts := r.Use(consolidation.LastsFormula, run, in.Num("cold"), in.Num("duty"))
	slots := in.Num("tools") * in.Num("in-tool")
	without := r.Use(consolidation.UnchargedFormula, slots, in.Num("pour"), lasts)
	changes := without/slots - 1
	chargers := 0.0
	keepUp := 0.0
	if charges(in) {
		chargers = in.Num("chargers")
		keepUp = r.Use(consolidation.ChargersFormula, slots, in.Num("charge"), lasts, without)
	}
	change, charged := consolidation.Charging(int(slots), int(changes), int(chargers), lasts, in.Num("charge"))
	with := r.Use(consolidation.BoundFormula, slots, float64(change), float64(charged))
	r.Put("run", run)
	r.Put("lasts", lasts)
	r.Put("changes", changes)
	r.Put("without", without)
	r.Put("bring-without", without+in.Num("spare"))
	r.Put("with", with)
	r.Put("bring", with+in.Num("spare"))
	if charges(in) {
		r.Put("keep-up", keepUp)
	}
	addNotes(r, in, lasts, keepUp)
}

// addNotes records a note for each thing that the count depends on. lasts is in s;
// keepUp is the number of chargers that keep up.
func addNotes(r *calc.Recorder, in calc.Case, lasts, keepUp float64) {
	switch {
	case !charges(in):
		r.Note(calc.LevelNotice, calc.At("chargers"), notePower)
	case in.Num("chargers") < keepUp:
		r.Note(calc.LevelNotice, calc.At("chargers"), noteChargers, calc.Count("count", int(keepUp)))
	}
	if in.Num("spare") == 0 {
		r.Note(calc.LevelNotice, calc.At("spare"), noteSpare)
	}
	if in.Num("cold") == 0 {
		r.Note(calc.LevelAsk, calc.At("cold"), askCold)
	}
	if lasts < shortest {
		r.Note(calc.LevelNotice, calc.At("duty"), noteHard)
	}
}
