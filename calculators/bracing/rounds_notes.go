package bracing

import (
	"math"
	"strconv"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
)

// What the calculator says about a wall on its way.
const (
	roundStiff  = calc.Text("The concrete has stiffened. Leave every brace. Write the readings down and tell the foreman.")
	roundSide   = calc.Text("Which side is the string on? Lengthen or shorten is told once you answer.")
	roundRead   = calc.Text("Not every brace was read in round 3. Read them all: the wall moves together.")
	roundWrong  = calc.Text("Brace {name} went {moved} farther off. Check the string side and which way its thread runs before you turn it again.")
	roundDouble = calc.Text("Its error about doubled. That is the mark of a turn the wrong way.")
	roundMany   = calc.Text("More braces went the wrong way than came in. Is the string on the side you think?")
	roundPast   = calc.Text("Brace {name} went past the line. Check the travel of one turn, and turn less.")
	roundStill  = calc.Text("Brace {name} did not move. Look for play, a loose foot or a brace that is not fixed to the wall.")
	roundDrag   = calc.Text("A brace that was good moved {moved}. The wall moves together: read the neighbours after each brace.")
	roundTwo    = calc.Text("Brace {name} needs {turns} turns. Turn two, read all again, then go on.")
)

// notePosts speaks of single braces, each at its last reading.
func notePosts(r *calc.Recorder, in calc.Case, posts []post, rounds int) {
	if stiff(in) {
		r.Note(calc.LevelWarning, calc.At("concrete"), roundStiff)
	} else if !in.Has("string-side") {
		r.Note(calc.LevelAsk, calc.At("string-side"), roundSide)
	}
	for _, p := range posts {
		at := calc.Cell("braces", p.nr, "gap-"+strconv.Itoa(len(p.off)))
		if len(p.off) < rounds {
			r.Note(calc.LevelAsk, calc.Cell("braces", p.nr, "gap-3"), roundRead)
		}
		name, moved := calc.Word("name", p.name()), calc.Amount("moved", math.Abs(p.last()-p.prev()), &displays.Part)
		switch p.way {
		case "wrong":
			r.Note(calc.LevelCaution, at, roundWrong, name, moved)
			if q := leftOver.Value(p.prev(), p.last()); q > 1.6 && q < 2.4 {
				r.Note(calc.LevelCaution, at, roundDouble)
			}
		case "past":
			r.Note(calc.LevelNotice, at, roundPast, name)
		case "still":
			r.Note(calc.LevelAsk, at, roundStill, name)
		}
		if p.toTurn && p.turns > roundTurns+calc.Slack {
			r.Note(calc.LevelCaution, at, roundTwo, name, calc.Amount("turns", p.turns, quarters))
		}
	}
}
