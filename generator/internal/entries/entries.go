// Package entries lists what the search of a manual finds.
package entries

import (
	"strings"

	"coursebook/generator/internal/form"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/search"
)

// Of returns what the search finds in the language l: the sections of its pages,
// the terms of its glossary, and the calculators of forms, which are in that
// language.
func Of(s *site.Site, l *site.Language, forms []*form.Form) []search.Entry {
	var list []search.Entry
	for _, p := range s.Pages {
		if p.Language == l {
			list = append(list, ofPage(p)...)
		}
	}
	for _, f := range forms {
		list = append(list, search.Entry{URL: site.CalculatorPath(l.Code, f.ID), Title: f.Title,
			Text: textOf(f), Kind: "calculator"})
	}
	return list
}

// ofPage returns an entry for each section of a page, or for each term of a
// glossary page. The summary is part of the first section's text. Sections of a
// lesson are secondary, so that a procedure comes before the lesson that teaches
// it.
func ofPage(p *site.Page) []search.Entry {
	var list []search.Entry
	if p.Header.Kind == page.Glossary {
		for _, t := range p.Terms {
			list = append(list, search.Entry{URL: p.Path + "#" + t.ID, Title: p.Header.Title, Section: t.Name,
				Text: t.Text, Words: t.Also, Kind: "glossary"})
		}
		return list
	}
	// A procedure comes before the lesson that teaches it.
	secondary := p.Header.Kind == page.Lesson
	for i, s := range p.Sections {
		e := search.Entry{URL: p.Path, Title: p.Header.Title, Section: s.Title, Text: s.Text,
			Words: p.Header.Words, Kind: string(p.Header.Kind), Secondary: secondary}
		if s.ID != "" {
			e.URL += "#" + s.ID
		}
		if i == 0 && p.Header.Summary != "" {
			e.Text = p.Header.Summary + " " + e.Text
		}
		list = append(list, e)
	}
	return list
}

// textOf returns the text by which a calculator is found: its purpose and the
// labels of its inputs, columns and outputs.
func textOf(f *form.Form) string {
	parts := []string{f.Purpose}
	for _, field := range f.Fields {
		parts = append(parts, field.Label)
		for _, col := range field.Cols {
			parts = append(parts, col.Label)
		}
	}
	for _, out := range f.Outputs {
		parts = append(parts, out.Label)
	}
	return strings.Join(parts, ". ")
}
