package calc

import (
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"coursebook/calculators/expression"
	"coursebook/calculators/quantity"
)

// The longest label and help of a field, in letters, limited by the width of a phone.
const (
	maxLabel = 28
	maxHelp  = 80
)

// Problems returns the mistakes in a declaration, a sentence each; nil for a good
// one. A test of the catalog requires that. It does not run the calculator.
func Problems(c *Calculator) []string {
	s := &problems{}
	if !validID(c.ID) {
		s.add("id %s is not lower-case letters, digits and hyphens", c.ID)
	}
	s.text(c.Title, "title")
	s.text(c.Purpose, "purpose")
	s.fields("input", c.In)
	s.fields("output", c.Out)
	sources := s.sources(c)
	titles := []Text{}
	for _, f := range c.Formulas {
		s.formula(f, sources)
		if slices.Contains(titles, f.Title) {
			s.add("two formulas have the title %s", string(f.Title))
		}
		titles = append(titles, f.Title)
	}
	for _, n := range c.Cautions {
		s.text(n.Text, "caution")
	}
	for _, f := range c.In {
		for _, id := range []string{f.LeastSource, f.MostSource} {
			if id != "" && !slices.Contains(sources, id) {
				s.add("limit of %s names no source of the calculator: %s", f.ID, id)
			}
		}
	}
	s.tables(c)
	if len(c.Sources) == 0 {
		s.add("no source")
	}
	if c.Compute == nil {
		s.add("no computation")
	}
	if !slices.ContainsFunc(c.Out, func(f Field) bool { return f.Lead && f.Kind != Rows }) {
		s.add("no output leads")
	}
	return s.list
}

type problems struct{ list []string }

// add records a problem: format with each %s replaced by the next of args. Package
// fmt is not used, to keep the WebAssembly module small.
func (s *problems) add(format string, args ...string) {
	out := ""
	for len(format) > 0 {
		if len(format) > 1 && format[0] == '%' && format[1] == 's' && len(args) > 0 {
			out, args, format = out+args[0], args[1:], format[2:]
			continue
		}
		out, format = out+format[:1], format[1:]
	}
	s.list = append(s.list, out)
}

// text records a problem if t is empty; what names the text.
func (s *problems) text(t Text, what string) {
	if t.EN() == "" {
		s.add("%s has no text", what)
	}
}

// short records a problem if t has more than most letters; what names the text.
func (s *problems) short(t Text, most int, what string) {
	if n := utf8.RuneCountInString(t.EN()); n > most {
		s.add("%s has %s letters, at most %s fit", what, strconv.Itoa(n), strconv.Itoa(most))
	}
}

// validID reports whether id is made of a-z, 0-9 and hyphens, is not empty and
// does not start with a hyphen.
func validID(id string) bool {
	for i := 0; i < len(id); i++ {
		b := id[i]
		if !('a' <= b && b <= 'z' || '0' <= b && b <= '9' || b == '-' && i > 0) {
			return false
		}
	}
	return id != ""
}

// fields records the problems of fields and their columns. what is "input" or
// "output", with the field's ID behind it for columns.
func (s *problems) fields(what string, fields []Field) {
	seen := []string{}
	for _, f := range fields {
		name := what + " " + f.ID
		if !validID(f.ID) {
			s.add("%s: id is not lower-case letters, digits and hyphens", name)
		}
		if slices.Contains(seen, f.ID) {
			s.add("%s is declared twice", name)
		}
		seen = append(seen, f.ID)
		s.text(f.Label, name)
		s.short(f.Label, maxLabel, name+": label")
		s.short(f.Help, maxHelp, name+": help")
		s.field(what, name, f)
		s.usual(name, f)
	}
}

// field records the problems of one field that depend on its kind; name names it.
func (s *problems) field(what, name string, f Field) {
	switch f.Kind {
	case Number:
		if f.Display == nil {
			s.add("%s does not say how its number is written", name)
		} else if problem := f.Display.Check(); problem != "" {
			s.add("%s: %s", name, problem)
		}
		s.number(what, name, f)
	case Choice:
		s.choice(what, name, f)
	case Rows:
		if len(f.Cols) == 0 {
			s.add("%s has no columns", name)
		}
		if what == "input" && (f.MaxRows == 0 || f.MaxRows < f.MinRows) {
			s.add("%s needs a largest number of rows", name)
		}
		for _, c := range f.Cols {
			if c.Kind == Rows {
				s.add("%s has rows inside rows", name)
			}
		}
		s.fields(what+" "+f.ID, f.Cols)
	}
}

// number records a missing range of an input, a range without a reason, and one
// that cannot be read. A second display is for outputs of the same dimension: an input
// written twice could not be read back.
func (s *problems) number(what, name string, f Field) {
	switch {
	case f.Also == nil:
	case strings.HasPrefix(what, "input"):
		s.add("%s is an input and is written in one way", name)
	case f.Also.Check() != "":
		s.add("%s: %s", name, f.Also.Check())
	case f.Display == nil || f.Also.Dim != f.Display.Dim:
		s.add("%s is written in two dimensions", name)
	}
	if f.Range == "" {
		if strings.HasPrefix(what, "input") {
			s.add("%s needs a range", name)
		}
		return
	}
	s.text(f.Why, name+" range")
	if f.Display == nil {
		return
	}
	if _, _, problem := f.limits(); problem != "" {
		s.add("%s: the range: %s", name, problem)
	}
}

// usual records a usual value that cannot be read or is outside the range; an
// empty one is none.
func (s *problems) usual(name string, f Field) {
	if f.Usual == "" {
		return
	}
	probe := &reader{fields: []Field{f}, out: Empty([]Field{f})}
	probe.out.values[0] = probe.declared(f)
	if len(probe.notes) == 0 && f.When == nil && rangesAreSound(f) {
		probe.limits()
	}
	for _, n := range probe.notes {
		s.add("%s: the usual value: %s", name, Locale{}.Say(n.Text, n.Slots...))
	}
}

// rangesAreSound reports whether the ranges of a field and its columns can be
// read; a field without a range or a display counts as sound.
func rangesAreSound(f Field) bool {
	if f.Range != "" && f.Display != nil {
		if _, _, problem := f.limits(); problem != "" {
			return false
		}
	}
	return !slices.ContainsFunc(f.Cols, func(col Field) bool { return !rangesAreSound(col) })
}

// choice records a Choice without options and each option without a label.
func (s *problems) choice(what, name string, f Field) {
	if len(f.Options) == 0 {
		s.add("%s has no options", name)
	}
	for _, o := range f.Options {
		s.text(o.Label, name+" option "+o.ID)
	}
}

// sources records the problems of the calculator's sources and returns their IDs.
func (s *problems) sources(c *Calculator) []string {
	var ids []string
	for _, src := range c.Sources {
		if src.ID == "" || slices.Contains(ids, src.ID) {
			s.add("source %s has no id of its own", src.Title)
		}
		ids = append(ids, src.ID)
		if src.Title == "" && src.Status < Memory {
			s.add("source %s has no title", src.ID)
		}
		if src.Where == "" {
			s.add("source %s does not say where in the document", src.ID)
		}
	}
	return ids
}

// formula records the problems of a formula: an expression that cannot be parsed,
// a missing function, a source that is none of sources, and variables that do not
// match the expression.
func (s *problems) formula(f *Formula, sources []string) {
	tree, err := expression.Parse(f.Expr)
	if err != nil {
		s.add("formula %s: %s", f.ID, err.Error())
		return
	}
	s.text(f.Title, "formula "+f.ID)
	if f.Fn == nil || f.Go == "" {
		s.add("formula %s has no function or no listing", f.ID)
	}
	if !slices.Contains(sources, f.Source) {
		s.add("formula %s names no source of the calculator: %s", f.ID, f.Source)
	}
	us := 0
	for _, v := range append([]Var{f.Result}, f.Vars...) {
		s.variable(f, v)
		if v.US != "" {
			us++
		}
	}
	names := expression.Names(tree)
	for _, v := range f.Vars {
		if !slices.Contains(names, v.Symbol) {
			s.add("formula %s does not use %s", f.ID, v.Symbol)
		}
	}
	if len(names) != len(f.Vars) {
		s.add("formula %s uses %s names and declares %s", f.ID, strconv.Itoa(len(names)), strconv.Itoa(len(f.Vars)))
	}
}

// variable records a variable of f without a meaning or with an unknown unit.
func (s *problems) variable(f *Formula, v Var) {
	s.text(v.Meaning, "formula "+f.ID+" symbol "+v.Symbol)
	for _, u := range []string{v.Unit, v.US} {
		if u == "" {
			continue
		}
		if _, ok := quantity.Find(u); !ok {
			s.add("formula %s: unknown unit %s", f.ID, u)
		}
	}
}

// tables records each table with a bad ID, no title, an unknown output or nothing
// down the side.
func (s *problems) tables(c *Calculator) {
	for _, t := range c.Tables {
		if !validID(t.ID) {
			s.add("table %s: id", t.ID)
		}
		s.text(t.Title, "table "+t.ID)
		if !slices.ContainsFunc(c.Out, func(f Field) bool { return f.ID == t.Out }) {
			s.add("table %s: no output %s", t.ID, t.Out)
		}
		if len(t.Down.US) == 0 {
			s.add("table %s: nothing down the side", t.ID)
		}
	}
}
