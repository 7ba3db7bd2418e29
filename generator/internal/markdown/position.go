package markdown

import (
	"fmt"
	"sort"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// line is the file's line of a byte of the page's body.
func (w *walker) line(offset int) int {
	if w.starts == nil {
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
	start := w.starts[w.row(offset)]
	return line, utf8.RuneCount(w.src[start:offset]) + 1
}

// report adds a fault at a byte of the body.
func (w *walker) report(s fault.Severity, offset int, code, text, hint string) {
	line, col := w.position(offset)
	w.faults.Add(fault.Fault{Severity: s, File: w.file.Path, Line: line, Col: col, Code: code, Text: text, Hint: hint,
		Source: fault.Line(w.file.Data, line)})
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
