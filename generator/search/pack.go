package search

import (
	"strings"
	"unicode/utf8"
)

// Numbers are written in printable ASCII, so that an index is ordinary text:
// a last character from '?' to '~' (64 values), before it as many characters
// from '!' to '>' (30 values) as the number needs. Numbers below 64, by far
// the most, take one character, which is what gzip packs best.
const (
	lastBase, moreBase = 64, 30
	lastFirst          = '?'
	moreFirst          = '!'
	maxPacked          = 1 << 24 // beyond any count an index holds
)

func pack(b *strings.Builder, n int) {
	var room [8]byte
	b.Write(appendPacked(room[:0], n))
}

func appendPacked(to []byte, n int) []byte {
	last := n % lastBase
	for n /= lastBase; n > 0; n /= moreBase {
		to = append(to, byte(moreFirst+n%moreBase))
	}
	return append(to, byte(lastFirst+last))
}

// packed reads numbers from the text of one block.
type packed struct {
	text string
	bad  bool // the text ended early, or held something else
}

func (p *packed) next() int {
	high, scale := 0, 1
	for i := range len(p.text) {
		c := int(p.text[i])
		switch {
		case c >= lastFirst && c < lastFirst+lastBase:
			p.text = p.text[i+1:]
			n := high*lastBase + c - lastFirst
			p.bad = p.bad || n > maxPacked
			return n
		case c >= moreFirst && c < moreFirst+moreBase && scale < maxPacked:
			high += (c - moreFirst) * scale
			scale *= moreBase
		default:
			p.bad = true
			return 0
		}
	}
	p.bad = true
	return 0
}

// done reports whether the block was read to its end without a fault.
func (p *packed) done() bool { return !p.bad && p.text == "" }

// packWords writes sorted words front-coded: a capital letter for the number
// of bytes shared with the word before (at most 25), then the rest. Words
// hold no ASCII capitals, so nothing needs to part them.
func packWords(b *strings.Builder, words []string) {
	before := ""
	for _, w := range words {
		n := min(sharedBytes(before, w), 25)
		for n > 0 && !utf8.RuneStart(w[n]) {
			n-- // never part a character: the index is valid UTF-8
		}
		b.WriteByte(byte('A' + n))
		b.WriteString(w[n:])
		before = w
	}
}

// unpackWords reads what packWords wrote; ok is false where the text is not a
// strictly rising list of words.
func unpackWords(text string) (words []string, ok bool) {
	before := ""
	for text != "" {
		n := int(text[0]) - 'A'
		if n < 0 || n > 25 || n > len(before) {
			return nil, false
		}
		end := 1
		for end < len(text) && (text[end] < 'A' || text[end] > 'Z') {
			end++
		}
		w := before[:n] + text[1:end]
		if w <= before {
			return nil, false
		}
		words = append(words, w)
		before, text = w, text[end:]
	}
	return words, true
}

func sharedBytes(a, b string) int {
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] {
		n++
	}
	return n
}

// checksum is FNV-1a over 32 bits (Fowler, Noll, Vo), as eight hex digits.
func checksum(text string) string {
	h := uint32(2166136261)
	for i := range len(text) {
		h = (h ^ uint32(text[i])) * 16777619
	}
	const hex = "0123456789abcdef"
	var out [8]byte
	for i := range out {
		out[i] = hex[h>>(28-4*i)&15]
	}
	return string(out[:])
}
