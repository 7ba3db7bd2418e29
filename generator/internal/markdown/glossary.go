package markdown

import (
	"strings"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// glossary writes a list of a glossary page: one term an item, as
// "**Term** (also: other, words): definition".
func (w *walker) glossary(n *ast.List) {
	w.raw("<ul class=\"terms\">")
	for item := n.FirstChild(); item != nil; item = item.NextSibling() {
		w.term(item)
	}
	w.raw("</ul>")
}

// term writes one item of a glossary and adds it to the page's terms. An item that
// does not begin with bold text is reported as an error and is no term. A term
// that is defined above (case ignored) and a term without a definition are errors
// and are added all the same.
func (w *walker) term(item ast.Node) {
	first := item.FirstChild()
	lead := w.lead(first)
	if lead == nil {
		w.errorAt(item.Pos(), "term-lead", "write - **Term**: definition", "entry of the glossary has no term in bold")
		w.raw("<li>")
		w.children(item)
		w.raw("</li>")
		return
	}
	t := page.Term{Name: strings.TrimRight(w.plainOf(lead), " :"), Line: w.line(item.Pos())}
	if first := w.terms[strings.ToLower(t.Name)]; first > 0 {
		w.errorAt(item.Pos(), "term-twice", "make one entry of the two", "term %q is defined on line %d already",
			clip(t.Name), first)
	}
	if w.terms == nil {
		w.terms = map[string]int{}
	}
	w.terms[strings.ToLower(t.Name)] = t.Line
	t.ID = w.ids.take(t.Name, "term")
	w.raw("<li")
	w.id(t.ID)
	w.raw("><dfn>")
	w.escaped(t.Name)
	w.raw("</dfn>")
	w.plain.WriteString(t.Name)
	mark := w.plain.Len()
	w.textFrom(first, lead.NextSibling(), true)
	t.Also, t.Text = definition(w.since(mark))
	if t.Text == "" {
		w.errorAt(item.Pos(), "term-empty", "write - **Term**: definition", "term %q has no definition", clip(t.Name))
	}
	for n := first.NextSibling(); n != nil; n = n.NextSibling() {
		w.block(n)
	}
	w.raw("</li>")
	w.page.Terms = append(w.page.Terms, t)
}

// definition splits "(also: other, words): definition" into the other names and
// the definition. Without such a parenthesis at the start, also is nil and def is
// the text. Colons, dashes and spaces before the definition are dropped; it is ""
// if nothing is left.
func definition(text string) (also []string, def string) {
	if rest, ok := strings.CutPrefix(text, "("); ok {
		inner, after, closed := strings.Cut(rest, ")")
		lower := strings.ToLower(inner)
		for _, lead := range alsoLeads {
			if closed && strings.HasPrefix(lower, lead) {
				for _, name := range strings.Split(inner[len(lead):], ",") {
					if name = strings.TrimSpace(name); name != "" {
						also = append(also, name)
					}
				}
				text = strings.TrimSpace(after)
				break
			}
		}
	}
	return also, strings.TrimLeft(text, ":–—- ")
}
