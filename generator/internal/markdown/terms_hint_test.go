package markdown

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// The hint of a term is the whole definition where it is short, else its beginning, cut
// between words.
func TestHint(t *testing.T) {
	long := "la hora después de la cual no se gira ningún puntal de un muro. Cada muro tiene la suya."
	for text, want := range map[string]string{
		"":                         "",
		"short definition":         "short definition",
		long:                       "la hora después de la cual no se gira…",
		strings.Repeat("x", 60):    strings.Repeat("x", mostHint) + "…",
		strings.Repeat("ñ", 40):    strings.Repeat("ñ", 40),
		strings.Repeat("ab, ", 20): strings.TrimRight(strings.Repeat("ab, ", 10), ", ") + "…",
	} {
		got := hint(text)
		if got != want || utf8.RuneCountInString(got) > mostHint+1 {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
