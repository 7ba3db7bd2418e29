package proof

import (
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
)

// Job reads typed inputs of a reader of US units, path and text in turn, over
// the default case, and runs them. A refused input ends the test.
func Job(t *testing.T, c *calc.Calculator, typed ...string) (calc.Case, calc.Result) {
	t.Helper()
	var entries []calc.Entry
	for i := 0; i < len(typed); i += 2 {
		entries = append(entries, calc.Entry{Path: typed[i], Text: typed[i+1]})
	}
	in, notes := calc.Read(c, entries, us)
	for _, n := range notes {
		t.Fatalf("%s %v: %s: %s", c.ID, typed, n.At, calc.Locale{}.Say(n.Text, n.Slots...))
	}
	return in, calc.Run(c, in)
}

// Run is Job for who needs the result only.
func Run(t *testing.T, c *calc.Calculator, typed ...string) calc.Result {
	t.Helper()
	_, res := Job(t, c, typed...)
	return res
}

// Command runs a calculator on inputs as written on the command line,
// path=text each. Where an input is refused the state is Bad and the notes
// say why.
func Command(c *calc.Calculator, inputs ...string) (calc.Case, calc.Result) {
	var entries []calc.Entry
	for _, s := range inputs {
		path, text, _ := strings.Cut(s, "=")
		entries = append(entries, calc.Entry{Path: path, Text: text})
	}
	in, notes := calc.Read(c, entries, us)
	if len(notes) > 0 {
		return in, calc.Result{State: calc.Bad, Notes: notes}
	}
	return in, calc.Run(c, in)
}

// Noted tells whether a result carries a note.
func Noted(res calc.Result, text calc.Text) bool {
	return slices.ContainsFunc(res.Notes, func(n calc.Note) bool { return n.Text == text })
}

// NoteOf finds a result's note by its key.
func NoteOf(res calc.Result, key string) (calc.Note, bool) {
	i := slices.IndexFunc(res.Notes, func(n calc.Note) bool { return n.Text.Key() == key })
	if i < 0 {
		return calc.Note{}, false
	}
	return res.Notes[i], true
}
