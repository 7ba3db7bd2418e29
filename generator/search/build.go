package search

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// Entry is one section of a page. The entries of a page are adjacent.
type Entry struct {
	URL     string   // page address, with #anchor for a section below the first heading
	Title   string   // title of the page
	Section string   // heading of the section; empty above the first heading
	Lead    string   // what the page is about, on its first entry: its excerpt, before the text
	Text    string   // running text of the section, without the heading
	Steps   string   // what the steps of the section are called, which counts twice
	Words   []string // words and phrases by which the page is asked for
	Kind    string   // kind of page, copied to Hit; it sets the page's share (see find.go)
	Urgent  bool     // the page helps when something has gone wrong, copied to Hit
}

// Lists holds what is known of a language beyond the pages.
type Lists struct {
	Small  []Small // words that say little about what is wanted
	Groups []Group // the thesaurus
	Asks   []Ask   // phrases that ask for a kind of page
	// Families are forms of one word, as if they had one stem.
	Families [][]string
}

// Small is a word with its weight in tenths, 0 to 9. A word of weight 0 is not
// indexed.
type Small struct {
	Word  string
	Tenth int
}

// Group is a line of the thesaurus. A query with a word or phrase of From also finds
// those of To. If To is empty, all of From mean the same.
type Group struct{ From, To []string }

// Ask names phrases, such as "how many", by which a query asks for a kind of page.
type Ask struct {
	Kind    string
	Phrases []string
}

// Stemmer returns the stem of a lower-case word, which may have accents.
type Stemmer func(word string) string

// Constants of the index file. The first line is magic, language and checksum.
const (
	magic     = "coursebook-index 3"
	leadRunes = 90 // length of the lead of a page
)

// Covered returns the size of the text that an index covers, in bytes: titles (once
// for each page), headings and texts. The size limit of the index is a share of it.
func Covered(entries []Entry) int {
	n, page := 0, ""
	for _, e := range entries {
		address, _, _ := strings.Cut(e.URL, "#")
		if n == 0 || address != page {
			n += len(e.Title)
		}
		page = address
		n += len(e.Section) + len(e.Lead) + len(e.Text)
	}
	return n
}

// Build returns the index of one language, in the layout of the package comment.
// It is valid UTF-8, and the same for the same input. The entries of a page must
// be adjacent, preferably in reading order. A group of the thesaurus without two
// different sides is left out. If stem is nil, each word is its stem.
func Build(lang string, entries []Entry, lists Lists, stem Stemmer) string {
	b := builder{small: foldSmall(lists.Small), words: map[string]*entryWord{}}
	for i, e := range entries {
		b.addEntry(i, e)
	}
	b.addLists(lists)
	if stem == nil {
		stem = func(word string) string { return word }
	}
	body := b.write(stem, lists.Families)
	return magic + " " + clean(lang) + " " + checksum(body) + "\n" + body
}

type builder struct {
	small    []smallWord
	sections strings.Builder
	page     string // the last page line
	words    map[string]*entryWord
	lists    strings.Builder // lines of the lists
	scan     scanner
}

// foldSmall returns the small words folded and sorted; of a repeated one the first.
func foldSmall(list []Small) []smallWord {
	var small []smallWord
	for _, s := range list {
		if words := wordsOf(s.Word); len(words) == 1 {
			small = append(small, smallWord{words[0], float64(s.Tenth) / 10})
		}
	}
	slices.SortStableFunc(small, func(a, b smallWord) int { return strings.Compare(a.word, b.word) })
	return slices.CompactFunc(small, func(a, b smallWord) bool { return a.word == b.word })
}

// entryWord is a word of the entries, with what is computed once for each word
// instead of each occurrence.
type entryWord struct {
	stop  bool
	forms []form // its spellings in the texts

	// Occurrences after the leads: the number of sections, their gaps and count
	// levels as encoded in the index, the last encoded section, and the section
	// being counted with its count.
	sections     int
	gaps, levels []byte
	before, last int
	countsInLast int
}

// form is a spelling and the number of its occurrences.
type form struct {
	text string
	n    int
}

// uncounted is passed as the section of words that Open counts itself.
const uncounted = -1

// addEntry adds the section with index i, with the line of its page if that
// differs from the last one.
func (b *builder) addEntry(i int, e Entry) {
	address, anchor, hasAnchor := strings.Cut(clean(e.URL), "#")
	title, heading, text := clean(e.Title), clean(e.Section), clean(e.Text)
	words := make([]string, len(e.Words))
	for i, w := range e.Words {
		words[i] = clean(w)
	}
	list := strings.Join(words, ", ")
	urgent := ""
	if e.Urgent {
		urgent = "u"
	}
	lead, rest := "", text
	if page := "P" + join(address, title, list, clean(e.Kind), urgent); page != b.page || i == 0 {
		b.sections.WriteString(page + "\n")
		b.page = page
		about, after := clean(e.Lead), text
		if about == "" {
			about, after = text, ""
		}
		if lead, rest = cutLead(about, leadRunes); lead != "" && rest != "" {
			lead += " …"
		}
		rest = join(rest, after)
	}
	switch {
	case !hasAnchor:
		anchor = ""
	case anchor == slug(heading):
		anchor = "="
	default:
		anchor = "#" + anchor
	}
	b.sections.WriteString("S" + join(anchor, heading, lead) + "\n")
	b.addWords(title, uncounted)
	b.addWords(list, uncounted)
	b.addWords(heading, uncounted)
	b.addWords(lead, uncounted)
	b.addWords(rest, int32(i))
	b.addWords(e.Steps, int32(i))
}

// addWords adds the words of a text, other than stop words, to the vocabulary and,
// unless section is uncounted, to the counts of the section. Sections must be in
// ascending order.
func (b *builder) addWords(text string, section int32) {
	b.scan.read(text)
	for b.scan.next() {
		w := b.word()
		if w.stop {
			continue
		}
		w.countForm(text[b.scan.from:b.scan.to])
		if section != uncounted {
			w.countIn(int(section))
		}
	}
}

// word returns the entry of the word just scanned, which it adds if needed.
func (b *builder) word() *entryWord {
	if w, ok := b.words[string(b.scan.word)]; ok { // does not allocate
		return w
	}
	text := string(b.scan.word)
	w := &entryWord{stop: isStop(b.small, text), before: -1}
	b.words[text] = w
	return w
}

// countForm counts an occurrence of a spelling; after maxForms spellings a new one
// is ignored.
func (w *entryWord) countForm(text string) {
	for i := range w.forms {
		if w.forms[i].text == text {
			w.forms[i].n++
			return
		}
	}
	if len(w.forms) < maxForms {
		w.forms = append(w.forms, form{text, 1})
	}
}

// maxForms bounds the spellings of one word, because each occurrence is compared
// with them.
const maxForms = 50

// countIn counts an occurrence in a section. Sections must be in ascending order.
func (w *entryWord) countIn(section int) {
	if w.countsInLast > 0 && w.last == section {
		w.countsInLast++
		return
	}
	w.flush()
	w.last, w.countsInLast = section, 1
}

// flush encodes the section being counted, if there is one.
func (w *entryWord) flush() {
	if w.countsInLast == 0 {
		return
	}
	w.sections++
	w.gaps = appendNumber(w.gaps, w.last-w.before-1)
	w.levels = appendNumber(w.levels, level(w.countsInLast))
	w.before, w.countsInLast = w.last, 0
}

// addLists writes the lines of the lists and adds the words of the thesaurus to the
// vocabulary.
func (b *builder) addLists(lists Lists) {
	for _, s := range b.small {
		b.lists.WriteString("W" + join(s.word, string(rune('0'+int(s.weight*10+0.5)))) + "\n")
	}
	for _, a := range lists.Asks {
		for _, p := range a.Phrases {
			if words := wordsOf(p); len(words) > 0 {
				b.lists.WriteString("A" + join(clean(a.Kind), strings.Join(words, " ")) + "\n")
			}
		}
	}
	for _, family := range lists.Families {
		for _, form := range family {
			b.addWords(form, uncounted)
		}
	}
	for _, g := range lists.Groups {
		from := b.phrases(g.From)
		to := b.phrases(g.To)
		switch {
		case len(g.To) == 0 && len(from) > 1:
			b.lists.WriteString("G" + join(from...) + "\n")
		case len(from) > 0 && len(to) > 0:
			b.lists.WriteString("G" + join(from...) + "\t>\t" + join(to...) + "\n")
		default:
			continue
		}
		for _, m := range slices.Concat(from, to) {
			b.addWords(m, uncounted)
		}
	}
}

// phrases returns the phrases, cleaned, that have a word with a weight, each once.
func (b *builder) phrases(list []string) []string {
	var members []string
	for _, m := range list {
		if m = clean(m); len(dropStops(wordsOf(m), b.small)) > 0 && !slices.Contains(members, m) {
			members = append(members, m)
		}
	}
	return members
}

// write returns the body of the index: sections, lists, then the blocks of words.
func (b *builder) write(stem Stemmer, families [][]string) string {
	words := make([]string, 0, len(b.words))
	for text, w := range b.words {
		if !w.stop {
			words = append(words, text)
		}
	}
	slices.Sort(words)
	var out strings.Builder
	out.WriteString(b.sections.String())
	out.WriteString(b.lists.String())
	out.WriteByte('V')
	encodeWords(&out, words)
	out.WriteString("\nF")
	b.writeFamilies(&out, words, stem, families)
	out.WriteString("\nN")
	for _, text := range words {
		w := b.words[text]
		w.flush()
		writeNumber(&out, w.sections)
	}
	out.WriteString("\nD")
	for _, text := range words {
		out.Write(b.words[text].gaps)
	}
	out.WriteString("\nT")
	for _, text := range words {
		out.Write(b.words[text].levels)
	}
	out.WriteByte('\n')
	return out.String()
}

// writeFamilies writes for each word the distance to the previous word with the
// same stem; 0 for the first. The stems of the words of a family are one.
func (b *builder) writeFamilies(out *strings.Builder, words []string, stem Stemmer, families [][]string) {
	joined := map[string]string{} // a stem to that of the first word of its family
	for _, family := range families {
		first := string(fold(stem(accented(family[0]))).text)
		if earlier, ok := joined[first]; ok {
			first = earlier
		}
		for _, form := range family {
			joined[string(fold(stem(accented(form))).text)] = first
		}
	}
	last := map[string]int{}
	for i, w := range words {
		s := w
		if stemmable(w) {
			s = string(fold(stem(commonest(b.words[w].forms))).text)
		}
		if first, ok := joined[s]; ok {
			s = first
		}
		j, ok := last[s]
		if !ok {
			j = i
		}
		writeNumber(out, i-j)
		last[s] = i
	}
}

// levelCounts holds the counts that the levels represent. Counts are encoded in four
// levels: 1, 2, 3 to 4, 5 and more. BM25 saturates beyond that, and the index is a
// tenth smaller than with exact counts.
var levelCounts = [4]int{1, 2, 3, 5}

// level returns the index in levelCounts of the greatest count that does not
// exceed count.
func level(count int) int {
	n := 0
	for n < 3 && count >= levelCounts[n+1] {
		n++
	}
	return n
}

// commonest returns the most frequent spelling, in the form that accented returns;
// among equals the last in order, which prefers accents. It returns "" for no
// spellings.
func commonest(written []form) string {
	forms := make(map[string]int, len(written))
	for _, f := range written {
		forms[accented(f.text)] += f.n
	}
	best := ""
	for form, n := range forms {
		if best == "" || n > forms[best] || n == forms[best] && form > best {
			best = form
		}
	}
	return best
}

// stemmable reports whether a folded word consists of letters only; false for the
// empty word. Numbers and sizes have no endings.
func stemmable(word string) bool {
	for i := range len(word) {
		if !isLetter(word[i]) {
			return false
		}
	}
	return word != ""
}

// accented returns a word as a stemmer expects it: lower-case, accents composed,
// without apostrophes and soft hyphens.
func accented(word string) string {
	word = strings.ToLower(word)
	for _, pair := range [][2]string{{"a\u0301", "á"}, {"e\u0301", "é"}, {"i\u0301", "í"}, {"o\u0301", "ó"},
		{"u\u0301", "ú"}, {"u\u0308", "ü"}, {"n\u0303", "ñ"}, {"\u00ad", ""}, {"'", ""}, {"’", ""}, {"′", ""}} {
		word = strings.ReplaceAll(word, pair[0], pair[1])
	}
	return word
}

// clean returns a text that fits into a field of a line: bytes that are not valid
// UTF-8 are dropped, each run of control characters and spaces (ASCII) becomes one
// space, and there is none at the ends. A text that fits already is returned
// unchanged.
func clean(text string) string {
	if !utf8.ValidString(text) {
		text = strings.ToValidUTF8(text, "")
	}
	if isClean(text) {
		return text
	}
	out := make([]byte, 0, len(text))
	for i := 0; i < len(text); {
		from := i
		for i < len(text) && !isGap(text[i]) {
			i++
		}
		if from < i && len(out) > 0 {
			out = append(out, ' ')
		}
		out = append(out, text[from:i]...)
		for i < len(text) && isGap(text[i]) {
			i++
		}
	}
	return string(out)
}

// isGap reports whether c is an ASCII control character or a space.
func isGap(c byte) bool { return c <= ' ' || c == 0x7f }

// isClean reports whether clean would not change a valid text, the usual case.
func isClean(text string) bool {
	gap := true // a leading space is removed too
	for i := range len(text) {
		c := text[i]
		if isGap(c) && (gap || c != ' ') {
			return false
		}
		gap = c == ' '
	}
	return !gap || text == ""
}

// join returns fields as one line, separated by tabs. No field may hold a tab.
func join(fields ...string) string { return strings.Join(fields, "\t") }

// cutLead splits a text at the last space within limit characters, which neither
// part holds. A text of at most five quarters of limit is the lead alone. Without
// such a space the lead is "".
func cutLead(text string, limit int) (lead, rest string) {
	if utf8.RuneCountInString(text) <= limit+limit/4 {
		return text, ""
	}
	n, cut := 0, 0
	for i, r := range text {
		if n > limit && cut > 0 {
			break
		}
		if r == ' ' {
			cut = i
		}
		n++
	}
	if cut == 0 {
		return "", text
	}
	return text[:cut], text[cut+1:]
}

// slug returns the usual anchor of a heading: its letters and digits, folded, with
// hyphens between words. It returns "" if it has none. Other anchors are stored
// whole.
func slug(heading string) string {
	var b strings.Builder
	gap := false
	for _, c := range fold(heading).text {
		if !isLetter(c) && !isDigit(c) {
			gap = true
			continue
		}
		if gap && b.Len() > 0 {
			b.WriteByte('-')
		}
		gap = false
		b.WriteByte(c)
	}
	return b.String()
}
