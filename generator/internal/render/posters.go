package render

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
func posters(m *Manual, l *site.Language) ([]theme.Poster, error) {
	var list []theme.Poster
	for _, named := range m.Site.Manual.Posters {
		if e, ok := m.Site.In(l, named.Slug); ok {
			p, err := poster(m, e)
			if err != nil {
				return nil, err
			}
			list = append(list, p)
		}
	}
	return list, nil
}

func poster(m *Manual, e site.Entry) (theme.Poster, error) {
	p := e.Page
	v := theme.Poster{Title: p.Header.Title, Lang: langOf(e), Caution: firstCaution(m, p), Revised: revisedOf(m, p)}
	shown := p.Steps[:min(len(p.Steps), stepsOnPoster)]
	for _, s := range shown {
		v.Steps = append(v.Steps, theme.PosterStep{Text: fewWords(p, s), Hold: s.Hold})
	}
	v.More = len(p.Steps) - len(shown)
	if m.Site.Manual.Address == "" {
		return v, nil
	}
	v.Address = addressOf(m, p)
	c, err := qr.New(v.Address)
	if err != nil {
		return v, err
	}
	v.Code = theme.Code{Side: c.Side, Width: max(codeWidth, c.Side*leastModule), Path: c.Path}
	return v, nil
}

// fewWords is a step's lead, or its first sentence where it has none. A hold
// point gets further sentences up to lengthOfHold: its lead does not name who
// holds whom.
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
func checkPosters(m *Manual, faults *fault.List) {
	if m.Site.Manual.Address == "" {
		return
	}
	for _, named := range m.Site.Manual.Posters {
		p := m.Site.Page(m.Site.Languages[0].Code, named.Slug)
		if p == nil {
			continue // reported by package site
		}
		if n := len(addressOf(m, p)); n > densest {
			warn(
				m,
				faults,
				"manual.yaml",
				named.Line,
				"poster-dense",
				fmt.Sprintf(
					"the page's address has %d bytes; beyond %d its code on the poster is so fine that dirt spoils it",
					n,
					densest,
				),
				"give the site a shorter address, or the page a shorter name",
			)
		}
	}
}

// addressOf is the address of a page on paper: complete where the manual names
// its own, else from the site's root.
func addressOf(m *Manual, p *site.Page) string { return m.Site.Manual.Address + p.Path }
