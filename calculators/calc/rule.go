package calc

import (
	"strings"

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
	Source Source
	// Firm makes the amount itself the limit where no document gives one: an input that
	// is looser than the amount is refused.
	Firm bool
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
	if r.Direction == AtLeast {
		return Under(si, r.limit())
	}
	return Over(si, r.limit())
}

// HouseAmount returns the amount of the house rule of an input in SI; ok is false where
// the input has none.
func (c Case) HouseAmount(id string) (si float64, ok bool) {
	for _, f := range c.fields {
		if f.ID == id && f.house != nil {
			return f.UsualValue().Num, true
		}
	}
	return 0, false
}

// LooserThanHouse reports whether an input that is set and asked for is looser than the
// amount of its house rule.
func (c Case) LooserThanHouse(id string) bool {
	for i, f := range c.fields {
		if f.ID == id {
			return f.house != nil && c.values[i].Set && c.asked(f) &&
				f.house.past(c.values[i].Num, f.UsualValue().Num, f.Display)
		}
	}
	return false
}

// limit is the published limit in SI. It panics if there is none or if it cannot be read.
func (r *Rule) limit() float64 {
	limit, err := r.Parse(r.Limit, quantity.Point)
	if err != nil {
		panic("calc: the limit of " + r.ID + ": " + err.Error())
	}
	return limit
}

// WithRules returns the calculators with the amounts of the house rules as default
// values. Run then notes an input that is looser than the amount of its rule in declared,
// and refuses one that passes the published limit of that rule. amounts are the amounts
// by the ID of the rule, as a reader of US units types them: "2 ft". A field stays unset
// whose rule has no amount or one that the field cannot read. The calculators given are
// not changed; those without a rule are returned as they are.
func WithRules(list []*Calculator, amounts map[string]string, declared ...*Rule) []*Calculator {
	resolved := make([]*Calculator, len(list))
	for i, c := range list {
		resolved[i] = c
		if fields, changed := withRules(c.In, amounts, declared); changed {
			copied := *c
			copied.In = fields
			resolved[i] = &copied
		}
	}
	return resolved
}

// withRules returns a copy of the fields with the amounts filled in; changed is false
// where no field has a rule with an amount.
func withRules(fields []Field, amounts map[string]string, declared []*Rule) (copied []Field, changed bool) {
	copied = append(copied, fields...)
	for i := range copied {
		f := &copied[i]
		if amount := amounts[f.Rule]; f.Rule != "" && f.RuleProblem(amount) == "" {
			f.Usual, f.house, changed = amount, FindRule(declared, f.Rule), true
		}
		if cols, ok := withRules(f.Cols, amounts, declared); ok {
			f.Cols, changed = cols, true
		}
	}
	return copied, changed
}

// RuleProblem returns why a field cannot have an amount as its default value, or "". An
// empty amount is a problem.
func (f Field) RuleProblem(amount string) string {
	if amount == "" {
		return "there is no amount"
	}
	f.Usual, f.When = amount, nil
	s := &problems{}
	s.usual(f.ID, f)
	if len(s.list) > 0 {
		return s.list[0]
	}
	return ""
}

// RuleFields calls each for every input and column whose default value is a house rule.
func (c *Calculator) RuleFields(each func(Field)) { ruleFields(c.In, each) }

// ruleFields calls each for every field and column of fields whose default value
// is a house rule.
func ruleFields(fields []Field, each func(Field)) {
	for _, f := range fields {
		if f.Rule != "" {
			each(f)
		}
		ruleFields(f.Cols, each)
	}
}

// LacksRule reports whether an input has a house rule without an amount.
func (c *Calculator) LacksRule() bool {
	lacks := false
	c.RuleFields(func(f Field) { lacks = lacks || f.Usual == "" })
	return lacks
}

// FindRule returns the rule with an ID; nil where there is none.
func FindRule(list []*Rule, id string) *Rule {
	for _, r := range list {
		if r.ID == id {
			return r
		}
	}
	return nil
}

// The notes on an input that is looser than its house rule, and the refusals of one that
// passes a limit.
const (
	NoteLooser = Text(
		"{label} is looser than the house rule. The number you typed was used, not the house rule of {rule}. Ask the " +
			"foreman first.",
	)
	NoteOnPlan = Text(
		"{label} is looser than the house rule of {rule}. It is on the brace plan, and the plan counts.",
	)
	NoteHeld      = Text("{label} is looser than the house rule. The house rule of {rule} was used.")
	RefusePassing = Text(
		"{label} passes the published limit of {limit} ({source}). There is no answer past it. Type a value within " +
			"the limit, or ask the engineer.",
	)
	RefuseFirm = Text(
		"{label} is looser than the house rule of {limit}, and no document gives more. There is no answer past it. " +
			"Type a value within the rule, or ask the engineer.",
	)
)

// held returns the notes on the inputs of a case that are looser than their house rules;
// refused are those that pass the published limit of a rule, or the amount of a firm one.
func held(in Case, at func(id string) Path) (notes, refused []Note) {
	for i, f := range in.fields {
		x := in.values[i]
		if !x.Set || !in.asked(f) {
			continue
		}
		for _, row := range x.Rows {
			more, rejected := held(row, func(id string) Path { return Cell(f.ID, row.row, id) })
			notes, refused = append(notes, more...), append(refused, rejected...)
		}
		if f.house == nil {
			continue
		}
		label, amount := TextSlot("label", f.Label), f.UsualValue().Num
		looser := f.house.past(x.Num, amount, f.Display)
		switch {
		case f.house.Limit != "" && f.house.past(x.Num, f.house.limit(), f.Display):
			refused = append(refused, Note{LevelRefusal, at(f.ID), RefusePassing, []Slot{label,
				Amount("limit", f.house.limit(), f.Display), WordSlot("source", f.house.Source.Title)}})
		case looser && f.house.Firm:
			refused = append(refused, Note{LevelRefusal, at(f.ID), RefuseFirm,
				[]Slot{label, Amount("limit", amount, f.Display)}})
		case looser:
			level, text := LevelCaution, NoteLooser
			switch {
			case f.HoldsRule:
				text = NoteHeld
			case f.OnPlan != "" && in.Flag(f.OnPlan):
				level, text = LevelNotice, NoteOnPlan
			}
			notes = append(notes, Note{level, at(f.ID), text,
				[]Slot{label, Amount("rule", amount, f.Display)}})
		}
	}
	return notes, refused
}

// past reports whether x is on the loose side of a bound, both in SI. The bound as the
// display writes it in metric units is not: who types what the page shows is within it.
func (r *Rule) past(x, bound float64, display *quantity.Display) bool {
	shown := quantity.Round(bound, *display, quantity.Metric)
	if r.Direction == AtLeast {
		return Under(x, min(bound, shown))
	}
	return Over(x, max(bound, shown))
}
