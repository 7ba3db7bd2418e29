package markdown

import (
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
