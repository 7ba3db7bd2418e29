package site

import (
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
)

// See is the page that a question says explains it.
func (s *Site) See(p *Page, q page.Question) Entry {
	e, _ := s.In(p.Language, q.See)
	return e
}

// QuestionIDs name a page's questions in what a reader keeps of the training:
// page, number, and a mark of what is asked. The mark is that of the default
// language's twin, so that answers hold in every language.
func (s *Site) QuestionIDs(p *Page) []string {
	own := p.Questions()
	marked := own
	if twin := s.pages[key{s.Languages[0].Code, p.Slug}]; twin != nil && len(twin.Questions()) == len(own) {
		marked = twin.Questions()
	}
	ids := make([]string, len(own))
	for i, q := range marked {
		ids[i] = p.Slug + "." + strconv.Itoa(i+1) + "." + q.Mark()
	}
	return ids
}

// question checks what a question names.
func (a *assembler) question(p *Page, q *page.Question) {
	if q.See != "" {
		if _, ok := a.site.In(p.Language, q.See); !ok {
			a.at(
				fault.Error,
				p.File,
				q.Lines["see"],
				0,
				"see-unknown",
				a.guess(q.See, func() []string { return a.slugs(p.Language) }, "name a page's file without .md"),
				"no page %q",
				q.See,
			)
		}
	}
	if q.Number != nil {
		a.number(p, q)
	}
}

// Drill is a question of numbers as calc asks it; an author writes in the
// decimal mark of the page's language, a drill in points. The calculator must
// be there.
func (s *Site) Drill(p *Page, n *page.Number) calc.Drill {
	d := calc.Drill{
		Of:        s.byID[n.Calculator],
		Set:       Entries(n.Set),
		Vary:      n.Vary,
		Answer:    n.Answer,
		Tolerance: n.Tolerance,
	}
	if p.Language.Mark == quantity.Point {
		return d
	}
	d.Tolerance = strings.ReplaceAll(d.Tolerance, ",", ".")
	if in, notes := calc.Read(d.Of, d.Set, quantity.Style{Mark: p.Language.Mark}); len(notes) == 0 {
		d.Set = calc.Locale{}.Entries(in)
	}
	return d
}

// number checks a question of numbers part by part, so that a fault has the
// line of its key.
func (a *assembler) number(p *Page, q *page.Question) {
	n := q.Number
	if a.site.byID[n.Calculator] == nil {
		a.noCalculator(p, q.Lines["calculator"], n.Calculator)
		return
	}
	whole := a.site.Drill(p, n)
	slip := func(key string, d calc.Drill, hint string) bool {
		text := d.Problem()
		if text != "" {
			a.at(fault.Error, p.File, q.Lines[key], 0, "question-"+key, hint, "%s", strings.TrimSuffix(text, "."))
		}
		return text != ""
	}
	takes := "see what it takes: coursebook calc " + n.Calculator + " -h"
	d := calc.Drill{Of: whole.Of, Answer: whole.Answer, Tolerance: "1 %"}
	if slip("answer", d, takes) {
		return
	}
	d.Tolerance = whole.Tolerance
	if slip("tolerance", d, "write a share of the answer, 2 %, or an amount with its unit") {
		return
	}
	d.Set = whole.Set
	if slip("set", d, takes) {
		return
	}
	for _, path := range whole.Vary {
		d.Vary = []string{path}
		if slip("vary", d, takes) {
			return
		}
	}
	a.drawn(p, q, whole)
}

// trialDraws is how many draws of a question are tried in each system before
// it is published: one that fails now would fail a reader.
const trialDraws = 8

func (a *assembler) drawn(p *Page, q *page.Question, d calc.Drill) {
	for seed := range uint64(trialDraws) {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			if _, _, ok := d.Sample(seed, sys); !ok {
				a.at(
					fault.Error,
					p.File,
					q.Lines["vary"],
					0,
					"question-vary",
					"let fewer inputs vary, or set others that fit them",
					"fresh values give %s no result too often",
					d.Of.ID,
				)
				return
			}
		}
	}
}

// covered checks that an example leaves a step of its calculator in sight.
func (a *assembler) covered(p *Page, pl *page.Place, c *calc.Calculator) {
	in, notes := calc.Read(c, Entries(pl.Set), quantity.Style{Mark: p.Language.Mark})
	if len(notes) > 0 {
		return // said already
	}
	steps := len(calc.Run(c, in).Steps)
	switch {
	case steps == 0:
		a.at(
			fault.Error,
			p.File,
			pl.Lines["calculator"],
			0,
			"example-steps",
			"write steps: and a list instead",
			"calculator %q shows no steps",
			c.ID,
		)
	case pl.Hide >= steps:
		a.at(
			fault.Error,
			p.File,
			pl.Lines["hide"],
			0,
			"example-hidden",
			"leave at least the first step in sight",
			"example covers %d of %d steps",
			pl.Hide,
			steps,
		)
	}
}
