package search

import "strings"

// Weights of the ways in which a word of the text can match a word of the query.
// The steps are our choice (common practice).
const (
	weightExact      = 1.0
	weightStem       = 0.95 // another form of the same word
	weightEnding     = 0.85 // an unknown form of a known word
	weightDirected   = 0.8  // the manual's word for what was typed; times the weight where that is inexact
	weightSound      = 0.75 // another spelling that sounds alike
	weightPrefix     = 0.7  // a word that begins with it
	weightSynonym    = 0.6  // a word with the same meaning, likewise
	weightTypo       = 0.4  // one edit away
	weightTypo2      = 0.3  // two edits away
	weightPrefixTypo = 0.2  // a word that begins with one at one or two edits
	weightApart      = 0.8  // of a phrase whose words are in the query, but not in its order
)

// Shares of the weight of a word of the query.
const (
	shareStop     = 0.2  // a word without weight at the end, taken as the beginning of another word
	shareAmount   = 0.25 // an amount, such as 40 ft, beside words
	shareFraction = 0.6  // a fraction, such as 3/8, beside words
)

// Limits of a query and of its expansion.
const (
	maxQueryBytes = 1000
	maxTerms      = 16
	minBase       = 3 // letters before an ending
	maxEnding     = 5 // bytes of an ending
	minSynonym    = 3 // letters of a prefix that the thesaurus is asked for
	minStop       = 3 // letters of a word without weight that may begin another
)

// term is one word of the query with the words of the index that match it.
type term struct {
	word    string
	stop    bool       // a word without weight: it adds to the score, but no page needs it
	share   float64    // of its weight: that of a small word or an amount, else 1
	words   list       // words of the index with their weights
	phrases []weighted // phrases of the thesaurus, which count where all their words occur
	weight  float64    // rarity times share; 0 until the pages are ranked
}

// weighted is a phrase with its weight.
type weighted struct {
	phrase
	weight float64
}

// add adds the word with this index. If it is listed already, the greater weight
// is used.
func (t *term) add(word int32, weight float64) { t.words = t.words.with(word, weight) }

// list holds words or families with their weights, sorted by ID.
type list []listed

type listed struct {
	id     int32
	weight float64
}

// at returns the index of an id in the list, which is sorted by id. If the id is
// not listed, it returns the index at which it would be inserted.
func (l list) at(id int32) int {
	from, to := 0, len(l)
	for from < to {
		if mid := (from + to) / 2; l[mid].id < id {
			from = mid + 1
		} else {
			to = mid
		}
	}
	return from
}

// weight returns the weight of an ID; 0 if it is not listed.
func (l list) weight(id int32) float64 {
	if i := l.at(id); i < len(l) && l[i].id == id {
		return l[i].weight
	}
	return 0
}

// with returns the list with an ID added, and may change l. If it is listed
// already, the greater weight is used.
func (l list) with(id int32, weight float64) list {
	i := l.at(id)
	if i < len(l) && l[i].id == id {
		l[i].weight = max(l[i].weight, weight)
		return l
	}
	l = append(l, listed{})
	copy(l[i+1:], l[i:])
	l[i] = listed{id, weight}
	return l
}

// addPhrase adds a phrase of several words. If it is listed already, the greater
// weight is used.
func (t *term) addPhrase(p phrase, weight float64) {
	for i, other := range t.phrases {
		if &other.phrase[0] == &p[0] {
			t.phrases[i].weight = max(other.weight, weight)
			return
		}
	}
	t.phrases = append(t.phrases, weighted{p, weight})
}

// parse returns the terms of a query, in its order; none for a query without
// words.
func (x *Index) parse(query string) []term {
	words := x.queryWords(query)
	terms := make([]term, len(words))
	amounts := 0
	for i, w := range words {
		weight := smallWeight(x.small, w)
		terms[i] = term{word: w, stop: weight == 0, share: weight}
		if terms[i].stop {
			terms[i].share = shareStop
		}
		if isAmount(w) {
			amounts++
		}
		x.expand(&terms[i], i == len(words)-1)
	}
	for i := range terms {
		switch {
		case amounts == len(terms) || !isAmount(terms[i].word):
		case strings.IndexByte(terms[i].word, '/') >= 0:
			terms[i].share = shareFraction
		default:
			terms[i].share = shareAmount
		}
	}
	x.addThesaurus(query[:min(len(query), maxQueryBytes)], terms)
	return terms
}

// isAmount reports whether a word is a number with or without a unit. A size (2x6)
// and a bar (#5, 10M) are names.
func isAmount(word string) bool {
	if !isDigit(word[0]) {
		return false
	}
	i := 0
	for i < len(word) && !isLetter(word[i]) {
		i++
	}
	return i == len(word) || unitOf(word[i:]) != ""
}

// queryWords returns the words of the first maxQueryBytes bytes of a query without
// stop words, at most maxTerms. The last word is included even if it is one. A
// number with an attached unit becomes two words if the index has only the unit.
func (x *Index) queryWords(query string) []string {
	query = query[:min(len(query), maxQueryBytes)]
	var words []string
	all := wordsOf(query)
	for i, w := range all {
		if isStop(x.small, w) && i < len(all)-1 {
			continue
		}
		if number, unit := splitUnit(w); x.find(w) < 0 && x.find(unit) >= 0 {
			words = append(words, number)
			w = unit
		}
		words = append(words, w)
	}
	return words[:min(len(words), maxTerms)]
}

// splitUnit splits a number with an attached unit, such as 600psf, which the texts
// write with a space. A single letter is no unit: 15M is a bar size. Both results
// are "" for any other word.
func splitUnit(word string) (number, unit string) {
	i := 0
	for i < len(word) && !isLetter(word[i]) {
		i++
	}
	if i == 0 || i > len(word)-2 || word[0] == '#' || !stemmable(word[i:]) {
		return "", ""
	}
	return word[:i], word[i:]
}

// expand adds the words of the index that match one word of the query to t. last
// means that it is the last word, which may be unfinished.
func (x *Index) expand(t *term, last bool) {
	if t.stop {
		if len(t.word) >= minStop {
			x.addPrefixed(t, weightPrefix)
		}
		return
	}
	id := x.find(t.word)
	if id >= 0 {
		for _, k := range x.wordsOfFamily(x.family[id]) {
			t.add(k, weightStem)
		}
		t.add(id, weightExact)
	}
	if !stemmable(t.word) {
		x.addNumber(t, last)
		return
	}
	ended := id < 0 && x.addEndings(t)
	if last || id < 0 {
		x.addPrefixed(t, weightPrefix)
	}
	if id < 0 && !ended {
		x.addTypos(t, last)
	}
}

// addPrefixed adds the words that begin with the term to it, each with the weight.
func (x *Index) addPrefixed(t *term, weight float64) {
	for from, to := x.prefixRange(t.word); from < to; from++ {
		t.add(from, weight)
	}
}

// addNumber adds, for a number with a unit, the number without it and, for a number
// without, the number with any unit or a bar mark. The last word also matches as a
// prefix. Numbers are not matched by edit distance.
func (x *Index) addNumber(t *term, last bool) {
	forms := []string{"#" + t.word}
	for _, unit := range []string{"in", "ft", "f", "c", "mm", "cm"} {
		if bare, ok := strings.CutSuffix(t.word, unit); ok {
			forms = []string{bare}
			break
		}
		forms = append(forms, t.word+unit)
	}
	for _, form := range forms {
		if id := x.find(form); id >= 0 {
			t.add(id, weightStem)
		}
	}
	// A known word that ends in a letter is complete: 10M is a bar, not a prefix of
	// 10 mm.
	whole := x.find(t.word) >= 0 && isLetter(t.word[len(t.word)-1])
	if last && !whole {
		x.addPrefixed(t, weightPrefix)
	}
}

// addEndings adds the known words that differ from an unknown word only in an
// ending of this index: for pumped, pump and pumping. It uses the longest common
// beginning. It returns false if it found no word.
func (x *Index) addEndings(t *term) bool {
	for _, end := range x.endings {
		base, ok := strings.CutSuffix(t.word, end)
		if !ok || len(base) < minBase {
			continue
		}
		found := false
		for from, to := x.prefixRange(base); from < to; from++ {
			if x.isEnding(x.words[from][len(base):]) {
				t.add(from, weightEnding)
				found = true
			}
		}
		if found {
			return true
		}
	}
	return false
}

// isEnding reports whether end is one of the endings of the index.
func (x *Index) isEnding(end string) bool {
	for _, e := range x.endings {
		if e == end {
			return true
		}
	}
	return false
}
