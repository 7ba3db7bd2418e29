package search

import (
	"strings"
	"unicode/utf8"
)

// Numbers are encoded in printable ASCII: as many characters from '!' to '>' (30
// values) as needed, then one from '?' to '~' (64 values). Most numbers are below 64
// and take one character, which gzip compresses best.
const (
	lastBase, moreBase = 64, 30
	lastFirst          = '?'
	moreFirst          = '!'
	maxNumber          = 1 << 24 // greater numbers are errors
)

// writeNumber writes n, at least 0, as appendNumber does.
func writeNumber(b *strings.Builder, n int) {
	var buf [8]byte
	b.Write(appendNumber(buf[:0], n))
}

// appendNumber appends n, at least 0, in the encoding of the index to to and
// returns it.
func appendNumber(to []byte, n int) []byte {
	last := n % lastBase
	for n /= lastBase; n > 0; n /= moreBase {
		to = append(to, byte(moreFirst+n%moreBase))
	}
	return append(to, byte(lastFirst+last))
}

// numberReader decodes the numbers of one block.
type numberReader struct {
	text string
	bad  bool // the text ended early or contains another character
}

// next returns the next number. At the end, and for a character that is not part
// of a number or a number above maxNumber, it sets bad; the result is then of no
// use.
func (p *numberReader) next() int {
	high, scale := 0, 1
	for i := range len(p.text) {
		c := int(p.text[i])
		switch {
		case c >= lastFirst && c < lastFirst+lastBase:
			p.text = p.text[i+1:]
			n := high*lastBase + c - lastFirst
			p.bad = p.bad || n > maxNumber
			return n
		case c >= moreFirst && c < moreFirst+moreBase && scale < maxNumber:
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

// done reports whether the block was read to its end without an error.
func (p *numberReader) done() bool { return !p.bad && p.text == "" }

// encodeWords writes sorted words front-coded: a capital letter for the number of
// bytes shared with the previous word (at most 25), then the rest. Words contain no
// ASCII capitals, so that no separator is needed.
func encodeWords(b *strings.Builder, words []string) {
	before := ""
	for _, w := range words {
		n := min(sharedBytes(before, w), 25)
		for n > 0 && !utf8.RuneStart(w[n]) {
			n-- // a cut inside a character would be invalid UTF-8
		}
		b.WriteByte(byte('A' + n))
		b.WriteString(w[n:])
		before = w
	}
}

// decodeWords is the inverse of encodeWords. It returns nil and false if the text
// is not a strictly ascending list of words.
func decodeWords(text string) (words []string, ok bool) {
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

// sharedBytes returns the number of bytes at the start that a and b have in
// common.
func sharedBytes(a, b string) int {
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] {
		n++
	}
	return n
}

// checksum returns the 32-bit FNV-1a hash (Fowler, Noll, Vo) as eight hex digits.
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
