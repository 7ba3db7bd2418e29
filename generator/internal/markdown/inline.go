package markdown

import (
	"bytes"
	"fmt"
	"strings"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown/amount"
	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
	extast "github.com/yuin/goldmark/extension/ast"
)

// mode says what running text may become.
type mode struct {
	terms  bool // terms may be linked
	inLink bool // inside a link
	cell   bool // in a table or a heading, where a point ends no sentence
}

// inlines writes n and its later siblings; nil writes nothing. Neighbouring texts
// are joined first, because an amount may continue on the next line.
func (w *walker) inlines(n ast.Node, m mode) {
	for n != nil {
		if _, ok := n.(*ast.Text); !ok {
			w.inline(n, m)
			n = n.NextSibling()
			continue
		}
		start := n.Pos()
		if text, ok := w.plainRun(n.(*ast.Text)); ok {
			n = n.NextSibling()
			w.run(text, start, n == nil, m)
			continue
		}
		var joined []byte
		for ; n != nil; n = n.NextSibling() {
			t, ok := n.(*ast.Text)
			if !ok {
				break
			}
			joined = appendDecoded(joined, t.Value(w.src), t.IsRaw())
			if t.HardLineBreak() {
				w.run(strings.TrimRight(string(joined), " "), start, false, m)
				w.raw("<br>")
				w.addText("\n")
				joined, start = joined[:0], t.Segment.Stop
			} else if t.SoftLineBreak() {
				joined = append(joined, '\n')
			}
		}
		w.run(string(joined), start, n == nil, m)
	}
}

// plainRun returns the text of a node as a part of the body, without a copy. It
// returns false for a node that has another text or a line break behind it, or
// whose text must be decoded.
func (w *walker) plainRun(t *ast.Text) (string, bool) {
	if _, more := t.NextSibling().(*ast.Text); more || t.HardLineBreak() || t.SoftLineBreak() {
		return "", false
	}
	s := t.Segment
	if s.Padding > 0 || s.ForceNewline || s.Stop > len(w.whole) {
		return "", false
	}
	text := w.whole[s.Start:s.Stop]
	return text, t.IsRaw() || !strings.ContainsAny(text, `\&`)
}

// run writes decoded text, with its amounts in both systems of units. offset is
// its first byte in the body, for the line numbers of its amounts; below 0 it is
// unknown. last means that the block ends behind the text.
func (w *walker) run(text string, offset int, last bool, m mode) {
	at, line := 0, 0
	for {
		a, ok := w.finder.Next(text, at, last && !m.cell)
		if !ok {
			break
		}
		if line == 0 {
			line = w.line(max(offset, 0))
		}
		line += strings.Count(text[at:a.Start], "\n")
		w.bare(text[at:a.Start], m)
		w.amount(text[a.Start:a.End], a, line)
		at = a.End
		line += strings.Count(text[a.Start:a.End], "\n")
	}
	w.bare(text[at:], m)
}

// bare writes text without amounts. Where m permits terms, the glossary's terms in
// it are linked later. An empty text writes nothing.
func (w *walker) bare(text string, m mode) {
	if text == "" {
		return
	}
	w.addText(text)
	if m.terms && !m.inLink {
		w.running(text)
	} else {
		w.escaped(text)
	}
}

// addText adds text to the plain text and the prose, each line feed as a space.
func (w *walker) addText(text string) {
	if strings.IndexByte(text, '\n') >= 0 {
		text = strings.ReplaceAll(text, "\n", " ")
	}
	w.plain.WriteString(text)
	w.prose.WriteString(text)
}

// amount writes an amount in both units, of which the reader's choice shows one,
// and adds it to the page's amounts. text is as the author wrote it, line its line
// in the file. If the author's two figures differ by more than amount.MaxApart,
// that is a warning.
func (w *walker) amount(text string, a amount.Found, line int) {
	own := strings.ReplaceAll(text, "\n", " ")
	// The clone keeps the page from holding on to its whole body.
	w.page.Amounts = append(w.page.Amounts, page.Amount{Text: strings.Clone(own), Line: line})
	if w.wantProse && !w.inRule {
		w.bareAmounts = append(w.bareAmounts, bareAmount{w.plain.Len(), w.plain.Len() + len(own), line})
	}
	w.plain.WriteString(own)
	w.prose.WriteString("0")
	if a.Own == amount.Neither {
		w.escaped(own)
		return
	}
	if a.Apart > amount.MaxApart {
		w.faults.Add(fault.Fault{Severity: fault.Warning, File: w.file.Path, Line: line, Code: "units-differ",
			Hint: "convert one of the two again",
			Text: fmt.Sprintf("%s and %s differ by %.0f %%", a.US, a.Metric, 100*a.Apart), Source: w.sourceLine(line)})
	}
	w.out = appendPair(w.out, a)
}

// inline writes a node that is no text. A check box and a kind of node that is not
// known write nothing.
func (w *walker) inline(n ast.Node, m mode) {
	switch n := n.(type) {
	case *ast.String:
		w.bare(string(n.Value), m)
	case *ast.CodeSpan:
		w.codeSpan(n)
	case *ast.Emphasis:
		switch {
		case n.Level == 2:
			w.wrap("strong", n, m)
		case w.taught != "" && w.inBrackets(n):
			w.raw(`<em lang="` + w.taught + `">`)
			w.inlines(n.FirstChild(), m)
			w.raw("</em>")
		default:
			w.wrap("em", n, m)
		}
	case *extast.Strikethrough:
		w.wrap("del", n, m)
	case *ast.Link:
		w.link(n, m)
	case *ast.AutoLink:
		w.autoLink(n, m)
	case *ast.Image:
		w.image(n)
	case *ast.RawHTML:
		w.rawInline(n)
	case *extast.TaskCheckBox: // written by its list
	}
}

// inBrackets reports whether a node is all that is between two round brackets, or
// all that is between taughtLead and the closing one.
func (w *walker) inBrackets(n ast.Node) bool {
	before, ok1 := n.PreviousSibling().(*ast.Text)
	after, ok2 := n.NextSibling().(*ast.Text)
	if !ok1 || !ok2 || !bytes.HasPrefix(after.Value(w.src), []byte(")")) {
		return false
	}
	text := before.Value(w.src)
	return bytes.HasSuffix(text, []byte("(")) || bytes.HasSuffix(text, []byte(taughtLead))
}

// wrap writes the children of n inside an element with the given tag.
func (w *walker) wrap(tag string, n ast.Node, m mode) {
	w.raw("<" + tag + ">")
	w.inlines(n.FirstChild(), m)
	w.raw("</" + tag + ">")
}

// codeSpan writes code within text, a line feed in it as a space. It does not
// count as prose.
func (w *walker) codeSpan(n *ast.CodeSpan) {
	w.raw("<code>")
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		if t, ok := c.(*ast.Text); ok {
			s := strings.ReplaceAll(string(t.Value(w.src)), "\n", " ")
			w.plain.WriteString(s)
			w.escaped(s)
		}
	}
	w.raw("</code>")
}

// plainOf returns the text below a node without markup and without space at its
// ends; "" if there is none.
func (w *walker) plainOf(n ast.Node) string {
	return string(bytes.TrimSpace(w.collect(nil, n)))
}

// collect appends the text below n to b and returns it. Escapes and references are
// decoded outside code, a line break is a space, and raw HTML is kept as written.
func (w *walker) collect(b []byte, n ast.Node) []byte {
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		switch c := c.(type) {
		case *ast.Text:
			inCode := n.Kind() == ast.KindCodeSpan
			b = appendDecoded(b, c.Value(w.src), c.IsRaw() || inCode)
			if c.SoftLineBreak() || c.HardLineBreak() {
				b = append(b, ' ')
			}
		case *ast.String:
			b = append(b, c.Value...)
		case *ast.AutoLink:
			b = append(b, c.Label(w.src)...)
		case *ast.Link:
			b = w.collectLink(b, c)
		case *ast.RawHTML:
			b = append(b, c.Segments.Value(w.src)...)
		default:
			b = w.collect(b, c)
		}
	}
	return b
}
