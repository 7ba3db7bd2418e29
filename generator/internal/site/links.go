package site

import (
	"net/url"
	"slices"
	"strings"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
)

// linked is the target of a link: a page, a calculator or an outbound address. The
// zero value is a link without a target.
type linked struct {
	page       *Page
	anchor     string // on the page; may be empty
	calculator string // ID
	outbound   string // https address
	fallback   bool   // the page is in the default language instead of the linking one
}

// linksOf resolves a page's links and adds an error for each dead one.
func (a *assembler) linksOf(p *Page) {
	p.links = make([]linked, len(p.Links))
	for i, l := range p.Links {
		p.links[i] = a.resolve(p, l)
	}
}

// resolve returns the target of the link l of a page. An address, calculator, page
// or heading that does not exist, or is not written well, adds an error and gives
// the zero value; an empty target gives it without one. An https address is
// recorded as outbound.
func (a *assembler) resolve(p *Page, l page.Link) linked {
	fail := func(code, hint, format string, args ...any) linked {
		a.at(fault.Error, p.File, l.Line, l.Col, code, hint, format, args...)
		return linked{}
	}
	switch {
	case l.Target == "": // reported when the page was parsed
		return linked{}
	case strings.HasPrefix(l.Target, "rule:"): // its amount was checked when the page was parsed
		if p.Language.Rules == nil || p.Language.Rules == p {
			return linked{}
		}
		return linked{page: p.Language.Rules, anchor: RuleAnchor(strings.TrimPrefix(l.Target, "rule:"))}
	case strings.HasPrefix(l.Target, "https:"):
		if !isAddress(l.Target) {
			return fail("link-address", "write https://, the host and the path", "%q is no web address", l.Target)
		}
		a.outbound[l.Target] = true
		return linked{outbound: l.Target}
	case strings.HasPrefix(l.Target, "calc:"):
		id := strings.TrimPrefix(l.Target, "calc:")
		if a.site.byID[id] == nil {
			hint := a.guess(id, a.calculatorIDs, "use one of: "+strings.Join(a.calculatorIDs(), ", "))
			return fail("link-calculator", hint, "no calculator %q", id)
		}
		return linked{calculator: id}
	}
	file, anchor, hasAnchor := strings.Cut(l.Target, "#")
	if unescaped, err := url.PathUnescape(anchor); err == nil {
		anchor = unescaped // gr%C3%B6%C3%9Fe is größe
	}
	to := Entry{Page: p}
	if file != "" {
		slug, ok := strings.CutSuffix(file, ".md")
		if !ok {
			return fail("link-file", "write "+bare(file)+".md", "link %q names no page", l.Target)
		}
		if to, ok = a.site.In(p.Language, slug); !ok {
			return fail("link-dead",
				a.guess(file, func() []string { return a.fileNames(p.Language) }, "name the file of a page: slug.md"),
				"no page %q", file)
		}
	}
	if hasAnchor && !to.Page.has(anchor) {
		return fail("link-anchor", a.guess(anchor, to.Page.anchors, "name a heading in lower case with hyphens"),
			"no heading %q in %s", anchor, to.Page.File)
	}
	return linked{page: to.Page, anchor: anchor, fallback: to.Fallback}
}

// fileNames returns the file names of all pages that a page in a language can link to.
func (a *assembler) fileNames(lang *Language) []string {
	names := a.slugs(lang)
	for i := range names {
		names[i] += ".md"
	}
	return names
}

// isAddress reports whether s begins with https:// and a host, without a user or
// password, spaces, quotes or angle brackets.
func isAddress(s string) bool {
	rest, ok := strings.CutPrefix(s, "https://")
	host, _, _ := strings.Cut(rest, "/")
	return ok && host != "" && !strings.ContainsAny(host, "@ ") && !strings.ContainsAny(s, " <>\"")
}

// bare returns the name of a file up to the first point, or "slug" if that is
// empty.
func bare(file string) string {
	name, _, _ := strings.Cut(file, ".")
	if name == "" {
		return "slug"
	}
	return name
}

// calculatorIDs returns the IDs of all calculators in their order.
func (a *assembler) calculatorIDs() []string {
	ids := make([]string, len(a.site.Calculators))
	for i, c := range a.site.Calculators {
		ids[i] = c.ID
	}
	return ids
}

// has reports whether a heading, step or term of the page has this id.
func (p *Page) has(id string) bool {
	if len(p.Headings)+len(p.Steps)+len(p.Terms) <= fewIDs {
		return slices.ContainsFunc(p.Headings, func(h page.Heading) bool { return h.ID == id }) ||
			slices.ContainsFunc(p.Steps, func(s page.Step) bool { return s.ID == id }) ||
			slices.ContainsFunc(p.Terms, func(t page.Term) bool { return t.ID == id })
	}
	if p.ids == nil {
		p.ids = map[string]bool{}
		for _, id := range p.anchors() {
			p.ids[id] = true
		}
	}
	return p.ids[id]
}

// fewIDs is the number of ids up to which a linear search is used instead of a map.
const fewIDs = 50

// anchors returns the ids of a page: those of headings, steps and terms.
func (p *Page) anchors() []string {
	var all []string
	for _, h := range p.Headings {
		all = append(all, h.ID)
	}
	for _, s := range p.Steps {
		all = append(all, s.ID)
	}
	for _, t := range p.Terms {
		all = append(all, t.ID)
	}
	return all
}

// picturesOf checks the pictures of a page against those of the content folder.
// It adds a fault for each that is missing, and marks the others as used.
func (a *assembler) picturesOf(p *Page) {
	for _, pic := range p.Pictures {
		if _, ok := a.pictures[pic.File]; !ok {
			known := func() []string { return sortedKeys(a.pictures) }
			a.at(fault.Error, p.File, pic.Line, pic.Col, "picture-missing",
				a.guess(pic.File, known, "put the picture in the folder pictures"), "no picture %q", pic.File)
			continue
		}
		a.pictures[pic.File] = true
	}
}

// unused warns of pictures that no page shows. They would be published and stored
// on every phone.
func (a *assembler) unused() {
	for _, name := range sortedKeys(a.pictures) {
		if !a.pictures[name] {
			a.at(fault.Warning, pictureFolder+name, 0, 0, "picture-unused", "show it on a page, or remove it",
				"no page shows this picture")
		}
	}
}
