package render

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

// The pages for printing: pocket cards and posters. The budget of the first view does not
// apply to them, because they are not read on a phone.

// listCards returns the page of pocket cards of a language; nil if the manual has
// no cards.
func listCards(m *Manual, l *site.Language) []*Job {
	if !hasCards(m) {
		return nil
	}
	return []*Job{{slug: "cards", title: m.Themes[l.Code].Text("ui.cards")}}
}

// hasCards reports whether the manual has pages with cards.
func hasCards(m *Manual) bool { return len(cardPages(m.Site.Languages[0])) > 0 }

// cardsAt returns the address of the page of pocket cards of a language.
func cardsAt(_ *Job, l *site.Language) address {
	return address{site.CardsPath(l.Code), l.Code + ".cards"}
}

// cardsView returns the view of the page of pocket cards; the error is nil.
func cardsView(j *Job) (any, error) {
	v := theme.Paper{Frame: frame(j), Titles: links(j, cardPages(j.lang)), Sheets: sheets(j.Manual, j.lang)}
	v.Summary = j.theme().Text("ui.cards.lede")
	return v, nil
}

// listPosters returns the page of posters of a language; nil if the manual has no
// posters.
func listPosters(m *Manual, l *site.Language) []*Job {
	if len(m.Site.Manual.Posters) == 0 {
		return nil
	}
	return []*Job{{slug: "posters", title: m.Themes[l.Code].Text("ui.posters")}}
}

// postersAt returns the address of the page of posters of a language.
func postersAt(_ *Job, l *site.Language) address {
	return address{site.PostersPath(l.Code), l.Code + ".posters"}
}

// postersView returns the view of the page of posters. It returns an error if a
// poster's code cannot be drawn.
func postersView(j *Job) (any, error) {
	posters, err := posters(j.Manual, j.lang)
	if err != nil {
		return nil, err
	}
	v := theme.Paper{Frame: frame(j), Titles: links(j, posterPages(j.Manual, j.lang)), Posters: posters}
	v.Summary = j.theme().Text("ui.posters.lede")
	return v, nil
}

// paperLinks returns links to the pages for printing that the manual has.
func paperLinks(j *Job) []theme.Link {
	var list []theme.Link
	add := func(key string, at address, slug string) {
		title, summary := j.theme().Text(key), j.theme().Text(key+".lede")
		list = append(list, theme.Link{Title: title, Summary: summary, Href: j.href(at), Slug: slug})
	}
	if hasCards(j.Manual) {
		add("ui.cards", cardsAt(j, j.lang), "cards")
	}
	if len(j.Site.Manual.Posters) > 0 {
		add("ui.posters", postersAt(j, j.lang), "posters")
	}
	return list
}

// line returns a text of a page as HTML for paper, its first lead bytes in bold,
// on one line.
func line(p *site.Page, text string, lead int) template.HTML {
	finder := amount.New(p.Lang, p.Language.Mark, p.Header.Least...)
	return template.HTML(markdown.Line(strings.ReplaceAll(text, "\n", " "), lead, finder))
}

// firstCaution returns the first caution of a page; nil if it has none.
func firstCaution(m *Manual, p *site.Page) *theme.Signal {
	if len(p.Cautions) == 0 {
		return nil
	}
	c := p.Cautions[0]
	return &theme.Signal{Level: c.Level, Word: m.Themes[p.Lang].Text("ui.signal." + c.Level), Text: line(p, c.Text, 0)}
}

// revisedOf returns the date of revision of a page, or of the manual if the page
// has none.
func revisedOf(m *Manual, p *site.Page) string {
	if p.Header.Revised != "" {
		return p.Header.Revised
	}
	return m.Site.Manual.Revised
}

// langOf returns the language of a page that is listed in place of a missing
// translation; "" for others.
func langOf(e site.Entry) string {
	if e.Fallback {
		return e.Page.Lang
	}
	return ""
}

// CheckPaper adds warnings to faults for pages with too many checks or too much
// text for a card, and for addresses that are too long for the code on a poster.
// It does nothing if themes or languages are missing.
func CheckPaper(m *Manual, faults *fault.List) {
	if len(m.Site.Languages) == 0 || len(m.Themes) < len(m.Site.Languages) {
		return // reported by package build
	}
	for _, p := range m.Site.Pages {
		if isCardPage(p) {
			checkCards(m, p, faults)
		}
	}
	checkPosters(m, faults)
}

// warn adds a warning at a line of a file of the content to faults, with its
// source line.
func warn(m *Manual, faults *fault.List, file string, at int, code, text, hint string) {
	f := fault.Fault{Severity: fault.Warning, File: file, Line: at, Code: code, Text: text, Hint: hint}
	for _, s := range m.Sources {
		if s.Path == path.Clean(file) {
			f.Source = fault.Line(s.Data, at)
		}
	}
	faults.Add(f)
}

// isCardPage reports whether a page has cards.
func isCardPage(p *site.Page) bool {
	return p.Header.Kind == page.Procedure && len(p.Checks) > 0
}
