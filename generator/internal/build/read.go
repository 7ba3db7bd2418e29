package build

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/entries"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/offline"
	"coursebook/generator/internal/output"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/release"
	"coursebook/generator/internal/render"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"
	"coursebook/generator/internal/terms"
	"coursebook/generator/internal/theme"
	"coursebook/generator/internal/translations"
)

// builder is the state of a build.
type builder struct {
	o      Options
	faults *fault.List

	render.Manual
	thesaurus  map[string]*source.Thesaurus  // for the search, by language
	smallWords map[string][]source.SmallWord // for the search, by language
	terms      terms.List
	themeTexts translations.Keyed
	themeWords map[string]map[string]string // by language and key
	release    release.List

	mu      sync.Mutex // guards the three fields below
	paths   map[string]bool
	entries []output.Entry
	files   []output.File // nil with Options.OnFile

	icons     []offline.Icon // for home screens
	weights   output.Weights
	firstView output.FirstView
	listsView output.FirstView // of pages that load the style sheet of lists too
}

// parser parses a page.
type parser func(source.File, markdown.Language, *fault.List) *markdown.Document

// read reads and resolves the content and adds its faults to faults. Site is nil
// without a manual.yaml, which is a fault.
func read(o Options, parse parser, faults *fault.List) *builder {
	content := &fault.List{} // with paths relative to the content folder
	defer func() { faults.Add(fault.Under(o.Content, content.All())...) }()
	b := &builder{o: o, faults: content, paths: map[string]bool{},
		Manual: render.Manual{Rules: o.Rules, Words: map[string]calc.Translations{}, Themes: map[string]*theme.Theme{}}}
	b.Sources = source.Read(o.Content, content)
	manual, ok := b.manual()
	if !ok {
		b.faults = faults
		return b
	}
	b.release.Rules = site.CheckRules(manual, b.file("manual.yaml"), o.Rules, o.Calculators, content)
	b.Docs = b.parsePages(manual, parse)
	pages := make([]*page.Page, len(b.Docs))
	for i, d := range b.Docs {
		pages[i] = &d.Page
	}
	calculators := calc.WithRules(o.Calculators, b.release.Rules, o.Rules...)
	b.Site = site.Assemble(manual, b.Sources, pages, calculators, content)
	b.faults = faults
	b.loadWords(manual)
	return b
}

// manual parses manual.yaml, the word lists. Without a manual.yaml it adds a
// fault, unless there is an error already, and returns false.
func (b *builder) manual() (source.Manual, bool) {
	var manual source.Manual
	found := false
	for _, f := range b.Sources {
		if f.Kind == source.ManualFile {
			manual, found = source.ParseManual(f.Path, f.Data, b.faults), true
		}
	}
	if !found {
		if b.faults.Errors() == 0 {
			b.faults.Add(fault.Fault{File: "manual.yaml", Code: "no-manual",
				Text: "there is no manual.yaml in the content folder",
				Hint: "name the folder with -content, or begin one with coursebook start DIR"})
		}
		return manual, false
	}
	for _, f := range b.Sources {
		if f.Kind == source.Words && f.Path == manual.Thesaurus {
			b.thesaurus = source.ParseThesaurus(f.Path, f.Data, b.faults)
			b.checkAsked(f.Path)
		}
		if f.Kind == source.Words && f.Path == manual.SmallWords {
			b.smallWords = source.ParseSmallWords(f.Path, f.Data, b.faults)
		}
		if f.Kind == source.Words && f.Path == manual.Terms {
			b.terms = terms.Parse(f.Path, f.Data, b.faults)
		}
	}
	return manual, true
}

// checkAsked adds an error for each calculator and each kind of page that the
// thesaurus names and that does not exist.
func (b *builder) checkAsked(path string) {
	for _, t := range b.thesaurus {
		for _, a := range t.Asked {
			f := fault.Fault{File: path, Line: a.Line, Col: a.Col}
			switch {
			case a.Kind != "" && !slices.Contains(entries.Kinds, a.Kind):
				f.Code, f.Text = "unknown-kind", fmt.Sprintf("there is no kind of page %q", a.Kind)
				f.Hint = "use one of " + strings.Join(entries.Kinds, ", ")
			case a.Kind == "" && !slices.ContainsFunc(b.o.Calculators,
				func(c *calc.Calculator) bool { return c.ID == a.Calculator }):
				f.Code, f.Text = "unknown-calculator", fmt.Sprintf("there is no calculator %q", a.Calculator)
				f.Hint = "use the ID of a calculator"
			default:
				continue
			}
			b.faults.Add(f)
		}
	}
}

// parsePages parses all pages in parallel and returns them in the order of the
// files. Errors in pages are added to the faults.
func (b *builder) parsePages(manual source.Manual, parse parser) []*markdown.Document {
	languages := map[string]markdown.Language{}
	for _, l := range manual.Languages {
		languages[l.Code] = b.language(manual, l)
	}
	var files []source.File
	for _, f := range b.Sources {
		if f.Kind == source.Page {
			files = append(files, f)
		}
	}
	docs := make([]*markdown.Document, len(files))
	parallel(len(files), func(i int) { docs[i] = parse(files[i], languages[files[i].Language()], b.faults) })
	return docs
}

// language returns what pages need to know of their language: its decimal mark, and the
// house rules without a fault, in its writing.
func (b *builder) language(manual source.Manual, l source.Language) markdown.Language {
	lang := markdown.Language{Rules: map[string]markdown.Rule{}}
	if first := manual.Languages[0].Code; l.Code != first {
		lang.Taught = first
	}
	if l.Decimal == "comma" {
		lang.Mark = quantity.Comma
	}
	for id, amount := range b.release.Rules {
		r := markdown.Rule{Rule: rules.Find(b.o.Rules, id), Amount: amount, Words: manual.FindRule(id).Words[l.Code]}
		r.SI, _ = r.Parse(amount, quantity.Point) // CheckRules has read it
		r.Amount = markdown.WithMark(amount, lang.Mark)
		lang.Rules[id] = r
	}
	return lang
}

// file returns the file with a path; empty where there is none.
func (b *builder) file(path string) source.File {
	i := slices.IndexFunc(b.Sources, func(f source.File) bool { return f.Path == path })
	if i < 0 {
		return source.File{Path: path}
	}
	return b.Sources[i]
}

// loadWords reads the translations of the calculators and loads the theme in every
// language of the manual. It adds an error to the faults and stops if one of them
// cannot be read.
func (b *builder) loadWords(manual source.Manual) {
	byLang := map[string]map[string]string{}
	for _, l := range manual.Languages {
		words, _, err := CalculatorWords(l.Code, b.faults)
		if err != nil {
			b.fail(err)
			return
		}
		b.Words[l.Code] = words
		if b.themeTexts, byLang[l.Code], err = ThemeWords(b.o.Theme, l.Code, b.faults); err != nil {
			b.fail(err)
			return
		}
	}
	b.themeWords = byLang
	base, err := theme.Load(b.o.Theme, byLang, render.Templates())
	if err != nil {
		b.fail(err)
		return
	}
	for _, l := range manual.Languages {
		if b.Themes[l.Code], err = base.For(l.Code); err != nil {
			b.fail(err)
		}
	}
}

// warnUntranslated adds a warning for each file of translations, other than
// English, that lacks texts.
func (b *builder) warnUntranslated() {
	texts, err := CalculatorTexts()
	if err != nil {
		b.fail(err)
		return
	}
	for _, l := range b.Site.Languages {
		if l.Code == "en" {
			continue
		}
		b.warnMissing(l, WordsFile(l.Code, "*"), len(texts.Missing(b.Words[l.Code])))
		b.warnMissing(l, "theme/"+ThemeWordsFile(l.Code), len(b.themeTexts.Missing(b.themeWords[l.Code])))
	}
}

// warnMissing adds a warning that file lacks n texts of the language; none if n is
// 0.
func (b *builder) warnMissing(l *site.Language, file string, n int) {
	if n == 0 {
		return
	}
	b.faults.Add(fault.Fault{Severity: fault.Warning, File: file, Code: "words-missing",
		Text: fmt.Sprintf("%d texts have no %s translation", n, l.Name),
		Hint: "coursebook inspect -words " + l.Code + " prints their lines, ready to be filled in"})
}
