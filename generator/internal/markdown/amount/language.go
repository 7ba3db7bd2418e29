package amount

import "strings"

// wording is what a language says around amounts. The entries have their
// spaces.
type wording struct {
	joins        []string // between two numbers of one unit
	and, between []string // "between 2 and 3 ft"
	about        []string // before a counterpart in parentheses
	// Words before and after degrees that make them a rise or a fall, and
	// words that leave it open.
	riseBefore, riseAfter, doubtBefore, doubtAfter []string
}

// wordings by language; a language that is not here gets the signs only.
var wordings = map[string]wording{
	"en": {
		joins: []string{" to ", " or ", " by "},
		and:   []string{" and "}, between: []string{"between "},
		about: []string{"about ", "approx. ", "roughly ", "≈ ", "≈", "~"},
		riseBefore: []string{
			"within ",
			"rise of ",
			"drop of ",
			"fall of ",
			"change of ",
			"difference of ",
			"gap of ",
			"swing of ",
		},
		riseAfter: []string{
			" per hour",
			" per h",
			" per day",
			" a day",
			" an hour",
			" warmer",
			" colder",
			" cooler",
			" hotter",
			" higher",
			" lower",
			" apart",
			" difference",
			" rise",
			" drop",
			" change",
			" in 24 h",
			" in one hour",
			" in an hour",
			" in any 24 h",
			" in any hour",
		},
		doubtBefore: []string{"by ", "up ", "down "},
		doubtAfter:  []string{" per ", " over ", " under ", " above ", " below ", " in any "},
	},
	"es": {
		joins: []string{" a ", " o ", " por "},
		and:   []string{" y "}, between: []string{"entre "},
		about:      []string{"unos ", "unas ", "aprox. ", "≈ ", "≈", "~"},
		riseBefore: []string{"aumento de ", "descenso de ", "caída de ", "subida de ", "diferencia de ", "cambio de "},
		riseAfter: []string{
			" por hora",
			" por h",
			" por día",
			" al día",
			" de diferencia",
			" en 24 h",
			" en una hora",
		},
		doubtBefore: []string{"en ", "hasta en "},
		doubtAfter:  []string{" por ", " más", " menos", " sobre ", " bajo ", " en cualquier "},
	},
}

// wordingOf returns the wording of a language by its code; an empty one for a
// language that is not known.
func wordingOf(lang string) wording {
	base, _, _ := strings.Cut(lang, "-")
	return wordings[base]
}

// degrees is the meaning of a degree sign.
type degrees uint8

const (
	point  degrees = iota // a point on the scale
	rise                  // a rise or a fall
	either                // the words leave it open
)

// degrees returns the meaning of the temperature a from the words around it: 10 °F
// warmer is a rise, not -12 °C. It returns either if the words leave it open, and
// the amount then keeps the author's unit alone. The certain way to write a rise
// is 10 F°.
func (f *Finder) degrees(text string, a one) degrees {
	before, after := text[:a.start], text[a.end:]
	bare := strings.TrimRight(before, " ")
	switch {
	case strings.HasSuffix(bare, "±"), strings.HasSuffix(bare, "+/-"),
		hasSuffixFold(before, f.words.riseBefore), goesOn(after, f.words.riseAfter):
		return rise
	case hasSuffixFold(before, f.words.doubtBefore), goesOn(after, f.words.doubtAfter):
		return either
	}
	return point
}

// goesOn reports whether text starts with one of the words, in the same case. A
// line feed in text passes for a space.
func goesOn(text string, words []string) bool {
	for _, w := range words {
		if hasPrefix(text, w) {
			return true
		}
	}
	return false
}

// hasSuffixFold reports whether text ends with one of the words, regardless of
// case. Before the word there must be the start, a space, a line feed or an
// opening parenthesis; a line feed in text passes for a space.
func hasSuffixFold(text string, words []string) bool {
	for _, w := range words {
		if len(text) < len(w) {
			continue
		}
		end := strings.ReplaceAll(text[len(text)-len(w):], "\n", " ")
		if strings.EqualFold(end, w) &&
			(len(text) == len(w) || strings.IndexByte(" \n(", text[len(text)-len(w)-1]) >= 0) {
			return true
		}
	}
	return false
}
