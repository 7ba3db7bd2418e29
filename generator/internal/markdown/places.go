package markdown

import (
	"bytes"
	"slices"
	"strings"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"

	"github.com/yuin/goldmark/ast"
)

// placeBlock reads a fenced block whose info string begins with the name of a
// place, and leaves a gap for it. It returns false for a block that is code. It
// returns true and places nothing for a bad block, which it reports, and for a
// name that is nearly one of source.BlockNames, which is an error. Words behind
// the name are an error too.
func (w *walker) placeBlock(n *ast.FencedCodeBlock, info string) bool {
	name, rest, more := strings.Cut(info, " ")
	if !slices.Contains(source.BlockNames, name) {
		if near, ok := fault.Nearest(name, source.BlockNames); ok {
			w.errorAt(n.Pos(), "block-unknown", "did you mean "+near+"?", "unknown block %q", clip(name))
			return true
		}
		return false
	}
	if more {
		w.errorAt(n.Info.Segment.Start+len(name)+1, "block-extra", "put settings between the fences",
			"%q after the name of the block", clip(rest))
	}
	if p, ok := w.readPlace(name, w.blockOf(n)); ok {
		p.Line = w.line(n.Pos())
		w.gap(place, len(w.page.Places))
		w.page.Places = append(w.page.Places, p)
	}
	return true
}

// blockOf returns the lines between the fences with their line and indent in the
// file.
func (w *walker) blockOf(n *ast.FencedCodeBlock) source.Block {
	lines := n.Lines()
	b := source.Block{Path: w.file.Path, Line: w.line(n.Pos()) + 1, Body: lines.Value(w.src)}
	if lines.Len() > 0 {
		start := lines.At(0).Start
		b.Line = w.line(start)
		begin := bytes.LastIndexByte(w.src[:start], '\n') + 1
		b.Indent = utf8.RuneCount(w.src[begin:start])
	}
	return b
}

// readPlace parses the block of the place with this name. It adds its errors to
// the faults and returns false if there is one. Any name but those of the other
// kinds is read as questions. It adds pictures of the block to the page.
func (w *walker) readPlace(name string, b source.Block) (page.Place, bool) {
	p := page.Place{Kind: page.PlaceKind(name)}
	switch p.Kind {
	case page.Rules:
		return p, source.ParseRules(b, w.faults)
	case page.Calculator:
		c, ok := source.ParseCalculator(b, w.faults)
		p.Calculator, p.Lines = c.ID, c.Lines
		p.Set = w.inputsOf(c.Set)
		return p, ok
	case page.Table:
		t, ok := source.ParseTable(b, w.faults)
		p.Calculator, p.Table, p.Lines = t.Calculator, t.Table, t.Lines
		return p, ok
	case page.Figure:
		f, ok := source.ParseFigure(b, w.faults)
		p.File, p.Calculator, p.Alt, p.Caption, p.Lines = f.File, f.Calculator, f.Alt, f.Caption, f.Lines
		if ok && p.File != "" {
			w.page.Pictures = append(w.page.Pictures,
				page.Picture{File: p.File, Alt: p.Alt, Line: f.Lines["file"], Col: b.Indent + 1})
		}
		p.Caption = w.ruled(p.Caption, f.Lines["caption"])
		w.plain.WriteString(p.Caption + "\n")
		w.measured(f.Lines["caption"], p.Caption)
		return p, ok
	case page.Example:
		e, ok := source.ParseExample(b, w.faults)
		p.Title, p.Calculator, p.Set, p.Lines = e.Title, e.Calculator, w.inputsOf(e.Set), e.Lines
		p.Steps, p.Hide = w.ruledAll(e.Steps, e.Lines["steps"]), e.Hide
		w.measured(e.Lines["steps"], e.Steps...)
		return p, ok
	}
	all, ok := source.ParseQuestions(b, w.faults)
	for _, q := range all {
		q.Ask, q.Why, q.Answer = w.ruled(q.Ask, q.Line), w.ruled(q.Why, q.Line), w.ruled(q.Answer, q.Line)
		q.Choices, q.Order = w.ruledAll(q.Choices, q.Line), w.ruledAll(q.Order, q.Line)
		p.Questions = append(p.Questions, w.questionOf(q))
		// choices are scraps, which would make the rest look simpler
		w.measured(q.Line, q.Ask, q.Why)
		w.measured(q.Line, q.Order...)
		if q.Figure != "" {
			w.page.Pictures = append(w.page.Pictures,
				page.Picture{File: q.Figure, Alt: q.Alt, Line: q.Lines["figure"], Col: b.Indent + 3})
		}
	}
	return p, ok
}

// measured adds each text of a block to the prose that is measured for the reading
// grade, an amount in it as one word, as in running text. line is the file's line;
// an empty text is skipped.
func (w *walker) measured(line int, texts ...string) {
	if !w.wantProse {
		return
	}
	for _, text := range texts {
		w.prose.Reset()
		at := 0
		for a, ok := w.finder.Next(text, 0, true); ok; a, ok = w.finder.Next(text, at, true) {
			w.prose.WriteString(text[at:a.Start] + "0")
			at = a.End
		}
		w.prose.WriteString(text[at:])
		if w.prose.Len() > 0 {
			w.page.Prose = append(w.page.Prose, page.Prose{Text: w.prose.String(), Line: line})
		}
	}
}

// inputsOf converts settings to inputs of the model in the same order; nil for
// none. An input rule:ID has the amount of that house rule; an unknown rule is an
// error and the input stays as written.
func (w *walker) inputsOf(set []source.Setting) []page.Input {
	var list []page.Input
	for _, s := range set {
		text := s.Text
		if id, ok := strings.CutPrefix(text, ruleScheme); ok {
			if r, known := w.rules[id]; known {
				text = r.Amount
			} else {
				w.ruleAmount(id, "", s.Line, s.Col)
			}
		}
		list = append(list, page.Input{Path: s.Name, Text: text, Line: s.Line, Col: s.Col})
	}
	return list
}

// questionOf converts a question to that of the model. Its number is nil for a
// question without a calculator; the right choice counts from 0, and is -1 without
// choices.
func (w *walker) questionOf(q source.Question) page.Question {
	p := page.Question{Ask: q.Ask, Choices: q.Choices, Ordered: q.Ordered != "", Answer: q.Right - 1, Words: q.Answer,
		Order: q.Order, Picture: q.Figure, Alt: q.Alt, Why: q.Why, See: q.See, Line: q.Line, Lines: q.Lines}
	if q.Calculator != "" {
		p.Number = &page.Number{Calculator: q.Calculator, Vary: q.Vary, Set: w.inputsOf(q.Set), Answer: q.Answer,
			Tolerance: q.Tolerance}
	}
	return p
}
