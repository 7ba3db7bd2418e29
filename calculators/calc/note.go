package calc

import "strconv"

// Level grades a note. Danger to Notice are the signal words of ANSI Z535.
type Level uint8

// The levels, gravest first.
const (
	LevelRefusal Level = iota // no result: the input or the method does not allow one
	LevelDanger               // will result in death or serious injury
	LevelWarning              // could result in death or serious injury
	LevelCaution              // could result in minor or moderate injury
	LevelNotice               // not related to injury
	LevelAsk                  // a question to the reader; the result is valid
)

var levelNames = [...]string{"refusal", "danger", "warning", "caution", "notice", "ask"}

// String is the level's name in lower case.
func (l Level) String() string { return levelNames[l] }

// Path points at a field, or at a cell of a Rows field.
type Path struct {
	Field string
	Row   int // from 1; 0: the field itself
	Col   string
}

// At points at a field.
func At(field string) Path { return Path{Field: field} }

// Cell points at a cell; an empty col means the whole row.
func Cell(field string, row int, col string) Path { return Path{Field: field, Row: row, Col: col} }

// String writes a path as it is typed: readings.3.gap.
func (p Path) String() string {
	s := p.Field
	if p.Row > 0 {
		s += "." + strconv.Itoa(p.Row)
		if p.Col != "" {
			s += "." + p.Col
		}
	}
	return s
}

// Note is a caution, a question or a refusal, with the path of its input or output.
type Note struct {
	Level Level
	At    Path // zero: the whole calculator
	Text  Text
	Slots []Slot
}

// byDanger are the levels, gravest first. A question comes before a notice, because its
// answer may change the result.
var byDanger = [...]Level{LevelRefusal, LevelDanger, LevelWarning, LevelCaution, LevelAsk, LevelNotice}

// ByDanger returns the notes with the gravest first; notes of one level keep their order.
func ByDanger(notes []Note) []Note {
	var sorted []Note
	for _, level := range byDanger {
		for _, n := range notes {
			if n.Level == level {
				sorted = append(sorted, n)
			}
		}
	}
	return sorted
}
