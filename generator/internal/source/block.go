package source

import (
	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// BlockNames are the info strings of fenced blocks that place something.
var BlockNames = []string{"calculator", "table", "figure", "questions", "example", "rules"}

// Block is the body of a fenced block in a page.
type Block struct {
	// Path is the page's file.
	Path string
	// Line is the file's line on which Body begins.
	Line int
	// Indent is the number of columns that Body was moved to the left, for a
	// block inside a list; 0 otherwise.
	Indent int
	// Body is the YAML between the fences.
	Body []byte
}

// CalculatorPlace is the body of a calculator block.
type CalculatorPlace struct {
	// ID names the calculator.
	ID string
	// Set are the values it opens with, in the order written.
	Set []Setting
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// Setting is one value as it would be written on the command line.
type Setting struct {
	// Name is the field's, Text its value as written.
	Name, Text string
	// Line and Col locate the name in the file.
	Line, Col int
}

// TablePlace is the body of a table block.
type TablePlace struct {
	// Calculator names the calculator, Table its table.
	Calculator, Table string
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// FigurePlace is the body of a figure block; exactly one of File and
// Calculator is given.
type FigurePlace struct {
	// File is a name in the folder pictures; Calculator names the calculator
	// whose drawing of its first case is shown.
	File, Calculator string
	// Alt describes the figure for readers who cannot see it; never empty with File.
	Alt string
	// Caption is shown below the figure; may be empty.
	Caption string
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// reader returns a reader of the block's body that locates its faults in the
// page's file and adds them to faults.
func (b Block) reader(faults *fault.List) *reader {
	return &reader{path: b.Path, src: b.Body, line: max(1, b.Line), indent: max(0, b.Indent), faults: faults}
}

// ParseCalculator parses the body of a calculator block. It adds its errors to
// faults and returns false if there is one; the place then holds what could be
// read.
func ParseCalculator(b Block, faults *fault.List) (CalculatorPlace, bool) {
	var c CalculatorPlace
	r := b.reader(faults)
	if n := r.document(); !r.bad {
		c.Lines = r.mapping(n, "calculator block", []key{
			{"id", true, r.id("id", &c.ID)},
			{"set", false, func(n *yaml.Node) { c.Set = r.settings(n) }},
		})
	}
	return c, !r.bad
}

// settings reads a mapping of input names to values, in the order written. An
// empty text in quotes is the text "", which empties an input. A value that is not
// single is an error and is "". It adds a fault and returns nil if n is no
// mapping.
func (r *reader) settings(n *yaml.Node) (set []Setting) {
	if n.Kind != yaml.MappingNode {
		r.wrongType(n, "set", "names with values", "write set: {height: 8 ft}")
		return nil
	}
	r.pairs(n, func(k, v *yaml.Node) {
		s := Setting{Name: k.Value, Line: r.line + k.Line - 1, Col: r.indent + k.Column}
		if !isBlank(v) { // an empty text empties an input
			r.written(clip(k.Value), &s.Text)(v)
		}
		set = append(set, s)
	})
	return set
}

// isBlank reports whether a value is the empty text in quotes.
func isBlank(n *yaml.Node) bool {
	return n.Kind == yaml.ScalarNode && n.Value == "" && n.ShortTag() == "!!str"
}

// ParseTable parses the body of a table block into which table the page shows. It
// adds its errors to faults and returns false if there is one; the place then
// holds what could be read.
func ParseTable(b Block, faults *fault.List) (TablePlace, bool) {
	var t TablePlace
	r := b.reader(faults)
	if n := r.document(); !r.bad {
		t.Lines = r.mapping(n, "table block", []key{
			{"calculator", true, r.id("calculator", &t.Calculator)},
			{"table", true, r.id("table", &t.Table)},
		})
	}
	return t, !r.bad
}

// ParseRules parses the body of a rules block, which must be empty. It adds an error to
// faults and returns false if it is not.
func ParseRules(b Block, faults *fault.List) bool {
	r := b.reader(faults)
	if n := r.document(); n != nil {
		r.errorAt(n, "rules-extra", "a rules block has no settings", "leave it empty: it lists all house rules")
	}
	return !r.bad
}

// ParseFigure parses the body of a figure block. It adds its errors to faults and
// returns false if there is one, such as both or neither of file and calculator,
// or a file without alt.
func ParseFigure(b Block, faults *fault.List) (FigurePlace, bool) {
	var f FigurePlace
	r := b.reader(faults)
	n := r.document()
	if r.bad {
		return f, false
	}
	f.Lines = r.mapping(n, "figure block", []key{
		{"file", false, r.file("file", "pictures", "", &f.File)},
		{"calculator", false, r.id("calculator", &f.Calculator)},
		{"alt", false, r.text("alt", &f.Alt)},
		{"caption", false, r.text("caption", &f.Caption)},
	})
	file, calculator := f.Lines["file"] > 0, f.Lines["calculator"] > 0
	switch {
	case r.bad:
	case file == calculator:
		r.errorAt(n, "figure-source", "figure needs either a file or a calculator",
			"write file: name.svg, or calculator: and its id")
	case file && f.Alt == "":
		r.errorAt(n, "missing-key", "figure has no alt", "add the line alt: what a reader who cannot see it must know")
	}
	return f, !r.bad
}
