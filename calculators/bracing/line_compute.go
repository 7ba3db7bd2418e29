package bracing

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// rig is the geometry of a brace and what its adjuster does.
type rig struct {
	run, attach, stringHeight float64 // m
	length                    float64 // m
	travel                    float64 // m in one turn
}

// line is one reading on its way to an answer.
type line struct {
	row    calc.Case
	nr     int     // of the row as typed, from 1
	off    float64 // m; above 0 the wall is too far from the string
	within bool    // of the tolerance
	end    bool    // nearest an end of the string
	turns  float64
	toTurn bool
	order  int // from 1 among the braces to turn
}

func computeLine(r *calc.Recorder, in calc.Case) {
	lines := readLines(in)
	worst := worstOf(lines)
	off := r.UseFor(ofWorst, []calc.Slot{calc.Count("row", lines[worst].nr)}, deviation, lines[worst].row.Num("gap"), in.Num("block"))
	b := rigOf(r, in)
	answer(lines, b, in)
	rank(lines)
	if !stiff(in) {
		r.Put("turns", worstTurns(r, b, lines[worst]))
	}
	step := perTurn.Value(b.travel, b.length, b.run, b.stringHeight, b.attach)
	r.Put("to-turn", float64(countTurns(lines)))
	r.Put("worst", math.Abs(off))
	r.Put("worst-row", float64(lines[worst].nr))
	r.Put("per-turn", step)
	r.Put("turn-travel", b.travel)
	r.Put("slope", braceAngle.Value(b.run, b.attach, in.Num("foot-below")))
	r.Put("plumb-limit", r.Use(plumbLimit, in.Num("string-height")))
	putBow(r, lines)
	putLines(r, in, lines)
	noteLine(r, in, lines, step)
}

// worstTurns works the turns of the worst reading out step by step; 0 where
// its brace is to be left alone.
func worstTurns(r *calc.Recorder, b rig, worst line) float64 {
	if !worst.toTurn {
		return 0
	}
	at := r.Use(atBrace, worst.off, b.attach, b.stringHeight)
	return r.Use(turnsFor, r.Use(braceChange, at, b.run, b.length), b.travel)
}

func countTurns(lines []line) int {
	n := 0
	for _, l := range lines {
		if l.toTurn {
			n++
		}
	}
	return n
}

var ofWorst = calc.Text("The worst reading, row {row}")

func stiff(in calc.Case) bool { return in.Choice("concrete") == "stiff" }

func readLines(in calc.Case) []line {
	rows := in.Rows("readings")
	lines := make([]line, len(rows))
	for i, row := range rows {
		off := deviation.Value(row.Num("gap"), in.Num("block"))
		nr := row.RowNumber()
		if nr == 0 { // a default, never typed
			nr = i + 1
		}
		lines[i] = line{row: row, nr: nr, off: off, within: !exceeds(math.Abs(off), in.Num("tolerance"))}
	}
	first, last := ends(lines)
	lines[first].end, lines[last].end = true, true
	return lines
}

// ends are the readings nearest the two ends of the string: by distance where
// every row has one, else the first and the last row.
func ends(lines []line) (first, last int) {
	last = len(lines) - 1
	if !placed(lines) {
		return first, last
	}
	for i, l := range lines {
		if l.row.Num("along") < lines[first].row.Num("along") {
			first = i
		}
		if l.row.Num("along") > lines[last].row.Num("along") {
			last = i
		}
	}
	return first, last
}

// placed tells whether every reading has its distance along the wall.
func placed(lines []line) bool {
	for _, l := range lines {
		if !l.row.Has("along") {
			return false
		}
	}
	return true
}

// worstOf is the reading farthest off the line, the first of equals.
func worstOf(lines []line) int {
	worst := 0
	for i, l := range lines {
		if math.Abs(l.off) > math.Abs(lines[worst].off) {
			worst = i
		}
	}
	return worst
}

// exceeds tells whether x is over a limit by more than the noise of units: a
// reading right on the tolerance is within it.
func exceeds(x, limit float64) bool { return x > limit+1e-9 }

func rigOf(r *calc.Recorder, in calc.Case) rig {
	b := rig{run: in.Num("foot-distance"), attach: in.Num("attach-height"), stringHeight: in.Num("string-height")}
	b.length = r.Use(braceLength, b.run, b.attach, in.Num("foot-below"))
	threaded := 1.0
	if in.Choice("ends") == "both" {
		threaded = 2
	}
	switch in.Choice("thread-as") {
	case "threads":
		b.travel = r.Use(travelByThreads, threaded, in.Num("threads"))
	case "pitch":
		b.travel = r.Use(travelByPitch, threaded, in.Num("pitch"))
	default:
		b.travel = in.Num("travel")
	}
	return b
}

// answer works out the turns of every brace. A brace within tolerance is left
// alone, and so is one for which less than half a quarter turn comes out.
func answer(lines []line, b rig, in calc.Case) {
	for i := range lines {
		l := &lines[i]
		at := atBrace.Value(l.off, b.attach, b.stringHeight)
		l.turns = turnsFor.Value(braceChange.Value(at, b.run, b.length), b.travel)
		l.toTurn = !l.within && quantity.Round(l.turns, *quarters, quantity.US) > 0 && !stiff(in)
	}
}

// rank numbers the braces to turn: the ends first, for the wall between them
// follows, then the worst.
func rank(lines []line) {
	var list []int
	for i, l := range lines {
		if l.toTurn {
			list = append(list, i)
		}
	}
	slices.SortStableFunc(list, func(a, b int) int {
		if lines[a].end != lines[b].end {
			if lines[a].end {
				return -1
			}
			return 1
		}
		return cmp.Compare(math.Abs(lines[b].off), math.Abs(lines[a].off))
	})
	for n, i := range list {
		lines[i].order = n + 1
	}
}

func putLines(r *calc.Recorder, in calc.Case, lines []line) {
	rows := make([]calc.Case, len(lines))
	for i, l := range lines {
		row := r.NewRow("lines").With("name", calc.TextOf(l.name())).With("off", calc.Num(l.off)).With("within", calc.Bool(l.within))
		move := moveOf(l)
		row = row.With("move", calc.ChoiceOf(move))
		if in.Has("string-side") && !stiff(in) {
			seen, turn := atTheBrace(move, in.Choice("string-side"))
			row = row.With("brace-move", calc.ChoiceOf(seen)).With("turn", calc.ChoiceOf(turn))
		}
		if l.toTurn {
			row = row.With("turns", calc.Num(l.turns)).With("order", calc.Num(float64(l.order)))
		}
		rows[i] = row
	}
	r.PutRows("lines", rows)
}

// name is what the brace is called, or the number of its row.
func (l line) name() string {
	if name := l.row.Text("name"); name != "" {
		return name
	}
	return strconv.Itoa(l.nr)
}

// moveOf is where the wall must go, seen from the string.
func moveOf(l line) string {
	switch {
	case l.within:
		return "stay"
	case l.off > 0:
		return "toward"
	}
	return "away"
}

// atTheBrace tells a movement seen from the string as one seen from the
// brace, and how the adjuster does it. On the brace side the two agree; on the
// other side of the wall they are opposite. A shorter brace pulls the wall
// toward itself.
func atTheBrace(move, side string) (seen, turn string) {
	if move == "stay" {
		return "stay", "leave"
	}
	if (move == "toward") == (side == "brace") {
		return "toward", "shorten"
	}
	return "away", "lengthen"
}

// sameSpot is far below what a tape shows and far above binary calc.Slack, in m.
const sameSpot = 1e-6

// putBow tells the bow of the wall as a radius where distances were given and
// a reading stands near the middle.
//
// Distances that differ by less than sameSpot count as equal: a place typed in
// feet and one converted from another unit differ in the last bit, and the
// bow must not jump with it.
func putBow(r *calc.Recorder, lines []line) {
	if len(lines) < 3 || !placed(lines) {
		return
	}
	first, last := ends(lines)
	from, to := lines[first].row.Num("along"), lines[last].row.Num("along")
	length := to - from
	aside := func(i int) float64 { return math.Abs(lines[i].row.Num("along") - (from+to)/2) }
	middle := first
	for i := range lines {
		if aside(i) < aside(middle)-sameSpot {
			middle = i
		}
	}
	offset := math.Abs(lines[middle].off - (lines[first].off+lines[last].off)/2)
	if length <= 0 || offset < leastBow || aside(middle) > length/10+sameSpot {
		return
	}
	r.Put("bow-radius", bowRadius.Value(length, offset))
}

// leastBow is what a tape still shows; less is a straight wall.
const leastBow = 0.001
