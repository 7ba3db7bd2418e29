package terms

import (
	"regexp"
	"slices"
	"strings"
)

// shown lists the keys of headers and of fenced blocks whose values readers see as prose.
// Words of the search are not in it: a reader may type any word. Nor are titles of works.
var shown = []string{"title", "summary", "when", "time", "gear", "alt", "caption", "ask", "choices", "order", "why"}

var (
	keyLine = regexp.MustCompile(`^[ -]*([a-z][a-z-]*):(\s|$)`)
	// manualText matches a language in the manual's file with its text, which may be one of
	// several between braces.
	manualText = regexp.MustCompile(`(?m)^[ -]*([a-z]{2,3}(?:-[a-z0-9]+)*): +("[^"\n]*"|[^\s"\[{].*)` +
		`|[{,] *([a-z]{2,3}(?:-[a-z0-9]+)*): +("[^"\n]*"|[^\s"\[{][^\n{},]*)`)
	// hidden matches what a reader does not see: the target of a link, an anchor, code, a
	// comment; and the other names of a thing, which a glossary lists in round brackets.
	hidden = regexp.MustCompile("\\]\\([^)]*\\)|\\{#[^}]*\\}|`[^`]*`|\\((also|también|en inglés): [^)]*\\)")
)

// PageText returns the source of a page with all that is no prose in its language
// blanked, byte by byte, so that every word keeps its line and column.
func PageText(data string) string {
	lines := strings.SplitAfter(data, "\n")
	header, fence, keep := false, false, true
	for i, line := range lines {
		bare := strings.TrimSpace(line)
		switch {
		case bare == "---" && (i == 0 || header):
			header = i == 0
			keep = !header
			lines[i] = blank(line)
			continue
		case strings.HasPrefix(bare, "```"):
			fence = !fence
			keep = true
			lines[i] = blank(line)
			continue
		}
		if header || fence {
			if m := keyLine.FindStringSubmatchIndex(line); m != nil {
				keep = slices.Contains(shown, line[m[2]:m[3]])
				line = blank(line[:m[1]]) + line[m[1]:]
			}
		} else {
			keep = true
		}
		if !keep {
			line = blank(line)
		}
		lines[i] = hidden.ReplaceAllStringFunc(line, blank)
	}
	return strings.Join(lines, "")
}

// ManualText returns the source of a manual's file with all but the texts of a language
// blanked, byte by byte. Lists of words to look for are no texts of the screen.
func ManualText(data, lang string) string {
	out := []byte(blank(data))
	for _, m := range manualText.FindAllStringSubmatchIndex(data, -1) {
		if m[2] < 0 {
			m = m[4:] // between braces
		}
		if data[m[2]:m[3]] == lang {
			copy(out[m[4]:m[5]], data[m[4]:m[5]])
		}
	}
	return string(out)
}

// blank returns as many blanks as s has bytes; line feeds stay.
func blank(s string) string {
	b := []byte(s)
	for i := range b {
		if b[i] != '\n' {
			b[i] = ' '
		}
	}
	return string(b)
}
