package markdown

import (
	"strings"

	"github.com/alecthomas/chroma/v2"
	"github.com/alecthomas/chroma/v2/lexers"
	"github.com/yuin/goldmark/ast"
)

// fence writes a fenced block: a place if its info string names one, otherwise
// code.
func (w *walker) fence(n *ast.FencedCodeBlock) {
	name := ""
	if n.Info != nil {
		name = strings.TrimSpace(decode(n.Info.Value(w.src), false))
	}
	if w.placeBlock(n, name) {
		return
	}
	w.code(n, name)
}

// indentedCode writes an indented block as code without a language.
func (w *walker) indentedCode(n *ast.CodeBlock) { w.code(n, "") }

// code writes code. The first word of info is its language; a known one is
// coloured through classes alone. An unknown language is reported as a warning and
// written without colours, as code without a language is.
func (w *walker) code(n ast.Node, info string) {
	text := string(n.Lines().Value(w.src))
	w.plain.WriteString(text)
	w.raw(`<pre class="code" tabindex="0"><code>`)
	defer w.raw("</code></pre>")
	lang, _, _ := strings.Cut(info, " ")
	if lang == "" || lang == "text" {
		w.escaped(text)
		return
	}
	lexer := lexers.Get(lang)
	if lexer == nil {
		w.warnAt(n.Pos(), "code-language", "remove the name, or write text", "unknown language of code %q", clip(lang))
		w.escaped(text)
		return
	}
	tokens, err := chroma.Coalesce(lexer).Tokenise(nil, text)
	if err != nil {
		w.escaped(text)
		return
	}
	for t := tokens(); t != chroma.EOF; t = tokens() {
		class := chroma.StandardTypes[t.Type]
		if class == "" {
			w.escaped(t.Value)
			continue
		}
		w.raw("<span")
		w.attribute("class", class)
		w.raw(">")
		w.escaped(t.Value)
		w.raw("</span>")
	}
}
