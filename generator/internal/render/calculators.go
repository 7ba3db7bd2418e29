package render

import (
	"html/template"
	"slices"
	"sync"

	"coursebook/calculators"
	"coursebook/generator/internal/listing"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// listCalculators gives each calculator of a language: for its page, and for
// the listing of its formulas.
func listCalculators(m *Manual, l *site.Language) []*Job {
	var list []*Job
	for _, f := range m.Forms.In(l.Code) {
		list = append(list, &Job{slug: f.ID, title: f.Title, calculator: f})
	}
	return list
}

func calculatorAt(j *Job, l *site.Language) address { return calculatorAddress(l.Code, j.slug) }

func calculatorAddress(lang, id string) address {
	return address{site.CalculatorPath(lang, id), site.CalculatorAnchor(lang, id)}
}

func listingAt(j *Job, l *site.Language) address {
	return address{site.ListingPath(l.Code, j.slug), site.CalculatorAnchor(l.Code, j.slug) + "-source"}
}

func calculatorHref(j *Job, id string) string { return j.href(calculatorAddress(j.lang.Code, id)) }

// calculatorView is a calculator's own page.
func calculatorView(j *Job) (any, error) {
	v := theme.Calculator{Frame: frame(j), Form: j.calculator, UsedIn: usedIn(j, j.slug)}
	v.Summary = j.calculator.Purpose
	v.Listing = j.href(listingAt(j, j.lang))
	return v, nil
}

// usedInPages bounds the pages listed under a calculator.
const usedInPages = 12

// usedIn links the first pages that place a calculator or link to it.
func usedIn(j *Job, id string) []theme.Link {
	places := func(p page.Place) bool { return p.Calculator == id }
	target := "calc:" + id
	links := func(l page.Link) bool { return l.Target == target }
	var list []theme.Link
	for _, p := range j.Site.Pages {
		if len(list) == usedInPages {
			break
		}
		if p.Language == j.lang && (slices.ContainsFunc(p.Places, places) || slices.ContainsFunc(p.Links, links)) {
			list = append(list, link(j, site.Entry{Page: p}))
		}
	}
	return list
}

// listings sets each function once for all languages and builds of a run.
var listings = sync.OnceValue(func() *listingCache {
	return &listingCache{book: listing.NewBook(calculators.Sources), done: map[string]listing.Listing{}}
})

type listingCache struct {
	mu   sync.Mutex
	book *listing.Book
	done map[string]listing.Listing
}

func (s *listingCache) find(name string) (listing.Listing, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if l, ok := s.done[name]; ok {
		return l, nil
	}
	l, err := s.book.Find(name)
	if err == nil {
		s.done[name] = l
	}
	return l, err
}

// listingView shows the Go functions behind a calculator's formulas.
func listingView(j *Job) (any, error) {
	v := theme.Listing{Frame: frame(j), Back: theme.Link{Title: j.title, Href: calculatorHref(j, j.slug)}}
	for _, formula := range j.calculator.Formulas {
		item, err := listings().find(formula.Go)
		if err != nil {
			return nil, err
		}
		v.Items = append(v.Items, theme.ListingItem{Title: formula.Title, File: item.File, Line: item.Line, Code: template.HTML(item.HTML)})
	}
	return v, nil
}
