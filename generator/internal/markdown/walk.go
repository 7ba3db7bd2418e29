package markdown

import (
	"bytes"
	"strconv"

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

	section page.Section
	begin   int            // where in the plain text the section begins
	regions map[string]int // labels of tables, which must differ
	terms   map[string]int // lower-case terms of a glossary, with their lines
}

func (w *walker) document(root ast.Node) {
	w.section.Line = w.first
	w.checkReferences(root)
	w.children(root)
	w.endSection()
	w.cut()
}

// since is the plain text written behind a mark, or behind the last heading
// where one was written since the mark, without space around it.
func (w *walker) since(mark int) string {
	return string(bytes.TrimSpace(w.plain.Bytes()[max(mark, w.begin):]))
}

// endSection closes the section being read. A section without title and text
// is none.
func (w *walker) endSection() {
	w.section.Text = w.since(0)
	if w.section.Text != "" || w.section.Title != "" {
		w.page.Sections = append(w.page.Sections, w.section)
	}
	w.begin = w.plain.Len()
}

func (w *walker) children(n ast.Node) {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		w.block(c)
	}
}

// block writes one block. Each construct has its file.
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

// paragraph writes a paragraph, or a picture that is alone in one.
func (w *walker) paragraph(n ast.Node) {
	if img, ok := onlyPicture(n); ok {
		w.figure(img)
		return
	}
	w.raw("<p>")
	w.text(n, true)
	w.raw("</p>")
}

// text writes the inline content of a block as running text and ends the
// block. prose is whether it counts for the reading grade.
func (w *walker) text(n ast.Node, prose bool) { w.textFrom(n, n.FirstChild(), prose) }

// textFrom is text from a given child on.
func (w *walker) textFrom(n, from ast.Node, prose bool) {
	w.prose.Reset()
	w.inlines(from, mode{terms: true})
	if p := bytes.TrimSpace(w.prose.Bytes()); prose && w.wantProse && len(p) > 0 {
		w.page.Prose = append(w.page.Prose, page.Prose{Text: string(p), Line: w.line(max(n.Pos(), 0))})
	}
	w.plain.WriteByte('\n')
}

// raw writes HTML.
func (w *walker) raw(s string) { w.out = append(w.out, s...) }

// escaped writes text as HTML.
func (w *walker) escaped(s string) { w.out = append(w.out, escapeText(s)...) }

// attribute writes an attribute.
func (w *walker) attribute(name, value string) {
	w.raw(" " + name + `="`)
	w.raw(escapeAttribute(value))
	w.raw(`"`)
}

// cut ends the stretch of HTML being written.
func (w *walker) cut() { w.stretch(literal) }

// stretch makes what was written since the last piece one of its own.
func (w *walker) stretch(kind pieceKind) {
	if n := len(w.out) - w.cutAt; n > 0 {
		w.pieces = append(w.pieces, piece{kind, int32(n)})
		w.cutAt = len(w.out)
	}
}

// gap leaves a gap to be filled once the manual is known.
func (w *walker) gap(kind pieceKind, n int) {
	w.cut()
	w.pieces = append(w.pieces, piece{kind, int32(n)})
}

// running writes text in which terms will be looked for.
func (w *walker) running(s string) {
	if s == "" {
		return
	}
	w.cut()
	w.raw(s)
	w.stretch(running)
}

// id writes an id attribute that takes the resolution's prefix.
func (w *walker) id(id string) {
	w.raw(` id="`)
	w.gap(prefix, 0)
	w.raw(escapeAttribute(id))
	w.raw(`"`)
}

// list writes a list; what it is shows in its items.
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
