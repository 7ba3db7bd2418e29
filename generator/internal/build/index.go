package build

import (
	"strings"

	"coursebook/generator/internal/form"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/search"
	"coursebook/generator/search/stem"
)

// smallText is the size below which an index is not held to its share of the
// text: its fixed parts weigh more than the few words of a new manual.
const smallText = 25_000

// makeIndexes makes the search index of every language.
func (b *builder) makeIndexes() {
	for _, l := range b.Site.Languages {
		entries := b.entriesOf(l)
		stemmer, ok := stem.For(l.Code)
		if !ok {
			stemmer = func(word string) string { return word }
		}
		data := []byte(search.Build(l.Code, entries, b.synonyms[l.Code], stemmer))
		b.Assets.IndexData[l.Code] = data
		b.release.Index[l.Code] = b.asset("index-"+l.Code, "txt", data)
		if covered := search.Covered(entries); covered >= smallText {
			b.weights.Indexes = append(b.weights.Indexes,
				output.Index{File: output.File{Path: b.release.Index[l.Code], Data: data}, Text: covered})
		}
	}
}

func (b *builder) entriesOf(l *site.Language) []search.Entry {
	var list []search.Entry
	for _, p := range b.Site.Pages {
		if p.Language == l {
			list = append(list, entriesOfPage(p)...)
		}
	}
	for _, f := range b.Forms.In(l.Code) {
		list = append(list, search.Entry{URL: site.CalculatorPath(l.Code, f.ID), Title: f.Title, Text: textOf(f), Kind: "calculator"})
	}
	return list
}

func entriesOfPage(p *site.Page) []search.Entry {
	var list []search.Entry
	if p.Header.Kind == page.Glossary {
		for _, t := range p.Terms {
			list = append(list, search.Entry{URL: p.Path + "#" + t.ID, Title: p.Header.Title, Section: t.Name, Text: t.Text, Words: t.Also, Kind: "glossary"})
		}
		return list
	}
	// Whoever looks something up on the wall wants the procedure, not the lesson
	// that teaches it.
	second := p.Header.Kind == page.Lesson
	for i, s := range p.Sections {
		e := search.Entry{URL: p.Path, Title: p.Header.Title, Section: s.Title, Text: s.Text, Words: p.Header.Words, Kind: string(p.Header.Kind), Second: second}
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

// textOf is what a calculator is found by.
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
