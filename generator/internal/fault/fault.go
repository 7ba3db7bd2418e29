// Package fault holds located messages about bad input: file, line and column,
// what is wrong, and how to correct it. Every part of the generator collects its
// faults in one List, so that an author sees all of them at once, sorted.
package fault

import (
	"bytes"
	"cmp"
	"fmt"
	"path"
	"slices"
	"sync"
	"unicode/utf8"
)

// Severity is Error or Warning. Only errors stop the build.
type Severity uint8

const (
	// Error stops the build before anything is written.
	Error Severity = iota
	// Warning is shown and counted, and stops nothing.
	Warning
)

// String returns the word shown to the author: error or warning.
func (s Severity) String() string {
	if s == Warning {
		return "warning"
	}
	return "error"
}

// Fault is one located message.
type Fault struct {
	// Severity is Error by default.
	Severity Severity
	// File is a slash path; empty when the fault belongs to no file.
	File string
	// Line and Col count from 1; Col counts runes. 0 means unknown.
	Line, Col int
	// Text is a sentence with a lower-case start and no full stop.
	Text string
	// Source is the whole source line, without its line ending.
	Source string
	// Hint is a correction in the imperative; may be empty.
	Hint string
	// Code is a short, stable, kebab-case name of the kind of fault.
	Code string
}

// Error returns the first line that Print writes, so that a Fault is also an
// error.
func (f Fault) Error() string {
	text := f.Severity.String() + ": " + escape(f.Text)
	switch {
	case f.File == "":
		return text
	case f.Line < 1:
		return escape(f.File) + ": " + text
	case f.Col < 1:
		return fmt.Sprintf("%s:%d: %s", escape(f.File), f.Line, text)
	}
	return fmt.Sprintf("%s:%d:%d: %s", escape(f.File), f.Line, f.Col, text)
}

// List collects faults. The zero value is ready, and all methods are safe for
// concurrent use.
type List struct {
	mu     sync.Mutex
	faults []Fault
}

// Add appends faults to the list.
func (l *List) Add(faults ...Fault) {
	l.mu.Lock()
	defer l.mu.Unlock()
	l.faults = append(l.faults, faults...)
}

// Errorf adds an error without a hint or a source line.
func (l *List) Errorf(code, file string, line, col int, format string, args ...any) {
	l.Add(Fault{File: file, Line: line, Col: col, Code: code, Text: fmt.Sprintf(format, args...)})
}

// Warnf adds a warning without a hint or a source line.
func (l *List) Warnf(code, file string, line, col int, format string, args ...any) {
	l.Add(Fault{Severity: Warning, File: file, Line: line, Col: col, Code: code, Text: fmt.Sprintf(format, args...)})
}

// All returns the faults sorted by file, line, column and text, each once.
func (l *List) All() []Fault {
	l.mu.Lock()
	all := slices.Clone(l.faults)
	l.mu.Unlock()
	slices.SortStableFunc(all, compare)
	return slices.CompactFunc(all, func(a, b Fault) bool { return compare(a, b) == 0 })
}

// compare orders faults by file, line, column, text and severity. Faults that
// compare equal are duplicates.
func compare(a, b Fault) int {
	return cmp.Or(
		cmp.Compare(a.File, b.File),
		cmp.Compare(a.Line, b.Line),
		cmp.Compare(a.Col, b.Col),
		cmp.Compare(a.Text, b.Text),
		cmp.Compare(a.Severity, b.Severity),
	)
}

// Errors counts the distinct errors.
func (l *List) Errors() int { return count(l.All(), Error) }

// Warnings counts the distinct warnings.
func (l *List) Warnings() int { return count(l.All(), Warning) }

// count returns the number of faults of a severity.
func count(faults []Fault, s Severity) int {
	n := 0
	for _, f := range faults {
		if f.Severity == s {
			n++
		}
	}
	return n
}

// Under returns copies of the faults with dir joined before every file name. The
// parts of the generator name files relative to the folder they read; the command
// shows them relative to the working folder.
func Under(dir string, faults []Fault) []Fault {
	out := slices.Clone(faults)
	for i := range out {
		if out[i].File != "" {
			out[i].File = path.Join(dir, out[i].File)
		}
	}
	return out
}

// Line returns line n (from 1) of data without its line ending, or "" where
// there is no such line.
func Line(data []byte, n int) string {
	for ; n > 1; n-- {
		i := bytes.IndexByte(data, '\n')
		if i < 0 {
			return ""
		}
		data = data[i+1:]
	}
	if n < 1 {
		return ""
	}
	if i := bytes.IndexByte(data, '\n'); i >= 0 {
		data = data[:i]
	}
	return string(bytes.TrimSuffix(data, []byte("\r")))
}

// Position returns the line and the column of a byte offset. Both count from 1, the
// column in runes. An offset outside data is moved to its nearer end.
func Position(data []byte, offset int) (line, col int) {
	before := data[:min(max(offset, 0), len(data))]
	start := bytes.LastIndexByte(before, '\n') + 1
	return bytes.Count(before, []byte("\n")) + 1, utf8.RuneCount(before[start:]) + 1
}
