package markdown

import (
	"slices"
	"strings"
	"unicode"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// quote writes a block quote, or a caution if the quote begins with a bold signal
// word of ANSI Z535 (DANGER, WARNING, …). A caution is added to the page; one
// without text is reported as an error and added all the same.
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

// cautionClass returns the class attribute of a caution: "caution" and the level.
// For the level caution it is "caution" alone.
func cautionClass(level string) string {
	if level == "caution" {
		return "caution"
	}
	return "caution " + level
}

// signalText writes, as one paragraph, what follows the signal word lead in the
// block n. It drops the spaces, colons and points between the two. It writes
// nothing if nothing follows.
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

// level returns the level of a signal word, "" for a word that is none. A signal
// word that is not in capitals is reported as an error and has its level. A word
// of more than three letters in capitals that is no signal word is reported as an
// error, since a caution must not pass for a quotation; its level is that of the
// nearest signal word, or "".
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

// allLetters reports whether s is longer than three bytes and holds letters only.
func allLetters(s string) bool {
	return len(s) > 3 && !slices.ContainsFunc([]rune(s), func(r rune) bool { return !unicode.IsLetter(r) })
}
