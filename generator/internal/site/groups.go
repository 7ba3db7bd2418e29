package site

import (
	"cmp"

	"coursebook/generator/internal/fault"
)

// groups adds the manual's groups of calculators to each language. A calculator that does
// not exist is an error. Where the manual has groups, a calculator in none of them is a
// warning, because in the last group nobody looks for it.
func (a *assembler) groups() {
	m := a.site.Manual
	listed := map[string]bool{}
	for _, g := range m.Groups {
		for _, one := range g.List {
			if a.site.byID[one.ID] == nil {
				a.at(fault.Error, manualFile, one.Line, one.Col, "calculator-unknown",
					a.guess(one.ID, a.calculatorIDs, "coursebook calc lists the calculators"),
					"there is no calculator %q", one.ID)
			}
			listed[one.ID] = true
		}
	}
	var rest []string
	for _, c := range a.site.Calculators {
		if listed[c.ID] {
			continue
		}
		rest = append(rest, c.ID)
		if len(m.Groups) > 0 {
			a.at(fault.Warning, manualFile, m.Lines["calculators"], 0, "calculator-unlisted",
				"add it to the list of a group", "calculator %q is in no group", c.ID)
		}
	}
	for _, l := range a.site.Languages {
		for _, g := range m.Groups {
			in := Group{Title: cmp.Or(g.Title[l.Code], g.Title[m.Languages[0].Code])}
			for _, one := range g.List {
				if a.site.byID[one.ID] != nil {
					in.Calculators = append(in.Calculators, one.ID)
				}
			}
			l.Groups = append(l.Groups, in)
		}
		if len(rest) > 0 {
			l.Groups = append(l.Groups, Group{Calculators: rest})
		}
	}
}
