package build

import (
	"bytes"
	"encoding/base64"
	"html/template"
	"slices"
	"strings"

	"coursebook/generator/internal/bundle"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// picturesFor are the pictures as a form of the manual shows them: files of
// the site, or inside the one file.
func (b *builder) picturesFor(f site.Form) map[string]page.Image {
	if f == site.OneFile {
		return b.inside()
	}
	return b.pictures
}

// inside are the pictures as data: addresses; made once.
func (b *builder) inside() map[string]page.Image {
	b.insideOnce.Do(func() {
		b.insidePictures = map[string]page.Image{}
		for name, img := range b.pictures {
			img.Src = "data:" + mediaType(img.Src) + ";base64," + base64.StdEncoding.EncodeToString(b.pictureFiles[img.Src].Data)
			b.insidePictures[name] = img
		}
	})
	return b.insidePictures
}

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

// pocket makes the one-file edition: every page in every language, with
// style, script, module and indexes inside, under a policy that allows just
// these blocks and no connection at all.
func (b *builder) pocket() ([]byte, error) {
	l := b.site.Languages[0]
	s := spot{lang: l, form: site.OneFile, path: "index.html", kind: "home", title: l.Title}
	if l.Home.Page != nil {
		s.slug = l.Home.Page.Slug
	}
	s.twin = func(l *site.Language) string { return b.homeHref(s, l) }
	v := theme.Pocket{Frame: b.frame(s),
		Style: template.CSS(slices.Concat(b.assets.styleData, b.assets.laterData)), Script: template.JS(safeScript(b.assets.scriptData)), Data: b.pocketData()}
	own := *v.Common // the articles share theirs
	v.Common = &own
	v.Assets.Icon = "data:image/svg+xml;base64," + base64.StdEncoding.EncodeToString(b.assets.iconData)
	for _, leaf := range b.leaves(site.OneFile) {
		body, err := b.themes[leaf.spot.lang.Code].Render("article", leaf.view())
		if err != nil {
			return nil, err
		}
		v.Articles = append(v.Articles, theme.Article{ID: b.anchor(leaf), Lang: leaf.spot.lang.Code, Title: leaf.spot.title, Body: template.HTML(body)})
	}
	v.Policy = "default-src 'none'; script-src " + bundle.Hash([]byte(v.Script)) + " 'wasm-unsafe-eval'; style-src " + bundle.Hash([]byte(v.Style)) +
		"; img-src data:; connect-src 'none'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types coursebook"
	return b.themes[l.Code].Render("pocket", v)
}

// anchor is the id of a leaf's article.
func (b *builder) anchor(l leaf) string {
	code, slug := l.spot.lang.Code, l.spot.slug
	switch l.kind {
	case "calculator":
		return site.CalculatorAnchor(code, slug)
	case "listing":
		return listingAnchor(code, slug)
	case "all":
		return allAnchor(l.spot.lang)
	case "training":
		return trainingAnchor(l.spot.lang)
	}
	return code + "." + slug
}

// safeScript keeps a script from ending its element early, and its bytes to
// those that HTML allows, whatever strings it holds.
func safeScript(js []byte) []byte {
	for _, r := range [][2]string{{"</script", `<\/script`}, {"<!--", `<\!--`}, {"\x01", `\x01`}, {"\x02", `\x02`}} {
		js = bytes.ReplaceAll(js, []byte(r[0]), []byte(r[1]))
	}
	return js
}

func (b *builder) pocketData() []theme.Data {
	encode := base64.StdEncoding.EncodeToString
	data := []theme.Data{{ID: "module", Text: encode(b.module)}}
	for _, l := range b.site.Languages {
		data = append(data, theme.Data{ID: "index-" + l.Code, Text: encode(b.assets.indexData[l.Code])})
		if w := b.assets.wordsData[l.Code]; w != nil {
			data = append(data, theme.Data{ID: "words-" + l.Code, Text: encode(w)})
		}
	}
	return data
}
