package search

import (
	"slices"
	"strings"
	"unicode/utf8"
)

// Entry is one section of a page: what Build makes findable.
type Entry struct {
	URL     string   // page address, with #anchor for a section below the first heading
	Title   string   // title of the page
	Section string   // heading of the section; empty above the first heading
	Text    string   // running text of the section, without the heading
	Words   []string // trade synonyms from the page header
	Kind    string   // kind of page, handed through to Hit
	Second  bool     // it says again what another page says, which is to precede it
}

// Stemmer brings a lower-case word, accents in place, to its stem.
type Stemmer func(word string) string

// Names of the index file: the first line is magic, language and checksum.
const (
	magic     = "coursebook-index 2"
	leadRunes = 32 // characters of each section's text kept in the index; the page itself gives the excerpt
)

// Covered is the size in bytes of the text an index covers: the titles (once
// a page), headings and texts. The budget of the index is measured on it.
func Covered(entries []Entry) int {
	n, page := 0, ""
	for _, e := range entries {
		address, _, _ := strings.Cut(e.URL, "#")
		if n == 0 || address != page {
			n += len(e.Title)
		}
		page = address
		n += len(e.Section) + len(e.Text)
	}
	return n
}

// Build writes the index of one language as text: valid UTF-8, the same for
// the same input. Entries of one page are adjacent, best in reading order.
// Each of synonyms is a group of words or phrases with one meaning. A nil
// stem leaves words as they are. The layout is described in the package
// comment.
func Build(lang string, entries []Entry, synonyms [][]string, stem Stemmer) string {
	b := builder{stops: stopWords(lang), words: map[string]*entryWord{}}
	for i, e := range entries {
		b.addEntry(i, e)
	}
	b.addSynonyms(synonyms)
	if stem == nil {
		stem = func(word string) string { return word }
	}
	body := b.write(stem)
	return magic + " " + clean(lang) + " " + checksum(body) + "\n" + body
}

type builder struct {
	stops    []string
	sections strings.Builder
	page     string // the page line in force
	words    map[string]*entryWord
	groups   strings.Builder // synonyms
	scan     scanner
}

// entryWord is a word of the entries. Nearly every word of a text is an old
// one, so what is costly is done once a word and not once a use.
type entryWord struct {
	stop  bool
	forms []form // its spellings, as written; mostly one or two

	// In texts behind the lead: in how many sections it occurs, the gaps
	// between these and the levels of their counts as the index has them, and
	// the last section with its count, which may not be done.
	sections     int
	gaps, levels []byte
	before, last int
	countsInLast int
}

// form is a spelling and how often it was found.
type form struct {
	text string
	n    int
}

// nowhere is the section of words that are known but not counted.
const nowhere = -1

func (b *builder) addEntry(i int, e Entry) {
	address, anchor, hasAnchor := strings.Cut(clean(e.URL), "#")
	title, heading, text := clean(e.Title), clean(e.Section), clean(e.Text)
	words := make([]string, len(e.Words))
	for i, w := range e.Words {
		words[i] = clean(w)
	}
	list := strings.Join(words, ", ")
	second := ""
	if e.Second {
		second = "2"
	}
	if page := "P" + join(address, title, list, clean(e.Kind), second); page != b.page || i == 0 {
		b.sections.WriteString(page + "\n")
		b.page = page
	}
	lead, rest := cutLead(text, leadRunes)
	switch {
	case !hasAnchor:
		anchor = ""
	case anchor == slug(heading):
		anchor = "="
	default:
		anchor = "#" + anchor
	}
	b.sections.WriteString("S" + join(anchor, heading, lead) + "\n")
	b.addWords(title, nowhere)
	b.addWords(list, nowhere)
	b.addWords(heading, nowhere)
	b.addWords(lead, nowhere)
	b.addWords(rest, int32(i))
}

// addWords notes the words of a text, and counts them in its section; sections
// come in rising order.
func (b *builder) addWords(text string, section int32) {
	b.scan.read(text)
	for b.scan.next() {
		w := b.word()
		if w.stop {
			continue
		}
		w.spelt(text[b.scan.from:b.scan.to])
		if section != nowhere {
			w.countIn(int(section))
		}
	}
}

// word finds the word just scanned, or makes it.
func (b *builder) word() *entryWord {
	if w, ok := b.words[string(b.scan.word)]; ok { // makes no string
		return w
	}
	text := string(b.scan.word)
	w := &entryWord{stop: isStop(b.stops, text), before: -1}
	b.words[text] = w
	return w
}

// spelt counts a spelling.
func (w *entryWord) spelt(text string) {
	for i := range w.forms {
		if w.forms[i].text == text {
			w.forms[i].n++
			return
		}
	}
	if len(w.forms) < mostForms {
		w.forms = append(w.forms, form{text, 1})
	}
}

// mostForms bounds the spellings of one word: no language has so many, and each
// use is compared with them.
const mostForms = 50

// countIn counts a use in a section; sections come in rising order.
func (w *entryWord) countIn(section int) {
	if w.countsInLast > 0 && w.last == section {
		w.countsInLast++
		return
	}
	w.endSection()
	w.last, w.countsInLast = section, 1
}

// endSection writes down the section counted last.
func (w *entryWord) endSection() {
	if w.countsInLast == 0 {
		return
	}
	w.sections++
	w.gaps = appendPacked(w.gaps, w.last-w.before-1)
	w.levels = appendPacked(w.levels, level(w.countsInLast))
	w.before, w.countsInLast = w.last, 0
}

func (b *builder) addSynonyms(groups [][]string) {
	for _, group := range groups {
		var members []string
		for _, m := range group {
			if m = clean(m); len(dropStops(wordsOf(m), b.stops)) > 0 && !slices.Contains(members, m) {
				members = append(members, m)
				b.addWords(m, nowhere)
			}
		}
		if len(members) > 1 {
			b.groups.WriteString("G" + join(members...) + "\n")
		}
	}
}

// write lays the index out: sections, synonyms, then the blocks of words.
func (b *builder) write(stem Stemmer) string {
	words := make([]string, 0, len(b.words))
	for text, w := range b.words {
		if !w.stop {
			words = append(words, text)
		}
	}
	slices.Sort(words)
	var out strings.Builder
	out.WriteString(b.sections.String())
	out.WriteString(b.groups.String())
	out.WriteByte('V')
	packWords(&out, words)
	out.WriteString("\nF")
	b.writeFamilies(&out, words, stem)
	out.WriteString("\nN")
	for _, text := range words {
		w := b.words[text]
		w.endSection()
		pack(&out, w.sections)
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

// writeFamilies writes for each word how many words back the last one with
// the same stem is; 0 for the first of its family.
func (b *builder) writeFamilies(out *strings.Builder, words []string, stem Stemmer) {
	last := map[string]int{}
	for i, w := range words {
		s := w
		if stemmable(w) {
			s = string(fold(stem(commonest(b.words[w].forms))).text)
		}
		j, ok := last[s]
		if !ok {
			j = i
		}
		pack(out, i-j)
		last[s] = i
	}
}

// Counts are kept in four levels: 1, 2, 3 to 4, 5 and more. BM25 flattens
// beyond that anyway, and the index is a tenth smaller.
var levelCounts = [4]int{1, 2, 3, 5}

func level(count int) int {
	n := 0
	for n < 3 && count >= levelCounts[n+1] {
		n++
	}
	return n
}

// commonest returns the most frequent spelling, regardless of its case; among
// equals the last in order, which prefers accents.
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

// stemmable: only plain words have endings; numbers and sizes do not.
func stemmable(word string) bool {
	for i := range len(word) {
		if !isLetter(word[i]) {
			return false
		}
	}
	return word != ""
}

// accented is a word as a stemmer wants it: lower-case, accents composed,
// apostrophes gone.
func accented(word string) string {
	word = strings.ToLower(word)
	for _, pair := range [][2]string{{"a\u0301", "á"}, {"e\u0301", "é"}, {"i\u0301", "í"}, {"o\u0301", "ó"},
		{"u\u0301", "ú"}, {"u\u0308", "ü"}, {"n\u0303", "ñ"}, {"\u00ad", ""}, {"'", ""}, {"’", ""}, {"′", ""}} {
		word = strings.ReplaceAll(word, pair[0], pair[1])
	}
	return word
}

// clean makes a text fit for one field of a line: valid UTF-8, no control
// characters, single spaces.
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

func isGap(c byte) bool { return c <= ' ' || c == 0x7f }

// isClean reports the most usual case: text that needs no change.
func isClean(text string) bool {
	gap := true // a space at the beginning is one too many
	for i := range len(text) {
		c := text[i]
		if isGap(c) && (gap || c != ' ') {
			return false
		}
		gap = c == ' '
	}
	return !gap || text == ""
}

func join(fields ...string) string { return strings.Join(fields, "\t") }

// cutLead parts a text at the last space within limit characters; a short
// remainder stays with the lead.
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

// slug is the usual anchor of a heading: its letters and digits, folded,
// parted by hyphens. Anchors made in another way are kept as they are.
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
