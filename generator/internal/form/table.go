package form

import (
	"slices"
	"strings"
	"unicode"

	"coursebook/calculators/calc"
)

// Table is one printed table, once in each system of units.
type Table struct {
	ID, Title, Note string
	Down, Across    string // labels of the inputs at the side and the top
	Out             string // label of the output in the cells
	US, Metric      Grid
	HasHoles        bool // the method gives no number for some cell
}

// Grid is a table in one system of units. Heads is empty for a table of one column.
type Grid struct {
	Unit  string // unit of all cells; empty if they differ
	Heads []string
	Sides []string
	Cells [][]string
}

// hole is the text of a cell for which the method gives no number.
const hole = "—"

// table returns a printed table in both systems of units. It panics if one of its
// inputs is refused.
func (w writer) table(c *calc.Calculator, t calc.Table) Table {
	out := Table{ID: t.ID, Title: w.us.Say(t.Title), Down: w.label(c, t.Down.Path), Across: w.label(c, t.Across.Path)}
	if t.Note != "" {
		out.Note = w.us.Say(t.Note)
	}
	for _, f := range c.Out {
		if f.ID == t.Out {
			out.Out = w.us.Say(f.Label)
		}
	}
	out.US = w.grid(w.us, c, t, t.Down.US, t.Across.US)
	out.Metric = w.grid(w.metric, c, t, or(t.Down.Metric, t.Down.US), or(t.Across.Metric, t.Across.US))
	for _, g := range []Grid{out.US, out.Metric} {
		for _, row := range g.Cells {
			for _, cell := range row {
				out.HasHoles = out.HasHoles || cell == hole
			}
		}
	}
	return out
}

// or returns a, or b if a is nil.
func or(a, b []string) []string {
	if a != nil {
		return a
	}
	return b
}

// label returns the label of an input by its path; for a cell in the first row, of
// its column. It returns "" for an unknown path.
func (w writer) label(c *calc.Calculator, path string) string {
	for _, f := range c.In {
		if f.ID == path {
			return w.us.Say(f.Label)
		}
		for _, col := range f.Cols {
			if calc.Cell(f.ID, 1, col.ID).String() == path {
				return w.us.Say(col.Label)
			}
		}
	}
	return ""
}

// grid returns a table in the units of v for the typed inputs down and across.
// Without an Across.Path it has one column.
func (w writer) grid(v calc.Locale, c *calc.Calculator, t calc.Table, down, across []string) Grid {
	g := Grid{Sides: w.heads(v, c, t, t.Down.Path, down)}
	if t.Across.Path == "" {
		across = []string{""}
	} else {
		g.Heads = w.heads(v, c, t, t.Across.Path, across)
	}
	for _, side := range down {
		var row []string
		for _, head := range across {
			row = append(row, cell(v, c, t, side, head))
		}
		g.Cells = append(g.Cells, row)
	}
	g.Unit = commonUnit(g.Cells)
	return g
}

// commonUnit returns the unit behind the number of every cell, "" if a cell has another
// unit or is no number with a unit. Cells without a number do not count.
func commonUnit(cells [][]string) string {
	common := ""
	for _, row := range cells {
		for _, cell := range row {
			if cell == hole {
				continue
			}
			at := strings.LastIndexFunc(cell, unicode.IsSpace)
			if at < 0 || strings.Trim(cell[:at], "0123456789.,") != "" {
				return ""
			}
			unit := strings.TrimLeftFunc(cell[at:], unicode.IsSpace)
			if common != "" && unit != common {
				return ""
			}
			common = unit
		}
	}
	return common
}

// heads returns the typed values of the input at path as outputs, rounded and with
// units. It panics if one is refused.
func (w writer) heads(v calc.Locale, c *calc.Calculator, t calc.Table, path string, typed []string) []string {
	var heads []string
	for _, text := range typed {
		in, notes := calc.Read(c, append(slices.Clone(t.Set), calc.Entry{Path: path, Text: text}), v.Style)
		notes = slices.DeleteFunc(notes, func(n calc.Note) bool { return n.At.String() != path })
		if len(notes) > 0 {
			panic("form: table of " + c.ID + ": " + path + "=" + text + ": " + v.Say(notes[0].Text, notes[0].Slots...))
		}
		heads = append(heads, written(v, in, path))
	}
	return heads
}

// written returns the value of the input at path for display; "" for an unknown
// path.
func written(v calc.Locale, in calc.Case, path string) string {
	for i, f := range in.Fields() {
		if f.ID == path {
			return v.Write(f, in.At(i))
		}
		for k, row := range in.At(i).Rows {
			for j, col := range row.Fields() {
				if calc.Cell(f.ID, k+1, col.ID).String() == path {
					return v.Write(col, row.At(j))
				}
			}
		}
	}
	return ""
}

// cell returns the table's output for one pair of inputs, or hole if the
// calculator gives none. It panics if an input is refused.
func cell(v calc.Locale, c *calc.Calculator, t calc.Table, side, head string) string {
	entries := append(slices.Clone(t.Set), calc.Entry{Path: t.Down.Path, Text: side})
	if t.Across.Path != "" {
		entries = append(entries, calc.Entry{Path: t.Across.Path, Text: head})
	}
	in, notes := calc.Read(c, entries, v.Style)
	if len(notes) > 0 {
		panic("form: table " + t.ID + " of " + c.ID + ": " + v.Say(notes[0].Text, notes[0].Slots...))
	}
	res := calc.Run(c, in)
	for i, f := range c.Out {
		if f.ID == t.Out && res.Out.At(i).Set {
			return v.Write(f, res.Out.At(i))
		}
	}
	return hole
}
