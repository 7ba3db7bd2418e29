package build

import (
	"bytes"
	"html/template"
	"sync"

	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/form"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/preview"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// leaf is one page to be rendered.
type leaf struct {
	spot  spot
	view  func() any
	kind  string // template
	light bool   // held to the budget of the first view
}

// renderPages renders and adds all pages, several at a time.
func (b *builder) renderPages() {
	leaves := b.leaves(site.Folder)
	min := bundle.NewMinifier()
	errs := make([]error, len(leaves))
	parallel(len(leaves), func(i int) { errs[i] = b.render(leaves[i], min) })
	for _, err := range errs {
		if err != nil {
			b.fail(err) // the others have the same cause, mostly
			return
		}
	}
}

// fullPages keeps the room that a page is made in for the next one: fresh
// memory costs more than what is written to it.
var fullPages = sync.Pool{New: func() any { return new(bytes.Buffer) }}

func (b *builder) render(l leaf, min *bundle.Minifier) error {
	full := fullPages.Get().(*bytes.Buffer)
	defer fullPages.Put(full)
	full.Reset()
	if err := b.themes[l.spot.lang.Code].RenderTo(full, l.kind, l.view()); err != nil {
		return err
	}
	html, err := small(l, full.Bytes(), min)
	if err != nil {
		return err
	}
	if l.light {
		if f, heavier := b.firstView.Check(output.File{Path: l.spot.path, Data: html}); heavier {
			b.overBudget(f)
		}
	}
	if b.o.Preview { // after the check: the reload script is not part of the published page
		script := `<script src="` + site.Rel(l.spot.path, preview.ScriptPath) + `"></script></body>`
		html = bytes.Replace(html, []byte("</body>"), []byte(script), 1)
	}
	if b.o.Keep == nil {
		html = bytes.Clone(html) // the room goes to the next page
	}
	b.add(l.spot.path, html)
	return nil
}

// small is a page as published. A page of the manual is small as it is made,
// for templates are compacted when they are loaded and the body is written
// without white space; of those there are thousands. The few others hold forms
// and listings with more to gain.
func small(l leaf, page []byte, min *bundle.Minifier) ([]byte, error) {
	if l.kind == "procedure" {
		return theme.Plain(page), nil
	}
	return min.HTML(page)
}

// leaves lists all pages of the manual: those of the content and those that
// the generator makes itself.
func (b *builder) leaves(f site.Form) []leaf {
	var list []leaf
	for _, p := range b.site.Pages {
		list = append(list, b.contentLeaf(f, p))
	}
	for _, l := range b.site.Languages {
		for _, fm := range b.forms[l.Code] {
			list = append(list, b.calculatorLeaf(f, l, fm), b.listingLeaf(f, l, fm))
		}
		list = append(list, b.allLeaf(f, l))
		list = append(list, b.paperLeaves(f, l)...)
		if len(l.Courses) > 0 {
			list = append(list, b.trainingLeaf(f, l))
		}
	}
	if f == site.Folder {
		list = append(list, b.missingLeaf())
	}
	return list
}

func (b *builder) contentLeaf(f site.Form, p *site.Page) leaf {
	s := spot{lang: p.Language, form: f, path: p.Path, kind: string(p.Header.Kind), slug: p.Slug, title: p.Header.Title}
	s.twin = func(l *site.Language) string {
		if twin := b.site.Page(l.Code, p.Slug); twin != nil {
			return b.pageHref(s, twin)
		}
		return ""
	}
	exempt := p.Header.Kind == page.Glossary
	if p.Language.Home.Page == p {
		s.title = p.Language.Title
		return leaf{spot: s, kind: "home", view: func() any { return b.homeView(s, p) }, light: true}
	}
	switch p.Header.Kind {
	case page.Lesson:
		return leaf{spot: s, kind: "lesson", view: func() any { return b.lessonView(s, p) }, light: true}
	case page.Course:
		return leaf{spot: s, kind: "course", view: func() any { return b.courseView(s, p) }, light: true}
	}
	return leaf{spot: s, kind: "procedure", view: func() any { return b.procedureView(s, p) }, light: !exempt}
}

// stagePages is how many pages the home page lists of one stage: as many as a
// thumb goes through, and as a first view can carry.
const stagePages = 15

func (b *builder) homeView(s spot, p *site.Page) any {
	v := theme.Home{Frame: b.frame(s), Parts: b.parts(s, p), Calculators: b.calculatorLinks(s)}
	v.Summary = p.Header.Summary
	for _, st := range p.Language.Stages {
		shown := st.Pages[:min(len(st.Pages), stagePages)]
		v.Stages = append(v.Stages, theme.Stage{ID: stageID(st.ID), Title: st.Title, Hint: st.Hint,
			Pages: b.links(s, shown), More: len(st.Pages) - len(shown)})
	}
	for _, r := range p.Language.Roles {
		v.Roles = append(v.Roles, theme.Role{ID: r.ID, Title: r.Title})
	}
	return v
}

// isUrgent tells that a page is opened in trouble: it is the urgent page, or of
// its stage.
func (b *builder) isUrgent(p *site.Page) bool {
	e, ok := b.site.In(p.Language, urgentSlug)
	return ok && (p == e.Page || p.Header.Stage != "" && p.Header.Stage == e.Page.Header.Stage)
}

func (b *builder) procedureView(s spot, p *site.Page) theme.Procedure {
	h := p.Header
	v := theme.Procedure{
		Frame: b.frame(s), When: h.When, Time: h.Time, Gear: h.Gear, Sources: h.Sources,
		Parts: b.parts(s, p), Next: b.links(s, p.After),
		Urgent: b.isUrgent(p),
	}
	v.Summary = h.Summary
	if h.Revised != "" {
		v.Revised = h.Revised
	}
	if p.Stage != nil {
		v.Stage = p.Stage.Title
	}
	for _, id := range h.Roles {
		v.Roles = append(v.Roles, roleTitle(p.Language, id))
	}
	v.Before, v.After = b.neighbour(s, p.Previous), b.neighbour(s, p.Next)
	return v
}

func roleTitle(l *site.Language, id string) string {
	for _, r := range l.Roles {
		if r.ID == id {
			return r.Title
		}
	}
	return id
}

func (b *builder) neighbour(s spot, e site.Entry) *theme.Link {
	if e.Page == nil {
		return nil
	}
	l := b.link(s, e)
	return &l
}

func (b *builder) link(s spot, e site.Entry) theme.Link {
	h := e.Page.Header
	l := theme.Link{Title: h.Title, Summary: h.Summary, Href: b.pageHref(s, e.Page), Time: h.Time, Roles: h.Roles, Slug: e.Page.Slug}
	if e.Fallback {
		l.Lang = e.Page.Lang
	}
	return l
}

func (b *builder) links(s spot, entries []site.Entry) []theme.Link {
	var list []theme.Link
	for _, e := range entries {
		list = append(list, b.link(s, e))
	}
	return list
}

func (b *builder) calculatorLinks(s spot) []theme.Link {
	var list []theme.Link
	for _, f := range b.forms[s.lang.Code] {
		list = append(list, theme.Link{Title: f.Title, Summary: f.Purpose, Href: b.calculatorHref(s, f.ID), Slug: f.ID})
	}
	return list
}

func (b *builder) calculatorHref(s spot, id string) string {
	return b.href(s, site.CalculatorPath(s.lang.Code, id), site.CalculatorAnchor(s.lang.Code, id))
}

// parts is a page's body with what its blocks place.
func (b *builder) parts(s spot, p *site.Page) []theme.Part {
	chunks := b.docs[p.Index].Body(b.site.Resolution(p, s.form, b.picturesFor(s.form)))
	parts := make([]theme.Part, 0, len(chunks))
	asked := 0
	for i, c := range chunks {
		if c.Place < 0 {
			parts = append(parts, theme.Part{HTML: template.HTML(c.HTML)})
			continue
		}
		place := p.Places[c.Place]
		part := b.placePart(s, place, partKey(i))
		part.Questions = b.questions(s, p, place.Questions, asked)
		asked += len(place.Questions)
		parts = append(parts, part)
	}
	return parts
}

func (b *builder) placePart(s spot, place page.Place, key string) theme.Part {
	part := theme.Part{Key: key}
	switch place.Kind {
	case page.Calculator:
		part.Form, part.FormHref = b.formOf(s.lang.Code, place), b.calculatorHref(s, place.Calculator)
	case page.Table:
		part.Table, part.FormHref = tableOf(b.formOf(s.lang.Code, place), place.Table), b.calculatorHref(s, place.Calculator)
	case page.Figure:
		part.Figure = b.figure(s, place)
	case page.Example:
		part.Example = b.example(s, place)
	}
	return part
}

func tableOf(f *form.Form, id string) *form.Table {
	for i := range f.Tables {
		if f.Tables[i].ID == id {
			return &f.Tables[i]
		}
	}
	return nil
}

func (b *builder) figure(s spot, place page.Place) *theme.Figure {
	fig := &theme.Figure{Alt: place.Alt, Caption: place.Caption}
	if place.Calculator != "" {
		fig.SVG = template.HTML(b.formOf(s.lang.Code, place).Figure)
		return fig
	}
	b.picture(s, fig, place.File)
	return fig
}

// picture sets the file that a figure shows.
func (b *builder) picture(s spot, fig *theme.Figure, file string) {
	img := b.picturesFor(s.form)[file]
	fig.Src, fig.Width, fig.Height = img.Src, img.Width, img.Height
	if s.form == site.Folder {
		fig.Src = site.Rel(s.path, img.Src)
	}
}
