package listing

import (
	"go/parser"
	"go/token"
	"html"
	"io/fs"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"coursebook/calculators"
	"coursebook/calculators/catalog"
)

const code = `package tank

import "math"

// Cube is V = a³.
//
// Unit: m³. Limits: a > 0 && a < 9. Source: "invented".
func Cube(a float64) float64 {
	return math.Pow(a, 3) // <b>not markup</b>
}

type Box struct{ a float64 }

func (b *Box) Holds() float64 { return Cube(b.a) }

func (b Box) Side() float64 { return b.a }
`

func book() *Book {
	return NewBook(fstest.MapFS{
		"tank/tank.go":      {Data: []byte(code)},
		"tank/tank_test.go": {Data: []byte("package tank\n\nfunc Helper() {}\n")},
		"bad/bad.go":        {Data: []byte("package bad\n\nfunc (")},
	})
}

var tag = regexp.MustCompile(`<[^>]*>`)

// text returns the text of highlighted code, without tags.
func text(markup string) string { return html.UnescapeString(tag.ReplaceAllString(markup, "")) }

func TestFind(t *testing.T) {
	for name, c := range map[string]struct {
		line        int
		first, last string
	}{
		"tank.Cube":      {5, "// Cube is V = a³.", "}"},
		"tank.Box.Holds": {14, "func (b *Box) Holds() float64 { return Cube(b.a) }", ""},
		"tank.Box.Side":  {16, "func (b Box) Side() float64 { return b.a }", ""},
	} {
		l, err := book().Find(name)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		got := strings.TrimSuffix(text(l.HTML), "\n")
		if l.File != "tank/tank.go" || l.Line != c.line || !strings.HasPrefix(got, c.first) ||
			!strings.HasSuffix(got, c.last) {
			t.Errorf("%s: %s:%d\n%s", name, l.File, l.Line, got)
		}
		if !strings.Contains(code, got) {
			t.Errorf("%s: the page shows other code than the source:\n%s", name, got)
		}
	}
}

func TestFindRefuses(t *testing.T) {
	b := book()
	for name, want := range map[string]string{
		"Cube":        "is no package.Function",
		"tank.Sphere": "package tank has no function Sphere",
		"tank.Holds":  "has no function Holds",
		"tank.Helper": "has no function Helper",
		"none.F":      "package none has no function F",
		"bad.F":       "bad.go:3",
	} {
		if l, err := b.Find(name); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v, %+v", name, err, l)
		}
	}
}

// Highlighted code has no style attributes and scripts, which the content security
// policy forbids, and its text is escaped.
func TestHighlight(t *testing.T) {
	for _, language := range []string{"go", "yaml", "no such language", ""} {
		const hostile = "a := \"<script>alert(1)</script>\" // & <b onclick='x'>\n"
		out, err := Highlight(language, hostile)
		if err != nil {
			t.Fatal(err)
		}
		if got := text(out); got != hostile {
			t.Errorf("%s: the reader sees %q", language, got)
		}
		for _, bad := range []string{"style=", "<script", "<b "} {
			if strings.Contains(out, bad) {
				t.Errorf("%s: holds %s: %s", language, bad, out)
			}
		}
	}
	const want = `<span class="code-word">func</span> <span class="code-name">f</span>`
	if out, _ := Highlight("go", "func f() {}"); !strings.Contains(out, want) {
		t.Errorf("no classes in %s", out)
	}
}

// Every formula of the catalog has a function with a comment, and its listing has
// the bytes of the source.
func TestEveryFormulaHasAListing(t *testing.T) {
	b := NewBook(calculators.Sources)
	if c := len(catalog.All()); c < 37 {
		t.Errorf("only %d calculators are listed", c)
	}
	for _, c := range catalog.All() {
		for _, f := range c.Formulas {
			l, err := b.Find(f.Go)
			if err != nil {
				t.Errorf("%s: %v", c.ID, err)
				continue
			}
			data, err := fs.ReadFile(calculators.Sources, l.File)
			if err != nil {
				t.Fatal(err)
			}
			got := text(l.HTML)
			if !strings.Contains(string(data), strings.TrimSuffix(got, "\n")) {
				t.Errorf("%s: the page shows other code than %s", f.Go, l.File)
			}
			if !strings.HasPrefix(got, "//") {
				t.Errorf("%s has no comment", f.Go)
			}
			if _, err := parser.ParseFile(token.NewFileSet(), "", "package p\n"+got, 0); err != nil {
				t.Errorf("%s: what the page shows does not parse: %v", f.Go, err)
			}
		}
	}
}
