package search

import (
	"math"
	"slices"
)

// Constants of BM25F (Robertson and Zaragoza, The Probabilistic Relevance
// Framework: BM25 and Beyond, Foundations and Trends in Information Retrieval
// 3(4), 2009; formula and ranges from memory). They give 1.2 < k1 < 2 and
// 0.5 < b < 0.8 as reasonable in many circumstances; 1.2 and 0.75 are the
// usual pair. The field weights are our choice (common practice): a word in a title
// counts as five in the text. Header words are a list, so that their number does not
// lower the weight of each (b = 0).
const saturation = 1.2 // k1

var (
	fieldWeight = [fieldCount]float64{inTitle: 5, inHeading: 3, inWords: 2, inText: 1}        // v
	fieldNorm   = [fieldCount]float64{inTitle: 0.3, inHeading: 0.3, inWords: 0, inText: 0.75} // b
)

// secondaryShare is the factor of the score of a secondary page (common practice).
const secondaryShare = 0.6

// The first firstHits results contain at most perPage sections of one page.
const (
	firstHits = 10
	perPage   = 2
)

// Hit is one search result.
type Hit struct {
	URL     string  // address with #anchor
	Title   string  // title of the page
	Section string  // heading, or empty above the first
	Kind    string  // kind of page, as given to Build
	Excerpt string  // lead of the section; matching words are between \x01 and \x02
	Score   float64 // BM25F; sections that match every word rank first regardless of it
}

// Find returns the best sections for a query, at most limit, best first; none if
// limit is negative, the query has no words or no section matches.
func (x *Index) Find(query string, limit int) []Hit {
	terms := x.parse(query)
	ranks := x.rank(terms)
	ranks = x.limitPerPage(ranks, max(limit, 0))
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
	terms   int // number of terms that it matches, without stop words
	score   float64
}

// rank returns the sections that match, sorted best first. Sections that match
// every term are before the others; terms that no section matches do not count.
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
		weight := idf(found, len(x.sections))
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
		if x.pages[x.sections[i].page].secondary {
			ranks[i].score *= secondaryShare
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

// frequencies sets sum to the weighted frequency of a term in each section, and
// returns the number of sections with the term. part is memory of the same length.
// The words of a term count as spellings of one word, each with its weight, and
// share one inverse document frequency. The order of additions is fixed, so that
// sums are the same on every machine.
func (x *Index) frequencies(t term, sum, part []float64) (found int) {
	clear(sum)
	for _, w := range t.words {
		for _, p := range x.postings[w.id] {
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

// phraseFrequencies sets out to an upper bound of the frequency of a phrase in
// each section: the least frequency of its words. The index has no positions of
// words.
func (x *Index) phraseFrequencies(p phrase, out []float64) {
	word := make([]float64, len(out))
	for i, family := range p {
		clear(word)
		for _, form := range x.wordsOfFamily(family) {
			for _, pl := range x.postings[form] {
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

// idf returns the inverse document frequency of a word in found of all sections. 1
// is added within the logarithm, so that it is positive also for a word in more
// than half of the sections.
func idf(found, sections int) float64 {
	return math.Log(1 + (float64(sections-found)+0.5)/(float64(found)+0.5))
}

// limitPerPage returns at most limit ranks, in the order of results. ranks must be
// sorted best first. The first firstHits results contain at most perPage sections
// of one page. The other sections follow them; they are left out if there are
// fewer than firstHits such results.
func (x *Index) limitPerPage(ranks []rank, limit int) []rank {
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

// ofSamePage returns how many of ranks are sections of the page of other.
func (x *Index) ofSamePage(ranks []rank, other rank) (n int) {
	page := x.pages[x.sections[other.section].page].url
	for _, r := range ranks {
		if x.pages[x.sections[r.section].page].url == page {
			n++
		}
	}
	return n
}
