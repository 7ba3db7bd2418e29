// Package entries lists what the search of a manual finds.
package entries

import (
	"math"
	"strings"

	"coursebook/generator/internal/form"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/search"
)

// calculatorKind is the kind of calculators among the entries.
const calculatorKind = "calculator"

// Kinds are the kinds of entries that a search can ask for.
var Kinds = []string{"urgent", calculatorKind, string(page.Procedure), string(page.Reference), string(page.Home),
	string(page.Glossary), string(page.Cautions), string(page.Course), string(page.Lesson)}

// urgentSlug is the page for the worst that can happen; the pages of its stage are
// urgent too.
const urgentSlug = "blow-out"

// Of returns what the search finds in the language l: the sections of its pages,
// the terms of its glossary, and the calculators of forms, which are in that
// language. asked holds the words by which a calculator is asked for, by its ID.
func Of(s *site.Site, l *site.Language, forms []*form.Form, asked map[string][]string) []search.Entry {
	var list []search.Entry
	stage := ""
	if e, ok := s.In(l, urgentSlug); ok {
		stage = e.Page.Header.Stage
	}
	for _, p := range s.Pages {
		if p.Language == l {
			urgent := p.Slug == urgentSlug || stage != "" && p.Header.Stage == stage
			list = append(list, ofPage(p, urgent)...)
		}
	}
	for _, f := range forms {
		list = append(list, search.Entry{URL: site.CalculatorPath(l.Code, f.ID), Title: f.Title,
			Lead: f.Purpose, Text: textOf(f), Words: asked[f.ID], Kind: calculatorKind})
	}
	return list
}

// ofPage returns an entry for each section of a page, or for each term of a
// glossary page. The summary is the page's lead.
func ofPage(p *site.Page, urgent bool) []search.Entry {
	var list []search.Entry
	if p.Header.Kind == page.Glossary {
		for _, t := range p.Terms {
			list = append(list, search.Entry{URL: p.Path + "#" + t.ID, Title: p.Header.Title, Section: t.Name,
				Text: t.Text, Words: t.Also, Kind: "glossary"})
		}
		return list
	}
	for i, s := range p.Sections {
		e := search.Entry{URL: p.Path, Title: p.Header.Title, Section: s.Title, Text: s.Text,
			Steps: stepsOf(p, i), Words: p.Header.Words, Kind: string(p.Header.Kind), Urgent: urgent}
		if s.ID != "" {
			e.URL += "#" + s.ID
		}
		if i == 0 {
			e.Lead = p.Header.Summary
		}
		list = append(list, e)
	}
	return list
}

// stepsOf returns the leads of the steps of a page's section.
func stepsOf(p *site.Page, section int) string {
	from, to := p.Sections[section].Line, math.MaxInt
	if section+1 < len(p.Sections) {
		to = p.Sections[section+1].Line
	}
	var leads []string
	for _, step := range p.Steps {
		if step.Line >= from && step.Line < to {
			leads = append(leads, step.Text[:step.Lead])
		}
	}
	return strings.Join(leads, " ")
}

// textOf returns the text by which a calculator is found beside its purpose: the
// labels of its inputs, columns and outputs.
func textOf(f *form.Form) string {
	var parts []string
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
