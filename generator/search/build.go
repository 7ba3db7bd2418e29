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
}

// Stemmer brings a lower-case word, accents in place, to its stem.
type Stemmer func(word string) string

// Names of the index file: the first line is magic, language and checksum.
const (
	magic     = "coursebook-index 1"
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
// the same input. Entries of one page stand together, best in reading order.
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
	stop   bool
	forms  map[string]int // its spellings, as written → how often
	places []wordPlace    // in texts behind the lead, by section
}

// wordPlace is how often a word stands in a section.
type wordPlace struct{ section, count int32 }

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
	if page := "P" + join(address, title, list, clean(e.Kind)); page != b.page || i == 0 {
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
		w.forms[text[b.scan.from:b.scan.to]]++
		if section != nowhere {
			w.countIn(section)
		}
	}
}

// word finds the word just scanned, or makes it.
func (b *builder) word() *entryWord {
	if w, ok := b.words[string(b.scan.word)]; ok { // makes no string
		return w
	}
	text := string(b.scan.word)
	w := &entryWord{stop: isStop(b.stops, text), forms: map[string]int{}}
	b.words[text] = w
	return w
}

func (w *entryWord) countIn(section int32) {
	if n := len(w.places); n > 0 && w.places[n-1].section == section {
		w.places[n-1].count++
		return
	}
	w.places = append(w.places, wordPlace{section, 1})
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
	var lengths, gaps, levels strings.Builder
	for _, w := range words {
		writePlaces(&lengths, &gaps, &levels, b.words[w].places)
	}
	out.WriteString("\nN" + lengths.String() + "\nD" + gaps.String() + "\nT" + levels.String() + "\n")
	return out.String()
}

// writeFamilies writes for each word how many words back the last one with
// the same stem stands; 0 for the first of its family.
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

func writePlaces(lengths, gaps, levels *strings.Builder, places []wordPlace) {
	pack(lengths, len(places))
	before := -1
	for _, p := range places {
		pack(gaps, int(p.section)-before-1)
		pack(levels, level(int(p.count)))
		before = int(p.section)
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

// commonest returns the most frequent spelling, whatever its case; among
// equals the last in order, which prefers accents.
func commonest(written map[string]int) string {
	forms := make(map[string]int, len(written))
	for form, n := range written {
		forms[accented(form)] += n
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
	var out strings.Builder
	out.Grow(len(text))
	gap := false
	for i, r := range text {
		switch {
		case r == utf8.RuneError && !strings.HasPrefix(text[i:], string(utf8.RuneError)):
		case r <= ' ' || r == 0x7f:
			gap = out.Len() > 0
		default:
			if gap {
				out.WriteByte(' ')
				gap = false
			}
			out.WriteRune(r)
		}
	}
	return out.String()
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
