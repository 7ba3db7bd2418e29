package stringline

import (
	"cmp"
	"math"
	"slices"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// geometry is the geometry of a brace and the travel of its adjuster.
type geometry struct {
	run, attach, stringHeight float64 // m
	length                    float64 // m
	travel                    float64 // m in one turn
}

// compute sets the deviation and turns of each brace. It refuses nothing; it asks
// and warns in notes.
func compute(r *calc.Recorder, in calc.Case) {
	lines := readReadings(in)
	worst := worstOf(lines)
	off := r.UseFor(
		ofWorst,
		[]calc.Slot{calc.Count("row", lines[worst].Nr)},
		bracing.DeviationFormula,
		lines[worst].Row.Num("gap"),
		in.Num("block"),
	)
	b := geometryOf(r, in)
	next := nextOf(in, lines, math.Abs(off))
	held := next != nextTurn && next != nextGood
	setTurns(lines, b, held)
	step := bracing.PerTurnFormula.Value(b.travel, b.length, b.run, b.stringHeight, b.attach)
	if next == nextTurn {
		next = turnOf(countTurns(lines), step, in.Num("tolerance"))
	}
	r.PutChoice("next", next)
	rank(lines)
	if !held {
		r.Put("turns", worstTurns(r, b, lines[worst]))
		r.Put("to-turn", float64(countTurns(lines)))
	}
	r.Put("worst", math.Abs(off))
	r.Put("worst-row", float64(lines[worst].Nr))
	r.Put("per-turn", step)
	r.Put("turn-travel", b.travel)
	r.Put("slope", bracing.BraceAngleFormula.Value(b.run, b.attach, in.Num("foot-below")))
	r.Put("plumb-limit", r.Use(bracing.PlumbLimitFormula, in.Num("string-height")))
	held = held || next == nextCoarse
	putHeadline(r, in, lines, held)
	putBow(r, lines)
	putReadings(r, in, lines, held)
	addNotes(r, in, lines, step, next)
}

// nextOf returns what to do next, an ID of the output next. worst is the greatest
// distance from the line in m.
func nextOf(in calc.Case, lines []bracing.Reading, worst float64) string {
	switch {
	case bracing.Exceeds(worst, bracing.MostOff):
		if bracing.Empty(in) {
			return nextLook
		}
		return nextClear
	case bracing.Stiff(in):
		return nextStop
	case !proved(in, "first-end") || !proved(in, "second-end"):
		return nextProve
	}
	for _, l := range lines {
		if !l.Within {
			return nextTurn
		}
	}
	return nextGood
}

// turnOf returns how to turn the braces of a wall that is off its line, an ID of the
// output next: by quarters, by eighths where a quarter turn moves the wall by more than
// the tolerance, or not at all where the screw is too coarse for any of them. step is the
// movement of the wall, in m, for one turn.
func turnOf(toTurn int, step, tolerance float64) string {
	switch {
	case toTurn == 0:
		return nextCoarse
	case bracing.CoarseQuarter(step, tolerance):
		return nextEighths
	}
	return nextTurn
}

// proved reports whether the gap read at an end is that of its block. A string
// without blocks needs no reading there.
func proved(in calc.Case, end string) bool {
	if !in.Has(end) {
		return in.Num("block") == 0
	}
	return !bracing.Exceeds(math.Abs(in.Num(end)-in.Num("block")), bracing.TapeSlack)
}

// worstTurns records the worked steps of the worst reading and returns its turns,
// 0 if its brace is not turned.
func worstTurns(r *calc.Recorder, b geometry, worst bracing.Reading) float64 {
	if !worst.ToTurn {
		return 0
	}
	at := r.Use(bracing.AtBraceFormula, worst.Off, b.attach, b.stringHeight)
	return r.Use(bracing.TurnsFormula, r.Use(bracing.BraceChangeFormula, at, b.run, b.length), b.travel)
}

// countTurns returns the number of braces to turn.
func countTurns(lines []bracing.Reading) int {
	n := 0
	for _, l := range lines {
		if l.ToTurn {
			n++
		}
	}
	return n
}

const (
	beginAnySide  = calc.Text("Brace {brace} first: {turns} turns")
	beginLengthen = calc.Text("Brace {brace} first: lengthen {turns} turns")
	beginShorten  = calc.Text("Brace {brace} first: shorten {turns} turns")
)

var ofWorst = calc.Text("The worst reading, row {row}")

// readReadings returns the readings in the order of the rows, with deviation,
// verdict and ends; turns and order are not set.
func readReadings(in calc.Case) []bracing.Reading {
	rows := in.Rows("readings")
	lines := make([]bracing.Reading, len(rows))
	for i, row := range rows {
		off := bracing.DeviationFormula.Value(row.Num("gap"), in.Num("block"))
		nr := row.RowNumber()
		if nr == 0 { // a default row
			nr = i + 1
		}
		lines[i] = bracing.Reading{
			Row:    row,
			Nr:     nr,
			Off:    off,
			Within: !bracing.Exceeds(math.Abs(off), in.Num("tolerance")),
		}
	}
	first, last := ends(lines)
	lines[first].End, lines[last].End = true, true
	return lines
}

// ends returns the indexes of the readings nearest to the two ends of the string:
// by distance if every row has one, otherwise the first and the last row.
func ends(lines []bracing.Reading) (first, last int) {
	last = len(lines) - 1
	if !placed(lines) {
		return first, last
	}
	for i, l := range lines {
		if l.Row.Num("along") < lines[first].Row.Num("along") {
			first = i
		}
		if l.Row.Num("along") > lines[last].Row.Num("along") {
			last = i
		}
	}
	return first, last
}

// placed reports whether every reading has its distance along the wall.
func placed(lines []bracing.Reading) bool {
	for _, l := range lines {
		if !l.Row.Has("along") {
			return false
		}
	}
	return true
}

// worstOf returns the index of the reading with the greatest deviation, the first
// of equals.
func worstOf(lines []bracing.Reading) int {
	worst := 0
	for i, l := range lines {
		if math.Abs(l.Off) > math.Abs(lines[worst].Off) {
			worst = i
		}
	}
	return worst
}

// geometryOf returns the geometry of the braces in m, and records its worked
// steps.
func geometryOf(r *calc.Recorder, in calc.Case) geometry {
	b := geometry{run: in.Num("foot-distance"), attach: in.Num("attach-height"), stringHeight: in.Num("string-height")}
	b.length = r.Use(bracing.BraceLengthFormula, b.run, b.attach, in.Num("foot-below"))
	threaded := 1.0
	if in.Choice("ends") == "both" {
		threaded = 2
	}
	switch in.Choice("thread-as") {
	case "threads":
		b.travel = r.Use(bracing.TravelByThreadsFormula, threaded, in.Num("threads"))
	case "pitch":
		b.travel = r.Use(bracing.TravelByPitchFormula, threaded, in.Num("pitch"))
	case "wall": // read at the string: the lever is in it, and is taken out to have the travel of the screw
		at := r.Use(bracing.AtBraceFormula, in.Num("wall-travel"), b.attach, b.stringHeight)
		b.travel = r.Use(bracing.BraceChangeFormula, at, b.run, b.length)
	default:
		b.travel = in.Num("travel")
	}
	return b
}

// setTurns sets the turns of every brace. A brace within tolerance is not turned,
// nor is one that needs less than an eighth of a turn, nor any brace of a wall that
// is held.
func setTurns(lines []bracing.Reading, b geometry, held bool) {
	for i := range lines {
		l := &lines[i]
		at := bracing.AtBraceFormula.Value(l.Off, b.attach, b.stringHeight)
		l.Turns = bracing.TurnsFormula.Value(bracing.BraceChangeFormula.Value(at, b.run, b.length), b.travel)
		l.ToTurn = !l.Within && quantity.Round(l.Turns, *bracing.Quarters, quantity.US) > 0 && !held
	}
}

// rank sets the order of work: the ends first, since the wall between them follows,
// then by deviation, the greatest first.
func rank(lines []bracing.Reading) {
	var list []int
	for i, l := range lines {
		if l.ToTurn {
			list = append(list, i)
		}
	}
	slices.SortStableFunc(list, func(a, b int) int {
		if lines[a].End != lines[b].End {
			if lines[a].End {
				return -1
			}
			return 1
		}
		return cmp.Compare(math.Abs(lines[b].Off), math.Abs(lines[a].Off))
	})
	for n, i := range list {
		lines[i].Order = n + 1
	}
}

// putReadings sets the output with a row for each reading. Rows of a wall that is
// held have no direction.
func putReadings(r *calc.Recorder, in calc.Case, lines []bracing.Reading, held bool) {
	rows := make([]calc.Case, len(lines))
	for i, l := range lines {
		row := r.NewRow("lines").
			With("name", calc.TextOf(l.Name())).
			With("off", calc.Num(l.Off)).
			With("within", calc.Bool(l.Within))
		move := bracing.MoveOf(l)
		if !held {
			row = row.With("move", calc.ChoiceOf(move))
		}
		if in.Has("string-side") && !held {
			seen, turn := bracing.SeenFromBrace(move, in.Choice("string-side"))
			row = row.With("brace-move", calc.ChoiceOf(seen)).With("turn", calc.ChoiceOf(turn))
		}
		if l.ToTurn {
			row = row.With("turns", calc.Num(l.Turns)).With("order", calc.Num(float64(l.Order)))
		}
		rows[i] = row
	}
	r.PutRows("lines", rows)
}

// putHeadline sets the deed in one line: the brace to begin with, which way and how far.
// A wall that is held, and one without a brace to turn, has none: what to do next says it.
func putHeadline(r *calc.Recorder, in calc.Case, lines []bracing.Reading, held bool) {
	i := slices.IndexFunc(lines, func(l bracing.Reading) bool { return l.Order == 1 })
	if held || i < 0 {
		return
	}
	l := lines[i]
	slots := []calc.Slot{calc.WordSlot("brace", l.Name()), calc.Amount("turns", l.Turns, bracing.Quarters)}
	if !in.Has("string-side") {
		r.Headline(beginAnySide, slots...)
		return
	}
	_, turn := bracing.SeenFromBrace(bracing.MoveOf(l), in.Choice("string-side"))
	text := beginShorten
	if turn == bracing.TurnOptions[0].ID {
		text = beginLengthen
	}
	r.Headline(text, slots...)
}

// putBow puts the bow of the wall as a radius where every reading has a distance
// and one is near the middle.
//
// Distances that differ by less than bracing.SamePlace count as equal: a distance
// entered in feet and one converted from another unit differ in the last bit, and
// the bow must not depend on it.
func putBow(r *calc.Recorder, lines []bracing.Reading) {
	if len(lines) < 3 || !placed(lines) {
		return
	}
	first, last := ends(lines)
	from, to := lines[first].Row.Num("along"), lines[last].Row.Num("along")
	length := to - from
	aside := func(i int) float64 { return math.Abs(lines[i].Row.Num("along") - (from+to)/2) }
	middle := first
	for i := range lines {
		if aside(i) < aside(middle)-bracing.SamePlace {
			middle = i
		}
	}
	offset := math.Abs(lines[middle].Off - (lines[first].Off+lines[last].Off)/2)
	if length <= 0 || offset < leastBow || aside(middle) > length/10+bracing.SamePlace {
		return
	}
	r.Put("bow-radius", bracing.BowRadiusFormula.Value(length, offset))
}

// leastBow is the least offset in m that is a bow and not a straight wall.
const leastBow = 0.001
