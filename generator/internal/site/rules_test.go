package site_test

import (
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"
)

// The rules of a manual are checked against their declarations, their published limits
// and the inputs that they fill. A fault is at the line of the amount.
func TestCheckRules(t *testing.T) {
	declared := []*rules.Rule{
		{ID: "side", Display: &displays.Height, Limit: "4 ft", Source: calc.Source{Title: "A book", Where: "p. 1"}},
		{ID: "rest", Display: &displays.Minutes, Direction: rules.AtLeast, Limit: "15 min",
			Source: calc.Source{Title: "A book", Where: "p. 2"}},
	}
	tank := calctest.Tank()
	tank.In[0].Usual, tank.In[0].Rule, tank.In[0].Range = "", "side", "1 to 30 ft"
	for _, c := range []struct{ rules, code, text string }{
		{"  - {id: side, amount: 2 ft, title: {en: T}, basis: {en: B}}", "", ""},
		{"  - {id: side, amount: 4 ft, title: {en: T}, basis: {en: B}}", "", ""},
		{"  - {id: side, amount: 1200 mm, title: {en: T}, basis: {en: B}}", "", ""},
		{"  - {id: side, amount: 5 ft, title: {en: T}, basis: {en: B}}", "rule-looser", "published limit of 4 ft"},
		{"  - {id: side, amount: 6 in., title: {en: T}, basis: {en: B}}", "rule-amount",
			"does not fit calculator tank"},
		{"  - {id: side, amount: 2 psf, title: {en: T}, basis: {en: B}}", "rule-amount",
			"the amount of the house rule side"},
		{"  - {id: sied, amount: 2 ft, title: {en: T}, basis: {en: B}}", "rule-unknown", `"sied"`},
		{"", "rule-missing", `"side"`},
		{"  - {id: side, amount: 2 ft, title: {en: T}, basis: {en: B}}\n" +
			"  - {id: rest, amount: 10 min, title: {en: T}, basis: {en: B}}", "rule-looser", "published limit of 15 " +
			"min"},
	} {
		text := "title: {en: T}\nlanguages: [{code: en, name: E, decimal: point}]\nstages: [{id: s, title: {en: S}}]\n"
		if c.rules != "" {
			text += "rules:\n" + c.rules + "\n"
		}
		var faults fault.List
		file := source.File{Path: "manual.yaml", Data: []byte(text)}
		m := source.ParseManual(file.Path, file.Data, &faults)
		amounts := site.CheckRules(m, file, declared, []*calc.Calculator{tank}, &faults)
		var codes []string
		for _, f := range faults.All() {
			codes = append(codes, f.Code)
			if c.rules != "" && f.Code == c.code && (f.Line < 5 || !strings.Contains(f.Source, "amount")) {
				t.Errorf("%s: %s is at line %d: %s", c.rules, f.Code, f.Line, f.Source)
			}
		}
		if c.code == "" {
			if len(codes) > 0 || amounts["side"] == "" {
				t.Errorf("%s: faults %v, amounts %v", c.rules, codes, amounts)
			}
			continue
		}
		i := slices.IndexFunc(faults.All(), func(f fault.Fault) bool { return f.Code == c.code })
		if i < 0 || faults.All()[i].Severity != fault.Error || !strings.Contains(faults.All()[i].Text, c.text) ||
			faults.All()[i].Hint == "" {
			t.Errorf("%s: faults %v, want %s with %q", c.rules, faults.All(), c.code, c.text)
		}
	}
}
