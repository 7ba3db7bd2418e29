package quantity

import (
	"math"
	"strconv"
	"strings"
)

// limit is the largest value accepted, typed or converted. It is far above any
// quantity of the trade.
const limit = 1e300

// number reads a number without a sign at the start of s: 12 000.5, 3/4, 6 1/2,
// 6-1/2. whole reports whether it is a whole number without a fraction or
// decimals; rest is the text behind it, without leading spaces. It returns an
// error, and zeros, if s does not start with a digit or a mark and a digit, if the
// marks do not fit the reader's, if a fraction is not proper, or if the number is
// too big.
func (p *parser) number(s string) (x float64, whole bool, rest string, err *ParseError) {
	literal, rest := cutLiteral(s)
	if strings.Trim(literal, ".,") == "" {
		return 0, false, "", errNoNumber.with("text", quote(p.text), "examples", p.examples())
	}
	digits, err := p.oneMark(literal)
	if err != nil {
		return 0, false, "", err
	}
	whole = digitsIn(digits) == len(digits)
	exponent := exponentIn(rest)
	x, bad := strconv.ParseFloat(digits+rest[:exponent], 64)
	if bad != nil || x > limit {
		return 0, false, "", errTooBig.with("text", quote(p.text))
	}
	if exponent > 0 {
		return x, false, skip(rest[exponent:]), nil
	}
	return p.fraction(x, whole, skip(rest))
}

// cutLiteral splits s behind its leading digits and marks; literal is "" if there
// are none. Groups of three digits may be separated by one space, which literal
// does not hold: 12 000. A group before a slash is the numerator of a fraction: 6
// 125/1000.
func cutLiteral(s string) (literal, rest string) {
	i := digitsIn(s)
	literal = s[:i]
	if 1 <= i && i <= 3 && s[0] != '0' {
		for i+4 <= len(s) && s[i] == ' ' && digitsIn(s[i+1:]) == 3 && !strings.HasPrefix(skip(s[i+4:]), "/") {
			literal += s[i+1 : i+4]
			i += 4
		}
	}
	end := i
	for end < len(s) && (isDigit(s[end]) || isMark(s[end])) {
		end++
	}
	return literal + s[i:end], s[end:]
}

// exponentIn returns the length in bytes of an exponent at the start of s: e5,
// E-3. It returns 0 if there is none.
func exponentIn(s string) int {
	if s == "" || (s[0] != 'e' && s[0] != 'E') {
		return 0
	}
	i := 1
	if i < len(s) && (s[i] == '-' || s[i] == '+') {
		i++
	}
	n := digitsIn(s[i:])
	if n == 0 {
		return 0
	}
	return i + n
}

// oneMark returns the literal, which holds digits, points and commas, with a point
// as its decimal mark. The mark that is not the reader's is an error with a hint,
// since its meaning is not guessed, and so is a second mark; the text is then "".
func (p *parser) oneMark(literal string) (string, *ParseError) {
	mark, other := ".", ","
	both, asDecimal, asGroups := errComma, errCommaDecimal, errCommaGroups
	if p.style.Mark == Comma {
		mark, other = ",", "."
		both, asDecimal, asGroups = errPoint, errPointDecimal, errPointGroups
	}
	marks, others := strings.Count(literal, mark), strings.Count(literal, other)
	decimal := strings.ReplaceAll(literal, other, mark)
	without := strings.ReplaceAll(literal, other, "")
	grouped := marks <= 1 && areGroups(literal, mark, other)
	switch {
	case others == 0 && marks <= 1:
		return strings.Replace(literal, mark, ".", 1), nil
	case others == 1 && marks == 0 && grouped:
		return "", both.with("text", literal, "decimal", decimal, "plain", without)
	case others == 1 && marks == 0:
		return "", asDecimal.with("decimal", decimal)
	case others > 0 && grouped:
		return "", asGroups.with("plain", without)
	}
	return "", errTwoMarks.with("text", quote(literal))
}

// areGroups reports whether other separates groups of exactly three digits in
// front of the decimal mark and nowhere else; the first group has one to three
// digits and does not begin with 0.
func areGroups(literal, mark, other string) bool {
	before, _, _ := strings.Cut(literal, mark)
	if strings.Count(before, other) != strings.Count(literal, other) {
		return false
	}
	groups := strings.Split(before, other)
	for i, g := range groups {
		if len(g) != 3 && (i > 0 || len(g) == 0 || len(g) > 3) {
			return false
		}
	}
	return groups[0][0] != '0'
}

// fraction reads what may follow a number x at the start of s: a slash and the
// denominator, or a fraction added to a whole number. s has no leading spaces;
// whole reports whether x is whole. It returns the value, whether it is whole, and
// the text behind it: x, whole and s if no fraction follows. It returns an error
// if x is not whole, if the added fraction is 1 or more, if a number but no
// fraction follows a dash, or if divide does.
func (p *parser) fraction(x float64, whole bool, s string) (float64, bool, string, *ParseError) {
	if strings.HasPrefix(s, "/") && digitsIn(skip(s[1:])) > 0 {
		if !whole {
			return 0, false, "", errFraction.with()
		}
		y, rest, err := p.divide(x, s)
		return y, false, rest, err
	}
	after, dash := strings.CutPrefix(s, "-")
	after = skip(after)
	n := digitsIn(after)
	if n == 0 {
		return x, whole, s, nil
	}
	upper, slash := after[:n], skip(after[n:])
	if !strings.HasPrefix(slash, "/") || digitsIn(skip(slash[1:])) == 0 {
		if dash {
			return 0, false, "", errDash.with("text", quote(p.text), "examples", p.examples())
		}
		return x, whole, s, nil
	}
	if !whole {
		return 0, false, "", errFraction.with()
	}
	num, _ := strconv.ParseFloat(upper, 64)
	part, rest, err := p.divide(num, slash)
	if err == nil && part >= 1 {
		err = errImproper.with()
	}
	return x + part, false, rest, err
}

// divide divides upper by the denominator at the start of s, which begins with a
// slash and at least one digit, and returns the text behind it without leading
// spaces. A denominator of 0, a number that is too big for a float64, and decimals
// or a second slash behind the denominator are errors; x is then 0 and rest "".
func (p *parser) divide(upper float64, s string) (x float64, rest string, err *ParseError) {
	s = skip(s[1:])
	n := digitsIn(s)
	lower, bad := strconv.ParseFloat(s[:n], 64)
	rest = s[n:]
	switch {
	case bad != nil || math.IsInf(upper, 0):
		return 0, "", errTooBig.with("text", quote(p.text))
	case lower == 0:
		return 0, "", errZeroFraction.with()
	case rest != "" && (isMark(rest[0]) && digitsIn(rest[1:]) > 0 || strings.HasPrefix(skip(rest), "/")):
		return 0, "", errFraction.with()
	}
	return upper / lower, skip(rest), nil
}
