package search

import "strings"

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
