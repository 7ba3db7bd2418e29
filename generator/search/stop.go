package search

import (
	"slices"
	"strings"
)

// stopWords returns the sorted stop words of a language, which the index omits;
// nil for a language without a list. A query omits them too, unless the last word
// is one, because it may be the beginning of another word (but, button). Words of
// place and order (off, up, before, between, without) are no stop words here,
// because they distinguish procedures. The lists are common ones, shortened by
// hand.
func stopWords(lang string) []string {
	base, _, _ := strings.Cut(lang, "-")
	switch base {
	case "en":
		return split(stopEN, ' ')
	case "es":
		return split(stopES, ' ')
	}
	return nil
}

// Both lists are sorted and folded.
const stopEN = "a also an and are as at be been being but by can could did do does for from had " +
	"has have he her his how i if in into is it its me my no not of on or our she " +
	"should so such than that the their them then there these they this those to was " +
	"we were what when where which who why will with would you your"

const stopES = "a al como con cual cuando de del desde donde e el ella ellas ellos en era es esa " +
	"ese eso esta estas este esto estos fue ha han hay la las le les lo los mas me mi " +
	"muy ni no nos o para pero por porque que quien se ser si son su sus tan te tu u " +
	"un una unas uno unos y ya"

// isStop reports whether a sorted list of stop words holds a word.
func isStop(stops []string, word string) bool {
	_, ok := slices.BinarySearch(stops, word)
	return ok
}

// dropStops returns the words that are no stop words, in order; nil if there are
// none.
func dropStops(words, stops []string) []string {
	var rest []string
	for _, w := range words {
		if !isStop(stops, w) {
			rest = append(rest, w)
		}
	}
	return rest
}

// split returns the parts of a text between separators, at least one; an empty
// text has one empty part. It does what strings.Split does; the functions of that
// kind in package strings would add several kilobytes to the module.
func split(text string, separator byte) []string {
	var parts []string
	for {
		i := strings.IndexByte(text, separator)
		if i < 0 {
			return append(parts, text)
		}
		parts = append(parts, text[:i])
		text = text[i+1:]
	}
}

// wordsOf returns the words of a text in order, folded as Tokens returns them.
func wordsOf(text string) []string {
	tokens := Tokens(text)
	words := make([]string, len(tokens))
	for i, t := range tokens {
		words[i] = t.Word
	}
	return words
}
