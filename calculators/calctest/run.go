package calctest

import (
	"math"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
)

// Run runs a calculator on inputs in US units. Each input is "name=value", as on
// the command line; the others have their usual values, those of the manual's house
// rules included. An input that cannot be
// read fails the test; a refusal by the calculator does not.
func Run(t testing.TB, c *calc.Calculator, inputs ...string) calc.Result {
	t.Helper()
	_, res := RunCase(t, c, inputs...)
	return res
}

// RunCase is Run and also returns the inputs as read.
func RunCase(t testing.TB, c *calc.Calculator, inputs ...string) (calc.Case, calc.Result) {
	t.Helper()
	in, res := try(c, inputs)
	if res.State == calc.Bad {
		for _, n := range res.Notes {
			t.Errorf("%s %q: %s: %s", c.ID, inputs, n.At, calc.Locale{Style: us}.Say(n.Text, n.Slots...))
		}
		t.FailNow()
	}
	return in, res
}

// Try is Run for tests of refused inputs: if an input cannot be read, the result
// has the state Bad and its notes have the reasons.
func Try(c *calc.Calculator, inputs ...string) calc.Result {
	_, res := try(c, inputs)
	return res
}

// try runs a calculator on inputs "name=value". If one is refused, the result has
// the state Bad and the refusals.
func try(c *calc.Calculator, inputs []string) (calc.Case, calc.Result) {
	entries := make([]calc.Entry, len(inputs))
	for i, input := range inputs {
		name, value, _ := strings.Cut(input, "=")
		entries[i] = calc.Entry{Path: name, Text: value}
	}
	c = WithRules(c)
	in, notes := calc.Read(c, entries, us)
	if len(notes) > 0 {
		return in, calc.Result{State: calc.Bad, Notes: notes}
	}
	return in, calc.Run(c, in)
}

// Inputs splits "name=value; name=value" at each semicolon before a name. The
// semicolons between the rows of a value do not split it.
func Inputs(text string) []string {
	var list []string
	for _, part := range strings.Split(text, "; ") {
		if len(list) > 0 && !strings.Contains(part, "=") {
			list[len(list)-1] += "; " + part
			continue
		}
		if part != "" {
			list = append(list, part)
		}
	}
	return list
}

// Noted reports whether a result has a note with this text.
func Noted(res calc.Result, text calc.Text) bool {
	return slices.ContainsFunc(res.Notes, func(n calc.Note) bool { return n.Text == text })
}

// NoteOf returns the first note of a result with this text, and false if there is
// none.
func NoteOf(res calc.Result, text calc.Text) (calc.Note, bool) {
	i := slices.IndexFunc(res.Notes, func(n calc.Note) bool { return n.Text == text })
	if i < 0 {
		return calc.Note{}, false
	}
	return res.Notes[i], true
}

// Near reports an error if got differs from want by more than tol, in their unit,
// or is NaN.
func Near(t testing.TB, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %v, want %v ± %v", what, got, want, tol)
	}
}

// NearBy is Near with a tolerance relative to want.
func NearBy(t testing.TB, what string, got, want, relative float64) {
	t.Helper()
	Near(t, what, got, want, relative*math.Max(math.Abs(want), 1e-12))
}

// Equal reports whether two numbers differ by no more than 1e-9 of the larger.
func Equal(a, b float64) bool {
	return math.Abs(a-b) <= 1e-9*math.Max(math.Abs(a), math.Abs(b))
}
