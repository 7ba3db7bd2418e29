package site

import "strings"

// The output's layout. All paths are slash paths below the output's root.

// path is the file of a page. The default language's home page is the root's.
func (s *Site) path(p *Page) string {
	switch {
	case p.Language.Home.Page != p:
		return p.Lang + "/" + p.Slug + ".html"
	case p.Language == s.Languages[0]:
		return "index.html"
	}
	return p.Lang + "/index.html"
}

// HomePath is the home page of a language; where the language has none, the
// list of its pages serves.
func (s *Site) HomePath(l *Language) string {
	if l.Home.Page != nil && !l.Home.Fallback {
		return l.Home.Page.Path
	}
	return AllPath(l.Code)
}

// CalculatorPath is the page of a calculator.
func CalculatorPath(lang, id string) string { return lang + "/calc/" + id + ".html" }

// ListingPath is the page with a calculator's formulas as program text.
func ListingPath(lang, id string) string { return lang + "/calc/" + id + "-source.html" }

// AllPath is the list of all pages from A to Z.
func AllPath(lang string) string { return lang + "/all.html" }

// CardsPath is the page of pocket cards, to be printed.
func CardsPath(lang string) string { return lang + "/cards.html" }

// PostersPath is the page of posters, to be printed.
func PostersPath(lang string) string { return lang + "/posters.html" }

// TrainingPath is the page of a language's courses.
func TrainingPath(lang string) string { return lang + "/training.html" }

// Rel is the relative URL from one file of the output to another, which may
// carry a #fragment: from en/a.html to en/calc/b.html#x it is calc/b.html#x.
func Rel(from, to string) string {
	for {
		f, restFrom, okFrom := strings.Cut(from, "/")
		t, restTo, okTo := strings.Cut(to, "/")
		if !okFrom || !okTo || f != t {
			break
		}
		from, to = restFrom, restTo
	}
	if up := strings.Count(from, "/"); up > 0 {
		return strings.Repeat("../", up) + to
	}
	if file, id, ok := strings.Cut(to, "#"); ok && file == from {
		return "#" + id
	}
	return to
}
