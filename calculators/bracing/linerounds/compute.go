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

// brace holds the readings and the results of one brace.
type brace struct {
	row    calc.Case
	nr     int
	off    []float64 // deviation in m, by round
	way    string
	turns  float64
	toTurn bool
}

// last returns the deviation in the last round.
func (b brace) last() float64 { return b.off[len(b.off)-1] }

// prev returns the deviation in the round before the last.
func (b brace) prev() float64 { return b.off[len(b.off)-2] }

// in returns the deviation in round k from 0, or the latest before it.
func (b brace) in(k int) float64 { return b.off[min(k, len(b.off)-1)] }

// name returns the name of the brace, or the number of its row if it has none.
func (b brace) name() string {
	if name := b.row.Text("name"); name != "" {
		return name
	}
	return strconv.Itoa(b.nr)
}

// compute sets the deviations, verdicts and turns of each brace over the rounds.
// It refuses nothing; it asks and warns in notes.
func compute(r *calc.Recorder, in calc.Case) {
	braces, rounds := readBraces(in)
	first, worst := worstBrace(braces, 0), worstBrace(braces, rounds-1)
	far := isFar(braces[worst].last())
	held := far || bracing.Stiff(in)
	setTurns(braces, in, held)
	w := braces[worst]
	gap := w.row.Num("gap-" + strconv.Itoa(len(w.off)))
	r.UseFor(ofLast, []calc.Slot{calc.Count("row", w.nr)}, bracing.DeviationFormula, gap, in.Num("block"))
	if !held {
		r.Put("turns", worstTurns(r, w, in))
	}
	before := math.Abs(braces[first].in(0))
	if before > bracing.SamePlace {
		r.Put("left", r.Use(bracing.LeftOverFormula, before, w.last()))
	}
	toTurn, wrong, closer := 0, 0, 0
	for _, b := range braces {
		if b.toTurn {
			toTurn++
		}
		switch b.way {
		case "wrong":
			wrong++
		case "closer", "past", "good":
			closer++
		}
	}
	r.Put("worst", math.Abs(w.last()))
	r.Put("worst-row", float64(w.nr))
	r.Put("first-worst", before)
	if !held {
		r.Put("to-turn", float64(toTurn))
	}
	r.PutChoice("done", doneFrom(braces, rounds, in.Num("tolerance")))
	next := nextStep(braces, rounds, wrong, far, in)
	if step := stepOf(in); next == "again" {
		switch {
		case toTurn == 0:
			next = "coarse"
		case bracing.CoarseQuarter(step, in.Num("tolerance")):
			next = "eighths"
		}
		bracing.NoteCoarse(r, step, in.Num("tolerance"), next == "coarse")
	}
	r.PutChoice("next", next)
	if toTurn > 0 && next != "coarse" {
		try := bracing.NoteTry
		if bracing.CoarseQuarter(stepOf(in), in.Num("tolerance")) {
			try = bracing.NoteTryEighth
		}
		r.Note(calc.LevelCaution, calc.Path{}, try)
	}
	if far {
		if at := calc.Cell("braces", w.nr, "gap-"+strconv.Itoa(len(w.off))); bracing.Empty(in) {
			bracing.NoteOffEmpty(r, at, math.Abs(w.last()))
		} else {
			bracing.NoteOff(r, at, math.Abs(w.last()))
		}
	}
	drag := dragged(braces, in.Num("tolerance"))
	if drag > bracing.TapeSlack+calc.Slack {
		r.Put("dragged", drag)
	}
	if !held && drag > bracing.TapeSlack+calc.Slack {
		r.Note(calc.LevelNotice, calc.At("braces"), noteDrag, calc.Amount("moved", drag, &displays.Part))
	}
	putBraces(r, in, braces, held || next == "coarse")
	noteBraces(r, in, braces, rounds, held)
	if !far && wrong > 1 && wrong > closer {
		r.Note(calc.LevelAsk, calc.At("string-side"), askMany)
	}
}

// readBraces returns the braces and the number of rounds with readings.
func readBraces(in calc.Case) (braces []brace, rounds int) {
	tolerance, block := in.Num("tolerance"), in.Num("block")
	for i, row := range in.Rows("braces") {
		nr := row.RowNumber()
		if nr == 0 { // a default row
			nr = i + 1
		}
		b := brace{row: row, nr: nr}
		for _, id := range []string{"gap-1", "gap-2", "gap-3"} {
			if row.Has(id) {
				b.off = append(b.off, bracing.DeviationFormula.Value(row.Num(id), block))
			}
		}
		b.way = wayOf(b.prev(), b.last(), tolerance)
		rounds = max(rounds, len(b.off))
		braces = append(braces, b)
	}
	return braces, rounds
}

// wayOf returns the verdict on the last movement of a brace, an ID of wayOptions.
// A movement too small for a tape is none.
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

// worstBrace returns the index of the brace with the greatest deviation in a
// round, from 0, the first of equals.
func worstBrace(braces []brace, round int) int {
	worst := 0
	for i, b := range braces {
		if math.Abs(b.in(round)) > math.Abs(braces[worst].in(round)) {
			worst = i
		}
	}
	return worst
}

// isFar reports whether a wall is off by more than
// bracing.MostOff.
func isFar(off float64) bool {
	return bracing.Exceeds(math.Abs(off), bracing.MostOff)
}

// setTurns sets the turns still needed at every brace, none where the wall is held.
func setTurns(braces []brace, in calc.Case, held bool) {
	attach, run := in.Num("attach-height"), in.Num("foot-distance")
	long := bracing.BraceLengthFormula.Value(run, attach, in.Num("foot-below"))
	for i := range braces {
		b := &braces[i]
		at := bracing.AtBraceFormula.Value(b.last(), attach, in.Num("string-height"))
		b.turns = bracing.TurnsFormula.Value(bracing.BraceChangeFormula.Value(at, run, long), in.Num("travel"))
		b.toTurn = b.way != "good" && quantity.Round(b.turns, *bracing.Quarters, quantity.US) > 0 && !held
	}
}

// stepOf returns the movement of the wall at the string, in m, for one turn.
func stepOf(in calc.Case) float64 {
	attach, run := in.Num("attach-height"), in.Num("foot-distance")
	return bracing.PerTurnFormula.Value(in.Num("travel"),
		bracing.BraceLengthFormula.Value(run, attach, in.Num("foot-below")), run, in.Num("string-height"), attach)
}

// worstTurns records the worked steps of a brace and returns its turns, 0 if it is
// not turned.
func worstTurns(r *calc.Recorder, b brace, in calc.Case) float64 {
	if !b.toTurn {
		return 0
	}
	attach, run := in.Num("attach-height"), in.Num("foot-distance")
	r.Use(
		bracing.MovementFormula,
		b.row.Num("gap-"+strconv.Itoa(len(b.off)-1)),
		b.row.Num("gap-"+strconv.Itoa(len(b.off))),
	)
	long := r.Use(bracing.BraceLengthFormula, run, attach, in.Num("foot-below"))
	at := r.Use(bracing.AtBraceFormula, b.last(), attach, in.Num("string-height"))
	return r.Use(bracing.TurnsFormula, r.Use(bracing.BraceChangeFormula, at, run, long), in.Num("travel"))
}

// doneFrom returns the first round from which all braces stay within tolerance, an
// ID of the output "done".
func doneFrom(braces []brace, rounds int, tolerance float64) string {
	from := 0
	for _, b := range braces {
		for k := range rounds {
			if bracing.Exceeds(math.Abs(b.in(k)), tolerance) {
				from = max(from, k+1)
			}
		}
	}
	if from == rounds {
		return "not-yet"
	}
	return "round-" + strconv.Itoa(from+1)
}

// nextStep returns what to do next, an ID of the output next: clear, stop, check,
// again or done. wrong is the number of braces that moved the wrong way, far the
// report of isFar.
func nextStep(braces []brace, rounds, wrong int, far bool, in calc.Case) string {
	switch {
	case far:
		if bracing.Empty(in) {
			return "look"
		}
		return "clear"
	case bracing.Stiff(in):
		return "stop"
	case wrong > 0:
		return "check"
	case doneFrom(braces, rounds, in.Num("tolerance")) == "not-yet":
		return "again"
	}
	return "done"
}

// dragged returns the greatest movement, in m, of a brace that was within
// tolerance before and was not turned: its neighbors moved it. It is 0 if there is
// none.
func dragged(braces []brace, tolerance float64) (most float64) {
	for _, b := range braces {
		if !bracing.Exceeds(math.Abs(b.prev()), tolerance) {
			most = math.Max(most, math.Abs(b.last()-b.prev()))
		}
	}
	return most
}

// putBraces sets the output with a row for each brace. Rows of a wall that is held
// have no direction.
func putBraces(r *calc.Recorder, in calc.Case, braces []brace, held bool) {
	rows := make([]calc.Case, len(braces))
	for i, b := range braces {
		move := bracing.MoveOf(bracing.Reading{Off: b.last(), Within: b.way == "good"})
		row := r.NewRow("lines").
			With("name", calc.TextOf(b.name())).
			With("moved", calc.Num(bracing.MovementFormula.Value(b.prev(), b.last()))).
			With("way", calc.ChoiceOf(b.way))
		if !held {
			row = row.With("move", calc.ChoiceOf(move))
		}
		for k, off := range b.off {
			row = row.With("off-"+strconv.Itoa(k+1), calc.Num(off))
		}
		// A brace that moved the wrong way gets no direction: the side or its
		// thread may be wrong, and the same direction would repeat the error.
		if in.Has("string-side") && !held && b.way != "wrong" {
			_, turn := bracing.SeenFromBrace(move, in.Choice("string-side"))
			row = row.With("turn", calc.ChoiceOf(turn))
		}
		if b.toTurn {
			row = row.With("turns", calc.Num(b.turns))
		}
		rows[i] = row
	}
	r.PutRows("lines", rows)
}

// Notes on the braces.
const (
	noteStiff = calc.Text(
		"The concrete has stiffened. Leave every brace. Write the readings down and tell the foreman.",
	)
	askSide   = bracing.AskSide
	askRead   = calc.Text("Not every brace was read in round 3. Read them all: the wall moves together.")
	noteWrong = calc.Text(
		"Brace {name} went {moved} farther off. Check the string side and which way its thread runs before you turn " +
			"it again.",
	)
	noteDouble = calc.Text("Its error about doubled. That is the mark of a turn the wrong way.")
	askMany    = calc.Text("More braces went the wrong way than came in. Is the string on the side you think?")
	notePast   = calc.Text("Brace {name} went past the line. Check the travel of one turn, and turn less.")
	askStill   = calc.Text(
		"Brace {name} did not move. Look for slack, a loose foot or loose screws. If all is fast, two braces turn " +
			"together.",
	)
	noteDrag = calc.Text(
		"A brace that was good moved {moved}. The wall moves together: read both neighbors after each quarter turn.",
	)
	noteTwo = bracing.NoteMoreRounds
)

// noteBraces adds the notes on single braces, each at its last reading. Braces of a
// wall that is held get none.
func noteBraces(r *calc.Recorder, in calc.Case, braces []brace, rounds int, held bool) {
	if bracing.Stiff(in) {
		r.Note(calc.LevelWarning, calc.At("concrete"), noteStiff)
	}
	if held {
		return
	}
	if !in.Has("string-side") {
		r.Note(calc.LevelAsk, calc.At("string-side"), askSide)
	}
	for _, b := range braces {
		at := calc.Cell("braces", b.nr, "gap-"+strconv.Itoa(len(b.off)))
		if len(b.off) < rounds {
			r.Note(calc.LevelAsk, calc.Cell("braces", b.nr, "gap-3"), askRead)
		}
		name, moved := calc.WordSlot("name", b.name()),
			calc.Amount("moved", math.Abs(b.last()-b.prev()), &displays.Part)
		switch b.way {
		case "wrong":
			r.Note(calc.LevelCaution, at, noteWrong, name, moved)
			if q := bracing.LeftOverFormula.Value(b.prev(), b.last()); q > 1.6 && q < 2.4 {
				r.Note(calc.LevelCaution, at, noteDouble)
			}
		case "past":
			r.Note(calc.LevelNotice, at, notePast, name)
		case "still":
			r.Note(calc.LevelAsk, at, askStill, name)
		}
		if b.toTurn && b.turns > bracing.RoundTurns+calc.Slack {
			r.Note(calc.LevelCaution, at, noteTwo, name, calc.Amount("turns", b.turns, bracing.Quarters))
		}
	}
}
