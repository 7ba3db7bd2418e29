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
}

// Givens are the inputs of a case that are asked for and filled in: first those
// that vary, each by itself, then the others, a row of cells as one.
func (v Voice) Givens(c Case, vary []string) []Given {
	var fresh, fixed []Given
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
			fresh = append(fresh, Given{f.ID, v.Say(f.Label), text, true})
		default:
			fixed = append(fixed, Given{f.ID, v.Say(f.Label), text, false})
		}
	}
	return append(fresh, fixed...)
}

// givenRow parts the cells of a row into those that vary and the rest.
func (v Voice) givenRow(f Field, row Case, nr int, vary []string) (fresh []Given, rest Given) {
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
			fresh = append(fresh, Given{path, label + ": " + v.Say(col.Label), text, true})
		default:
			parts = append(parts, v.Say(col.Label)+" "+text)
		}
	}
	return fresh, Given{Path: Cell(f.ID, nr, "").String(), Label: label, Text: strings.Join(parts, "; ")}
}
