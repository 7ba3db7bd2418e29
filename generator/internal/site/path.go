package site

import "strings"

// The output's layout. All paths are slash paths below the output's root.

// path returns the slash path of a page's file. The home page of the default
// language is index.html in the root.
func (s *Site) path(p *Page) string {
	switch {
	case p.Language.Home.Page != p:
		return p.Lang + "/" + p.Slug + ".html"
	case p.Language == s.Languages[0]:
		return "index.html"
	}
	return p.Lang + "/index.html"
}

// HomePath returns the path of the home page of a language, or of the list of its
// pages if it has none of its own.
func (s *Site) HomePath(l *Language) string {
	if l.Home.Page != nil && !l.Home.Fallback {
		return l.Home.Page.Path
	}
	return AllPath(l.Code)
}

// CalculatorPath returns the path of the page of a calculator.
func CalculatorPath(lang, id string) string { return lang + "/calc/" + id + ".html" }

// ListingPath returns the path of the page with the Go functions of a calculator.
func ListingPath(lang, id string) string { return lang + "/calc/" + id + "-source.html" }

// StagePath returns the path of the page of a stage.
func StagePath(lang, id string) string { return lang + "/stage/" + id + ".html" }

// CalculatorsPath returns the path of the list of the calculators.
func CalculatorsPath(lang string) string { return lang + "/calc/index.html" }

// AllPath returns the path of the list of all pages from A to Z.
func AllPath(lang string) string { return lang + "/all.html" }

// CardsPath returns the path of the printable page of pocket cards.
func CardsPath(lang string) string { return lang + "/cards.html" }

// PostersPath returns the path of the printable page of posters.
func PostersPath(lang string) string { return lang + "/posters.html" }

// SettingsPath returns the path of the page of the settings.
func SettingsPath(lang string) string { return lang + "/settings.html" }

// TrainingPath returns the path of the page of a language's courses.
func TrainingPath(lang string) string { return lang + "/training.html" }

// Rel returns the relative URL from one file of the output to another, both slash
// paths below its root. to may have a #fragment: from en/a.html to
// en/calc/b.html#x the URL is calc/b.html#x. Within one file it is the fragment
// alone.
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
