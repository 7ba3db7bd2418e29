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
	// stepsOnPoster is the maximum number of steps on a poster. Beyond fewOnPoster they are
	// in two columns, beyond manyOnPoster in smaller type.
	stepsOnPoster = 20
	fewOnPoster   = 7
	manyOnPoster  = 12
	// lengthOfHold is the maximum length in bytes of a hold point of several sentences.
	lengthOfHold = 110
	// codeWidth is the least width of a QR code on a poster, in mm: a phone reads it from
	// about 0.6 m, ten times its width.
	codeWidth = 62
	// leastModule is the least width of a printed module, in mm.
	leastModule = 1
	// longestAddress is the length of an address in bytes above which a code is too fine for
	// a dirty wall: the capacity of version 6 at level Q (ISO/IEC 18004:2015, table 7).
	longestAddress = 74
)

// posterPages returns the pages of a language that have a poster, without those that do
// not exist.
func posterPages(m *Manual, l *site.Language) []site.Entry {
	var list []site.Entry
	for _, named := range m.Site.Manual.Posters {
		if e, ok := m.Site.In(l, named.Slug); ok {
			list = append(list, e)
		}
	}
	return list
}

// posters returns the posters of a language. It returns the first error of poster.
func posters(m *Manual, l *site.Language) ([]theme.Poster, error) {
	var list []theme.Poster
	for _, e := range posterPages(m, l) {
		p, err := poster(m, e)
		if err != nil {
			return nil, err
		}
		list = append(list, p)
	}
	return list, nil
}

// poster returns the poster of a page: its first stepsOnPoster steps and, if the
// manual has an address, the QR code of the page. An address that is too long for
// a code is an error.
func poster(m *Manual, e site.Entry) (theme.Poster, error) {
	p := e.Page
	v := theme.Poster{Title: p.Header.Title, Lang: langOf(e), Caution: firstCaution(m, p), Revised: revisedOf(m, p)}
	shown := p.Steps[:min(len(p.Steps), stepsOnPoster)]
	for _, s := range shown {
		v.Steps = append(v.Steps, theme.PosterStep{Text: shortStep(p, s), Hold: s.Hold})
	}
	v.More = len(p.Steps) - len(shown)
	v.Many, v.Crowded = len(shown) > fewOnPoster, len(shown) > manyOnPoster
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

// shortStep returns the lead of a step, or its first sentence if it has no lead. A hold
// point has further sentences up to lengthOfHold, because its lead does not name who
// stops the work.
func shortStep(p *site.Page, s page.Step) template.HTML {
	if s.Lead > 0 && !s.Hold {
		return line(p, stopped(s.Text[:s.Lead]), 0)
	}
	limit := 0
	if s.Hold {
		limit = lengthOfHold
	}
	short := s.Text[:s.Lead]
	if s.Lead > 0 {
		short = stopped(short)
	}
	bold := len(short)
	for i, sentence := range readability.Sentences(s.Text[s.Lead:]) {
		if i > 0 && len(short)+len(sentence) > limit {
			break
		}
		short = strings.TrimSpace(short + " " + sentence)
	}
	return line(p, short, bold)
}

// stopped returns a lead as a whole sentence: with a full stop in place of the mark by which
// the step goes on after it.
func stopped(lead string) string {
	said := strings.TrimRight(lead, `"”»)`)
	if said != "" && strings.ContainsAny(said[len(said)-1:], ".!?") {
		return lead
	}
	return strings.TrimRight(lead, ",;: ") + "."
}

// checkPosters adds a warning to faults for each poster whose page has an address
// longer than longestAddress.
func checkPosters(m *Manual, faults *fault.List) {
	if m.Site.Manual.Address == "" {
		return
	}
	for _, named := range m.Site.Manual.Posters {
		p := m.Site.Page(m.Site.Languages[0].Code, named.Slug)
		if p == nil {
			continue // reported by package site
		}
		if n := len(addressOf(m, p)); n > longestAddress {
			warn(m, faults, "manual.yaml", named.Line, "poster-dense",
				fmt.Sprintf("the page's address has %d bytes; beyond %d its code on the poster is so fine "+
					"that dirt spoils it", n, longestAddress),
				"give the site a shorter address, or the page a shorter name")
		}
	}
}

// addressOf returns the address of a page for paper: complete if the manual has an
// address, otherwise relative to the site's root.
func addressOf(m *Manual, p *site.Page) string { return m.Site.Manual.Address + p.Path }
