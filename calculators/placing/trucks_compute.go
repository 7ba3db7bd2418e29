package placing

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/figure"
)

const (
	noteOld     = calc.Text("The last of a truck is {age} old. The limit is {limit}. Use smaller loads, a nearer plant, or a mix made to last.")
	noteNear    = calc.Text("The last of a truck is {age} old. A short delay takes it over {limit}.")
	noteQueue   = calc.Text("If trucks wait on site they reach {age}, over {limit}. Have the plant send one every {spacing}.")
	noteStarved = calc.Text("The pump stands {wait} for each truck. Keep the top of the wall alive, or get {trucks} trucks.")
	drawFleet   = calc.Text("Truck loads over time")
	drawFleetIn = calc.Text("{trucks} trucks, one every {spacing}. The last of each is out {age} after loading starts.")
	drawSpaced  = calc.Text("One truck every {spacing}")
	drawHaul    = calc.Text("Load, drive, wait")
	drawUnload  = calc.Text("Discharge")
)

const nearLimit = 15 * 60 // s

func computeTrucks(r *calc.Recorder, in calc.Case) {
	load, check, haul, wait := in.Num("load"), in.Num("check"), in.Num("haul"), in.Num("wait")
	back := haul
	if in.Has("back") {
		back = in.Num("back")
	}
	spacing := r.Use(spacingOf, in.Num("truck"), in.Num("rate"))
	cycle := r.Use(cycleOf, load, check, haul, wait, spacing, in.Num("wash"), back)
	loads := r.Use(loadCount, in.Num("order"), in.Num("truck"))
	trucks := r.Use(truckCount, cycle, spacing, loads)
	age := r.Use(ageAtEnd, load, check, haul, wait, spacing)
	r.Put("trucks", trucks)
	r.Put("spacing", spacing)
	r.Put("age-first", load+check+haul+wait)
	r.Put("age-last", age)
	r.Put("cycle", cycle)
	r.Put("per-pump", cycle/spacing)
	r.Put("loads", loads)
	sayAge(r, age, in.Num("limit"))
	feed(r, in, fleet{cycle: cycle, spacing: spacing, trucks: trucks, loads: loads, age: age})
}

func sayAge(r *calc.Recorder, age, limit float64) {
	slots := []calc.Slot{calc.Amount("age", age, &minutesUp), calc.Amount("limit", limit, &displays.Minutes)}
	switch {
	case calc.Over(age, limit):
		r.Note(calc.LevelCaution, calc.At("limit"), noteOld, slots...)
	case limit-age < nearLimit:
		r.Note(calc.LevelNotice, calc.At("limit"), noteNear, slots...)
	}
}

// fleet is the trucks of a job: times in s, and trucks that keep it fed.
type fleet struct{ cycle, spacing, trucks, loads, age float64 }

// feed tells who waits with the trucks there are. Trucks that each come once
// wait for nobody.
func feed(r *calc.Recorder, in calc.Case, f fleet) {
	n := f.trucks
	if in.Has("have") {
		n = math.Min(in.Num("have"), f.loads)
	}
	var pump, truck float64
	if n < f.loads {
		pump = r.Use(pumpWait, f.cycle, n, f.spacing)
		truck = r.Use(truckWait, n, f.spacing, f.cycle)
	}
	r.Put("pump-wait", pump)
	r.Put("truck-wait", truck)
	r.Put("real-rate", in.Num("truck")/(f.spacing+pump))
	r.PutChoice("feed", fed)
	if pump > calc.Slack*f.spacing {
		r.PutChoice("feed", starved)
		r.Note(calc.LevelNotice, calc.At("have"), noteStarved, calc.Amount("wait", pump, &minutesUp), calc.Count("trucks", int(f.trucks)))
	}
	if limit := in.Num("limit"); !calc.Over(f.age, limit) && calc.Over(f.age+truck, limit) {
		r.Note(calc.LevelNotice, calc.At("have"), noteQueue, calc.Amount("age", f.age+truck, &minutesUp),
			calc.Amount("limit", limit, &displays.Minutes), calc.Amount("spacing", f.spacing, &displays.Minutes))
	}
}

// drawTrucks shows up to six trucks below each other on one line of time:
// each is loaded, driven and emptied while the next one comes.
func drawTrucks(v calc.Locale, in calc.Case, res calc.Result) figure.Drawing {
	if res.State != calc.OK {
		return figure.Drawing{}
	}
	const left, right, step, tall = 30.0, 330.0, 26.0, 14.0
	gap := res.Out.Num("spacing") + res.Out.Num("pump-wait")
	first, last := res.Out.Num("age-first"), res.Out.Num("age-last")
	rows := int(math.Min(res.Out.Num("loads"), 6))
	scale := (right - left) / (float64(float64(rows-1)*gap) + last)
	spacing := calc.Amount("spacing", gap, &displays.Minutes)
	nodes := []figure.Node{figure.Text(figure.Number, figure.Point{X: 10, Y: 16}, figure.Start, v.Say(drawSpaced, spacing))}
	for i := range rows {
		y := 26 + float64(float64(i)*step)
		start := left + float64(float64(i)*gap*scale)
		out, end := start+float64(first*scale), math.Min(start+float64(last*scale), right)
		nodes = append(nodes,
			figure.Text(figure.Label, figure.Point{X: 10, Y: y + tall - 2}, figure.Start, strconv.Itoa(i+1)),
			figure.Segment(figure.Measure, figure.Point{X: start, Y: y + tall/2}, figure.Point{X: out, Y: y + tall/2}),
			figure.Rect(figure.Concrete, figure.Point{X: out, Y: y}, math.Max(end-out, 0), tall))
	}
	y := 26 + float64(float64(rows)*step) + 14
	nodes = append(nodes,
		figure.Segment(figure.Measure, figure.Point{X: 10, Y: y - 5}, figure.Point{X: 30, Y: y - 5}),
		figure.Text(figure.Label, figure.Point{X: 36, Y: y}, figure.Start, v.Say(drawHaul)),
		figure.Rect(figure.Concrete, figure.Point{X: 220, Y: y - tall + 2}, 20, tall),
		figure.Text(figure.Label, figure.Point{X: 246, Y: y}, figure.Start, v.Say(drawUnload)))
	return figure.Drawing{Width: figure.ChartWidth, Height: y + 10, Title: v.Say(drawFleet), Nodes: nodes,
		Desc: v.Say(drawFleetIn, calc.Count("trucks", int(res.Out.Num("trucks"))), spacing, calc.Amount("age", last, &minutesUp))}
}
