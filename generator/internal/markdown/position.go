package markdown

import (
	"fmt"
	"sort"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// line converts a byte offset in the page's body to a line number of its file. The
// offset is not below 0.
func (w *walker) line(offset int) int {
	if len(w.starts) == 0 {
		w.starts = append(w.starts, 0)
		for i, c := range w.src {
			if c == '\n' {
				w.starts = append(w.starts, i+1)
			}
		}
	}
	return w.first + w.row(offset)
}

// row returns the body's line, from 0, that contains the byte; -1 for an offset
// below 0. The starts of the lines must be known.
func (w *walker) row(offset int) int {
	return sort.Search(len(w.starts), func(i int) bool { return w.starts[i] > offset }) - 1
}

// position returns the file's line and column of a byte of the body, both from 1,
// the column in runes. An offset outside the body is moved to its nearer end.
func (w *walker) position(offset int) (line, col int) {
	offset = min(max(offset, 0), len(w.src))
	line = w.line(offset)
	// Positions are mostly asked for in order; counting on from the last one
	// keeps a very long line from costing its square.
	from, col := w.starts[w.row(offset)], 1
	if w.last.offset >= from && w.last.offset <= offset && w.last.col > 0 {
		from, col = w.last.offset, w.last.col
	}
	w.last = cachedPosition{offset, col + utf8.RuneCount(w.src[from:offset])}
	return line, w.last.col
}

// cachedPosition is a byte of the body and its column.
type cachedPosition struct{ offset, col int }

// mostFaults bounds the faults of one page: what comes after is seldom new.
const mostFaults = 100

// report adds a fault at a byte of the body. In place of fault number mostFaults
// of a page it adds the error that there are more; it drops those after it.
func (w *walker) report(s fault.Severity, offset int, code, text, hint string) {
	w.reported++
	if w.reported > mostFaults {
		return
	}
	line, col := w.position(offset)
	if w.reported == mostFaults {
		s, code, text, hint = fault.Error, "too-many", "page has more faults than are shown", "mend those above first"
	}
	w.faults.Add(fault.Fault{Severity: s, File: w.file.Path, Line: line, Col: col, Code: code, Text: text, Hint: hint,
		Source: w.sourceLine(line)})
}

// sourceLine returns the text of a line of the file, without its line feed; "" for
// a line that is not in the body.
func (w *walker) sourceLine(line int) string {
	row := line - w.first
	if row < 0 || row >= len(w.starts) {
		return ""
	}
	end := len(w.src)
	if row+1 < len(w.starts) {
		end = w.starts[row+1] - 1
	}
	return string(w.src[w.starts[row]:end])
}

// errorAt adds an error at the byte offset of the body. hint is the correction;
// format and args give the text.
func (w *walker) errorAt(offset int, code, hint, format string, args ...any) {
	w.report(fault.Error, offset, code, fmt.Sprintf(format, args...), hint)
}

// warnAt is errorAt for a warning.
func (w *walker) warnAt(offset int, code, hint, format string, args ...any) {
	w.report(fault.Warning, offset, code, fmt.Sprintf(format, args...), hint)
}

// clip returns s, cut to 60 runes and an ellipsis if it is longer, to quote it in
// a fault.
func clip(s string) string {
	const most = 60
	if utf8.RuneCountInString(s) <= most {
		return s
	}
	return string([]rune(s)[:most]) + "…"
}
