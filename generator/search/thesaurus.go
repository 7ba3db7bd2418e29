package search

import "slices"

// addThesaurus adds what the thesaurus knows of the query to its terms. A word of the
// query, or a phrase whose words are all in the query, finds the other side of its
// group. Each term of a phrase gets the other side, so that a page with it matches
// all of them.
func (x *Index) addThesaurus(query string, terms []term) {
	words := wordsOf(query)
	weights := make([]list, len(terms)) // of the families of each term
	for i := range terms {
		weights[i] = x.families(&terms[i])
	}
	for i := range terms {
		for _, family := range weights[i] {
			for _, m := range x.starts[family.id] {
				if exact := x.groups[m.group].exact[m.phrase]; exact != nil && !hasRun(words, exact) {
					continue
				}
				if covered, weight := x.matches(m, weights, i); weight > 0 {
					x.addGroup(m, terms, covered, weight)
				}
			}
		}
	}
}

// hasRun reports whether words have a run of the same words as part.
func hasRun(words, part []string) bool {
	for i := 0; i+len(part) <= len(words); i++ {
		if slices.Equal(words[i:i+len(part)], part) {
			return true
		}
	}
	return false
}

// families returns the families of the words that match a term, with weights.
func (x *Index) families(t *term) list {
	var out list
	for _, w := range t.words {
		weight := w.weight
		if weight >= weightEnding {
			weight = weightExact
		}
		if weight == weightPrefix && len(t.word) < minSynonym {
			continue
		}
		out = out.with(x.family[w.id], weight)
	}
	return out
}

// matches compares the terms, given by the weights of their families, with a phrase
// whose first word is the term at from. It returns the set of terms that the phrase
// covers and the least of their weights, lowered if they are not in the order of the
// phrase, one behind the other; 0 if a word of the phrase is missing.
func (x *Index) matches(m member, weights []list, from int) (covered uint32, weight float64) {
	p := x.groups[m.group].from[m.phrase]
	weight = weightExact
	for i, family := range p {
		at := from + i
		if i > 0 && (at >= len(weights) || weights[at].weight(family) == 0) {
			weight = min(weight, weightApart)
			at = -1
			for j := range weights {
				if covered>>j&1 == 0 && j != from && weights[j].weight(family) > 0 {
					at = j
					break
				}
			}
			if at < 0 {
				return 0, 0
			}
		}
		weight = min(weight, weights[at].weight(family))
		covered |= 1 << at
	}
	return covered, weight
}

// addGroup adds the other side of a group, seen from its phrase m, to each of the
// covered terms.
func (x *Index) addGroup(m member, terms []term, covered uint32, weight float64) {
	g := x.groups[m.group]
	mutual := g.isMutual()
	share := weightDirected
	if mutual {
		share = weightSynonym
	}
	for i, p := range g.to {
		if mutual && (i == m.phrase || g.exact[i] != nil) {
			continue
		}
		for j := range terms {
			if covered>>j&1 == 0 {
				continue
			}
			if len(p) > 1 {
				terms[j].addPhrase(p, float64(share*weight))
				continue
			}
			for _, word := range x.wordsOfFamily(p[0]) {
				terms[j].add(word, float64(share*weight))
			}
		}
	}
}
