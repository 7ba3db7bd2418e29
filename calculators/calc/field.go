package calc

import "coursebook/calculators/quantity"

// Kind is the kind of value of a field.
type Kind uint8

// The kinds of field.
const (
	Number   Kind = iota // a quantity, stored in SI
	Choice               // one of Options, stored as the option's ID
	Flag                 // yes or no
	Day                  // a calendar date
	FreeText             // free text: a name, a place
	Clock                // a time of day, kept in seconds after midnight
	Rows                 // a list of rows, each with Cols; rows are not nested
)

// Field is one input or output of a calculator.
type Field struct {
	ID      string // lower-case letters, digits and hyphens; the name on the command line
	Label   Text
	Help    Text // one line under the field; may be empty
	Kind    Kind
	Display *quantity.Display // Number: dimension, units, rounding
	Whole   bool              // Number: whole numbers only
	// Also writes an output Number a second time, behind the first in parentheses: in
	// the unit of readers whose trade uses neither unit of Display. nil: only once.
	Also *quantity.Display
	// Range bounds a Number, in US units: "1 to 40 ft", "1/16 to 1 in". An end
	// that is excluded is written "over 0 to 40 ft" or "0 to under 90 °".
	// Inputs need one; outputs have none.
	Range string
	// Why is the reason of both ends, WhyMost that of the upper end where it is
	// another. LeastSource and MostSource are IDs of the calculator's sources;
	// empty if the reason cites no source.
	Why, WhyMost            Text
	LeastSource, MostSource string
	// Usual is the default value, as a reader of US units types it: "8 in",
	// "outside", "yes", "40 ft | 8 ft | 2; 28 ft | 8 ft | 2". If empty, the
	// field is unset at first. It is text so that a declaration is data and not
	// code.
	Usual string
	// Rule is the ID of the house rule whose amount is the default value. Usual is then
	// empty in the declaration; WithRules fills it in. Without the amount the field is
	// unset at first, so that a calculator never invents a crew's number.
	Rule string
	// HoldsRule marks an input that does not count where it is looser than its house rule:
	// Compute uses the amount of the rule.
	HoldsRule bool
	// OnPlan is the ID of a yes or no input that says that a looser number is on the plan. It
	// then counts, and nobody is asked.
	OnPlan string
	house  *Rule // the declared rule, once WithRules has found its amount
	// Optional inputs may be left empty; the calculator checks Has before use.
	Optional bool
	// Maker marks an input that only the maker of the form or part gives: a
	// rating, a plate, a guide. A page shows no example result that depends on
	// one, because a reader may mistake the invented rating for the real one.
	Maker   bool
	Options []Option        // Choice
	When    func(Case) bool // asked only where true; nil: always
	Cols    []Field         // Rows
	MinRows int             // Rows
	MaxRows int             // Rows
	MaxLen  int             // FreeText: longest text in bytes; 0 means 200
	Lead    bool            // an output shown large, first
	// Decides is the place of an input among those that decide, from 1: a page shows
	// these first and folds the others under a line that states what they assume. 0: the
	// input does not decide. A column that decides is typed down the rows, one after the other.
	Decides uint8
	// Example marks a default value that is invented, as that of an input that decides, of
	// a maker's number and of rows is anyway: until the reader types another, the page
	// calls the result an example. All other default values are assumptions.
	Example bool
	// Measure names what several calculators ask for: what a reader types for it in one is
	// offered in the others. Empty: asked for in this calculator only.
	Measure string
	Exact   bool // an output that is exact as shown (counts); no unrounded value is offered
}

// Option is one answer of a Choice.
type Option struct {
	ID    string
	Label Text
	// Advice is what this option of a leading output means for the crew.
	Advice Advice
}

// Advice is what a result means for the crew. A page shows it with a sign and a color
// beside the words.
type Advice uint8

// The kinds of advice.
const (
	NoAdvice Advice = iota
	Good            // go on
	Careful         // ask, look or wait first
	Stop            // do not do it this way
)

var adviceNames = [...]string{"", "good", "careful", "stop"}

// String is the name of the advice in lower case; empty for NoAdvice.
func (a Advice) String() string { return adviceNames[a] }

// Invented reports whether the default value of an input is an example, not an assumption.
// The default of a choice or a flag is one only where the declaration says so.
func (f *Field) Invented() bool {
	if f.Usual == "" || f.Rule != "" {
		return false
	}
	if f.Kind == Choice || f.Kind == Flag {
		return f.Example
	}
	return f.Example || f.Decides > 0 || f.Maker || f.Kind == Rows
}

// Advice returns the advice of a value of a Choice.
func (f *Field) Advice(x Value) Advice {
	for _, o := range f.Options {
		if o.ID == x.Word {
			return o.Advice
		}
	}
	return NoAdvice
}

// Value is the content of a field. The zero Value is unset.
type Value struct {
	Set  bool
	Num  float64 // Number in SI; Flag 0 or 1; Day in days since 1970-01-01; Clock in seconds
	Word string  // Choice: option ID; FreeText: the text
	Rows []Case  // Rows
}

// Num returns the value of a Number, si in SI units.
func Num(si float64) Value { return Value{Set: true, Num: si} }

// In returns the value of a Number, x in a unit. It panics on an unknown unit.
func In(x float64, unit string) Value { return Num(SI(x, unit)) }

// SI converts x in a unit to SI; it panics on an unknown unit.
func SI(x float64, unit string) float64 {
	u, ok := quantity.Find(unit)
	if !ok {
		panic("calc: unknown unit " + unit)
	}
	return u.ToSI(x)
}

// From converts an SI value to a unit; it panics on an unknown unit.
func From(si float64, unit string) float64 {
	u, ok := quantity.Find(unit)
	if !ok {
		panic("calc: unknown unit " + unit)
	}
	return u.FromSI(si)
}

// ChoiceOf returns the value of a Choice by the ID of its option, which is not
// checked.
func ChoiceOf(option string) Value { return Value{Set: true, Word: option} }

// Bool is a Flag.
func Bool(on bool) Value {
	if on {
		return Value{Set: true, Num: 1}
	}
	return Value{Set: true}
}

// TextOf is free text.
func TextOf(text string) Value { return Value{Set: true, Word: text} }

// RowsOf is a list of rows.
func RowsOf(rows ...Case) Value { return Value{Set: true, Rows: rows} }
