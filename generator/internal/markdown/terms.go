package markdown

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
		b.out.WriteByte('>')
		b.out.WriteString(escapeText(text[start:end]))
		b.out.WriteString("</a>")
		done = end
	}
	b.out.WriteString(escapeText(text[done:]))
}
