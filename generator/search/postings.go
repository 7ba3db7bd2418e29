package search

// Fields of an entry for BM25F.
const (
	inTitle = iota
	inHeading
	inWords
	inText
	fieldCount
)

// counts holds the number of occurrences of a word in each field of one section.
type counts struct {
	section int32
	in      [fieldCount]int32
}

// readPostings counts every word in every section and computes its postings. The
// words of titles, headings, synonyms and leads are counted in their texts; the
// blocks contain the counts of the text after the leads. It returns false if a
// block is malformed, a word is not in the vocabulary, or there are more than
// maxWords words.
func (r *reader) readPostings() bool {
	lists := make([][]counts, len(r.words))
	for i, s := range r.sections {
		p := r.pages[s.page]
		for field, text := range [fieldCount]string{p.title, s.heading, p.words, s.lead} {
			if !r.count(lists, int32(i), field, text) {
				return false
			}
		}
	}
	lengths := numberReader{text: r.block['N'-'A']}
	gaps := numberReader{text: r.block['D'-'A']}
	levels := numberReader{text: r.block['T'-'A']}
	for w := range lists {
		body := r.bodyCounts(lengths.next(), &gaps, &levels)
		lists[w] = merge(lists[w], body)
	}
	r.postings = weigh(lists, len(r.sections))
	return lengths.done() && gaps.done() && levels.done()
}

// count adds the words of a text to lists, as those of a field of a section. It
// returns false for a word that is not in the vocabulary or beyond maxWords.
func (r *reader) count(lists [][]counts, section int32, field int, text string) bool {
	for _, t := range Tokens(text) {
		r.used++
		if isStop(r.stops, t.Word) {
			continue
		}
		w := r.find(t.Word)
		if w < 0 || r.used > maxWords {
			return false
		}
		list := lists[w]
		if n := len(list); n == 0 || list[n-1].section != section {
			list = append(list, counts{section: section})
		}
		list[len(list)-1].in[field]++
		lists[w] = list
	}
	return true
}

// bodyCounts reads the counts of one word in the texts after the leads of n
// sections. For malformed data it sets gaps.bad and returns nil.
func (r *reader) bodyCounts(n int, gaps, levels *numberReader) []counts {
	if n > len(r.sections) {
		gaps.bad = true
		return nil
	}
	list := make([]counts, n)
	section := -1
	for i := range list {
		section += gaps.next() + 1
		l := levels.next()
		if section >= len(r.sections) || l >= len(levelCounts) {
			gaps.bad = true
			return nil
		}
		list[i].section = int32(section)
		list[i].in[inText] = int32(levelCounts[l])
	}
	return list
}

// merge returns two lists that are sorted by section as one such list. Where both
// have a section, the counts in the text are added; the other counts are those of a.
func merge(a, b []counts) []counts {
	if len(a) == 0 {
		return b
	}
	out := make([]counts, 0, len(a)+len(b))
	for len(a) > 0 && len(b) > 0 {
		switch {
		case a[0].section < b[0].section:
			out, a = append(out, a[0]), a[1:]
		case a[0].section > b[0].section:
			out, b = append(out, b[0]), b[1:]
		default:
			both := a[0]
			both.in[inText] += b[0].in[inText]
			out, a, b = append(out, both), a[1:], b[1:]
		}
	}
	return append(append(out, a...), b...)
}

// weigh returns the postings of each word, with its weighted frequency in each
// section by BM25F, which normalizes each field by its length:
//
//	Σ over fields of  v · tf / ((1 − b) + b · length / average length)
func weigh(lists [][]counts, sections int) [][]posting {
	lengths := make([][fieldCount]float64, sections)
	var average [fieldCount]float64
	for _, list := range lists {
		for _, c := range list {
			for f, n := range c.in {
				lengths[c.section][f] += float64(n)
				average[f] += float64(n)
			}
		}
	}
	for f := range average {
		average[f] /= float64(max(sections, 1))
	}
	postings := make([][]posting, len(lists))
	for w, list := range lists {
		postings[w] = make([]posting, len(list))
		for i, c := range list {
			postings[w][i] = posting{c.section, frequency(c.in, lengths[c.section], average)}
		}
	}
	return postings
}

// frequency returns the weighted frequency of a word that occurs in times in the
// fields of a section with these lengths.
func frequency(in [fieldCount]int32, length, average [fieldCount]float64) float64 {
	sum := 0.0
	for f, n := range in {
		if n > 0 {
			norm := 1 - fieldNorm[f] + float64(fieldNorm[f]*length[f]/average[f])
			sum += float64(fieldWeight[f] * float64(n) / norm)
		}
	}
	return sum
}
