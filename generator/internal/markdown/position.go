package markdown

import (
	"fmt"
	"sort"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// line converts a byte offset in the page's body to a line number of its file.
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

// row is the body's line, from 0, that holds the byte.
func (w *walker) row(offset int) int {
	return sort.Search(len(w.starts), func(i int) bool { return w.starts[i] > offset }) - 1
}

// position is the file's line and column of a byte of the body; an offset
// below 0 is unknown and given as the body's first line.
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

// report adds a fault at a byte of the body.
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

// sourceLine is a line of the body by the file's number.
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

func (w *walker) errorAt(offset int, code, hint, format string, args ...any) {
	w.report(fault.Error, offset, code, fmt.Sprintf(format, args...), hint)
}

func (w *walker) warnAt(offset int, code, hint, format string, args ...any) {
	w.report(fault.Warning, offset, code, fmt.Sprintf(format, args...), hint)
}

// clip shortens what is quoted in a fault.
func clip(s string) string {
	const most = 60
	if utf8.RuneCountInString(s) <= most {
		return s
	}
	return string([]rune(s)[:most]) + "…"
}
