package build

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/output"
	"coursebook/generator/module/compiling"
)

func file(site *Site, name string) []byte {
	for _, f := range site.Files {
		if f.Path == name {
			return f.Data
		}
	}
	return nil
}

// named returns the only file whose name has this beginning and end.
func named(t *testing.T, site *Site, begin, end string) output.File {
	t.Helper()
	var found []output.File
	for _, f := range site.Files {
		if strings.HasPrefix(f.Path, begin) && strings.HasSuffix(f.Path, end) {
			found = append(found, f)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%d files %s…%s", len(found), begin, end)
	}
	return found[0]
}

func TestPageOfEachKind(t *testing.T) {
	site := buildGood(t)
	for name, parts := range map[string][]string{
		"index.html": {"Tank book", "Before", "Filling", "Begin with"},
		"en/fill.html": {"Fill the tank", "Morning", "Hose", "Turn the valve", "The valve is shut",
			"&lt;b>wets", "8.0 ft³", "27.0 ft³", "By side", "Which first?", "<svg", "Open the calculator"},
		"en/blow-out.html": {"Stand back"},
		"en/words.html":    {"the top of a tank"},
		"en/cautions.html": {"Deep water"},
		"en/sizes.html":    {"<table"},
		"en/all.html":      {"When a tank opens", "Bare"},
		"en/calc/tank.html": {"How much a tank holds.", "27.0 ft³", "0.76 m³", `href="tank-source.html"`,
			"Invented"},
		"en/calc/bare.html": {"One."},
		"en/calc/tank-source.html": {"Tank: tables and formulas", ">Tables and formulas<", "<math", "By side", "calc/",
			"ParseDay"},
		"es/index.html":     {"Libro de tanques", "Empiece con"},
		"es/fill.html":      {"Llene el tanque", "27,0 ft³"},
		"es/all.html":       {"Llene el tanque"},
		"es/calc/tank.html": {"27,0 ft³"},
		"404.html":          {"Tank book"},
		"sw.js":             {"assets/"},
		"app.webmanifest":   {"Tank book"},
	} {
		data := file(site, name)
		if data == nil {
			t.Errorf("there is no %s", name)
		}
		for _, p := range parts {
			if !bytes.Contains(data, []byte(p)) {
				t.Errorf("%s: no %q", name, p)
			}
		}
	}
	if site.Pages != 8 {
		t.Errorf("%d pages, not 8", site.Pages)
	}
	if !slices.IsSortedFunc(site.Files, func(a, b output.File) int { return strings.Compare(a.Path, b.Path) }) {
		t.Error("the files are not sorted")
	}
	if site.Release != output.Release(site.Files) {
		t.Error("the release names other files")
	}
	if file(site, "preview.js") != nil || bytes.Contains(file(site, "index.html"), []byte("preview.js")) {
		t.Error("a built site contains the preview's script")
	}
}

// A page without a translation is listed in the first language and marked so, and its
// language switch links to the home page of the other language.
func TestUntranslatedPages(t *testing.T) {
	site := buildGood(t)
	for name, want := range map[string]string{
		"en/fill.html":     "../es/fill.html",
		"en/blow-out.html": "../es/index.html",
		"es/fill.html":     "../en/fill.html",
		"index.html":       "es/index.html",
		"es/index.html":    "../index.html",
		"en/all.html":      "../es/all.html",
	} {
		found := false
		for _, a := range elements(parse(t, file(site, name)), "a") {
			if attr(a, "class") == "language" {
				found = true
				if got := attr(a, "href"); got != want {
					t.Errorf("%s: the language switch links to %s, not %s", name, got, want)
				}
			}
		}
		if !found {
			t.Errorf("%s has no language switch", name)
		}
	}
	for name, want := range map[string]string{"es/stage/filling.html": "../../en/blow-out.html",
		"es/all.html": "../en/sizes.html"} {
		marked := false
		for _, a := range elements(parse(t, file(site, name)), "a") {
			marked = marked || attr(a, "href") == want && attr(a, "lang") == "en" && attr(a, "hreflang") == "en"
		}
		if !marked {
			t.Errorf("%s does not link to %s with a note that it is English", name, want)
		}
	}
}

// Pictures are in the page with the size in their files.
func TestPictures(t *testing.T) {
	site := buildGood(t)
	want := map[string][2]string{
		"../" + named(t, site, "assets/tank-", ".svg").Path:  {"120", "80"},
		"../" + named(t, site, "assets/photo-", ".png").Path: {"7", "5"},
	}
	for _, img := range elements(parse(t, file(site, "en/fill.html")), "img") {
		if size, ok := want[attr(img, "src")]; ok {
			delete(want, attr(img, "src"))
			if got := [2]string{attr(img, "width"), attr(img, "height")}; got != size {
				t.Errorf("%s: %v, want %v", attr(img, "src"), got, size)
			}
		}
	}
	if len(want) > 0 {
		t.Errorf("not shown: %v", want)
	}
	if _, faults := buildSite(t, map[string]string{"pictures/photo.png": "no picture"}, nil); !slices.ContainsFunc(
		faults,
		func(f fault.Fault) bool {
			return f.Severity == fault.Error && f.File == "pictures/photo.png" && strings.Contains(f.Hint, "PNG")
		},
	) {
		t.Errorf("a broken picture: %v", faults)
	}
}

// The module's file of translations has those of the calculators' texts, sorted by key,
// and none of the theme's.
func TestWordsFile(t *testing.T) {
	site := buildGood(t)
	f := named(t, site, "assets/words-es-", ".tsv")
	lines := strings.Split(strings.TrimSuffix(string(f.Data), "\n"), "\n")
	if !slices.IsSorted(lines) || len(lines) < 50 {
		t.Errorf("%d lines, sorted: %v", len(lines), slices.IsSorted(lines))
	}
	texts, err := CalculatorTexts()
	if err != nil {
		t.Fatal(err)
	}
	for _, line := range lines {
		digits, text, ok := strings.Cut(line, "\t")
		key, err := strconv.ParseUint(digits, 16, 64)
		if _, known := texts[key]; !ok || err != nil || len(digits) != 16 || !known || text == "" {
			t.Errorf("line %q", line)
		}
	}
	for _, f := range site.Files {
		if strings.HasPrefix(f.Path, "assets/words-en-") {
			t.Error("there is a file of English texts")
		}
	}
}

// A theme can write attributes in single quotes: a title with a single quote stays text
// on the published page and in the one-file edition.
func TestHostileTitleInSingleQuotes(t *testing.T) {
	theme := fstest.MapFS{}
	err := fs.WalkDir(optionsFor("").Theme, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := fs.ReadFile(optionsFor("").Theme, name)
		theme[name] = &fstest.MapFile{
			Data: bytes.ReplaceAll(
				data,
				[]byte("<h1>{{title .Title}}</h1>"),
				[]byte("<h1 title='{{.Title}}'>{{.Title}}</h1>"),
			),
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	const title = `It's onclick=alert(1) x=' "+<b>`
	changes := map[string]string{
		"en/fill.md": strings.Replace(
			fillPage,
			"title: Fill the tank",
			"title: '"+strings.ReplaceAll(title, "'", "''")+"'",
			1,
		),
	}
	site, faults := buildSite(t, changes, func(o *Options) { o.Theme = theme })
	if site == nil {
		t.Fatal(faults)
	}
	for name, data := range map[string][]byte{"page": file(site, "en/fill.html"), "one file": site.Pocket} {
		found := 0
		for _, h := range elements(parse(t, data), "h1") {
			if len(h.Attr) > 1 {
				t.Errorf("%s: a heading has the attributes %v", name, h.Attr)
			}
			if text(h) == title && attr(h, "title") == title {
				found++
			}
		}
		if found != 1 {
			t.Errorf("%s: %d headings with the title", name, found)
		}
	}
}

func TestPreviewAddsItsScript(t *testing.T) {
	site, faults := buildSite(t, nil, func(o *Options) { o.Preview = true })
	if site == nil {
		t.Fatal(faults)
	}
	if file(site, "preview.js") == nil {
		t.Fatal("there is no preview.js")
	}
	for _, f := range site.Files {
		if path.Ext(f.Path) == ".html" && bytes.Count(f.Data, []byte("preview.js")) != 1 {
			t.Errorf("%s does not load the preview's script once", f.Path)
		}
	}
	if bytes.Contains(file(site, "sw.js"), []byte("preview.js")) {
		t.Error("the worker lists the preview's script")
	}
}

// A page over its budget is an error of a build and a warning of a preview, whose author
// must see the page to shorten it. The preview's script does not count.
func TestPreviewShowsAPageOverBudget(t *testing.T) {
	words := make([]string, 4*output.PageLimit)
	for i := range words {
		words[i] = strconv.FormatUint(uint64(i)*0x9E3779B97F4A7C15, 36) // gzip finds nothing to save
	}
	heavy := "---\ntitle: Heavy\nsummary: One sentence.\nkind: reference\n---\n\n" + strings.Join(words, " ") + ".\n"
	changes := map[string]string{"en/heavy.md": heavy}
	isBudget := func(f fault.Fault) bool { return f.Code == "budget" }
	if site, faults := buildSite(t, changes, nil); site != nil || !slices.ContainsFunc(faults, isBudget) {
		t.Errorf("a build accepts a page over its budget: %v", faults)
	}
	site, faults := buildSite(t, changes, func(o *Options) { o.Preview = true })
	if site == nil || file(site, "en/heavy.html") == nil {
		t.Fatalf("a preview does not show a page over its budget: %v", faults)
	}
	if i := slices.IndexFunc(faults, isBudget); i < 0 || faults[i].Severity != fault.Warning {
		t.Errorf("a preview does not warn of a page over its budget: %v", faults)
	}
}

// Errors stop a build before the module is compiled; warnings do not stop it.
func TestFaultsStop(t *testing.T) {
	bad := func(text string) map[string]string { return map[string]string{"en/bad.md": text} }
	const head = "---\ntitle: Bad\nsummary: One sentence.\nkind: reference\n---\n"
	for name, c := range map[string]struct {
		changes map[string]string
		want    string // file:line:col of one of the faults
	}{
		"header":     {bad("---\ntitel: x\n---\n"), "en/bad.md:2:1: error: "},
		"link":       {bad(head + "[x](none.md)\n"), "en/bad.md:6:1: error: "},
		"calculator": {bad(head + "```calculator\nid: tnak\n```\n"), "en/bad.md:7"},
		"input":      {bad(head + "```calculator\nid: tank\nset: {side: 99 ft}\n```\n"), "en/bad.md:8"},
		"picture":    {bad(head + "![x](none.svg)\n"), "en/bad.md:6:1: error: "},
		"manual":     {map[string]string{"manual.yaml": "title: x\n"}, "manual.yaml:1"},
		"no manual":  {map[string]string{"manual.yaml": ""}, "manual.yaml: error: there is no manual.yaml"},
	} {
		asked := false
		site, faults := buildSite(t, c.changes, func(o *Options) {
			o.Module = func() (compiling.Module, error) { asked = true; return compiling.Module{Packed: module}, nil }
		})
		if site != nil || asked {
			t.Errorf("%s: site %v, module asked for %v", name, site != nil, asked)
		}
		if !slices.ContainsFunc(
			faults,
			func(f fault.Fault) bool { return strings.HasPrefix(f.Error(), c.want) && f.Hint != "" },
		) {
			t.Errorf("%s: want %s, got %v", name, c.want, faults)
		}
	}
	site, faults := buildSite(t, bad(head+"A <b>bold</b> word.\n"), nil)
	if site == nil || len(faults) == 0 ||
		!bytes.Contains(file(site, "en/bad.html"), []byte("A &lt;b>bold&lt;/b> word.")) {
		t.Errorf("raw HTML: %v", faults)
	}
}

// An omitted step of the module's compilation is a warning with its reason. A module over
// its budget is then a warning too.
func TestModuleNotes(t *testing.T) {
	heavy := append([]byte("\x1f\x8b"), make([]byte, output.ModuleLimit)...) // gzip data counts as it is
	for name, c := range map[string]struct {
		module compiling.Module
		want   []string // of BuildOnly; nil where the build fails
	}{
		"reduced":   {compiling.Module{Packed: module}, []string{}},
		"unreduced": {compiling.Module{Packed: module, Notes: []string{"why"}}, []string{"warning: why"}},
		"heavy":     {compiling.Module{Packed: heavy}, nil},
		"unreduced and heavy": {compiling.Module{Packed: heavy, Notes: []string{"why"}},
			[]string{"warning: why", "warning: module is"}},
	} {
		site, faults := buildSite(t, nil, func(o *Options) {
			o.Module = func() (compiling.Module, error) { return c.module, nil }
		})
		if (site != nil) != (c.want != nil) {
			t.Errorf("%s: site %v, %v", name, site != nil, faults)
			continue
		}
		got := BuildOnly(faults)
		if len(got) != len(c.want) {
			t.Errorf("%s: %v", name, got)
			continue
		}
		for i, f := range got {
			if !strings.Contains(f.Error(), c.want[i]) || f.Hint == "" {
				t.Errorf("%s: %+v, want %s", name, f, c.want[i])
			}
		}
	}
}

func TestOtherFaults(t *testing.T) {
	for name, c := range map[string]struct {
		with func(*Options)
		want string
	}{
		"module": {func(o *Options) {
			o.Module = func() (compiling.Module, error) { return compiling.Module{}, errors.New("no compiler") }
		}, "error: no compiler"},
		"no theme": {func(o *Options) { o.Theme = fstest.MapFS{} }, "words.tsv"},
		"no page template": {func(o *Options) {
			o.Theme = fstest.MapFS{"words.tsv": {Data: []byte("a\tb\n")},
				"templates/x.html": {Data: []byte("{{define \"home\"}}{{end}}")}}
		},
			"no template named"},
		"no folder": {func(o *Options) { o.Content = o.Content + "/none" }, "cannot open the content folder"},
	} {
		site, faults := buildSite(t, nil, c.with)
		if site != nil ||
			!slices.ContainsFunc(faults, func(f fault.Fault) bool { return strings.Contains(f.Error(), c.want) }) {
			t.Errorf("%s: %v", name, faults)
		}
	}
}

// Inspect finds the same faults as Make, and Indexes indexes the pages.
func TestInspectAndIndexes(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, content())
	var inspected, indexed fault.List
	Inspect(optionsFor(dir), &inspected)
	if inspected.Errors() > 0 {
		t.Fatal(inspected.All())
	}
	found := Indexes(optionsFor(dir), &indexed)
	if hits, _ := found["en"].Find("vat", 5); len(hits) == 0 ||
		!slices.Contains([]string{"en/fill.html", "en/calc/tank.html"}, strings.Split(hits[0].URL, "#")[0]) {
		t.Errorf("a word of the thesaurus finds %v", hits)
	}
	if hits, _ := found["es"].Find("llenar", 5); len(hits) == 0 || !strings.HasPrefix(hits[0].URL, "es/fill.html") {
		t.Errorf("a word of the same stem finds %v", hits)
	}
	if err := os.WriteFile(dir+"/en/bad.md", []byte("---\ntitel: x\n---\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	var again fault.List
	if Inspect(optionsFor(dir), &again); again.Errors() == 0 || Indexes(optionsFor(dir), &fault.List{}) != nil {
		t.Error("a fault is accepted")
	}
}
