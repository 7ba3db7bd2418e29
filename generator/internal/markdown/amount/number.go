package amount

import (
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"coursebook/calculators/quantity"
)

// value is a number as the author wrote it.
type value struct {
	x        float64
	half     float64 // half a unit of its last figure; infinite for a fraction
	decimals int
	whole    bool
}

// fractions are the signs for common fractions.
var fractions = map[rune]float64{
	'½': 1. / 2, '¼': 1. / 4, '¾': 3. / 4, '⅛': 1. / 8, '⅜': 3. / 8, '⅝': 5. / 8, '⅞': 7. / 8, '⅓': 1. / 3, '⅔': 2. / 3,
}

// vulgar reads the fraction sign (½, ⅜) at the start of s and returns its value
// and its length in bytes; both are 0 if there is none.
func vulgar(s string) (x float64, size int) {
	r, n := utf8.DecodeRuneInString(s)
	if x, ok := fractions[r]; ok {
		return x, n
	}
	return 0, 0
}

// number reads a number at the start of s: 12, 1,500, 2.5, 3/4, 6 1/2, 6-1/2, 6½,
// with a minus in front. size is its length in bytes. ok is false, and v and size
// are of no use, if s does not start with a number or with one that is ambiguous:
// 1.2.3, or 1,5 where the decimal mark is a point.
func (f *Finder) number(s string) (v value, size int, ok bool) {
	minus := 0
	switch {
	case strings.HasPrefix(s, "-"):
		minus = 1
	case strings.HasPrefix(s, "−"):
		minus = len("−")
	}
	v, size, ok = f.unsigned(s[minus:])
	if minus > 0 {
		v.x = -v.x
	}
	return v, minus + size, ok
}

// unsigned is number without a minus in front. It returns zeros and false for what
// number refuses.
func (f *Finder) unsigned(s string) (value, int, bool) {
	if x, size := vulgar(s); size > 0 {
		return value{x: x, half: math.Inf(1)}, size, true
	}
	digits, decimals, size, ok := f.literal(s)
	if !ok {
		return value{}, 0, false
	}
	x, err := strconv.ParseFloat(digits, 64)
	if err != nil {
		return value{}, 0, false
	}
	if decimals > 0 {
		return value{x: x, decimals: decimals, half: math.Pow10(-decimals) / 2}, size, true
	}
	if lower, n, ok := stroke(s[size:]); ok {
		return value{x: x / lower, half: math.Inf(1)}, size + n, true
	}
	if part, n := partAfter(s[size:]); n > 0 {
		return value{x: x + part, half: part / 2, whole: false}, size + n, true
	}
	return value{x: x, half: halfOf(digits), whole: true}, size, true
}

// halfOf returns half a unit of the last figure of a whole number that is not 0; a
// 5 there counts as a step of five. digits holds digits only; for zeros alone the
// result is 0.5.
func halfOf(digits string) float64 {
	bare := strings.TrimRight(digits, "0")
	if bare == "" {
		return 0.5
	}
	step := math.Pow10(len(digits) - len(bare))
	if bare[len(bare)-1] == '5' {
		step *= 5
	}
	return step / 2
}

// literal reads the number at the start of s, in the decimal mark of the page. It
// returns the number without separators and with a decimal point, how many
// decimal places it has, and how many bytes of s it takes. ok is false if s does
// not start with a digit or the number is ambiguous.
func (f *Finder) literal(s string) (digits string, decimals, size int, ok bool) {
	own, other := byte('.'), byte(',')
	if f.mark == quantity.Comma {
		own, other = ',', '.'
	}
	i := digitsIn(s)
	if i == 0 {
		return "", 0, 0, false
	}
	digits = s[:i]
	for i <= len(s) {
		n := groupAfter(s[i:], other)
		if n == 0 {
			break
		}
		digits += s[i+n-3 : i+n]
		i += n
	}
	if i < len(s) && s[i] == own {
		if n := digitsIn(s[i+1:]); n > 0 {
			digits, decimals, i = digits+"."+s[i+1:i+1+n], n, i+1+n
		}
	}
	// Another mark with a digit behind makes it a section number, a date or
	// a number with the other decimal mark.
	if i+1 < len(s) && (s[i] == own || s[i] == other) && isDigit(s[i+1]) {
		return "", 0, 0, false
	}
	return digits, decimals, i, true
}

// groupAfter returns the length in bytes of a group of exactly three digits with
// the separator before it at the start of s: the byte other, which is the mark
// that is not the decimal one, or a space that does not break. It returns 0 if
// there is none.
func groupAfter(s string, other byte) int {
	sep := 0
	switch {
	case len(s) > 0 && s[0] == other:
		sep = 1
	case strings.HasPrefix(s, "\u202F"), strings.HasPrefix(s, "\u2009"), strings.HasPrefix(s, "\u00A0"):
		_, sep = utf8.DecodeRuneInString(s)
	default:
		return 0
	}
	if digitsIn(s[sep:]) != 3 {
		return 0
	}
	return sep + 3
}

// stroke reads the slash and the denominator of a fraction at the start of s: one
// to three digits, not 0. size is their length in bytes. ok is false if s does not
// start so, or if another slash follows.
func stroke(s string) (lower float64, size int, ok bool) {
	for _, sign := range []string{"/", "⁄"} {
		rest, found := strings.CutPrefix(s, sign)
		if !found {
			continue
		}
		n := digitsIn(rest)
		if n == 0 || n > 3 || strings.HasPrefix(rest[n:], "/") {
			return 0, 0, false
		}
		lower, _ = strconv.ParseFloat(rest[:n], 64)
		return lower, len(sign) + n, lower > 0
	}
	return 0, 0, false
}

// partAfter reads the proper fraction behind a whole number, with the hyphen or
// space before it: 1/2 in 6-1/2, 6 1/2 and 6½. It returns its value and its length
// in bytes; both are 0 if there is none.
func partAfter(s string) (part float64, size int) {
	if x, n := vulgar(s); n > 0 {
		return x, n
	}
	gap := 0
	for _, sep := range []string{"-", " ", "\u00A0", "\u202F"} {
		if strings.HasPrefix(s, sep) {
			gap = len(sep)
		}
	}
	if gap == 0 {
		return 0, 0
	}
	if x, n := vulgar(s[gap:]); n > 0 {
		return x, gap + n
	}
	n := digitsIn(s[gap:])
	if n == 0 || n > 3 {
		return 0, 0
	}
	upper, _ := strconv.ParseFloat(s[gap:gap+n], 64)
	lower, m, ok := stroke(s[gap+n:])
	if !ok || upper >= lower {
		return 0, 0
	}
	return upper / lower, gap + n + m
}

// digitsIn returns the number of ASCII digits at the start of s.
func digitsIn(s string) int {
	n := 0
	for n < len(s) && isDigit(s[n]) {
		n++
	}
	return n
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

func isLetter(r rune) bool { return unicode.IsLetter(r) || unicode.IsMark(r) }
