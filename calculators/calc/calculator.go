// Package calc defines the types of a calculator's declaration, reads and
// checks inputs, and runs a calculator.
//
// A calculator is declared once. The declaration feeds the form on the page,
// the module behind it, the printed table, the command line, the questions
// and the tests. The package is compiled into the WebAssembly module: no fmt, no
// reflection.
package calc

import (
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// Calculator is one declared calculator.
type Calculator struct {
	ID       string
	Title    Text
	Purpose  Text // one sentence: what it computes
	In       []Field
	Out      []Field
	Formulas []*Formula
	Sources  []Source
	Cautions []Caution // always shown
	Tables   []Table
	// Compute reads checked inputs and records outputs, notes and steps. It is
	// independent of the reader's language and units.
	Compute func(*Recorder, Case)
	// Draw draws the result; nil: the calculator has no drawing.
	Draw func(Locale, Case, Result) figure.Drawing
}

// Caution is a caution that a calculator always shows.
type Caution struct {
	Level Level
	Text  Text
}

// Status is how well a source was checked.
type Status uint8

// The statuses of a source.
const (
	Confirmed      Status = iota // read in the document itself or on its issuer's page
	Secondary                    // read where another document repeats or applies it
	Memory                       // not read; quoted from memory
	CommonPractice               // a fact of the trade with no document behind it
	OwnLimit                     // a number that this project chose, on the strict side
)

// Source is a citation.
type Source struct {
	ID      string // short, used by formulas and limits
	Author  string
	Title   string // of the work, in its own language; empty where there is no work
	Edition string
	Year    string
	Where   Text // table, equation, section or page, and what it says; or the practice or limit itself
	Status  Status
	Link    string // https address, or empty
}

// Formula is one equation: an expression to display and a Go function to
// compute. A test compares the two at random points.
type Formula struct {
	ID    string
	Title Text
	// Expr is the right-hand side in the syntax of package expression.
	Expr   string
	Result Var
	Vars   []Var // in the order Fn takes them
	// Fn computes the result from values in the variables' Units.
	Fn Function
	// Go names the function whose listing the page shows, as package.Name.
	Go     string
	Source string // ID of a source
	Limits Text   // where the equation holds; may be empty
}

// Var is a symbol of a formula.
type Var struct {
	Symbol  string // as in Expr: R, C_w, theta
	Meaning Text
	Unit    string // the unit Fn takes; "" for a pure number
	// US is the unit in which the same expression holds for a reader of US
	// units (all variables of the formula together); empty: Unit for all.
	US string
}

// Table is printed beside the form: one output over two inputs.
type Table struct {
	ID     string
	Title  Text
	Note   Text // may be empty
	Out    string
	Set    []Entry // inputs that differ from the default case
	Down   Axis
	Across Axis // an empty Path makes a one-column table
}

// Axis lists what is typed into one input, in each system of units.
type Axis struct {
	Path   string
	US     []string
	Metric []string // nil: as US
}

// Entry is one typed input: a path (field, or field.row.column with rows from
// 1) and the text. Style is the style in which a field or a cell was typed; nil: that of
// the other entries.
type Entry struct {
	Path, Text string
	Style      *quantity.Style
}

// Formula returns the formula with this ID, or nil.
func (c *Calculator) Formula(id string) *Formula {
	for _, f := range c.Formulas {
		if f.ID == id {
			return f
		}
	}
	return nil
}
