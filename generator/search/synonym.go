package search

// addSynonyms adds the groups that contain the terms, alone or as
// part of a phrase. A phrase of the query keeps its words and gains, for each
// of them, the other members of its group: sections with the synonym then
// answer all of the phrase at once.
func (x *Index) addSynonyms(terms []term) {
	trust := make([]list, len(terms)) // of each term: family → how surely it is meant
	for i := range terms {
		trust[i] = x.families(&terms[i])
	}
	for i := range terms {
		for _, family := range trust[i] {
			for _, m := range x.leads[family.id] {
				if n, weight := x.matches(m, trust[i:]); weight > 0 {
					x.offer(m, terms[i:i+n], float64(weightSynonym*weight))
				}
			}
		}
	}
}

// families lists the families that a term may mean.
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

// matches reports whether the terms begin with a member of a group, how many
// of them it takes, and the least trust among them; 0 where it does not match.
func (x *Index) matches(m member, trust []list) (terms int, weight float64) {
	p := x.synonyms[m.group][m.phrase]
	if len(p) > len(trust) {
		return 0, 0
	}
	weight = weightExact
	for i, family := range p {
		weight = min(weight, trust[i].weight(family))
	}
	return len(p), weight
}

// offer adds the other members of a group to the terms that matched one.
func (x *Index) offer(m member, terms []term, weight float64) {
	for i, p := range x.synonyms[m.group] {
		if i == m.phrase {
			continue
		}
		for j := range terms {
			if len(p) > 1 {
				terms[j].addPhrase(member{m.group, i}, weight)
				continue
			}
			for _, word := range x.kinOf(p[0]) {
				terms[j].add(word, weight)
			}
		}
	}
}
