package build

import (
	"html/template"
	"path"
	"strings"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/markdown/amount"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// printed is a page of the manual that is made to be printed.
type printed struct {
	slug  string // and the name of its file
	title string // keys of the theme's texts
	lede  string
	path  func(lang string) string
	fill  func(*site.Language, *theme.Paper)
}

// prints are those that the manual has something for.
func (b *builder) prints() []printed {
	var list []printed
	if len(b.cardPages(b.site.Languages[0])) > 0 {
		list = append(list, printed{"cards", "ui.cards", "ui.cards.lede", site.CardsPath,
			func(l *site.Language, v *theme.Paper) { v.Sheets = b.sheets(l) }})
	}
	if len(b.site.Manual.Posters) > 0 {
		list = append(list, printed{"posters", "ui.posters", "ui.posters.lede", site.PostersPath,
			func(l *site.Language, v *theme.Paper) { v.Posters = b.posters(l) }})
	}
	return list
}

// paperLeaves are a language's pages for paper. Nobody waits for one at the
// wall, so they are not held to the budget of the first view.
func (b *builder) paperLeaves(fm site.Form, l *site.Language) []leaf {
	var list []leaf
	for _, p := range b.prints() {
		s := spot{lang: l, form: fm, path: p.path(l.Code), kind: "book", slug: p.slug, title: b.themes[l.Code].Text(p.title)}
		s.twin = func(l *site.Language) string { return b.printHref(s, p, l) }
		list = append(list, leaf{spot: s, kind: "paper", view: func() any {
			v := theme.Paper{Frame: b.frame(s)}
			v.Summary = b.themes[l.Code].Text(p.lede)
			p.fill(l, &v)
			return v
		}})
	}
	return list
}

func (b *builder) printHref(s spot, p printed, l *site.Language) string {
	return b.href(s, p.path(l.Code), l.Code+"."+p.slug)
}

// paperLinks lead to the pages for paper.
func (b *builder) paperLinks(s spot) []theme.Link {
	var list []theme.Link
	for _, p := range b.prints() {
		own := b.themes[s.lang.Code]
		list = append(list, theme.Link{Title: own.Text(p.title), Summary: own.Text(p.lede), Href: b.printHref(s, p, s.lang), Slug: p.slug})
	}
	return list
}

// line is a text of a page's model as it stands on paper.
func line(p *site.Page, text string, lead int) template.HTML {
	finder := amount.New(p.Lang, p.Language.Mark, p.Header.Least...)
	return template.HTML(markdown.Line(strings.ReplaceAll(text, "\n", " "), lead, finder))
}

// firstCaution is the caution that a page opens with; nil without any.
func (b *builder) firstCaution(p *site.Page) *theme.Signal {
	if len(p.Cautions) == 0 {
		return nil
	}
	c := p.Cautions[0]
	return &theme.Signal{Level: c.Level, Word: b.themes[p.Lang].Text("ui.signal." + c.Level), Text: line(p, c.Text, 0)}
}

// revisedOf is the date of a page, or of the manual where it bears none.
func (b *builder) revisedOf(p *site.Page) string {
	if p.Header.Revised != "" {
		return p.Header.Revised
	}
	return b.site.Manual.Revised
}

// langOf marks a page that stands in for one in the reader's language.
func langOf(e site.Entry) string {
	if e.Fallback {
		return e.Page.Lang
	}
	return ""
}

// checkPaper warns of pages that will be awkward on paper.
func (b *builder) checkPaper(faults *fault.List) {
	if len(b.site.Languages) == 0 || len(b.themes) < len(b.site.Languages) {
		return // said already
	}
	for _, p := range b.site.Pages {
		if isCardPage(p) {
			b.checkCards(p, faults)
		}
	}
	b.checkPosters(faults)
}

// warn reports a warning at a line of the content.
func (b *builder) warn(faults *fault.List, file string, at int, code, text, hint string) {
	f := fault.Fault{Severity: fault.Warning, File: file, Line: at, Code: code, Text: text, Hint: hint}
	for _, s := range b.sources {
		if s.Path == path.Clean(file) {
			f.Source = fault.Line(s.Data, at)
		}
	}
	faults.Add(f)
}

func isCardPage(p *site.Page) bool {
	return p.Header.Kind == page.Procedure && len(p.Checks) > 0
}
