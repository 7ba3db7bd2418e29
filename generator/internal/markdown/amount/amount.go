// Package amount finds numbers with a unit in running text and writes them in
// the other system of units, rounded for the field.
//
// How a figure is rounded: the counterpart gets the fewest significant
// figures that stay within a tolerance of the exact conversion. The tolerance
// is half a unit of the author's last figure, and at most 2.5 %. A whole
// number's zeros at the end count as rounding, a 5 at its end as a step of
// five. So 2 ft is 600 mm, 1/2 in. is 13 mm, 600 psf is 29 kPa, and 8.4 in. is
// 213 mm. Lengths are never finer than a tape shows, temperatures are whole
// degrees unless the author's are not. An amount that is a least distance is
// rounded up: 20 ft is 6.1 m then, not 6 m.
package amount

import (
	"math"
	"strings"
	"unicode/utf8"

	"coursebook/calculators/quantity"
)

// Own says which of the two writings the author gave.
type Own uint8

// The author's own writings.
const (
	Neither Own = iota // the amount has no counterpart: 90 min, 45°
	US
	Metric
	Both
)

// Found is an amount in a text.
type Found struct {
	Start, End int    // bytes of the text
	US, Metric string // as written for either reader; empty for Neither
	Own        Own
	// Apart is how far the author's two figures differ, as a share of the
	// larger, where Own is Both.
	Apart float64
}

// Finder finds amounts in one language. It is safe for concurrent use.
type Finder struct {
	mark  quantity.Mark
	words wording
	least []float64 // in SI: what may not get smaller on the way
}

// New returns a finder for a language and its decimal mark. least lists amounts
// whose counterparts are rounded up, never down; one for which Whole is false is
// ignored.
func New(lang string, mark quantity.Mark, least ...string) *Finder {
	f := &Finder{mark: mark, words: wordingOf(lang)}
	for _, text := range least {
		if f.Whole(text) {
			a, _ := f.read(text, 0, true)
			f.least = append(f.least, a.si())
		}
	}
	return f
}

// Whole reports whether a text is one amount with a counterpart and nothing else.
// Space at an end makes it false.
func (f *Finder) Whole(text string) bool {
	a, ok := f.Next(text, 0, true)
	return ok && a.Start == 0 && a.End == len(text) && (a.Own == US || a.Own == Metric)
}

// Next returns the first amount of text at or after byte from, and false if there
// is none. With last, the end of text is the end of its paragraph, and a full stop
// there may be the sentence's rather than the one of "in.".
func (f *Finder) Next(text string, from int, last bool) (Found, bool) {
	for at := from; at < len(text); {
		start := nextNumber(text, at)
		if start < 0 {
			break
		}
		if !mayStart(text, start) {
			at = skipToken(text, start)
			continue
		}
		a, ok := f.read(text, start, last)
		if !ok {
			at = skipToken(text, start)
			continue
		}
		return f.finish(text, a, last), true
	}
	return Found{}, false
}

// one is an amount as written in the text.
type one struct {
	start, end int
	values     []value
	joins      []string // what is between the values
	unit       unit
	gap        string // between the number and the unit: "", " " or "-"
}

// unit is a unit as found: its canonical form and how the counterpart is made.
type unit struct {
	quantity.Unit
	side side
}

// si returns the value with the largest magnitude in SI; 0 without values.
func (a one) si() float64 {
	most := 0.0
	for _, v := range a.values {
		if x := a.unit.ToSI(v.x); math.Abs(x) > math.Abs(most) {
			most = x
		}
	}
	return most
}

// finish returns the amount a of text with its counterpart: the one the author
// gave in parentheses, otherwise a converted one. An amount without a counterpart
// has Own Neither and no texts.
func (f *Finder) finish(text string, a one, last bool) Found {
	own := oneLine(text[a.start:a.end])
	found := Found{Start: a.start, End: a.end}
	if a.unit.side == noSide {
		return found
	}
	if b, start, end, ok := f.given(text, a, last); ok {
		found.Own, found.End, found.Apart = Both, end, apart(a.si(), b.si())
		found.US, found.Metric = own, oneLine(text[start:end-1])
		if a.unit.side == metric {
			found.US, found.Metric = found.Metric, found.US
		}
		return found
	}
	other, ok := f.convert(a, strings.HasPrefix(text[a.end:], "."))
	switch {
	case !ok:
		return found
	case a.unit.side == us:
		found.Own, found.US, found.Metric = US, own, other
	default:
		found.Own, found.US, found.Metric = Metric, other, own
	}
	return found
}

// given reads a counterpart in parentheses right after the amount a: (600 mm),
// (about 600 mm). start is the byte at which its text starts, end the byte behind
// the closing parenthesis. ok is false if what follows is no amount of the same
// dimension in the other system.
func (f *Finder) given(text string, a one, last bool) (b one, start, end int, ok bool) {
	rest := text[a.end:]
	trimmed := strings.TrimLeft(rest, " \n\u00A0")
	if len(rest) == len(trimmed) || !strings.HasPrefix(trimmed, "(") {
		return one{}, 0, 0, false
	}
	start = a.end + len(rest) - len(trimmed) + 1
	at := start
	for _, word := range f.words.about {
		if after, found := strings.CutPrefix(text[at:], word); found {
			at = len(text) - len(after)
			break
		}
	}
	if nextNumber(text, at) != at {
		return one{}, 0, 0, false
	}
	b, ok = f.read(text, at, last)
	if !ok || !strings.HasPrefix(text[b.end:], ")") || b.unit.Dim != a.unit.Dim || b.unit.side == a.unit.side ||
		b.unit.side == noSide {
		return one{}, 0, 0, false
	}
	return b, start, b.end + 1, true
}

// apart returns the difference of a and b as a share of the larger magnitude, 0 if
// both are 0.
func apart(a, b float64) float64 {
	most := math.Max(math.Abs(a), math.Abs(b))
	if most == 0 {
		return 0
	}
	return math.Abs(a-b) / most
}

// nextNumber returns the byte of the next digit or fraction sign at or after from,
// or of the minus in front of it; -1 if there is none.
func nextNumber(text string, from int) int {
	for i := from; i < len(text); i++ {
		c := text[i]
		if isDigit(c) {
			return withSign(text, from, i)
		}
		if c == 0xC2 || c == 0xE2 { // the first bytes of ½ ¼ ¾ and of ⅛ ⅜ …
			if _, size := vulgar(text[i:]); size > 0 {
				return withSign(text, from, i)
			}
		}
	}
	return -1
}

// withSign returns the byte of the minus directly before the number at byte at, or
// at itself if there is none. The minus must not be before from, and must be at
// the start or behind a space, a line feed or an opening bracket; otherwise it is
// a hyphen.
func withSign(text string, from, at int) int {
	for _, minus := range []string{"-", "−"} {
		start := at - len(minus)
		if start >= from && text[start:at] == minus && (start == 0 || strings.IndexByte(" \n([", text[start-1]) >= 0) {
			return start
		}
	}
	return at
}

// mayStart reports whether a number may start at byte at: at the start of the
// text, or behind a character that is not part of a word, another number, a
// section number, a bar size or a price.
func mayStart(text string, at int) bool {
	if at == 0 {
		return true
	}
	r, _ := utf8.DecodeLastRuneInString(text[:at])
	switch {
	case isLetter(r), '0' <= r && r <= '9', strings.ContainsRune("#.,/:_$€£§@+=-−'’\\", r):
		return r == '/' && at >= 2 && text[at-2] == '+' // +/- comes as ± or +/
	}
	return true
}

// skipToken returns the byte behind the digits, marks, strokes and hyphens at byte
// at, or behind one character if there are none.
func skipToken(text string, at int) int {
	i := at
	for i < len(text) && (isDigit(text[i]) || strings.IndexByte(".,/:-_", text[i]) >= 0) {
		i++
	}
	if i == at {
		_, size := utf8.DecodeRuneInString(text[at:])
		i += size
	}
	return i
}

// oneLine returns s with each line feed replaced by a space.
func oneLine(s string) string {
	if strings.IndexByte(s, '\n') < 0 {
		return s
	}
	return strings.ReplaceAll(s, "\n", " ")
}

// MaxApart is the share from which two figures of one amount are taken for a mistake
// of the author: rounding for the field stays below it.
const MaxApart = 0.1
