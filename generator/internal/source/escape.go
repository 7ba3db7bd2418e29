package source

import (
	"bytes"
	"regexp"
	"strconv"
	"unicode/utf8"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// escapeForm matches an escape of a text in double quotes (YAML 1.2, section
// 5.7). Its group holds the hexadecimal digits, or the one letter.
var escapeForm = regexp.MustCompile(`\\(?:x([[:xdigit:]]{2})|u([[:xdigit:]]{4})|U([[:xdigit:]]{8})|(.))`)

// letterEscapes are the escapes of one letter for a character which no
// text may hold.
var letterEscapes = map[byte]rune{'0': 0, 'a': '\a', 'b': '\b', 'e': 0x1B}

// escape returns the line and column, within the text, of the first escape
// sequence for c in the value n. For a value that has none they are those of its
// start.
func (r *reader) escape(n *yaml.Node, c rune) (line, col int) {
	if n.Style&yaml.DoubleQuotedStyle == 0 {
		return n.Line, n.Column
	}
	start := r.offset(n)
	for _, m := range escapeForm.FindAllSubmatchIndex(r.src[start:], -1) {
		if escaped(r.src[start:], m) == c {
			return fault.Position(r.src, start+m[0])
		}
	}
	return n.Line, n.Column
}

// escaped returns the character of a match of escapeForm in src, or -1 if the
// sequence is none of YAML's.
func escaped(src []byte, match []int) rune {
	if letter := match[8]; letter >= 0 {
		if c, ok := letterEscapes[src[letter]]; ok {
			return c
		}
		return -1
	}
	for i := 2; i < 8; i += 2 {
		if match[i] >= 0 {
			n, err := strconv.ParseUint(string(src[match[i]:match[i+1]]), 16, 32)
			if err == nil && n <= utf8.MaxRune {
				return rune(n)
			}
		}
	}
	return -1
}

// offset returns the byte of the text at which a node starts.
func (r *reader) offset(n *yaml.Node) int {
	at := 0
	for range n.Line - 1 {
		i := bytes.IndexByte(r.src[at:], '\n')
		if i < 0 {
			break
		}
		at += i + 1
	}
	for range n.Column - 1 {
		_, size := utf8.DecodeRune(r.src[at:])
		at += size
	}
	return at
}
