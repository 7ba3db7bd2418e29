package render

import (
	"net/url"
	"strings"

	"coursebook/generator/internal/page"
	"coursebook/generator/internal/release"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// urgentSlug is the slug of the page to which every page links: what to do when a form
// opens. A manual without this page has no such link.
const urgentSlug = "blow-out"

// Policy is the content security policy of the pages of a site: nothing is loaded from
// other hosts, only the site's scripts run, and no script writes markup from text.
const Policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self' data:; " +
	"connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; " +
	"require-trusted-types-for 'script'; trusted-types coursebook"

// href returns the link from the job's page to an address: a relative URL, or a
// fragment in the one-file edition.
func (j *Job) href(to address) string {
	if j.form == site.OneFile {
		return "#" + to.anchor
	}
	return j.rel(to.path)
}

// rel returns the URL of a path of the site from the job's page: a relative one. The page
// for missing addresses is sent for addresses in any folder, so where the manual says its
// web address the URL begins with the path of that.
func (j *Job) rel(path string) string {
	if base := j.base(); base != "" {
		return base + path
	}
	return site.Rel(j.at.path, path)
}

// deepest is how many folders below the root of a site an address without a page may be
// for the page for missing addresses to find its style and script. Pages are two deep.
const deepest = 3

// base returns the path of the manual's web address for the page for missing addresses;
// empty for other pages, and where the manual says none.
func (j *Job) base() string {
	if j.kind.name != "missing" {
		return ""
	}
	u, err := url.Parse(j.Site.Manual.Address)
	if err != nil { // package source has read it
		return ""
	}
	return u.Path
}

// pageHref returns the link from the job's page to a page of the content.
func (j *Job) pageHref(p *site.Page) string {
	if j.form == site.Folder {
		return j.rel(p.Path)
	}
	return j.Site.Href(j.form, j.at.path, p, "")
}

// homeHref returns the link from the job's page to the home page of a language, or
// to the list of its pages if it has none of its own.
func (j *Job) homeHref(l *site.Language) string {
	if l.Home.Page != nil && !l.Home.Fallback {
		return j.pageHref(l.Home.Page)
	}
	return j.href(allAt(j, l))
}

// frame returns the part of a view that is common to all pages.
func frame(j *Job) theme.Frame {
	l := j.lang
	f := theme.Frame{
		Title: j.title, Slug: j.slug, Self: j.at.path, Languages: languageLinks(j), Stages: stageLinks(j),
		Lang: l.Code, Name: l.Title, Subtitle: l.Subtitle, Kind: j.kind.name,
		Emergency: j.Site.Manual.Emergency, Revised: j.Site.Manual.Revised,
		Root: strings.Repeat("../", strings.Count(j.at.path, "/")),
		Home: j.homeHref(l), Settings: j.href(settingsAt(j, l)), All: j.href(allAt(j, l)),
		Policy: Policy, PageID: release.IDPlaceholder, Pocket: j.form == site.OneFile, Assets: frameAssets(j),
	}
	if base := j.base(); base != "" {
		f.Root = base
	} else if j.kind.name == "missing" {
		for depth := 1; depth <= deepest; depth++ {
			f.Above = append(f.Above, theme.Above{Root: strings.Repeat("../", depth),
				Style: j.Assets.Style, Script: j.Assets.Script})
		}
	}
	if len(l.Courses) > 0 {
		f.Training = j.href(trainingAt(j, l))
	}
	if e, ok := j.Site.In(l, urgentSlug); ok {
		f.Blowout = j.pageHref(e.Page)
	}
	if l.Cautions.Page != nil {
		f.Cautions = j.pageHref(l.Cautions.Page)
	}
	for _, r := range l.Roles {
		f.Crew = append(f.Crew, theme.Role{ID: r.ID, Title: r.Title})
	}
	return f
}

// frameAssets returns the relative addresses of the files that the page loads;
// none in the one-file edition.
func frameAssets(j *Job) theme.Assets {
	var a theme.Assets
	if j.form == site.OneFile {
		return a
	}
	rel := func(path string) string {
		if path == "" {
			return ""
		}
		return j.rel(path)
	}
	if j.kind.name == string(page.Home) {
		a.TouchIcon = rel(j.Assets.TouchIcon)
	}
	if j.kind.lists {
		a.Lists = rel(j.Assets.Lists)
	}
	a.Style, a.Deferred, a.Script = rel(j.Assets.Style), rel(j.Assets.Deferred), rel(j.Assets.Script)
	a.Icon, a.AppManifest = rel(j.Assets.Icon), rel(j.Assets.AppManifest[j.lang.Code])
	return a
}

// stageLinks returns the stages of the day with links to their pages.
func stageLinks(j *Job) []theme.StageLink {
	current := ""
	if j.page != nil && j.page.Stage != nil {
		current = j.page.Stage.ID
	} else if j.stage != nil {
		current = j.stage.ID
	}
	var list []theme.StageLink
	for _, st := range j.lang.Stages {
		list = append(list, theme.StageLink{ID: st.ID, Title: st.Title, Hint: st.Hint,
			Href: j.href(stageAddress(j.lang.Code, st.ID)), Current: st.ID == current})
	}
	return list
}

// languageLinks returns a link to the page in each language, or to its home page
// if the page does not exist in it.
func languageLinks(j *Job) []theme.Language {
	var list []theme.Language
	for i, l := range j.Site.Languages {
		decimal := j.Site.Manual.Languages[i].Decimal
		link := theme.Language{Code: l.Code, Name: l.Name, Decimal: decimal, Current: l == j.lang, Translated: true}
		if at := j.kind.at(j, l); at != (address{}) {
			link.Href = j.href(at)
		} else {
			link.Translated, link.Href = false, j.homeHref(l)
		}
		list = append(list, link)
	}
	return list
}
