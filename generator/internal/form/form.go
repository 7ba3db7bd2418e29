// Package form converts a calculator's declaration to the data of its pages: the form
// with the inputs and the result of an example, printed tables, worked steps, formulas
// and sources. Every number and label is from the declaration.
package form

import (
	"slices"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

// Both is a text in the two systems of units. A page shows the system that the reader
// chose; without a choice, and in print, both.
type Both struct{ US, Metric string }

// Same reports whether both texts are equal.
func (b Both) Same() bool { return b.US == b.Metric }

// Form is the data of one calculator for its pages.
type Form struct {
	ID, Title, Purpose string
	Fields             []Field
	Outputs            []Output
	Lists              []List // outputs that are rows
	Headline           Both   // the deed in one line; empty if the leading outputs say enough
	Notes              []Note // on the example, the gravest first
	Cautions           []Note
	Figure             string // SVG; empty without one
	Refused            bool   // the example has no result
	// Maker reports that the example depends on a number that only a maker gives.
	Maker    bool
	Tables   []Table
	Steps    []calc.Worked
	Formulas []Formula
	Sources  []Source
}

// Field is one input.
type Field struct {
	Path, Label, Help string
	Type              string // number, choice, flag, day, words, rows
	Text              Both   // as typed, in the example
	answer            string // of a flag that is set: yes or no, in the language of the page
	Unit              Both   // of a number without a unit
	Range             Both   // "1 ft to 30 ft"; empty without limits
	Optional          bool
	Asked             bool // visible in the example
	Decides           int  // place among the inputs that decide; 0: folded where others decide
	Example           bool // the text is invented
	Measure           string
	Options           []Option
	Cols              []Field   // of rows: the columns, with the text of a new cell
	Rows              [][]Field // of rows: those of the example
	MinRows, MaxRows  int
}

// Option is one option of a choice.
type Option struct {
	ID, Label string
	Chosen    bool
}

// Output is one result.
type Output struct {
	Path, Label string
	Shown       Both
	Exact       Both   // unrounded; empty if it equals Shown
	Lead        bool   // a main result
	Advice      string // of a main result: good, careful, stop or empty
}

// List is a result of rows.
type List struct {
	Path, Label string
	Heads       []string // labels of the columns
	Cols        []string // ids of the columns
	Numbers     []bool   // whether a column has numbers
	Rows        [][]Both
}

// Note is a note on a case: a caution, a refusal or a request for an input.
type Note struct {
	Level, At string // At is the path of an input; may be empty
	Text      Both
}

// Source is one citation.
type Source struct {
	ID string
	// Work is author, title, edition and year, in the language of the work.
	Work string
	// Where is the place in it and what it says, or the practice or limit itself.
	Where, Status, Link string
}

// New returns the form of a calculator with typed inputs, in US units; without
// any, with those of the example. words are the translations, nil for English;
// mark is the decimal mark. If an input is refused, New returns nil and the
// refusals. If the calculator refuses the case, the form has Refused set and the
// refusal among its notes.
func New(c *calc.Calculator, words calc.Translations, mark quantity.Mark, typed []calc.Entry) (*Form, []calc.Note) {
	w := newWriter(words, mark)
	us, metric := w.us, w.metric
	in, refusals := calc.Read(c, typed, us.Style)
	if len(refusals) > 0 {
		return nil, refusals
	}
	res := calc.Run(c, in)
	f := &Form{
		ID: c.ID, Title: us.Say(c.Title), Purpose: us.Say(c.Purpose),
		Fields:  w.fields("", in),
		Notes:   w.notes(calc.ByDanger(res.Notes)),
		Refused: res.State != calc.OK,
		Maker:   dependsOnMaker(in),
		Sources: sources(us, c.Sources),
	}
	if h := res.Headline; h.Text != "" {
		f.Headline = Both{us.Say(h.Text, h.Slots...), metric.Say(h.Text, h.Slots...)}
	}
	f.Outputs, f.Lists = w.outputs(res.Out)
	for _, n := range c.Cautions {
		f.Cautions = append(f.Cautions, Note{Level: n.Level.String(), Text: Both{us.Say(n.Text), metric.Say(n.Text)}})
	}
	if c.Draw != nil && !f.Refused {
		f.Figure = figure.SVG(c.Draw(us, in, res))
	}
	for _, s := range res.Steps {
		f.Steps = append(f.Steps, us.Work(s))
	}
	for _, fm := range c.Formulas {
		f.Formulas = append(f.Formulas, newFormula(us, fm))
	}
	for _, t := range c.Tables {
		f.Tables = append(f.Tables, w.table(c, t))
	}
	return f, nil
}

// writer writes values in both systems of units.
type writer struct{ us, metric calc.Locale }

// both returns a value for display in both systems of units.
func (w writer) both(f calc.Field, x calc.Value) Both {
	return Both{w.us.Write(f, x), w.metric.Write(f, x)}
}

// First returns the inputs that decide, in their order; all inputs if none decides.
func (f *Form) First() []Field {
	list := slices.DeleteFunc(slices.Clone(f.Fields), func(field Field) bool { return field.Decides == 0 })
	if len(list) == 0 {
		return f.Fields
	}
	slices.SortStableFunc(list, func(a, b Field) int { return a.Decides - b.Decides })
	return list
}

// Rest returns the inputs that do not decide, in declared order; nil if none decides.
func (f *Form) Rest() []Field {
	list := slices.DeleteFunc(slices.Clone(f.Fields), func(field Field) bool { return field.Decides > 0 })
	if len(list) == len(f.Fields) {
		return nil
	}
	return list
}

// Assumed returns the inputs of Rest that apply in the example and have a value, other
// than rows.
func (f *Form) Assumed() []Field {
	return slices.DeleteFunc(f.Rest(), func(field Field) bool {
		return !field.Asked || field.Text.US == "" || field.Type == typeNames[calc.Rows]
	})
}

// Shown is the value of an input as a sentence states it: the label of an option, and
// yes or no in the language of the page.
func (f Field) Shown() Both {
	if f.answer != "" {
		return Both{f.answer, f.answer}
	}
	for _, o := range f.Options {
		if o.Chosen {
			return Both{o.Label, o.Label}
		}
	}
	return f.Text
}

// fields returns the inputs of a case, or of a row, with prefix before each path,
// and whether each applies.
func (w writer) fields(prefix string, c calc.Case) []Field {
	var list []Field
	for i, f := range c.Fields() {
		field := w.field(prefix, f, c.At(i))
		field.Asked = c.Asked(f.ID)
		for k, row := range c.At(i).Rows {
			field.Rows = append(field.Rows, w.fields(calc.Cell(f.ID, k+1, "").String()+".", row))
		}
		list = append(list, field)
	}
	return list
}

var typeNames = map[calc.Kind]string{
	calc.Number: "number", calc.Choice: "choice", calc.Flag: "flag",
	calc.Day: "day", calc.Clock: "clock", calc.FreeText: "words", calc.Rows: "rows",
}

// field returns one input with the value x, with prefix before its path. Columns
// have their default values.
func (w writer) field(prefix string, f calc.Field, x calc.Value) Field {
	field := Field{
		Path: prefix + f.ID, Label: w.us.Say(f.Label), Type: typeNames[f.Kind], Optional: f.Optional,
		Text:    Both{w.us.InputText(f, x), w.metric.InputText(f, x)},
		MinRows: f.MinRows, MaxRows: f.MaxRows,
		Decides: int(f.Decides), Example: f.Invented(), Measure: f.Measure,
	}
	if f.Help != "" {
		field.Help = w.us.Say(f.Help)
	}
	if f.Kind == calc.Flag && x.Set {
		field.answer = w.us.Write(f, x)
	}
	if f.Kind == calc.Number {
		field.Unit = Both{f.Display.In(quantity.US).Unit, f.Display.In(quantity.Metric).Unit}
		field.Range = Both{limits(w.us, f), limits(w.metric, f)}
	}
	for _, o := range f.Options {
		field.Options = append(field.Options, Option{o.ID, w.us.Say(o.Label), o.ID == x.Word})
	}
	for _, col := range f.Cols {
		field.Cols = append(field.Cols, w.field("", col, col.UsualValue()))
	}
	return field
}

// limits returns the range of a Number in words, such as "1 ft to 30 ft"; "" if it
// has none.
func limits(v calc.Locale, f calc.Field) string {
	least, most, ok := f.Limits()
	if !ok {
		return ""
	}
	return v.Say(calc.Between, calc.Amount("low", least.SI, f.Display), calc.Amount("high", most.SI, f.Display))
}

// outputs returns the outputs of a case that are single values, and those that are
// rows, each in declared order. An output that is not set has empty texts.
func (w writer) outputs(out calc.Case) (list []Output, lists []List) {
	for i, f := range out.Fields() {
		x := out.At(i)
		if f.Kind == calc.Rows {
			lists = append(lists, w.list(f, x))
			continue
		}
		list = append(list, Output{
			Path: f.ID, Label: w.us.Say(f.Label), Lead: f.Lead, Shown: w.both(f, x), Advice: f.Advice(x).String(),
			Exact: Both{w.us.Unrounded(f, x), w.metric.Unrounded(f, x)},
		})
	}
	return list, lists
}

// list returns an output of rows with all its columns.
func (w writer) list(f calc.Field, x calc.Value) List {
	l := List{Path: f.ID, Label: w.us.Say(f.Label)}
	for _, col := range f.Cols {
		l.Heads = append(l.Heads, w.us.Say(col.Label))
		l.Cols = append(l.Cols, col.ID)
		l.Numbers = append(l.Numbers, col.Kind == calc.Number || col.Kind == calc.Clock)
	}
	for _, row := range x.Rows {
		var cells []Both
		for j, col := range f.Cols {
			cells = append(cells, w.both(col, row.At(j)))
		}
		l.Rows = append(l.Rows, cells)
	}
	return l
}

// notes converts notes of a calculator to those of the form, in the same order.
func (w writer) notes(list []calc.Note) []Note {
	var notes []Note
	for _, n := range list {
		notes = append(notes, Note{n.Level.String(), n.At.String(),
			Both{w.us.Say(n.Text, n.Slots...), w.metric.Say(n.Text, n.Slots...)}})
	}
	return notes
}

// sources returns the citations: the work as it is named by those who made it, and what
// the reader is told of it in the reader's language.
func sources(v calc.Locale, list []calc.Source) []Source {
	var out []Source
	for _, s := range list {
		var parts []string
		for _, p := range []string{s.Author, s.Title, s.Edition, s.Year} {
			if p != "" {
				parts = append(parts, p)
			}
		}
		out = append(out, Source{ID: s.ID, Work: strings.Join(parts, ", "), Where: v.Say(s.Where),
			Status: v.Say(s.Status.Text()), Link: s.Link})
	}
	return out
}
