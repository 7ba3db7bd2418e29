package quantity

import (
	"strings"
	"unicode/utf8"
)

// ParseError is the reason, for the reader, why a typed quantity cannot be read.
type ParseError struct {
	EN    string // the English text, with {slots}
	Slots []Slot // the values of the slots
}

// Slot fills one {name} of a text.
type Slot struct{ Name, Value string }

// The parse errors. Slots: {text} what was typed, {unit} a unit as typed or
// printed, {rest} the text behind the value, {examples} ways to write such a value,
// {units} printed units, {guess} one of them.
var (
	errEmpty        = ParseError{EN: "Nothing is written here. Write a value, like {examples}."}
	errLong         = ParseError{EN: "This is too long for one value. Write it short, like {examples}."}
	errNoNumber     = ParseError{EN: "“{text}” does not start with a number. Write a value, like {examples}."}
	errTooBig       = ParseError{EN: "“{text}” is too large to be meant. Check the digits."}
	errTwoMarks     = ParseError{EN: "“{text}” has more than one decimal mark. Keep one."}
	errComma        = ParseError{EN: "The comma in “{text}” can be read two ways. Write {decimal} or {plain}."}
	errCommaDecimal = ParseError{EN: "Write a point, not a comma, before the decimals: {decimal}."}
	errCommaGroups  = ParseError{EN: "Write the number without commas: {plain}."}
	errPoint        = ParseError{EN: "The point in “{text}” can be read two ways. Write {decimal} or {plain}."}
	errPointDecimal = ParseError{EN: "Write a comma, not a point, before the decimals: {decimal}."}
	errPointGroups  = ParseError{EN: "Write the number without points: {plain}."}
	errFraction     = ParseError{EN: "A fraction needs whole numbers above and below the line, like 3/4 or 6-1/2."}
	errBareFraction = ParseError{EN: "“{text}” can be read two ways. Write {text} {unit} or {text} in."}
	errZeroFraction = ParseError{EN: "The lower number of a fraction cannot be 0."}
	errImproper     = ParseError{EN: "After a whole number the fraction must be less than 1, as in 6-1/2."}
	errDash         = ParseError{EN: "The dash in “{text}” can be read two ways. Write one value, like {examples}."}
	errTrailing     = ParseError{EN: "“{rest}” is left over after the value. Write one value, like {examples}."}
	errCarry        = ParseError{EN: "After {big}, the {small} must be less than {limit}."}
	errFirstWhole   = ParseError{EN: "Write a whole number of {big} before the {small}, or use {big} alone."}
	errUnit         = ParseError{EN: "“{unit}” is not a unit known here. Use one of these: {units}."}
	errUnitClose    = ParseError{EN: "“{unit}” is not a unit known here. Did you mean {guess}?"}
)

// errKind returns the error of a unit of another dimension than want. There is one
// text for each wanted dimension, so that translations need no inflected slots.
func errKind(want Dimension) ParseError {
	k := kinds[want]
	if want == Number {
		return ParseError{EN: "No unit fits here. Write " + k.noun + ", like {examples}."}
	}
	return ParseError{EN: "“{unit}” does not measure " + k.noun + ". Write " + k.noun + ", like {examples}."}
}

// AllParseErrors returns every parse error once, for translation. The Slots are
// empty.
func AllParseErrors() []ParseError {
	all := []ParseError{
		errEmpty, errLong, errNoNumber, errTooBig, errTwoMarks,
		errComma, errCommaDecimal, errCommaGroups,
		errPoint, errPointDecimal, errPointGroups,
		errFraction, errBareFraction, errZeroFraction, errImproper, errDash,
		errTrailing, errCarry, errFirstWhole, errUnit, errUnitClose,
	}
	for _, d := range Dimensions() {
		all = append(all, errKind(d))
	}
	return all
}

// with returns a copy of the error with slots added: name, value, name, value.
func (t ParseError) with(namesAndValues ...string) *ParseError {
	for i := 0; i+1 < len(namesAndValues); i += 2 {
		t.Slots = append(t.Slots, Slot{namesAndValues[i], namesAndValues[i+1]})
	}
	return &t
}

// Error returns the English text with its slots filled. Slot values are not
// expanded; a name without a slot remains in its braces.
func (t *ParseError) Error() string {
	var b strings.Builder
	text := t.EN
	for {
		before, after, found := strings.Cut(text, "{")
		b.WriteString(before)
		if !found {
			return b.String()
		}
		name, rest, _ := strings.Cut(after, "}")
		b.WriteString(t.slot(name))
		text = rest
	}
}

// slot returns the value of the slot with this name, or the name in braces if
// there is none.
func (t *ParseError) slot(name string) string {
	for _, s := range t.Slots {
		if s.Name == name {
			return s.Value
		}
	}
	return "{" + name + "}"
}

// quoteLimit is the longest quotation of typed text in an error, in letters.
const quoteLimit = 24

// quote returns typed text for an error: cut to quoteLimit runes with an ellipsis
// as the last one, and with U+FFFD for bytes that are not UTF-8.
func quote(text string) string {
	text = strings.ToValidUTF8(text, "\uFFFD")
	if utf8.RuneCountInString(text) <= quoteLimit {
		return text
	}
	return string([]rune(text)[:quoteLimit-1]) + "…"
}

// examples returns ways to write a value of the dimension, separated by a comma,
// the reader's system first.
func examples(d Dimension, sys System) string {
	k := kinds[d]
	switch {
	case k.us == k.si:
		return k.us
	case sys == Metric:
		return k.si + ", " + k.us
	}
	return k.us + ", " + k.si
}
