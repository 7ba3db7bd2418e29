package search

// Fields of an entry, in BM25F's sense.
const (
	inTitle = iota
	inHeading
	inWords
	inText
	fieldCount
)

// counts is how often a word occurs in each field of one section.
type counts struct {
	section int32
	in      [fieldCount]int32
}

// readPlaces counts every word in every section and weighs the counts.
// Titles, headings, synonyms and leads are read from their own text; the
// blocks hold only the counts of what follows the leads.
func (r *reader) readPlaces() bool {
	lists := make([][]counts, len(r.words))
	for i, s := range r.sections {
		p := r.pages[s.page]
		for field, text := range [fieldCount]string{p.title, s.heading, p.words, s.lead} {
			if !r.count(lists, int32(i), field, text) {
				return false
			}
		}
	}
	lengths := packed{text: r.block['N'-'A']}
	gaps := packed{text: r.block['D'-'A']}
	levels := packed{text: r.block['T'-'A']}
	for w := range lists {
		behind := r.behind(lengths.next(), &gaps, &levels)
		lists[w] = merge(lists[w], behind)
	}
	r.places = weigh(lists, len(r.sections))
	return lengths.done() && gaps.done() && levels.done()
}

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

// behind reads the places of one word behind the leads. A fault is left in
// gaps, where the caller finds it.
func (r *reader) behind(n int, gaps, levels *packed) []counts {
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

// merge joins two lists in order of section.
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

// weigh reduces the counts of each word in each section to the weighted
// frequency of BM25F, in which each field is set against its usual length:
//
//	Σ over fields of  v · tf / ((1 − b) + b · length / average length)
func weigh(lists [][]counts, sections int) [][]place {
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
	places := make([][]place, len(lists))
	for w, list := range lists {
		places[w] = make([]place, len(list))
		for i, c := range list {
			places[w][i] = place{c.section, frequency(c.in, lengths[c.section], average)}
		}
	}
	return places
}

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
