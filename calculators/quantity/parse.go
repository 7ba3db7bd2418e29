package quantity

import (
	"math"
	"strings"
	"unicode/utf8"
)

// typedLimit bounds a typed value, in bytes; the longest that Format writes
// is less than half as long.
const typedLimit = 120

// Parse reads a typed value: a number alone, which is in the display's unit of the
// reader's system, or with any unit of the dimension. Lengths and times may be
// given in two units (10' 6-1/2", 1 h 30 min). A sign may precede the value; the
// caller checks whether a negative value is allowed. The value is in SI and
// finite. An empty text, one of more than typedLimit bytes, and any other that is
// no value of the dimension are errors; the value is then 0.
//
// A number alone is in feet for the form FeetInches, in inches for Inches. A
// fraction alone is an error where the display's unit is a length other than
// inches: 3/8 typed for feet may mean inches. Degrees are a temperature or a
// difference according to the dimension of the display: 20 °F typed for a
// difference is 20 F°.
func Parse(text string, display Display, style Style) (si float64, err *ParseError) {
	p := &parser{display: display, style: style, text: text}
	if len(text) > typedLimit {
		return 0, errLong.with("examples", p.examples())
	}
	p.text = normalized(text)
	if p.text == "" {
		return 0, errEmpty.with("examples", p.examples())
	}
	if !utf8.ValidString(text) {
		return 0, errNoNumber.with("text", quote(text), "examples", p.examples())
	}
	rest, sign := p.text, 1.0
	switch rest[0] {
	case '-':
		rest, sign = skip(rest[1:]), -1
	case '+':
		rest = skip(rest[1:])
	}
	x, u, err := p.value(rest)
	if err != nil {
		return 0, err
	}
	si = u.ToSI(sign * x)
	if !(math.Abs(si) <= limit) {
		return 0, errTooBig.with("text", quote(p.text))
	}
	return si + 0, nil // + 0: never minus zero
}

// parser holds the state of one Parse.
type parser struct {
	display Display
	style   Style
	text    string // the typed text, normalized
}

// examples returns ways to write a value of the wanted dimension, for an error.
func (p *parser) examples() string { return examples(p.display.Dim, p.style.System) }

// value reads all of s as a number with its unit or units, and returns the number
// in the unit returned. A number alone is in the display's unit; a fraction alone
// is an error for a length whose unit is not inches. It returns an error if s is
// anything else.
func (p *parser) value(s string) (float64, Unit, *ParseError) {
	bare := p.display.unit(p.style.System)
	x, whole, rest, err := p.number(s)
	switch {
	case err != nil:
		return 0, bare, err
	case rest == "" && bare.Dim == Length && bare.Symbol != "in" && strings.Contains(s, "/"):
		return 0, bare, errBareFraction.with("text", quote(p.text), "unit", bare.Symbol)
	case rest == "":
		return x, bare, nil
	case isDigit(rest[0]):
		return 0, bare, p.trailing(rest)
	}
	u, tail, err := p.unit(rest)
	if err != nil || tail == "" {
		return x, u, err
	}
	return p.compound(x, whole, u, tail)
}

// trailing returns the error of text behind a value.
func (p *parser) trailing(rest string) *ParseError {
	return errTrailing.with("rest", quote(rest), "examples", p.examples())
}

// unit reads the longest unit at the start of s. tail is the text behind it,
// without leading spaces. Only a unit of the wanted dimension may have a tail: in
// 10ft3in the 3 is not an exponent. An unknown unit and one of another dimension
// are errors; tail is then "".
func (p *parser) unit(s string) (u Unit, tail string, err *ParseError) {
	u, known := lookup(s, p.display.Dim)
	if !known {
		u, tail, known = p.unitBefore(s)
	}
	switch {
	case !known:
		return u, "", p.unknown(s)
	case u.Dim != p.display.Dim:
		return u, "", errKind(p.display.Dim).with("unit", u.Symbol, "examples", p.examples())
	}
	return u, skip(tail), nil
}

// unitBefore returns the longest unit at the start of s that is followed by other
// text, and that text. A unit of the wanted dimension takes precedence. known is
// false if there is none.
func (p *parser) unitBefore(s string) (u Unit, tail string, known bool) {
	for end := len(s) - 1; end > 0; end-- {
		if !utf8.RuneStart(s[end]) || isLetter(s[end]) {
			continue
		}
		found, ok := lookup(s[:end], p.display.Dim)
		if ok && found.Dim == p.display.Dim {
			return found, s[end:], true
		}
		if ok && !known {
			u, tail, known = found, s[end:], true
		}
	}
	return u, tail, known
}

func isLetter(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' }

// unknown returns the error of a typed unit that does not exist, with the nearest
// unit if one is near.
func (p *parser) unknown(typed string) *ParseError {
	if p.display.Dim == Number {
		return errKind(Number).with("examples", p.examples())
	}
	if guess, ok := nearest(typed, p.display.Dim); ok {
		return errUnitClose.with("unit", quote(typed), "guess", guess.Symbol)
	}
	return errUnit.with("unit", quote(typed), "units", offered(p.display.Dim))
}
