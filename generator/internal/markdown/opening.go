package markdown

import "github.com/yuin/goldmark/ast"

// procedure writes the blocks of a procedure so that its first step is near the top of the
// page: cautions keep their place, whole sections before the steps are folded under their
// headings, and text and pictures that explain follow the section of the steps, behind a
// gap of the kind why. first is the list of the first steps.
func (w *walker) procedure(root, first ast.Node) {
	section := first // its heading, or the list itself
	for c := first; c != nil; c = c.PreviousSibling() {
		if isSection(c) {
			section = c
			break
		}
	}
	var aside stretches
	folded := false
	c := root.FirstChild()
	for ; c != section; c = c.NextSibling() {
		switch {
		case isSection(c):
			w.unfold(folded)
			folded = true
			w.raw(`<details class="before"><summary>`)
			w.block(c)
			w.raw("</summary>")
		case folded || w.staysFirst(c):
			w.brief = !folded
			w.block(c)
			w.brief = false
		default:
			w.setAside(c, &aside)
		}
	}
	w.unfold(folded)
	for ; c != nil; c = c.NextSibling() {
		if c != section && isSection(c) {
			break
		}
		w.block(c)
	}
	w.putBack(aside)
	for ; c != nil; c = c.NextSibling() {
		w.block(c)
	}
}

// unfold ends a folded section, if there is one.
func (w *walker) unfold(folded bool) {
	if folded {
		w.raw("</details>")
	}
}

// firstSteps returns the first list of steps of a page, nil if it has none.
func firstSteps(root ast.Node) ast.Node {
	for c := root.FirstChild(); c != nil; c = c.NextSibling() {
		if l, ok := c.(*ast.List); ok && l.IsOrdered() {
			return c
		}
	}
	return nil
}

// isSection reports whether a block is the heading of a section of the page.
func isSection(n ast.Node) bool {
	h, ok := n.(*ast.Heading)
	return ok && h.Level <= 2
}

// staysFirst reports whether a block before the steps keeps its place: a quote, which may
// be a caution, and a paragraph that begins with bold text, such as a remark that the
// example below is invented.
func (w *walker) staysFirst(n ast.Node) bool {
	return n.Kind() == ast.KindBlockquote || w.lead(n) != nil
}

// stretches is a part of the HTML with its gaps, to be written later.
type stretches struct {
	html   []byte
	pieces []piece
}

// setAside writes a block at the end of aside instead of the page.
func (w *walker) setAside(n ast.Node, aside *stretches) {
	w.cut()
	out, pieces := len(w.out), len(w.pieces)
	w.block(n)
	w.cut()
	aside.html = append(aside.html, w.out[out:]...)
	aside.pieces = append(aside.pieces, w.pieces[pieces:]...)
	w.out, w.pieces, w.cutAt = w.out[:out], w.pieces[:pieces], out
}

// putBack writes what was set aside, behind its gap for a heading. It writes nothing if
// nothing was.
func (w *walker) putBack(aside stretches) {
	if len(aside.pieces) == 0 {
		return
	}
	w.gap(why, 0)
	w.out = append(w.out, aside.html...)
	w.pieces = append(w.pieces, aside.pieces...)
	w.cutAt = len(w.out)
}
