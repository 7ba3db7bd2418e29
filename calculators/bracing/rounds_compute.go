package bracing

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

var ofLast = calc.Text("The worst of the last round, row {row}")

// post is one brace over the rounds.
type post struct {
	row    calc.Case
	nr     int
	off    []float64 // m, by round
	way    string
	turns  float64
	toTurn bool
}

func (p post) last() float64 { return p.off[len(p.off)-1] }
func (p post) prev() float64 { return p.off[len(p.off)-2] }

// in round k, or the latest before it.
func (p post) in(k int) float64 { return p.off[min(k, len(p.off)-1)] }

func (p post) name() string {
	if name := p.row.Text("name"); name != "" {
		return name
	}
	return strconv.Itoa(p.nr)
}

func computeRounds(r *calc.Recorder, in calc.Case) {
	posts, rounds := readPosts(in)
	turnPosts(posts, in)
	first, worst := worstPost(posts, 0), worstPost(posts, rounds-1)
	w := posts[worst]
	gap := w.row.Num("gap-" + strconv.Itoa(len(w.off)))
	r.UseFor(ofLast, []calc.Slot{calc.Count("row", w.nr)}, deviation, gap, in.Num("block"))
	if !stiff(in) {
		r.Put("turns", stepsFor(r, w, in))
	}
	before := math.Abs(posts[first].in(0))
	if before > sameSpot {
		r.Put("left", r.Use(leftOver, before, w.last()))
	}
	toTurn, wrong, closer := 0, 0, 0
	for _, p := range posts {
		if p.toTurn {
			toTurn++
		}
		switch p.way {
		case "wrong":
			wrong++
		case "closer", "past", "good":
			closer++
		}
	}
	r.Put("worst", math.Abs(w.last()))
	r.Put("worst-row", float64(w.nr))
	r.Put("first-worst", before)
	r.Put("to-turn", float64(toTurn))
	r.PutChoice("done", doneFrom(posts, rounds, in.Num("tolerance")))
	r.PutChoice("next", nextStep(posts, rounds, wrong, in))
	drag := dragged(posts, in.Num("tolerance"))
	if drag > tapeSlack+calc.Slack {
		r.Put("dragged", drag)
		r.Note(calc.LevelNotice, calc.At("braces"), roundDrag, calc.Amount("moved", drag, &displays.Part))
	}
	putPosts(r, in, posts)
	notePosts(r, in, posts, rounds)
	if wrong > 1 && wrong > closer {
		r.Note(calc.LevelAsk, calc.At("string-side"), roundMany)
	}
}

// readPosts reads the rows, and tells how many rounds were read at all.
func readPosts(in calc.Case) (posts []post, rounds int) {
	tolerance, block := in.Num("tolerance"), in.Num("block")
	for i, row := range in.Rows("braces") {
		nr := row.RowNumber()
		if nr == 0 { // a default, never typed
			nr = i + 1
		}
		p := post{row: row, nr: nr}
		for _, id := range []string{"gap-1", "gap-2", "gap-3"} {
			if row.Has(id) {
				p.off = append(p.off, deviation.Value(row.Num(id), block))
			}
		}
		p.way = wayOf(p.prev(), p.last(), tolerance)
		rounds = max(rounds, len(p.off))
		posts = append(posts, p)
	}
	return posts, rounds
}

// wayOf judges the last move of a brace. What a tape cannot show is no move.
func wayOf(prev, last, tolerance float64) string {
	from, to := math.Abs(prev), math.Abs(last)
	switch {
	case !exceeds(to, tolerance):
		return "good"
	case !exceeds(from, tolerance): // it was not turned
		return "dragged"
	case prev*last < 0:
		return "past"
	case to > from+tapeSlack+calc.Slack:
		return "wrong"
	case to < from-tapeSlack-calc.Slack:
		return "closer"
	}
	return "still"
}

func worstPost(posts []post, round int) int {
	worst := 0
	for i, p := range posts {
		if math.Abs(p.in(round)) > math.Abs(posts[worst].in(round)) {
			worst = i
		}
	}
	return worst
}

// turnPosts works out the turns still needed at every brace.
func turnPosts(posts []post, in calc.Case) {
	attach, run := in.Num("attach-height"), in.Num("foot-distance")
	long := braceLength.Value(run, attach, in.Num("foot-below"))
	for i := range posts {
		p := &posts[i]
		at := atBrace.Value(p.last(), attach, in.Num("string-height"))
		p.turns = turnsFor.Value(braceChange.Value(at, run, long), in.Num("travel"))
		p.toTurn = p.way != "good" && quantity.Round(p.turns, *quarters, quantity.US) > 0 && !stiff(in)
	}
}

// stepsFor works the turns of the worst brace out step by step; 0 where it is
// left alone.
func stepsFor(r *calc.Recorder, p post, in calc.Case) float64 {
	if !p.toTurn {
		return 0
	}
	attach, run := in.Num("attach-height"), in.Num("foot-distance")
	r.Use(movement, p.row.Num("gap-"+strconv.Itoa(len(p.off)-1)), p.row.Num("gap-"+strconv.Itoa(len(p.off))))
	long := r.Use(braceLength, run, attach, in.Num("foot-below"))
	at := r.Use(atBrace, p.last(), attach, in.Num("string-height"))
	return r.Use(turnsFor, r.Use(braceChange, at, run, long), in.Num("travel"))
}

// doneFrom is the first round from which all braces stay within tolerance.
func doneFrom(posts []post, rounds int, tolerance float64) string {
	from := 0
	for _, p := range posts {
		for k := range rounds {
			if exceeds(math.Abs(p.in(k)), tolerance) {
				from = max(from, k+1)
			}
		}
	}
	if from == rounds {
		return "not-yet"
	}
	return "round-" + strconv.Itoa(from+1)
}

func nextStep(posts []post, rounds, wrong int, in calc.Case) string {
	switch {
	case stiff(in):
		return "stop"
	case wrong > 0:
		return "check"
	case doneFrom(posts, rounds, in.Num("tolerance")) == "not-yet":
		return "again"
	}
	return "done"
}

// dragged is the most that a brace moved which was within tolerance before,
// and so was not turned: its neighbours took it along.
func dragged(posts []post, tolerance float64) (most float64) {
	for _, p := range posts {
		if !exceeds(math.Abs(p.prev()), tolerance) {
			most = math.Max(most, math.Abs(p.last()-p.prev()))
		}
	}
	return most
}

func putPosts(r *calc.Recorder, in calc.Case, posts []post) {
	rows := make([]calc.Case, len(posts))
	for i, p := range posts {
		move := moveOf(line{off: p.last(), within: p.way == "good"})
		row := r.NewRow("lines").With("name", calc.TextOf(p.name())).With("moved", calc.Num(movement.Value(p.prev(), p.last()))).
			With("way", calc.ChoiceOf(p.way)).With("move", calc.ChoiceOf(move))
		for k, off := range p.off {
			row = row.With("off-"+strconv.Itoa(k+1), calc.Num(off))
		}
		// A brace that went the wrong way gets no new order: the side or its
		// thread may be the slip, and the same order would repeat it.
		if in.Has("string-side") && !stiff(in) && p.way != "wrong" {
			_, turn := atTheBrace(move, in.Choice("string-side"))
			row = row.With("turn", calc.ChoiceOf(turn))
		}
		if p.toTurn {
			row = row.With("turns", calc.Num(p.turns))
		}
		rows[i] = row
	}
	r.PutRows("lines", rows)
}
