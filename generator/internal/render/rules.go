package render

import (
	"cmp"
	"html/template"

	"coursebook/calculators/calc"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/markdown/amount"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/theme"
)

// houseRules returns the house rules of the manual, in its order, with their amounts,
// published limits and bases.
func houseRules(j *Job) []theme.Rule {
	l, first := j.page.Language, j.Site.Languages[0].Code
	finder := amount.New(l.Code, l.Mark)
	shown := func(text string) template.HTML {
		return template.HTML(markdown.Line(markdown.WithMark(text, l.Mark), 0, finder))
	}
	in := func(texts map[string]string) string { return cmp.Or(texts[l.Code], texts[first]) }
	var list []theme.Rule
	for _, r := range j.Site.Manual.Rules {
		d := rules.Find(j.Rules, r.ID)
		v := theme.Rule{Anchor: site.RuleAnchor(r.ID), Title: in(r.Title), Amount: shown(r.Amount),
			AtLeast: d.Direction == rules.AtLeast, Basis: template.HTML(markdown.Line(in(r.Basis), 0, finder))}
		if j.form == site.OneFile {
			v.Anchor = j.page.Anchor() + "." + v.Anchor
		}
		if d.Limit != "" {
			say := calc.Locale{Words: j.Words[l.Code]}.Say
			v.Limit, v.Source, v.Where = shown(d.Limit), d.Source.Title, say(d.Source.Where)
			v.Status = say(d.Source.Status.Text())
		}
		list = append(list, v)
	}
	return list
}
