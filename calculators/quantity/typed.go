package quantity

import "strings"

// asciiSigns replaces the typographic signs that phones, keyboards and other
// programs insert by ASCII ones. A fraction character becomes a space and a
// fraction with a slash, so that 6½ reads as 6 1/2.
var asciiSigns = strings.NewReplacer(
	"\u00A0", " ", "\u2007", " ", "\u2008", " ", "\u2009", " ", "\u200A", " ", "\u202F", " ",
	"\t", " ", "\r", " ", "\n", " ",
	"‘", "'", "’", "'", "‛", "'", "′", "'", "´", "'", "`", "'", "ʹ", "'", "ʼ", "'",
	"“", `"`, "”", `"`, "„", `"`, "‟", `"`, "″", `"`, "ʺ", `"`,
	"\u2010", "-", "\u2011", "-", "\u2012", "-", "–", "-", "—", "-", "−", "-",
	"⁄", "/", "∕", "/",
	"½", " 1/2", "⅓", " 1/3", "⅔", " 2/3", "¼", " 1/4", "¾", " 3/4",
	"⅕", " 1/5", "⅖", " 2/5", "⅗", " 3/5", "⅘", " 4/5", "⅙", " 1/6", "⅚", " 5/6",
	"⅐", " 1/7", "⅛", " 1/8", "⅜", " 3/8", "⅝", " 5/8", "⅞", " 7/8", "⅑", " 1/9", "⅒", " 1/10",
)

// normalized returns typed text with the signs of asciiSigns replaced by ASCII
// ones and without spaces around it. Two apostrophes are an inch mark.
func normalized(text string) string {
	text = strings.ReplaceAll(asciiSigns.Replace(text), "''", `"`)
	return strings.TrimSpace(text)
}

// skip returns s without leading spaces.
func skip(s string) string { return strings.TrimLeft(s, " ") }

// digitsIn returns the number of ASCII digits at the start of s.
func digitsIn(s string) int {
	n := 0
	for n < len(s) && isDigit(s[n]) {
		n++
	}
	return n
}

func isDigit(c byte) bool { return '0' <= c && c <= '9' }

func isMark(c byte) bool { return c == '.' || c == ',' }
