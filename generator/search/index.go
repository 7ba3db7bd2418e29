package search

import (
	"slices"
	"strings"
)

// Index is an opened index. It is read-only and safe for concurrent use.
type Index struct {
	stops    []string // sorted
	pages    []page
	sections []section
	words    []string  // every word, sorted
	shared   []int     // bytes each word shares with the one before
	family   []int32   // word → the first word with the same stem
	kin      [][]int32 // family → its words, where it has more than one
	places   [][]place // word → where it is
	endings  []string  // what the words of families differ in, shortest first
	synonyms [][]phrase
	leads    [][]member // family → the synonyms that begin with it
}

type page struct {
	url, title, words, kind string
	second                  bool
}

type section struct {
	page                  int
	anchor, heading, lead string
}

// place says how much a word weighs in a section, before saturation.
type place struct {
	section int32
	weight  float64
}

// phrase is one synonym: the families of its words.
type phrase []int32

// member points at one phrase of a group of synonyms.
type member struct{ group, phrase int }

// find returns the number of a word, or -1.
func (x *Index) find(word string) int32 {
	if i, ok := slices.BinarySearch(x.words, word); ok {
		return int32(i)
	}
	return -1
}

// kinOf returns the words of one family.
func (x *Index) kinOf(family int32) []int32 {
	if kin := x.kin[family]; kin != nil {
		return kin
	}
	return []int32{family}
}

// begin returns the half-open range of the sorted words that begin with a
// prefix; from equals to where there is none.
func (x *Index) begin(prefix string) (from, to int32) {
	i, _ := slices.BinarySearch(x.words, prefix)
	j := i
	for j < len(x.words) && strings.HasPrefix(x.words[j], prefix) {
		j++
	}
	return int32(i), int32(j)
}

// url is the address of a section.
func (x *Index) url(s section) string {
	if s.anchor == "" {
		return x.pages[s.page].url
	}
	return x.pages[s.page].url + "#" + s.anchor
}
