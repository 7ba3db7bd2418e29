package search

import (
	"slices"
	"strings"
)

// Index is an opened index. It is read-only and safe for concurrent use.
type Index struct {
	stops         []string // sorted
	pages         []page
	sections      []section
	words         []string    // every word, sorted
	shared        []int       // by word: bytes shared with the previous word
	family        []int32     // by word: its family, which is the first word with the same stem
	familyWords   [][]int32   // by family: its words; nil where it has only one
	postings      [][]posting // by word
	endings       []string    // endings in which the words of families differ, shortest first
	synonyms      [][]phrase  // by group
	synonymStarts [][]member  // by family: the synonyms whose first word is in it
}

type page struct {
	url, title, words, kind string
	secondary               bool
}

type section struct {
	page                  int
	anchor, heading, lead string
}

// posting is the weighted frequency of a word in a section, before saturation.
type posting struct {
	section int32
	weight  float64
}

// phrase is one synonym: the families of its words.
type phrase []int32

// member identifies a phrase of a group of synonyms.
type member struct{ group, phrase int }

// find returns the index of a word in the vocabulary, or -1. The word must be
// folded.
func (x *Index) find(word string) int32 {
	if i, ok := slices.BinarySearch(x.words, word); ok {
		return int32(i)
	}
	return -1
}

// wordsOfFamily returns the words of one family, in order, by their indexes. The
// caller must not change them.
func (x *Index) wordsOfFamily(family int32) []int32 {
	if words := x.familyWords[family]; words != nil {
		return words
	}
	return []int32{family}
}

// prefixRange returns the half-open range of the sorted words that begin with a
// prefix; from equals to if there is none.
func (x *Index) prefixRange(prefix string) (from, to int32) {
	i, _ := slices.BinarySearch(x.words, prefix)
	j := i
	for j < len(x.words) && strings.HasPrefix(x.words[j], prefix) {
		j++
	}
	return int32(i), int32(j)
}

// url returns the address of a section, with its #anchor if it has one.
func (x *Index) url(s section) string {
	if s.anchor == "" {
		return x.pages[s.page].url
	}
	return x.pages[s.page].url + "#" + s.anchor
}
