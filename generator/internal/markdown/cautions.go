package markdown

import (
	"bytes"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

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
	class := cautionClass(level)
	if w.brief {
		class += " brief"
	}
	w.raw(`<aside class="` + class + `" role="note">`)
	mark := w.plain.Len()
	first := n.FirstChild()
	from := w.afterSignal(lead)
	if tail := w.foldedPart(level, n, from); tail != nil {
		w.foldedText(word, first, from, tail)
	} else {
		w.raw(`<p class="signal">`)
		w.escaped(word)
		w.raw("</p>")
		w.signalText(first, from)
	}
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

// afterSignal returns the first node behind the signal word lead, nil if there is none. It
// drops the spaces, colons and points between the two.
func (w *walker) afterSignal(lead ast.Node) ast.Node {
	from := lead.NextSibling()
	t, ok := from.(*ast.Text)
	if !ok {
		return from
	}
	// "**WARNING**: text" and "**WARNING** text" read alike.
	rest := t.Value(w.src)
	skip := 0
	for skip < len(rest) && strings.IndexByte(" :.!", rest[skip]) >= 0 {
		skip++
	}
	t.Segment = t.Segment.WithStart(t.Segment.Start + skip)
	if skip == len(rest) {
		return t.NextSibling()
	}
	return t
}

// signalText writes the text of a caution in the block n, from the node from on, as one
// paragraph. It writes nothing if from is nil.
func (w *walker) signalText(n, from ast.Node) {
	if from == nil {
		return
	}
	w.raw("<p>")
	w.textFrom(n, from, true)
	w.raw("</p>")
}

// Lengths of a caution before the steps, in characters. A longer one opens at a touch
// behind its first sentences; one of the level danger is always whole.
const (
	wholeCaution = 110
	shownCaution = 80
)

// foldedPart returns the part of a caution that opens at a touch, behind its first
// sentences, as a node of its own. It returns nil for a caution that is shown whole: a
// short one, one of the level danger, one outside the opening of a procedure, and one with
// a link in its first sentences, because a link within a control is no target of its own.
func (w *walker) foldedPart(level string, n *ast.Blockquote, from ast.Node) ast.Node {
	if !w.brief || level == "danger" || n.ChildCount() > 1 || from == nil {
		return nil
	}
	var end *ast.Text
	at, length, links := 0, 0, false
	for c := from; c != nil; c = c.NextSibling() {
		t, ok := c.(*ast.Text)
		if !ok {
			links = links || c.Kind() == ast.KindLink
			length += utf8.RuneCountInString(w.plainOf(c))
			continue
		}
		text := t.Value(w.src)
		for i := range text {
			reached := length + utf8.RuneCount(text[:i])
			if !links && sentenceEnds(text, i) && (end == nil || reached <= shownCaution) {
				end, at = t, i
			}
		}
		length += utf8.RuneCount(text) + 1
	}
	if length <= wholeCaution || end == nil {
		return nil
	}
	return splitAt(end, at)
}

// sentenceEnds reports whether a sentence of text ends before the space at the byte at:
// behind a mark and before a capital.
func sentenceEnds(text []byte, at int) bool {
	if at == 0 || text[at] != ' ' || strings.IndexByte(".!?", text[at-1]) < 0 {
		return false
	}
	next, _ := utf8.DecodeRune(text[at+1:])
	return unicode.IsUpper(next) || next == '¿' || next == '¡'
}

// splitAt moves what follows the space at the byte at of t, and the later siblings of t,
// into a new node and returns it.
func splitAt(t *ast.Text, at int) ast.Node {
	tail := ast.NewTextBlock()
	rest := ast.NewTextSegment(t.Segment.WithStart(t.Segment.Start + at + 1))
	rest.SetSoftLineBreak(t.SoftLineBreak())
	rest.SetHardLineBreak(t.HardLineBreak())
	block, next := t.Parent(), t.NextSibling()
	tail.AppendChild(tail, rest)
	for next != nil {
		c := next
		next = c.NextSibling()
		block.RemoveChild(block, c)
		tail.AppendChild(tail, c)
	}
	t.Segment = t.Segment.WithStop(t.Segment.Start + at)
	t.SetSoftLineBreak(false)
	t.SetHardLineBreak(false)
	return tail
}

// foldedText writes a caution whose first sentences, from the node from of the block n on,
// are visible beside its signal word, and tail opens below them.
func (w *walker) foldedText(word string, n, from, tail ast.Node) {
	w.raw(`<details><summary><b class="signal">`)
	w.escaped(word)
	w.raw("</b> ")
	w.prose.Reset()
	w.inlines(from, mode{})
	w.addText(" ")
	w.raw("</summary><p>")
	w.inlines(tail.FirstChild(), mode{terms: true})
	w.raw("</p></details>")
	if p := bytes.TrimSpace(w.prose.Bytes()); w.wantProse && len(p) > 0 {
		w.page.Prose = append(w.page.Prose, page.Prose{Text: string(p), Line: w.line(max(n.Pos(), 0))})
	}
	w.plain.WriteByte('\n')
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
