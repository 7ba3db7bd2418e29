package markdown

import (
	"strings"
	"unicode"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// link writes a link, with a gap for its address.
func (w *walker) link(n *ast.Link, m mode) {
	if !w.expands(n.Pos(), n.Destination, n.Title) {
		w.inlines(n.FirstChild(), m)
		return
	}
	l := page.Link{Target: w.target(decode(n.Destination, false), n.Pos()), Text: w.plainOf(n)}
	l.Line, l.Col = w.position(n.Pos())
	if l.Text == "" && !hasPicture(n) {
		w.errorAt(n.Pos(), "link-empty", "write what the link leads to between the brackets", "link has no text")
	}
	w.openLink(l, decode(n.Title, false))
	m.inLink = true
	w.inlines(n.FirstChild(), m)
	w.raw("</a>")
}

// autoLink writes an address in angle brackets.
func (w *walker) autoLink(n *ast.AutoLink, m mode) {
	label := string(n.Label(w.src))
	target := label
	if n.AutoLinkType == ast.AutoLinkEmail {
		target = "mailto:" + label
	}
	l := page.Link{Target: w.target(target, n.Pos()), Text: label}
	l.Line, l.Col = w.position(n.Pos())
	w.openLink(l, "")
	w.plain.WriteString(label)
	w.escaped(label)
	w.raw("</a>")
}

func (w *walker) openLink(l page.Link, title string) {
	w.raw("<a")
	w.gap(link, len(w.page.Links))
	if title != "" {
		w.attribute("title", title)
	}
	w.raw(">")
	w.page.Links = append(w.page.Links, l)
}

// target checks the form of a link; it returns "" for one that must not be
// followed. Whether it leads anywhere is seen once all pages are known.
func (w *walker) target(dest string, offset int) string {
	scheme := schemeOf(dest)
	switch {
	case dest == "":
		w.errorAt(offset, "link-nowhere", "write slug.md, #heading, calc:id or an https address", "link has no address")
	case strings.ContainsFunc(dest, unicode.IsControl) || strings.TrimSpace(dest) != dest:
		w.errorAt(offset, "link-control", "remove it", "link %q holds a control character or a space at its edge",
			clip(dest))
	case scheme == "https", scheme == "calc":
		return dest
	case scheme == "http":
		w.errorAt(offset, "link-scheme", "use the https address", "link %q is not encrypted", clip(dest))
	case scheme != "":
		w.errorAt(offset, "link-scheme", "link to slug.md, #heading, calc:id or an https address",
			"link %q runs or opens something else than a page", clip(dest))
	case strings.HasPrefix(dest, "//"), strings.Contains(dest, `\`):
		w.errorAt(offset, "link-scheme", "write the whole https address",
			"link %q leaves the manual without saying how", clip(dest))
	case strings.Contains(dest, "/"):
		w.errorAt(offset, "link-path", "write the page's file name alone: slug.md", "link %q names a folder",
			clip(dest))
	default:
		return dest
	}
	return ""
}

// schemeOf reads a link's scheme as a browser does: control characters and
// spaces are passed over, case does not count.
func schemeOf(dest string) string {
	var b strings.Builder
	for _, r := range dest {
		switch {
		case r <= ' ' || r == 0x7F:
		case r == ':':
			return b.String()
		case 'a' <= r && r <= 'z' || b.Len() > 0 && ('0' <= r && r <= '9' || r == '+' || r == '-' || r == '.'):
			b.WriteRune(r)
		case 'A' <= r && r <= 'Z':
			b.WriteRune(r + 'a' - 'A')
		default:
			return ""
		}
	}
	return ""
}
