package search

import (
	"math"
	"slices"
)

// Constants of BM25F (Robertson and Zaragoza, The Probabilistic Relevance
// Framework: BM25 and Beyond, Foundations and Trends in Information Retrieval
// 3(4), 2009; formula and ranges from memory). They give 1.2 < k1 < 2 and
// 0.5 < b < 0.8 as reasonable in many circumstances. With k1 = 1.6 a title is further
// apart from a passing word than with the usual 1.2. The field weights are our choice
// (common practice): a word in a title counts as five in the text. Header words are a
// list, so that their number does not lower the weight of each (b = 0).
const saturation = 1.6 // k1

var (
	fieldWeight = [fieldCount]float64{inTitle: 5, inHeading: 2, inWords: 3, inText: 1}        // v
	fieldNorm   = [fieldCount]float64{inTitle: 0.3, inHeading: 0.3, inWords: 0, inText: 0.75} // b
)

// The score of a page is the sum of these parts, times its shares. Each part is at
// most about its constant: BM25F of the page; the words that it has at all, and those
// that one section has, of the weights of all words; and the best of its titles,
// headings and header words that is the query. They are our choice, tried on the
// learned searches; half and double of each change little.
var (
	partWords = 1.6
	partAll   = 0.3
	partNear  = 0.2
	partName  = [fieldCount]float64{inTitle: 1.4, inHeading: 0.5, inWords: 0.8}
)

// kindShare returns the share of a page by its kind. A page that leads to others or
// repeats them is behind what it leads to.
func kindShare(kind string) float64 {
	switch kind {
	case "lesson", "course", "glossary":
		return 0.75
	case "home":
		return 0.6
	case "cautions":
		return 0.85
	case "calculator":
		return 0.95
	case "reference":
		return 0.9
	}
	return 1
}

// kindUrgent is the kind that a query asks for by saying what has happened.
const kindUrgent = "urgent"

// shareTurned is the share of a name whose words are in another order in the query.
const shareTurned = 0.9

const (
	shareMeaning  = 1.5 // of the glossary, if the query asks for a meaning
	shareAsked    = 1.2 // of a page of the kind that the query asks for
	shareHappened = 1.5 // of an urgent page, if the query says that something has happened
)

// Hit is one search result: a page with the best place in it.
type Hit struct {
	URL     string  // address with #anchor
	Title   string  // title of the page
	Section string  // heading of the place, or empty for the top of the page
	Kind    string  // kind of page, as given to Build
	Urgent  bool    // as given to Build
	Excerpt string  // lead of the page; matching words are between \x01 and \x02
	Score   float64 // greater is better; comparable within one query only
}

// Find returns the best pages for a query, at most limit, best first, and the number
// of all pages that match; none if the query has no words.
func (x *Index) Find(query string, limit int) (hits []Hit, all int) {
	terms := x.parse(query)
	ranks := x.rank(query, terms)
	marks := marksOf(x, terms)
	for _, r := range ranks[:max(0, min(limit, len(ranks)))] {
		s := x.sections[r.section]
		p := x.pages[r.page]
		lead := x.sections[p.from].lead
		excerpt := marks.mark(lead, 0, len(lead))
		hits = append(hits, Hit{x.url(s), p.title, s.heading, p.kind, p.urgent, excerpt, r.score})
	}
	return hits, len(ranks)
}

// Pages returns the pages whose kind and urgency are wanted, in the order of the
// entries, each with its top.
func (x *Index) Pages(wanted func(kind string, urgent bool) bool) (list []Hit) {
	for _, p := range x.pages {
		if n := len(list); wanted(p.kind, p.urgent) && p.from < p.to && (n == 0 || list[n-1].URL != p.url) {
			list = append(list, Hit{p.url, p.title, "", p.kind, p.urgent, x.sections[p.from].lead, 0})
		}
	}
	return list
}

// rank is one page with its score and the best place in it.
type rank struct {
	page, section int
	score         float64
}

// evidence is what speaks for each page, section and name.
type evidence struct {
	x     *Index
	terms []term
	total float64 // of the weights of the terms that some page matches

	tf, best []float64 // by page, of the current term: frequency and the best weight of a match
	tfIn     []float64 // by section, of the current term: frequency
	bestIn   []float64 // by section, of the current term: best weight of a match
	matched  []float64 // by name, of the current term
	last     []int32   // by name: the place in it of the last term that matches, from 1
	turned   []bool    // by name: terms match in another order than that of the name

	words, all   []float64 // by page: sum of BM25F; sum of weights
	wordsIn      []float64 // by section: sum of BM25F
	allIn        []float64 // by section: sum of weights
	query, named []float64 // by name: sum of weights of the query; sum of the rarity of its families that match
}

// rank returns the pages that match, best first, one for each address.
func (x *Index) rank(query string, terms []term) []rank {
	if len(terms) == 0 {
		return nil
	}
	e := x.collect(terms)
	kinds := x.asked(query)
	var ranks []rank
	for i := range x.pages {
		if e.all[i] > 0 {
			section, score := e.place(i)
			ranks = append(ranks, rank{i, section, score * x.share(i, kinds)})
		}
	}
	slices.SortStableFunc(ranks, func(a, b rank) int {
		switch {
		case a.score > b.score:
			return -1
		case a.score < b.score:
			return 1
		}
		return 0
	})
	return x.once(ranks)
}

// once returns the first rank of each address.
func (x *Index) once(ranks []rank) []rank {
	out := ranks[:0]
	for _, r := range ranks {
		if !slices.ContainsFunc(out, func(o rank) bool { return x.address(o.page) == x.address(r.page) }) {
			out = append(out, r)
		}
	}
	return out
}

func (x *Index) address(page int) string { return x.pages[page].url }

// share returns the factor of a page's score for a query that asks for these kinds.
func (x *Index) share(page int, kinds []string) float64 {
	p := x.pages[page]
	share := kindShare(p.kind)
	if slices.Contains(kinds, p.kind) {
		share = shareAsked // in place of that of the kind
		if p.kind == "glossary" {
			share = shareMeaning
		}
	}
	if p.urgent && slices.Contains(kinds, kindUrgent) {
		share *= shareHappened
	}
	return share
}

// asked returns the kinds that a phrase of the query asks for.
func (x *Index) asked(query string) []string {
	words := wordsOf(query[:min(len(query), maxQueryBytes)])
	var kinds []string
	for _, a := range x.asks {
		if hasRun(words, a.words) {
			kinds = append(kinds, a.kind)
		}
	}
	return kinds
}

// collect returns the evidence for terms, and sets their weights.
func (x *Index) collect(terms []term) *evidence {
	pages, sections, names := len(x.pages), len(x.sections), len(x.names)
	e := &evidence{x: x, terms: terms,
		tf: make([]float64, pages), best: make([]float64, pages), tfIn: make([]float64, sections),
		bestIn: make([]float64, sections), matched: make([]float64, names),
		last: make([]int32, names), turned: make([]bool, names),
		words: make([]float64, pages), all: make([]float64, pages), wordsIn: make([]float64, sections),
		allIn: make([]float64, sections), query: make([]float64, names), named: make([]float64, names)}
	for i := range terms {
		e.addTerm(&terms[i])
	}
	return e
}

// addTerm adds the evidence of one term. The words of a term count as spellings of
// one word, each with its weight. The order of additions is fixed, so that sums are
// the same on every machine.
func (e *evidence) addTerm(t *term) {
	clear(e.tf)
	clear(e.best)
	clear(e.tfIn)
	clear(e.bestIn)
	for _, w := range t.words {
		for _, p := range e.x.inPage[w.id] {
			e.inPage(p.at, float64(w.weight*p.weight), w.weight)
		}
		for _, p := range e.x.inText[w.id] {
			e.inSection(p.at, float64(w.weight*p.weight), w.weight)
		}
	}
	for _, p := range t.phrases {
		e.addPhrase(p)
	}
	t.weight = idf(e.found(), len(e.x.pages)) * t.share
	matches := false
	for i, tf := range e.tf {
		if tf > 0 {
			matches = true
			best := e.best[i]
			tf /= best
			e.words[i] += float64(t.weight * best * tf / (saturation + tf))
			e.all[i] += float64(t.weight * best)
		}
	}
	for i, tf := range e.tfIn {
		if tf > 0 {
			best := e.bestIn[i]
			tf /= best
			e.wordsIn[i] += float64(t.weight * best * tf / (saturation + tf))
			e.allIn[i] += float64(t.weight * best)
		}
	}
	if matches {
		e.total += t.weight
		e.addNames(t)
	}
}

func (e *evidence) inPage(page int32, tf, weight float64) {
	e.tf[page] += tf
	e.best[page] = max(e.best[page], weight)
}

func (e *evidence) inSection(section int32, tf, weight float64) {
	e.tfIn[section] += tf
	e.bestIn[section] = max(e.bestIn[section], weight)
	e.inPage(int32(e.x.sections[section].page), tf, weight)
}

// found returns the number of pages that match the current term as well as the best
// ones do.
func (e *evidence) found() (n int) {
	best := 0.0
	for _, w := range e.best {
		best = max(best, w)
	}
	for _, w := range e.best {
		if w > 0 && w >= 0.75*best {
			n++
		}
	}
	return n
}

// addPhrase adds the evidence of a phrase to the current term, where a section or a
// name has all its words: the least frequency of its words. The index has no
// positions of words.
func (e *evidence) addPhrase(p weighted) {
	x := e.x
	var least []posting
	for i, family := range p.phrase {
		var has []posting
		for _, word := range x.wordsOfFamily(family) {
			has = addPostings(has, x.inText[word])
		}
		if i == 0 {
			least = has
		} else {
			least = leastPostings(least, has)
		}
	}
	for _, s := range least {
		e.inSection(s.at, float64(p.weight*s.weight), p.weight)
	}
	for _, n := range x.named[p.phrase[0]] {
		if name := &x.names[n]; hasAll(name.families, p.phrase) && name.field != inHeading {
			e.inPage(name.page, float64(p.weight*fieldWeight[name.field]), p.weight)
		}
	}
}

func hasAll(families []int32, p phrase) bool {
	for _, f := range p {
		if !contains(families, f) {
			return false
		}
	}
	return true
}

// addPostings returns the sums of two sorted lists.
func addPostings(a, b []posting) []posting {
	if len(a) == 0 {
		return b
	}
	out := make([]posting, 0, len(a)+len(b))
	for len(a) > 0 && len(b) > 0 {
		switch {
		case a[0].at < b[0].at:
			out, a = append(out, a[0]), a[1:]
		case a[0].at > b[0].at:
			out, b = append(out, b[0]), b[1:]
		default:
			out = append(out, posting{a[0].at, a[0].weight + b[0].weight})
			a, b = a[1:], b[1:]
		}
	}
	return append(append(out, a...), b...)
}

// leastPostings returns what two sorted lists have in common, with the lesser weight.
func leastPostings(a, b []posting) []posting {
	var out []posting
	for len(a) > 0 && len(b) > 0 {
		switch {
		case a[0].at < b[0].at:
			a = a[1:]
		case a[0].at > b[0].at:
			b = b[1:]
		default:
			out = append(out, posting{a[0].at, min(a[0].weight, b[0].weight)})
			a, b = a[1:], b[1:]
		}
	}
	return out
}

// addNames adds the evidence of one term for the names. A word of a name counts for
// the term that it matches best.
func (e *evidence) addNames(t *term) {
	x := e.x
	var families list
	for _, w := range t.words {
		families = families.with(x.family[w.id], w.weight)
	}
	var touched []int32
	for _, f := range families {
		for _, n := range x.named[f.id] {
			if e.matched[n] == 0 {
				touched = append(touched, n)
			}
			e.matched[n] = max(e.matched[n], f.weight)
			e.named[n] += x.rarity[f.id]
			e.order(n, f.id)
		}
	}
	for _, p := range t.phrases {
		for _, n := range x.named[p.phrase[0]] {
			if !hasAll(x.names[n].families, p.phrase) {
				continue
			}
			if e.matched[n] == 0 {
				touched = append(touched, n)
			}
			e.matched[n] = max(e.matched[n], p.weight)
			for _, f := range p.phrase {
				e.named[n] += x.rarity[f]
			}
		}
	}
	for _, n := range touched {
		e.query[n] += float64(t.weight * e.matched[n])
		e.matched[n] = 0
	}
}

// order notes that the current term matches a family of a name.
func (e *evidence) order(n, family int32) {
	at := int32(slices.Index(e.x.names[n].families, family)) + 1
	if at < e.last[n] {
		e.turned[n] = true
	}
	e.last[n] = at
}

// likeness returns how far a name is the query, between 0 and 1: the part of the
// query that the name has times the part of the name that the query has. For a title
// the latter counts less, because a title has words around its subject.
func (e *evidence) likeness(n int32) float64 {
	name := &e.x.names[n]
	if e.query[n] == 0 || name.total == 0 {
		return 0
	}
	has := min(1, e.named[n]/name.total)
	if name.field == inTitle {
		has = math.Sqrt(has)
	}
	if e.turned[n] {
		has *= shareTurned
	}
	return e.query[n] / e.total * has
}

// place returns the best section of a page, and the score of the page before shares.
// The top of the page is the best place where its title or a header word is the
// query.
func (e *evidence) place(page int) (section int, score float64) {
	p := &e.x.pages[page]
	like := make([]float64, p.to-p.from) // by section; title and header words belong to the first
	named := 0.0
	for n := p.firstName; n < p.lastName; n++ {
		name := &e.x.names[n]
		part := float64(partName[name.field] * e.likeness(n))
		named = max(named, part)
		at := int(name.section) - p.from
		like[at] = max(like[at], part)
	}
	near, best := 0.0, -1.0
	section = p.from
	for s := p.from; s < p.to; s++ {
		near = max(near, e.allIn[s])
		value := (e.wordsIn[s]+e.allIn[s])/e.total + placeName*like[s-p.from]
		if s == p.from {
			value += placeTop
		}
		if value > best {
			section, best = s, value
		}
	}
	return section, named + (partWords*e.words[page]+partAll*e.all[page]+partNear*near)/e.total
}

// Constants of the choice of the best place in a page.
var (
	placeName = 2.0  // a heading, or at the top the title, that is the query
	placeTop  = 0.15 // for the top of the page
)

// idf returns the inverse document frequency of a word in found of all pages. 1
// is added within the logarithm, so that it is positive also for a word in more
// than half of the pages.
func idf(found, pages int) float64 {
	return math.Log(1 + (float64(pages-found)+0.5)/(float64(found)+0.5))
}
