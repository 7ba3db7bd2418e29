package readability

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// abbreviations lists words whose final point does not end a sentence.
var abbreviations = map[string]bool{
	"e.g": true, "i.e": true, "approx": true, "no": true, "nos": true, "p": true, "pp": true, "vs": true, "fig": true,
	"eq": true, "ed": true, "sec": true, "min": true, "max": true, "dia": true, "u.s": true, "aprox": true,
	"núm": true, "pág": true, "ej": true, "máx": true, "mín": true, "pulg": true,
}

// closers may follow the mark that ends a sentence.
const closers = "\"'”’»)"

// Sentences splits a block of text into sentences, without space at their ends. A
// sentence ends at a point, question mark or exclamation mark before a space and a
// capital or digit, and at the end of the block. The point of an abbreviation does
// not end a sentence. An empty block gives nil.
func Sentences(block string) []string {
	var all []string
	start := 0
	for i := 0; i < len(block); i++ {
		if strings.IndexByte(".!?", block[i]) < 0 || !endsHere(block, start, i) {
			continue
		}
		end := len(block) - len(strings.TrimLeft(block[i+1:], closers))
		all = appendText(all, block[start:end])
		start = end
	}
	return appendText(all, block[start:])
}

// appendText appends s, without space at its ends, to all; an empty s is not
// appended.
func appendText(all []string, s string) []string {
	if s = strings.TrimSpace(s); s != "" {
		return append(all, s)
	}
	return all
}

// endsHere reports whether the mark at byte i of s ends the sentence that begins
// at byte start.
func endsHere(s string, start, i int) bool {
	rest := strings.TrimLeft(s[i+1:], closers)
	after := strings.TrimLeft(rest, " \n")
	if after == "" {
		return true
	}
	if len(after) == len(rest) {
		return false
	}
	after = strings.TrimLeft(after, `"'“‘«(¿¡`)
	r, _ := utf8.DecodeRuneInString(after)
	if !unicode.IsUpper(r) && !unicode.IsDigit(r) {
		return false
	}
	if s[i] != '.' {
		return true
	}
	from := strings.LastIndexAny(s[start:i], " (\n") + 1 + start
	return !abbreviations[strings.ToLower(s[from:i])]
}

// Words returns the number of words in a sentence: the parts between white space
// that hold a letter or digit. A number counts as a word.
func Words(sentence string) int {
	n := 0
	for _, w := range strings.Fields(sentence) {
		if strings.ContainsFunc(w, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }) {
			n++
		}
	}
	return n
}

// gradedWords returns the words of a sentence that count for a grade, in lower
// case: without numbers and without names, which are capitalized words after the
// first. The parts of a compound are separate words.
func gradedWords(sentence string) []string {
	var words []string
	first := true
	for _, w := range strings.FieldsFunc(sentence,
		func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '\'' && r != '’' }) {
		w = strings.Trim(w, "'’")
		if w == "" {
			continue
		}
		r, _ := utf8.DecodeRuneInString(w)
		named := unicode.IsUpper(r) && !first
		first = false
		if named || strings.ContainsFunc(w, unicode.IsDigit) {
			continue
		}
		words = append(words, strings.ToLower(w))
	}
	return words
}
