package source

import (
	"fmt"
	"slices"
	"strings"

	"coursebook/generator/internal/fault"

	"gopkg.in/yaml.v3"
)

// BlockNames are the info strings of fenced blocks that place something.
var BlockNames = []string{"calculator", "table", "figure", "questions"}

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
	// Alt tells a blind reader what the figure shows; always there with File.
	Alt string
	// Caption stands below the figure; may be empty.
	Caption string
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// Question is one item of a questions block.
type Question struct {
	// Ask is the question.
	Ask string
	// Choices are the answers to choose from; empty for an open question.
	Choices []string
	// Right is the number of the right choice from 1; 0 for an open question.
	Right int
	// Answer is the right answer in words.
	Answer string
	// Why explains the answer; may be empty.
	Why string
	// Line is the file's line.
	Line int
}

func (b Block) reader(faults *fault.List) *reader {
	return &reader{path: b.Path, src: b.Body, line: max(1, b.Line), indent: max(0, b.Indent), faults: faults}
}

// ParseCalculator reads the body of a calculator block; false after an error.
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

// settings reads the values a calculator opens with.
func (r *reader) settings(n *yaml.Node) (set []Setting) {
	if n.Kind != yaml.MappingNode {
		r.wrongType(n, "set", "names with values", "write set: {height: 8 ft}")
		return nil
	}
	r.pairs(n, func(k, v *yaml.Node) {
		s := Setting{Name: k.Value, Line: r.line + k.Line - 1, Col: r.indent + k.Column}
		r.written(clip(k.Value), &s.Text)(v)
		set = append(set, s)
	})
	return set
}

// ParseTable reads the body of a table block; false after an error.
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

// ParseFigure reads the body of a figure block; false after an error.
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
		r.errorAt(n, "figure-source", "figure needs either a file or a calculator", "write file: name.svg, or calculator: and its id")
	case file && f.Alt == "":
		r.errorAt(n, "missing-key", "figure has no alt", "add the line alt: what a reader who cannot see it must know")
	}
	return f, !r.bad
}

// ParseQuestions reads the body of a questions block; false after an error.
func ParseQuestions(b Block, faults *fault.List) ([]Question, bool) {
	var all []Question
	r := b.reader(faults)
	n := r.document()
	switch {
	case r.bad:
	case n == nil || n.Kind == yaml.SequenceNode && len(n.Content) == 0:
		r.errorAt(n, "empty", "questions block is empty", "write - ask: … and answer: …")
	default:
		r.items(n, "questions block", func(item *yaml.Node) { all = append(all, r.question(item)) })
	}
	return all, !r.bad
}

// question reads one item of a questions block.
func (r *reader) question(n *yaml.Node) Question {
	q := Question{Line: r.line + n.Line - 1}
	var answer *yaml.Node
	lines := r.mapping(n, "question", []key{
		{"ask", true, r.text("ask", &q.Ask)},
		{"choices", false, func(n *yaml.Node) { q.Choices = r.choices(n) }},
		{"answer", true, func(n *yaml.Node) { answer = n }},
		{"why", false, r.text("why", &q.Why)},
	})
	switch {
	case answer == nil:
	case lines["choices"] == 0:
		r.written("answer", &q.Answer)(answer)
	case len(q.Choices) > 0:
		r.whole("answer", 1, len(q.Choices), &q.Right)(answer)
		if q.Right > 0 {
			q.Answer = q.Choices[q.Right-1]
		}
	}
	return q
}

// choices reads at least two different answers.
func (r *reader) choices(n *yaml.Node) (choices []string) {
	ok := true
	r.items(n, "choices", func(item *yaml.Node) {
		var s string
		r.written("each of choices", &s)(item)
		if s != "" && slices.ContainsFunc(choices, func(c string) bool { return strings.EqualFold(c, s) }) {
			r.errorAt(item, "repeated", fmt.Sprintf("choice %q stands twice", clip(s)), "remove one")
		}
		ok = ok && s != ""
		choices = append(choices, s)
	})
	if n.Kind == yaml.SequenceNode && len(choices) < 2 {
		r.errorAt(n, "too-few", "a question needs at least two choices", "add a choice, or remove choices and write the answer in words")
	}
	if !ok {
		return nil
	}
	return choices
}
