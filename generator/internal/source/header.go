package source

import (
	"bytes"
	"cmp"

	"coursebook/generator/internal/fault"

	"go.yaml.in/yaml/v3"
)

// PageKinds are the values of the header's kind; the first is the default.
var PageKinds = []string{"procedure", "reference", "home", "glossary", "cautions", "course", "lesson"}

// maxOrder bounds the header's order, so that sums of it stay small.
const maxOrder = 1_000_000

// Header is the YAML between the --- lines at the top of a page.
type Header struct {
	// Title is never empty in a good header.
	Title, Summary string
	// Stage is the ID of a stage in manual.yaml; procedures must name one.
	Stage string
	// Kind is one of PageKinds.
	Kind string
	// When and Time are free text: "before the first lift", "45 min".
	When, Time string
	// Order sorts pages within a stage; 0 when not given.
	Order int
	// Roles are role IDs, Gear things to bring, Sources citations (or exactly
	// "common practice"), Next slugs of pages, Words synonyms for the search.
	Roles, Gear, Sources, Next, Words []string
	// Lessons are the slugs of a course's lessons in order, Reads those of the
	// pages that a lesson has its reader read.
	Lessons, Reads []string
	// Least are amounts of the page that may not get smaller on the way to
	// other units, such as the distance from a power line.
	Least []string
	// Call reports whether the page has the button that calls the emergency number.
	Call bool
	// Revised is a date YYYY-MM-DD, or empty.
	Revised string
	// Lines holds the file's line of each key given.
	Lines map[string]int
}

// ParseHeader parses the header of a page. It returns it with the Markdown below
// it and the file's line on which that begins. It adds errors to faults; the
// header then holds what could be read. A page without a header is all body; a
// header that is not closed gives no body. An empty kind becomes the first of
// PageKinds.
func ParseHeader(path string, data []byte, faults *fault.List) (h Header, body []byte, bodyLine int) {
	h = Header{Lines: map[string]int{}}
	defer func() { h.Kind = cmp.Or(h.Kind, PageKinds[0]) }()
	text, body, bodyLine, ok := splitHeader(path, data, faults)
	if !ok {
		return h, body, bodyLine
	}
	r := reader{path: path, src: text, line: 2, faults: faults}
	n := r.document()
	if n == nil && r.bad {
		return h, body, bodyLine
	}
	h.Lines = r.mapping(n, "page header", []key{
		{"title", true, r.text("title", &h.Title)},
		{"summary", false, r.text("summary", &h.Summary)},
		{"stage", false, r.id("stage", &h.Stage)},
		{"kind", false, r.oneOf("kind", PageKinds, &h.Kind)},
		{"order", false, r.whole("order", 0, maxOrder, &h.Order)},
		{"roles", false, r.list("roles", &h.Roles)},
		{"when", false, r.text("when", &h.When)},
		{"time", false, r.text("time", &h.Time)},
		{"gear", false, r.list("gear", &h.Gear)},
		{"sources", false, r.list("sources", &h.Sources)},
		{"next", false, r.list("next", &h.Next)},
		{"lessons", false, r.list("lessons", &h.Lessons)},
		{"reads", false, r.list("reads", &h.Reads)},
		{"words", false, r.list("words", &h.Words)},
		{"least", false, r.list("least", &h.Least)},
		{"call", false, r.yes("call", &h.Call)},
		{"revised", false, r.date("revised", &h.Revised)},
	})
	procedure := h.Kind == "procedure" || h.Kind == "" && h.Lines["kind"] == 0
	if procedure && h.Lines["stage"] == 0 && (n == nil || n.Kind == yaml.MappingNode) {
		r.errorAt(n, "missing-key", "procedure has no stage", "add the line stage: …, or another kind: reference")
	}
	return h, body, bodyLine
}

// splitHeader returns the lines between the first line --- and the next, and the
// body behind them with its line in the file. It adds a fault and returns false if
// the first line is no --- (body is then the whole page) or no second one follows
// (body is then nil).
func splitHeader(path string, data []byte, faults *fault.List) (text, body []byte, bodyLine int, ok bool) {
	first, rest, _ := bytes.Cut(data, []byte("\n"))
	if !isFence(first) {
		faults.Add(fault.Fault{File: path, Line: 1, Col: 1, Code: "header-missing",
			Text:   "page does not start with a header",
			Source: fault.Line(data, 1), Hint: "start the page with a line ---, then title: …, then a line ---"})
		return nil, data, 1, false
	}
	for line, at := 2, 0; at < len(rest); line++ {
		end := len(rest)
		if i := bytes.IndexByte(rest[at:], '\n'); i >= 0 {
			end = at + i + 1
		}
		if isFence(rest[at:end]) {
			return rest[:at], rest[end:], line + 1, true
		}
		at = end
	}
	faults.Add(fault.Fault{File: path, Line: 1, Col: 1, Code: "header-open", Text: "header is not closed",
		Source: fault.Line(data, 1), Hint: "put a line --- below the header's last key"})
	return nil, nil, 1, false
}

// isFence reports whether a line is three hyphens, with or without white space
// behind them.
func isFence(line []byte) bool {
	return string(bytes.TrimRight(line, " \t\r\n")) == "---"
}
