package stringline

import (
	"math"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// Notes on a set of readings.
var (
	noteTry       = bracing.NoteTry
	noteTryEighth = bracing.NoteTryEighth
	noteOrder     = calc.Text("Corners are locked before this. Begin with the braces next to the ends, then the worst.")
	askSide       = bracing.AskSide
	sideBrace     = calc.Text("For a string on the brace side: wide gap, shorten; narrow gap, lengthen.")
	sideOther     = calc.Text("For a string on the far side of the wall: wide gap, lengthen; narrow gap, shorten.")
	noteStiff     = calc.Text(
		"The concrete has stiffened. Do not turn any brace: it would crack the wall or tear the brace loose. Write " +
			"the readings down and tell the foreman.",
	)
	askEnds = calc.Text("Read the gap at both end blocks. Until then the string is not proved.")
	askEnd  = calc.Text(
		"The gap here is {gap}, the block is {block}. Set the string again before you turn a brace.",
	)
	askBlock   = calc.Text("With blocks under {least} a bulge lifts the string. Are the blocks right?")
	askTouches = calc.Text("The wall touches or lifts the string here. Use thicker blocks and read again.")
	askOneWay  = calc.Text("All readings are off the same way. Check the end blocks before you turn a brace.")
	askJump    = calc.Text("This reading is {jump} from the one before. Read it again.")
	noteRound  = bracing.NoteMoreRounds
	notePull   = calc.Text("Shortening pulls the wall. The brace must be fixed to pull, at wall and foot.")
	noteSlope  = calc.Text(
		"The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds badly. The foreman looks " +
			"before it is turned.",
	)
	notePlumb     = calc.Text("The worst is beyond the plumb limit of ACI 117-10 at this height, {limit}.")
	noteTolerance = calc.Text("This tolerance is wider than the plumb limit of ACI 117-10 at this height, {limit}.")
)

// Thresholds of common practice.
var (
	usualBlock = calc.SI(0.5, "in") // least thickness of a block
	bigJump    = calc.SI(1, "in")   // greatest change from brace to brace without a note
)

// addNotes records all notes. step is the movement of the wall at the string, in
// m, for one turn, next the ID of the output.
func addNotes(r *calc.Recorder, in calc.Case, lines []bracing.Reading, step float64, next string) {
	worst := lines[worstOf(lines)]
	switch at := calc.Cell("readings", worst.Nr, "gap"); next { // nobody reads or turns at this wall
	case nextClear:
		bracing.NoteOff(r, at, math.Abs(worst.Off))
	case nextLook:
		bracing.NoteOffEmpty(r, at, math.Abs(worst.Off))
	}
	if bracing.Stiff(in) {
		r.Note(calc.LevelWarning, calc.At("concrete"), noteStiff)
	}
	switch next {
	case nextClear, nextLook:
		return
	case nextTurn, nextEighths, nextGood:
		noteSide(r, in, lines)
		noteRounds(r, lines)
		try := noteTry
		if next == nextEighths {
			try = noteTryEighth
		}
		r.Note(calc.LevelCaution, calc.Path{}, try)
		r.Note(calc.LevelNotice, calc.Path{}, noteOrder)
	}
	noteString(r, in)
	noteReadings(r, in, lines)
	noteLimits(r, in, lines, step, next)
}

// noteSide asks for the side of the string, or repeats the answer.
func noteSide(r *calc.Recorder, in calc.Case, lines []bracing.Reading) {
	if !in.Has("string-side") {
		r.Note(calc.LevelAsk, calc.At("string-side"), askSide)
		return
	}
	side := in.Choice("string-side")
	note := sideBrace
	if side == "other" {
		note = sideOther
	}
	r.Note(calc.LevelNotice, calc.At("string-side"), note)
	for _, l := range lines {
		if _, turn := bracing.SeenFromBrace(bracing.MoveOf(l), side); l.ToTurn && turn == "shorten" {
			r.Note(calc.LevelCaution, calc.Path{}, notePull)
			return
		}
	}
}

// noteRounds notes each brace that needs more than one round.
func noteRounds(r *calc.Recorder, lines []bracing.Reading) {
	for _, l := range lines {
		if l.ToTurn && l.Turns > bracing.RoundTurns+calc.Slack {
			r.Note(calc.LevelCaution, calc.Cell("readings", l.Nr, "gap"), noteRound,
				calc.WordSlot("name", l.Name()), calc.Amount("turns", l.Turns, bracing.Quarters))
		}
	}
}

// noteString asks about the string: thin blocks, and readings at an end that are
// missing or differ from the blocks.
func noteString(r *calc.Recorder, in calc.Case) {
	block := in.Num("block")
	if block < usualBlock-bracing.TapeSlack {
		r.Note(calc.LevelAsk, calc.At("block"), askBlock, calc.Amount("least", usualBlock, &displays.Part))
	}
	unread := false
	for _, id := range []string{"first-end", "second-end"} {
		switch {
		case !in.Has(id):
			unread = true
		case !proved(in, id):
			r.Note(
				calc.LevelCaution,
				calc.At(id),
				askEnd,
				calc.Amount("gap", in.Num(id), &displays.Part),
				calc.Amount("block", block, &displays.Part),
			)
		}
	}
	if unread {
		r.Note(calc.LevelAsk, calc.At("first-end"), askEnds)
	}
}

// noteReadings asks about each reading at which the string touches or that jumps,
// and about readings that are all off the same way.
func noteReadings(r *calc.Recorder, in calc.Case, lines []bracing.Reading) {
	same := len(lines) >= 3
	for i, l := range lines {
		at := calc.Cell("readings", l.Nr, "gap")
		if in.Num("block") > 0 && l.Row.Num("gap") < bracing.TapeSlack {
			r.Note(calc.LevelAsk, at, askTouches)
		}
		if i > 0 && bracing.Exceeds(math.Abs(l.Off-lines[i-1].Off), bigJump) {
			r.Note(calc.LevelAsk, at, askJump, calc.Amount("jump", math.Abs(l.Off-lines[i-1].Off), &displays.Part))
		}
		same = same && !l.Within && (l.Off > 0) == (lines[0].Off > 0)
	}
	if same {
		r.Note(calc.LevelAsk, calc.At("readings"), askOneWay)
	}
}

// noteLimits notes a worst reading, a tolerance and a slope of the brace outside
// published limits, and a screw that is coarse for the tolerance. step is the movement of
// the wall, in m, for one turn, next the ID of the output.
func noteLimits(r *calc.Recorder, in calc.Case, lines []bracing.Reading, step float64, next string) {
	limit := bracing.PlumbLimitFormula.Value(in.Num("string-height"))
	if bracing.Exceeds(math.Abs(lines[worstOf(lines)].Off), limit) {
		r.Note(calc.LevelNotice, calc.At("readings"), notePlumb, calc.Amount("limit", limit, &displays.PartAtMost))
	}
	if bracing.Exceeds(in.Num("tolerance"), limit) {
		r.Note(calc.LevelNotice, calc.At("tolerance"), noteTolerance, calc.Amount("limit", limit, &displays.PartAtMost))
	}
	bracing.NoteCoarse(r, step, in.Num("tolerance"), next == nextCoarse)
	angle := bracing.BraceAngleFormula.Value(in.Num("foot-distance"), in.Num("attach-height"), in.Num("foot-below"))
	if bracing.BadSlope(angle) {
		slope := calc.Amount("slope", angle, &displays.WholeDegrees)
		r.Note(calc.LevelWarning, calc.At("foot-distance"), noteSlope, slope)
	}
}
