package build

import (
	"html/template"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"coursebook/calculators"
	"coursebook/generator/internal/form"
	"coursebook/generator/internal/listing"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

func partKey(i int) string { return "p" + strconv.Itoa(i) }

// calculatorLeaf is a calculator's own page.
func (b *builder) calculatorLeaf(fm site.Form, l *site.Language, f *form.Form) leaf {
	s := spot{lang: l, form: fm, path: site.CalculatorPath(l.Code, f.ID), kind: "calculator", slug: f.ID, title: f.Title}
	s.twin = func(l *site.Language) string {
		return b.href(s, site.CalculatorPath(l.Code, f.ID), site.CalculatorAnchor(l.Code, f.ID))
	}
	return leaf{spot: s, kind: "calculator", light: true, view: func() any {
		v := theme.Calculator{Frame: b.frame(s), Form: f, UsedIn: b.usedIn(s, f.ID)}
		v.Summary = f.Purpose
		v.Listing = b.href(s, site.ListingPath(l.Code, f.ID), listingAnchor(l.Code, f.ID))
		return v
	}}
}

// usedInPages bounds the pages listed under a calculator.
const usedInPages = 12

// usedIn links the first pages that place a calculator or link to it.
func (b *builder) usedIn(s spot, id string) []theme.Link {
	places := func(p page.Place) bool { return p.Calculator == id }
	target := "calc:" + id
	links := func(l page.Link) bool { return l.Target == target }
	var list []theme.Link
	for _, p := range b.site.Pages {
		if len(list) == usedInPages {
			break
		}
		if p.Language == s.lang && (slices.ContainsFunc(p.Places, places) || slices.ContainsFunc(p.Links, links)) {
			list = append(list, b.link(s, site.Entry{Page: p}))
		}
	}
	return list
}

// listings sets each function once for all languages and builds of a run.
var listings = sync.OnceValue(func() *listingShelf {
	return &listingShelf{book: listing.NewBook(calculators.Sources), done: map[string]listing.Listing{}}
})

type listingShelf struct {
	mu   sync.Mutex
	book *listing.Book
	done map[string]listing.Listing
}

func (s *listingShelf) find(name string) (listing.Listing, error) {
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

// listingLeaf shows the Go functions behind a calculator's formulas.
func (b *builder) listingLeaf(fm site.Form, l *site.Language, f *form.Form) leaf {
	s := spot{lang: l, form: fm, path: site.ListingPath(l.Code, f.ID), kind: "listing", slug: f.ID, title: f.Title}
	s.twin = func(l *site.Language) string {
		return b.href(s, site.ListingPath(l.Code, f.ID), listingAnchor(l.Code, f.ID))
	}
	return leaf{spot: s, kind: "listing", view: func() any {
		v := theme.Listing{Frame: b.frame(s), Back: theme.Link{Title: f.Title, Href: b.calculatorHref(s, f.ID)}}
		for _, formula := range f.Formulas {
			item, err := listings().find(formula.Go)
			if err != nil {
				b.fail(err)
				continue
			}
			v.Items = append(v.Items, theme.ListingItem{Title: formula.Title, File: item.File, Line: item.Line, Code: template.HTML(item.HTML)})
		}
		return v
	}}
}

// allLeaf lists every page of a language from A to Z.
func (b *builder) allLeaf(fm site.Form, l *site.Language) leaf {
	s := spot{lang: l, form: fm, path: site.AllPath(l.Code), kind: "all", slug: "all"}
	s.twin = func(l *site.Language) string { return b.href(s, site.AllPath(l.Code), allAnchor(l)) }
	return leaf{spot: s, kind: "all", view: func() any {
		v := theme.All{Frame: b.frame(s), Calculators: b.calculatorLinks(s), Paper: b.paperLinks(s)}
		v.Title = b.themes[l.Code].Text("ui.all")
		for _, e := range l.All {
			letter := initial(e.Page.Header.Title)
			if n := len(v.Groups); n == 0 || v.Groups[n-1].Letter != letter {
				v.Groups = append(v.Groups, theme.Group{Letter: letter})
			}
			g := &v.Groups[len(v.Groups)-1]
			g.Pages = append(g.Pages, b.link(s, e))
		}
		return v
	}}
}

// initial is the letter under which a title is listed.
func initial(title string) string {
	for _, r := range title {
		if unicode.IsLetter(r) || unicode.IsDigit(r) {
			return strings.ToUpper(string(r))
		}
	}
	r, _ := utf8.DecodeRuneInString(title)
	return string(r)
}

// missingLeaf is what a server shows for an address that does not exist. It
// may be shown anywhere below the site, so it leads to the root by itself.
func (b *builder) missingLeaf() leaf {
	l := b.site.Languages[0]
	s := spot{lang: l, form: site.Folder, path: "404.html", kind: "missing"}
	return leaf{spot: s, kind: "missing", view: func() any {
		f := b.frame(s)
		f.Title = b.themes[l.Code].Text("ui.missing.title")
		return theme.Missing{Frame: f}
	}}
}
