package markdown

import (
	"slices"
	"strconv"
	"strings"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// steps writes an ordered list that is in no other list: the steps of the work.
// They are numbered from the number of the first item.
func (w *walker) steps(n *ast.List) {
	w.raw(`<ol class="steps"`)
	if n.Start != 1 {
		w.attribute("start", strconv.Itoa(n.Start))
	}
	w.raw(">")
	nr := n.Start
	for item := n.FirstChild(); item != nil; item = item.NextSibling() {
		w.step(item, nr)
		nr++
	}
	w.raw("</ol>")
}

// step writes one step and adds it to the page's steps. nr is its number on the
// page. A check box, a step that does not begin with text, and a hold point that
// consists of its lead alone are reported as errors; the step is added all the
// same.
func (w *walker) step(item ast.Node, nr int) {
	s := page.Step{ID: w.ids.take("step-"+strconv.Itoa(nr), ""), Line: w.line(item.Pos())}
	first := item.FirstChild()
	if isChecked(first) {
		w.errorAt(item.Pos(), "check-numbered", "start the line with - [ ] instead of a number",
			"check stands in a numbered list")
	}
	lead := w.lead(first)
	s.Hold = lead != nil && w.isHold(lead)
	at := len(w.page.Steps) // a step in a list within this one comes behind it
	w.page.Steps = append(w.page.Steps, s)

	w.raw("<li")
	w.id(s.ID)
	if s.Hold {
		w.raw(` class="step hold">`)
	} else {
		w.raw(` class="step">`)
	}
	if first != nil && isText(first) {
		text := w.stepText(first, lead, s.Hold)
		w.page.Steps[at].Text, w.page.Steps[at].Lead = text, w.leadLength(lead, text)
		if s.Hold && strings.EqualFold(text, w.plainOf(lead)) {
			w.errorAt(item.Pos(), "hold-empty", "say what is checked and who releases it", "hold point says nothing")
		}
		first = first.NextSibling()
	} else {
		w.errorAt(item.Pos(), "step-empty", "start the step with a sentence", "step has no text")
	}
	for ; first != nil; first = first.NextSibling() {
		w.block(first)
	}
	w.raw("</li>")
}

// stepText writes a step's first block n and returns its text without space at its
// ends. With hold, lead is written with the class of a hold point; lead is then
// not nil.
func (w *walker) stepText(n, lead ast.Node, hold bool) string {
	loose := n.Kind() == ast.KindParagraph
	if loose {
		w.raw("<p>")
	}
	mark := w.plain.Len()
	if hold {
		w.raw(`<strong class="hold-lead">`)
		w.escaped(w.plainOf(lead))
		w.raw("</strong>")
		w.plain.WriteString(w.plainOf(lead))
		w.textFrom(n, lead.NextSibling(), true)
	} else {
		w.text(n, true)
	}
	if loose {
		w.raw("</p>")
	}
	return w.since(mark)
}

// lead returns the bold text that a block begins with. It returns nil if the block
// does not, is no text, or is nil.
func (w *walker) lead(n ast.Node) ast.Node {
	if n == nil || !isText(n) {
		return nil
	}
	if e, ok := n.FirstChild().(*ast.Emphasis); ok && e.Level == 2 {
		return e
	}
	return nil
}

// leadLength returns how many bytes at the start of text are those of lead; 0 if
// lead is nil or text does not begin with it.
func (w *walker) leadLength(lead ast.Node, text string) int {
	if lead == nil {
		return 0
	}
	if own := w.plainOf(lead); strings.HasPrefix(text, own) {
		return len(own)
	}
	return 0
}

// isHold reports whether a lead is one of holdLeads. Case, hyphens for spaces, and
// points, colons and dashes at the end do not count.
func (w *walker) isHold(lead ast.Node) bool {
	text := strings.TrimRight(w.plainOf(lead), " .:–—-")
	return slices.ContainsFunc(holdLeads, func(hold string) bool {
		return len(text) == len(hold) && strings.EqualFold(strings.ReplaceAll(text, "-", " "), hold)
	})
}

// noHold adds an error if an item of a list outside the steps is a hold point,
// since nobody would stop at it.
func (w *walker) noHold(item ast.Node) {
	if lead := w.lead(item.FirstChild()); lead != nil && w.isHold(lead) {
		w.errorAt(item.Pos(), "hold-outside", "make it a step: start the line with a number, at the left margin",
			"hold point stands outside the steps")
	}
}

// isText reports whether a block is a paragraph or the text of a tight list item.
func isText(n ast.Node) bool {
	return n.Kind() == ast.KindTextBlock || n.Kind() == ast.KindParagraph
}
