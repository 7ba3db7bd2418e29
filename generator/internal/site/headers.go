package site

import (
	"slices"
	"strings"

	"coursebook/generator/internal/fault"
)

// header adds a fault for an unknown stage, role or next page of a page's header,
// and a warning for a missing summary. It sets the pages that follow.
func (a *assembler) header(p *Page) {
	h := p.Header
	if h.Stage != "" && p.Stage == nil && p.Language.Home.Page != p {
		a.atKey(fault.Error, p, "stage", "stage-unknown",
			a.guess(h.Stage, a.stageIDs, "use one of: "+strings.Join(a.stageIDs(), ", ")), "unknown stage %q", h.Stage)
	}
	for _, role := range h.Roles {
		if ids := a.roleIDs(); !slices.Contains(ids, role) {
			a.atKey(fault.Error, p, "roles", "role-unknown",
				a.guess(role, a.roleIDs, "use one of: "+strings.Join(ids, ", ")), "unknown role %q", role)
		}
	}
	for _, slug := range h.Next {
		e, ok := a.site.In(p.Language, slug)
		switch {
		case !ok:
			a.atKey(fault.Error, p, "next", "next-unknown",
				a.guess(slug, func() []string { return a.slugs(p.Language) }, "name a page's file without .md"),
				"no page %q", slug)
		case e.Page == p:
			a.atKey(fault.Error, p, "next", "next-self", "remove it", "page names itself as the next")
		default:
			p.After = append(p.After, e)
		}
	}
	if h.Summary == "" && h.Title != "" { // without a title the header could not be read
		a.atKey(fault.Warning, p, "title", "summary-missing",
			"add the line summary: what the page is for, in one sentence", "page has no summary")
	}
}

// stageIDs returns the IDs of the manual's stages in order.
func (a *assembler) stageIDs() (ids []string) {
	for _, s := range a.site.Manual.Stages {
		ids = append(ids, s.ID)
	}
	return ids
}

// roleIDs returns the IDs of the manual's roles in order.
func (a *assembler) roleIDs() (ids []string) {
	for _, r := range a.site.Manual.Roles {
		ids = append(ids, r.ID)
	}
	return ids
}

// slugs returns the slugs of all pages that a page in a language can link to.
func (a *assembler) slugs(lang *Language) []string {
	all := make([]string, 0, len(lang.All)+1)
	for _, e := range lang.All {
		all = append(all, e.Page.Slug)
	}
	if lang.Home.Page != nil {
		all = append(all, lang.Home.Page.Slug)
	}
	return all
}

// twins sets the translations of a page, and compares it with the page of the
// default language, adding a fault for a difference. A missing translation is a
// warning.
func (a *assembler) twins(p *Page) {
	first := a.site.Languages[0]
	for _, l := range a.site.Languages {
		if l == p.Language {
			continue
		}
		twin := a.site.pages[key{l.Code, p.Slug}]
		if twin != nil {
			p.Twins = append(p.Twins, twin)
			if l == first {
				a.compareTwins(p, twin)
			}
			continue
		}
		if p.Language == first {
			a.at(fault.Warning, p.File, 0, 0, "twin-missing",
				"add "+l.Code+"/"+p.Slug+".md; until then this page stands in", "page has no twin in %s", l.Name)
		} else if l == first {
			a.at(fault.Warning, p.File, 0, 0, "twin-missing",
				"add "+l.Code+"/"+p.Slug+".md, or rename this page as its twin",
				"page has no twin in the first language, "+
					"%s", l.Name)
		}
	}
}

// compareTwins adds a fault for the first difference of structure between a page
// and its twin in the default language: an error, or a warning for the order, the
// number of steps and an older date.
func (a *assembler) compareTwins(p, twin *Page) {
	h, o := p.Header, twin.Header
	switch {
	case h.Kind != o.Kind:
		a.atKey(fault.Error, p, "kind", "twin-differs", "give both the same kind", "kind is %s, but %s in %s", h.Kind,
			o.Kind, twin.File)
	case h.Stage != o.Stage:
		a.atKey(fault.Error, p, "stage", "twin-differs", "give both the same stage", "stage is %q, but %q in %s",
			h.Stage, o.Stage, twin.File)
	case h.Order != o.Order:
		a.atKey(fault.Warning, p, "order", "twin-differs", "give both the same order", "order is %d, but %d in %s",
			h.Order, o.Order, twin.File)
	case len(p.Steps) != len(twin.Steps):
		a.atKey(fault.Warning, p, "title", "twin-differs", "translate every step", "page has %d steps, but %s has %d",
			len(p.Steps), twin.File, len(twin.Steps))
	case holds(p) != holds(twin):
		a.atKey(fault.Error, p, "title", "twin-differs", "mark the same hold points in both",
			"page has %d hold points, but %s has %d", holds(p), twin.File, holds(twin))
	case len(p.Cautions) != len(twin.Cautions):
		a.atKey(fault.Error, p, "title", "twin-differs", "translate every caution",
			"page has %d cautions, but %s has %d", len(p.Cautions), twin.File, len(twin.Cautions))
	case len(p.Questions()) != len(twin.Questions()):
		a.atKey(fault.Error, p, "title", "twin-differs", "ask the same questions in the same order",
			"page has %d questions, but %s has %d", len(p.Questions()), twin.File, len(twin.Questions()))
	case !slices.Equal(h.Lessons, o.Lessons):
		a.atKey(fault.Error, p, "lessons", "twin-differs", "name the same lessons in the same order",
			"lessons are not those of %s", twin.File)
	case h.Call != o.Call:
		a.atKey(fault.Error, p, "call", "twin-differs", "write call: true in both or in neither",
			"the button that calls for help stands on one of this page and %s only", twin.File)
	case h.Revised < o.Revised:
		a.atKey(fault.Warning, p, "revised", "twin-older", "bring the page up to date and set its date",
			"page was revised before %s", twin.File)
	}
}

// holds returns the number of hold points of a page.
func holds(p *Page) int {
	n := 0
	for _, s := range p.Steps {
		if s.Hold {
			n++
		}
	}
	return n
}

// missing adds an error for each file and page that manual.yaml names and that
// does not exist.
func (a *assembler) missing() {
	m := a.site.Manual
	for key, name := range map[string]string{
		"thesaurus": m.Thesaurus, "small-words": m.SmallWords, "terms": m.Terms,
	} {
		if _, ok := a.files[name]; name != "" && !ok {
			a.at(fault.Error, "manual.yaml", m.Lines[key], 1, "file-missing", "add the file, or remove the line",
				"no file %q", name)
		}
	}
	a.posters()
}

// posters adds an error for each poster whose page does not exist in the first
// language or has no steps. It must be in the first language, so that every
// language has a poster of each.
func (a *assembler) posters() {
	if len(a.site.Languages) == 0 {
		return
	}
	first := a.site.Languages[0]
	for _, poster := range a.site.Manual.Posters {
		p := a.site.Page(first.Code, poster.Slug)
		switch {
		case p == nil:
			a.at(fault.Error, "manual.yaml", poster.Line, poster.Col, "poster-unknown",
				a.guess(poster.Slug, func() []string { return a.slugs(first) }, "name a page's file without .md"),
				"no page %q for a poster", poster.Slug)
		case len(p.Steps) == 0:
			a.at(fault.Error, "manual.yaml", poster.Line, poster.Col, "poster-empty",
				"name a page with steps, or remove it", "the page %q has no steps for a poster", poster.Slug)
		}
	}
}
