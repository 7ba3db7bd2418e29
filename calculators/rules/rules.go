// Package rules declares the house rules: the crew's own numbers, such as the depth of
// a lift. A rule is declared with its dimension, its direction and the published limit
// that it must not pass. Its amount, its words and its basis are in manual.yaml, so
// that another contractor changes one line and his whole manual follows.
package rules

import "coursebook/calculators/calc"

// Rule is one declared house rule.
type Rule = calc.Rule

// The directions of a rule.
const (
	AtMost  = calc.AtMost
	AtLeast = calc.AtLeast
)

// Find returns the rule with an ID; nil if there is none.
func Find(list []*Rule, id string) *Rule { return calc.FindRule(list, id) }
