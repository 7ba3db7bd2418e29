package coldweather

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/weather"
)

const (
	noteMild = calc.Text(
		"No cold weather by the rule, but one frost in the first day ruins fresh concrete. Keep covers at hand.",
	)
	noteToo     = calc.Text("Below {least} this concrete must not go in. Send it back or ask the engineer.")
	noteCooling = calc.Text(
		"Under {least}, asked as mixed. A long haul will bring it below {placed}: place it at once.",
	)
	noteOverhot = calc.Text("Heated concrete may be at most 90 °F (32 °C). It sets fast and loses its slump.")
	noteWarm    = calc.Text(
		"Warmer than {most}, 20 F° (11 C°) over the least. Too warm it stiffens early, and cracks as it cools.",
	)
	noteLoaded = calc.Text(
		"No number of days is enough for the full load. The engineer releases it on strength tested in place.",
	)
	notePartly = calc.Text("Backfill and floors are load. Ask the engineer before either.")
	noteProved = calc.Text(
		"This counts only once the days of protection are over and the strength is proved. Until then the covers stay.",
	)
	noteAtOnce    = calc.Text("Within 20 °F (11 °C) of the air ACI 306.1 asks for no slow cooling.")
	noteSlowly    = calc.Text("Uncover in steps: first loosen, then lift, then take off. A quick fall cracks the wall.")
	noteInsulated = calc.Text(
		"The concrete under its cover is below {placed}. Keep the covers on: the days of protection do not count " +
			"while it is so cold.",
	)
)

// coldFrom is the air temperature below which weather is cold.
const coldBelowF = 40.0

// mostOver is the most that concrete is placed above the least, in K: 20 F°. Source:
// ACI 306R, from memory.
const mostOver = 20 / 1.8

// compute sets the least temperatures, the days of protection and the slowest
// uncovering. It refuses nothing.
func compute(r *calc.Recorder, in calc.Case) {
	row := weather.ColdLimitsFor(calc.From(in.Num("section"), "in"))
	air := calc.From(in.Num("air"), "°F")
	placed, mixed := calc.SI(row.Placed, "°F"), calc.SI(row.Mixed[airRange(air)], "°F")
	r.Put("placed", placed)
	r.Put("mixed", mixed)
	r.PutChoice("weather", isMild)
	if air <= coldBelowF+calc.Slack {
		r.PutChoice("weather", isCold)
	} else {
		r.Note(calc.LevelNotice, calc.At("air"), noteMild)
	}
	putWarm(r, in, placed, mixed)
	putProtection(r, in)
	r.Put("drop", calc.SI(row.Drop, "F°"))
	putUncover(r, in, placed, calc.SI(row.Drop, "F°"))
}

// putWarm sets the verdict on the concrete at the truck by the least temperatures
// as placed and as mixed, in K.
func putWarm(r *calc.Recorder, in calc.Case, placed, mixed float64) {
	t := in.Num("concrete")
	least := calc.Amount("least", placed, &displays.TemperatureAtLeast)
	switch {
	case !in.Has("concrete"):
		r.PutChoice("verdict", warmNone)
		return
	case calc.Under(t, placed):
		r.PutChoice("verdict", warmNot)
		r.Note(calc.LevelWarning, calc.At("concrete"), noteToo, least)
		return
	case calc.Over(t, calc.SI(90, "°F")):
		r.PutChoice("verdict", warmHot)
		r.Note(calc.LevelWarning, calc.At("concrete"), noteOverhot)
		return
	case calc.Under(t, mixed) && in.Num("air") <= calc.SI(coldBelowF, "°F"):
		r.Note(
			calc.LevelNotice,
			calc.At("concrete"),
			noteCooling,
			calc.Amount("least", mixed, &displays.TemperatureAtLeast),
			calc.Amount("placed", placed, &displays.TemperatureAtLeast),
		)
	}
	if most := placed + mostOver; calc.Over(t, most) && in.Num("air") <= calc.SI(coldBelowF, "°F") {
		r.Note(calc.LevelCaution, calc.At("concrete"), noteWarm, calc.Amount("most", most, &displays.TemperatureAtMost))
	}
	r.PutChoice("verdict", warmOK)
}

// putProtection sets the days of protection; a fully loaded member gets no days
// for strength.
func putProtection(r *calc.Recorder, in calc.Case) {
	days, i := protectionDays(in.Choice("service")), 0
	if in.Choice("cement") == early {
		i = 1
	}
	r.Put("frost", calc.SI(days.frost[i], "d"))
	r.Put("specified", calc.SI([2]float64{3, 2}[i], "d"))
	switch in.Choice("service") {
	case serviceLoaded:
		r.Note(calc.LevelWarning, calc.At("service"), noteLoaded)
		return
	case servicePartly:
		r.Note(calc.LevelWarning, calc.At("service"), notePartly)
	}
	r.Put("strength", calc.SI(days.strength[i], "d"))
}

// putUncover sets how slowly the covers are taken off. Concrete below the
// temperature placed, in K, gets a warning and no time. It does nothing without a
// surface temperature.
func putUncover(r *calc.Recorder, in calc.Case, placed, drop float64) {
	if !in.Has("surface") {
		return
	}
	surface, air := in.Num("surface"), in.Num("air")
	if calc.Under(surface, placed) {
		r.Note(
			calc.LevelWarning,
			calc.At("surface"),
			noteInsulated,
			calc.Amount("placed", placed, &displays.TemperatureAtLeast),
		)
		return
	}
	r.Note(calc.LevelWarning, calc.At("surface"), noteProved)
	if !calc.Over(surface-air, calc.SI(20, "F°")) {
		r.Put("uncover", 0)
		r.Note(calc.LevelNotice, calc.At("surface"), noteAtOnce)
		return
	}
	r.Put("uncover", math.Max(0, r.Use(weather.CoolingTimeFormula, surface, air, drop)))
	r.Note(calc.LevelNotice, calc.At("surface"), noteSlowly)
}
