package render

import (
	"slices"
	"strings"

	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// fewestMarks is the least number of sections of a page that has jump marks.
const fewestMarks = 2

// marks returns the jump marks of a page: one for each section, first those that the theme
// names, in its order and with its short names, then the others in the order of the page.
func marks(j *Job) []theme.Mark {
	prefix := "#"
	if j.form == site.OneFile {
		prefix += j.page.Anchor() + "."
	}
	var first, rest []theme.Mark
	named := namedMarks(j.theme().Text("ui.marks.first"))
	heads := slices.DeleteFunc(slices.Clone(j.page.Headings), func(h page.Heading) bool { return h.Level > 2 })
	if len(heads) < fewestMarks {
		return nil
	}
	for _, n := range named {
		for _, h := range heads {
			if h.Text == n.heading {
				first = append(first, theme.Mark{Href: prefix + h.ID, Title: n.short})
			}
		}
	}
	for _, h := range heads {
		if !slices.ContainsFunc(named, func(n namedMark) bool { return n.heading == h.Text }) {
			rest = append(rest, theme.Mark{Href: prefix + h.ID, Title: h.Text})
		}
	}
	return append(first, rest...)
}

// namedMark is a heading that many pages have, and its name in the row of jump marks.
type namedMark struct{ heading, short string }

// namedMarks parses "Steps, What goes wrong: Goes wrong": headings in the order of their
// marks, each with a shorter name if it has one.
func namedMarks(list string) []namedMark {
	var named []namedMark
	for item := range strings.SplitSeq(list, ", ") {
		heading, short, ok := strings.Cut(item, ": ")
		if !ok {
			short = heading
		}
		named = append(named, namedMark{heading, short})
	}
	return named
}
