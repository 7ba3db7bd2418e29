package calc

import (
	"math"
	"strconv"
	"strings"

	"coursebook/calculators/expression"
	"coursebook/calculators/quantity"
)

// Worked is one step of the worked example, as text for the reader.
type Worked struct {
	Title       string
	Of          string   // the purpose; may be empty
	Plain       string   // the equation in symbols: p = C_w × (150 + …)
	Substituted string   // the right-hand side with numbers
	Result      string   // with unit
	Where       []string // each symbol with value, unit, meaning, and the value in the reader's unit if that differs
}

// figures is the number of significant digits of the numbers in a step.
const figures = 5

// Work returns a step as text in the reader's language and units. It panics on an
// expression that cannot be parsed.
func (v Locale) Work(s Step) Worked {
	f := s.Formula
	tree, err := expression.Parse(f.Expr)
	if err != nil {
		panic(err.Error())
	}
	values := map[string]string{}
	w := Worked{Title: v.Say(f.Title), Of: v.Say(s.Of, s.Slots...)}
	for i, x := range f.Vars {
		unit := v.unit(x)
		values[x.Symbol] = v.digits(s.In[i], unit)
		value := joinUnit(values[x.Symbol], unit) + v.aside(s.In[i], unit)
		w.Where = append(w.Where, expression.Spell(x.Symbol)+" = "+value+": "+v.Say(x.Meaning))
	}
	result := v.unit(f.Result)
	w.Plain = expression.Spell(f.Result.Symbol) + " = " + v.mark(expression.Plain(tree))
	w.Substituted = v.mark(expression.Substitute(tree, values))
	w.Result = joinUnit(v.digits(s.Out, result), result) + v.aside(s.Out, result)
	return w
}

// unit returns the unit in which the reader sees a variable of a formula; "" for a
// pure number.
func (v Locale) unit(x Var) string {
	if v.Style.System == quantity.US && x.US != "" {
		return x.US
	}
	return x.Unit
}

// digits returns an SI value in a unit with figures significant digits and the
// reader's decimal mark, without the unit. An empty unit means no conversion.
func (v Locale) digits(si float64, unit string) string {
	x := si
	if unit != "" {
		x = From(si, unit)
	}
	return v.mark(significant(x))
}

// significant returns x with figures significant digits, at most to the last whole
// digit, without zeros at the end of the decimals.
func significant(x float64) string {
	if x == 0 {
		return "0"
	}
	places := figures - 1 - int(math.Floor(math.Log10(math.Abs(x))))
	if places < 0 {
		places = 0
	}
	s := strconv.FormatFloat(x, 'f', places, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// mark returns s with decimal points as the reader's mark. For a comma, the commas
// that separate the arguments of a function (a comma and a space) become
// semicolons.
func (v Locale) mark(s string) string {
	if v.Style.Mark != quantity.Comma {
		return s
	}
	return strings.ReplaceAll(strings.ReplaceAll(s, ", ", "; "), ".", ",")
}

// aside returns the value in the reader's system, in parentheses with a space
// before them, if the unit is of the other system; otherwise "".
func (v Locale) aside(si float64, unit string) string {
	other, ok := counterparts[unit]
	if !ok || other.system == v.Style.System {
		return ""
	}
	return " (" + joinUnit(v.digits(si, other.unit), other.unit) + ")"
}

type counterpart struct {
	system quantity.System
	unit   string // in the other system
}

// counterparts maps a formula's unit to its system and to the unit that readers
// of the other system use.
var counterparts = map[string]counterpart{
	"ft": {quantity.US, "m"}, "in": {quantity.US, "mm"}, "ft²": {quantity.US, "m²"}, "ft³": {quantity.US, "m³"},
	"yd³": {quantity.US, "m³"}, "psf": {quantity.US, "kPa"}, "psi": {quantity.US, "MPa"},
	"lb/ft³": {quantity.US, "kg/m³"}, "ft/h": {quantity.US, "m/h"}, "yd³/h": {quantity.US, "m³/h"},
	"°F": {quantity.US, "°C"}, "lb": {quantity.US, "kg"}, "lbf": {quantity.US, "kN"}, "mph": {quantity.US, "km/h"},
	"m": {quantity.Metric, "ft"}, "mm": {quantity.Metric, "in"}, "m³": {quantity.Metric, "yd³"},
	"kPa": {quantity.Metric, "psf"}, "°C": {quantity.Metric, "°F"}, "m/h": {quantity.Metric, "ft/h"},
	"kN": {quantity.Metric, "lbf"},
}

// joinUnit returns a number with its unit behind it; % and ° follow without a
// space, and an empty unit adds nothing.
func joinUnit(number, unit string) string {
	switch unit {
	case "":
		return number
	case "°", "%":
		return number + unit
	}
	return number + " " + unit
}
