package site

import (
	"strings"

	"coursebook/generator/internal/page"
)

// Form is the form in which the manual is published.
type Form uint8

// The forms of publication.
const (
	// Folder is a site of many files.
	Folder Form = iota
	// OneFile is one file with all pages, whose ids have prefixes.
	OneFile
)

// Anchor returns the id of a page's element in OneFile.
func (p *Page) Anchor() string { return p.Lang + "." + p.Slug }

// CalculatorAnchor returns the id of a calculator's element in OneFile.
func CalculatorAnchor(lang, id string) string { return lang + ".calc." + id }

// Href returns the address of a page, or of an id on it if id is not empty,
// relative to the file from. In OneFile it is a fragment.
func (s *Site) Href(form Form, from string, to *Page, id string) string {
	if form == OneFile {
		if id != "" {
			return "#" + to.Anchor() + "." + id
		}
		return "#" + to.Anchor()
	}
	if id != "" {
		return Rel(from, to.Path+"#"+id)
	}
	return Rel(from, to.Path)
}

// Resolution returns the data that rendering a page needs. pictures are those
// published, by file name. Their Src are paths below the output's root, which are
// changed to relative ones in a folder, or data: addresses, which are kept.
func (s *Site) Resolution(p *Page, form Form, pictures map[string]page.Image) page.Resolution {
	r := page.Resolution{Links: make([]page.Target, len(p.links)), Pictures: map[string]page.Image{}}
	if form == OneFile {
		r.Prefix = p.Anchor() + "."
	}
	for i, l := range p.links {
		r.Links[i] = s.target(p, form, l)
	}
	for _, pic := range p.Pictures {
		img := pictures[pic.File]
		if form == Folder && !strings.HasPrefix(img.Src, "data:") {
			img.Src = Rel(p.Path, img.Src)
		}
		r.Pictures[pic.File] = img
	}
	if g := p.Language.Glossary; p.Language.Terms != nil && g.Page != p {
		r.Terms = p.Language.Terms
		r.Glossary = s.Href(form, p.Path, g.Page, "") + "#"
		if form == OneFile {
			r.Glossary = "#" + g.Page.Anchor() + "."
		}
	}
	return r
}

// target returns the address of a link of p. A link without a target is Missing.
func (s *Site) target(p *Page, form Form, l linked) page.Target {
	switch {
	case l.outbound != "":
		return page.Target{Href: l.outbound, Outbound: true}
	case l.calculator != "" && form == OneFile:
		return page.Target{Href: "#" + CalculatorAnchor(p.Lang, l.calculator)}
	case l.calculator != "":
		return page.Target{Href: Rel(p.Path, CalculatorPath(p.Lang, l.calculator))}
	case l.page == nil:
		return page.Target{Missing: true}
	}
	t := page.Target{Href: s.Href(form, p.Path, l.page, l.anchor)}
	if l.fallback {
		t.Lang = l.page.Lang
	}
	return t
}
