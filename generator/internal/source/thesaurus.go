package source

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// Thesaurus is what a language knows of the words that readers search with.
type Thesaurus struct {
	Groups   []WordGroup
	Families [][]string // forms of one word
	Asked    []AskedFor // words by which a calculator or a kind of page is asked for
}

// WordGroup is a line of words and phrases. Those of From find those of To; if To is
// empty, all of From mean the same.
type WordGroup struct{ From, To []string }

// AskedFor holds the words and phrases by which something is asked for: a calculator
// by its ID, or a kind of page.
type AskedFor struct {
	Calculator, Kind string // one of them
	Words            []string
	Line, Col        int
}

// Parts of a line of the thesaurus.
const (
	directionMark  = ">"   // parts the two sides of a directed group
	senseMark      = "(2)" // at the end of a word that is on two lines on purpose
	calculatorMark = "calc:"
	kindMark       = "kind:"
	familyMark     = "family:"
)

// ParseThesaurus parses a thesaurus, by language. Each line begins with the code of a
// language and a colon; its cells are separated by tabs. Empty lines and lines that
// start with # are ignored. A line is one of:
//
//	en:  a  b  c               words or phrases that mean the same
//	en:  a  b  >  c            words that find others, which do not find them
//	en:  family:  a  b         forms of one word that the stemmer does not join
//	en:  calc:ID  a  b         words by which a calculator is asked for
//	en:  kind:calculator  a  b words that ask for a kind of page
//
// A word with two senses is on two lines and ends with (2) on both. Groups keep the
// file's order. A bad line adds a fault and gives no group.
func ParseThesaurus(path string, data []byte, faults *fault.List) map[string]*Thesaurus {
	p := wordsParser{path: path, faults: faults, seen: map[string]seenWord{}}
	all := map[string]*Thesaurus{}
	for i, line := range strings.Split(string(data), "\n") {
		p.number, p.line = i+1, line
		if t := strings.TrimSpace(line); t == "" || strings.HasPrefix(t, "#") {
			continue
		}
		lang, cells, ok := p.cells()
		if !ok {
			continue
		}
		t := all[lang]
		if t == nil {
			t = &Thesaurus{}
			all[lang] = t
		}
		p.entry(lang, cells, t)
	}
	return all
}

// wordsParser reads a list line by line.
type wordsParser struct {
	path   string
	faults *fault.List
	number int
	line   string
	seen   map[string]seenWord // by language and word
}

// seenWord is the first line with a word, and whether it is marked there as one of
// two senses.
type seenWord struct {
	line   int
	marked bool
}

// cell is one cell of a line with its column.
type cell struct {
	text string
	col  int
}

// cells splits the current line into its language and its other cells, with the
// spaces in them normalized. For a line without a language, without other cells or
// with an empty one it adds a fault and returns false.
func (p *wordsParser) cells() (lang string, list []cell, ok bool) {
	parts := strings.Split(p.line, "\t")
	code, hasColon := strings.CutSuffix(strings.TrimSpace(parts[0]), ":")
	if !hasColon || !languageCode.MatchString(code) {
		p.add(fault.Error, 1, "bad-language",
			fmt.Sprintf("%q is not a language code", clip(strings.TrimSpace(parts[0]))),
			"begin the line with two or three lower-case letters, a colon and a tab: en:")
		return "", nil, false
	}
	col := utf8.RuneCountInString(parts[0]) + 2
	for _, part := range parts[1:] {
		text := strings.Join(strings.Fields(part), " ")
		if text == "" {
			p.add(fault.Error, col, "empty", "empty word between two tabs or at the end", "remove the extra tab")
			return "", nil, false
		}
		list = append(list, cell{text, col})
		col += utf8.RuneCountInString(part) + 1
	}
	return code, list, true
}

// entry parses the cells of a line and adds what they say to t. For a bad line it
// adds a fault and nothing else.
func (p *wordsParser) entry(lang string, cells []cell, t *Thesaurus) {
	if len(cells) == 0 {
		p.lone()
		return
	}
	head := cells[0]
	id, isCalculator := strings.CutPrefix(head.text, calculatorMark)
	kind, isKind := strings.CutPrefix(head.text, kindMark)
	isFamily := head.text == familyMark
	if isCalculator || isKind || isFamily {
		words, ok := p.words(cells[1:])
		switch {
		case !ok:
		case len(words) == 0 || isFamily && len(words) < 2:
			p.lone()
		case isFamily:
			t.Families = append(t.Families, words)
		case isCalculator:
			t.Asked = append(t.Asked, AskedFor{Calculator: id, Words: words, Line: p.number, Col: head.col})
		default:
			t.Asked = append(t.Asked, AskedFor{Kind: kind, Words: words, Line: p.number, Col: head.col})
		}
		return
	}
	at := slices.IndexFunc(cells, func(c cell) bool { return c.text == directionMark })
	directed := at >= 0
	if !directed {
		at = len(cells)
	}
	from, ok := p.words(cells[:at])
	if !ok {
		return
	}
	var to []string
	if directed {
		if to, ok = p.words(cells[at+1:]); !ok {
			return
		}
		for _, w := range to {
			if slices.ContainsFunc(from, func(f string) bool { return strings.EqualFold(f, w) }) {
				p.add(fault.Error, cells[at].col, "repeated", fmt.Sprintf("%q is on both sides", clip(w)), "remove one")
				return
			}
		}
	}
	if len(from) == 0 || directed && len(to) == 0 || !directed && len(from) < 2 {
		p.lone()
		return
	}
	for _, c := range cells[:at] {
		p.twice(lang, c)
	}
	t.Groups = append(t.Groups, WordGroup{from, to})
}

// words returns the words of cells without their marks. For a repeated word it adds
// a fault and returns false.
func (p *wordsParser) words(cells []cell) (list []string, ok bool) {
	for _, c := range cells {
		word := strings.TrimSpace(strings.TrimSuffix(c.text, senseMark))
		if slices.ContainsFunc(list, func(w string) bool { return strings.EqualFold(w, word) }) {
			p.add(fault.Error, c.col, "repeated", fmt.Sprintf("%q stands twice on this line", clip(word)), "remove one")
			return nil, false
		}
		list = append(list, word)
	}
	return list, true
}

// lone adds the fault of a line with too few words.
func (p *wordsParser) lone() {
	p.add(fault.Error, 1, "lone-word", "line has too few words",
		"write two words that mean the same, or one on each side of >; part the cells by tabs, not by spaces or commas")
}

// twice adds a warning if another line of the language has the word, regardless of
// case, unless both mark it as a word with two senses. Otherwise it records the word
// with the current line.
func (p *wordsParser) twice(lang string, c cell) {
	word, marked := strings.CutSuffix(c.text, senseMark)
	word = strings.TrimSpace(word)
	id := lang + "\t" + strings.ToLower(word)
	first, ok := p.seen[id]
	switch {
	case !ok:
		p.seen[id] = seenWord{p.number, marked}
	case !marked || !first.marked:
		p.add(fault.Warning, c.col, "repeated", fmt.Sprintf("%q stands on line %d too", clip(word), first.line),
			"put all words that mean the same on one line, or mark two senses: "+clip(word)+" "+senseMark)
	}
}

// add adds a fault at a column of the current line.
func (p *wordsParser) add(s fault.Severity, col int, code, text, hint string) {
	p.faults.Add(fault.Fault{Severity: s, File: p.path, Line: p.number, Col: col, Code: code, Text: text, Hint: hint,
		Source: strings.TrimSuffix(p.line, "\r")})
}
