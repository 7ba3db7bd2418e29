package search

// Explanation is what a query became, and why each page has its place. Only the
// generator uses it: it is not in the module.
type Explanation struct {
	Terms []TermExplanation
	Kinds []string // kinds of page that the query asks for
	Pages []PageExplanation
	Found int // pages that match
}

// TermExplanation is one word of the query.
type TermExplanation struct {
	Word    string
	Share   float64 // of its weight: below 1 for a small word or an amount
	Weight  float64 // rarity times share; 0 if no page matches
	Matches []Match // the words and phrases of the index that match it, best first
}

// Match is a word or phrase with the weight of the match.
type Match struct {
	Text   string
	Weight float64
}

// PageExplanation is one page found, with the parts of its score.
type PageExplanation struct {
	Hit
	Words, All, Near float64 // parts of the score before shares
	Name             string  // the title, heading or header word that is most like the query
	NameField        string
	NamePart         float64
	Share            float64
	Terms            []TermEvidence
}

// TermEvidence is what one word of the query finds in a page.
type TermEvidence struct {
	Word  string
	Score float64 // its part of Words
	Match float64 // weight of its best match
	In    []string
}

// fieldNames are the fields as an explanation names them.
var fieldNames = [fieldCount]string{inTitle: "title", inHeading: "heading", inWords: "header words", inText: "text"}

// Explain returns what a query became and why its first pages, at most limit, have
// their places.
func (x *Index) Explain(query string, limit int) Explanation {
	terms := x.parse(query)
	ranks := x.rank(query, terms)
	out := Explanation{Kinds: x.asked(query), Found: len(ranks)}
	hits, _ := x.Find(query, limit)
	each := make([]*evidence, len(terms)) // the evidence of one term alone
	var whole *evidence
	if len(terms) > 0 {
		whole = x.collect(terms)
	}
	for i := range terms {
		each[i] = x.collect(terms[i : i+1])
		t := TermExplanation{Word: terms[i].word, Share: terms[i].share, Matches: x.matchesOf(&terms[i])}
		if each[i].total > 0 {
			t.Weight = terms[i].weight
		}
		out.Terms = append(out.Terms, t)
	}
	for i, h := range hits {
		page := ranks[i].page
		p := PageExplanation{Hit: h, Words: partWords * whole.words[page] / whole.total,
			All: partAll * whole.all[page] / whole.total, Share: x.share(page, out.Kinds)}
		for s := x.pages[page].from; s < x.pages[page].to; s++ {
			p.Near = max(p.Near, partNear*whole.allIn[s]/whole.total)
		}
		for n := x.pages[page].firstName; n < x.pages[page].lastName; n++ {
			field := x.names[n].field
			if part := partName[field] * whole.likeness(n); part > p.NamePart {
				p.NamePart, p.NameField, p.Name = part, fieldNames[field], x.nameText(n)
			}
		}
		for j := range terms {
			if each[j].all[page] > 0 {
				p.Terms = append(p.Terms, TermEvidence{terms[j].word, partWords * each[j].words[page] / whole.total,
					each[j].best[page], x.fieldsOf(&terms[j], page)})
			}
		}
		out.Pages = append(out.Pages, p)
	}
	return out
}

// matchesOf returns what matches a term, the heaviest first.
func (x *Index) matchesOf(t *term) (list []Match) {
	for _, w := range t.words {
		list = append(list, Match{x.words[w.id], w.weight})
	}
	for _, p := range t.phrases {
		list = append(list, Match{x.familyText(p.phrase), p.weight})
	}
	for i := range list {
		for j := i; j > 0 && list[j].Weight > list[j-1].Weight; j-- {
			list[j], list[j-1] = list[j-1], list[j]
		}
	}
	return list
}

// familyText returns the first words of families, with spaces.
func (x *Index) familyText(families []int32) string {
	text := ""
	for i, f := range families {
		if i > 0 {
			text += " "
		}
		text += x.words[f]
	}
	return text
}

func (x *Index) nameText(n int32) string { return x.familyText(x.names[n].families) }

// fieldsOf returns the fields of a page in which a term has a match.
func (x *Index) fieldsOf(t *term, page int) (fields []string) {
	p := x.pages[page]
	texts := [fieldCount]string{inTitle: p.title, inWords: p.words}
	for s := p.from; s < p.to; s++ {
		texts[inHeading] += x.sections[s].heading + "\n"
	}
	for f := range fieldCount {
		var families []int32
		for _, w := range wordsOf(texts[f]) {
			if id := x.find(w); id >= 0 {
				families = append(families, x.family[id])
			}
		}
		if x.isIn(t, func(family int32) bool { return contains(families, family) }) {
			fields = append(fields, fieldNames[f])
		}
	}
	for s := p.from; s < p.to; s++ {
		if x.isIn(t, func(family int32) bool { return x.inSection(family, int32(s)) }) {
			return append(fields, fieldNames[inText])
		}
	}
	return fields
}

// isIn reports whether a text has a word of a term, or all words of a phrase of it; has
// reports whether it has a family.
func (x *Index) isIn(t *term, has func(family int32) bool) bool {
	for _, w := range t.words {
		if has(x.family[w.id]) {
			return true
		}
	}
	for _, p := range t.phrases {
		missing := false
		for _, family := range p.phrase {
			missing = missing || !has(family)
		}
		if !missing {
			return true
		}
	}
	return false
}

// inSection reports whether the heading or the text of a section has a word of a family.
func (x *Index) inSection(family, section int32) bool {
	for _, word := range x.wordsOfFamily(family) {
		for _, p := range x.inText[word] {
			if p.at == section {
				return true
			}
		}
	}
	return false
}
