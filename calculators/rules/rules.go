// Package rules declares the house rules: the crew's own numbers, such as the depth of
// a lift. A rule is declared with its dimension, its direction and the published limit
// that it must not pass. Its amount, its words and its basis are in manual.yaml, so
// that another contractor changes one line and his whole manual follows.
package rules

import (
	"strings"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// Direction is the direction in which an amount is stricter.
type Direction uint8

// The directions.
const (
	AtMost  Direction = iota // a smaller amount is stricter
	AtLeast                  // a larger amount is stricter
)

// Rule is one declared house rule.
type Rule struct {
	ID        string // lower-case letters, digits and hyphens; the name in manual.yaml and on pages
	Display   *quantity.Display
	Direction Direction
	// Limit is the published limit as a reader of US units types it: "4 ft". It is
	// empty where no document gives one.
	Limit string
	// Source is the document of the limit; zero without a limit.
	Source calc.Source
}

// Parse returns an amount in SI. The amount has a unit, unless the rule is a plain
// number, and may end in the point of an abbreviation: "6 in.". Any other text gives an
// error.
func (r *Rule) Parse(amount string, mark quantity.Mark) (si float64, err *quantity.ParseError) {
	return quantity.Parse(strings.TrimSuffix(amount, "."), *r.Display, quantity.Style{Mark: mark})
}

// Looser reports whether an amount in SI passes the published limit: more than the limit
// of a rule AtMost, less than that of a rule AtLeast. The limit itself is allowed. It is
// false where there is no limit.
func (r *Rule) Looser(si float64) bool {
	if r.Limit == "" {
		return false
	}
	limit, err := r.Parse(r.Limit, quantity.Point)
	if err != nil {
		panic("rules: the limit of " + r.ID + ": " + err.Error())
	}
	if r.Direction == AtLeast {
		return calc.Under(si, limit)
	}
	return calc.Over(si, limit)
}

// Find returns the rule with an ID; nil where there is none.
func Find(list []*Rule, id string) *Rule {
	for _, r := range list {
		if r.ID == id {
			return r
		}
	}
	return nil
}
