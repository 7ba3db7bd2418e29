package markdown

import (
	"bytes"
	"fmt"
	"strconv"
	"unicode/utf8"

	"coursebook/generator/internal/source"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/util"
)

// decode returns b with its backslash escapes and character references resolved,
// or as it is if raw.
func decode(b []byte, raw bool) string {
	if raw || !bytes.ContainsAny(b, `\&`) {
		return string(b)
	}
	return string(appendDecoded(nil, b, raw))
}

// appendDecoded appends b with its backslash escapes and character references
// resolved, each once: an escaped reference stays as written. Raw text is
// appended as it is.
func appendDecoded(to, b []byte, raw bool) []byte {
	for !raw {
		i := bytes.IndexAny(b, `\&`)
		if i < 0 {
			break
		}
		to, b = append(to, b[:i]...), b[i:]
		text, size := reference(b)
		switch {
		case b[0] == '\\' && len(b) > 1 && util.IsPunct(b[1]):
			to, b = append(to, b[1]), b[2:]
		case size > 0:
			to, b = append(to, text...), b[size:]
		default:
			to, b = append(to, b[0]), b[1:]
		}
	}
	return append(to, b...)
}

// reference reads the character reference at the start of b (CommonMark 0.31,
// section 2.5). It returns its characters and its length in bytes with & and ;. If
// b starts with none, or with an unknown name, text is "" and size 0. A number
// that is no character gives U+FFFD.
func reference(b []byte) (text string, size int) {
	const longest = 40 // bytes; the longest name has 33
	end := bytes.IndexByte(b[:min(len(b), longest)], ';')
	if end < 2 || b[0] != '&' {
		return "", 0
	}
	name := string(b[1:end])
	if name[0] != '#' {
		if e, ok := util.LookUpHTML5EntityByName(name); ok {
			return string(e.Characters), end + 1
		}
		return "", 0
	}
	digits, base, most := name[1:], 10, 7
	if digits != "" && (digits[0] == 'x' || digits[0] == 'X') {
		digits, base, most = digits[1:], 16, 6
	}
	n, err := strconv.ParseUint(digits, base, 32) // refuses signs, and "" too
	if err != nil || len(digits) > most {
		return "", 0
	}
	if n == 0 || !utf8.ValidRune(rune(n)) {
		return string(utf8.RuneError), end + 1
	}
	return string(rune(n)), end + 1
}

// checkReferences adds an error for each character reference below n that names a
// character which no text may hold. It looks at text, addresses, titles and info
// strings, not at code. The raw characters are refused when a file is read; see
// package source.
func (w *walker) checkReferences(n ast.Node) {
	if bytes.IndexByte(w.src, '&') < 0 {
		return
	}
	looked := 0
	address := func(offset int, address, title []byte) {
		if looked += len(address) + len(title); looked > len(w.src)+mostExpanded {
			return // a fault of its own; see expands
		}
		w.checkText(address, offset, false)
		w.checkText(title, offset, false)
	}
	// The callback returns no error, so Walk returns none.
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.CodeSpan:
			return ast.WalkSkipChildren, nil
		case *ast.Text:
			if !n.IsRaw() {
				w.checkText(n.Segment.Value(w.src), n.Segment.Start, true)
			}
		case *ast.Link:
			address(n.Pos(), n.Destination, n.Title)
		case *ast.Image:
			address(n.Pos(), n.Destination, n.Title)
		case *ast.FencedCodeBlock:
			if n.Info != nil {
				w.checkText(n.Info.Segment.Value(w.src), n.Info.Segment.Start, true)
			}
		}
		return ast.WalkContinue, nil
	})
}

// checkText adds an error for each reference of a text that names a character
// which no text may hold. offset is the byte of the body at which the text starts.
// If exact is false, the text is not a copy of the body from there on, and a
// reference is located at its first appearance behind offset, otherwise in the
// whole body.
func (w *walker) checkText(text []byte, offset int, exact bool) {
	for i := 0; i < len(text); i++ {
		if text[i] == '\\' {
			i++
			continue
		}
		decoded, size := reference(text[i:])
		if size == 0 {
			continue
		}
		written := text[i : i+size]
		if what := unfit(decoded); what != "" && w.reported <= mostFaults {
			at := offset + i
			if !exact {
				at = w.find(written, offset)
			}
			w.errorAt(at, "reference", "delete it, or write the sign that is meant", "%s stands for %s", written, what)
		}
		i += size - 1
	}
}

// find returns the byte of the first appearance of a text in the body at or behind
// offset, otherwise of the first in the whole body, otherwise offset.
func (w *walker) find(text []byte, offset int) int {
	offset = min(max(offset, 0), len(w.src))
	if i := bytes.Index(w.src[offset:], text); i >= 0 {
		return offset + i
	}
	if i := bytes.Index(w.src, text); i >= 0 {
		return i
	}
	return offset
}

// unfit returns the name of the first character of a decoded reference that no
// text may hold, or "" if all are allowed.
func unfit(decoded string) string {
	for _, r := range decoded {
		if r == utf8.RuneError {
			return "no character"
		}
		if _, text := source.Unfit(r); text != "" {
			return fmt.Sprintf("the %s", text)
		}
	}
	return ""
}
