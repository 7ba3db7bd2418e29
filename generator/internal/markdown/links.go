package markdown

import (
	"strings"
	"unicode"

	"coursebook/generator/internal/page"

	"github.com/yuin/goldmark/ast"
)

// link writes a link with a gap for its address, and adds it to the page's links;
// one to a house rule is written by ruleLink. A link beyond the limit of expands
// is written as its text alone. A link without text and without a picture is
// reported as an error.
func (w *walker) link(n *ast.Link, m mode) {
	if w.ruleLink(n, m) {
		return
	}
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

// autoLink writes an address in angle brackets as a link to itself, that of an
// e-mail with mailto: before it. target refuses some addresses, mailto: among
// them.
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

// openLink adds l to the page's links and writes its start tag with a gap for the
// address. An empty title writes no title.
func (w *walker) openLink(l page.Link, title string) {
	w.raw("<a")
	w.gap(link, len(w.page.Links))
	if title != "" {
		w.attribute("title", title)
	}
	w.raw(">")
	w.page.Links = append(w.page.Links, l)
}

// target returns dest unchanged if its form is allowed: a file name, a #fragment,
// or an address with the scheme https or calc. Any other form is reported as an
// error at the byte offset of the body and gives "": an empty address, a control
// character, a space at an end, another scheme, //, a backslash, or a path with a
// slash. Whether the link leads to a page is not checked here.
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

// schemeOf returns the scheme of a link without its colon, in lower case, as a
// browser reads it: spaces and control characters are skipped. It returns "" if
// there is none.
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
