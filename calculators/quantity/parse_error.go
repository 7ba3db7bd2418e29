package quantity

import (
	"strings"
	"unicode/utf8"
)

// ParseError is a refusal that a hand understands.
type ParseError struct {
	Key   string // stable, for translation: quantity.comma
	EN    string // the English text, with {slots}
	Slots []Slot // what fills them
}

// Slot fills one {name} of a text.
type Slot struct{ Name, Value string }

// The refusals. Slots: {text} what was typed, {unit} a unit as typed or
// printed, {rest} what is left over, {examples} ways to write such a value,
// {units} printed units, {guess} one of them.
var (
	troubleEmpty        = ParseError{Key: "quantity.empty", EN: "Nothing is written here. Write a value, like {examples}."}
	troubleLong         = ParseError{Key: "quantity.long", EN: "This is too long for one value. Write it short, like {examples}."}
	troubleNoNumber     = ParseError{Key: "quantity.no-number", EN: "“{text}” does not start with a number. Write a value, like {examples}."}
	troubleTooBig       = ParseError{Key: "quantity.too-big", EN: "“{text}” is too large to be meant. Check the digits."}
	troubleTwoMarks     = ParseError{Key: "quantity.two-marks", EN: "“{text}” has more than one decimal mark. Keep one."}
	troubleComma        = ParseError{Key: "quantity.comma", EN: "The comma in “{text}” can be read two ways. Write {decimal} or {plain}."}
	troubleCommaDecimal = ParseError{Key: "quantity.comma-decimal", EN: "Write a point, not a comma, before the decimals: {decimal}."}
	troubleCommaGroups  = ParseError{Key: "quantity.comma-groups", EN: "Write the number without commas: {plain}."}
	troublePoint        = ParseError{Key: "quantity.point", EN: "The point in “{text}” can be read two ways. Write {decimal} or {plain}."}
	troublePointDecimal = ParseError{Key: "quantity.point-decimal", EN: "Write a comma, not a point, before the decimals: {decimal}."}
	troublePointGroups  = ParseError{Key: "quantity.point-groups", EN: "Write the number without points: {plain}."}
	troubleFraction     = ParseError{Key: "quantity.fraction", EN: "A fraction needs whole numbers above and below the line, like 3/4 or 6-1/2."}
	troubleZeroFraction = ParseError{Key: "quantity.zero-fraction", EN: "The lower number of a fraction cannot be 0."}
	troubleImproper     = ParseError{Key: "quantity.improper", EN: "After a whole number the fraction must be less than 1, as in 6-1/2."}
	troubleDash         = ParseError{Key: "quantity.dash", EN: "The dash in “{text}” can be read two ways. Write one value, like {examples}."}
	troubleTrailing     = ParseError{Key: "quantity.trailing", EN: "“{rest}” is left over after the value. Write one value, like {examples}."}
	troubleCarry        = ParseError{Key: "quantity.carry", EN: "After {big}, the {small} must be less than {limit}."}
	troubleFirstWhole   = ParseError{Key: "quantity.first-whole", EN: "Write a whole number of {big} before the {small}, or use {big} alone."}
	troubleUnit         = ParseError{Key: "quantity.unit", EN: "“{unit}” is not a unit known here. Use one of these: {units}."}
	troubleUnitClose    = ParseError{Key: "quantity.unit-close", EN: "“{unit}” is not a unit known here. Did you mean {guess}?"}
)

// troubleKind refuses a unit of another dimension. There is one text per
// wanted dimension, so that other languages need no grammar of slots.
func troubleKind(want Dimension) ParseError {
	k := kinds[want]
	t := ParseError{Key: "quantity.kind." + k.name}
	if want == Number {
		t.EN = "No unit fits here. Write " + k.noun + ", like {examples}."
	} else {
		t.EN = "“{unit}” does not measure " + k.noun + ". Write " + k.noun + ", like {examples}."
	}
	return t
}

// AllParseErrors lists every refusal's key and English text once, for
// translation. The Slots are empty.
func AllParseErrors() []ParseError {
	all := []ParseError{
		troubleEmpty, troubleLong, troubleNoNumber, troubleTooBig, troubleTwoMarks,
		troubleComma, troubleCommaDecimal, troubleCommaGroups,
		troublePoint, troublePointDecimal, troublePointGroups,
		troubleFraction, troubleZeroFraction, troubleImproper, troubleDash,
		troubleTrailing, troubleCarry, troubleFirstWhole, troubleUnit, troubleUnitClose,
	}
	for _, d := range Dimensions() {
		all = append(all, troubleKind(d))
	}
	return all
}

// with fills the slots of a copy: name, value, name, value.
func (t ParseError) with(namesAndValues ...string) *ParseError {
	for i := 0; i+1 < len(namesAndValues); i += 2 {
		t.Slots = append(t.Slots, Slot{namesAndValues[i], namesAndValues[i+1]})
	}
	return &t
}

// Error is the English text with its slots filled. What fills a slot is not
// searched for slots again.
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

func (t *ParseError) slot(name string) string {
	for _, s := range t.Slots {
		if s.Name == name {
			return s.Value
		}
	}
	return "{" + name + "}"
}

// quoteLimit bounds what a refusal repeats of the typed text, in letters.
const quoteLimit = 24

// quote is typed text as a refusal repeats it.
func quote(text string) string {
	text = strings.ToValidUTF8(text, "\uFFFD")
	if utf8.RuneCountInString(text) <= quoteLimit {
		return text
	}
	return string([]rune(text)[:quoteLimit-1]) + "…"
}

// examples are ways to write a value of the dimension, the reader's own
// system first.
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
