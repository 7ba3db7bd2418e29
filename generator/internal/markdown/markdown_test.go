package markdown

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// header is put before a case that has none, so that cases stay short.
const header = "---\ntitle: Test page\nkind: reference\n---\n"

// parse parses a case as page en/test.md, or es/test.md where its name ends
// in -es. A case may bring its own header.
func parse(name, text string, faults *fault.List) *Document {
	lang := "en"
	if strings.HasSuffix(name, "-es") {
		lang = "es"
	}
	if !strings.HasPrefix(text, "---\n") {
		text = header + text
	}
	return Parse(source.File{Path: lang + "/test.md", Data: []byte(text), Kind: source.Page},
		Language{Mark: quantity.Point}, faults)
}

// resolved is a resolution in which everything is found: links lead to what
// they name, pictures have a size.
func resolved(d *Document) page.Resolution {
	r := page.Resolution{Pictures: map[string]page.Image{}, Glossary: "glossary.html#"}
	for _, l := range d.Page.Links {
		t := page.Target{Href: strings.Replace(l.Target, ".md", ".html", 1), Missing: l.Target == ""}
		t.Outbound = strings.HasPrefix(l.Target, "https:")
		r.Links = append(r.Links, t)
	}
	for _, p := range d.Page.Pictures {
		r.Pictures[p.File] = page.Image{Src: "../assets/" + p.File, Width: 360, Height: 240}
	}
	if d.Page.Header.Kind != page.Glossary {
		r.Terms = page.NewVocabulary([]page.Term{
			{ID: "lift", Name: "lift", Text: `A layer of concrete, "one round" high.`},
			{ID: "cold-joint", Name: "cold joint", Also: []string{"cold seam"}, Text: "Where old meets new."},
		})
	}
	return r
}

// lines ends where a golden file gets a new line; the HTML itself has none
// between blocks.
var lines = regexp.MustCompile(`</(p|li|h[2-6]|figure|tr|pre|div|aside|blockquote|[uo]l|thead|tbody)>|` +
	`<([uo]l|blockquote|aside|table|thead|tbody)( [^>]*)?>|<[bh]r>`)

// shown is a case's outcome: the HTML, each place in brackets, the model of
// what a test wants to see, and the faults.
func shown(name, text string) string {
	var faults fault.List
	d := parse(name, text, &faults)
	var b strings.Builder
	for _, c := range d.Body(resolved(d)) {
		if c.Place >= 0 {
			p := d.Page.Places[c.Place]
			fmt.Fprintf(&b, "[%s %s%s%s set=%v alt=%q caption=%q questions=%+v]\n", p.Kind, p.Calculator, p.File,
				p.Table, p.Set, p.Alt, p.Caption, p.Questions)
			continue
		}
		if c.Place == Why {
			b.WriteString("[why]\n")
		}
		b.WriteString(lines.ReplaceAllString(c.HTML, "$0\n"))
	}
	model(&b, &d.Page)
	if all := faults.All(); len(all) > 0 {
		b.WriteString("--- faults\n")
		fault.Print(&b, all)
	}
	return b.String()
}

func model(b *strings.Builder, p *page.Page) {
	b.WriteString("--- model\n")
	for _, h := range p.Headings {
		fmt.Fprintf(b, "heading %+v\n", h)
	}
	for _, l := range p.Links {
		fmt.Fprintf(b, "link %+v\n", l)
	}
	for _, x := range p.Pictures {
		fmt.Fprintf(b, "picture %+v\n", x)
	}
	for _, x := range p.Steps {
		fmt.Fprintf(b, "step %+v\n", x)
	}
	for _, x := range p.Checks {
		fmt.Fprintf(b, "check %+v\n", x)
	}
	for _, x := range p.Cautions {
		fmt.Fprintf(b, "caution %+v\n", x)
	}
	for _, x := range p.Terms {
		fmt.Fprintf(b, "term %+v\n", x)
	}
	for _, x := range p.Sections {
		fmt.Fprintf(b, "section %d %s %q %q\n", x.Line, x.ID, x.Title, x.Text)
	}
	for _, x := range p.Prose {
		fmt.Fprintf(b, "prose %d %q\n", x.Line, x.Text)
	}
	for _, x := range p.Amounts {
		fmt.Fprintf(b, "amount %d %q\n", x.Line, x.Text)
	}
}

// TestCases holds every testdata/NAME.md against NAME.html. A golden file
// without a case fails.
func TestCases(t *testing.T) {
	cases, err := filepath.Glob("testdata/*.md")
	if err != nil || len(cases) == 0 {
		t.Fatal("no cases")
	}
	for _, path := range cases {
		name := strings.TrimSuffix(filepath.Base(path), ".md")
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			got := shown(name, string(text))
			golden := "testdata/" + name + ".html"
			if *update {
				if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			want, err := os.ReadFile(golden)
			if err != nil {
				t.Fatal(err)
			}
			if got != string(want) {
				t.Errorf("got\n%s\nwant\n%s", got, want)
			}
		})
	}
	goldens, _ := filepath.Glob("testdata/*.html")
	for _, g := range goldens {
		if !slices.Contains(cases, strings.TrimSuffix(g, ".html")+".md") {
			t.Errorf("%s has no case", g)
		}
	}
}

// Body must not change the document: a page is rendered for the site and for
// the pocket edition.
func TestBodyTwice(t *testing.T) {
	var faults fault.List
	d := parse("x", "A lift, a [link](a.md).\n\n## Part\n", &faults)
	first := d.Body(resolved(d))
	other := resolved(d)
	other.Prefix = "en.x."
	pocket := d.Body(other)
	if again := d.Body(resolved(d)); !slices.Equal(first, again) {
		t.Errorf("first %+v, again %+v", first, again)
	}
	if want := `<h2 id="en.x.part">`; !strings.Contains(pocket[0].HTML, want) {
		t.Errorf("%s lacks %s", pocket[0].HTML, want)
	}
}

func TestMissingLinkStaysText(t *testing.T) {
	var faults fault.List
	d := parse("x", "[gone](gone.md)\n", &faults)
	got := d.Body(page.Resolution{Links: []page.Target{{Missing: true}}})
	if want := "<p><a>gone</a></p>"; len(got) != 1 || got[0].HTML != want {
		t.Errorf("got %+v, want %q", got, want)
	}
}

func TestFallbackLinkNamesItsLanguage(t *testing.T) {
	var faults fault.List
	d := parse("x-es", "[corners](corners.md)\n", &faults)
	got := d.Body(page.Resolution{Links: []page.Target{{Href: "../en/corners.html", Lang: "en"}}})
	want := "<p><a href=\"../en/corners.html\" hreflang=\"en\">corners</a></p>"
	if len(got) != 1 || got[0].HTML != want {
		t.Errorf("got %+v, want %q", got, want)
	}
}

// Browsers pass over spaces and controls in a scheme (WHATWG URL, section
// 4.4), so the check must too.
func TestSchemeOf(t *testing.T) {
	for dest, want := range map[string]string{
		"https://a.example": "https", "JavaScript:x": "javascript", "java\tscript:x": "javascript",
		" javascript:x": "javascript", "\x01javascript:x": "javascript",
		"slug.md": "", "slug.md#a:b": "", "#a:b": "", "calc:wall": "calc", "1a:x": "", "": "",
		"data:text/html,x": "data", "a b:c": "ab",
	} {
		if got := schemeOf(dest); got != want {
			t.Errorf("%q has scheme %q, want %q", dest, got, want)
		}
	}
}

func TestIDs(t *testing.T) {
	s := ids{}
	for _, c := range [][2]string{
		{"Größe", "größe"}, {"Größe", "größe-2"}, {"Привет, мир", "привет-мир"}, {"¿Qué falla?", "qué-falla"}, {"...",
			"part"}, {"!", "part-2"},
		{"Don't stop", "dont-stop"}, {"A  –  B", "a-b"}, {"größe 2", "größe-2-2"}, {"日本", "日本"},
	} {
		if got := s.take(c[0], "part"); got != c[1] {
			t.Errorf("%q gets id %q, want %q", c[0], got, c[1])
		}
	}
}
