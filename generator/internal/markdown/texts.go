package markdown

import (
	"bytes"
	"slices"

	"coursebook/generator/internal/page"
)

// The texts of a page's sections, steps, checks, cautions and amounts all stand
// in its plain text. While a page is walked only their places are noted; at the
// end the text is made once and each takes its part of it.

// span is a stretch of the page's plain text.
type span struct{ from, to int32 }

func (s span) of(text string) string { return text[s.from:s.to] }

// since is the plain text written behind a mark; behind the last heading, where
// one came in between, for that begins a text of its own.
func (w *walker) since(mark int) span {
	from := max(mark, w.begin)
	text := w.plain.Bytes()[from:]
	kept := bytes.TrimSpace(text)
	if len(kept) > 0 {
		from += cap(text) - cap(kept) // what was trimmed in front
	}
	return span{int32(from), int32(from + len(kept))}
}

// textAt is the text of a span while the page is being walked.
func (w *walker) textAt(s span) string { return string(w.plain.Bytes()[s.from:s.to]) }

// endSection closes the section of text being read.
func (w *walker) endSection() {
	text := w.since(0)
	if text.from < text.to || w.section.Title != "" {
		w.all.sections = append(w.all.sections, w.section)
		w.all.spans.sections = append(w.all.spans.sections, text)
	}
	w.begin = w.plain.Len()
}

// fillTexts makes the page's text and gives each part of the page its own.
func (w *walker) fillTexts() {
	text := w.plain.String()
	p := &w.page
	p.Links, p.Sections, p.Steps, p.Checks = slices.Clone(w.all.links), slices.Clone(w.all.sections), slices.Clone(w.all.steps), slices.Clone(w.all.checks)
	p.Amounts = slices.Clone(w.all.amounts)
	for i, s := range w.all.spans.sections {
		p.Sections[i].Text = s.of(text)
	}
	for i, s := range w.all.spans.steps {
		p.Steps[i].Text = s.of(text)
	}
	for i, s := range w.all.spans.checks {
		p.Checks[i].Text = s.of(text)
	}
	for i, s := range w.all.spans.cautions {
		p.Cautions[i].Text = s.of(text)
	}
	for i, s := range w.all.spans.amounts {
		p.Amounts[i].Text = s.of(text)
	}
}

// lists are those of a page that are long, and the places of their texts.
type lists struct {
	links    []page.Link
	sections []page.Section
	steps    []page.Step
	checks   []page.Check
	amounts  []page.Amount
	spans    spans
}

// spans are the places of the texts, each list beside the one of the page.
type spans struct{ sections, steps, checks, cautions, amounts []span }

// emptied are the lists with their room kept. What the page was given are
// copies.
func (l lists) emptied() lists {
	s := l.spans
	return lists{l.links[:0], l.sections[:0], l.steps[:0], l.checks[:0], l.amounts[:0],
		spans{s.sections[:0], s.steps[:0], s.checks[:0], s.cautions[:0], s.amounts[:0]}}
}
