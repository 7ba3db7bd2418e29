package page

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Vocabulary finds the terms of one glossary in running text, regardless of their
// case, in the plural too (a last word with s or es), the longest first. It
// is safe for concurrent use.
type Vocabulary struct {
	terms []Term
	first map[string][]wording
}

// wording is one way to write a term, split into lower-case words. The first
// word is the key that leads to it.
type wording struct {
	rest []string
	term int
}

// NewVocabulary indexes the terms of a glossary page. Where two terms share a
// wording, the first has it.
func NewVocabulary(terms []Term) *Vocabulary {
	v := &Vocabulary{terms: terms, first: map[string][]wording{}}
	seen := map[string]bool{}
	for i, t := range terms {
		for _, name := range append([]string{t.Name}, t.Also...) {
			words := wordsOf(name)
			key := strings.Join(words, " ")
			if len(words) == 0 || seen[key] {
				continue
			}
			seen[key] = true
			w := wording{rest: words[1:], term: i}
			heads := []string{words[0]}
			if len(words) == 1 {
				heads = plurals(words[0])
			}
			for _, head := range heads {
				v.first[head] = append(v.first[head], w)
			}
		}
	}
	return v
}

// Terms are the terms in the glossary's order.
func (v *Vocabulary) Terms() []Term { return v.terms }

// Next finds the next term in text at or after byte from: where it starts and
// ends, and its place in Terms. It answers start -1 when there is none.
func (v *Vocabulary) Next(text string, from int) (start, end, term int) {
	var buf [64]byte
	for at := from; ; {
		start, end := nextWord(text, at)
		if start < 0 {
			return -1, -1, -1
		}
		// A map is asked with a slice of bytes without making a string of it.
		if list := v.first[string(lower(buf[:0], text[start:end]))]; list != nil {
			if stop, term, ok := v.longest(list, text, end); ok {
				return start, stop, term
			}
		}
		at = end
	}
}

// longest picks the wording that goes furthest from the end of its first word.
func (v *Vocabulary) longest(list []wording, text string, end int) (stop, term int, ok bool) {
	for _, w := range list {
		if at, fits := w.follows(text, end); fits && at > stop {
			stop, term, ok = at, w.term, true
		}
	}
	return stop, term, ok
}

// follows reports whether the rest of the wording is at text[at:], each
// word after one space, line feed or hyphen.
func (w wording) follows(text string, at int) (end int, ok bool) {
	for i, word := range w.rest {
		r, size := utf8.DecodeRuneInString(text[at:])
		if size == 0 || !unicode.IsSpace(r) && r != '-' {
			return 0, false
		}
		start, stop := nextWord(text, at+size)
		if start != at+size {
			return 0, false
		}
		got := strings.ToLower(text[start:stop])
		if got != word && (i < len(w.rest)-1 || got != word+"s" && got != word+"es") {
			return 0, false
		}
		at = stop
	}
	return at, true
}

func plurals(word string) []string { return []string{word, word + "s", word + "es"} }

// wordsOf splits a term as nextWord splits running text.
func wordsOf(name string) (words []string) {
	for at := 0; ; {
		start, end := nextWord(name, at)
		if start < 0 {
			return words
		}
		words = append(words, strings.ToLower(name[start:end]))
		at = end
	}
}

// nextWord finds the next run of letters and digits at or after from.
func nextWord(text string, from int) (start, end int) {
	start = -1
	for i := from; i < len(text); {
		c := text[i]
		if c < utf8.RuneSelf {
			if isWordByte(c) {
				if start < 0 {
					start = i
				}
			} else if start >= 0 {
				return start, i
			}
			i++
			continue
		}
		r, size := utf8.DecodeRuneInString(text[i:])
		if unicode.IsLetter(r) || unicode.IsMark(r) || unicode.IsDigit(r) {
			if start < 0 {
				start = i
			}
		} else if start >= 0 {
			return start, i
		}
		i += size
	}
	return start, len(text)
}

func isWordByte(c byte) bool {
	return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9'
}

// lower appends a word in lower case.
func lower(buf []byte, word string) []byte {
	for i := 0; i < len(word); i++ {
		c := word[i]
		if c >= utf8.RuneSelf {
			return append(buf[:0], strings.ToLower(word)...)
		}
		if 'A' <= c && c <= 'Z' {
			c += 'a' - 'A'
		}
		buf = append(buf, c)
	}
	return buf
}
