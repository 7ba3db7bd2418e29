package site

import (
	"strconv"
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
)

// See returns the page that explains a question, in the language of p or the
// default one. It is zero if the question names none or one that does not exist.
func (s *Site) See(p *Page, q page.Question) Entry {
	e, _ := s.In(p.Language, q.See)
	return e
}

// QuestionIDs returns the IDs, in order, under which a reader's answers to a
// page's questions are stored: slug, number from 1, and mark. The mark is that of
// the page in the default language if that has as many questions, so that answers
// are valid in every language.
func (s *Site) QuestionIDs(p *Page) []string {
	marked := p.Questions()
	twin := s.pages[key{s.Languages[0].Code, p.Slug}]
	if twin != nil && len(twin.Questions()) == len(marked) {
		marked = twin.Questions()
	}
	ids := make([]string, len(marked))
	for i, q := range marked {
		ids[i] = p.Slug + "." + strconv.Itoa(i+1) + "." + q.Mark()
	}
	return ids
}

// question adds an error for a page that the question names and that does not
// exist, and checks its calculator.
func (a *assembler) question(p *Page, q *page.Question) {
	if q.See != "" {
		if _, ok := a.site.In(p.Language, q.See); !ok {
			a.at(fault.Error, p.File, q.Lines["see"], 0, "see-unknown",
				a.guess(q.See, func() []string { return a.slugs(p.Language) }, "name a page's file without .md"),
				"no page %q", q.See)
		}
	}
	if q.Number != nil {
		a.number(p, q)
	}
}

// Drill returns the drill of a number question. It converts the author's numbers
// from the decimal mark of the page's language to points. The calculator of the
// question must exist.
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

// number checks a number question key by key, so that an error has the line of its
// key. It adds the first error only.
func (a *assembler) number(p *Page, q *page.Question) {
	n := q.Number
	if a.site.byID[n.Calculator] == nil {
		a.noCalculator(p, q.Lines["calculator"], n.Calculator)
		return
	}
	drill := a.site.Drill(p, n)
	report := func(key string, d calc.Drill, hint string) (bad bool) {
		text := d.Problem()
		if text != "" {
			a.at(fault.Error, p.File, q.Lines[key], 0, "question-"+key, hint, "%s", strings.TrimSuffix(text, "."))
		}
		return text != ""
	}
	takes := "see what it takes: coursebook calc " + n.Calculator + " -h"
	d := calc.Drill{Of: drill.Of, Answer: drill.Answer, Tolerance: "1 %"}
	if report("answer", d, takes) {
		return
	}
	d.Tolerance = drill.Tolerance
	if report("tolerance", d, "write a share of the answer, 2 %, or an amount with its unit") {
		return
	}
	d.Set = drill.Set
	if report("set", d, takes) {
		return
	}
	for _, path := range drill.Vary {
		d.Vary = []string{path}
		if report("vary", d, takes) {
			return
		}
	}
	a.trySamples(p, q, drill)
}

// trialSamples is the number of samples of a question that a build tries in each
// system of units. A sample without a result would fail for a reader too.
const trialSamples = 8

// trySamples adds an error if one of trialSamples samples of a question has no
// result in either system of units.
func (a *assembler) trySamples(p *Page, q *page.Question, d calc.Drill) {
	for seed := range uint64(trialSamples) {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			if _, _, ok := d.Sample(seed, sys); !ok {
				a.at(fault.Error, p.File, q.Lines["vary"], 0, "question-vary",
					"let fewer inputs vary, or set others that fit them", "fresh values give %s no result too often",
					d.Of.ID)
				return
			}
		}
	}
}

// covered adds an error if an example shows no step of its calculator. Inputs that
// are refused are reported by inputs.
func (a *assembler) covered(p *Page, pl *page.Place, c *calc.Calculator) {
	in, notes := calc.Read(c, Entries(pl.Set), quantity.Style{Mark: p.Language.Mark})
	if len(notes) > 0 {
		return // reported by inputs
	}
	steps := len(calc.Run(c, in).Steps)
	switch {
	case steps == 0:
		a.at(fault.Error, p.File, pl.Lines["calculator"], 0, "example-steps", "write steps: and a list instead",
			"calculator %q shows no steps", c.ID)
	case pl.Hide >= steps:
		a.at(fault.Error, p.File, pl.Lines["hide"], 0, "example-hidden", "leave at least the first step in sight",
			"example covers %d of %d steps", pl.Hide, steps)
	}
}
