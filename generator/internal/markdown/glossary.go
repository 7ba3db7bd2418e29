package markdown

import (
	"slices"
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
// the definition. A semicolon separates lists that have a lead each, as in
// "(también: otra; en inglés: other)". Without such a parenthesis at the start, also
// is nil and def is the text. Colons, dashes and spaces before the definition are
// dropped; it is "" if nothing is left.
func definition(text string) (also []string, def string) {
	if rest, ok := strings.CutPrefix(text, "("); ok {
		if inner, after, closed := strings.Cut(rest, ")"); closed {
			if names, ok := otherNames(inner); ok {
				also, text = names, strings.TrimSpace(after)
			}
		}
	}
	return also, strings.TrimLeft(text, ":–—- ")
}

// otherNames returns the names in lists such as "also: other, words", separated by
// semicolons. It reports false if a list has no lead.
func otherNames(lists string) (names []string, ok bool) {
	for _, list := range strings.Split(lists, ";") {
		list = strings.TrimSpace(list)
		lower := strings.ToLower(list)
		at := slices.IndexFunc(alsoLeads, func(lead string) bool { return strings.HasPrefix(lower, lead) })
		if at < 0 {
			return nil, false
		}
		for _, name := range strings.Split(list[len(alsoLeads[at]):], ",") {
			if name = strings.TrimSpace(name); name != "" {
				names = append(names, name)
			}
		}
	}
	return names, true
}
