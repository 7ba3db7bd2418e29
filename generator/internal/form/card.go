package form

import (
	"slices"

	"coursebook/calculators/calc"
)

// dependsOnMaker reports whether an input that applies in the case is set and is
// one whose value only a maker gives.
func dependsOnMaker(in calc.Case) bool {
	for i, f := range in.Fields() {
		if f.Maker && in.Asked(f.ID) && in.At(i).Set {
			return true
		}
	}
	return false
}

// Answer returns the first main result of the example, for a closed card. It
// returns false if the example is refused, has no main result, or depends on a
// number that only a maker gives.
func (f *Form) Answer() (Output, bool) {
	if f.Refused || f.Maker {
		return Output{}, false
	}
	for _, out := range f.Outputs {
		if out.Lead && out.Shown.US != "" {
			return out, true
		}
	}
	return Output{}, false
}

// Entries returns the inputs of the fields with these ids, as typed in US units,
// in the order of the form. A list gives one entry for each cell of each row; a
// list without rows gives one entry with an empty text. Unknown ids are ignored.
func (f *Form) Entries(ids []string) []calc.Entry {
	var list []calc.Entry
	for _, field := range f.Fields {
		if !slices.Contains(ids, field.Path) {
			continue
		}
		if field.Type != typeNames[calc.Rows] {
			list = append(list, calc.Entry{Path: field.Path, Text: field.Text.US})
			continue
		}
		if len(field.Rows) == 0 {
			list = append(list, calc.Entry{Path: field.Path})
		}
		for _, row := range field.Rows {
			for _, cell := range row {
				list = append(list, calc.Entry{Path: cell.Path, Text: cell.Text.US})
			}
		}
	}
	return list
}
