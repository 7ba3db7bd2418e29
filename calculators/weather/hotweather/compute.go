package hotweather

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/weather"
)

const (
	noteLate = calc.Text(
		"The time is up. This load is refused and does not go in the wall. Call the plant before the next truck " +
			"leaves.",
	)
	noteTurns = calc.Text("The drum has made all turns allowed. Grinding heats and stiffens the mix.")
	noteToo   = calc.Text(
		"A load over {limit} is refused and does not go in the wall. Tell the plant before the next truck leaves.",
	)
	noteHouse = calc.Text(
		"A load over the house rule of {limit} is refused. A looser limit of the job does not change that. Tell the " +
			"plant before the next truck leaves.",
	)
	noteAir = calc.Text(
		"The air is over {air}. With this humidity no load over {limit} goes in.",
	)
	askHumidity = calc.Text("What is the humidity? Until you know it, the air counts as dry: no load over {limit}.")
	notePart    = calc.Text(
		"It takes {empty} to empty this load, and {left} are left. When they are up, stop: about {part} is in, and " +
			"the rest is refused. Call the plant now, and plan where the concrete ends.",
	)
	noteDrum   = calc.Text("Only {turns} turns of the drum are left. Empty it next.")
	noteHurry  = calc.Text("Empty it next. If the pump stops, send word to the plant to hold the others.")
	noteHeat86 = calc.Text("The earlier limit in heat counts: {limit}.")
	noteEighty = calc.Text(
		"From 80 °F (27 °C) hot-weather care starts. Smaller lifts and shorter walls keep the joint between lifts " +
			"fresh.",
	)
	askCounter = calc.Text("Read the counter on the drum: the turns count as well.")
	noteAgreed = calc.Text(
		"The newer standard leaves the turns, and lately the time, to the order. Ask about the turns. The time stays " +
			"90 min here.",
	)
)

// standardTime is the time from batching to discharge by ASTM C94, in s.
const standardTime = 90 * 60

// A load is emptied next from so much time left, in s, or so many turns of the
// drum, some five minutes of mixing. Our own limits.
const (
	hurryTime  = 15 * 60
	hurryTurns = 30
)

// compute sets the time and the turns that a load has left, and the verdict. It
// refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	limit := timeLimit(r, in)
	left := r.Use(weather.TimeLeftFormula, limit, in.Num("age"))
	empty := r.Use(weather.EmptyTimeFormula, in.Num("load"), in.Num("rate"))
	part := r.Use(weather.InTimeFormula, in.Num("load"), in.Num("rate"), math.Max(0, left))
	r.Put("limit", limit)
	r.Put("empty-time", empty)
	r.Put("speed", r.Use(weather.SpeedFormula, in.Num("concrete")))
	hottest, byHouse := hottestLoad(r, in)
	r.Put("spare", math.Max(0, hottest-in.Num("concrete")))
	allowed, counted := turnsLimit(r, in)
	turnsLeft := allowed - in.Num("turns")
	late := left <= calc.Slack*limit // a load in the drum at the limit is not emptied within it
	verdict := loadGood
	switch {
	case calc.Over(in.Num("concrete"), hottest) && byHouse:
		verdict = loadHouse
		r.Note(calc.LevelWarning, calc.At("concrete"), noteHouse,
			calc.Amount("limit", hottest, &displays.TemperatureAtMost))
	case calc.Over(in.Num("concrete"), hottest):
		verdict = loadHot
		r.Note(
			calc.LevelWarning,
			calc.At("concrete"),
			noteToo,
			calc.Amount("limit", hottest, &displays.TemperatureAtMost),
		)
	case late || counted && turnsLeft <= 0:
		verdict = loadLate
	case calc.Over(empty, left):
		verdict = loadPart
		r.Note(calc.LevelWarning, calc.At("rate"), notePart, calc.Amount("empty", empty, &placing.MinutesUp),
			calc.Amount("left", left, &displays.MinutesAtMost), calc.Amount("part", part, &volumeAtMost))
	case left <= hurryTime:
		verdict = loadHurry
		r.Note(calc.LevelNotice, calc.At("age"), noteHurry)
	case counted && turnsLeft <= hurryTurns:
		verdict = loadHurry
		r.Note(calc.LevelNotice, calc.At("turns"), noteDrum, calc.Count("turns", int(turnsLeft)))
	}
	r.PutChoice("verdict", verdict)
	switch {
	case late:
		r.Put("left", 0)
		r.Put("part", 0)
	case verdict == loadGood || verdict == loadHurry || verdict == loadPart:
		r.Put("part", part)
		putLeft(r, in, limit, left)
		if counted {
			r.Put("turns-left", turnsLeft)
		}
	}
	if late {
		r.Note(calc.LevelWarning, calc.At("age"), noteLate)
	}
	if !calc.Under(in.Num("concrete"), calc.SI(80, "°F")) {
		r.Note(calc.LevelNotice, calc.At("concrete"), noteEighty)
	}
}

// hottestLoad returns the hottest load in K: the least of the limit entered, the house rule
// and the limit in hot air. byHouse reports whether the load is refused by the house rule
// alone.
func hottestLoad(r *calc.Recorder, in calc.Case) (hottest float64, byHouse bool) {
	hottest = in.Num("limit-temp")
	if house, ok := in.HouseAmount("limit-temp"); ok && house < hottest {
		hottest, byHouse = house, !calc.Over(in.Num("concrete"), hottest)
	}
	if !hotAir(in) {
		return hottest, byHouse
	}
	humid := weather.HotLoad
	switch in.Choice("humidity") {
	case humidMiddle:
		humid = weather.MiddleLoad
	case humidLow, humidUnknown:
		humid = weather.DryLoad
	}
	limit := calc.Amount("limit", math.Min(humid, hottest), &displays.TemperatureAtMost)
	if in.Choice("humidity") == humidUnknown {
		r.Note(calc.LevelAsk, calc.At("humidity"), askHumidity, limit)
	} else {
		r.Note(calc.LevelNotice, calc.At("humidity"), noteAir,
			calc.Amount("air", weather.HotAir, &displays.Temperature), limit)
	}
	if humid < hottest {
		return humid, false
	}
	return hottest, byHouse
}

// putLeft sets the time left, in s, and the time of day by which the load must be
// discharged if the batch time is known.
func putLeft(r *calc.Recorder, in calc.Case, limit, left float64) {
	r.Put("left", math.Max(0, left))
	if in.Has("batched") {
		r.Put("by", in.Num("batched")+float64(60*math.Floor(limit/60+calc.Slack)))
	}
}

// timeLimit returns the governing time limit in s: that of the rule, or a lower
// one in heat, which it notes.
func timeLimit(r *calc.Recorder, in calc.Case) float64 {
	limit := float64(standardTime)
	switch {
	case in.Choice("rule") == ruleNew:
		r.Note(calc.LevelNotice, calc.At("rule"), noteAgreed)
	case ownRule(in):
		limit = in.Num("own-time")
	}
	hot := in.Num("hot-time")
	if in.Has("hot-time") && hot < limit && !calc.Under(in.Num("concrete"), in.Num("hot-from")) {
		r.Note(calc.LevelNotice, calc.At("hot-time"), noteHeat86, calc.Amount("limit", hot, &displays.Minutes))
		return hot
	}
	return limit
}

// turnsLimit returns the turns of the drum that the rule allows. counted is false
// if it allows any number, or the counter was not read, about which it asks. By
// ASTM C94 the load is discharged before the last turn allowed.
func turnsLimit(r *calc.Recorder, in calc.Case) (allowed float64, counted bool) {
	allowed = 300
	if notOldRule(in) {
		if !in.Has("own-turns") {
			return 0, false
		}
		allowed = in.Num("own-turns")
	}
	r.Put("turns-limit", allowed)
	if !in.Has("turns") {
		r.Note(calc.LevelAsk, calc.At("turns"), askCounter)
		return allowed, false
	}
	if in.Num("turns") >= allowed {
		r.Note(calc.LevelWarning, calc.At("turns"), noteTurns)
	}
	return allowed, true
}
