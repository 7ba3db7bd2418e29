package search

import (
	"slices"
	"strings"
	"testing"
)

// TestStopWords: the lists must be sorted for the binary search, and folded.
func TestStopWords(t *testing.T) {
	for _, lang := range []string{"en", "es-MX"} {
		words := stopWords(lang)
		if len(words) < 50 || !slices.IsSorted(words) {
			t.Errorf("%s: %d words, sorted %v", lang, len(words), slices.IsSorted(words))
		}
		if got := wordsOf(strings.Join(words, " ")); !slices.Equal(got, words) {
			t.Errorf("%s: not folded: %v", lang, got)
		}
	}
	if stopWords("fr") != nil {
		t.Error("an unknown language has stop words")
	}
}
