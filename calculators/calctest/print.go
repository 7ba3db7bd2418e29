package calctest

import (
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The limits of a printed page.
const (
	mostSteps    = 9 // of the worked example
	mostCautions = 3
	mostDown     = 10 // rows of a table
	mostAcross   = 6
	mostWords    = 25 // of a sentence
)

// printed checks the worked example, the cautions and the tables of a page, in
// each system of units.
func printed(t *testing.T, c *calc.Calculator) {
	t.Helper()
	if res := calc.Run(c, calc.NewCase(c.In)); len(res.Steps) > mostSteps {
		t.Errorf("%s: the worked example has %d steps, at most %d fit", c.ID, len(res.Steps), mostSteps)
	}
	if len(c.Cautions) > mostCautions {
		t.Errorf("%s: %d cautions, at most %d are read", c.ID, len(c.Cautions), mostCautions)
	}
	for _, caution := range c.Cautions {
		shortSentences(t, c.ID, caution.Text)
	}
	for _, table := range c.Tables {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			tableCells(t, c, table, sys)
		}
	}
}

// shortSentences reports an error for each sentence of a text with more than
// mostWords words.
func shortSentences(t *testing.T, what string, text calc.Text) {
	t.Helper()
	for _, sentence := range strings.Split(text.EN(), ". ") {
		if n := len(strings.Fields(sentence)); n > mostWords {
			t.Errorf("%s: a sentence of %d words, at most %d are read: %s", what, n, mostWords, text)
		}
	}
}

// tableCells reports an error if a table does not fit a page or a cell has no
// value.
func tableCells(t *testing.T, c *calc.Calculator, table calc.Table, sys quantity.System) {
	t.Helper()
	down, across := axis(table.Down, sys), []string{""}
	if table.Across.Path != "" {
		across = axis(table.Across, sys)
	}
	if len(down) > mostDown || len(across) > mostAcross {
		t.Errorf("%s: table %s has %d × %d cells, at most %d × %d fit",
			c.ID, table.ID, len(down), len(across), mostDown, mostAcross)
	}
	for _, a := range down {
		for _, b := range across {
			entries := append([]calc.Entry{}, table.Set...)
			entries = append(entries, calc.Entry{Path: table.Down.Path, Text: a})
			if b != "" {
				entries = append(entries, calc.Entry{Path: table.Across.Path, Text: b})
			}
			in, notes := calc.Read(c, entries, quantity.Style{System: sys})
			res := calc.Run(c, in)
			if len(notes) > 0 || res.State != calc.OK || !res.Out.Has(table.Out) {
				t.Errorf("%s: table %s at %s, %s: %s, no value; %v", c.ID, table.ID, a, b, res.State, notes)
			}
		}
	}
}

// axis returns the typed values of a table axis in a system of units; those of US
// units if it has no metric ones.
func axis(a calc.Axis, sys quantity.System) []string {
	if sys == quantity.Metric && a.Metric != nil {
		return a.Metric
	}
	return a.US
}
