package source

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// ParseSynonyms parses a list of synonyms: on each line the words or phrases that
// mean the same, separated by tabs. A first column such as "en:" keeps the line to
// that language; lines without it are under "" and hold for all languages. Empty
// lines and lines that start with # are ignored. Groups keep the file's order. A
// bad line adds a fault and gives no group.
func ParseSynonyms(path string, data []byte, faults *fault.List) map[string][][]string {
	p := wordsParser{path: path, faults: faults, seen: map[string]int{}}
	groups := map[string][][]string{}
	for i, line := range strings.Split(string(data), "\n") {
		p.number, p.line = i+1, line
		if t := strings.TrimSpace(line); t == "" || strings.HasPrefix(t, "#") {
			continue
		}
		if lang, group := p.group(); len(group) > 0 {
			groups[lang] = append(groups[lang], group)
		}
	}
	return groups
}

// wordsParser reads the list line by line.
type wordsParser struct {
	path   string
	faults *fault.List
	number int
	line   string
	seen   map[string]int // language and word to the line that has it
}

// group parses the current line into its language, "" for all, and its two or more
// words. For a bad line it adds a fault and returns no words.
func (p *wordsParser) group() (lang string, group []string) {
	cells := strings.Split(p.line, "\t")
	col := 1
	if code, ok := strings.CutSuffix(strings.TrimSpace(cells[0]), ":"); ok {
		if !languageCode.MatchString(code) {
			p.add(fault.Error, 1, "bad-language", fmt.Sprintf("%q is not a language code", clip(code)),
				"write two or three lower-case letters and a colon: en:")
			return "", nil
		}
		lang = code
		col += utf8.RuneCountInString(cells[0]) + 1
		cells = cells[1:]
	}
	for _, cell := range cells {
		word := strings.Join(strings.Fields(cell), " ")
		switch {
		case word == "":
			p.add(fault.Error, col, "empty", "empty word between two tabs or at the end", "remove the extra tab")
			return lang, nil
		case slices.ContainsFunc(group, func(w string) bool { return strings.EqualFold(w, word) }):
			p.add(fault.Error, col, "repeated", fmt.Sprintf("%q stands twice on this line", clip(word)), "remove one")
			return lang, nil
		}
		p.twice(lang, word, col)
		group = append(group, word)
		col += utf8.RuneCountInString(cell) + 1
	}
	if len(group) < 2 {
		p.add(fault.Error, 1, "lone-word", "line has fewer than two words that mean the same",
			"part the words by tabs, not by spaces or commas")
		return lang, nil
	}
	return lang, group
}

// twice adds a warning if another line of the language has the word, regardless of
// case: the two groups then are one. Otherwise it records the word with the
// current line. col is the word's column.
func (p *wordsParser) twice(lang, word string, col int) {
	id := lang + "\t" + strings.ToLower(word)
	if first := p.seen[id]; first > 0 {
		p.add(fault.Warning, col, "repeated", fmt.Sprintf("%q stands on line %d too", clip(word), first),
			"put all words that mean the same on one line")
		return
	}
	p.seen[id] = p.number
}

// add adds a fault at a column of the current line.
func (p *wordsParser) add(s fault.Severity, col int, code, text, hint string) {
	p.faults.Add(fault.Fault{Severity: s, File: p.path, Line: p.number, Col: col, Code: code, Text: text, Hint: hint,
		Source: strings.TrimSuffix(p.line, "\r")})
}
