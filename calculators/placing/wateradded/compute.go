package wateradded

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

const ofMost = calc.Text("At most")

const (
	refuseSoup  = calc.Text("This much water makes soup: no rule holds for it. Check the number and its unit.")
	noteTooMuch = calc.Text(
		"{water} more than was withheld. It takes strength the wall never gets back. Call the plant, or send the " +
			"load back.",
	)
	noteNone = calc.Text(
		"Without withheld water on the ticket all the design water is in. Ask the plant for a water reducer.",
	)
	noteWithin = calc.Text(
		"Within the withheld water nothing is lost against the design. The losses are against the load as it came.",
	)
	noteRatio = calc.Text(
		"The water-cement ratio goes over the design. Where salt, frost or ground water bite, that limit is law.",
	)
	noteWet = calc.Text(
		"The slump may reach {slump}, over {limit}. Past 7 in. (175 mm) the form may carry the full fluid head: that " +
			"load does not go in the wall.",
	)
	noteRange = calc.Text(
		"The rules were made for slumps of 3 to 6 in (75 to 150 mm). At your slump they are rougher still.",
	)
	noteHeavy = calc.Text("The rules were shown for up to 3 gal in a yard (15 L in a m³). This is more.")
)

// ratioUp displays a water-cement ratio. It is rounded up: a durability limit is
// an upper limit.
var ratioUp = quantity.Display{
	Dim: quantity.Number, US: quantity.UnitDisplay{Step: 0.001, Rounding: quantity.Up},
}

// Rule of thumb: the gain of slump in inches for each gal/yd³, least and most.
const slumpLeast, slumpMost = 1.0, 1.25

// strengthRule returns the rule of thumb for the least and greatest loss of
// strength in psi for each gal/yd³, by whether air is in the mix: no, yes,
// otherwise not known.
func strengthRule(air string) (least, most float64) {
	switch air {
	case "no":
		return 150, 200
	case "yes":
		return 200, 400
	}
	return 150, 400
}

// compute sets what water added at the truck does to slump and strength. It
// refuses water by which the slump exceeds 11 in.
func compute(r *calc.Recorder, in calc.Case) {
	load, added, slump := in.Num("load"), in.Num("water"), in.Num("slump")
	each := r.Use(placing.PerYardFormula, added, load)
	after := slump + placing.SlumpGainFormula.Value(calc.SI(slumpLeast, "in"), each)
	if calc.Over(after, calc.SI(11, "in")) {
		r.Refuse(calc.At("water"), refuseSoup)
		return
	}
	wettest := math.Min(
		slump+r.UseFor(ofMost, nil, placing.SlumpGainFormula, calc.SI(slumpMost, "in"), each),
		calc.SI(12, "in"),
	)
	least, most := strengthRule(in.Choice("air"))
	r.Put("gal-per-yd", calc.SI(each, "US gal"))
	r.Put("litres-per-m", added/load)
	r.Put("slump-least", after)
	r.Put("slump-most", wettest)
	r.Put("strength-least", placing.StrengthLossFormula.Value(calc.SI(least, "psi"), each))
	r.Put("strength-most", r.UseFor(ofMost, nil, placing.StrengthLossFormula, calc.SI(most, "psi"), each))
	r.Put("cement-lost", r.Use(placing.CementLostFormula, added))
	limit := in.Num("limit")
	tooWet := calc.Over(wettest, limit)
	checkTicket(r, in, ticket{added: added, load: load, tooWet: tooWet, room: roomFor(limit-slump, load)})
	if tooWet {
		r.Note(calc.LevelWarning, calc.At("slump"), noteWet, calc.Amount("slump", wettest, &displays.Inches),
			calc.Amount("limit", limit, &slumpLimit))
	}
	if calc.Over(calc.SI(3, "in"), slump) || calc.Over(slump, calc.SI(6, "in")) {
		r.Note(calc.LevelNotice, calc.At("slump"), noteRange)
	}
	if calc.Over(each, 3) {
		r.Note(calc.LevelNotice, calc.At("water"), noteHeavy)
	}
}

// roomFor returns the water in m³ by which the slump of a load in m³ rises by no more than
// rise, in m, at the most that the rule of thumb gives; 0 where there is no room.
func roomFor(rise, load float64) float64 {
	each := rise / placing.SlumpGainFormula.Value(calc.SI(slumpMost, "in"), 1)
	return math.Max(0, each) * calc.SI(1, "US gal") * load / calc.SI(1, "yd³")
}

// ticket holds the water added, the load and the water that the slump has room for, all
// in m³, and whether the slump may pass its limit.
type ticket struct {
	added, load, room float64
	tooWet            bool
}

// checkTicket sets the verdict on the water added by the amount withheld on the
// ticket and by the slump, and the water-cement ratio if cement and ratio are known.
func checkTicket(r *calc.Recorder, in calc.Case, t ticket) {
	added, load := t.added, t.load
	withheld := in.Num("withheld")
	tooMuch := math.Max(0, added-withheld)
	if !calc.Over(added, withheld) {
		tooMuch = 0
	}
	may := math.Min(withheld, t.room)
	r.Put("may-add", may)
	if calc.Over(added, may) {
		r.Put("too-much", added-may)
	} else {
		r.Put("too-much", 0)
	}
	switch {
	case withheld == 0:
		r.PutChoice("verdict", none)
		r.Note(calc.LevelCaution, calc.At("withheld"), noteNone)
	case tooMuch > 0:
		r.PutChoice("verdict", beyond)
		r.Note(calc.LevelCaution, calc.At("water"), noteTooMuch, calc.Amount("water", tooMuch, &water))
	case t.tooWet:
		r.PutChoice("verdict", wet)
	default:
		r.PutChoice("verdict", within)
		r.Note(calc.LevelNotice, calc.At("withheld"), noteWithin)
	}
	if in.Has("cement") && in.Has("ratio") {
		r.Put(
			"ratio-after",
			r.Use(placing.WaterCementFormula, in.Num("ratio"), added, withheld, load, in.Num("cement")),
		)
		if tooMuch > 0 {
			r.Note(calc.LevelNotice, calc.At("ratio"), noteRatio)
		}
	}
}
