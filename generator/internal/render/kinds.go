package render

import (
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
)

// kind is one kind of page. A new kind takes an entry in kinds, a template and
// a test.
type kind struct {
	// name is the kind of a page's header, or the name that the theme is given.
	name string
	// template makes the page; template-body makes its article in the one-file
	// edition.
	template string
	// weighed holds the page to the budget of the first view.
	weighed bool
	// list gives the pages that the generator adds in a language; nil for a
	// kind of the content.
	list func(m *Manual, l *site.Language) []*Job
	// at is the address of the same page in a language; zero where the language
	// has no such page.
	at func(j *Job, l *site.Language) address
	// view is what the template shows.
	view func(j *Job) (any, error)
}

// kinds are all kinds of page: first those of the content, then those that the
// generator adds, in the order of their articles in the one-file edition.
var kinds = []kind{
	{name: string(page.Home), template: "home", weighed: true, at: contentAt, view: homeView},
	{name: string(page.Procedure), template: "procedure", weighed: true, at: contentAt, view: procedureView},
	{name: string(page.Reference), template: "procedure", weighed: true, at: contentAt, view: procedureView},
	{name: string(page.Cautions), template: "procedure", weighed: true, at: contentAt, view: procedureView},
	{name: string(page.Glossary), template: "procedure", at: contentAt, view: procedureView},
	{name: string(page.Lesson), template: "lesson", weighed: true, at: contentAt, view: lessonView},
	{name: string(page.Course), template: "course", weighed: true, at: contentAt, view: courseView},

	{name: "calculator", template: "calculator", weighed: true, list: listCalculators, at: calculatorAt, view: calculatorView},
	{name: "listing", template: "listing", list: listCalculators, at: listingAt, view: listingView},
	{name: "all", template: "all", list: listAll, at: allAt, view: allView},
	{name: "book", template: "paper", list: listCards, at: cardsAt, view: cardsView},
	{name: "book", template: "paper", list: listPosters, at: postersAt, view: postersView},
	{name: "training", template: "training", weighed: true, list: listTraining, at: trainingAt, view: trainingView},
	{name: "missing", template: "missing", list: listMissing, at: missingAt, view: missingView},
}

// kindOf is the kind of a page of the content.
func kindOf(p *site.Page) *kind {
	for i := range kinds {
		if kinds[i].list == nil && kinds[i].name == string(p.Header.Kind) {
			return &kinds[i]
		}
	}
	panic("a page of the kind " + string(p.Header.Kind) + " has no entry in the table of kinds")
}

// Templates are the names of the templates that a theme needs.
func Templates() []string {
	var names []string
	for _, k := range kinds {
		names = append(names, k.template, k.template+"-body")
	}
	return append(names, "pocket")
}

// contentAt is where a page of the content is.
func contentAt(j *Job, l *site.Language) address {
	p := j.page
	if l != p.Language {
		p = j.Site.Page(l.Code, j.slug)
	}
	if p == nil {
		return address{}
	}
	return address{p.Path, p.Anchor()}
}
