package truckspacing

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
)

const (
	noteOld = calc.Text(
		"The last of a truck is {age} old. The limit is {limit}. Do not order it so: use smaller loads, a nearer " +
			"plant or a faster pump. A retarder does not move the limit.",
	)
	noteNear  = calc.Text("The last of a truck is {age} old. A short delay takes it over {limit}.")
	noteQueue = calc.Text(
		"If trucks wait on site they reach {age}, over {limit}. Have the plant send one every {spacing}.",
	)
	noteStarved = calc.Text(
		"The pump stands {wait} for each truck. Keep the top of the wall fresh, or get {trucks} trucks.",
	)
)

const noteHungry = calc.Text(
	"The pump stands {wait} for each truck. The longest planned pause is {pause}. Get {trucks} trucks, or do not " +
		"start.",
)

// nearLimit is the time below the limit from which the age is noted, in s.
const nearLimit = 15 * 60

// compute sets the number and spacing of trucks and the age of the concrete. It
// refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	load, check, haul, wait := in.Num("load"), in.Num("check"), in.Num("haul"), in.Num("wait")
	back := haul
	if in.Has("back") {
		back = in.Num("back")
	}
	volume := math.Min(in.Num("truck"), in.Num("order"))
	spacing := r.Use(placing.SpacingFormula, volume, in.Num("rate"))
	cycle := r.Use(placing.CycleFormula, load, check, haul, wait, spacing, in.Num("wash"), back)
	loads := r.Use(placing.LoadsFormula, in.Num("order"), in.Num("truck"))
	trucks := r.Use(placing.TrucksFormula, cycle, spacing, loads)
	age := r.Use(placing.AgeAtEndFormula, load, check, haul, wait, spacing)
	r.Put("trucks", trucks)
	r.Put("spacing", spacing)
	r.Put("age-first", load+check+haul+wait)
	r.Put("age-last", age)
	r.Put("cycle", cycle)
	r.Put("per-pump", cycle/spacing)
	r.Put("loads", loads)
	noteAge(r, age, in.Num("limit"))
	putWaits(r, in, fleet{cycle: cycle, spacing: spacing, trucks: trucks, loads: loads, age: age, volume: volume})
}

// noteAge notes an age, in s, over the limit or near it.
func noteAge(r *calc.Recorder, age, limit float64) {
	slots := []calc.Slot{calc.Amount("age", age, &placing.MinutesUp), calc.Amount("limit", limit, &displays.Minutes)}
	switch {
	case calc.Over(age, limit):
		r.Note(calc.LevelWarning, calc.At("limit"), noteOld, slots...)
	case limit-age < nearLimit:
		r.Note(calc.LevelNotice, calc.At("limit"), noteNear, slots...)
	}
}

// fleet holds the results for the trucks of a job: times in s, the trucks that
// keep the pump fed, the loads, and the volume of one in m³.
type fleet struct{ cycle, spacing, trucks, loads, age, volume float64 }

// longestPause returns the longest pause of the pump that may be planned, in s: of the
// amount entered and the house rule the shorter one.
func longestPause(in calc.Case) float64 {
	most := math.Inf(1)
	if in.Has("pause") {
		most = in.Num("pause")
	}
	if house, ok := in.HouseAmount("pause"); ok {
		most = math.Min(most, house)
	}
	return most
}

// putWaits sets how long pump and trucks wait with the trucks at hand, and notes a pump
// that waits. A wait past the longest pause is no plan, nor is concrete past its limit,
// fed or not. With one truck for each load nothing waits.
func putWaits(r *calc.Recorder, in calc.Case, f fleet) {
	n := f.trucks
	if in.Has("have") {
		n = math.Min(in.Num("have"), f.loads)
	}
	var pump, truck float64
	if n < f.loads {
		pump = r.Use(placing.PumpWaitFormula, f.cycle, n, f.spacing)
		truck = r.Use(placing.TruckWaitFormula, n, f.spacing, f.cycle)
	}
	r.Put("pump-wait", pump)
	r.Put("truck-wait", truck)
	r.Put("real-rate", f.volume/(f.spacing+pump))
	r.PutChoice("feed", fed)
	if pump > calc.Slack*f.spacing {
		wait, trucks := calc.Amount("wait", pump, &placing.MinutesUp), calc.Count("trucks", int(f.trucks))
		if most := longestPause(in); calc.Over(pump, most) {
			r.PutChoice("feed", hungry)
			r.Note(calc.LevelWarning, calc.At("have"), noteHungry, wait,
				calc.Amount("pause", most, &displays.MinutesAtMost), trucks)
		} else {
			r.PutChoice("feed", starved)
			r.Note(calc.LevelNotice, calc.At("have"), noteStarved, wait, trucks)
		}
	}
	if calc.Over(f.age, in.Num("limit")) {
		r.PutChoice("feed", old)
	}
	if limit := in.Num("limit"); !calc.Over(f.age, limit) && calc.Over(f.age+truck, limit) {
		r.Note(calc.LevelNotice, calc.At("have"), noteQueue, calc.Amount("age", f.age+truck, &placing.MinutesUp),
			calc.Amount("limit", limit, &displays.Minutes), calc.Amount("spacing", f.spacing, &displays.Minutes))
	}
}
