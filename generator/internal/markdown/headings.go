package markdown

import (
	"strconv"
	"strings"
	"unicode"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// ids are the ids a page has given out, each with the number that the next of
// its kind starts from.
type ids map[string]int

// take returns a new id for a text: its letters and digits in lower case, of every
// script, with hyphens between the words. The second of the same gets -2, the
// third -3. A text without letters and digits takes fallback as its base.
func (s ids) take(text, fallback string) string {
	base := slug(text)
	if base == "" {
		base = fallback
	}
	id := base
	n := max(s[base], 1)
	for ; s[id] > 0; id = base + "-" + strconv.Itoa(n) {
		n++
	}
	s[base] = n
	s[id] = max(s[id], 1)
	return id
}

// slug returns the letters, digits and combining marks of a text in lower case,
// with one hyphen for each run of other characters between them. An apostrophe is
// dropped. The result is "" for a text without letters and digits.
func slug(text string) string {
	var b strings.Builder
	gap := false
	for _, r := range text {
		switch {
		case unicode.IsLetter(r), unicode.IsDigit(r), unicode.IsMark(r):
			if gap && b.Len() > 0 {
				b.WriteByte('-')
			}
			gap = false
			b.WriteRune(unicode.ToLower(r))
		case r == '\'', r == '’': // don't is one word
		default:
			gap = true
		}
	}
	return b.String()
}

// heading writes a heading, adds it to the page and opens its section. A heading
// of the first level is an error and is written as the second; an empty heading is
// an error, a skipped level a warning.
func (w *walker) heading(n *ast.Heading) {
	w.endSection()
	text := w.plainOf(n)
	line := w.line(n.Pos())
	level := n.Level
	switch {
	case level == 1:
		w.errorAt(n.Pos(), "heading-one", "start headings at ##; the page's title stands in its header",
			"heading of the first level")
		level = 2
	case text == "":
		w.errorAt(n.Pos(), "heading-empty", "write the heading, or remove the line", "empty heading")
	case level > w.lastLevel()+1:
		w.warnAt(n.Pos(), "heading-jump", "use "+strings.Repeat("#", w.lastLevel()+1), "heading skips a level")
	}
	id := w.ids.take(text, "part")
	w.page.Headings = append(w.page.Headings, page.Heading{ID: id, Level: level, Text: text, Line: line})
	w.section = page.Section{ID: id, Title: text, Line: line}
	tag := "h" + strconv.Itoa(level)
	w.raw("<" + tag)
	w.id(id)
	w.raw(">")
	w.inlines(n.FirstChild(), mode{cell: true})
	w.raw("</" + tag + ">")
	w.begin = w.plain.Len() // the title of a section is not part of its text
}

// lastLevel returns the level of the page's last heading so far, 1 if there is
// none.
func (w *walker) lastLevel() int {
	if n := len(w.page.Headings); n > 0 {
		return w.page.Headings[n-1].Level
	}
	return 1
}
