package markdown

import (
	"strconv"
	"strings"

	"coursebook/generator/internal/page"
)

// piece is a stretch of a document's HTML or a gap in it. A document is the
// list of its pieces.
type piece struct {
	kind pieceKind
	// n is the length of a stretch, or the number of what fills a gap: a
	// link, picture or place of the page.
	n int32
}

type pieceKind uint8

const (
	literal pieceKind = iota // HTML, copied
	running                  // plain text in which terms are looked for
	prefix                   // gap: the prefix of an id
	link                     // gap: the attributes of a link
	picture                  // gap: the address and size of a picture
	place                    // gap: what a fenced block places
	why                      // gap: a heading above the text that explains a procedure
)

// Chunk is a stretch of a page's HTML, or a place between two stretches. A
// page is its chunks one after another; a chunk of HTML need not be closed in
// itself, because a place may be inside a step.
type Chunk struct {
	HTML  string
	Place int // index into Page.Places, -1 for HTML, Why for a heading
}

// Why is the Place of a chunk for which the theme has the heading: above the text and
// pictures of a procedure that explain it and that follow its steps.
const Why = -2

// Body returns the page's HTML in order, its gaps filled from r, split at the
// places. A link or picture that r does not resolve has no address. Body does not
// change the document, and may be called more than once and concurrently.
func (d *Document) Body(r page.Resolution) []Chunk {
	var chunks []Chunk
	b := body{d: d, r: r}
	b.out.Grow(len(d.html) + len(d.html)/4)
	html := d.html
	for _, p := range d.pieces {
		switch n := int(p.n); p.kind {
		case place:
			chunks = append(chunks, b.flush()...)
			chunks = append(chunks, Chunk{Place: n})
		case why:
			chunks = append(chunks, b.flush()...)
			chunks = append(chunks, Chunk{Place: Why})
		case literal:
			b.out.WriteString(html[:n])
			html = html[n:]
		case running:
			b.terms(html[:n])
			html = html[n:]
		default:
			b.gap(p.kind, n)
		}
	}
	return append(chunks, b.flush()...)
}

// body is one filling of the gaps.
type body struct {
	d    *Document
	r    page.Resolution
	out  strings.Builder
	seen map[int]bool // terms that were linked already
}

// flush returns what was written since the last flush as one chunk of HTML, and
// nil if nothing was.
func (b *body) flush() []Chunk {
	if b.out.Len() == 0 {
		return nil
	}
	c := Chunk{HTML: b.out.String(), Place: -1}
	b.out.Reset()
	return []Chunk{c}
}

// gap writes what fills one gap: the prefix of an id, or the attributes of the
// page's link or picture with index n.
func (b *body) gap(kind pieceKind, n int) {
	switch kind {
	case prefix:
		b.out.WriteString(escapeAttribute(b.r.Prefix))
	case link:
		b.link(b.d.Page.Links[n], n)
	case picture:
		b.picture(b.d.Page.Pictures[n].File)
	}
}

// link writes the attributes of the link l with index n. It writes nothing if the
// link is not resolved, so that the text is no link.
func (b *body) link(l page.Link, n int) {
	if n >= len(b.r.Links) {
		return
	}
	t := b.r.Links[n]
	if t.Missing || t.Href == "" {
		return
	}
	b.attribute("href", t.Href)
	if t.Outbound {
		b.out.WriteString(` class="out" rel="noreferrer"`)
	}
	if t.Lang != "" {
		b.attribute("hreflang", t.Lang)
	}
}

// picture writes the address of a picture, and its width and height in pixels if
// both are known. A file that is not resolved has an empty address.
func (b *body) picture(file string) {
	img := b.r.Pictures[file]
	b.attribute("src", img.Src)
	if img.Width > 0 && img.Height > 0 {
		b.attribute("width", strconv.Itoa(img.Width))
		b.attribute("height", strconv.Itoa(img.Height))
	}
}

// attribute writes a space, the name and the value in quotes, escaped.
func (b *body) attribute(name, value string) {
	b.out.WriteByte(' ')
	b.out.WriteString(name)
	b.out.WriteString(`="`)
	b.out.WriteString(escapeAttribute(value))
	b.out.WriteByte('"')
}
