package site_test

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"
)

const manualText = `title: {en: Test manual, es: Manual de prueba}
subtitle: {en: For tests, es: Para pruebas}
languages:
  - {code: en, name: English, decimal: point}
  - {code: es, name: Español, decimal: comma}
stages:
  - {id: before, title: {en: Before, es: Antes}, hint: {en: Days, es: Días}}
  - {id: placing, title: {en: Placing, es: Colado}}
roles:
  - {id: foreman, title: {en: Foreman, es: Mayordomo}}
`

// twoLanguages returns a manual in two languages. Two pages have no translation.
func twoLanguages() fstest.MapFS {
	files := map[string]string{
		"manual.yaml": manualText,
		"en/start.md": "---\ntitle: Start\nsummary: x\nkind: home\n---\n" +
			"[plan](plan.md) [tank](calc:tank) [out](https://example.org/x)\n",
		"es/start.md": "---\ntitle: Inicio\nsummary: x\nkind: home\n---\nTexto.\n",
		"en/plan.md": "---\ntitle: Plan\nsummary: x\nstage: before\norder: 2\nnext: [corners, words]\n---\n" +
			"## Größe\n\nA lift. [c](corners.md#step-1) [g](plan.md#gr%C3%B6%C3%9Fe) [w](words.md#lift)\n\n" +
			"![A corner](corner.svg)\n",
		"es/plan.md": "---\ntitle: Plano\nsummary: x\nstage: before\norder: 2\n---\n" +
			"Texto. [c](corners.md) [tanque](calc:tank)\n",
		"en/order.md":         "---\ntitle: Order\nsummary: x\nstage: before\norder: 1\n---\nText.\n",
		"es/order.md":         "---\ntitle: Pedido\nsummary: x\nstage: before\norder: 1\n---\nTexto. Una capa.\n",
		"en/corners.md":       "---\ntitle: Corners\nsummary: x\nstage: placing\n---\n1. Stop.\n",
		"en/words.md":         "---\ntitle: Words\nsummary: x\nkind: glossary\n---\n- **Lift**: a layer.\n",
		"pictures/corner.svg": "<svg/>\n",
	}
	fsys := fstest.MapFS{}
	for name, text := range files {
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return fsys
}

func assembleTwoLanguages(t *testing.T) *site.Site {
	t.Helper()
	s, _, faults := assemble(twoLanguages())
	for _, f := range faults {
		if f.Severity == fault.Error {
			t.Errorf("%v", f)
		}
	}
	return s
}

func names(entries []site.Entry) string {
	var all []string
	for _, e := range entries {
		name := e.Page.File
		if e.Fallback {
			name += "*"
		}
		all = append(all, name)
	}
	return strings.Join(all, " ")
}

func TestOrder(t *testing.T) {
	s := assembleTwoLanguages(t)
	en, es := s.Languages[0], s.Languages[1]
	for _, c := range []struct{ what, got, want string }{
		{"English before", names(en.Stages[0].Pages), "en/order.md en/plan.md"},
		{"English placing", names(en.Stages[1].Pages), "en/corners.md"},
		{"English loose", names(en.Loose), "en/words.md"},
		{"English all", names(en.All), "en/corners.md en/order.md en/plan.md en/words.md"},
		{"Spanish before", names(es.Stages[0].Pages), "es/order.md es/plan.md"},
		{"Spanish placing", names(es.Stages[1].Pages), "en/corners.md*"},
		{"Spanish loose", names(es.Loose), "en/words.md*"},
		{"Spanish all", names(es.All), "en/corners.md* es/order.md es/plan.md en/words.md*"},
		{"English next of order", names([]site.Entry{s.Page("en", "order").Next}), "en/plan.md"},
		{"English previous of corners", names([]site.Entry{s.Page("en", "corners").Previous}), "en/plan.md"},
		{"Spanish next of plan", names([]site.Entry{s.Page("es", "plan").Next}), "en/corners.md*"},
		{"after plan", names(s.Page("en", "plan").After), "en/corners.md en/words.md"},
		{"Spanish home", names([]site.Entry{es.Home}), "es/start.md"},
		{"Spanish glossary", names([]site.Entry{es.Glossary}), "en/words.md*"},
		{"stage of a page", s.Page("es", "plan").Stage.Title, "Antes"},
		{"title", es.Title + ", " + es.Subtitle, "Manual de prueba, Para pruebas"},
		{"hint falls back", es.Stages[0].Hint, "Días"},
		{"role", es.Roles[0].Title, "Mayordomo"},
		{"outbound", strings.Join(s.Outbound, " "), "https://example.org/x"},
	} {
		if c.got != c.want {
			t.Errorf("%s: got %q, want %q", c.what, c.got, c.want)
		}
	}
	if p := s.Page("en", "corners"); p.Next.Page != nil || len(p.Twins) != 0 {
		t.Errorf("corners has next %v and twins %v", p.Next, p.Twins)
	}
	if p := s.Page("en", "plan"); len(p.Twins) != 1 || p.Twins[0].File != "es/plan.md" {
		t.Errorf("plan has twins %v", p.Twins)
	}
	if es.Terms != nil || en.Terms == nil || es.Mark != quantity.Comma {
		t.Error("terms of another language are lent, or the decimal mark is lost")
	}
	var files []string
	for _, p := range s.Pages {
		files = append(files, p.File)
	}
	if got := strings.Join(files, " "); got != "en/order.md en/plan.md en/corners.md en/start.md en/words.md "+
		"es/order.md es/plan.md es/start.md" {
		t.Errorf("pages are %s", got)
	}
}

func TestPaths(t *testing.T) {
	s := assembleTwoLanguages(t)
	for path, want := range map[string]string{
		s.Page("en", "start").Path: "index.html", s.Page("es", "start").Path: "es/index.html",
		s.Page("es", "plan").Path:  "es/plan.html",
		s.HomePath(s.Languages[1]): "es/index.html", site.CalculatorPath("es", "tank"): "es/calc/tank.html",
		site.ListingPath("en", "tank"): "en/calc/tank-source.html", site.AllPath("en"): "en/all.html",
	} {
		if path != want {
			t.Errorf("path %s, want %s", path, want)
		}
	}
}

// By RFC 3986, section 5.2, each wanted address resolves to the second path.
func TestRel(t *testing.T) {
	for _, c := range [][3]string{
		{"index.html", "en/a.html", "en/a.html"}, {"en/a.html", "index.html", "../index.html"},
		{"en/a.html", "en/b.html#x", "b.html#x"},
		{"en/a.html", "en/a.html#x", "#x"}, {"en/a.html", "en/a.html", "a.html"},
		{"en/calc/t.html", "es/calc/t.html", "../../es/calc/t.html"},
		{"en/calc/t.html", "en/a.html", "../a.html"}, {"en/a.html", "assets/x.css", "../assets/x.css"},
		{"en/a.html", "en/calc/t.html", "calc/t.html"},
		{"index.html", "sw.js", "sw.js"}, {"en/a.html", "eng/a.html", "../eng/a.html"},
		{"a/b/c.html", "a/d/e.html", "../d/e.html"},
	} {
		if got := site.Rel(c[0], c[1]); got != c[2] {
			t.Errorf("from %s to %s: %s, want %s", c[0], c[1], got, c[2])
		}
	}
}

func TestResolution(t *testing.T) {
	s := assembleTwoLanguages(t)
	images := map[string]page.Image{"corner.svg": {Src: "assets/corner-0123456789.svg", Width: 10, Height: 20}}
	r := s.Resolution(s.Page("en", "plan"), site.Folder, images)
	want := []page.Target{{Href: "corners.html#step-1"}, {Href: "#größe"}, {Href: "words.html#lift"}}
	if fmt.Sprint(r.Links) != fmt.Sprint(want) || r.Prefix != "" || r.Glossary != "words.html#" || r.Terms == nil {
		t.Errorf("got %+v", r)
	}
	if got := r.Pictures["corner.svg"]; got.Src != "../assets/corner-0123456789.svg" || got.Height != 20 {
		t.Errorf("picture %+v", got)
	}
	r = s.Resolution(s.Page("en", "start"), site.Folder, nil)
	want = []page.Target{
		{Href: "en/plan.html"},
		{Href: "en/calc/tank.html"},
		{Href: "https://example.org/x", Outbound: true},
	}
	if fmt.Sprint(r.Links) != fmt.Sprint(want) || r.Glossary != "en/words.html#" {
		t.Errorf("got %+v", r)
	}
	r = s.Resolution(s.Page("es", "plan"), site.Folder, nil)
	want = []page.Target{{Href: "../en/corners.html", Lang: "en"}, {Href: "calc/tank.html"}}
	if fmt.Sprint(r.Links) != fmt.Sprint(want) || r.Terms != nil {
		t.Errorf("got %+v", r)
	}
	if r := s.Resolution(s.Page("en", "words"), site.Folder, nil); r.Terms != nil {
		t.Error("the glossary links its own terms")
	}
}

func TestResolutionInOneFile(t *testing.T) {
	s := assembleTwoLanguages(t)
	images := map[string]page.Image{"corner.svg": {Src: "data:image/svg+xml,x"}}
	r := s.Resolution(s.Page("en", "plan"), site.OneFile, images)
	want := []page.Target{{Href: "#en.corners.step-1"}, {Href: "#en.plan.größe"}, {Href: "#en.words.lift"}}
	if fmt.Sprint(r.Links) != fmt.Sprint(want) || r.Prefix != "en.plan." || r.Glossary != "#en.words." {
		t.Errorf("got %+v", r)
	}
	if got := r.Pictures["corner.svg"].Src; got != "data:image/svg+xml,x" {
		t.Errorf("picture %s", got)
	}
	r = s.Resolution(s.Page("en", "start"), site.OneFile, nil)
	if got := r.Links[1].Href; got != "#en.calc.tank" {
		t.Errorf("calculator at %s", got)
	}
}

func TestWithoutHome(t *testing.T) {
	files := twoLanguages()
	delete(files, "es/start.md")
	s, _, _ := assemble(files)
	if es := s.Languages[1]; !es.Home.Fallback || s.HomePath(es) != "es/all.html" {
		t.Errorf("home is %+v, path %s", es.Home, s.HomePath(es))
	}
	delete(files, "en/start.md")
	_, _, faults := assemble(files)
	found := false
	for _, f := range faults {
		found = found || f.Code == "home-missing"
	}
	if !found {
		t.Error("no fault without a home page")
	}
}

// An empty folder and a manual without languages must not panic. Package source
// reports their faults.
func TestEmpty(t *testing.T) {
	var faults fault.List
	s := site.Assemble(source.Manual{}, nil, []*page.Page{{Lang: "en", Slug: "a", File: "en/a.md"}}, nil, &faults)
	if len(s.Pages) != 0 || faults.Errors() != 1 {
		t.Errorf("%d pages, faults %v", len(s.Pages), faults.All())
	}
}

// Ten thousand pages, each linking to others, stay far from quadratic cost:
// ten times the pages may take at most forty times as long.
func TestManyPages(t *testing.T) {
	few, many := assembleMany(1000), assembleMany(10000)
	if many > 40*few && many > 2*time.Second {
		t.Errorf("1000 pages take %v, 10000 take %v", few, many)
	}
}

func assembleMany(n int) time.Duration {
	manual := source.Manual{Languages: []source.Language{{Code: "en", Name: "English"}, {Code: "es", Name: "Español"}},
		Stages: []source.Stage{{ID: "before", Title: map[string]string{"en": "Before"}}}}
	pages := make([]*page.Page, n)
	for i := range pages {
		p := &page.Page{Lang: "en", Slug: fmt.Sprintf("p%05d", i), File: fmt.Sprintf("en/p%05d.md", i),
			Header: page.Header{
				Title:   fmt.Sprint("Page ", i),
				Summary: "x",
				Stage:   "before",
				Order:   i % 7,
				Kind:    page.Procedure,
			}}
		for k := 1; k <= 5; k++ {
			p.Links = append(p.Links, page.Link{Target: fmt.Sprintf("p%05d.md", (i*k+k)%n)})
		}
		p.Links = append(p.Links, page.Link{Target: "gone.md"})
		pages[i] = p
	}
	var faults fault.List
	start := time.Now()
	site.Assemble(manual, nil, pages, nil, &faults)
	return time.Since(start)
}

// A vowel with an accent is listed with the plain one, as it is sorted; Ñ is not.
func TestInitial(t *testing.T) {
	for title, want := range map[string]string{
		"Última ronda": "U", "¿Unas?": "U", "Ñame": "Ñ", "«Norte»": "N",
		"9 ft": "9", "—": "—", "Ágil": "A", "Zanja": "Z",
	} {
		if got := site.Initial(title); got != want {
			t.Errorf("%q is under %q, not %q", title, got, want)
		}
	}
}
