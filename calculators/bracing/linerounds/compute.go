package linerounds

import (
	"math"
	"strconv"

	"coursebook/calculators/bracing"
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

func compute(r *calc.Recorder, in calc.Case) {
	posts, rounds := readPosts(in)
	turnPosts(posts, in)
	first, worst := worstPost(posts, 0), worstPost(posts, rounds-1)
	w := posts[worst]
	gap := w.row.Num("gap-" + strconv.Itoa(len(w.off)))
	r.UseFor(ofLast, []calc.Slot{calc.Count("row", w.nr)}, bracing.DeviationFormula, gap, in.Num("block"))
	if !bracing.Stiff(in) {
		r.Put("turns", stepsFor(r, w, in))
	}
	before := math.Abs(posts[first].in(0))
	if before > bracing.SamePlace {
		r.Put("left", r.Use(bracing.LeftOverFormula, before, w.last()))
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
	if drag > bracing.TapeSlack+calc.Slack {
		r.Put("dragged", drag)
		r.Note(calc.LevelNotice, calc.At("braces"), roundDrag, calc.Amount("moved", drag, &displays.Part))
	}
	putPosts(r, in, posts)
	notePosts(r, in, posts, rounds)
	if wrong > 1 && wrong > closer {
		r.Note(calc.LevelAsk, calc.At("string-side"), roundMany)
	}
}

// readPosts reads the rows and returns how many rounds were read at all.
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
				p.off = append(p.off, bracing.DeviationFormula.Value(row.Num(id), block))
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
	case !bracing.Exceeds(to, tolerance):
		return "good"
	case !bracing.Exceeds(from, tolerance): // it was not turned
		return "dragged"
	case prev*last < 0:
		return "past"
	case to > from+bracing.TapeSlack+calc.Slack:
		return "wrong"
	case to < from-bracing.TapeSlack-calc.Slack:
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
	long := bracing.BraceLengthFormula.Value(run, attach, in.Num("foot-below"))
	for i := range posts {
		p := &posts[i]
		at := bracing.AtBraceFormula.Value(p.last(), attach, in.Num("string-height"))
		p.turns = bracing.TurnsFormula.Value(bracing.BraceChangeFormula.Value(at, run, long), in.Num("travel"))
		p.toTurn = p.way != "good" && quantity.Round(p.turns, *bracing.Quarters, quantity.US) > 0 && !bracing.Stiff(in)
	}
}

// stepsFor works the turns of the worst brace out step by step; 0 where it is
// left alone.
func stepsFor(r *calc.Recorder, p post, in calc.Case) float64 {
	if !p.toTurn {
		return 0
	}
	attach, run := in.Num("attach-height"), in.Num("foot-distance")
	r.Use(
		bracing.MovementFormula,
		p.row.Num("gap-"+strconv.Itoa(len(p.off)-1)),
		p.row.Num("gap-"+strconv.Itoa(len(p.off))),
	)
	long := r.Use(bracing.BraceLengthFormula, run, attach, in.Num("foot-below"))
	at := r.Use(bracing.AtBraceFormula, p.last(), attach, in.Num("string-height"))
	return r.Use(bracing.TurnsFormula, r.Use(bracing.BraceChangeFormula, at, run, long), in.Num("travel"))
}

// doneFrom is the first round from which all braces stay within tolerance.
func doneFrom(posts []post, rounds int, tolerance float64) string {
	from := 0
	for _, p := range posts {
		for k := range rounds {
			if bracing.Exceeds(math.Abs(p.in(k)), tolerance) {
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
	case bracing.Stiff(in):
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
		if !bracing.Exceeds(math.Abs(p.prev()), tolerance) {
			most = math.Max(most, math.Abs(p.last()-p.prev()))
		}
	}
	return most
}

func putPosts(r *calc.Recorder, in calc.Case, posts []post) {
	rows := make([]calc.Case, len(posts))
	for i, p := range posts {
		move := bracing.MoveOf(bracing.Line{Off: p.last(), Within: p.way == "good"})
		row := r.NewRow("lines").
			With("name", calc.TextOf(p.name())).
			With("moved", calc.Num(bracing.MovementFormula.Value(p.prev(), p.last()))).
			With("way", calc.ChoiceOf(p.way)).
			With("move", calc.ChoiceOf(move))
		for k, off := range p.off {
			row = row.With("off-"+strconv.Itoa(k+1), calc.Num(off))
		}
		// A brace that went the wrong way gets no new order: the side or its
		// thread may be wrong, and the same order would repeat it.
		if in.Has("string-side") && !bracing.Stiff(in) && p.way != "wrong" {
			_, turn := bracing.AtTheBrace(move, in.Choice("string-side"))
			row = row.With("turn", calc.ChoiceOf(turn))
		}
		if p.toTurn {
			row = row.With("turns", calc.Num(p.turns))
		}
		rows[i] = row
	}
	r.PutRows("lines", rows)
}

// What the calculator says about a wall on its way.
const (
	roundStiff = calc.Text(
		"The concrete has stiffened. Leave every brace. Write the readings down and tell the foreman.",
	)
	roundSide  = calc.Text("Which side is the string on? Lengthen or shorten is told once you answer.")
	roundRead  = calc.Text("Not every brace was read in round 3. Read them all: the wall moves together.")
	roundWrong = calc.Text(
		"Brace {name} went {moved} farther off. Check the string side and which way its thread runs before you turn " +
			"it again.",
	)
	roundDouble = calc.Text("Its error about doubled. That is the mark of a turn the wrong way.")
	roundMany   = calc.Text("More braces went the wrong way than came in. Is the string on the side you think?")
	roundPast   = calc.Text("Brace {name} went past the line. Check the travel of one turn, and turn less.")
	roundStill  = calc.Text(
		"Brace {name} did not move. Look for play, a loose foot or a brace that is not fixed to the wall.",
	)
	roundDrag = calc.Text(
		"A brace that was good moved {moved}. The wall moves together: read the neighbours after each brace.",
	)
	roundTwo = calc.Text("Brace {name} needs {turns} turns. Turn two, read all again, then go on.")
)

// notePosts notes single braces, each at its last reading.
func notePosts(r *calc.Recorder, in calc.Case, posts []post, rounds int) {
	if bracing.Stiff(in) {
		r.Note(calc.LevelWarning, calc.At("concrete"), roundStiff)
	} else if !in.Has("string-side") {
		r.Note(calc.LevelAsk, calc.At("string-side"), roundSide)
	}
	for _, p := range posts {
		at := calc.Cell("braces", p.nr, "gap-"+strconv.Itoa(len(p.off)))
		if len(p.off) < rounds {
			r.Note(calc.LevelAsk, calc.Cell("braces", p.nr, "gap-3"), roundRead)
		}
		name, moved := calc.WordSlot("name", p.name()),
			calc.Amount("moved", math.Abs(p.last()-p.prev()), &displays.Part)
		switch p.way {
		case "wrong":
			r.Note(calc.LevelCaution, at, roundWrong, name, moved)
			if q := bracing.LeftOverFormula.Value(p.prev(), p.last()); q > 1.6 && q < 2.4 {
				r.Note(calc.LevelCaution, at, roundDouble)
			}
		case "past":
			r.Note(calc.LevelNotice, at, roundPast, name)
		case "still":
			r.Note(calc.LevelAsk, at, roundStill, name)
		}
		if p.toTurn && p.turns > bracing.RoundTurns+calc.Slack {
			r.Note(calc.LevelCaution, at, roundTwo, name, calc.Amount("turns", p.turns, bracing.Quarters))
		}
	}
}
