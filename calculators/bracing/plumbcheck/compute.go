package plumbcheck

import (
	"cmp"
	"math"
	"slices"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// forTop names the step of the limit at the top of the wall.
const forTop = calc.Text("Limit at the top of the wall")

const (
	refuseHigh = calc.Text("This reading is above the wall, which is {height} high.")
	refuseSame = calc.Text("Two readings stand at the same height. Give one for each height.")
	askTop     = calc.Text("The highest reading is at {up}. Read the top of the wall too.")
	askEdition = calc.Text(
		"The editions differ: plumb by the 1990 one, beyond by the newer ones. Ask which edition the project papers " +
			"name.",
	)
	askTolerance = calc.Text("Your project's tolerance is wider than ACI 117-10 at {up}: {limit}. Is it right?")
	noteStory    = calc.Text(
		"Plumb the next story from the lines of the plan, not from this wall. Leans add up from story to story.",
	)
	noteBeyond = calc.Text(
		"Beyond the limit of ACI 117-10. Before hands off, and only while the concrete is still plastic, set the " +
			"braces. After that turn none, and tell the foreman.",
	)
	noteCrew = calc.Text(
		"Beyond the rule of this crew, {limit}, though within ACI 117-10. Before hands off set the braces. After " +
			"that turn none, and write it down.",
	)
	noteHome = calc.Text(
		"The home-builder guideline is over five times as loose as ACI 117-10. It settles claims, it is no aim.",
	)
	noteHair = calc.Text("Beyond by a hair: {measured} measured, {limit} allowed.")
	noteEdge = calc.Text(
		"The tighter limits are for exposed corner columns and joint grooves. For a plain wall corner take the wall " +
			"face.",
	)
)

// hundredths displays a length more finely than a tape.
var hundredths = quantity.Display{
	Dim:    quantity.Length,
	US:     quantity.UnitDisplay{Unit: "in", Step: 0.01},
	Metric: quantity.UnitDisplay{Unit: "mm", Step: 0.1},
}

// reading is a height and the deviation there. The base is one, at 0 and plumb.
type reading struct {
	up, off float64 // m
}

// check compares one reading with the limit of one document.
type check struct {
	book            string
	up              float64 // m
	limit, measured float64 // m
}

// setFirst is the first half of the deed to set the braces; what comes after hands off
// stands in the result below it.
const setFirst = calc.Text("Set the braces before hands off")

// within reports whether the measured value is not above the limit.
func (c check) within() bool { return !bracing.Exceeds(c.measured, c.limit) }

// compute compares the readings with each document. It refuses the readings that
// readBase refuses.
func compute(r *calc.Recorder, in calc.Case) {
	reads, ok := readBase(r, in)
	if !ok {
		return
	}
	height := in.Num("height")
	worst := slices.MaxFunc(reads, func(a, b reading) int { return cmp.Compare(math.Abs(a.off), math.Abs(b.off)) })
	checks := compare(r, in, reads)
	far := bracing.NoteOff(r, calc.At("readings"), math.Abs(worst.off))
	r.Put("worst", math.Abs(worst.off))
	r.Put("limit-top", r.UseFor(forTop, nil, newLimit(in), height))
	putBow(r, reads)
	rows := make([]calc.Case, len(checks))
	for i, c := range checks {
		rows[i] = r.NewRow("checks").With("book", calc.ChoiceOf(c.book)).With("limit", calc.Num(c.limit)).
			With("measured", calc.Num(c.measured)).With("within", calc.Bool(c.within()))
		if c.up > 0 {
			rows[i] = rows[i].With("up", calc.Num(c.up))
		}
	}
	r.PutRows("checks", rows)
	house := checks[len(checks)-1]
	r.PutChoice("house", verdict(house))
	switch {
	case far:
		r.PutChoice("next", nextClear)
	case !checks[0].within() || !house.within():
		r.PutChoice("next", nextSet)
		r.Headline(setFirst)
	default:
		r.PutChoice("next", nextWrite)
	}
	r.PutChoice("new", verdict(checks[0]))
	r.PutChoice("old", verdict(checks[1]))
	addNotes(r, in, reads, checks, far)
}

// verdict returns within or beyond, an ID of the outputs new and old.
func verdict(c check) string {
	if c.within() {
		return "within"
	}
	return "beyond"
}

// wallReadings returns the readings from the base up, without the base.
func wallReadings(in calc.Case) (reads []reading) {
	for _, row := range in.Rows("readings") {
		reads = append(reads, reading{row.Num("up"), row.Num("off")})
	}
	slices.SortStableFunc(reads, func(a, b reading) int { return cmp.Compare(a.up, b.up) })
	return reads
}

// readBase returns the base and the readings above it, rising. It refuses a
// reading above the wall and two at the same height, and returns nil and false.
func readBase(r *calc.Recorder, in calc.Case) ([]reading, bool) {
	for _, row := range in.Rows("readings") {
		if bracing.Exceeds(row.Num("up"), in.Num("height")) {
			r.Refuse(
				calc.Cell("readings", row.RowNumber(), "up"),
				refuseHigh,
				calc.Amount("height", in.Num("height"), &displays.Height),
			)
			return nil, false
		}
	}
	reads := append([]reading{{}}, wallReadings(in)...)
	for i := 1; i < len(reads); i++ {
		if reads[i].up-reads[i-1].up < bracing.SamePlace {
			r.Refuse(calc.At("readings"), refuseSame)
			return nil, false
		}
	}
	return reads, true
}

// newLimit returns the limit of the newer editions for the part of the wall.
func newLimit(in calc.Case) *calc.Formula {
	if in.Choice("what") == "edge" {
		return bracing.EdgeLimitFormula
	}
	return bracing.PlumbLimitFormula
}

// oldLimit returns the limit of the 1990 edition in m, the same at any height up
// to 100 ft.
func oldLimit(in calc.Case) float64 {
	if in.Choice("what") == "edge" {
		return calc.SI(0.5, "in")
	}
	return calc.SI(1, "in")
}

// compare returns the checks of the readings by each document, the two editions of
// ACI 117 first and the rule of the crew last, and records the worked steps. A document that does not apply to
// the readings gives none.
func compare(r *calc.Recorder, in calc.Case, reads []reading) []check {
	limit := newLimit(in)
	checks := []check{
		worstCheck("new", reads, func(up float64) float64 { return limit.Value(up) }),
		worstCheck("old", reads, func(float64) float64 { return oldLimit(in) }),
		slopeCheck(r, reads),
	}
	if low := upTo(reads, bracing.HomeMost); len(low) > 1 {
		home := worstCheck("home", low, func(up float64) float64 { return bracing.HomeLimitFormula.Value(up) })
		checks = append(checks, home)
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
	return append(checks, worstCheck("crew", reads, func(float64) float64 { return in.Num("crew") }))
}

// upTo returns the readings no higher than a height in m, the base included.
// The readings ascend.
func upTo(reads []reading, height float64) []reading {
	n := slices.IndexFunc(reads, func(x reading) bool { return bracing.Exceeds(x.up, height) })
	if n < 0 {
		return reads
	}
	return reads[:n]
}

// worstCheck returns the reading with the largest ratio to its limit. Among equal
// ratios it returns the one highest on the wall. book names the source of the
// limit.
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

// slopeCheck returns the pair of readings, the base included, that uses most of
// its limit, the highest of equals, and records it as worked steps. Its height is
// that of the upper reading.
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

// classLimit returns the greatest irregularity of a surface class (a, b, c,
// otherwise d) in m. classC is the limit of class C, in inches: 1/4 for steps, 1/2
// for gaps.
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

// putBow sets the greatest distance from the line through base and top reading; it
// sets nothing for fewer than three readings.
func putBow(r *calc.Recorder, reads []reading) {
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

// addNotes records a note for each limit that is exceeded or needs a question, and
// for readings that end below the top. A wall that is far off gets no word on its
// braces and no comparison of editions.
func addNotes(r *calc.Recorder, in calc.Case, reads []reading, checks []check, far bool) {
	top := reads[len(reads)-1].up
	if top < 0.9*in.Num("height")-calc.Slack {
		r.Note(calc.LevelAsk, calc.At("readings"), askTop, calc.Amount("up", top, &displays.Height))
	}
	fresh, old := checks[0], checks[1]
	if !far && !fresh.within() {
		r.Note(calc.LevelNotice, calc.At("readings"), noteBeyond)
		if old.within() {
			r.Note(calc.LevelAsk, calc.At("readings"), askEdition)
		}
		if i := slices.IndexFunc(checks, func(c check) bool { return c.book == "home" }); i >= 0 && checks[i].within() {
			r.Note(calc.LevelNotice, calc.At("readings"), noteHome)
		}
	}
	if !far && fresh.within() && !checks[len(checks)-1].within() {
		r.Note(calc.LevelCaution, calc.At("crew"), noteCrew, calc.Amount("limit", in.Num("crew"), &displays.PartAtMost))
	}
	for _, c := range checks {
		noteClose(r, c)
	}
	if limit := newLimit(in).Value(in.Num("height")); in.Has("own") && bracing.Exceeds(in.Num("own"), limit) {
		r.Note(
			calc.LevelAsk,
			calc.At("own"),
			askTolerance,
			calc.Amount("up", in.Num("height"), &displays.Height),
			calc.Amount("limit", limit, &displays.PartAtMost),
		)
	}
	if in.Choice("stories") == "one" {
		r.Note(calc.LevelNotice, calc.At("stories"), noteStory)
	}
	if in.Choice("what") == "edge" {
		r.Note(calc.LevelNotice, calc.At("what"), noteEdge)
	}
}

// noteClose notes measured and limit in hundredths where a check fails that looks
// equal as shown.
func noteClose(r *calc.Recorder, c check) {
	if c.within() {
		return
	}
	for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
		style := quantity.Style{System: sys}
		if quantity.Format(c.measured, displays.Part, style) == quantity.Format(c.limit, displays.PartAtMost, style) {
			r.Note(calc.LevelNotice, calc.At("readings"), noteHair, calc.Amount("measured", c.measured, &hundredths),
				calc.Amount("limit", c.limit, &hundredths))
			return
		}
	}
}
