package search

// Fields of a page for BM25F. The title and the header words belong to the page,
// headings and texts to its sections.
const (
	inTitle = iota
	inHeading
	inWords
	inText
	fieldCount
)

// counts holds the number of occurrences of a word in each field of one section.
// Those in title and header words are counted in the first section of a page.
type counts struct {
	section int32
	in      [fieldCount]int32
}

// readPostings counts every word in every section, and computes its postings, the
// rarity of families and the names. The words of titles, headings, header words and
// leads are counted in their texts; the blocks contain the counts of the text after
// the leads. It returns false if a block is malformed, a word is not in the
// vocabulary, or there are more than maxWords words.
func (r *reader) readPostings() bool {
	lists := make([][]counts, len(r.words))
	r.named = make([][]int32, len(r.words))
	for i, s := range r.sections {
		p := &r.pages[s.page]
		if i == p.from {
			p.firstName = int32(len(r.names))
			if !r.count(lists, int32(i), inTitle, p.title) || !r.count(lists, int32(i), inWords, p.words) {
				return false
			}
			r.addName(i, inTitle, p.title)
			for _, text := range split(p.words, ',') {
				r.addName(i, inWords, text)
			}
		}
		if !r.count(lists, int32(i), inHeading, s.heading) || !r.count(lists, int32(i), inText, s.lead) {
			return false
		}
		r.addName(i, inHeading, s.heading)
		p.lastName = int32(len(r.names))
	}
	lengths := numberReader{text: r.block['N'-'A']}
	gaps := numberReader{text: r.block['D'-'A']}
	levels := numberReader{text: r.block['T'-'A']}
	for w := range lists {
		body := r.bodyCounts(lengths.next(), &gaps, &levels)
		lists[w] = merge(lists[w], body)
	}
	r.weigh(lists)
	r.weighFamilies(lists)
	return lengths.done() && gaps.done() && levels.done()
}

// addName adds a text of a section to the names, unless it has no words. Its words
// must be in the vocabulary.
func (r *reader) addName(section, field int, text string) {
	words, _ := r.phrase(text)
	var families []int32 // each once
	for _, f := range words {
		if !contains(families, f) {
			families = append(families, f)
			r.named[f] = append(r.named[f], int32(len(r.names)))
		}
	}
	if len(families) > 0 {
		r.names = append(r.names, name{page: int32(r.sections[section].page), section: int32(section), field: field,
			families: families})
	}
}

func contains(list []int32, n int32) bool {
	for _, m := range list {
		if m == n {
			return true
		}
	}
	return false
}

// count adds the words of a text to lists, as those of a field of a section. It
// returns false for a word that is not in the vocabulary or beyond maxWords.
func (r *reader) count(lists [][]counts, section int32, field int, text string) bool {
	for _, t := range Tokens(text) {
		r.used++
		if isStop(r.small, t.Word) {
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

// weigh sets the postings of each word: its weighted frequency by BM25F, in which a
// page is the document and each field is normalized by its length in the page:
//
//	Σ over fields of  v · tf / ((1 − b) + b · length / average length)
//
// The part of a section is stored with the section. The frequency in the page is
// the sum of those of its sections and of title and header words.
func (r *reader) weigh(lists [][]counts) {
	lengths := make([][fieldCount]float64, len(r.pages))
	var average [fieldCount]float64
	for _, list := range lists {
		for _, c := range list {
			for f, n := range c.in {
				lengths[r.sections[c.section].page][f] += float64(n)
				average[f] += float64(n)
			}
		}
	}
	for f := range average {
		average[f] /= float64(max(len(r.pages), 1))
	}
	r.inPage, r.inText = make([][]posting, len(lists)), make([][]posting, len(lists))
	for w, list := range lists {
		for _, c := range list {
			p := r.sections[c.section].page
			field := func(f int) float64 { return frequency(c.in, f, lengths[p], average) }
			if weight := field(inTitle) + field(inWords); weight > 0 {
				r.inPage[w] = append(r.inPage[w], posting{int32(p), weight})
			}
			if weight := field(inHeading) + field(inText); weight > 0 {
				r.inText[w] = append(r.inText[w], posting{c.section, weight})
			}
		}
	}
}

// frequency returns the weighted frequency of a word that occurs in times in the
// fields of a page with these lengths, for one field.
func frequency(in [fieldCount]int32, f int, length, average [fieldCount]float64) float64 {
	if in[f] == 0 {
		return 0
	}
	norm := 1 - fieldNorm[f] + float64(fieldNorm[f]*length[f]/average[f])
	return float64(fieldWeight[f] * float64(in[f]) / norm)
}

// weighFamilies sets the rarity of each family by the pages that contain it, and the
// sums of the names.
func (r *reader) weighFamilies(lists [][]counts) {
	r.rarity = make([]float64, len(lists))
	seen := make([]int32, len(r.pages)) // by page: the last family found in it, from 1
	for f := range lists {
		if r.family[f] != int32(f) {
			continue
		}
		found := 0
		for _, w := range r.wordsOfFamily(int32(f)) {
			for _, c := range lists[w] {
				if p := r.sections[c.section].page; seen[p] != int32(f)+1 {
					seen[p] = int32(f) + 1
					found++
				}
			}
		}
		r.rarity[f] = idf(found, len(r.pages)) * smallWeight(r.small, r.words[f])
	}
	for i := range r.names {
		for _, f := range r.names[i].families {
			r.names[i].total += r.rarity[f]
		}
	}
}
