package bracing

import (
	"strconv"

	"coursebook/calculators/calc"
)

// Reading is one reading of the string line with its results.
type Reading struct {
	Row    calc.Case
	Nr     int     // number of the row as entered, from 1
	Off    float64 // m; above 0 the wall is too far from the string
	Within bool    // within the tolerance
	End    bool    // nearest to an end of the string
	Turns  float64
	ToTurn bool
	Order  int // order of work from 1; 0 for a brace that is not turned
}

// Stiff reports whether the concrete has stiffened.
func Stiff(in calc.Case) bool { return in.Choice("concrete") == "stiff" }

// Name returns the name of the brace, or the number of its row if it has none.
func (l Reading) Name() string {
	if name := l.Row.Text("name"); name != "" {
		return name
	}
	return strconv.Itoa(l.Nr)
}

// MoveOf returns the direction in which the wall must move, seen from the string,
// as an ID of MoveOptions: stay within the tolerance, toward if it is too far from
// the string, otherwise away.
func MoveOf(l Reading) string {
	switch {
	case l.Within:
		return "stay"
	case l.Off > 0:
		return "toward"
	}
	return "away"
}

// SeenFromBrace converts a movement seen from the string (stay, toward, away) into
// the movement seen from the brace and the turning: leave, shorten or lengthen.
// side is where the string is: brace, or any other for the far side. With the
// string on the brace side the two movements agree; otherwise they are opposite. A
// shorter brace pulls the wall toward itself.
func SeenFromBrace(move, side string) (seen, turn string) {
	if move == "stay" {
		return "stay", "leave"
	}
	if (move == "toward") == (side == "brace") {
		return "toward", "shorten"
	}
	return "away", "lengthen"
}
