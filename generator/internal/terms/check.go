package terms

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// Text is a text shown to readers, with its place. Rows of a file, labels of a picture
// and whole pages are checked alike.
type Text struct {
	File string
	// Line is the line in the file on which the text begins, from 1.
	Line int
	Col  int // the column at which it begins, from 1
	// Page is the slug of the page; empty for a text that is on no page.
	Page string
	Text string
}

// token is a word of a text in lower case.
type token struct {
	word       string
	start, end int  // bytes of the text
	joined     bool // nothing but blanks between this word and the one before
}

// Check adds a warning for each word of the texts, all in one language, that is not to
// be used for a thing of the list: its place, the word, and the word to use.
func (l List) Check(lang string, texts []Text, faults *fault.List) {
	for _, t := range texts {
		words := tokens(t.Text)
		for i := range l[lang] {
			l[lang][i].check(t, words, faults)
		}
	}
}

// check adds a warning for each place at which a text uses another word for the term.
func (t *Term) check(text Text, words []token, faults *fault.List) {
	for _, page := range t.rightOn {
		if page[0] == text.Page {
			return
		}
	}
	var right [][2]int // first and last word of each phrase in which the words are right
	for _, p := range t.right {
		for at := range words {
			if p.at(words, at) {
				right = append(right, [2]int{at, at + len(p) - 1})
			}
		}
	}
	for _, p := range t.not {
		for at := range words {
			if !p.at(words, at) || within(right, at, at+len(p)-1) {
				continue
			}
			start, end := words[at].start, words[at+len(p)-1].end
			line, col := text.position(start)
			faults.Add(fault.Fault{Severity: fault.Warning, File: text.File, Line: line, Col: col, Code: "term",
				Text:   "\"" + text.Text[start:end] + "\" is not the word for " + t.Name,
				Hint:   "write " + t.Use + ", or add the phrase to the list of terms where this is another thing",
				Source: text.line(start)})
		}
	}
}

// at reports whether the words from index at on are the phrase, with only blanks between.
func (p phrase) at(words []token, at int) bool {
	if at+len(p) > len(words) {
		return false
	}
	for i, pattern := range p {
		w := words[at+i]
		if i > 0 && !w.joined {
			return false
		}
		stem, open := strings.CutSuffix(pattern, "*")
		if w.word != pattern && !(open && strings.HasPrefix(w.word, stem)) {
			return false
		}
	}
	return true
}

// within reports whether the words first to last are part of one of the ranges.
func within(ranges [][2]int, first, last int) bool {
	for _, r := range ranges {
		if r[0] <= first && last <= r[1] {
			return true
		}
	}
	return false
}

// tokens returns the words of a text: runs of letters and digits. A hyphen or an
// apostrophe between two of them belongs to the word.
func tokens(text string) []token {
	var list []token
	joined := false
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		if !isWord(r) {
			joined = joined && (unicode.IsSpace(r) || strings.ContainsRune("*_[]", r))
			i += size
			continue
		}
		start := i
		for i < len(text) {
			r, size = utf8.DecodeRuneInString(text[i:])
			if next, _ := utf8.DecodeRuneInString(text[i+size:]); !isWord(r) && !(isJoint(r) && isWord(next)) {
				break
			}
			i += size
		}
		list = append(list, token{word: strings.ToLower(text[start:i]), start: start, end: i, joined: joined})
		joined = true
	}
	return list
}

func isWord(r rune) bool {
	return unicode.IsLetter(r) || unicode.IsDigit(r) || unicode.Is(unicode.Mn, r)
}

func isJoint(r rune) bool { return r == '-' || r == '\'' || r == '’' }

// position returns the file's line and column of the byte at offset.
func (t Text) position(offset int) (line, col int) {
	line, col = fault.Position([]byte(t.Text), offset)
	if line == 1 {
		col += t.Col - 1
	}
	return t.Line + line - 1, col
}

// line returns the line of the text that has the byte at offset.
func (t Text) line(offset int) string {
	line, _ := fault.Position([]byte(t.Text), offset)
	if line == 1 {
		return strings.Repeat(" ", t.Col-1) + fault.Line([]byte(t.Text), 1)
	}
	return fault.Line([]byte(t.Text), line)
}
