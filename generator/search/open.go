package search

import (
	"errors"
	"strings"
	"unicode/utf8"
)

// Errors of Open.
var (
	ErrVersion = errors.New("this is not a search index of version 3")
	ErrDamaged = errors.New("the search index is damaged")
)

// maxWords bounds the total number of words in titles, headings and leads, so that a
// forged index takes limited time.
const maxWords = 1 << 21

// Open parses an index. It returns nil and ErrVersion for a text that is not an
// index of this version, nil and ErrDamaged if the checksum is wrong or a part is
// malformed.
func Open(text string) (*Index, error) {
	first, body, _ := strings.Cut(text, "\n")
	rest, ok := strings.CutPrefix(first, magic+" ")
	if !ok {
		return nil, ErrVersion
	}
	_, sum, _ := strings.Cut(rest, " ")
	if sum != checksum(body) || !utf8.ValidString(body) {
		return nil, ErrDamaged
	}
	r := reader{Index: &Index{}}
	if !r.lines(body) || !r.readWords() || !r.readPostings() || !r.readGroups() {
		return nil, ErrDamaged
	}
	return r.Index, nil
}

// reader holds the state of Open.
type reader struct {
	*Index
	thesaurus [][]string // of the thesaurus
	block     [26]string // the blocks of one line each, by letter
	used      int        // words looked up, against maxWords
}

// lines parses the lines of the body: pages, sections, lists and blocks. It
// returns false for a line of another form.
func (r *reader) lines(body string) bool {
	for _, line := range split(strings.TrimSuffix(body, "\n"), '\n') {
		if line == "" {
			return false
		}
		kind, rest := line[0], line[1:]
		fields := split(rest, '\t')
		switch {
		case kind == 'P' && len(fields) == 5:
			r.pages = append(r.pages, page{fields[0], fields[1], fields[2], fields[3], fields[4] == "u",
				len(r.sections), len(r.sections), 0, 0})
		case kind == 'S' && len(fields) == 3 && len(r.pages) > 0:
			r.sections = append(r.sections, newSection(len(r.pages)-1, fields))
			r.pages[len(r.pages)-1].to = len(r.sections)
		case kind == 'W' && len(fields) == 2 && len(fields[1]) == 1 && isDigit(fields[1][0]):
			if n := len(r.small); n > 0 && r.small[n-1].word >= fields[0] {
				return false
			}
			r.small = append(r.small, smallWord{fields[0], float64(fields[1][0]-'0') / 10})
		case kind == 'A' && len(fields) == 2:
			r.asks = append(r.asks, ask{fields[0], split(fields[1], ' ')})
		case kind == 'G':
			r.thesaurus = append(r.thesaurus, fields)
		case strings.IndexByte("VFNDT", kind) >= 0:
			r.block[kind-'A'] = rest
		default:
			return false
		}
	}
	return true
}

// newSection returns the section of a line with three fields: anchor, heading and
// lead. page is the index of its page.
func newSection(page int, fields []string) section {
	anchor := strings.TrimPrefix(fields[0], "#")
	if fields[0] == "=" {
		anchor = slug(fields[1])
	}
	return section{page, anchor, fields[1], fields[2]}
}

// readWords reads the vocabulary and its families. It returns false if a block is
// malformed.
func (r *reader) readWords() bool {
	var ok bool
	if r.words, ok = decodeWords(r.block['V'-'A']); !ok {
		return false
	}
	r.shared = make([]int, len(r.words))
	r.family = make([]int32, len(r.words))
	r.familyWords = make([][]int32, len(r.words))
	r.starts = make([][]member, len(r.words))
	back := numberReader{text: r.block['F'-'A']}
	for i := range r.words {
		if i > 0 {
			r.shared[i] = sharedBytes(r.words[i-1], r.words[i])
		}
		n := back.next()
		if n > i {
			return false
		}
		r.family[i] = int32(i)
		if n > 0 {
			r.family[i] = r.family[i-n]
			r.join(int32(i))
		}
	}
	r.endings = learnEndings(r.words, r.familyWords)
	return back.done()
}

// join adds a word to its family, which must be set.
func (r *reader) join(word int32) {
	family := r.family[word]
	if r.familyWords[family] == nil {
		r.familyWords[family] = append(r.familyWords[family], family)
	}
	r.familyWords[family] = append(r.familyWords[family], word)
}

// learnEndings returns the endings of the words of families, shortest first, the
// empty one among them: what follows the common beginning of the family. An ending
// must occur in two families.
func learnEndings(words []string, familyWords [][]int32) []string {
	var seen []ending
	for _, members := range familyWords {
		if len(members) == 0 {
			continue
		}
		base := words[members[0]]
		for _, m := range members[1:] {
			base = base[:sharedBytes(base, words[m])]
		}
		for _, m := range members {
			if end := words[m][len(base):]; len(base) >= minBase && len(end) <= maxEnding {
				seen = countEnding(seen, end)
			}
		}
	}
	endings := []string{""}
	for length := 1; length <= maxEnding; length++ {
		for _, e := range seen {
			if e.families > 1 && len(e.text) == length {
				endings = append(endings, e.text)
			}
		}
	}
	return endings
}

// ending is an ending with the number of families that have it.
type ending struct {
	text     string
	families int
}

// countEnding returns seen with one more family for the ending text, which is
// added if it is new.
func countEnding(seen []ending, text string) []ending {
	for i := range seen {
		if seen[i].text == text {
			seen[i].families++
			return seen
		}
	}
	return append(seen, ending{text, 1})
}

// readGroups resolves the words of the thesaurus to families. It returns false if a
// phrase has no words or one that is not in the vocabulary.
func (r *reader) readGroups() bool {
	for _, texts := range r.thesaurus {
		var sides [2][]phrase
		var exact [][]string
		side := 0
		for _, text := range texts {
			if text == ">" {
				side = 1
				continue
			}
			p, ok := r.phrase(text)
			if !ok {
				return false
			}
			sides[side] = append(sides[side], p)
			if side == 0 {
				exact = append(exact, r.exact(text, p))
			}
		}
		g := group{sides[0], sides[1], exact}
		if side == 0 {
			g.to = g.from
		}
		if len(g.from) == 0 {
			return false
		}
		for i, p := range g.from {
			r.starts[p[0]] = append(r.starts[p[0]], member{len(r.groups), i})
		}
		r.groups = append(r.groups, g)
	}
	return true
}

// exact returns the words of a text of which only one is in its phrase; nil for any
// other text.
func (r *reader) exact(text string, p phrase) []string {
	if words := wordsOf(text); len(p) == 1 && len(words) > 1 {
		return words
	}
	return nil
}

// phrase returns the families of the words of a text. ok is false if it has none, or
// one that is not in the vocabulary.
func (r *reader) phrase(text string) (p phrase, ok bool) {
	for _, w := range dropStops(wordsOf(text), r.small) {
		id := r.find(w)
		if id < 0 {
			return nil, false
		}
		p = append(p, r.family[id])
	}
	return p, len(p) > 0
}
