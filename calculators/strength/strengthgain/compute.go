package strengthgain

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/strength"
)

const (
	// warmest is the temperature in °C up to which there is no note: common practice
	// around the 20 °C of the standard.
	warmest = 25.0
	// earliestAge is the age in days below which Eurocode 2 requires tests.
	earliestAge = 3.0
	// fullAge is the age in days of the reference strength of both curves.
	fullAge = 28.0
)

const (
	noteWarm   = calc.Text("Above {limit} the concrete is ahead at first and ends weaker.")
	noteEarly  = calc.Text("Before {limit} Eurocode 2 asks for tests in place of the curve.")
	noteFull   = calc.Text("Past 28 days nobody may count on more than the specified strength without tests.")
	noteCapped = calc.Text("The constants of ACI 209 are rounded. They give a little over 100% at 28 days: 100% is " +
		"shown.")
	noteNever = calc.Text("By {curve} this concrete never reaches {share}.")
	askTemp   = calc.Text("How warm has the concrete been? Both curves are for 20 °C (68 °F).")
	nameACI   = calc.Text("ACI 209")
	nameEC    = calc.Text("Eurocode 2")
)

// listedAges are the ages of the rows, days.
var listedAges = [...]float64{1, 3, 7, 14, 28, 56, 90}

// constants returns the constants of both curves for the cement and class chosen.
func constants(in calc.Case) (aci constants209, ec classEC) {
	for _, c := range gain209 {
		if c.id == in.Choice("cement") {
			aci = c
		}
	}
	for _, c := range gainEC {
		if c.id == in.Choice("class") {
			ec = c
		}
	}
	return aci, ec
}

// compute sets shares, strengths and ages by both curves. It refuses nothing; it
// leaves out an age that a curve does not reach.
func compute(r *calc.Recorder, in calc.Case) {
	aci, ec := constants(in)
	age, f28 := in.Num("age"), in.Num("f28")
	byACI := r.Use(strength.Share209Formula, age, aci.a, aci.b)
	byEC := r.Use(strength.ShareECFormula, ec.s, age)
	if calc.Over(byACI, 1) && !calc.Over(calc.From(age, "d"), fullAge) {
		r.Note(calc.LevelNotice, calc.At("cement"), noteCapped)
	}
	byACI = capped(byACI, age)
	r.Put("share-aci", byACI)
	r.Put("share-ec", byEC)
	r.Put("strength-aci", r.UseFor(nameACI, nil, strength.StrengthFormula, byACI, f28))
	r.Put("strength-ec", r.UseFor(nameEC, nil, strength.StrengthFormula, byEC, f28))
	target := in.Num("target")
	if calc.Under(target, 1/aci.b) {
		r.Put("time-aci", r.Use(strength.Age209Formula, target, aci.a, aci.b))
	} else {
		noteUnreached(r, nameACI, target)
	}
	if calc.Under(target, math.Exp(ec.s)) {
		r.Put("time-ec", r.Use(strength.AgeECFormula, target, ec.s))
	} else {
		noteUnreached(r, nameEC, target)
	}
	rows := make([]calc.Case, len(listedAges))
	for i, d := range listedAges {
		rows[i] = r.NewRow("ages").With("age", calc.In(d, "d")).
			With("aci", calc.Num(capped(strength.Share209(d, aci.a, aci.b), calc.SI(d, "d")))).
			With("ec", calc.Num(strength.ShareEC(ec.s, d)))
	}
	r.PutRows("ages", rows)
	addNotes(r, in)
}

// capped returns a share of the 28-day strength at an age in s: no more than all of it
// up to 28 days. The constants of ACI 209 are rounded and give up to 101.4 % there.
func capped(share, age float64) float64 {
	if calc.Over(calc.From(age, "d"), fullAge) {
		return share
	}
	return math.Min(share, 1)
}

// noteUnreached notes that a curve does not reach a fraction of the strength.
func noteUnreached(r *calc.Recorder, curve calc.Text, share float64) {
	r.Note(
		calc.LevelNotice,
		calc.At("target"),
		noteNever,
		calc.TextSlot("curve", curve),
		calc.Amount("share", share, &displays.Percent),
	)
}

// addNotes records the notes on an age or temperature outside the range of the
// curves.
func addNotes(r *calc.Recorder, in calc.Case) {
	age := calc.From(in.Num("age"), "d")
	if calc.Under(age, earliestAge) {
		limit := calc.Amount("limit", calc.SI(earliestAge, "d"), &displays.Days)
		r.Note(calc.LevelCaution, calc.At("age"), noteEarly, limit)
	}
	if calc.Over(age, fullAge) {
		r.Note(calc.LevelCaution, calc.At("age"), noteFull)
	}
	switch t := calc.From(in.Num("temperature"), "°C"); {
	case !in.Has("temperature"):
		r.Note(calc.LevelAsk, calc.At("temperature"), askTemp)
	case t > warmest+calc.Slack:
		r.Note(
			calc.LevelCaution,
			calc.At("temperature"),
			noteWarm,
			calc.Amount("limit", calc.SI(warmest, "°C"), &displays.Temperature),
		)
	}
}
