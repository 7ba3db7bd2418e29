package consolidation

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

const (
	noteChargers = calc.Text("It takes {count} chargers to keep up. With fewer the stock of packs runs down over the pour.")
	notePower    = calc.Text("No charging on site: every pack must come charged.")
	noteSpare    = calc.Text("Without a spare, one bad pack stops a vibrator in the middle of a lift.")
	askCold      = calc.Text("Is it cold, or are the packs old? Then they run shorter than new. Enter your share.")
	noteHard     = calc.Text("A pack empties faster than anyone can change and charge it. Use a tool with a cord or motor.")

	drawPacks   = calc.Text("Packs with and without charging")
	drawWith    = calc.Text("Chargers on site")
	drawWithout = calc.Text("No charging")
	drawNeeds   = calc.Text("{with} packs with charging, {without} without, spare not counted. A pack lasts {lasts}.")
)

// hard is how short a pack may last before changing it is all one does.
const hard = 10 * 60 // s

func computeBattery(r *calc.Recorder, in calc.Case) {
	run := in.Num("minutes")
	if byLabel(in) {
		run = r.Use(eqRunTime, r.Use(eqWattHours, in.Num("volts"), in.Num("amp-hours")), in.Num("draw"))
	}
	lasts := r.Use(eqLasts, run, in.Num("cold"), in.Num("duty"))
	slots := in.Num("tools") * in.Num("in-tool")
	without := r.Use(eqUncharged, slots, in.Num("pour"), lasts)
	changes := without/slots - 1
	chargers := 0.0
	keepUp := 0.0
	if charges(in) {
		chargers = in.Num("chargers")
		keepUp = r.Use(eqChargers, slots, in.Num("charge"), lasts)
	}
	change, charged := Charging(int(slots), int(changes), int(chargers), lasts, in.Num("charge"))
	with := r.Use(eqBound, slots, float64(change), float64(charged))
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
	sayBattery(r, in, lasts, math.Min(keepUp, without-slots))
}

// sayBattery tells what the count hangs on. Chargers beyond the packs that
// are ever changed are of no use.
func sayBattery(r *calc.Recorder, in calc.Case, lasts, useful float64) {
	switch {
	case !charges(in):
		r.Note(calc.LevelNotice, calc.At("chargers"), notePower)
	case in.Num("chargers") < useful:
		r.Note(calc.LevelNotice, calc.At("chargers"), noteChargers, calc.Count("count", int(useful)))
	}
	if in.Num("spare") == 0 {
		r.Note(calc.LevelNotice, calc.At("spare"), noteSpare)
	}
	if in.Num("cold") == 0 {
		r.Note(calc.LevelAsk, calc.At("cold"), askCold)
	}
	if lasts < hard {
		r.Note(calc.LevelNotice, calc.At("duty"), noteHard)
	}
}

func drawBattery(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	count := func(id string) string { return quantity.Format(res.Out.Num(id), displays.Count, v.Style) }
	nodes, foot := figure.Bars(0, []figure.Bar{
		{Role: figure.Steel, Name: v.Say(drawWith), Text: count("with"), Size: res.Out.Num("with")},
		{Role: figure.Concrete, Name: v.Say(drawWithout), Text: count("without"), Size: res.Out.Num("without")},
	}, 0)
	return figure.Drawing{Width: figure.ChartWidth, Height: foot, Title: v.Say(drawPacks), Nodes: nodes,
		Desc: v.Say(drawNeeds, calc.Word("with", count("with")), calc.Word("without", count("without")),
			calc.Amount("lasts", res.Out.Num("lasts"), &displays.Minutes))}
}
