// Package site is the data model of the whole manual: its languages, the stages
// with their pages in order, and the targets of all links. It reads and writes no
// files. Inconsistencies are reported as faults at the source line.
package site

import (
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"
)

// Site is the whole manual.
type Site struct {
	Manual source.Manual
	// Languages are in the manual's order; the first is the default.
	Languages []*Language
	// Pages are all pages, by language and then in the order of the day; the
	// pages without a stage come last.
	Pages []*Page
	// Calculators are all calculators, in the order of the catalog.
	Calculators []*calc.Calculator
	// Outbound lists the https addresses that pages link to, sorted, each once.
	Outbound []string

	byID  map[string]*calc.Calculator
	pages map[key]*Page
}

// Page is one page of the site.
type Page struct {
	*page.Page
	// Index is the index of the page in the argument of Assemble.
	Index int
	// Path is the file of the output, such as en/footing.html.
	Path string
	// Language is the language of the page.
	Language *Language
	// Stage is the part of the day the page belongs to; nil for none.
	Stage *Stage
	// Previous and Next are the neighbours in the order of the stages. They are
	// zero at the ends and for pages without a stage.
	Previous, Next Entry
	// After are the pages that the header names as next.
	After []Entry
	// Twins are the same page in the other languages, in their order.
	Twins []*Page
	// Lessons are the lessons of a course, in order. Reads are the pages to read
	// before a lesson. Courses are the courses that contain a lesson.
	Lessons, Reads, Courses []Entry

	links   []linked
	ids     map[string]bool
	sortKey string // the title, folded for sorting
}

// Entry is a page in the lists of a language. It may be a page of the default
// language, where the translation is missing.
type Entry struct {
	Page *Page // nil: none
	// Fallback reports whether the page is not in the language of the list.
	Fallback bool
}

// Language is the manual in one language.
type Language struct {
	Code, Name string
	// Mark is the decimal mark of the language.
	Mark quantity.Mark
	// Title and Subtitle are those of the manual.
	Title, Subtitle string
	// Home is the home page; in a language without one, the default's.
	Home Entry
	// Glossary and Cautions are the pages of those kinds.
	Glossary, Cautions Entry
	// Stages are those of the manual, with their pages in order.
	Stages []*Stage
	// Groups are the calculators by what they are for. Those that the manual lists in no
	// group are in the last one, which has no title.
	Groups []Group
	// Loose are the pages without a stage, by title, except the home page.
	Loose []Entry
	// Courses are the courses, in the order of the roles.
	Courses []Entry
	// All are all pages but the home page, from A to Z.
	All []Entry
	// Rules is the page that lists the house rules; nil where there is none.
	Rules *Page
	// Terms finds the terms of the glossary; nil without a glossary.
	Terms *page.Vocabulary
	// Roles are those of the manual.
	Roles []Role
}

// Stage is a part of the day in one language.
type Stage struct {
	ID, Title, Hint string
	Pages           []Entry
}

// Group is the calculators that are for one thing, in one language.
type Group struct {
	Title       string
	Calculators []string // IDs
}

// Role is a kind of reader in one language.
type Role struct{ ID, Title string }

// key identifies a page.
type key struct{ lang, slug string }

// Assemble returns the site of the pages, never nil, and adds inconsistencies to
// faults. files are those of the content folder, for pictures and for the source
// lines of faults. Pages with faults are omitted or left without links, so that
// one call finds all faults. CheckProse checks the readability of the pages.
func Assemble(manual source.Manual, files []source.File, pages []*page.Page, calculators []*calc.Calculator,
	faults *fault.List) *Site {
	a := &assembler{
		site: &Site{
			Manual:      manual,
			Calculators: calculators,
			byID:        map[string]*calc.Calculator{},
			pages:       map[key]*Page{},
		},
		faults:   faults,
		files:    map[string]source.File{},
		pictures: map[string]bool{},
		outbound: map[string]bool{},
	}
	a.readFiles(files)
	for _, c := range calculators {
		a.site.byID[c.ID] = c
	}
	a.languages()
	a.groups()
	a.place(pages)
	a.order()
	for _, p := range a.site.Pages {
		a.header(p)
		a.twins(p)
		a.linksOf(p)
		a.picturesOf(p)
		a.placesOf(p)
		a.sourced(p)
	}
	a.training()
	a.unused()
	a.missing()
	a.site.Outbound = sortedKeys(a.outbound)
	return a.site
}

// Page returns the page with a language and slug; nil if there is none.
func (s *Site) Page(lang, slug string) *Page { return s.pages[key{lang, slug}] }

// Calculator returns the calculator with an ID; nil if there is none.
func (s *Site) Calculator(id string) *calc.Calculator { return s.byID[id] }

// In returns a page in a language, or in the default language if the translation
// is missing. It returns false if neither exists.
func (s *Site) In(l *Language, slug string) (Entry, bool) {
	if p := s.pages[key{l.Code, slug}]; p != nil {
		return Entry{Page: p}, true
	}
	if len(s.Languages) > 0 {
		if p := s.pages[key{s.Languages[0].Code, slug}]; p != nil {
			return Entry{Page: p, Fallback: true}, true
		}
	}
	return Entry{}, false
}
