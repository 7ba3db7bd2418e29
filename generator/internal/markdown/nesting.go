package markdown

import "bytes"

// mostNested is how deep quotations and lists may stand in each other. Real
// pages need three; beyond a few thousand reading takes minutes.
const mostNested = 20

// nested reports a line that opens more blocks within each other than that.
func (w *walker) nested() bool {
	for offset := 0; offset < len(w.src); {
		end := bytes.IndexByte(w.src[offset:], '\n') + 1
		if end == 0 {
			end = len(w.src) - offset
		}
		if markers(w.src[offset:offset+end]) > mostNested {
			w.errorAt(offset, "nested", "take the text out of the inner lists and quotations", "more than %d lists and quotations within each other", mostNested)
			return true
		}
		offset += end
	}
	return false
}

// markers counts the marks of quotations and lists that a line starts with. A
// line of hyphens or stars alone is a rule.
func markers(line []byte) (n int) {
	if rest := bytes.Trim(line, " \t\n"); len(bytes.Trim(rest, "- \t")) == 0 || len(bytes.Trim(rest, "* \t")) == 0 {
		return 0
	}
	for i := 0; i < len(line); i++ {
		c := line[i]
		space := i+1 < len(line) && (line[i+1] == ' ' || line[i+1] == '\t')
		switch {
		case c == '>', space && (c == '-' || c == '*' || c == '+' || c == '.' || c == ')'):
			n++
		case c == ' ' || c == '\t' || '0' <= c && c <= '9':
		default:
			return n
		}
	}
	return n
}
