package search

import (
	"math"
	"slices"
)

// Constants of BM25F (Robertson and Zaragoza, The Probabilistic Relevance
// Framework: BM25 and Beyond, Foundations and Trends in Information Retrieval
// 3(4), 2009; formula and ranges from memory). They give 1.2 < k1 < 2 and
// 0.5 < b < 0.8 as reasonable in many circumstances; 1.2 and 0.75 are the
// usual pair. The field weights are our
// choice (common practice): a title counts for five mentions. Header words
// are a list, not prose, so their length is not held against them; headings
// and titles are short anyway.
const saturation = 1.2 // k1

var (
	fieldWeight = [fieldCount]float64{inTitle: 5, inHeading: 3, inWords: 2, inText: 1}        // v
	fieldNorm   = [fieldCount]float64{inTitle: 0.3, inHeading: 0.3, inWords: 0, inText: 0.75} // b
)

// secondShare is what counts of the score of a page that says again what
// another says (common practice).
const secondShare = 0.6

// The first results show at most perPage sections of one page.
const (
	firstHits = 10
	perPage   = 2
)

// Hit is one section found.
type Hit struct {
	URL     string  // address with #anchor
	Title   string  // title of the page
	Section string  // heading, or empty above the first
	Kind    string  // kind of page, as given to Build
	Excerpt string  // opening of the section; found words between \x01 and \x02
	Score   float64 // BM25F; sections with every word of the query come first regardless of their score
}

// Find returns the best sections for a query, at most limit.
func (x *Index) Find(query string, limit int) []Hit {
	terms := x.parse(query)
	ranks := x.rank(terms)
	ranks = x.spread(ranks, max(limit, 0))
	marks := marksOf(x, terms)
	hits := make([]Hit, len(ranks))
	for i, r := range ranks {
		s := x.sections[r.section]
		p := x.pages[s.page]
		hits[i] = Hit{x.url(s), p.title, s.heading, p.kind, marks.mark(s.lead, 0, len(s.lead)), r.score}
	}
	return hits
}

// rank is one section with its score.
type rank struct {
	section int
	terms   int // how many terms it answers
	score   float64
}

// rank scores all sections. Sections that answer every term that any section
// answers come first.
func (x *Index) rank(terms []term) []rank {
	ranks := make([]rank, len(x.sections))
	sum := make([]float64, len(x.sections))
	part := make([]float64, len(x.sections))
	known := 0
	for _, t := range terms {
		found := x.frequencies(t, sum, part)
		if found == 0 {
			continue
		}
		if !t.stop {
			known++
		}
		weight := rarity(found, len(x.sections))
		for i, tf := range sum {
			if tf > 0 {
				if !t.stop {
					ranks[i].terms++
				}
				ranks[i].score += float64(weight * tf / (saturation + tf))
			}
		}
	}
	for i := range ranks {
		ranks[i].section = i
		if x.pages[x.sections[i].page].second {
			ranks[i].score *= secondShare
		}
	}
	ranks = slices.DeleteFunc(ranks, func(r rank) bool { return r.score == 0 })
	slices.SortStableFunc(ranks, func(a, b rank) int {
		switch {
		case (a.terms == known) != (b.terms == known):
			return b.terms - a.terms
		case a.score > b.score:
			return -1
		case a.score < b.score:
			return 1
		}
		return 0
	})
	return ranks
}

// frequencies fills sum with the weighted frequency of a term in each section
// and returns in how many it is. The words of a term count as one word in
// several spellings, each by its weight, so they share one rarity. The
// order of adding is fixed, to give every machine the same last digit.
func (x *Index) frequencies(t term, sum, part []float64) (found int) {
	clear(sum)
	for _, w := range t.words {
		for _, p := range x.places[w.id] {
			sum[p.section] += float64(w.weight * p.weight)
		}
	}
	for _, w := range t.phrases {
		x.phraseFrequencies(x.synonyms[w.group][w.phrase], part)
		for s, tf := range part {
			sum[s] += float64(w.weight * tf)
		}
	}
	for _, tf := range sum {
		if tf > 0 {
			found++
		}
	}
	return found
}

// phraseFrequencies fills out with how often a phrase can occur in each
// section: as often as the rarest of its words. Where in the section the
// words are the index does not hold.
func (x *Index) phraseFrequencies(p phrase, out []float64) {
	word := make([]float64, len(out))
	for i, family := range p {
		clear(word)
		for _, form := range x.kinOf(family) {
			for _, pl := range x.places[form] {
				word[pl.section] += pl.weight
			}
		}
		for s, tf := range word {
			if i == 0 || tf < out[s] {
				out[s] = tf
			}
		}
	}
}

// rarity is the inverse document frequency, with 1 added within the logarithm
// so that a word found in more than half of the sections counts for little
// instead of against them.
func rarity(found, sections int) float64 {
	return math.Log(1 + (float64(sections-found)+0.5)/(float64(found)+0.5))
}

// spread returns at most limit ranks, in the order of results. The first
// firstHits results hold at most perPage sections of one page; sections beyond
// that follow after them. ranks are sorted best first.
func (x *Index) spread(ranks []rank, limit int) []rank {
	var first, later []rank
	for _, r := range ranks {
		if len(first) < firstHits && x.ofSamePage(first, r) < perPage {
			first = append(first, r)
		} else {
			later = append(later, r)
		}
	}
	if len(first) == firstHits {
		first = append(first, later...)
	}
	return first[:min(len(first), limit)]
}

// ofSamePage counts the sections that belong to the page of another.
func (x *Index) ofSamePage(ranks []rank, other rank) (n int) {
	page := x.pages[x.sections[other.section].page].url
	for _, r := range ranks {
		if x.pages[x.sections[r.section].page].url == page {
			n++
		}
	}
	return n
}
