package fault

import (
	"fmt"
	"io"
	"strings"
	"unicode"
	"unicode/utf8"
)

// maxShown is the number of runes of a source line that are shown. Longer lines
// are cut to the part around the column.
const maxShown = 120

// indent precedes each line that belongs to the fault above it.
const indent = "  "

// Print writes each fault as
//
//	path:line:col: error: text
//	  the source line
//	      ^
//	  hint: what to do
//
// and closes with a count such as "2 errors, 1 warning". It writes nothing
// when there are no faults. Control and direction characters are escaped, so that
// a source line can neither hide text nor control the terminal.
func Print(w io.Writer, faults []Fault) {
	if len(faults) == 0 {
		return
	}
	var b strings.Builder
	for _, f := range faults {
		b.WriteString(f.Error() + "\n")
		if f.Source != "" && f.Line > 0 {
			writeSource(&b, f.Source, f.Col)
		}
		if f.Hint != "" {
			b.WriteString(indent + "hint: " + escape(f.Hint) + "\n")
		}
	}
	b.WriteString(Count(faults) + "\n")
	io.WriteString(w, b.String())
}

// Count returns the last line of Print, such as "2 errors, 1 warning". Severities
// without faults are left out. Without faults it returns "no faults".
func Count(faults []Fault) string {
	var parts []string
	for _, s := range []Severity{Error, Warning} {
		switch n := count(faults, s); n {
		case 0:
		case 1:
			parts = append(parts, "1 "+s.String())
		default:
			parts = append(parts, fmt.Sprintf("%d %ss", n, s))
		}
	}
	if parts == nil {
		return "no faults"
	}
	return strings.Join(parts, ", ")
}

// writeSource writes the source line and, where col is known, a caret under that
// column. Tabs are copied into the line of the caret, so that both lines align for
// any tab width. Every other rune counts as one column.
func writeSource(b *strings.Builder, source string, col int) {
	shown, col := window(source, col)
	var line, pad strings.Builder
	at := 1
	for i := 0; i < len(shown); at++ {
		r, size := utf8.DecodeRuneInString(shown[i:])
		part := shown[i : i+size]
		if r != '\t' {
			part = escape(part)
		}
		line.WriteString(part)
		if at < col {
			pad.WriteString(blank(part))
		}
		i += size
	}
	b.WriteString(indent + strings.TrimRight(line.String(), " \t") + "\n")
	if col > 0 {
		b.WriteString(indent + pad.String() + "^\n")
	}
}

// blank returns a tab for a tab, otherwise a space for each rune of part.
func blank(part string) string {
	if part == "\t" {
		return part
	}
	return strings.Repeat(" ", utf8.RuneCountInString(part))
}

// window returns a line cut to maxShown runes around the column, with an ellipsis
// at each cut, and the column within the result. A line of at most maxShown runes
// is returned unchanged. A column past the end of the line is moved to just after
// it; 0 remains 0.
func window(source string, col int) (string, int) {
	n := utf8.RuneCountInString(source)
	col = min(col, n+1)
	if n <= maxShown {
		return source, col
	}
	first := min(max(0, col-maxShown/2), n-maxShown)
	var starts []int
	for i := 0; i < len(source); {
		starts = append(starts, i)
		_, size := utf8.DecodeRuneInString(source[i:])
		i += size
	}
	starts = append(starts, len(source))
	cut := source[starts[first]:starts[first+maxShown]]
	if first > 0 {
		cut = "…" + cut
		if col > 0 {
			col = col - first + 1
		}
	}
	if first+maxShown < n {
		cut += "…"
	}
	return cut, col
}

// escape returns s with bytes that are not UTF-8, and runes that hidden reports,
// written as \xNN, \uNNNN or \UNNNNNNNN. Other text is unchanged.
func escape(s string) string {
	if !strings.ContainsFunc(s, hidden) && utf8.ValidString(s) {
		return s
	}
	var b strings.Builder
	for i := 0; i < len(s); {
		r, size := utf8.DecodeRuneInString(s[i:])
		switch {
		case r == utf8.RuneError && size == 1, hidden(r) && r < 0x80:
			fmt.Fprintf(&b, `\x%02x`, s[i])
		case hidden(r) && r > 0xFFFF:
			fmt.Fprintf(&b, `\U%08x`, r)
		case hidden(r):
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			b.WriteString(s[i : i+size])
		}
		i += size
	}
	return b.String()
}

// hidden reports whether a terminal would not show a rune as itself: controls,
// format characters such as direction marks, line and paragraph separators.
func hidden(r rune) bool {
	return unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp)
}
