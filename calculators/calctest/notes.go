package calctest

import (
	"slices"
	"testing"

	"coursebook/calculators/calc"
)

// NoteCase states whether a calculator gives a note for some inputs.
type NoteCase struct {
	Inputs string // as Inputs splits them: "a=1; b=2"
	Note   calc.Text
	At     string // path of the field it points at; empty: any
	Want   bool
}

// CheckNotes runs a calculator for each case and reports an error if the note is
// not present or absent as the case wants.
func CheckNotes(t *testing.T, c *calc.Calculator, cases []NoteCase) {
	t.Helper()
	for _, k := range cases {
		n, got := NoteOf(Try(c, Inputs(k.Inputs)...), k.Note)
		if got != k.Want || (got && k.At != "" && n.At.String() != k.At) {
			t.Errorf("%s %s: note %q is %v at %s, want %v at %s",
				c.ID, k.Inputs, k.Note, got, n.At.String(), k.Want, k.At)
		}
	}
}

// NotesCase lists the notes that a calculator gives for some inputs.
type NotesCase struct {
	Inputs []string
	Want   []calc.Text
}

// CheckNotesAmong runs a calculator for each case and reports an error for each
// note of all that is present and not wanted, or wanted and not present.
func CheckNotesAmong(t *testing.T, c *calc.Calculator, all []calc.Text, cases []NotesCase) {
	t.Helper()
	for _, k := range cases {
		res := Run(t, c, k.Inputs...)
		for _, note := range all {
			if Noted(res, note) != slices.Contains(k.Want, note) {
				t.Errorf("%s %v (%s): note %q", c.ID, k.Inputs, res.State, note)
			}
		}
	}
}

// RunNotes runs a calculator and returns its result. It reports an error unless
// the notes are exactly want, in this order.
func RunNotes(t *testing.T, c *calc.Calculator, want []calc.Text, inputs ...string) calc.Result {
	t.Helper()
	res := Run(t, c, inputs...)
	var got []calc.Text
	for _, n := range res.Notes {
		got = append(got, n.Text)
	}
	if !slices.Equal(got, want) {
		t.Errorf("%s %q: notes %q, want %q", c.ID, inputs, got, want)
	}
	return res
}

// Refused reports an error unless the calculator refuses the inputs, with its last
// note at the path at.
func Refused(t *testing.T, c *calc.Calculator, at string, inputs ...string) {
	t.Helper()
	res := Run(t, c, inputs...)
	if res.State != calc.Refused || res.Notes[len(res.Notes)-1].At.String() != at {
		t.Errorf("%s %q: %s %v, want a refusal at %s", c.ID, inputs, res.State, res.Notes, at)
	}
}
