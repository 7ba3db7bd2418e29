// Package render returns the HTML of every page of a manual, for the site and for the
// one-file edition. It reads and writes no files.
package render

import (
	"slices"

	"coursebook/calculators/calc"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/form"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"
	"coursebook/generator/internal/theme"
)

// Manual is the data that pages are rendered from. Jobs do not change it.
type Manual struct {
	Site     *site.Site
	Sources  []source.File
	Docs     []*markdown.Document // indexed by Page.Index
	Themes   map[string]*theme.Theme
	Words    map[string]calc.Translations
	Forms    *Forms
	Rules    []*rules.Rule      // the declared house rules
	Pictures map[string]Picture // by the file name that pages use
	Assets   Assets
}

// Picture is a picture file: its address and size, and its bytes.
type Picture struct {
	page.Image
	Data []byte
}

// Assets are the paths of the files that pages load, from the site's root, and their
// bytes for the one-file edition.
type Assets struct {
	Style, Script, Icon string
	TouchIcon           string            // for home screens that take no vector image; may be empty
	Deferred            string            // the deferred style sheet; empty if the theme has none
	Lists               string            // the style sheet of home page, stages and lists; empty if the theme has none
	AppManifest         map[string]string // the web app manifest, by language

	StyleData, ListsData, DeferredData, ScriptData, WorkerData, IconData, ModuleData []byte

	IndexData, WordsData map[string][]byte // by language
}

// Job is one page to be rendered, with its address.
type Job struct {
	*Manual
	kind *kind
	form site.Form
	at   address

	lang        *site.Language
	slug, title string
	page        *site.Page  // of a page of the content
	calculator  *form.Form  // of a calculator's pages
	stage       *site.Stage // of the page of a stage
	folderOnly  bool        // not in the one-file edition
}

// address is the address of a page in both forms of a manual. The zero address means
// that there is no page.
type address struct {
	path   string // of its file, from the site's root
	anchor string // the id of its article in the one-file edition
}

// Jobs returns all pages of a manual in the form f: those of the content, then
// those that the generator adds.
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

// Path returns the path of the page's file from the site's root.
func (j *Job) Path() string { return j.at.path }

// Budget returns the kind of page by which package output chooses its budget. It
// is output.KindTables for a reference page with printed tables.
func (j *Job) Budget() string {
	tables := func(p page.Place) bool { return p.Kind == page.Table }
	if j.page != nil && j.page.Header.Kind == page.Reference && slices.ContainsFunc(j.page.Places, tables) {
		return output.KindTables
	}
	return j.kind.budget
}

// Lists reports whether the page loads the style sheet of lists before its first view.
func (j *Job) Lists() bool { return j.kind.lists }

// HTML returns the page, rendered and minified. It returns an error if its view,
// its template or its HTML fails.
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
