// Package published reads the check values of testdata/published: values as
// printed in handbooks, standards and worked examples. They stand apart from
// the declarations, so that a slip in one cannot hide in the other.
//
// A file has comment lines (#), a header row, and rows of tab-separated
// cells: id, inputs, output, printed, unit, tol, status, source, note.
package published

import (
	"errors"
	"math"
	"slices"
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Row is one published value.
type Row struct {
	ID      string
	Inputs  []calc.Entry // as on the command line, US units
	Output  string       // output path, or formula:ID
	Printed string
	Unit    string
	Tol     float64 // absolute, in Unit
	Status  string  // one of Statuses
	Source  string
	Note    string
}

// Statuses a row may have. A misprint is a printed value that is known to be
// wrong: the calculator must not match it.
var Statuses = []string{"confirmed", "secondary", "memory", "common practice", "derived", "misprint"}

var header = []string{"id", "inputs", "output", "printed", "unit", "tol", "status", "source", "note"}

// Parse reads a file; name is for the error, which gives the line.
func Parse(name, text string) ([]Row, error) {
	var rows []Row
	seenHeader := false
	for i, line := range strings.Split(text, "\n") {
		line = strings.TrimSuffix(line, "\r")
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		cells := strings.Split(line, "\t")
		if !seenHeader {
			if !slices.Equal(cells, header) {
				return nil, at(name, i, "the header row must be "+strings.Join(header, ", "))
			}
			seenHeader = true
			continue
		}
		r, why := parseRow(cells)
		if why != "" {
			return nil, at(name, i, why)
		}
		rows = append(rows, r)
	}
	if len(rows) == 0 {
		return nil, errors.New(name + ": no rows")
	}
	return rows, nil
}

func at(name string, i int, why string) error {
	return errors.New(name + ":" + strconv.Itoa(i+1) + ": " + why)
}

func parseRow(cells []string) (Row, string) {
	for len(cells) < len(header) {
		cells = append(cells, "")
	}
	if len(cells) > len(header) {
		return Row{}, "too many cells"
	}
	r := Row{ID: cells[0], Output: cells[2], Printed: cells[3], Unit: cells[4], Status: cells[6], Source: cells[7], Note: cells[8]}
	if r.ID == "" || r.Output == "" || r.Printed == "" || r.Source == "" {
		return r, "id, output, printed and source must be given"
	}
	if !slices.Contains(Statuses, r.Status) {
		return r, "status must be one of " + strings.Join(Statuses, ", ")
	}
	if cells[5] != "" {
		tol, err := strconv.ParseFloat(cells[5], 64)
		if err != nil || tol < 0 || math.IsInf(tol, 0) {
			return r, "tol must be a number, 0 or more"
		}
		r.Tol = tol
	}
	for _, part := range strings.Split(cells[1], "; ") {
		if part = strings.TrimSpace(part); part == "" {
			continue
		}
		path, value, ok := strings.Cut(part, "=")
		if !ok {
			return r, "an input is path=text: " + part
		}
		r.Inputs = append(r.Inputs, calc.Entry{Path: strings.TrimSpace(path), Text: strings.TrimSpace(value)})
	}
	return r, ""
}

// Formula is the ID of the formula that the row checks directly; empty where
// it checks an output.
func (r Row) Formula() string {
	id, ok := strings.CutPrefix(r.Output, "formula:")
	if !ok {
		return ""
	}
	return id
}

// Compare holds a computed value, in SI, against the printed one. It returns
// the deviation in units of the tolerance (for an exact row, of 1e-9
// relative), and whether the row is satisfied: a misprint is satisfied by not
// matching.
func (r Row) Compare(si float64) (deviation float64, ok bool, err error) {
	printed, err := strconv.ParseFloat(r.Printed, 64)
	if err != nil {
		return 0, false, errors.New(r.ID + ": printed is no number: " + r.Printed)
	}
	got := si
	if r.Unit != "" && r.Unit != "-" {
		u, found := quantity.Find(r.Unit)
		if !found {
			return 0, false, errors.New(r.ID + ": unknown unit " + r.Unit)
		}
		got = u.FromSI(si)
	}
	tol := math.Max(r.Tol, 1e-9*math.Max(1, math.Abs(printed)))
	// a value that lies just on the edge of its tolerance passes despite the
	// binary noise of the subtraction
	deviation = math.Abs(got-printed) / tol
	match := deviation <= 1+1e-9
	if r.Status == "misprint" {
		return 0, !match, nil
	}
	return deviation, match, nil
}
