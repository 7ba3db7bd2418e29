package source

import (
	"slices"

	"go.yaml.in/yaml/v3"
)

// Rule is the amount of one house rule with its words and its basis.
type Rule struct {
	// ID is the declared rule's.
	ID string
	// Amount is a number with its unit, as pages write it: 2 ft.
	Amount string
	// Title says in each language what the rule is about.
	Title map[string]string
	// Words are the phrases of each language beside which a bare figure of the same
	// dimension is taken for this rule; may be empty.
	Words map[string][]string
	// Basis says in each language where the amount is from.
	Basis map[string]string
	// Line and Col locate the amount in the file.
	Line, Col int
}

// rules reads the list of house rules. Whether a rule is declared, and whether its amount
// is within the published limit, is checked by package site.
func (p *manualParser) rules(into *[]Rule) func(*yaml.Node) {
	seen := map[string]int{}
	return func(n *yaml.Node) {
		p.items(n, "rules", func(item *yaml.Node) {
			r := Rule{Line: item.Line, Col: item.Column}
			p.mapping(item, "rule", []key{
				{"id", true, p.newID("rule", &r.ID, seen)},
				{"amount", true, func(n *yaml.Node) {
					r.Line, r.Col = n.Line, n.Column
					p.written("amount", &r.Amount)(n)
				}},
				{"title", true, p.texts("title", &r.Title)},
				{"words", false, p.phrases(&r.Words)},
				{"basis", true, p.texts("basis", &r.Basis)},
			})
			if r.ID != "" && r.Amount != "" {
				*into = append(*into, r)
			}
		})
	}
}

// phrases reads a list of phrases for each language.
func (p *manualParser) phrases(into *map[string][]string) func(*yaml.Node) {
	return func(n *yaml.Node) {
		if n.Kind != yaml.MappingNode {
			p.wrongType(n, "words", "a list for each language", "write words: {en: [depth of a lift]}")
			return
		}
		*into = map[string][]string{}
		p.pairs(n, func(k, v *yaml.Node) {
			var list []string
			p.list("words in "+clip(k.Value), &list)(v)
			(*into)[k.Value] = list
		})
		p.localized = append(p.localized, localized{"words", n})
	}
}

// FindRule returns the rule with an ID; nil where the manual has none.
func (m *Manual) FindRule(id string) *Rule {
	i := slices.IndexFunc(m.Rules, func(r Rule) bool { return r.ID == id })
	if i < 0 {
		return nil
	}
	return &m.Rules[i]
}
