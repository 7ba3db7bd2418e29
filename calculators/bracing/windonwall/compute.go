package windonwall

import (
	"math"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	askStorm = calc.Text(
		"The map gives over {wind}: hurricane country. The wind is not lowered in its season, and the forces " +
			"here are of the full wind. Ask the engineer. There is no verdict until the bracing is up 6 weeks at " +
			"most, out of season.",
	)
	refuseAttach = calc.Text("The brace cannot hold above the wall, which is {height} high.")
	noteSlope    = calc.Text(
		"The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds badly, and there is no " +
			"verdict. Move its foot, or ask the engineer.",
	)
	noteAttach = calc.Text(
		"The brace holds below the middle of the wind, {middle} up. The base gets pushed the other way. Hold " +
			"higher.",
	)
	noteTall = calc.Text(
		"Over {most} one row of braces gets no verdict: our own limit. The engineer sets the rows.",
	)
	noteLeast = calc.Text(
		"ACI 347 asks for more than this wind gives: 15 psf (0.72 kPa), or 100 lb on each foot (1.46 kN/m) at the top.",
	)
	noteClear = calc.Text(
		"Leave the planks and keep {zone} clear on both sides when the wind reaches {wind}. Read it with a wind " +
			"meter at the wall.",
	)
	noteForms = calc.Text(
		"That rule is for masonry. No limit is published for foam walls, and an empty one is far lighter.",
	)
	noteFresh = calc.Text(
		"Fresh concrete adds weight but no strength. A leaning wall pulls harder on its braces. Count on the braces " +
			"alone.",
	)
	noteEnd = calc.Text(
		"A wall shorter than two heights has no end zone. The coefficient is that of the whole wall.",
	)
	noteBothWays = calc.Text(
		"The wind also blows the other way. The brace must be fixed to pull, at the wall and at the foot.",
	)
	askRatings = calc.Text("Without ratings there is no verdict. Ask the makers of brace and anchor for safe loads.")
	noteRating = calc.Text(
		"This is beyond the rating. Do not put the wall up like this: set more braces or ask the engineer.",
	)
	noteHouse = calc.Text(
		"By the ratings alone one brace takes {most} of wall. The house rule is {rule}: more only on the brace plan.",
	)
	noteToday = calc.Text(
		"Today's gust is not the design wind. These forces release no wall: its braces must hold the wind of the map " +
			"and the least load.",
	)
	noteOff   = calc.Text("{gust} reaches the limit of {limit}. Nobody on the planks, and keep the fall zone clear.")
	notePlan  = calc.Text("Over {rule} there is no verdict without the brace plan of the form maker or the engineer.")
	askFactor = calc.Text("With 0.6 the ratings must be safe loads, not breaking loads. Is that so?")
)

// gustFactor is the gust factor G of a rigid wall.
const gustFactor = 0.85

// firstPeriod is the wind in m/s at which masons leave on the first day, and from which
// nobody stays here: an empty wall and one full of fresh concrete are new.
var firstPeriod = calc.SI(20, "mph")

// leave returns the wind in m/s at which the crew leaves the planks: the one entered, or
// the published one if that is lower.
func leave(in calc.Case) float64 { return math.Min(in.Num("clear"), firstPeriod) }

// stormWind is the wind of the map over which hurricanes govern: that of the
// hurricane-prone regions of ASCE 7 (from memory).
var stormWind = calc.SI(115, "mph")

// oneRow is the greatest height of a wall that one row of braces gets a verdict for:
// our own limit.
var oneRow = calc.SI(12, "ft")

// windCenter is the height of the wind's middle on a wall of height 1: the moment of the
// force 1 on it.
var windCenter = bracing.WindMoment(1, 1)

// tooLow reports whether the brace holds below the middle of the wind.
func tooLow(in calc.Case) bool { return calc.Under(in.Num("attach"), windCenter*in.Num("height")) }

// tooTall reports whether the wall is too high for one row of braces.
func tooTall(in calc.Case) bool { return calc.Over(in.Num("height"), oneRow) }

// slope is the angle of the brace with the ground, in rad.
func slope(in calc.Case) float64 {
	return bracing.BraceAngleFormula.Value(in.Num("run"), in.Num("attach"), in.Num("below"))
}

// badSlope reports whether the brace is flatter or steeper than in practice.
func badSlope(in calc.Case) bool { return bracing.BadSlope(slope(in)) }

// periodFactor returns the factor of ASCE 37 on the wind for a time of exposure by
// its ID; 1 for any other.
func periodFactor(id string) float64 {
	switch id {
	case "weeks":
		return 0.75
	case "year":
		return 0.8
	case "two":
		return 0.85
	case "five":
		return 0.9
	}
	return 1
}

// terrain returns the gradient height in m and the exponent α of an exposure: b,
// c, otherwise D.
func terrain(id string) (gradient, alpha float64) {
	switch id {
	case "b":
		return calc.SI(1200, "ft"), 7
	case "c":
		return calc.SI(900, "ft"), 9.5
	}
	return calc.SI(700, "ft"), 11.5
}

// dutyLoad returns the load on the planks in Pa; 0 without planks.
func dutyLoad(in calc.Case) float64 {
	switch in.Choice("duty") {
	case "light":
		return calc.SI(25, "psf")
	case "medium":
		return calc.SI(50, "psf")
	case "heavy":
		return calc.SI(75, "psf")
	case "own":
		return in.Num("load")
	}
	return 0
}

// forceCoefficient returns C_f of the part of the wall.
func forceCoefficient(in calc.Case) float64 {
	switch aspect := in.Num("length") / in.Num("height"); in.Choice("part") {
	case "whole":
		return bracing.ForceWhole(aspect)
	case "end":
		return bracing.ForceEnd(aspect)
	}
	return in.Num("coefficient")
}

// compute sets the wind pressure and the forces in a brace. It refuses a brace
// that holds above the wall.
func compute(r *calc.Recorder, in calc.Case) {
	height, attach := in.Num("height"), in.Num("attach")
	if bracing.Exceeds(attach, height) {
		r.Refuse(calc.At("attach"), refuseAttach, calc.Amount("height", height, &displays.Height))
		return
	}
	moment := 0.0
	if byMap(in) {
		moment = putPressure(r, in)
	} else {
		moment = putToday(r, in)
	}
	share, run, below := in.Num("spacing"), in.Num("run"), in.Num("below")
	level := r.Use(bracing.BraceReactionFormula, moment, share, attach)
	load, planks := plankShare(in)
	long := bracing.BraceLengthFormula.Value(run, attach, below)
	push := r.Use(bracing.BraceForceFormula, level+planks, long, run)
	pull := bracing.BraceForceFormula.Value(level, long, run)
	uplift := r.Use(bracing.AnchorUpliftFormula, level, attach, below, run)
	down := bracing.AnchorUpliftFormula.Value(level+planks, attach, below, run)
	r.Put("push", push)
	r.Put("pull", pull)
	r.Put("uplift", uplift)
	r.Put("level", level+planks)
	r.Put("down", down)
	// The pull of the brace loads the upright, the push from the planks unloads it.
	r.Put("leg", math.Max(load+uplift-bracing.AnchorUpliftFormula.Value(planks, attach, below, run), 0))
	if withPlanks(in) {
		r.Put("planks", load)
	}
	r.Put("slope", slope(in))
	r.Put("zone", bracing.ClearZoneFormula.Value(height))
	r.Put("q-clear", bracing.MeasuredPressureFormula.Value(leave(in)))
	if byMap(in) {
		verdicts(r, in, push, uplift)
	}
	addNotes(r, in)
}

// putPressure sets the pressure and the outputs it follows from, and returns the
// governing moment per length of wall, in N.
func putPressure(r *calc.Recorder, in calc.Case) float64 {
	period := in.Choice("period")
	if stormy(in) {
		if period = in.Choice("storm"); maybeInSeason(in) {
			period = fullWind
			r.Note(calc.LevelWarning, calc.At("storm"), askStorm, calc.Amount("wind", stormWind, &displays.Wind))
		}
	}
	wind := r.Use(bracing.DesignWindFormula, periodFactor(period), in.Num("wind"))
	gradient, alpha := terrain(in.Choice("exposure"))
	height := in.Num("height")
	kz := r.Use(bracing.HeightFactorFormula, height+in.Num("base"), gradient, alpha)
	ke := bracing.GroundFactorFormula.Value(in.Num("ground"))
	q := r.Use(bracing.VelocityPressureFormula, kz, in.Num("hill"), in.Num("direction"), ke, wind)
	factor := 1.0
	if in.Choice("factor") == "allowable" {
		factor = 0.6
	}
	cf := forceCoefficient(in)
	pressure := r.Use(bracing.WallPressureFormula, factor, q, gustFactor, cf)
	line := bracing.WindLineFormula.Value(pressure, height)
	r.Put("design-wind", wind)
	r.Put("kz", kz)
	r.Put("q", q)
	r.Put("cf", cf)
	r.Put("pressure", pressure)
	r.Put("line", line)
	moment, least := bracing.WindMomentFormula.Value(line, height), bracing.LeastMomentFormula.Value(height)
	if least > moment {
		r.PutChoice("governs", "least")
		r.Note(calc.LevelNotice, calc.At("wind"), noteLeast)
		return r.Use(bracing.LeastMomentFormula, height)
	}
	r.PutChoice("governs", "wind")
	return r.Use(bracing.WindMomentFormula, line, height)
}

// putToday puts the pressure of the gust as measured, without the factors of the code,
// and returns its moment per length of wall. The least load of ACI 347 is left out: the
// answer is no check of the braces.
func putToday(r *calc.Recorder, in calc.Case) float64 {
	gust, limit := in.Num("gust"), leave(in)
	q := r.Use(bracing.MeasuredPressureFormula, gust)
	cf := forceCoefficient(in)
	pressure := r.Use(bracing.WallPressureFormula, 1, q, gustFactor, cf)
	line := bracing.WindLineFormula.Value(pressure, in.Num("height"))
	r.Put("q", q)
	r.Put("cf", cf)
	r.Put("pressure", pressure)
	r.Put("line", line)
	r.PutChoice("governs", "gust")
	r.Note(calc.LevelWarning, calc.At("gust"), noteToday)
	if !calc.Under(gust, limit) {
		r.PutChoice("crew", "off")
		r.Note(calc.LevelDanger, calc.At("gust"), noteOff, calc.Amount("gust", gust, &displays.Wind),
			calc.Amount("limit", limit, &displays.Wind))
	} else {
		r.PutChoice("crew", "under")
	}
	return r.Use(bracing.WindMomentFormula, line, in.Num("height"))
}

// plankShare returns the load of the planks on one brace and the horizontal force
// from it, in N; zeros without planks.
func plankShare(in calc.Case) (load, level float64) {
	if !withPlanks(in) {
		return 0, 0
	}
	load = bracing.PlankLoadFormula.Value(dutyLoad(in), in.Num("width"), in.Num("spacing"))
	return load, bracing.PlankReactionFormula.Value(load, in.Num("out"), in.Num("attach"))
}

// verdicts compares the forces, in N, with the ratings entered, and notes each
// that is exceeded. It sets the spacing at which they are reached: all forces are
// proportional to the spacing. Without ratings it asks for them. A brace that holds too
// low, too flat or too steep, a wall too high for one row of braces, more wall on a brace
// than the house rule without the brace plan, or a wind of the season of storms that is
// asked to be lowered is never within a rating.
func verdicts(r *calc.Recorder, in calc.Case, push, uplift float64) {
	most, open := math.Inf(1), tooLow(in) || tooTall(in) || maybeInSeason(in) || badSlope(in)
	judge := func(rating, verdict string, force float64) {
		if !in.Has(rating) {
			return
		}
		most = math.Min(most, in.Num("spacing")*in.Num(rating)/force)
		if bracing.Exceeds(force, in.Num(rating)) {
			r.PutChoice(verdict, "beyond")
			r.Note(calc.LevelDanger, calc.At(rating), noteRating)
			return
		}
		if open || unplanned(in) {
			r.PutChoice(verdict, "open")
			return
		}
		r.PutChoice(verdict, "within")
	}
	judge("brace-rating", "brace-verdict", push)
	judge("anchor-rating", "anchor-verdict", uplift)
	if math.IsInf(most, 1) {
		r.Note(calc.LevelAsk, calc.At("brace-rating"), askRatings)
		return
	}
	if !open {
		house, ok := in.HouseAmount("spacing")
		if ok && calc.Over(most, house) && (unplanned(in) || !wide(in)) {
			r.Put("spacing-limit", house)
			r.Note(calc.LevelCaution, calc.Path{}, noteHouse, calc.Amount("most", most, &displays.HeightAtMost),
				calc.Amount("rule", house, &displays.Wall))
		} else {
			r.Put("spacing-limit", most)
		}
	}
	if in.Choice("factor") == "allowable" {
		r.Note(calc.LevelAsk, calc.At("factor"), askFactor)
	}
}

// addNotes records the cautions for the clear zone and the wall, and the limits of
// the method that the inputs exceed.
func addNotes(r *calc.Recorder, in calc.Case) {
	height := in.Num("height")
	r.Note(
		calc.LevelWarning,
		calc.At("clear"),
		noteClear,
		calc.Amount(
			"zone",
			bracing.ClearZoneFormula.Value(height),
			&feetUp,
		),
		calc.Amount("wind", leave(in), &displays.Wind),
	)
	r.Note(calc.LevelNotice, calc.At("clear"), noteForms)
	r.Note(calc.LevelWarning, calc.Path{}, noteBothWays)
	if in.Choice("wall") == "fresh" {
		r.Note(calc.LevelWarning, calc.At("wall"), noteFresh)
	}
	if in.Choice("part") == "end" && in.Num("length") < 2*height {
		r.Note(calc.LevelNotice, calc.At("part"), noteEnd)
	}
	if tooLow(in) {
		r.Note(calc.LevelWarning, calc.At("attach"), noteAttach,
			calc.Amount("middle", windCenter*height, &feetUp))
	}
	if house, ok := in.HouseAmount("spacing"); ok && byMap(in) && unplanned(in) {
		r.Note(calc.LevelWarning, calc.At("on-plan"), notePlan, calc.Amount("rule", house, &displays.Wall))
	}
	if tooTall(in) {
		r.Note(calc.LevelWarning, calc.At("height"), noteTall, calc.Amount("most", oneRow, &displays.Height))
	}
	if badSlope(in) {
		r.Note(calc.LevelWarning, calc.At("run"), noteSlope, calc.Amount("slope", slope(in), &displays.Degrees))
	}
}
