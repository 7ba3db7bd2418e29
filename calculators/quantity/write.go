package quantity

import (
	"math"
	"strconv"
	"strings"
)

// thinSpace separates groups of three digits; it is a non-breaking space.
const thinSpace = "\u202F"

// noValue is written for NaN and infinities, which callers refuse before.
const noValue = "—"

// Format returns a value, si in SI, rounded as the display says, with its unit: 9'
// 0", 2.75 m, 150 lb/ft³. Parse reads back the value of Round. A Decimal display
// without a step gives whole numbers in full and others with up to 7 significant
// digits. NaN and infinities give noValue.
func Format(si float64, display Display, style Style) string {
	u, sc := display.unit(style.System), display.In(style.System)
	if math.IsNaN(si) || math.IsInf(si, 0) {
		return noValue
	}
	if sc.Form != Decimal {
		if inches, ok := wholeSteps(si, sc); ok {
			return tape(inches, sc.Form)
		}
		sc = UnitDisplay{}
	}
	x, decimals := rounded(inUnit(si, u), sc)
	return withUnit(written(x, decimals, style.Mark), u)
}

// Exact returns a value, si in SI, unrounded, with up to 7 significant digits, as
// a decimal number in the display's unit: 10.54167 ft. NaN and infinities give
// noValue.
func Exact(si float64, display Display, style Style) string {
	u := display.unit(style.System)
	if math.IsNaN(si) || math.IsInf(si, 0) {
		return noValue
	}
	return withUnit(written(inUnit(si, u), -1, style.Mark), u)
}

// withUnit returns a number with the unit behind it; % and ° follow it without a
// space. A unit without a symbol leaves the number unchanged.
func withUnit(number string, u Unit) string {
	switch u.Symbol {
	case "":
		return number
	case "%", "°":
		return number + u.Symbol
	}
	return number + " " + u.Symbol
}

// written returns a number with a fixed number of decimals, or, for -1, with up to
// 7 significant digits and no zeros at the end. A whole part of five or more
// digits is grouped in threes. Zero has no sign.
func written(x float64, decimals int, mark Mark) string {
	var digits string
	if decimals >= 0 {
		digits = strconv.FormatFloat(math.Abs(x), 'f', decimals, 64)
	} else {
		digits = shortest(math.Abs(x))
	}
	whole, part, hasPart := strings.Cut(digits, ".")
	if strings.IndexByte(whole, 'e') < 0 {
		whole = grouped(whole)
	}
	switch {
	case hasPart && mark == Comma:
		whole += "," + part
	case hasPart:
		whole += "." + part
	}
	if x < 0 && strings.Trim(digits, "0.") != "" {
		return "-" + whole
	}
	return whole
}

// shortest returns x, at least 0, with up to 7 significant digits and a decimal
// point; very large and very small numbers have an exponent.
func shortest(x float64) string {
	x = reread(strconv.FormatFloat(x, 'e', significant-1, 64))
	if x != 0 && (x < 1e-6 || x >= tooFine) {
		return strconv.FormatFloat(x, 'e', -1, 64)
	}
	return strconv.FormatFloat(x, 'f', -1, 64)
}

// grouped returns digits in groups of three, separated by thin spaces, if there
// are five or more; fewer are unchanged.
func grouped(digits string) string {
	if len(digits) < 5 {
		return digits
	}
	first := len(digits) % 3
	if first == 0 {
		first = 3
	}
	var b strings.Builder
	b.WriteString(digits[:first])
	for i := first; i < len(digits); i += 3 {
		b.WriteString(thinSpace)
		b.WriteString(digits[i : i+3])
	}
	return b.String()
}
