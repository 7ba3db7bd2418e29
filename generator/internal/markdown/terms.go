package markdown

import (
	"strings"
	"unicode/utf8"
)

// mostHint is how many characters of a term's definition a link shows under the pointer.
// The rest is a touch away in the glossary, and a page has a budget.
const mostHint = 40

// hint returns the beginning of a definition, whole words up to mostHint characters and
// an ellipsis; a shorter definition whole.
func hint(definition string) string {
	if utf8.RuneCountInString(definition) <= mostHint {
		return definition
	}
	cut := string([]rune(definition)[:mostHint])
	if at := strings.LastIndexByte(cut, ' '); at > 0 {
		cut = cut[:at]
	}
	return strings.TrimRight(cut, " ,;:.") + "…"
}

// terms writes running text; the first use of each glossary term on the page links
// to the glossary. Without terms in the resolution it writes the text alone.
func (b *body) terms(text string) {
	if b.r.Terms == nil {
		b.out.WriteString(escapeText(text))
		return
	}
	all := b.r.Terms.Terms()
	done := 0
	for at := 0; ; {
		start, end, n := b.r.Terms.Next(text, at)
		if start < 0 {
			break
		}
		at = end
		if b.seen[n] {
			continue
		}
		if b.seen == nil {
			b.seen = map[int]bool{}
		}
		b.seen[n] = true
		b.out.WriteString(escapeText(text[done:start]))
		b.out.WriteString(`<a class="term"`)
		b.attribute("href", b.r.Glossary+all[n].ID)
		b.attribute("title", hint(all[n].Text))
		b.out.WriteByte('>')
		b.out.WriteString(escapeText(text[start:end]))
		b.out.WriteString("</a>")
		done = end
	}
	b.out.WriteString(escapeText(text[done:]))
}
