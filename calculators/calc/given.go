package calc

import (
	"slices"
	"strconv"
	"strings"
)

// Given is what a question or an example states of a case: one input, or one
// row of them.
type Given struct {
	Path, Label, Text string
	Fresh             bool // it varies from one asking to the next
	Usual             bool // it neither varies nor was set: it is what it usually is
}

// Givens are the inputs of a case that are asked for and filled in: first those
// that vary, each by itself, then those that were set and all rows, a row of
// cells as one, and last what has its usual value.
func (v Locale) Givens(c Case, vary []string, set []Entry) []Given {
	var fresh, fixed, usual []Given
	for i, f := range c.fields {
		x := c.values[i]
		switch text := v.Write(f, x); {
		case !c.asked(f) || text == "":
		case f.Kind == Rows:
			for k, row := range x.Rows {
				cells, rest := v.givenRow(f, row, k+1, vary)
				fresh = append(fresh, cells...)
				if rest.Text != "" {
					fixed = append(fixed, rest)
				}
			}
		case slices.Contains(vary, f.ID):
			fresh = append(fresh, Given{f.ID, v.Say(f.Label), text, true, false})
		case slices.ContainsFunc(set, func(e Entry) bool { return e.Path == f.ID }):
			fixed = append(fixed, Given{f.ID, v.Say(f.Label), text, false, false})
		default:
			usual = append(usual, Given{f.ID, v.Say(f.Label), text, false, true})
		}
	}
	return slices.Concat(fresh, fixed, usual)
}

// givenRow parts the cells of a row into those that vary and the rest.
func (v Locale) givenRow(f Field, row Case, nr int, vary []string) (fresh []Given, rest Given) {
	if row.row > 0 {
		nr = row.row
	}
	label := v.Say(f.Label) + " " + strconv.Itoa(nr)
	var parts []string
	for j, col := range row.fields {
		text, path := v.Write(col, row.values[j]), Cell(f.ID, nr, col.ID).String()
		switch {
		case text == "":
		case slices.Contains(vary, path):
			fresh = append(fresh, Given{path, label + ": " + v.Say(col.Label), text, true, false})
		default:
			parts = append(parts, v.Say(col.Label)+" "+text)
		}
	}
	return fresh, Given{Path: Cell(f.ID, nr, "").String(), Label: label, Text: strings.Join(parts, "; ")}
}
