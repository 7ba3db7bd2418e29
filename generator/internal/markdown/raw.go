package markdown

import (
	"strings"

	"github.com/yuin/goldmark/ast"
)

const rawHint = "use Markdown; write \\< for the sign itself"

// rawBlock writes a block of HTML as text that shows its tags, and reports it as a
// warning.
func (w *walker) rawBlock(n *ast.HTMLBlock) {
	text := string(n.Lines().Value(w.src))
	if n.HasClosure() {
		text += string(n.ClosureLine.Value(w.src))
	}
	text = strings.TrimSpace(text)
	first, _, _ := strings.Cut(text, "\n")
	w.warnAt(n.Pos(), "raw-html", rawHint, "raw HTML %q is shown as text", clip(first))
	w.raw("<p>")
	w.escaped(text)
	w.raw("</p>")
	w.plain.WriteString(text + "\n")
}

// rawInline writes a tag within text as text that shows it, and reports it as a
// warning.
func (w *walker) rawInline(n *ast.RawHTML) {
	text := string(n.Segments.Value(w.src))
	w.warnAt(n.Segments.At(0).Start, "raw-html", rawHint, "raw HTML %q is shown as text", clip(text))
	w.escaped(text)
	w.plain.WriteString(text)
}
