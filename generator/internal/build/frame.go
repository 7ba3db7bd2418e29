package build

import (
	"strings"
	"sync"

	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// urgentSlug is the page that is one touch from every page: what to do when a
// form opens. A manual without such a page has no such link.
const urgentSlug = "blow-out"

// policy is the content security policy of every page: nothing from anywhere
// else, no markup made from text, no script but the site's own.
const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; " +
	"require-trusted-types-for 'script'; trusted-types coursebook"

// spot is where a page stands: what its frame depends on.
type spot struct {
	lang  *site.Language
	form  site.Form
	path  string // of the page, from the root
	kind  string
	slug  string
	title string
	// in another language the same page is at twin; empty without one
	twin func(l *site.Language) string
}

// href is the address of a file of the site, or of its article in the
// one-file edition, as written at a spot.
func (b *builder) href(s spot, path, anchor string) string {
	if s.form == site.OneFile {
		return "#" + anchor
	}
	return site.Rel(s.path, path)
}

func (b *builder) pageHref(s spot, p *site.Page) string { return b.site.Href(s.form, s.path, p, "") }

func (b *builder) homeHref(s spot, l *site.Language) string {
	if s.form == site.OneFile {
		return "#" + homeAnchor(l)
	}
	return site.Rel(s.path, b.site.HomePath(l))
}

// The anchors of pages that the generator itself makes, in the one-file
// edition.
func homeAnchor(l *site.Language) string {
	if l.Home.Page != nil && !l.Home.Fallback {
		return l.Home.Page.Anchor()
	}
	return allAnchor(l)
}

func allAnchor(l *site.Language) string { return l.Code + ".all" }

func trainingAnchor(l *site.Language) string { return l.Code + ".training" }

func listingAnchor(lang, id string) string { return site.CalculatorAnchor(lang, id) + "-source" }

func (b *builder) frame(s spot) theme.Frame {
	f := theme.Frame{Common: b.common(s), Title: s.title, Slug: s.slug, Self: s.path, Languages: b.languageLinks(s)}
	current := ""
	if p := b.site.Page(s.lang.Code, s.slug); p != nil && p.Stage != nil && s.kind != "calculator" {
		current = p.Stage.ID
	}
	f.Stages = once(&b.stages, stageKey{keyOfSpot(s), current}, func() []theme.StageLink { return b.stageLinks(s, current) })
	return f
}

// spotKey is what the common part of a frame depends on: what lies in one
// folder has the same relative addresses.
type spotKey struct {
	lang   *site.Language
	form   site.Form
	folder string
	kind   string
}

func keyOfSpot(s spot) spotKey {
	return spotKey{s.lang, s.form, s.path[:strings.LastIndexByte(s.path, '/')+1], s.kind}
}

type stageKey struct {
	spotKey
	current string
}

// once is what make makes for a key, made by the first who asks.
func once[K comparable, V any](kept *sync.Map, key K, make func() V) V {
	if v, ok := kept.Load(key); ok {
		return v.(V)
	}
	v, _ := kept.LoadOrStore(key, make())
	return v.(V)
}

func (b *builder) common(s spot) *theme.Common {
	return once(&b.commons, keyOfSpot(s), func() *theme.Common {
		l := s.lang
		c := &theme.Common{
			Lang: l.Code, Name: l.Title, Subtitle: l.Subtitle, Kind: s.kind,
			Revised: b.site.Manual.Revised, Root: strings.Repeat("../", strings.Count(s.path, "/")),
			Home: b.homeHref(s, l), All: b.href(s, site.AllPath(l.Code), allAnchor(l)),
			Policy: policy, Release: b.edition, Pocket: s.form == site.OneFile, Assets: b.frameAssets(s),
		}
		if len(l.Courses) > 0 {
			c.Training = b.href(s, site.TrainingPath(l.Code), trainingAnchor(l))
		}
		if e, ok := b.site.In(l, urgentSlug); ok {
			c.Blowout = b.pageHref(s, e.Page)
		}
		if l.Cautions.Page != nil {
			c.Cautions = b.pageHref(s, l.Cautions.Page)
		}
		for _, r := range l.Roles {
			c.Crew = append(c.Crew, theme.Role{ID: r.ID, Title: r.Title})
		}
		return c
	})
}

func (b *builder) frameAssets(s spot) theme.Assets {
	a := theme.Assets{Fingerprint: b.print}
	if s.form == site.OneFile {
		return a
	}
	rel := func(path string) string {
		if path == "" {
			return ""
		}
		return site.Rel(s.path, path)
	}
	a.Later = rel(b.assets.later)
	a.Style, a.Script, a.Module, a.Icon = rel(b.assets.style), rel(b.assets.script), rel(b.assets.module), rel(b.assets.icon)
	a.Index, a.Words, a.AppManifest = rel(b.assets.index[s.lang.Code]), rel(b.assets.words[s.lang.Code]), rel(appManifest)
	return a
}

// stageLinks are the knots of the line through every page: each leads to its
// stage on the home page.
func (b *builder) stageLinks(s spot, current string) []theme.StageLink {
	home := b.homeHref(s, s.lang)
	if s.kind == string(page.Home) && s.form == site.Folder {
		home = ""
	}
	var list []theme.StageLink
	for _, st := range s.lang.Stages {
		href := home + "#" + stageID(st.ID)
		if s.form == site.OneFile {
			href = home + "." + stageID(st.ID)
		}
		list = append(list, theme.StageLink{ID: st.ID, Title: st.Title, Href: href, Current: st.ID == current})
	}
	return list
}

// stageID is the id of a stage on the home page.
func stageID(id string) string { return "stage-" + id }

func (b *builder) languageLinks(s spot) []theme.Language {
	var list []theme.Language
	for i, l := range b.site.Languages {
		own, href := true, ""
		if s.twin != nil {
			href = s.twin(l)
		}
		if href == "" {
			own, href = false, b.homeHref(s, l)
		}
		list = append(list, theme.Language{Code: l.Code, Name: l.Name, Href: href,
			Decimal: b.site.Manual.Languages[i].Decimal, Current: l == s.lang, Own: own})
	}
	return list
}
