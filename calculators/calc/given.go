package calc

import (
	"slices"
	"strconv"
	"strings"
)

// Given is one input of a case, or one row of inputs, as a question or an
// example states it.
type Given struct {
	Path, Label, Text string
	Varies            bool // differs each time the question is asked
	Usual             bool // uses the default value
}

// Givens returns the inputs of a case that are asked for and not empty, in three
// groups: those whose path is in vary, one by one; then those in set and all rows,
// one entry a row; last those with their default value.
func (v Locale) Givens(c Case, vary []string, set []Entry) []Given {
	var varying, fixed, usual []Given
	for i, f := range c.fields {
		x := c.values[i]
		switch text := v.Write(f, x); {
		case !c.asked(f) || text == "":
		case f.Kind == Rows:
			for k, row := range x.Rows {
				cells, rest := v.givenRow(f, row, k+1, vary)
				varying = append(varying, cells...)
				if rest.Text != "" {
					fixed = append(fixed, rest)
				}
			}
		case slices.Contains(vary, f.ID):
			varying = append(varying, Given{f.ID, v.Say(f.Label), text, true, false})
		case slices.ContainsFunc(set, func(e Entry) bool { return e.Path == f.ID }):
			fixed = append(fixed, Given{f.ID, v.Say(f.Label), text, false, false})
		default:
			usual = append(usual, Given{f.ID, v.Say(f.Label), text, false, true})
		}
	}
	return slices.Concat(varying, fixed, usual)
}

// givenRow separates the cells of a row of the field f whose path is in vary from
// the rest, which is one entry; its Text is "" if no cell is left. nr is the row's
// number from 1 if the row has none of its own. Empty cells are left out.
func (v Locale) givenRow(f Field, row Case, nr int, vary []string) (varying []Given, rest Given) {
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
			varying = append(varying, Given{path, label + ": " + v.Say(col.Label), text, true, false})
		default:
			parts = append(parts, v.Say(col.Label)+" "+text)
		}
	}
	return varying, Given{Path: Cell(f.ID, nr, "").String(), Label: label, Text: strings.Join(parts, "; ")}
}
