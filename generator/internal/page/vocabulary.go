package page

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Vocabulary finds the terms of one glossary in running text. It ignores case,
// accepts plurals (a last word with s or es), and prefers the longest term. It is
// safe for concurrent use.
type Vocabulary struct {
	terms []Term
	first map[string][]wording // by first word
}

// wording is one spelling of a term, split into lower-case words, without the
// first word.
type wording struct {
	rest []string
	term int // index of the term
}

// NewVocabulary returns the vocabulary of a glossary page. A wording that two
// terms share belongs to the first; one without letters and digits is ignored.
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

// Terms returns the terms in the order of the glossary.
func (v *Vocabulary) Terms() []Term { return v.terms }

// Next returns the next term in text at or after byte offset from: the bytes at
// which it starts and ends, and its index in Terms. All three are -1 if there is
// none.
func (v *Vocabulary) Next(text string, from int) (start, end, term int) {
	var buf [64]byte
	for at := from; ; {
		start, end := nextWord(text, at)
		if start < 0 {
			return -1, -1, -1
		}
		// The compiler does not allocate the string of this map index.
		if list := v.first[string(lower(buf[:0], text[start:end]))]; list != nil {
			if stop, term, ok := v.longest(list, text, end); ok {
				return start, stop, term
			}
		}
		at = end
	}
}

// longest returns the end of the longest wording of list that matches, and its
// term. end is the end of the first word in text. ok is false if none matches.
func (v *Vocabulary) longest(list []wording, text string, end int) (stop, term int, ok bool) {
	for _, w := range list {
		if at, fits := w.follows(text, end); fits && at > stop {
			stop, term, ok = at, w.term, true
		}
	}
	return stop, term, ok
}

// follows reports whether text[at:] begins with the rest of the wording, each word
// after one white space character or hyphen, the last one also in the plural. It
// returns the end of the match, 0 if there is none.
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

// plurals returns a word, and the word with s and with es.
func plurals(word string) []string { return []string{word, word + "s", word + "es"} }

// wordsOf returns the words of a term in lower case; nil if it has none.
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

// nextWord returns the next run of letters, marks and digits at or after byte
// from; start is -1 if there is none.
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

// isWordByte reports whether c is an ASCII letter or digit.
func isWordByte(c byte) bool {
	return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || '0' <= c && c <= '9'
}

// lower appends a word in lower case to buf, which must be empty.
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
