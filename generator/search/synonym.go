package search

// addSynonyms adds synonyms to the terms. A word of the query, or a phrase of
// adjacent words, that is a member of a group gets the other members of the group.
// For a phrase each of its terms gets them, so that a section with a synonym
// matches all terms of the phrase.
func (x *Index) addSynonyms(terms []term) {
	weights := make([]list, len(terms)) // of the families of each term
	for i := range terms {
		weights[i] = x.families(&terms[i])
	}
	for i := range terms {
		for _, family := range weights[i] {
			for _, m := range x.synonymStarts[family.id] {
				if n, weight := x.matches(m, weights[i:]); weight > 0 {
					x.addGroup(m, terms[i:i+n], float64(weightSynonym*weight))
				}
			}
		}
	}
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

// matches compares the first terms, given by the weights of their families, with a
// member of a group. It returns the number of terms that the member covers and the
// least of their weights, 0 if they do not match.
func (x *Index) matches(m member, weights []list) (terms int, weight float64) {
	p := x.synonyms[m.group][m.phrase]
	if len(p) > len(weights) {
		return 0, 0
	}
	weight = weightExact
	for i, family := range p {
		weight = min(weight, weights[i].weight(family))
	}
	return len(p), weight
}

// addGroup adds the members of a group other than m, with the weight, to each of
// terms.
func (x *Index) addGroup(m member, terms []term, weight float64) {
	for i, p := range x.synonyms[m.group] {
		if i == m.phrase {
			continue
		}
		for j := range terms {
			if len(p) > 1 {
				terms[j].addPhrase(member{m.group, i}, weight)
				continue
			}
			for _, word := range x.wordsOfFamily(p[0]) {
				terms[j].add(word, weight)
			}
		}
	}
}
