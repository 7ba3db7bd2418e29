package build

import (
	"fmt"
	"html/template"
	"strings"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/qr"
	"coursebook/generator/internal/readability"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

const (
	// stepsOnPoster is as many as are read in passing.
	stepsOnPoster = 7
	// lengthOfHold is how long a hold point may get, in bytes, by more than one
	// sentence.
	lengthOfHold = 110
	// codeWidth is the usual width of a code on a poster, in mm: read from some
	// 0.6 m, for a phone reads a code from ten times its width.
	codeWidth = 62
	// leastModule is the least width of a module in print, in mm.
	leastModule = 1
	// densest is the length of an address in bytes beyond which a code gets
	// finer than our posters' walls allow: version 6 at level Q (ISO/IEC
	// 18004:2015, table 7).
	densest = 74
)

// posters are the posters of a language.
func (b *builder) posters(l *site.Language) []theme.Poster {
	var list []theme.Poster
	for _, named := range b.site.Manual.Posters {
		if e, ok := b.site.In(l, named.Slug); ok {
			list = append(list, b.poster(e))
		}
	}
	return list
}

func (b *builder) poster(e site.Entry) theme.Poster {
	p := e.Page
	v := theme.Poster{Title: p.Header.Title, Lang: langOf(e), Caution: b.firstCaution(p), Revised: b.revisedOf(p)}
	shown := p.Steps[:min(len(p.Steps), stepsOnPoster)]
	for _, s := range shown {
		v.Steps = append(v.Steps, theme.PosterStep{Text: fewWords(p, s), Hold: s.Hold})
	}
	v.More = len(p.Steps) - len(shown)
	if b.site.Manual.Address == "" {
		return v
	}
	v.Address = b.addressOf(p)
	c, err := qr.New(v.Address)
	if err != nil {
		b.fail(err)
		return v
	}
	v.Code = theme.Code{Side: c.Side, Width: max(codeWidth, c.Side*leastModule), Path: c.Path}
	return v
}

// fewWords is a step's lead, or its first sentence where it has none. A hold
// point is said in more words, for its lead alone does not say who holds whom.
func fewWords(p *site.Page, s page.Step) template.HTML {
	if s.Lead > 0 && !s.Hold {
		return line(p, s.Text[:s.Lead], 0)
	}
	most := 0
	if s.Hold {
		most = lengthOfHold
	}
	few := s.Text[:s.Lead]
	for i, sentence := range readability.Sentences(s.Text[s.Lead:]) {
		if i > 0 && len(few)+len(sentence) > most {
			break
		}
		few = strings.TrimSpace(few + " " + sentence)
	}
	return line(p, few, s.Lead)
}

// checkPosters warns of an address that makes a dense code.
func (b *builder) checkPosters(faults *fault.List) {
	m := b.site.Manual
	if m.Address == "" {
		return
	}
	for _, named := range m.Posters {
		p := b.site.Page(b.site.Languages[0].Code, named.Slug)
		if p == nil {
			continue // said already
		}
		if n := len(b.addressOf(p)); n > densest {
			b.warn(faults, "manual.yaml", named.Line, "poster-dense",
				fmt.Sprintf("the page's address has %d bytes; beyond %d its code on the poster is so fine that dirt spoils it", n, densest),
				"give the site a shorter address, or the page a shorter name")
		}
	}
}

// addressOf is where a page will stand.
func (b *builder) addressOf(p *site.Page) string { return b.site.Manual.Address + p.Path }
