package render

import (
	"html/template"
	"strconv"

	"coursebook/generator/internal/form"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// isUrgent reports whether a page is the urgent page or of the same stage. Its steps are
// then before roles and gear.
func isUrgent(m *Manual, p *site.Page) bool {
	e, ok := m.Site.In(p.Language, urgentSlug)
	return ok && (p == e.Page || p.Header.Stage != "" && p.Header.Stage == e.Page.Header.Stage)
}

func procedureView(j *Job) (any, error) { return procedure(j) }

// procedure returns the view of a page of the content other than the home page. It
// returns an error if its body cannot be rendered.
func procedure(j *Job) (theme.Procedure, error) {
	p, h := j.page, j.page.Header
	body, err := parts(j)
	if err != nil {
		return theme.Procedure{}, err
	}
	v := theme.Procedure{
		Frame: frame(j), When: h.When, Time: h.Time, Gear: h.Gear, Sources: h.Sources,
		Parts: body, Next: links(j, p.After), Urgent: isUrgent(j.Manual, p),
	}
	v.Summary = h.Summary
	if h.Call {
		v.Call = j.Site.Manual.Emergency
	}
	if h.Revised != "" {
		v.Revised = h.Revised
	}
	v.Marks = marks(j)
	for _, id := range h.Roles {
		v.Roles = append(v.Roles, roleTitle(p.Language, id))
	}
	v.Before, v.After = neighbour(j, p.Previous), neighbour(j, p.Next)
	return v, nil
}

// roleTitle returns the title of a role in a language; its ID if there is no such
// role.
func roleTitle(l *site.Language, id string) string {
	for _, r := range l.Roles {
		if r.ID == id {
			return r.Title
		}
	}
	return id
}

// neighbour returns a link to a page; nil if there is none.
func neighbour(j *Job, e site.Entry) *theme.Link {
	if e.Page == nil {
		return nil
	}
	l := link(j, e)
	return &l
}

// link returns a link from the job's page to a page, which must exist.
func link(j *Job, e site.Entry) theme.Link {
	h := e.Page.Header
	l := theme.Link{Title: h.Title, Summary: h.Summary, Href: j.pageHref(e.Page),
		Time: h.Time, Roles: h.Roles, Slug: e.Page.Slug}
	if e.Fallback {
		l.Lang = e.Page.Lang
	}
	return l
}

// links returns links from the job's page to pages, in the same order.
func links(j *Job, entries []site.Entry) []theme.Link {
	var list []theme.Link
	for _, e := range entries {
		list = append(list, link(j, e))
	}
	return list
}

// calculatorLinks returns links to all calculators in the job's language.
func calculatorLinks(j *Job) []theme.Link {
	var list []theme.Link
	for _, f := range j.Forms.In(j.lang.Code) {
		list = append(list, theme.Link{Title: f.Title, Summary: f.Purpose, Href: calculatorHref(j, f.ID), Slug: f.ID})
	}
	return list
}

// images returns the pictures for package markdown, by file name.
func (m *Manual) images() map[string]page.Image {
	images := make(map[string]page.Image, len(m.Pictures))
	for name, p := range m.Pictures {
		images[name] = p.Image
	}
	return images
}

// parts returns the body of a page: its HTML, and the calculators, tables,
// figures, questions and examples that its blocks place. It returns the first
// error of a block.
func parts(j *Job) ([]theme.Part, error) {
	p := j.page
	chunks := j.Docs[p.Index].Body(j.Site.Resolution(p, j.form, j.images()))
	parts := make([]theme.Part, 0, len(chunks))
	questionCount := 0
	for i, c := range chunks {
		if c.Place == markdown.Why {
			parts = append(parts, theme.Part{Why: true})
			continue
		}
		if c.Place < 0 {
			parts = append(parts, theme.Part{HTML: template.HTML(c.HTML)})
			continue
		}
		place := p.Places[c.Place]
		part, err := placePart(j, place, "p"+strconv.Itoa(i))
		if err != nil {
			return nil, err
		}
		if part.Questions, err = questions(j, place.Questions, questionCount); err != nil {
			return nil, err
		}
		questionCount += len(place.Questions)
		parts = append(parts, part)
	}
	return parts, nil
}

// placePart returns the part of a block other than its questions. key is unique on
// the page. It returns an error if the block's inputs cannot be JSON.
func placePart(j *Job, place page.Place, key string) (part theme.Part, err error) {
	part.Key = key
	switch place.Kind {
	case page.Calculator:
		part.Closed, err = closed(j, place)
	case page.Table:
		part.Table = tableOf(j.Forms.at(j.lang.Code, place), place.Table)
		part.FormHref = calculatorHref(j, place.Calculator)
	case page.Figure:
		part.Figure = figure(j, place)
	case page.Example:
		part.Example = example(j, place)
	case page.Rules:
		part.Rules = houseRules(j)
	}
	return part, err
}

// tableOf returns the table of a form with this ID, or nil.
func tableOf(f *form.Form, id string) *form.Table {
	for i := range f.Tables {
		if f.Tables[i].ID == id {
			return &f.Tables[i]
		}
	}
	return nil
}

// figure returns a figure block: the calculator's drawing or a picture.
func figure(j *Job, place page.Place) *theme.Figure {
	fig := &theme.Figure{Alt: place.Alt, Caption: place.Caption}
	if place.Calculator != "" {
		fig.SVG = template.HTML(j.Forms.at(j.lang.Code, place).Figure)
		return fig
	}
	picture(j, fig, place.File)
	return fig
}

// picture sets the address and the size of fig to those of a picture file; an
// unknown file has none.
func picture(j *Job, fig *theme.Figure, file string) {
	img := j.Pictures[file]
	fig.Src, fig.Width, fig.Height = img.Src, img.Width, img.Height
	if j.form == site.Folder {
		fig.Src = site.Rel(j.at.path, img.Src)
	}
}
