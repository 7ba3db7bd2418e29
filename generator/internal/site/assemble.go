package site

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"
)

// assembler holds the state of Assemble.
type assembler struct {
	site     *Site
	faults   *fault.List
	files    map[string]source.File
	pictures map[string]bool // by name inside pictures: whether a page shows it
	outbound map[string]bool
	guesses  int      // number of calls of guess
	cached   string   // the file whose lines are cached
	lines    []string // of the cached file
}

const pictureFolder = "pictures/"

// readFiles stores the files by path and the pictures by name, each as not used
// yet.
func (a *assembler) readFiles(files []source.File) {
	for _, f := range files {
		a.files[f.Path] = f
		if f.Kind == source.Picture {
			a.pictures[strings.TrimPrefix(f.Path, pictureFolder)] = false
		}
	}
}

// at adds a fault of severity s at line and col of a file (0 if not known), with
// its source line. format and args give its text.
func (a *assembler) at(s fault.Severity, file string, line, col int, code, hint, format string, args ...any) {
	a.faults.Add(fault.Fault{Severity: s, File: file, Line: line, Col: col, Code: code, Hint: hint,
		Text: fmt.Sprintf(format, args...), Source: a.sourceLine(file, line)})
}

// sourceLine returns a line of a file, from 1; "" for one that does not exist. It
// caches the lines of the last file, because most faults are in the order of the
// files.
func (a *assembler) sourceLine(file string, line int) string {
	if a.cached != file {
		a.cached, a.lines = file, strings.Split(string(a.files[file].Data), "\n")
	}
	if line < 1 || line > len(a.lines) {
		return ""
	}
	return a.lines[line-1]
}

// atKey adds a fault at the key name of the page's header, or at the first line if
// the header lacks the key.
func (a *assembler) atKey(s fault.Severity, p *Page, name, code, hint, format string, args ...any) {
	line := p.Header.Lines[name]
	col := 1
	if line == 0 {
		line, col = 1, 0
	}
	a.at(s, p.File, line, col, code, hint, format, args...)
}

// mostGuesses bounds the search for near names, which compares a misspelling with
// every name: beyond so many misspellings it is not spelling that is wrong.
const mostGuesses = 50

// guess returns a hint with the known name nearest to word, or otherwise if none
// is near or mostGuesses guesses were made before. It calls known only when
// needed.
func (a *assembler) guess(word string, known func() []string, otherwise string) string {
	if a.guesses < mostGuesses {
		a.guesses++
		if near, ok := fault.Nearest(word, known()); ok {
			return "did you mean " + near + "?"
		}
	}
	return otherwise
}

// languages adds the languages of the manual with their stages and roles. A text
// that a language lacks is that of the default language.
func (a *assembler) languages() {
	m := a.site.Manual
	for _, l := range m.Languages {
		in := func(texts map[string]string) string { return cmp.Or(texts[l.Code], texts[m.Languages[0].Code]) }
		lang := &Language{Code: l.Code, Name: l.Name, Title: in(m.Title), Subtitle: in(m.Subtitle)}
		if l.Decimal == "comma" {
			lang.Mark = quantity.Comma
		}
		for _, s := range m.Stages {
			lang.Stages = append(lang.Stages, &Stage{ID: s.ID, Title: in(s.Title), Hint: in(s.Hint)})
		}
		for _, r := range m.Roles {
			lang.Roles = append(lang.Roles, Role{ID: r.ID, Title: in(r.Title)})
		}
		a.site.Languages = append(a.site.Languages, lang)
	}
}

// language returns the language with a code, or nil.
func (a *assembler) language(code string) *Language {
	for _, l := range a.site.Languages {
		if l.Code == code {
			return l
		}
	}
	return nil
}

// place adds every page to its language and sets its path. It adds one error for
// each folder that is none of the manual's languages, and leaves its pages out.
func (a *assembler) place(pages []*page.Page) {
	reported := map[string]bool{} // languages
	for i, p := range pages {
		lang := a.language(p.Lang)
		if lang == nil {
			if !reported[p.Lang] {
				reported[p.Lang] = true
				a.at(fault.Error, p.File, 0, 0, "language-unknown",
					"add the language to manual.yaml, or remove the folder",
					"folder %q is none of the manual's languages", p.Lang)
			}
			continue
		}
		q := &Page{Page: p, Index: i, Language: lang}
		a.site.pages[key{p.Lang, p.Slug}] = q
		a.site.Pages = append(a.site.Pages, q)
		a.setSpecial(lang, q)
		a.setRulesPage(q)
	}
	for i, lang := range a.site.Languages {
		a.replacement(lang, i == 0)
	}
	for _, p := range a.site.Pages {
		p.Path = a.site.path(p)
	}
}

// setSpecial sets the home page, glossary and cautions of a language, if p is one
// of them. A second page of one of these kinds is an error and changes nothing; so
// is the name index for another page.
func (a *assembler) setSpecial(lang *Language, p *Page) {
	var slot *Entry
	switch p.Header.Kind {
	case page.Home:
		slot = &lang.Home
	case page.Glossary:
		slot = &lang.Glossary
	case page.Cautions:
		slot = &lang.Cautions
	default:
		if p.Slug == "index" {
			a.atKey(fault.Error, p, "kind", "slug-kept", "write kind: home, or rename the page",
				"name index is kept for the home page")
		}
		return
	}
	if slot.Page != nil {
		a.atKey(fault.Error, p, "kind", "kind-twice", "give one of the two another kind", "%s is a %s page too",
			slot.Page.File, p.Header.Kind)
		return
	}
	slot.Page = p
}

// replacement gives a language the default's pages that it lacks. Of a glossary it
// gives the page only: its terms are words of another language. A default language
// without a home page is an error.
func (a *assembler) replacement(lang *Language, isDefault bool) {
	if lang.Glossary.Page != nil {
		lang.Terms = page.NewVocabulary(lang.Glossary.Page.Terms)
	}
	if isDefault {
		if lang.Home.Page == nil {
			a.at(fault.Error, "manual.yaml", 0, 0, "home-missing",
				"add a page with kind: home to the folder "+lang.Code, "no home page in %s", lang.Code)
		}
		return
	}
	first := a.site.Languages[0]
	for _, pair := range []struct{ entry, first *Entry }{{&lang.Home, &first.Home}, {&lang.Glossary, &first.Glossary},
		{&lang.Cautions, &first.Cautions}} {
		if pair.entry.Page == nil && pair.first.Page != nil {
			*pair.entry = Entry{Page: pair.first.Page, Fallback: true}
		}
	}
}

// order sorts the pages of every language by stage and assigns them to the stages.
func (a *assembler) order() {
	rank := map[string]int{}
	for i, s := range a.site.Manual.Stages {
		rank[s.ID] = i
	}
	for i, lang := range a.site.Languages {
		entries := a.entries(lang, i == 0)
		slices.SortFunc(entries, func(x, y Entry) int { return compareInDay(rank, x.Page, y.Page) })
		a.fillStages(lang, rank, entries)
		for _, e := range entries {
			e.Page.sortKey = sortKey(e.Page.Header.Title)
		}
		lang.All = slices.Clone(entries)
		slices.SortFunc(lang.All, compareTitles)
		slices.SortFunc(lang.Loose, compareTitles)
		a.titles(lang)
	}
	byCode := map[string]int{}
	for i, l := range a.site.Languages {
		byCode[l.Code] = i
	}
	slices.SortFunc(a.site.Pages, func(x, y *Page) int {
		return cmp.Or(cmp.Compare(byCode[x.Lang], byCode[y.Lang]), compareInDay(rank, x, y))
	})
}

// titles adds a warning for each page of a language with the title, regardless of
// case, of another.
func (a *assembler) titles(lang *Language) {
	for i := 1; i < len(lang.All); i++ {
		p, before := lang.All[i].Page, lang.All[i-1].Page
		if p.Language == lang && before.Language == lang && p.Header.Title != "" &&
			strings.EqualFold(p.Header.Title, before.Header.Title) {
			a.atKey(fault.Warning, p, "title", "title-twice", "say in the title what is different",
				"%s has the same title", before.File)
		}
	}
}

// entries returns the pages of a language but the home page, with pages of the
// default language where a translation is missing; isDefault means that lang is
// the default.
func (a *assembler) entries(lang *Language, isDefault bool) (all []Entry) {
	for _, p := range a.site.Pages {
		switch {
		case p.Header.Kind == page.Home:
		case p.Language == lang:
			all = append(all, Entry{Page: p})
		case !isDefault && p.Language == a.site.Languages[0] && a.site.pages[key{lang.Code, p.Slug}] == nil:
			all = append(all, Entry{Page: p, Fallback: true})
		}
	}
	return all
}

// fillStages adds the sorted entries to their stages by rank, those without a
// known stage to the loose pages, and links each page with the previous and the
// next.
func (a *assembler) fillStages(lang *Language, rank map[string]int, entries []Entry) {
	var last Entry
	for _, e := range entries {
		at, ok := rank[e.Page.Header.Stage]
		if !ok {
			lang.Loose = append(lang.Loose, e)
			continue
		}
		stage := lang.Stages[at]
		stage.Pages = append(stage.Pages, e)
		if !e.Fallback {
			e.Page.Stage = stage
			e.Page.Previous = last
		}
		if last.Page != nil && !last.Fallback {
			last.Page.Next = e
		}
		last = e
	}
}

// compareInDay compares pages, as a function for sorting, by the rank of their
// stage, then by the header's order, then by title and slug. Pages without a stage
// are last.
func compareInDay(rank map[string]int, x, y *Page) int {
	return cmp.Or(cmp.Compare(rankOf(rank, x), rankOf(rank, y)), cmp.Compare(x.Header.Order, y.Header.Order),
		strings.Compare(x.Header.Title, y.Header.Title), strings.Compare(x.Slug, y.Slug))
}

// rankOf returns the rank of the page's stage, or one above all ranks if it has
// none that is known.
func rankOf(rank map[string]int, p *Page) int {
	if at, ok := rank[p.Header.Stage]; ok {
		return at
	}
	return len(rank)
}

// compareTitles compares entries by their folded title, then by slug.
func compareTitles(x, y Entry) int {
	return cmp.Or(strings.Compare(x.Page.sortKey, y.Page.sortKey), strings.Compare(x.Page.Slug, y.Page.Slug))
}

// accents folds the letters of Spanish and its neighbours for sorting.
var accents = strings.NewReplacer("á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u", "ü", "u", "ñ", "n~",
	"à", "a", "â", "a", "ç", "c", "è", "e", "ê", "e", "ë", "e", "ö", "o", "ä", "a", "¿", "", "¡", "")

// sortKey returns a title in lower case without accents, for sorting.
func sortKey(title string) string { return accents.Replace(strings.ToLower(title)) }

// Initial returns the letter or digit, in upper case and as titles are sorted, under which a
// list of all pages has a title; the first character of a title without any. Ñ is a letter of
// its own, a vowel with an accent is not.
func Initial(title string) string {
	key := sortKey(title)
	for i, r := range key {
		switch {
		case strings.HasPrefix(key[i:], "n~"):
			return "Ñ"
		case unicode.IsLetter(r), unicode.IsDigit(r):
			return strings.ToUpper(string(r))
		}
	}
	r, _ := utf8.DecodeRuneInString(title)
	return string(r)
}

// sortedKeys returns the keys of a set, sorted.
func sortedKeys(set map[string]bool) []string {
	all := make([]string, 0, len(set))
	for k := range set {
		all = append(all, k)
	}
	slices.Sort(all)
	return all
}
