package markdown

import (
	"bytes"
	"strconv"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown/amount"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
)

// walker goes over a page's syntax tree once and writes the model, the HTML
// and the plain text.
type walker struct {
	src    []byte // the body
	file   source.File
	whole  string // the body again, for texts that are a part of it
	first  int    // the file's line of the body's first
	faults *fault.List

	wantProse bool
	finder    *amount.Finder
	mark      quantity.Mark
	rules     map[string]Rule
	taught    string // Language.Taught
	inRule    bool   // in a figure that is linked to a rule or marked as another matter
	brief     bool   // before the steps of a procedure, where a caution is short
	words     words
	page      page.Page

	out    []byte       // the HTML
	pieces []piece      // of out and the gaps in it
	cutAt  int          // where in out the last piece ends
	plain  bytes.Buffer // the page's text
	prose  bytes.Buffer // of the block being read
	ids    ids
	starts []int // of the body's lines

	last     cachedPosition // the last position asked for
	reported int            // faults so far
	expanded int            // bytes of the addresses and titles of links

	bareAmounts []bareAmount // only with wantProse

	section page.Section
	begin   int            // where in the plain text the section begins
	regions map[string]int // labels of tables, which must differ
	terms   map[string]int // lower-case terms of a glossary, with their lines
}

// document writes the whole page below root.
func (w *walker) document(root ast.Node) {
	w.section.Line = w.first
	w.checkReferences(root)
	if first := firstSteps(root); first != nil && w.page.Header.Kind == page.Procedure {
		w.procedure(root, first)
	} else {
		w.children(root)
	}
	w.endSection()
	w.cut()
	w.checkAllBare()
}

// since returns the plain text written behind the byte mark, or behind the last
// heading if one was written since, without space at its ends.
func (w *walker) since(mark int) string {
	return string(bytes.TrimSpace(w.plain.Bytes()[max(mark, w.begin):]))
}

// endSection adds the section being read to the page. It adds none without title
// and text.
func (w *walker) endSection() {
	w.section.Text = w.since(0)
	if w.section.Text != "" || w.section.Title != "" {
		w.page.Sections = append(w.page.Sections, w.section)
	}
	w.begin = w.plain.Len()
}

// children writes each block below n.
func (w *walker) children(n ast.Node) {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		w.block(c)
	}
}

// block writes one block. A kind of block that is not known writes nothing.
func (w *walker) block(n ast.Node) {
	switch n := n.(type) {
	case *ast.Heading:
		w.heading(n)
	case *ast.Paragraph:
		w.paragraph(n)
	case *ast.TextBlock:
		w.text(n, true)
	case *ast.List:
		w.list(n)
	case *ast.Blockquote:
		w.quote(n)
	case *ast.FencedCodeBlock:
		w.fence(n)
	case *ast.CodeBlock:
		w.indentedCode(n)
	case *ast.HTMLBlock:
		w.rawBlock(n)
	case *ast.ThematicBreak:
		w.raw("<hr>")
	case *extast.Table:
		w.table(n)
	}
}

// paragraph writes a paragraph, or a figure if the paragraph holds a picture
// alone.
func (w *walker) paragraph(n ast.Node) {
	if img, ok := onlyPicture(n); ok {
		w.figure(img)
		return
	}
	w.raw("<p>")
	w.text(n, true)
	w.raw("</p>")
}

// text writes the inline content of a block as running text and ends the block in
// the plain text. If prose is true and the page's prose is wanted, the text is
// added to it.
func (w *walker) text(n ast.Node, prose bool) { w.textFrom(n, n.FirstChild(), prose) }

// textFrom is text from the child from of n on; nothing is written if from is nil.
func (w *walker) textFrom(n, from ast.Node, prose bool) {
	w.prose.Reset()
	w.inlines(from, mode{terms: true})
	if p := bytes.TrimSpace(w.prose.Bytes()); prose && w.wantProse && len(p) > 0 {
		w.page.Prose = append(w.page.Prose, page.Prose{Text: string(p), Line: w.line(max(n.Pos(), 0))})
	}
	w.plain.WriteByte('\n')
}

// raw writes s to the HTML unchanged.
func (w *walker) raw(s string) { w.out = append(w.out, s...) }

// escaped writes s to the HTML with & and < escaped.
func (w *walker) escaped(s string) { w.out = append(w.out, escapeText(s)...) }

// attribute writes a space, the name and the value in quotes, escaped.
func (w *walker) attribute(name, value string) {
	w.raw(" " + name + `="`)
	w.raw(escapeAttribute(value))
	w.raw(`"`)
}

// cut ends the stretch of HTML being written. It adds no piece if nothing was
// written since the last one.
func (w *walker) cut() { w.stretch(literal) }

// stretch adds what was written since the last piece as a piece of this kind, or
// nothing if nothing was.
func (w *walker) stretch(kind pieceKind) {
	if n := len(w.out) - w.cutAt; n > 0 {
		w.pieces = append(w.pieces, piece{kind, int32(n)})
		w.cutAt = len(w.out)
	}
}

// gap adds a gap of this kind, which Body fills. n is the index of the page's
// link, picture or place.
func (w *walker) gap(kind pieceKind, n int) {
	w.cut()
	w.pieces = append(w.pieces, piece{kind, int32(n)})
}

// running writes text, not escaped, as a piece in which Body looks for terms.
func (w *walker) running(s string) {
	if s == "" {
		return
	}
	w.cut()
	w.raw(s)
	w.stretch(running)
}

// id writes an id attribute: a gap for the resolution's prefix, then id.
func (w *walker) id(id string) {
	w.raw(` id="`)
	w.gap(prefix, 0)
	w.raw(escapeAttribute(id))
	w.raw(`"`)
}

// list writes a list as what it is: an ordered list at the top level as steps, a
// list with a check box as checks, a list at the top level of a glossary page as
// terms, any other as a plain list.
func (w *walker) list(n *ast.List) {
	switch {
	case n.IsOrdered() && n.Parent().Kind() == ast.KindDocument:
		w.steps(n)
	case hasChecks(n):
		w.checks(n)
	case w.page.Header.Kind == page.Glossary && n.Parent().Kind() == ast.KindDocument:
		w.glossary(n)
	default:
		w.plainList(n)
	}
}

// plainList writes a list without a meaning of its own, numbered from its first
// number. A hold point in it is an error.
func (w *walker) plainList(n *ast.List) {
	tag := "ul"
	if n.IsOrdered() {
		tag = "ol"
	}
	w.raw("<" + tag)
	if n.IsOrdered() && n.Start != 1 {
		w.attribute("start", strconv.Itoa(n.Start))
	}
	w.raw(">")
	for item := n.FirstChild(); item != nil; item = item.NextSibling() {
		w.noHold(item)
		w.raw("<li>")
		w.children(item)
		w.raw("</li>")
	}
	w.raw("</" + tag + ">")
}
