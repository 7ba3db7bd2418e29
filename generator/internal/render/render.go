// Package render makes the HTML of every page of a manual, for the site of many
// files and for the one-file edition. It reads nothing and writes nothing.
package render

import (
	"slices"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/form"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"
	"coursebook/generator/internal/theme"
)

// Manual is what pages are made from. Jobs only read it.
type Manual struct {
	Site     *site.Site
	Sources  []source.File
	Docs     []*markdown.Document // by the Index of their page
	Themes   map[string]*theme.Theme
	Words    map[string]calc.Translations
	Forms    *Forms
	Pictures map[string]Picture // by the file name that pages use
	Assets   Assets
}

// Picture is a picture file: as a site shows it, and its bytes.
type Picture struct {
	page.Image
	Data []byte
}

// Assets are the paths of what pages load, from the site's root, and the bytes
// that the one-file edition holds.
type Assets struct {
	Style, Script, Icon string
	Deferred            string // deferred style sheet; empty where a theme has none
	AppManifest         string // the web app manifest

	StyleData, DeferredData, ScriptData, WorkerData, IconData, ModuleData []byte

	IndexData, WordsData map[string][]byte // by language
}

// Job is one page to be rendered: what it shows, and where it is. Its links
// depend on both.
type Job struct {
	*Manual
	kind *kind
	form site.Form
	at   address

	lang        *site.Language
	slug, title string
	page        *site.Page // of a page of the content
	calculator  *form.Form // of a calculator's pages
	folderOnly  bool       // not in the one-file edition
}

// address is where a page is.
type address struct {
	path   string // of its file, from the site's root
	anchor string // id of its article in the one-file edition
}

// Jobs lists all pages of a manual: those of the content, and those that the
// generator adds.
func Jobs(m *Manual, f site.Form) []*Job {
	var jobs []*Job
	add := func(k *kind, l *site.Language, j *Job) {
		if j.folderOnly && f != site.Folder {
			return
		}
		j.Manual, j.kind, j.form, j.lang = m, k, f, l
		j.at = k.at(j, l)
		jobs = append(jobs, j)
	}
	for _, p := range m.Site.Pages {
		title := p.Header.Title
		if p.Header.Kind == page.Home {
			title = p.Language.Title
		}
		add(kindOf(p), p.Language, &Job{slug: p.Slug, title: title, page: p})
	}
	for i := range kinds {
		if kinds[i].list == nil {
			continue
		}
		for _, l := range m.Site.Languages {
			for _, j := range kinds[i].list(m, l) {
				add(&kinds[i], l, j)
			}
		}
	}
	return jobs
}

// Path is the page's file, from the site's root.
func (j *Job) Path() string { return j.at.path }

// Budget is the kind of page by which package output weighs it. A reference page
// that places printed tables is a page of tables.
func (j *Job) Budget() string {
	tables := func(p page.Place) bool { return p.Kind == page.Table }
	if j.page != nil && j.page.Header.Kind == page.Reference && slices.ContainsFunc(j.page.Places, tables) {
		return output.KindTables
	}
	return j.kind.budget
}

// HTML is the page as published.
func (j *Job) HTML(min *bundle.Minifier) ([]byte, error) {
	view, err := j.kind.view(j)
	if err != nil {
		return nil, err
	}
	full, err := j.theme().Render(j.kind.template, view)
	if err != nil {
		return nil, err
	}
	return min.HTML(full)
}

func (j *Job) theme() *theme.Theme { return j.Themes[j.lang.Code] }
