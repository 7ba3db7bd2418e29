package site

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"
)

const manualFile = "manual.yaml"

// CheckRules checks the house rules of a manual against their declarations and the
// calculators: every rule is declared, its amount can be read, does not pass the published
// limit, and fits every input that has the rule as its default value; and every rule that
// an input has as its default value is in the manual. It returns the amounts, by ID, of
// the rules that have no fault.
func CheckRules(m source.Manual, file source.File, declared []*rules.Rule, calculators []*calc.Calculator,
	faults *fault.List) map[string]string {
	a := &assembler{faults: faults, files: map[string]source.File{manualFile: file}}
	amounts := map[string]string{}
	for _, r := range m.Rules {
		if a.rule(r, rules.Find(declared, r.ID), declared, calculators) {
			amounts[r.ID] = r.Amount
		}
	}
	reported := map[string]bool{}
	for _, c := range calculators {
		c.RuleFields(func(f calc.Field) {
			if m.FindRule(f.Rule) != nil || reported[f.Rule] {
				return
			}
			reported[f.Rule] = true
			a.at(fault.Error, manualFile, m.Lines["rules"], 0, "rule-missing",
				"add it under rules with id, amount, title and basis",
				"no amount for the house rule %q, which calculator %s uses for %s", f.Rule, c.ID, f.ID)
		})
	}
	return amounts
}

// rule checks one rule of the manual; d is its declaration, nil where there is none. It
// returns false after an error.
func (a *assembler) rule(r source.Rule, d *rules.Rule, declared []*rules.Rule, calculators []*calc.Calculator) bool {
	if d == nil {
		ids := func() []string {
			var ids []string
			for _, d := range declared {
				ids = append(ids, d.ID)
			}
			return ids
		}
		a.at(fault.Error, manualFile, r.Line, r.Col, "rule-unknown",
			a.guess(r.ID, ids, "use one of: "+strings.Join(ids(), ", ")), "no house rule %q is declared", r.ID)
		return false
	}
	si, err := d.Parse(r.Amount, quantity.Point)
	if err != nil {
		a.at(fault.Error, manualFile, r.Line, r.Col, "rule-amount", "write a number with its unit",
			"the amount of the house rule %s: %s", r.ID, strings.TrimSuffix(err.Error(), "."))
		return false
	}
	if d.Looser(si) {
		a.at(fault.Error, manualFile, r.Line, r.Col, "rule-looser",
			"keep "+directionWords[d.Direction]+" "+d.Limit+"; "+d.Source.Title+", "+d.Source.Where.EN(),
			"the house rule %s is %s, which passes the published limit of %s", r.ID, r.Amount, d.Limit)
		return false
	}
	ok := true
	for _, c := range calculators {
		c.RuleFields(func(f calc.Field) {
			if f.Rule != r.ID || !ok {
				return
			}
			if problem := f.RuleProblem(r.Amount); problem != "" {
				ok = false
				a.at(fault.Error, manualFile, r.Line, r.Col, "rule-amount",
					"see what it takes: coursebook calc "+c.ID+" -h",
					"the house rule %s does not fit calculator %s: %s", r.ID, c.ID, strings.TrimSuffix(problem, "."))
			}
		})
	}
	return ok
}

var directionWords = map[calc.Direction]string{rules.AtMost: "at most", rules.AtLeast: "at least"}

// setRulesPage remembers the page of a language that lists the house rules, to which
// their amounts link. A second one is a fault.
func (a *assembler) setRulesPage(p *Page) {
	for _, pl := range p.Places {
		if pl.Kind != page.Rules {
			continue
		}
		if first := p.Language.Rules; first != nil {
			a.at(fault.Error, p.File, pl.Line, 0, "rules-twice", "keep one of the two",
				"%s lists the house rules already", first.File)
			return
		}
		p.Language.Rules = p
	}
}

// RuleAnchor returns the id of a house rule on the page that lists the rules.
func RuleAnchor(id string) string { return "rule-" + id }
