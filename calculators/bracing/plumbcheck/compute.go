package plumbcheck

import (
	"cmp"
	"math"
	"slices"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

const (
	overWall   = calc.Text("This reading is above the wall, which is {height} high.")
	sameUp     = calc.Text("Two readings stand at the same height. Give one for each height.")
	notTop     = calc.Text("The highest reading is at {up}. Read the top of the wall too.")
	booksSplit = calc.Text(
		"The editions differ: plumb by the 1990 one, beyond by the newer ones. Ask which edition the project papers " +
			"name.",
	)
	ownLoose = calc.Text("Your project's tolerance is wider than ACI 117-10 at {up}: {limit}. Is it right?")
	onTop    = calc.Text(
		"Plumb the next storey from the lines of the plan, not from this wall. Leans add up from storey to storey.",
	)
	beyondNew = calc.Text(
		"Beyond the limit of ACI 117-10. If the concrete is still plastic, set the braces now. If not, tell the " +
			"foreman.",
	)
	homeRule = calc.Text(
		"The home-builder guideline is over five times as loose as ACI 117-10. It settles claims, it is no aim.",
	)
	edgeOld = calc.Text(
		"The tighter limits are for exposed corner columns and joint grooves. For a plain wall corner take the wall " +
			"face.",
	)
)

// reading is one place up the wall; the base is one of them, at 0 and plumb.
type reading struct {
	up, off float64 // m
}

// check is one line of the table.
type check struct {
	book            string
	up              float64 // m
	limit, measured float64 // m
}

func (c check) within() bool { return !bracing.Exceeds(c.measured, c.limit) }

func compute(r *calc.Recorder, in calc.Case) {
	reads, ok := readPlumb(r, in)
	if !ok {
		return
	}
	height := in.Num("height")
	worst := slices.MaxFunc(reads, func(a, b reading) int { return cmp.Compare(math.Abs(a.off), math.Abs(b.off)) })
	checks := plumbChecks(r, in, reads)
	r.Put("worst", math.Abs(worst.off))
	r.Put("limit-top", newLimit(in).Value(height))
	putBowUp(r, reads)
	rows := make([]calc.Case, len(checks))
	for i, c := range checks {
		rows[i] = r.NewRow("checks").With("book", calc.ChoiceOf(c.book)).With("limit", calc.Num(c.limit)).
			With("measured", calc.Num(c.measured)).With("within", calc.Bool(c.within()))
		if c.up > 0 {
			rows[i] = rows[i].With("up", calc.Num(c.up))
		}
	}
	r.PutRows("checks", rows)
	r.PutChoice("new", verdict(checks[0]))
	r.PutChoice("old", verdict(checks[1]))
	notePlumb(r, in, reads, checks)
}

func verdict(c check) string {
	if c.within() {
		return "within"
	}
	return "beyond"
}

// wallReadings are the readings from the base up, without the base.
func wallReadings(in calc.Case) (reads []reading) {
	for _, row := range in.Rows("readings") {
		reads = append(reads, reading{row.Num("up"), row.Num("off")})
	}
	slices.SortStableFunc(reads, func(a, b reading) int { return cmp.Compare(a.up, b.up) })
	return reads
}

// readPlumb gives the base and the readings above it.
func readPlumb(r *calc.Recorder, in calc.Case) ([]reading, bool) {
	for _, row := range in.Rows("readings") {
		if bracing.Exceeds(row.Num("up"), in.Num("height")) {
			r.Refuse(
				calc.Cell("readings", row.RowNumber(), "up"),
				overWall,
				calc.Amount("height", in.Num("height"), &displays.Height),
			)
			return nil, false
		}
	}
	reads := append([]reading{{}}, wallReadings(in)...)
	for i := 1; i < len(reads); i++ {
		if reads[i].up-reads[i-1].up < bracing.SamePlace {
			r.Refuse(calc.At("readings"), sameUp)
			return nil, false
		}
	}
	return reads, true
}

// newLimit is the limit of the newer editions for what was read.
func newLimit(in calc.Case) *calc.Formula {
	if in.Choice("what") == "edge" {
		return bracing.EdgeLimitFormula
	}
	return bracing.PlumbLimitFormula
}

// oldLimit is the limit of the 1990 edition, the same at any height to 100 ft.
func oldLimit(in calc.Case) float64 {
	if in.Choice("what") == "edge" {
		return calc.SI(0.5, "in")
	}
	return calc.SI(1, "in")
}

// plumbChecks holds the readings against each document, the two editions of
// ACI 117 first.
func plumbChecks(r *calc.Recorder, in calc.Case, reads []reading) []check {
	limit := newLimit(in)
	checks := []check{
		worstCheck("new", reads, func(up float64) float64 { return limit.Value(up) }),
		worstCheck("old", reads, func(float64) float64 { return oldLimit(in) }),
		slopeCheck(r, reads),
		worstCheck("home", reads, func(up float64) float64 { return bracing.HomeLimitFormula.Value(up) }),
	}
	r.Use(limit, checks[0].up)
	if in.Has("own") {
		checks = append(checks, worstCheck("own", reads, func(float64) float64 { return in.Num("own") }))
	}
	if in.Has("gap") {
		checks = append(checks, check{"plane", 0, classLimit(in.Choice("class"), 0.5), in.Num("gap")})
	}
	if in.Has("step") {
		checks = append(checks, check{"step", 0, classLimit(in.Choice("class"), 0.25), in.Num("step")})
	}
	return checks
}

// worstCheck is the reading that takes up most of its limit, the highest of
// equals.
func worstCheck(book string, reads []reading, limit func(up float64) float64) (worst check) {
	most := -1.0
	for _, x := range reads[1:] {
		c := check{book, x.up, limit(x.up), math.Abs(x.off)}
		if share := c.measured / c.limit; share > most-calc.Slack {
			worst, most = c, share
		}
	}
	return worst
}

// slopeCheck is the pair of readings, the base among them, that takes up most
// of its limit, the highest of equals. It is given at the upper one.
func slopeCheck(r *calc.Recorder, reads []reading) check {
	most := -1.0
	var low, high reading
	for i, a := range reads {
		for _, b := range reads[i+1:] {
			if share := math.Abs(b.off-a.off) / bracing.SlopeLimitFormula.Value(b.up-a.up); share > most-calc.Slack {
				low, high, most = a, b, share
			}
		}
	}
	return check{
		"slope",
		high.up,
		r.Use(bracing.SlopeLimitFormula, high.up-low.up),
		r.Use(bracing.LeanFormula, low.off, high.off),
	}
}

// classLimit is the most irregularity of a surface class. Class C is where
// abrupt steps and gradual gaps differ: 1/4 and 1/2 in.
func classLimit(class string, classC float64) float64 {
	switch class {
	case "a":
		return calc.SI(0.125, "in")
	case "b":
		return calc.SI(0.25, "in")
	case "c":
		return calc.SI(classC, "in")
	}
	return calc.SI(1, "in")
}

// putBowUp puts the greatest bow off the line from base to top reading.
func putBowUp(r *calc.Recorder, reads []reading) {
	if len(reads) < 3 {
		return
	}
	top := reads[len(reads)-1]
	bow := 0.0
	for _, x := range reads[1 : len(reads)-1] {
		bow = math.Max(bow, bracing.OutOfStraightFormula.Value(x.off, x.up, 0, 0, top.off, top.up))
	}
	r.Put("bow", bow)
}

func notePlumb(r *calc.Recorder, in calc.Case, reads []reading, checks []check) {
	top := reads[len(reads)-1].up
	if top < 0.9*in.Num("height")-calc.Slack {
		r.Note(calc.LevelAsk, calc.At("readings"), notTop, calc.Amount("up", top, &displays.Height))
	}
	fresh, old := checks[0], checks[1]
	if !fresh.within() {
		r.Note(calc.LevelNotice, calc.At("readings"), beyondNew)
		if old.within() {
			r.Note(calc.LevelAsk, calc.At("readings"), booksSplit)
		}
		if checks[3].within() {
			r.Note(calc.LevelNotice, calc.At("readings"), homeRule)
		}
	}
	if limit := newLimit(in).Value(in.Num("height")); in.Has("own") && bracing.Exceeds(in.Num("own"), limit) {
		r.Note(
			calc.LevelAsk,
			calc.At("own"),
			ownLoose,
			calc.Amount("up", in.Num("height"), &displays.Height),
			calc.Amount("limit", limit, &displays.PartAtMost),
		)
	}
	if in.Choice("storeys") == "one" {
		r.Note(calc.LevelNotice, calc.At("storeys"), onTop)
	}
	if in.Choice("what") == "edge" {
		r.Note(calc.LevelNotice, calc.At("what"), edgeOld)
	}
}
