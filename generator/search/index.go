package search

import (
	"slices"
	"strings"
)

// Index is an opened index. It is read-only and safe for concurrent use.
type Index struct {
	small       []smallWord // sorted by word
	pages       []page
	sections    []section
	words       []string    // every word, sorted
	shared      []int       // by word: bytes shared with the previous word
	family      []int32     // by word: its family, which is the first word with the same stem
	familyWords [][]int32   // by family: its words; nil where it has only one
	rarity      []float64   // by family: its inverse page frequency
	inPage      [][]posting // by word: its weighted frequency in the title and the header words of pages
	inText      [][]posting // by word: its weighted frequency in headings and texts of sections
	endings     []string    // endings in which the words of families differ, shortest first
	groups      []group     // of the thesaurus
	starts      [][]member  // by family: the phrases of groups whose first word is in it
	names       []name
	named       [][]int32 // by family: the names that contain it
	asks        []ask
}

type page struct {
	url, title, words, kind string
	urgent                  bool
	from, to                int   // its sections
	firstName, lastName     int32 // its names, without the last
}

type section struct {
	page                  int
	anchor, heading, lead string
}

// posting is the weighted frequency of a word in a page or a section, before
// saturation.
type posting struct {
	at     int32
	weight float64
}

// phrase is one entry of the thesaurus: the families of its words, small words left
// out.
type phrase []int32

// group is one line of the thesaurus. A query with a phrase of from also finds the
// phrases of to. Where all mean the same, both hold all of them.
//
// A phrase of which small words leave one word (gone off) is that word only in a
// query with the whole phrase: exact holds its words, and is nil for other phrases.
type group struct {
	from, to []phrase
	exact    [][]string // by phrase of from
}

// isMutual reports whether all phrases of a group mean the same.
func (g group) isMutual() bool { return len(g.from) == len(g.to) && &g.from[0] == &g.to[0] }

// member identifies a phrase of the first part of a group.
type member struct{ group, phrase int }

// name is a title, a heading or an entry of the header words, which is compared with
// the query as a whole.
type name struct {
	page, section int32
	field         int
	families      []int32
	total         float64 // sum of the rarity of its families
}

// ask is a phrase of small words by which a query asks for a kind of page, such as
// "how many" for a calculator. Its words are not stemmed.
type ask struct {
	kind  string
	words []string
}

// smallWord is a word that says little about what is wanted, with its weight between
// 0 and 1. A word of weight 0 is not in the index.
type smallWord struct {
	word   string
	weight float64
}

// smallWeight returns the weight of a word: 1 unless it is a small word.
func smallWeight(small []smallWord, word string) float64 {
	i, ok := slices.BinarySearchFunc(small, word, func(s smallWord, w string) int { return strings.Compare(s.word, w) })
	if !ok {
		return 1
	}
	return small[i].weight
}

// isStop reports whether a word has no weight.
func isStop(small []smallWord, word string) bool { return smallWeight(small, word) == 0 }

// dropStops returns the words that have a weight, in order; nil if there are none.
func dropStops(words []string, small []smallWord) []string {
	var rest []string
	for _, w := range words {
		if !isStop(small, w) {
			rest = append(rest, w)
		}
	}
	return rest
}

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
