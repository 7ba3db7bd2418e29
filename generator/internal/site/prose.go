package site

import (
	"strings"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/readability"
	"coursebook/generator/internal/source"
)

// CheckProse adds a warning to faults for each long sentence and each page that is
// hard to read. It is separate from Assemble because it takes as much time, and no
// page of the site depends on it. files are those passed to Assemble.
func (s *Site) CheckProse(files []source.File, faults *fault.List) {
	a := &assembler{site: s, faults: faults, files: map[string]source.File{}, pictures: map[string]bool{}}
	a.readFiles(files)
	for _, p := range s.Pages {
		a.prose(p)
	}
}

// prose adds a warning for each sentence of a page over readability.MaxWords
// words, and for a reading grade beyond its limit; a glossary has no grade.
func (a *assembler) prose(p *Page) {
	blocks := make([]string, len(p.Prose))
	for i, b := range p.Prose {
		blocks[i] = b.Text
		for _, s := range readability.Sentences(b.Text) {
			if n := readability.Words(s); n > readability.MaxWords {
				a.at(fault.Warning, p.File, b.Line, 0, "sentence-long", "make two of it",
					"sentence of %d words, more than %d: %q", n, readability.MaxWords, opening(s))
			}
		}
	}
	if p.Header.Kind != page.Glossary {
		if s := readability.Measure(p.Lang, blocks); s.Hard {
			a.atKey(fault.Warning, p, "title", "reading-hard", "shorten sentences, use shorter words",
				"%s is %.1f; the limit is %.0f", s.Formula, s.Value, s.Limit)
		}
	}
}

// sourced adds a warning if a page has amounts and its header names no source.
func (a *assembler) sourced(p *Page) {
	if len(p.Amounts) > 0 && len(p.Header.Sources) == 0 {
		first := p.Amounts[0]
		a.at(fault.Warning, p.File, first.Line, 0, "unsourced",
			"add sources: to the header, or sources: [common practice]",
			"numbers without a source: %d, the first is %q", len(p.Amounts), first.Text)
	}
}

// opening returns the first five words of a sentence, enough to find it, with an
// ellipsis if it has more.
func opening(s string) string {
	words := strings.Fields(s)
	if len(words) > 5 {
		return strings.Join(words[:5], " ") + " …"
	}
	return strings.Join(words, " ")
}
