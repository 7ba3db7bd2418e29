package search

import "strings"

// Marks around the matching words of an excerpt.
const (
	markOpen  = "\x01"
	markClose = "\x02"
)

const excerptBytes = 108 // target length; words are not cut

// marks holds the terms that each word of the index matches, as bit sets.
type marks struct {
	index *Index
	terms []uint32 // by word
}

// marksOf returns which words of the index match each of terms, of which there are
// at most 32.
func marksOf(x *Index, terms []term) marks {
	m := marks{x, make([]uint32, len(x.words))}
	for i, t := range terms {
		for _, w := range t.words {
			m.terms[w.id] |= 1 << i
		}
		for _, w := range t.phrases {
			for _, family := range w.phrase {
				for _, word := range x.wordsOfFamily(family) {
					m.terms[word] |= 1 << i
				}
			}
		}
	}
	return m
}

// found is one matching word of a text.
type found struct {
	start, end int
	terms      uint32
}

// in returns the words of a text that match a term, in order; nil if there are
// none.
func (m marks) in(text string) []found {
	var list []found
	for _, t := range Tokens(text) {
		id := m.index.find(t.Word)
		if id < 0 {
			continue
		}
		if terms := m.terms[id]; terms != 0 {
			list = append(list, found{t.Start, t.End, terms})
		}
	}
	return list
}

// mark returns text[from:to] with its matching words between markOpen and
// markClose.
func (m marks) mark(text string, from, to int) string {
	var b strings.Builder
	for _, f := range m.in(text) {
		if f.start < from || f.end > to {
			continue
		}
		b.WriteString(text[from:f.start] + markOpen + text[f.start:f.end] + markClose)
		from = f.end
	}
	b.WriteString(text[from:to])
	return b.String()
}

// Excerpt returns the part of a text, about 110 characters, in which the words of
// the query are closest, with those words marked as in Hit.Excerpt and an ellipsis
// at each cut. The text is that of a section found. Without a match the excerpt is
// the beginning of the text.
func (x *Index) Excerpt(text, query string) string {
	text = clean(text)
	m := marksOf(x, x.parse(query))
	from, to := window(text, m.in(text))
	out := m.mark(text, from, to)
	if from > 0 {
		out = "… " + out
	}
	if to < len(text) {
		out += " …"
	}
	return out
}

// window returns the range of bytes of a text to show. list holds its matches. It
// prefers the range with the most different terms, then the most matches, then the
// first. A third of the remaining length precedes the first match. Without matches
// it is the beginning.
func window(text string, list []found) (from, to int) {
	var best found // terms holds the score
	for i, first := range list {
		var terms uint32
		end, n := first.end, 0
		for _, f := range list[i:] {
			if f.end-first.start > excerptBytes {
				break
			}
			terms |= f.terms
			end = f.end
			n++
		}
		if value := uint32(bitCount(terms)*1000 + n); value > best.terms {
			best = found{first.start, end, value}
		}
	}
	remaining := max(0, excerptBytes-(best.end-best.start))
	from = max(0, best.start-remaining/3)
	to = min(len(text), from+max(excerptBytes, best.end-best.start))
	from = max(0, min(from, to-excerptBytes))
	return borderAfter(text, from, best.start), borderBefore(text, to, max(best.end, from))
}

// bitCount returns the number of bits of set that are 1.
func bitCount(set uint32) (n int) {
	for ; set != 0; set &= set - 1 {
		n++
	}
	return n
}

// borderAfter returns the byte cut, moved forward to the next beginning of a word,
// at most to limit.
func borderAfter(text string, cut, limit int) int {
	for cut > 0 && cut < limit && text[cut-1] != ' ' {
		cut++
	}
	return min(cut, limit)
}

// borderBefore returns the byte cut, moved back to the end of a word, at most to
// limit.
func borderBefore(text string, cut, limit int) int {
	if cut >= len(text) {
		return len(text)
	}
	for cut > limit && text[cut] != ' ' {
		cut--
	}
	return cut
}
