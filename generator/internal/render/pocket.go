package render

import (
	"bytes"
	"encoding/base64"
	"html/template"
	"slices"
	"strings"

	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/release"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// withDataURLs returns a copy of the pictures with data: addresses.
func withDataURLs(pictures map[string]Picture) map[string]Picture {
	all := make(map[string]Picture, len(pictures))
	for name, p := range pictures {
		p.Src = "data:" + mediaType(p.Src) + ";base64," + base64.StdEncoding.EncodeToString(p.Data)
		all[name] = p
	}
	return all
}

// mediaType returns the media type of a picture by its extension; image/jpeg for
// an unknown one.
func mediaType(path string) string {
	switch path[strings.LastIndexByte(path, '.')+1:] {
	case "svg":
		return "image/svg+xml"
	case "png":
		return "image/png"
	case "webp":
		return "image/webp"
	}
	return "image/jpeg"
}

// Pocket returns the one-file edition: every page in every language, with style,
// script, module and indexes inside. Its policy allows exactly these blocks and no
// connection. It contains a release list without pages and paths. It returns an
// error if a page cannot be rendered. It does not change folder.
func Pocket(folder *Manual, list release.List, min *bundle.Minifier) ([]byte, error) {
	copied := *folder
	copied.Pictures = withDataURLs(folder.Pictures)
	m := &copied
	l := m.Site.Languages[0]
	outer := &Job{Manual: m, kind: &outerKind, form: site.OneFile, lang: l, title: l.Title}
	outer.at.path = "index.html"
	if l.Home.Page != nil {
		outer.slug = l.Home.Page.Slug
	}
	v := theme.Pocket{Frame: frame(outer), Data: pocketData(m, list),
		Style:  template.CSS(slices.Concat(m.Assets.StyleData, m.Assets.ListsData, m.Assets.DeferredData)),
		Script: template.JS(safeScript(m.Assets.ScriptData))}
	v.Assets.Icon = "data:image/svg+xml;base64," + base64.StdEncoding.EncodeToString(m.Assets.IconData)
	for _, j := range Jobs(m, site.OneFile) {
		article, err := j.article(min)
		if err != nil {
			return nil, err
		}
		v.Articles = append(v.Articles, article)
	}
	v.Policy = "default-src 'none'; script-src " + bundle.Hash([]byte(v.Script)) + " 'wasm-unsafe-eval'; " +
		"style-src " + bundle.Hash([]byte(v.Style)) + "; img-src data:; connect-src 'none'; base-uri 'none'; " +
		"form-action 'none'; require-trusted-types-for 'script'; trusted-types coursebook"
	return m.Themes[l.Code].Render("pocket", v)
}

// outerKind is the kind of the document around all articles. Its language switch links to
// the home page of each language.
var outerKind = kind{name: string(page.Home), at: func(j *Job, l *site.Language) address {
	if l.Home.Page != nil && !l.Home.Fallback {
		return address{anchor: l.Home.Page.Anchor()}
	}
	return allAt(j, l)
}}

// article returns the page as an article of the one-file edition. It returns an
// error if the page cannot be rendered.
func (j *Job) article(min *bundle.Minifier) (theme.Article, error) {
	a := theme.Article{ID: j.at.anchor, Lang: j.lang.Code, Title: j.title}
	view, err := j.kind.view(j)
	if err != nil {
		return a, err
	}
	full, err := j.theme().Render(j.kind.template+"-body", view)
	if err != nil {
		return a, err
	}
	body, err := min.HTML(full)
	a.Body = template.HTML(body)
	return a, err
}

// safeScript returns a script with the strings that would end its element, and
// characters that HTML does not allow, escaped.
func safeScript(js []byte) []byte {
	for _, r := range [][2]string{{"</script", `<\/script`}, {"<!--", `<\!--`}, {"\x01", `\x01`}, {"\x02", `\x02`}} {
		js = bytes.ReplaceAll(js, []byte(r[0]), []byte(r[1]))
	}
	return js
}

// pocketData returns the data blocks of the one-file edition.
func pocketData(m *Manual, list release.List) []theme.Data {
	encode := base64.StdEncoding.EncodeToString
	list = release.List{Edition: list.Edition, Fingerprint: list.Fingerprint, Rules: list.Rules}
	data := []theme.Data{{ID: "release", Text: encode(list.JSON())}, {ID: "module", Text: encode(m.Assets.ModuleData)}}
	for _, l := range m.Site.Languages {
		data = append(data, theme.Data{ID: "index-" + l.Code, Text: encode(m.Assets.IndexData[l.Code])})
		if w := m.Assets.WordsData[l.Code]; w != nil {
			data = append(data, theme.Data{ID: "words-" + l.Code, Text: encode(w)})
		}
	}
	return data
}
