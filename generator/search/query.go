package search

import "strings"

// Weights of the ways in which a word of the text can answer a word of the
// query. Their order is the order of trust; the size of the steps is our choice
// (common practice).
const (
	weightExact   = 1.0
	weightStem    = 0.9 // another form of the same word
	weightEnding  = 0.8 // an unknown form of a known word
	weightPrefix  = 0.7 // the word begun
	weightSynonym = 0.5 // a trade word with the same meaning; times the weight above where the query is inexact
	weightTypo    = 0.3 // one edit away
	weightTypo2   = 0.2 // two edits away
	weightTypoing = 0.1 // begun and mistyped
	weightStop    = 0.3 // a stop word at the end, taken as the beginning of another word
)

// Limits of what is read of a query, and of what is guessed from it.
const (
	maxQueryBytes = 1000
	maxTerms      = 16
	minBase       = 3 // letters before a learnt ending
	maxEnding     = 5
	minSynonym    = 3 // letters of a begun word before its synonyms are offered
)

// term is what one word of the query may mean.
type term struct {
	word    string
	stop    bool       // a stop word: it adds to the score, but no section needs it
	words   list       // words of the index with their weights
	phrases []weighted // synonyms of several words, which count where all their words occur
}

// weighted is one synonym with its weight.
type weighted struct {
	member
	weight float64
}

// add notes a word; of several reasons for it the best counts.
func (t *term) add(word int32, weight float64) { t.words = t.words.with(word, weight) }

// list holds words or families with their weights, sorted by number.
type list []listed

type listed struct {
	id     int32
	weight float64
}

// at returns the index of an id in the list, which is sorted by id. Where the id
// is not listed it returns the index at which it would be inserted.
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

// weight returns the weight of a number, or 0.
func (l list) weight(id int32) float64 {
	if i := l.at(id); i < len(l) && l[i].id == id {
		return l[i].weight
	}
	return 0
}

// with adds a number; where it is listed, the greater weight stays.
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

// addPhrase notes a synonym of several words; of several reasons for it the
// best counts.
func (t *term) addPhrase(m member, weight float64) {
	for i, p := range t.phrases {
		if p.member == m {
			t.phrases[i].weight = max(p.weight, weight)
			return
		}
	}
	t.phrases = append(t.phrases, weighted{m, weight})
}

// parse turns a query into terms.
func (x *Index) parse(query string) []term {
	words := x.queryWords(query)
	terms := make([]term, len(words))
	for i, w := range words {
		terms[i] = term{word: w, stop: isStop(x.stops, w)}
		x.expand(&terms[i], i == len(words)-1)
	}
	x.addSynonyms(terms)
	return terms
}

// queryWords returns the words to look for: without stop words, but always
// with the last.
func (x *Index) queryWords(query string) []string {
	query = query[:min(len(query), maxQueryBytes)]
	var words []string
	all := wordsOf(query)
	for i, w := range all {
		if isStop(x.stops, w) && i < len(all)-1 {
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

// splitUnit parts 600psf, which the text writes apart. One letter is no unit
// here: 15M is a bar, and not 15 of anything.
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

// expand collects the words of the index that answer one word of the query.
func (x *Index) expand(t *term, last bool) {
	if t.stop {
		x.addBegun(t, weightStop)
		return
	}
	id := x.find(t.word)
	if id >= 0 {
		for _, k := range x.kinOf(x.family[id]) {
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
		x.addBegun(t, weightPrefix)
	}
	if id < 0 && !ended {
		x.addTypos(t, last)
	}
}

// addBegun finds the words that begin with the term.
func (x *Index) addBegun(t *term, weight float64) {
	for from, to := x.begin(t.word); from < to; from++ {
		t.add(from, weight)
	}
}

// addNumber finds a number without its unit and, for a bare number, with any
// unit or bar mark. Numbers are never completed unless last, never corrected.
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
	// 10M is a bar that these pages know, and no beginning of 10 mm.
	whole := x.find(t.word) >= 0 && isLetter(t.word[len(t.word)-1])
	if last && !whole {
		x.addBegun(t, weightPrefix)
	}
}

// addEndings finds known words that differ from an unknown one only in an
// ending that other words of these pages take: pumped, where the pages say
// pump and pumping. The longest common part wins.
func (x *Index) addEndings(t *term) bool {
	for _, end := range x.endings {
		base, ok := strings.CutSuffix(t.word, end)
		if !ok || len(base) < minBase {
			continue
		}
		found := false
		for from, to := x.begin(base); from < to; from++ {
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

func (x *Index) isEnding(end string) bool {
	for _, e := range x.endings {
		if e == end {
			return true
		}
	}
	return false
}
