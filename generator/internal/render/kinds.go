package render

import (
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
)

// kind is one kind of page. A new kind needs an entry in kinds, a template and a test.
type kind struct {
	// name is the kind in the header of a page, or Frame.Kind of a page that the generator
	// adds.
	name string
	// template is the name of the template of the page. The template of its article in the
	// one-file edition is this name and "-body".
	template string
	// budget is the kind of page by which package output chooses the budget; empty for the
	// default.
	budget string
	// lists reports whether the pages load the style sheet of lists.
	lists bool
	// list returns the pages that the generator adds in a language; nil for kinds of the
	// content.
	list func(m *Manual, l *site.Language) []*Job
	// at returns the address of the page in a language; zero if it does not exist there.
	at func(j *Job, l *site.Language) address
	// view returns the view for the template.
	view func(j *Job) (any, error)
}

// kinds are all kinds of page: first those of the content, then those that the
// generator adds, in the order of their articles in the one-file edition.
var kinds = []kind{
	{name: string(page.Home), template: "home", lists: true, budget: output.KindHome, at: contentAt, view: homeView},
	{name: string(page.Procedure), template: "procedure", at: contentAt, view: procedureView},
	{name: string(page.Reference), template: "procedure", at: contentAt, view: procedureView},
	{name: string(page.Cautions), template: "procedure", at: contentAt, view: procedureView},
	{name: string(page.Glossary), template: "procedure", budget: output.KindGlossary,
		at: contentAt, view: procedureView},
	{name: string(page.Lesson), template: "lesson", at: contentAt, view: lessonView},
	{name: string(page.Course), template: "course", at: contentAt, view: courseView},

	{name: "stage", template: "stage", lists: true, list: listStages, at: stageAt, view: stageView},
	{name: "calculators", template: "calculators", lists: true, list: listGroups, at: groupsAt, view: groupsView},
	{name: "calculator", template: "calculator", budget: output.KindCalculator,
		list: listCalculators, at: calculatorAt, view: calculatorView},
	{name: "listing", template: "listing", budget: output.KindCalculator,
		list: listListings, at: listingAt, view: listingView},
	{name: "all", template: "all", lists: true, budget: output.KindAll, list: listAll, at: allAt, view: allView},
	{name: "book", template: "paper", lists: true, budget: output.KindPaper,
		list: listCards, at: cardsAt, view: cardsView},
	{name: "book", template: "paper", lists: true, budget: output.KindPaper,
		list: listPosters, at: postersAt, view: postersView},
	{name: "training", template: "training", list: listTraining, at: trainingAt, view: trainingView},
	{name: "settings", template: "settings", list: listSettings, at: settingsAt, view: settingsView},
	{name: "missing", template: "missing", list: listMissing, at: missingAt, view: missingView},
}

// kindOf returns the kind of a page of the content. It panics if kinds has no entry.
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

// contentAt returns the address of a page of the content in a language; zero if it
// does not exist there.
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
