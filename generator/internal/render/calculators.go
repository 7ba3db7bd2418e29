package render

import (
	"encoding/json"
	"html/template"
	"slices"
	"strings"
	"sync"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/generator/internal/listing"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// listCalculators lists the pages of the calculators of a language.
func listCalculators(m *Manual, l *site.Language) []*Job {
	var list []*Job
	for _, f := range m.Forms.In(l.Code) {
		list = append(list, &Job{slug: f.ID, title: f.Title, calculator: f})
	}
	return list
}

// listListings lists the second pages of the calculators of a language.
func listListings(m *Manual, l *site.Language) []*Job {
	list := listCalculators(m, l)
	for _, j := range list {
		j.title = strings.ReplaceAll(m.Themes[l.Code].Text("ui.listing.title"), "{title}", j.title)
	}
	return list
}

// calculatorAt returns the address of a calculator's page in a language.
func calculatorAt(j *Job, l *site.Language) address { return calculatorAddress(l.Code, j.slug) }

// calculatorAddress returns the address of the page of a calculator by its ID.
func calculatorAddress(lang, id string) address {
	return address{site.CalculatorPath(lang, id), site.CalculatorAnchor(lang, id)}
}

// listingAt returns the address of a calculator's second page in a language.
func listingAt(j *Job, l *site.Language) address {
	return address{site.ListingPath(l.Code, j.slug), site.CalculatorAnchor(l.Code, j.slug) + "-source"}
}

// calculatorHref returns the link from the job's page to a calculator by its ID.
func calculatorHref(j *Job, id string) string { return j.href(calculatorAddress(j.lang.Code, id)) }

// closed returns the closed card of a calculator that a page places. The form of
// the place must exist. It returns an error if the inputs cannot be JSON.
func closed(j *Job, place page.Place) (*theme.Closed, error) {
	f := j.Forms.at(j.lang.Code, place)
	at := calculatorAddress(j.lang.Code, f.ID)
	c := &theme.Closed{ID: f.ID, Title: f.Title, Purpose: f.Purpose,
		Href: j.href(at), Address: j.Site.Manual.Address + at.path}
	if out, ok := f.Answer(); ok {
		c.Answer = &out
	}
	var ids []string
	for _, in := range place.Set {
		id, _, _ := strings.Cut(in.Path, ".")
		ids = append(ids, id)
	}
	if len(ids) == 0 {
		return c, nil
	}
	set, err := entryPairs(f.Entries(ids))
	c.Set = set
	return c, err
}

// entryPairs returns inputs as a JSON list of pairs, path and text, for the
// script. It returns an error if they cannot be JSON.
func entryPairs(entries []calc.Entry) (string, error) {
	pairs := make([][2]string, len(entries))
	for i, e := range entries {
		pairs[i] = [2]string{e.Path, e.Text}
	}
	text, err := json.Marshal(pairs)
	return string(text), err
}

// calculatorView returns the view of a calculator's page; the error is nil.
func calculatorView(j *Job) (any, error) {
	v := theme.Calculator{Frame: frame(j), Form: j.calculator,
		Listing: j.href(listingAt(j, j.lang)), UsedIn: usedIn(j, j.slug)}
	v.Summary = j.calculator.Purpose
	return v, nil
}

// usedInPages is the maximum number of pages listed on a calculator's page.
const usedInPages = 12

// usedIn returns links to the first usedInPages pages of the job's language that
// place a calculator or link to it.
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

// listings caches the highlighted functions, which are the same in every language and
// build.
var listings = sync.OnceValue(func() *listingCache {
	return &listingCache{book: listing.NewBook(calculators.Sources), cached: map[string]listing.Listing{}}
})

type listingCache struct {
	mu     sync.Mutex
	book   *listing.Book
	cached map[string]listing.Listing
}

// find returns the listing of a function, package.Name. A function that does not
// exist is an error, which is not cached.
func (s *listingCache) find(name string) (listing.Listing, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if l, ok := s.cached[name]; ok {
		return l, nil
	}
	l, err := s.book.Find(name)
	if err == nil {
		s.cached[name] = l
	}
	return l, err
}

// listingView returns the view of a calculator's second page: formulas, printed
// tables, and the Go functions that compute the formulas. It returns an error if a
// function does not exist.
func listingView(j *Job) (any, error) {
	back := theme.Link{Title: j.calculator.Title, Href: calculatorHref(j, j.slug)}
	v := theme.Listing{Frame: frame(j), Form: j.calculator, Back: back}
	for _, formula := range j.calculator.Formulas {
		item, err := listings().find(formula.Go)
		if err != nil {
			return nil, err
		}
		v.Items = append(v.Items, theme.ListingItem{Title: formula.Title, File: item.File, Line: item.Line,
			Code: template.HTML(item.HTML)})
	}
	return v, nil
}
