package markdown

import (
	"strconv"
	"strings"

	"coursebook/generator/internal/page"
)

// piece is a stretch of a document's text, or a gap in it.
type piece struct {
	kind pieceKind
	to   int32 // where it ends in Document.html; it begins where the last one ends
	n    int32 // the place's, link's or picture's number
}

type pieceKind uint8

const (
	literal pieceKind = iota // HTML, copied
	running                  // plain text in which terms are looked for
	prefix                   // gap: the prefix of an id
	link                     // gap: the attributes of a link
	picture                  // gap: the address and size of a picture
	place                    // gap: what a fenced block places
)

// Chunk is a stretch of a page's HTML, or a place between two stretches. A
// page is its chunks one after another; a chunk of HTML need not be closed in
// itself, for a place may stand inside a step.
type Chunk struct {
	HTML  string
	Place int // index into Page.Places, -1 for HTML
}

// Body fills the gaps. It does not change the document, and may be called
// more than once and concurrently.
func (d *Document) Body(r page.Resolution) []Chunk {
	var chunks []Chunk
	b := body{d: d, r: r}
	b.out.Grow(len(d.html) + len(d.html)/4)
	from := int32(0)
	for _, p := range d.pieces {
		if p.kind == place {
			chunks = append(chunks, b.flush()...)
			chunks = append(chunks, Chunk{Place: int(p.n)})
			continue
		}
		b.piece(p, d.html[from:p.to])
		from = p.to
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

func (b *body) flush() []Chunk {
	if b.out.Len() == 0 {
		return nil
	}
	c := Chunk{HTML: b.out.String(), Place: -1}
	b.out.Reset()
	return []Chunk{c}
}

func (b *body) piece(p piece, text string) {
	switch p.kind {
	case literal:
		b.out.WriteString(text)
	case running:
		b.terms(text)
	case prefix:
		b.out.WriteString(escapeAttribute(b.r.Prefix))
	case link:
		b.link(b.d.Page.Links[p.n], int(p.n))
	case picture:
		b.picture(b.d.Page.Pictures[p.n].File)
	}
}

// link writes the attributes of the link with number n.
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

func (b *body) picture(file string) {
	img := b.r.Pictures[file]
	b.attribute("src", img.Src)
	if img.Width > 0 && img.Height > 0 {
		b.attribute("width", strconv.Itoa(img.Width))
		b.attribute("height", strconv.Itoa(img.Height))
	}
}

func (b *body) attribute(name, value string) {
	b.out.WriteByte(' ')
	b.out.WriteString(name)
	b.out.WriteString(`="`)
	b.out.WriteString(escapeAttribute(value))
	b.out.WriteByte('"')
}
