package calctest

import (
	"errors"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The published values of a calculator are the numbers of handbooks, standards
// and worked examples, as printed. They are in testdata/published/ID.tsv, separate
// from the declaration, so that an error is not in both. A file has
// comment lines (#), a header row, and rows of tab-separated cells; the table
// in DEVELOPERS.md describes the columns.

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
	// Declared is the ID of the calculator's source that the row was read in, or "".
	Declared string
}

// Statuses a row may have. A misprint is a printed value that is known to be wrong, and
// another rule a value of another edition or of a looser rule: the calculator must not
// match either.
var Statuses = []string{"confirmed", "secondary", "memory", "common practice", "our own limit", "derived",
	misprint, otherRule}

const (
	misprint  = "misprint"
	otherRule = "another rule"
)

// Differs reports whether the calculator must not match the row.
func (r Row) Differs() bool { return r.Status == misprint || r.Status == otherRule }

var header = []string{"id", "inputs", "output", "printed", "unit", "tol", "status", "source", "note", "declared"}

// PublishedDir returns the folder of the published values, below the nearest
// folder with a go.mod from the folder of the running test upwards. It returns an
// error if there is none.
func PublishedDir() (string, error) {
	root, err := projectRoot()
	return filepath.Join(root, "testdata", "published"), err
}

// projectRoot is the nearest folder with a go.mod, from the folder of the running test
// upwards. A test without one around it gets an error.
func projectRoot() (string, error) {
	dir, err := os.Getwd()
	if err != nil {
		return "", err
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return dir, nil
		}
		parent := filepath.Dir(dir)
		if parent == dir {
			return "", errors.New("no folder above the test has a go.mod")
		}
		dir = parent
	}
}

// Published reads the published values of a calculator. The error of a missing
// file has the path to create.
func Published(c *calc.Calculator) ([]Row, error) {
	dir, err := PublishedDir()
	if err != nil {
		return nil, err
	}
	name := c.ID + ".tsv"
	data, err := os.ReadFile(filepath.Join(dir, name))
	if errors.Is(err, fs.ErrNotExist) {
		return nil, errors.New(c.ID + " has no published values: create testdata/published/" + name +
			"; DEVELOPERS.md describes its columns")
	}
	if err != nil {
		return nil, err
	}
	return ParsePublished("testdata/published/"+name, string(data))
}

// ParsePublished reads the text of a file of published values. Empty lines and
// lines that begin with # are skipped. Another header row, a bad row and a file
// without rows are errors, which start with name and line.
func ParsePublished(name, text string) ([]Row, error) {
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

// at returns an error at the line with index i, from 0.
func at(name string, i int, why string) error {
	return errors.New(name + ":" + strconv.Itoa(i+1) + ": " + why)
}

// parseRow reads the cells of a row; missing ones at the end are empty. The text
// is the reason if the row is bad, otherwise "".
func parseRow(cells []string) (Row, string) {
	for len(cells) < len(header) {
		cells = append(cells, "")
	}
	if len(cells) > len(header) {
		return Row{}, "too many cells"
	}
	r := Row{ID: cells[0], Output: cells[2], Printed: cells[3], Unit: cells[4], Status: cells[6], Source: cells[7],
		Note: cells[8], Declared: cells[9]}
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
	for _, part := range Inputs(cells[1]) {
		path, value, ok := strings.Cut(part, "=")
		if !ok {
			return r, "an input is name=value: " + part
		}
		r.Inputs = append(r.Inputs, calc.Entry{Path: strings.TrimSpace(path), Text: strings.TrimSpace(value)})
	}
	return r, ""
}

// Formula returns the ID of the formula that the row checks directly; "" if it
// checks an output.
func (r Row) Formula() string {
	id, ok := strings.CutPrefix(r.Output, "formula:")
	if !ok {
		return ""
	}
	return id
}

// Compare compares a computed value of the field f, in SI, with the printed one.
// It returns the deviation in units of the tolerance; the tolerance is at least
// 1e-9, relative above 1. It returns an error for a deviation above 1, and for a
// printed value or unit that cannot be read. A misprint has deviation 0, and an
// error if the value matches.
func (r Row) Compare(f calc.Field, si float64) (deviation float64, err error) {
	printed, err := strconv.ParseFloat(r.Printed, 64)
	if err != nil {
		return 0, errors.New(r.ID + ": printed is not a number: " + r.Printed)
	}
	got := si
	if r.Unit != "" && r.Unit != "-" {
		u, found := quantity.Find(r.Unit)
		if !found {
			return 0, errors.New(r.ID + ": unknown unit " + r.Unit)
		}
		got = u.FromSI(si)
	}
	tol := math.Max(r.Tol, 1e-9*math.Max(1, math.Abs(printed)))
	deviation = math.Abs(got-printed) / tol
	// The slack allows for the rounding of the subtraction.
	match := deviation <= 1+1e-9
	if r.Differs() {
		if match {
			return 0, r.mismatch(f, got, si, "matches the misprint")
		}
		return 0, nil
	}
	if !match {
		return deviation, r.mismatch(f, got, si, "is not the published")
	}
	return deviation, nil
}

// mismatch returns an error with the computed value in the unit of the row, as the
// calculator displays it, and in SI; verb is what it is to the printed value.
func (r Row) mismatch(f calc.Field, got, si float64, verb string) error {
	unit := ""
	if r.Unit != "" && r.Unit != "-" {
		unit = " " + r.Unit
	}
	number := func(x float64) string { return strconv.FormatFloat(x, 'g', 8, 64) }
	also := number(si) + " SI"
	if f.Display != nil {
		also = "displayed as " + calc.Locale{Style: us}.Write(f, calc.Num(si)) + ", " + also
	}
	return errors.New(r.ID + ": " + r.Output + " " + number(got) + unit + " (" + also + ") " + verb + " " +
		r.Printed + unit + " ± " + number(r.Tol) + " (" + r.Status + ": " + r.Source + ")")
}
