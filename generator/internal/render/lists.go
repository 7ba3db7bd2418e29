package render

import (
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// listAll returns the page of all pages of a language.
func listAll(m *Manual, l *site.Language) []*Job {
	return []*Job{{slug: "all", title: m.Themes[l.Code].Text("ui.all")}}
}

// allAt returns the address of the page of all pages of a language.
func allAt(_ *Job, l *site.Language) address {
	return address{site.AllPath(l.Code), l.Code + ".all"}
}

// allView returns the view of all pages of a language from A to Z; the error is
// nil.
func allView(j *Job) (any, error) {
	v := theme.All{Frame: frame(j), Calculators: calculatorLinks(j), Paper: paperLinks(j)}
	for _, e := range j.lang.All {
		letter := site.Initial(e.Page.Header.Title)
		if n := len(v.Groups); n == 0 || v.Groups[n-1].Letter != letter {
			v.Groups = append(v.Groups, theme.Group{Letter: letter})
		}
		g := &v.Groups[len(v.Groups)-1]
		g.Pages = append(g.Pages, link(j, e))
	}
	return v, nil
}

// listSettings returns the page of the settings of a language.
func listSettings(m *Manual, l *site.Language) []*Job {
	return []*Job{{slug: "settings", title: m.Themes[l.Code].Text("ui.settings")}}
}

// settingsAt returns the address of the page of the settings of a language.
func settingsAt(_ *Job, l *site.Language) address {
	return address{site.SettingsPath(l.Code), l.Code + ".settings"}
}

// settingsView returns the view of the page of the settings; the error is nil.
func settingsView(j *Job) (any, error) { return theme.Settings{Frame: frame(j)}, nil }

// missingPath is the path of the page for missing addresses. A server can send it for any
// address below the site's root.
const missingPath = "404.html"

// listMissing returns the page for missing addresses, in the first language only.
// The one-file edition has none.
func listMissing(m *Manual, l *site.Language) []*Job {
	if l != m.Site.Languages[0] {
		return nil
	}
	return []*Job{{title: m.Themes[l.Code].Text("ui.missing.title"), folderOnly: true}}
}

// missingAt returns the address of the page for missing addresses; zero in another
// language than its own.
func missingAt(j *Job, l *site.Language) address {
	if l != j.lang {
		return address{}
	}
	return address{path: missingPath}
}

// missingView returns the view of the page for missing addresses, which says the same in
// every other language too: nobody knows which one the reader of a wrong address reads.
func missingView(j *Job) (any, error) {
	v := theme.Missing{Frame: frame(j)}
	for _, l := range j.Site.Languages {
		if l == j.lang {
			continue
		}
		t := j.Themes[l.Code]
		v.Others = append(v.Others, theme.MissingIn{Lang: l.Code, Title: t.Text("ui.missing.title"),
			Text: t.Text("ui.missing.text"), Name: l.Title, Home: j.rel(l.Code + "/index.html"),
			AllName: t.Text("ui.all"), All: j.rel(site.AllPath(l.Code))})
	}
	return v, nil
}
