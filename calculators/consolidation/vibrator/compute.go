package vibrator

import (
	"math"

	"coursebook/calculators/calc"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

const (
	refuseGap = calc.Text("No head of this size goes through a gap of {gap}. Choose a smaller one.")
	noteGap   = calc.Text("Only heads up to {gap} of this group go down here. Measure the head you bring.")
	noteStiff = calc.Text("This group's figures are for slump below 3 in. (80 mm). Forms that stay need more slump.")
	noteFace  = calc.Text(
		"Half way between places this head reaches {reach} to each side, and the form is {half} away. Set the places " +
			"{closer} apart, or go in near one face, then near the other.",
	)
	noteFaceNever = calc.Text(
		"This head reaches {reach} and the form is {half} away. Go in near one face, then near the other.",
	)
	askReach = calc.Text("Did you see this reach on the job? If not, plan with the low end of the table.")
	noteWide = calc.Text("The reach gives {spacing}. The rule of the crew counts: {most}.")
	askSeen  = calc.Text("The table gives {low} to {high} for this head. Is the radius seen right?")
	noteInto = calc.Text("Less than {limit} into the lift below leaves a seam. It is right for the first lift only.")
	noteFast = calc.Text("Pulled faster than {limit} the head leaves a hole behind it.")
	noteMany = calc.Text(
		"That many vibrators get in each other's way. Slow the pump, or use a head that reaches farther.",
	)
	refuseWhip = calc.Text("All of the whip stays above the form. It must be longer than {above}.")
	refuseLift = calc.Text("The lift is deeper than the form is tall, {height}.")
	refuseDeep = calc.Text(
		"No deeper than {most} into the lift below: past that the form feels the push of both lifts. Our own limit.",
	)

	noteFoot   = calc.Text("The head misses the lowest {length} of the wall. Voids there stay hidden behind the form.")
	askFoot    = calc.Text("How will the lowest {length} be vibrated? Choose a way.")
	noteLonger = calc.Text(
		"The whip must be at least {length} with its head. Let it down to the foot before the first concrete.",
	)
	noteWindow = calc.Text(
		"Cut the opening within the lowest {length}. Close and brace it before concrete reaches it, as the form " +
			"maker allows.",
	)
	refuseOutside = calc.Text(
		"Get the longer whip: at least {length} with its head. The outside tool does not replace the head inside.",
	)
	noteStages = calc.Text(
		"Build the form no higher than {length} before the first concrete. Build on when that has set.",
	)
)

// The limits of the published rules, in SI units, and the most vibrators on one
// wall without a note.
const (
	leastInto     = 4 * 0.0254  // 4 in, overlap into the lift below
	mostInto      = 6 * 0.0254  // 6 in, into the lift below without a house rule; our own limit
	armyApart     = 18 * 0.0254 // 18 in, US Army EN5466
	mostSpeed     = 3 * 0.0254  // 3 in/s, withdrawal of the head
	mostVibrators = 4
	leastApart    = 3 * 0.0254 // 3 in, least spacing worth proposing; our own limit
)

// compute sets spacing, places, times and the number of vibrators. It refuses what
// fits refuses.
func compute(r *calc.Recorder, in calc.Case) {
	nr := findHead(in.Choice("head"))
	h := heads[nr]
	if !fits(r, in, h) {
		return
	}
	putHead(r, h)
	radius := planned(r, in, h)
	spacing := capped(r, in, r.Use(consolidation.SpacingFormula, radius))
	r.Put("spacing", spacing)
	putApart(r, h, spacing)
	r.Put("reach", consolidation.ReachFormula.Value(radius, spacing))
	places := putPlaces(r, in, shown(spacing))
	putTimes(r, in, places)
	r.Put("by-rate-low", consolidation.ByRateFormula.Value(in.Num("pump"), calc.SI(h.rate.high, "m³/h")))
	r.Put("by-rate-high", consolidation.ByRateFormula.Value(in.Num("pump"), calc.SI(h.rate.low, "m³/h")))
	notePlan(r, in, nr, radius, spacing)
	putFoot(r, in)
}

// fits reports whether the head passes the gap and whip and lift suit the form. It
// refuses the first input that does not, and returns false.
func fits(r *calc.Recorder, in calc.Case, h head) bool {
	gap, above, height := in.Num("gap"), in.Num("above"), in.Num("height")
	least, most := calc.SI(h.diameter.low, "mm"), calc.SI(h.diameter.high, "mm")
	deepest := mostInto
	if house, ok := in.HouseAmount("into"); ok {
		deepest = house
	}
	switch {
	case least > gap:
		r.Refuse(calc.At("head"), refuseGap, calc.Amount("gap", gap, &displays.Inches))
	case in.Num("whip") <= above:
		r.Refuse(calc.At("whip"), refuseWhip, calc.Amount("above", above, &displays.Height))
	case calc.Over(in.Num("lift"), height):
		r.Refuse(calc.At("lift"), refuseLift, calc.Amount("height", height, &displays.Height))
	case calc.Over(in.Num("into"), deepest):
		r.Refuse(calc.At("into"), refuseDeep, calc.Amount("most", deepest, &displays.Inches))
	case short(in) && in.Choice("foot") == "outside":
		r.Refuse(calc.At("foot"), refuseOutside, calc.Amount("length", height+above, &displays.Height))
	default:
		if most > gap {
			r.Note(calc.LevelNotice, calc.At("gap"), noteGap, calc.Amount("gap", gap, &displays.Inches))
		}
		return true
	}
	return false
}

// putHead sets the published ranges of the head.
func putHead(r *calc.Recorder, h head) {
	put := func(low, high, unit string, s span) {
		r.Put(low, calc.SI(s.low, unit))
		r.Put(high, calc.SI(s.high, unit))
	}
	put("frequency-low", "frequency-high", "Hz", h.frequency)
	put("radius-low", "radius-high", "mm", h.radius)
	put("rate-low", "rate-high", "m³/h", h.rate)
}

// putApart sets the rows that compare the spacing of the plan, in m, with those of
// the published rules.
func putApart(r *calc.Recorder, h head, spacing float64) {
	var rows []calc.Case
	for _, by := range []struct {
		id    string
		apart float64
	}{
		{"plan", spacing},
		{"low", calc.SI(consolidation.Spacing(h.radius.low), "mm")},
		{"high", calc.SI(consolidation.Spacing(h.radius.high), "mm")},
		{"army", armyApart},
	} {
		rows = append(rows, r.NewRow("apart").With("by", calc.ChoiceOf(by.id)).With("spacing", calc.Num(by.apart)))
	}
	r.PutRows("apart", rows)
}

// shown returns the smaller of the spacings, in m, that readers of the two systems
// see, so that the places counted suffice for each.
func shown(spacing float64) float64 {
	return math.Min(quantity.Round(spacing, showApart, quantity.US),
		quantity.Round(spacing, showApart, quantity.Metric))
}

// planned returns the radius of action to plan with, in m. It asks about an
// observed one outside the published range.
func planned(r *calc.Recorder, in calc.Case, h head) float64 {
	low, high := calc.SI(h.radius.low, "mm"), calc.SI(h.radius.high, "mm")
	switch in.Choice("plan") {
	case "low":
		return low
	case "high":
		return high
	case "seen":
		if x := in.Num("seen"); x < low || x > high {
			r.Note(
				calc.LevelAsk,
				calc.At("seen"),
				askSeen,
				calc.Amount("low", low, &showRadius),
				calc.Amount("high", high, &showRadius),
			)
		}
		return in.Num("seen")
	}
	return calc.SI(h.radius.middle(), "mm")
}

// capped returns the spacing in m, not farther than the rule of the crew: of the amount typed and
// that of the manual the smaller one counts. It notes a spacing that is cut to it; one that is over
// it only by its rounding is not.
func capped(r *calc.Recorder, in calc.Case, spacing float64) float64 {
	most := in.Num("most-apart")
	if house, ok := in.HouseAmount("most-apart"); ok {
		most = math.Min(most, house)
	}
	if !calc.Over(shown(spacing), most) {
		return spacing
	}
	r.Note(calc.LevelCaution, calc.At("plan"), noteWide, calc.Amount("spacing", spacing, &showApart),
		calc.Amount("most", most, &displays.Inches))
	return most
}

// putPlaces sets the places for a spacing in m, and returns their number in one
// pass.
func putPlaces(r *calc.Recorder, in calc.Case, spacing float64) float64 {
	along := r.Use(consolidation.AlongFormula, in.Num("length"), spacing)
	places := r.Use(consolidation.PlacesFormula, along, in.Num("openings"), in.Num("sill"))
	r.Put("along", along)
	r.Put("extra", places-along)
	r.Put("places", places)
	return places
}

// putTimes sets the times of a pass of so many places, and the vibrators that keep
// up with the pump at the longer time for each place.
func putTimes(r *calc.Recorder, in calc.Case, places float64) {
	rest := restAir
	if in.Choice("concrete") == "plain" {
		rest = restPlain
	}
	depth, speed, move := in.Num("lift")+in.Num("into"), in.Num("speed"), in.Num("move")
	quick := consolidation.EachFormula.Value(rest.low, depth, speed, move)
	each := r.Use(consolidation.EachFormula, rest.high, depth, speed, move)
	pass := r.Use(consolidation.PassFormula, places, each)
	fill := r.Use(consolidation.FillFormula, in.Num("length"), in.Num("core"), in.Num("lift"), in.Num("pump"))
	count := r.Use(consolidation.KeepUpFormula, pass, fill)
	r.Put("each-low", quick)
	r.Put("each-high", each)
	r.Put("pass-low", consolidation.PassFormula.Value(places, quick))
	r.Put("pass-high", pass)
	r.Put("fill", fill)
	r.Put("vibrators", count)
	r.Put("with-spare", count+1)
	r.Put("hands-needed", count*in.Num("hands"))
	if count > mostVibrators {
		r.Note(calc.LevelNotice, calc.At("pump"), noteMany)
	}
}

// notePlan records a note for each rule that the plan is outside of, and for faces
// of the form that it does not reach. nr is the index of the head; radius and
// spacing are in m.
func notePlan(r *calc.Recorder, in calc.Case, nr int, radius, spacing float64) {
	if nr >= stiffFrom {
		r.Note(calc.LevelNotice, calc.At("head"), noteStiff)
	}
	if plan := in.Choice("plan"); plan == "middle" || plan == "high" {
		r.Note(calc.LevelAsk, calc.At("plan"), askReach)
	}
	noteFaces(r, in, radius, spacing)
	if calc.Under(in.Num("into"), leastInto) {
		r.Note(calc.LevelNotice, calc.At("into"), noteInto, calc.Amount("limit", leastInto, &displays.Inches))
	}
	if calc.Over(in.Num("speed"), mostSpeed) {
		r.Note(calc.LevelNotice, calc.At("speed"), noteFast, calc.Amount("limit", mostSpeed, &showSpeed))
	}
}

// noteFaces notes a plan that does not reach the faces of the form half way
// between places, with the spacing that does, if there is one. radius and spacing
// are in m.
func noteFaces(r *calc.Recorder, in calc.Case, radius, spacing float64) {
	reach, half := consolidation.Reach(radius, spacing), in.Num("core")/2
	face := calc.Amount("half", half, &displays.Inches)
	switch closer := 2 * consolidation.Reach(radius, 2*half); {
	case reach >= half:
	case closer > leastApart:
		r.Note(calc.LevelNotice, calc.At("core"), noteFace, calc.Amount("reach", reach, &showReach), face,
			calc.Amount("closer", closer, &showApart))
	default:
		r.Note(calc.LevelNotice, calc.At("core"), noteFaceNever, calc.Amount("reach", radius, &showReach), face)
	}
}

// putFoot sets the height that the head does not reach, 0 if it reaches the foot,
// and notes the measure chosen for it or asks for one.
func putFoot(r *calc.Recorder, in calc.Case) {
	height, above, whip := in.Num("height"), in.Num("above"), in.Num("whip")
	if !short(in) {
		r.Put("unreached", 0)
		return
	}
	foot := r.Use(consolidation.UnreachedFormula, height, above, whip)
	r.Put("unreached", foot)
	length := calc.Amount("length", foot, &displays.Height)
	r.Note(calc.LevelCaution, calc.At("whip"), noteFoot, length)
	switch in.Choice("foot") {
	case "longer":
		r.Note(calc.LevelNotice, calc.At("foot"), noteLonger, calc.Amount("length", height+above, &displays.Height))
	case "window":
		r.Note(calc.LevelWarning, calc.At("foot"), noteWindow, length)
	case "stages":
		r.Note(calc.LevelNotice, calc.At("foot"), noteStages, calc.Amount("length", whip-above, &displays.HeightAtMost))
	default:
		r.Note(calc.LevelAsk, calc.At("foot"), askFoot, length)
	}
}
