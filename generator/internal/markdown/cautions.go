package markdown

import (
	"slices"
	"strings"
	"unicode"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// quote writes a block quote, or a caution if the quote begins with a signal word
// of ANSI Z535 (DANGER, WARNING, …). A caution without text is an error.
func (w *walker) quote(n *ast.Blockquote) {
	lead := w.lead(n.FirstChild())
	level, word := "", ""
	if lead != nil {
		word = strings.TrimRight(w.plainOf(lead), ".:!–— ")
		level = w.level(lead, word)
	}
	if level == "" {
		w.raw("<blockquote>")
		w.children(n)
		w.raw("</blockquote>")
		return
	}
	c := page.Caution{Level: level, Line: w.line(n.Pos())}
	w.raw(`<aside class="` + cautionClass(level) + `" role="note"><p class="signal">`)
	w.escaped(word)
	w.raw("</p>")
	mark := w.plain.Len()
	first := n.FirstChild()
	w.signalText(first, lead)
	for b := first.NextSibling(); b != nil; b = b.NextSibling() {
		w.block(b)
	}
	w.raw("</aside>")
	c.Text = w.since(mark)
	if c.Text == "" {
		w.errorAt(lead.FirstChild().Pos(), "caution-empty", "say what the danger is and how to avoid it",
			"caution says nothing")
	}
	w.page.Cautions = append(w.page.Cautions, c)
}

// cautionClass is the class of a caution; the level of that name has no other.
func cautionClass(level string) string {
	if level == "caution" {
		return "caution"
	}
	return "caution " + level
}

// signalText writes what follows the signal word in its paragraph.
func (w *walker) signalText(n, lead ast.Node) {
	from := lead.NextSibling()
	if t, ok := from.(*ast.Text); ok {
		// "**WARNING**: text" and "**WARNING** text" read alike.
		rest := t.Value(w.src)
		skip := 0
		for skip < len(rest) && strings.IndexByte(" :.!", rest[skip]) >= 0 {
			skip++
		}
		t.Segment = t.Segment.WithStart(t.Segment.Start + skip)
		if skip == len(rest) {
			from = t.NextSibling()
		}
	}
	if from == nil {
		return
	}
	w.raw("<p>")
	w.textFrom(n, from, true)
	w.raw("</p>")
}

// level is the level of a signal word. A word in capitals that is none, and a
// signal word that is not in capitals, are faults: a caution must not pass for
// a quotation.
func (w *walker) level(lead ast.Node, word string) string {
	if level, ok := signals[word]; ok {
		return level
	}
	at := lead.FirstChild().Pos()
	upper := strings.ToUpper(word)
	if level, ok := signals[upper]; ok {
		w.errorAt(at, "signal-case", "write "+upper, "signal word %q is not in capitals", word)
		return level
	}
	if word != upper || !allLetters(word) {
		return ""
	}
	hint := "use one of: " + strings.Join(signalWords, ", ")
	level := ""
	if near, ok := fault.Nearest(word, signalWords); ok {
		hint, level = "did you mean "+near+"?", signals[near]
	}
	w.errorAt(at, "signal-unknown", hint, "unknown signal word %q", clip(word))
	return level
}

func allLetters(s string) bool {
	return len(s) > 3 && !slices.ContainsFunc([]rune(s), func(r rune) bool { return !unicode.IsLetter(r) })
}
