package amount

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"coursebook/calculators/quantity"
)

// mostValues bounds how many numbers may share a unit: 2 × 4 × 8 ft.
const mostValues = 3

// read reads one amount that starts with a number at text[start:]: one or more
// numbers with joins between them, and a unit. ok is false if there is no unit,
// more than mostValues numbers, or a range with a hyphen that does not rise. last
// is as in Next.
func (f *Finder) read(text string, start int, last bool) (a one, ok bool) {
	a.start = start
	at := start
	for {
		v, size, ok := f.number(text[at:])
		if !ok {
			return one{}, false
		}
		if n := len(a.values); n > 0 && a.joins[n-1] == "-" && v.x <= a.values[n-1].x {
			return one{}, false // 10-6 ft is no range, and may be 10 ft 6 in.
		}
		a.values = append(a.values, v)
		at += size
		if end, found := f.unitAfter(text, at, &a, last); found {
			a.end = end
			return f.whole(text, a)
		}
		join := f.join(text, at, a)
		if join == "" || len(a.values) == mostValues {
			return one{}, false
		}
		a.joins = append(a.joins, join)
		at += len(join)
	}
}

// unitAfter reads the unit behind the last number of a, and inches behind whole
// feet, and sets a's unit, gap and, for feet and inches, value. at is the byte
// behind the number, end the byte behind the amount. ok is false if there is no
// unit or the sign closes a quotation; a may then be changed.
func (f *Finder) unitAfter(text string, at int, a *one, last bool) (end int, ok bool) {
	gap := gapAt(text[at:])
	u, size, ok := unitAt(text[at+len(gap):])
	if !ok {
		u, size, ok = f.bareInch(text[at+len(gap):], a)
	}
	if !ok {
		return 0, false
	}
	at += len(gap)
	mark := text[at : at+size]
	if strings.ContainsAny(mark, `"'”’′″`) && (gap != "" || inQuotes(text, a.start)) {
		return 0, false // closes a quotation
	}
	a.unit, a.gap = u, gap
	end = at + size
	if mark == "in." && strings.HasPrefix(text[end:], "²") {
		return 0, false
	}
	if u.Symbol == "ft" && len(a.values) == 1 && a.values[0].whole {
		if inches, stop, ok := f.inches(text, end); ok {
			inches.x += a.values[0].x * 12
			inches.whole = false
			a.values[0], a.unit, a.gap = inches, unitOf("in"), " "
			end = stop
		}
	}
	if strings.HasSuffix(text[at:end], "in.") && endsSentence(text, end, last) {
		end--
	}
	return end, true
}

// bareInch reads "in" without its point at the start of s, which is a unit only
// behind a fraction. It returns the inch, 2 and true, or false for any other text.
func (f *Finder) bareInch(s string, a *one) (unit, int, bool) {
	v := a.values[len(a.values)-1]
	if v.whole || v.decimals > 0 || !strings.HasPrefix(s, "in") || !endsWord(s, 2) {
		return unit{}, 0, false
	}
	return unitOf("in"), 2, true
}

// inches reads 6 in. or 6-1/2" at byte at of text, behind feet. It returns the
// inches and the byte behind them; ok is false if there are none, or 12 or more.
func (f *Finder) inches(text string, at int) (v value, end int, ok bool) {
	gap := gapAt(text[at:])
	v, size, ok := f.unsigned(text[at+len(gap):])
	if !ok || v.x >= 12 {
		return value{}, 0, false
	}
	at += len(gap) + size
	gap = gapAt(text[at:])
	rest := text[at+len(gap):]
	if u, n, ok := unitAt(rest); ok && u.Symbol == "in" {
		return v, at + len(gap) + n, true
	}
	if strings.HasPrefix(rest, "in") && endsWord(rest, 2) {
		return v, at + len(gap) + 2, true
	}
	return value{}, 0, false
}

// whole returns the amount a with what follows it: the lower part of a rate, or
// the meaning of degrees from the words around. If the rate is not known, or the
// words leave the meaning open, the amount has no counterpart. ok is always true.
func (f *Finder) whole(text string, a one) (one, bool) {
	u, size, ok := rate(a.unit, text[a.end:])
	if !ok {
		a.unit.side = noSide
		return a, true
	}
	if size > 0 {
		a.unit, a.end = u, a.end+size
		// lb/ft²/h has two strokes.
		if u, size, ok := rate(a.unit, text[a.end:]); ok && size > 0 {
			a.unit, a.end = u, a.end+size
		}
	}
	if a.unit.Dim == quantity.Temperature {
		switch f.degrees(text, a) {
		case rise:
			a.unit = asRise(a.unit)
		case either:
			a.unit.side = noSide
		}
	}
	return a, true
}

// join returns the text at byte at of text that joins two numbers of one unit: a
// dash, a times sign, or a word of the language. It returns "" if there is none or
// no number follows it.
func (f *Finder) join(text string, at int, a one) string {
	s := text[at:]
	for _, j := range []string{"–", " – ", "-", " × ", "×", " x "} {
		if strings.HasPrefix(s, j) && startsNumber(s[len(j):]) {
			return j
		}
	}
	for _, word := range f.words.joins {
		if hasPrefix(s, word) && startsNumber(s[len(word):]) {
			return s[:len(word)]
		}
	}
	for _, word := range f.words.and {
		if hasPrefix(s, word) && startsNumber(s[len(word):]) && hasSuffixFold(text[:a.start], f.words.between) {
			return s[:len(word)]
		}
	}
	return ""
}

// startsNumber reports whether s starts with a digit, a fraction sign or a minus
// before one.
func startsNumber(s string) bool { return nextNumber(s, 0) == 0 }

// gapAt returns the one space, line feed or hyphen at the start of s, which may be
// between a number and its unit; "" if there is none.
func gapAt(s string) string {
	for _, gap := range []string{" ", "\n", "\u00A0", "\u202F", "\u2009", "-", "\u2011"} {
		if strings.HasPrefix(s, gap) {
			return gap
		}
	}
	return ""
}

// lookBack is how far back, in bytes, an open quotation is looked for.
const lookBack = 400

// inQuotes reports whether a quotation is open at text[:at]. It looks at the last
// lookBack bytes only.
func inQuotes(text string, at int) bool {
	before := text[max(0, at-lookBack):at]
	return strings.Count(before, `"`)%2 == 1 && !hasInchMark(before) ||
		strings.Count(before, "“") > strings.Count(before, "”") ||
		strings.HasSuffix(before, "'") ||
		strings.HasSuffix(before, "‘")
}

// hasInchMark reports whether the last straight quotation mark follows a digit.
func hasInchMark(s string) bool {
	i := strings.LastIndexByte(s, '"')
	return i > 0 && isDigit(s[i-1])
}

// endsSentence reports whether the point of "in." before byte end also ends its
// sentence: a space and a capitalized word follow, or text ends its paragraph
// (last) and holds the end of another sentence.
func endsSentence(text string, end int, last bool) bool {
	rest := strings.TrimLeft(text[end:], " \n")
	if rest == "" {
		return last && hasSentence(text[:end])
	}
	if len(rest) == len(text[end:]) {
		return false
	}
	r, size := utf8.DecodeRuneInString(rest)
	next, _ := utf8.DecodeRuneInString(rest[size:])
	return unicode.IsUpper(r) && (unicode.IsLower(next) || unicode.IsSpace(next))
}

// hasSentence reports whether a sentence ends within s: a point, question or
// exclamation mark, then a space or line feed, then a capital.
func hasSentence(s string) bool {
	for i := 0; i+2 < len(s); i++ {
		if (s[i] == '.' || s[i] == '?' || s[i] == '!') && (s[i+1] == ' ' || s[i+1] == '\n') {
			if r, _ := utf8.DecodeRuneInString(s[i+2:]); unicode.IsUpper(r) {
				return true
			}
		}
	}
	return false
}

// unitOf returns the unit with a symbol that exists.
func unitOf(symbol string) unit {
	u, _ := quantity.Find(symbol)
	return unit{u, sideOf(u.Symbol)}
}

// asRise returns the unit of a temperature difference for °F and °C; any other
// unit unchanged.
func asRise(u unit) unit {
	switch u.Symbol {
	case "°F":
		return unitOf("F°")
	case "°C":
		return unitOf("C°")
	}
	return u
}
