package build

import (
	"bytes"

	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/preview"
	"coursebook/generator/internal/release"
	"coursebook/generator/internal/render"
	"coursebook/generator/internal/site"
)

// makeForms creates the calculators' forms and warns of missing translations.
func (b *builder) makeForms() {
	b.Forms = render.NewForms(b.Site, b.Words, b.faults)
	b.warnUntranslated()
}

// renderPages renders all pages in parallel, checks their budgets and adds them.
// If a page cannot be rendered, it adds the first error to the faults and lists no
// pages.
func (b *builder) renderPages() {
	jobs := render.Jobs(&b.Manual, site.Folder)
	min := bundle.NewMinifier()
	ids, errs := make([]string, len(jobs)), make([]error, len(jobs))
	parallel(len(jobs), func(i int) { ids[i], errs[i] = b.renderPage(jobs[i], min) })
	for _, err := range errs {
		if err != nil {
			b.fail(err) // further errors mostly have the same cause
			return
		}
	}
	b.release.Pages = make(map[string]string, len(jobs))
	for i, j := range jobs {
		b.release.Pages[j.Path()] = ids[i]
	}
}

// renderPage adds a page and returns its id. It returns an error, and adds
// nothing, if the page cannot be rendered.
func (b *builder) renderPage(j *render.Job, min *bundle.Minifier) (id string, err error) {
	html, err := j.HTML(min)
	if err != nil {
		return "", err
	}
	html, id = release.Stamp(html)
	view := b.firstView
	if j.Lists() {
		view = b.listsView
	}
	if f, heavier := view.Check(output.File{Path: j.Path(), Data: html}, j.Budget()); heavier {
		b.overBudget(f)
	}
	if b.o.Preview { // after the check: the reload script is not part of the published page
		script := `<script src="` + site.Rel(j.Path(), preview.ScriptPath) + `"></script></body>`
		html = bytes.Replace(html, []byte("</body>"), []byte(script), 1)
	}
	b.add(j.Path(), html)
	return id, nil
}
