package build

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// hrefs lists the links of a page of the site.
func hrefs(t *testing.T, s *Site, path string) []string {
	t.Helper()
	var list []string
	for _, a := range elements(parse(t, file(s, path)), "a") {
		list = append(list, attr(a, "href"))
	}
	return list
}

// Home leads to every stage in one touch, and the page of a stage lists all of its pages,
// however many.
func TestStagesMissNoPage(t *testing.T) {
	more := map[string]string{}
	for i := range 40 {
		more[fmt.Sprintf("en/more-%d.md", i)] = fmt.Sprintf("---\ntitle: More %d\nsummary: One more.\nstage: before\n"+
			"sources: [common practice]\n---\n\n## Steps\n\n1. Do it.\n", i)
	}
	s, faults := buildSite(t, more, nil)
	if s == nil {
		t.Fatal(faults)
	}
	for _, path := range []string{"index.html", "es/index.html"} {
		lang := "en"
		if strings.HasPrefix(path, "es") {
			lang = "es"
		}
		for _, stage := range []string{"before", "filling"} {
			want := lang + "/stage/" + stage + ".html"
			if lang == "es" {
				want = strings.TrimPrefix(want, "es/")
			}
			if !slices.Contains(hrefs(t, s, path), want) {
				t.Errorf("%s does not link to %s", path, want)
			}
		}
	}
	links := hrefs(t, s, "en/stage/before.html")
	for i := range 40 {
		if !slices.Contains(links, fmt.Sprintf("../more-%d.html", i)) {
			t.Errorf("the page of the stage does not list page %d", i)
		}
	}
	if !slices.Contains(hrefs(t, s, "en/stage/filling.html"), "../fill.html") {
		t.Error("the second stage does not list its page")
	}
}

// The list of the calculators has the manual's groups, and those in no group at its end.
func TestGroupsOfCalculators(t *testing.T) {
	group := "calculators:\n  - title: {en: Tanks, es: Tanques}\n    list: [tank]\n"
	s, faults := buildSite(t, map[string]string{"manual.yaml": manualYAML + group}, nil)
	if s == nil {
		t.Fatal(faults)
	}
	for path, title := range map[string]string{"en/calc/index.html": "Tanks", "es/calc/index.html": "Tanques"} {
		doc := parse(t, file(s, path))
		if h := elements(doc, "h2"); len(h) == 0 || text(h[0]) != title {
			t.Errorf("%s has no heading %q", path, title)
		}
		var listed []string
		for _, a := range hrefs(t, s, path) {
			if strings.HasSuffix(a, ".html") && !strings.Contains(a, "/") {
				listed = append(listed, a)
			}
		}
		for _, c := range invented() {
			if !slices.Contains(listed, c.ID+".html") {
				t.Errorf("%s does not list %s", path, c.ID)
			}
		}
	}
	group = strings.Replace(group, "tank]", "tnak]", 1)
	_, faults = buildSite(t, map[string]string{"manual.yaml": manualYAML + group}, nil)
	for _, f := range faults {
		if f.Code == "calculator-unknown" && f.File == "manual.yaml" && f.Line > 0 && f.Col > 0 &&
			strings.Contains(f.Hint, "tank") {
			return
		}
	}
	t.Errorf("a misspelled calculator is not named with its place and the nearest name: %v", faults)
}

// A page that says so has the button that calls the emergency number; others have none.
func TestCallButton(t *testing.T) {
	page := strings.Replace(fillPage, "stage: filling", "call: true\nstage: filling", 1)
	changes := map[string]string{"manual.yaml": manualYAML + "emergency: \"911\"\n", "en/fill.md": page,
		"es/fill.md": strings.Replace(content()["es/fill.md"], "stage: filling", "call: true\nstage: filling", 1)}
	s, faults := buildSite(t, changes, nil)
	if s == nil {
		t.Fatal(faults)
	}
	for path, want := range map[string]bool{"en/fill.html": true, "es/fill.html": true, "en/blow-out.html": false} {
		if got := slices.Contains(hrefs(t, s, path), "tel:911"); got != want {
			t.Errorf("%s: a button that calls 911: %v, want %v", path, got, want)
		}
	}
	changes["manual.yaml"] = manualYAML + "emergency: call us\n"
	if s, _ := buildSite(t, changes, nil); s != nil {
		t.Error("a number that is none was taken")
	}
}

// The page for missing addresses is sent for addresses in any folder: with the web address
// of the manual its links begin at the root of the server, without one they are relative.
func TestMissingAtAnyDepth(t *testing.T) {
	for address, want := range map[string]string{"": "en/all.html", "address: https://example.org\n": "/en/all.html",
		"address: https://example.org/walls\n": "/walls/en/all.html"} {
		s, faults := buildSite(t, map[string]string{"manual.yaml": manualYAML + address}, nil)
		if s == nil {
			t.Fatal(faults)
		}
		if links := hrefs(t, s, "404.html"); !slices.Contains(links, want) {
			t.Errorf("with %q the page links to %q, not to %s", address, links, want)
		}
		root := strings.TrimSuffix(want, "en/all.html")
		doc := parse(t, file(s, "404.html"))
		for _, e := range slices.Concat(elements(doc, "link"), elements(doc, "script")) {
			for _, name := range []string{"href", "src"} {
				if v := attr(e, name); v != "" && !strings.HasPrefix(v, root) {
					t.Errorf("with %q the page loads %s", address, v)
				}
			}
		}
	}
}
