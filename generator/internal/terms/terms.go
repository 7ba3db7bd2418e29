// Package terms holds a manual to one word for one thing. It reads the list of
// terms of the content folder and finds, in texts of any origin, the words that the
// list has another word for.
package terms

import (
	"fmt"
	"regexp"
	"strings"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// List is a list of terms, by language code.
type List map[string][]Term

// Term is one thing with its word in one language.
type Term struct {
	Name string // the thing, in the first language
	Use  string // the word to use
	not  []phrase
	right,
	rightOn []phrase // phrases in which a word of not means another thing; pages, as one word each
}

// phrase is a phrase as patterns of words in lower case. A pattern that ends in a star
// stands for every word that begins so.
type phrase []string

var languageCode = regexp.MustCompile(`^[a-z]{2,3}(-[a-z0-9]{2,8})*$`)

// onPage begins an entry of the last column that names a page instead of a phrase.
const onPage = "page:"

// Parse parses a list of terms. A line holds, separated by tabs: the code of a language
// and a colon, the thing, the word to use, the words not to use for it, and the phrases
// or pages (page:slug) in which such a word is right; the last may be missing. Words and
// phrases are separated by commas. Empty lines and lines that start with # are ignored.
// A bad line is added to faults and left out.
func Parse(path string, data []byte, faults *fault.List) List {
	list := List{}
	for i, line := range strings.Split(string(data), "\n") {
		if t := strings.TrimSpace(line); t == "" || strings.HasPrefix(t, "#") {
			continue
		}
		lang, term, bad := parseLine(line)
		if bad.Text != "" {
			bad.File, bad.Line, bad.Source = path, i+1, line
			bad.Col = max(bad.Col, 1)
			faults.Add(bad)
			continue
		}
		list[lang] = append(list[lang], term)
	}
	return list
}

// parseLine parses a line that is not empty into a language code and a term. Of a bad
// line it returns a fault without its place in the file.
func parseLine(line string) (lang string, term Term, bad fault.Fault) {
	cells := strings.Split(line, "\t")
	lang, ok := strings.CutSuffix(strings.TrimSpace(cells[0]), ":")
	if !ok || !languageCode.MatchString(lang) {
		return "", term, fault.Fault{Code: "bad-language", Text: fmt.Sprintf("%q is not a language", cells[0]),
			Hint: "write its code and a colon: es:"}
	}
	if len(cells) < 4 || len(cells) > 5 {
		return "", term, fault.Fault{Code: "term-line",
			Text: fmt.Sprintf("line of a term has %d columns", len(cells)),
			Hint: "separate by tabs: language, thing, word to use, words not to use, where such a word is right"}
	}
	term.Name, term.Use = strings.TrimSpace(cells[1]), strings.TrimSpace(cells[2])
	term.not, bad = phrases(cells, 3)
	if bad.Text == "" && (term.Name == "" || term.Use == "" || len(term.not) == 0) {
		bad = fault.Fault{Code: "term-line", Text: "a column of the term is empty",
			Hint: "write the thing, the word to use and at least one word not to use"}
	}
	if bad.Text != "" || len(cells) < 5 {
		return lang, term, bad
	}
	all, bad := phrases(cells, 4)
	for _, p := range all {
		if slug, ok := strings.CutPrefix(p[0], onPage); ok {
			term.rightOn = append(term.rightOn, phrase{slug})
		} else {
			term.right = append(term.right, p)
		}
	}
	return lang, term, bad
}

// phrases returns the phrases of a cell. A fault of theirs has the column.
func phrases(cells []string, cell int) (list []phrase, bad fault.Fault) {
	if strings.TrimSpace(cells[cell]) == "" {
		return nil, bad
	}
	col := 1
	for _, c := range cells[:cell] {
		col += utf8.RuneCountInString(c) + 1
	}
	for part := range strings.SplitSeq(cells[cell], ",") {
		words := strings.Fields(strings.ToLower(part))
		for _, w := range words {
			if i := strings.IndexByte(w, '*'); w == "*" || i >= 0 && i < len(w)-1 {
				return nil, fault.Fault{Col: col, Code: "term-star", Text: fmt.Sprintf("star within %q", w),
					Hint: "put it at the end of the letters that the words have in common: solt*"}
			}
		}
		if len(words) == 0 {
			return nil, fault.Fault{Col: col, Code: "empty", Text: "empty entry between two commas",
				Hint: "remove the extra comma"}
		}
		list = append(list, words)
		col += utf8.RuneCountInString(part) + 1
	}
	return list, bad
}
