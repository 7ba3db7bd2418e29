package site

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
)

// placesOf checks the fenced blocks of a page: calculators, inputs, tables,
// figures, examples and questions. It adds an error for each mistake.
func (a *assembler) placesOf(p *Page) {
	for i := range p.Places {
		pl := &p.Places[i]
		for k := range pl.Questions {
			a.question(p, &pl.Questions[k])
		}
		if pl.Calculator == "" {
			continue
		}
		c := a.site.byID[pl.Calculator]
		if c == nil {
			key := "id"
			if pl.Kind != page.Calculator {
				key = "calculator"
			}
			a.noCalculator(p, pl.Lines[key], pl.Calculator)
			continue
		}
		switch pl.Kind {
		case page.Calculator:
			a.inputs(p, pl, c)
		case page.Example:
			a.inputs(p, pl, c)
			a.covered(p, pl, c)
		case page.Table:
			a.table(p, pl, c)
		case page.Figure:
			if c.Draw == nil {
				a.at(fault.Error, p.File, pl.Lines["calculator"], 0, "figure-none",
					"show a file, or place the calculator", "calculator %q draws no figure", c.ID)
			}
		}
	}
}

// noCalculator adds the error that there is no calculator id, at a line of the
// page.
func (a *assembler) noCalculator(p *Page, line int, id string) {
	a.at(fault.Error, p.File, line, 0, "calculator-unknown",
		a.guess(id, a.calculatorIDs, "use one of: "+strings.Join(a.calculatorIDs(), ", ")), "no calculator %q", id)
}

// table adds an error if the calculator has no table that the block names.
func (a *assembler) table(p *Page, pl *page.Place, c *calc.Calculator) {
	ids := make([]string, len(c.Tables))
	for i, t := range c.Tables {
		if t.ID == pl.Table {
			return
		}
		ids[i] = t.ID
	}
	hint := "use one of: " + strings.Join(ids, ", ")
	if len(ids) == 0 {
		hint = "place the calculator instead"
	}
	a.at(fault.Error, p.File, pl.Lines["table"], 0, "table-unknown",
		a.guess(pl.Table, func() []string { return ids }, hint), "calculator %q has no table %q", c.ID, pl.Table)
}

// inputs reads a block's inputs as the form would, and runs the calculator: a
// block must open with a result. It adds an error for each refusal, at the input
// if it is in the block. A block without inputs is not run.
func (a *assembler) inputs(p *Page, pl *page.Place, c *calc.Calculator) {
	if len(pl.Set) == 0 {
		return
	}
	style := quantity.Style{System: quantity.US, Mark: p.Language.Mark}
	locale := calc.Locale{Style: style}
	entries := Entries(pl.Set)
	lines := map[string]page.Input{}
	for _, in := range pl.Set {
		lines[in.Path] = in
	}
	in, notes := calc.Read(c, entries, style)
	if len(notes) == 0 {
		notes = refusals(calc.Run(c, in))
	}
	for _, n := range notes {
		at, ok := lines[n.At.String()]
		if !ok {
			at, ok = lines[n.At.Field]
		}
		if !ok {
			at = page.Input{Line: pl.Lines["set"]}
		}
		text := locale.Say(n.Text, n.Slots...)
		a.at(fault.Error, p.File, at.Line, at.Col, "block-input", "see what it takes: coursebook calc "+c.ID+" -h",
			"calculator %s: %s", c.ID, strings.TrimSuffix(text, "."))
	}
}

// Entries converts the inputs of a block to entries of a calculator, in the same
// order.
func Entries(set []page.Input) []calc.Entry {
	entries := make([]calc.Entry, len(set))
	for i, in := range set {
		entries[i] = calc.Entry{Path: in.Path, Text: in.Text}
	}
	return entries
}

// refusals returns the notes that explain why a run has no result; nil if it has a
// result.
func refusals(r calc.Result) (notes []calc.Note) {
	if r.State == calc.OK {
		return nil
	}
	for _, n := range r.Notes {
		if n.Level == calc.LevelRefusal {
			notes = append(notes, n)
		}
	}
	return notes
}
