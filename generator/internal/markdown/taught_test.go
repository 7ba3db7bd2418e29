package markdown

import (
	"slices"
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"
)

// A word of the first language that a page of another one teaches has its language, so
// that it is read aloud in it. Other emphasis has none.
func TestTaughtWords(t *testing.T) {
	const text = "La bomba (*pump*) y *esto*, (*a* b), (**c**).\n"
	for _, c := range []struct{ taught, want string }{
		{"en", `(<em lang="en">pump</em>) y <em>esto</em>, (<em>a</em> b), (<strong>c</strong>)`},
		{"", `(<em>pump</em>) y <em>esto</em>, (<em>a</em> b), (<strong>c</strong>)`},
	} {
		var faults fault.List
		d := Parse(source.File{Path: "es/test.md", Data: []byte(header + text), Kind: source.Page},
			Language{Taught: c.taught}, &faults)
		if html := d.html; !strings.Contains(html, c.want) {
			t.Errorf("taught %q: %s, want %s", c.taught, html, c.want)
		}
	}
}

// A glossary tells its own other names from those in the language that is taught. Both
// are other names for the search, and only the second have the other language.
func TestTaughtNamesOfTerms(t *testing.T) {
	const head = "---\ntitle: Palabras\nsummary: Qué quieren decir.\nkind: glossary\n---\n\n"
	for _, c := range []struct {
		entry string
		also  []string
		text  string
		html  string
	}{
		{"**Forma** (también: molde, caja; en inglés: *form, mold*): da forma.",
			[]string{"molde", "caja", "form", "mold"}, "da forma.",
			`(también: molde, caja; en inglés: <em lang="en">form, mold</em>): da forma.`},
		{"**Amarre** (en inglés: *tie*): junta dos caras.", []string{"tie"}, "junta dos caras.",
			`(en inglés: <em lang="en">tie</em>): junta`},
		{"**Muro** (también: pared): va parado.", []string{"pared"}, "va parado.", "(también: pared): va"},
		{"**Hilo** (en la obra; en inglés: *line*): cordón.", nil, "(en la obra; en inglés: line): cordón.",
			"(en la obra; en inglés:"},
	} {
		var faults fault.List
		d := Parse(source.File{Path: "es/palabras.md", Data: []byte(head + "- " + c.entry + "\n"), Kind: source.Page},
			Language{Taught: "en"}, &faults)
		if len(d.Page.Terms) != 1 {
			t.Fatalf("%s: %d terms, want 1", c.entry, len(d.Page.Terms))
		}
		if got := d.Page.Terms[0]; !slices.Equal(got.Also, c.also) || got.Text != c.text {
			t.Errorf("%s: other names %q, definition %q; want %q, %q", c.entry, got.Also, got.Text, c.also, c.text)
		}
		if !strings.Contains(d.html, c.html) {
			t.Errorf("%s: %s, want %s", c.entry, d.html, c.html)
		}
	}
}
