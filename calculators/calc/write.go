package calc

import (
	"strconv"

	"coursebook/calculators/quantity"
)

// Texts written with values.
var (
	YesText = Text("yes")
	NoText  = Text("no")
	// Between joins the limits of an input.
	Between = Text("{low} to {high}")

	confirmed      = Text("read in the document")
	secondary      = Text("read where another document repeats it")
	memory         = Text("from memory")
	commonPractice = Text("common practice")
	ownLimit       = Text("our own limit")
)

// Text is the status in words.
func (s Status) Text() Text {
	return [...]Text{confirmed, secondary, memory, commonPractice, ownLimit}[s]
}

// Write returns a value for display: rounded as the field says, with its unit, in
// the reader's language. An unset value gives ""; a Rows field gives the number of
// its rows. An option that the field does not have gives its ID.
func (v Locale) Write(f Field, x Value) string {
	if !x.Set {
		return ""
	}
	switch f.Kind {
	case Number:
		text := quantity.Format(x.Num, *f.Display, v.Style)
		if f.Also != nil {
			text += " (" + quantity.Format(x.Num, *f.Also, v.Style) + ")"
		}
		return text
	case Choice:
		for _, o := range f.Options {
			if o.ID == x.Word {
				return v.Say(o.Label)
			}
		}
		return x.Word
	case Flag:
		if x.Num != 0 {
			return v.Say(YesText)
		}
		return v.Say(NoText)
	case Day:
		return FormatDay(int(x.Num))
	case Clock:
		return FormatClock(x.Num)
	case Rows:
		return strconv.Itoa(len(x.Rows))
	}
	return x.Word
}

// InputText returns a value as text for the input, which Read reads back as the
// rounded value; "" if it is unset. Options and flags are not translated.
func (v Locale) InputText(f Field, x Value) string {
	switch {
	case !x.Set:
		return ""
	case f.Kind == Choice:
		return x.Word
	case f.Kind == Flag && x.Num != 0:
		return "yes"
	case f.Kind == Flag:
		return "no"
	}
	return v.Write(f, x)
}

// Unrounded returns an output with up to 7 significant digits and its unit; "" if
// the field is exact or not a number, or the value is unset.
func (v Locale) Unrounded(f Field, x Value) string {
	if !x.Set || f.Kind != Number || f.Exact {
		return ""
	}
	return quantity.Exact(x.Num, *f.Display, v.Style)
}

// Entries returns a case's inputs as entries, rows cell by cell. Read returns the
// same case from them, its numbers rounded for display. A Rows field without rows
// is one entry with an empty text.
func (v Locale) Entries(c Case) []Entry {
	var list []Entry
	for i, f := range c.fields {
		x := c.values[i]
		if f.Kind != Rows {
			list = append(list, Entry{Path: f.ID, Text: v.InputText(f, x)})
			continue
		}
		if len(x.Rows) == 0 {
			list = append(list, Entry{Path: f.ID})
		}
		for k, row := range x.Rows {
			nr := row.row
			if nr == 0 {
				nr = k + 1
			}
			for j, col := range row.fields {
				list = append(list, Entry{Path: Cell(f.ID, nr, col.ID).String(), Text: v.InputText(col, row.values[j])})
			}
		}
	}
	return list
}
