package calc

// WithRules returns the calculators with the amounts of the house rules as default
// values. amounts are the amounts by the ID of the rule, as a reader of US units
// types them: "2 ft". A field stays unset whose rule has no amount or one that the field
// cannot read. The calculators given are not changed; those without a rule are returned
// as they are.
func WithRules(list []*Calculator, amounts map[string]string) []*Calculator {
	resolved := make([]*Calculator, len(list))
	for i, c := range list {
		resolved[i] = c
		if fields, changed := withRules(c.In, amounts); changed {
			copied := *c
			copied.In = fields
			resolved[i] = &copied
		}
	}
	return resolved
}

// withRules returns a copy of the fields with the amounts filled in; changed is false
// where no field has a rule with an amount.
func withRules(fields []Field, amounts map[string]string) (copied []Field, changed bool) {
	copied = append(copied, fields...)
	for i := range copied {
		f := &copied[i]
		if amount := amounts[f.Rule]; f.Rule != "" && f.RuleProblem(amount) == "" {
			f.Usual, changed = amount, true
		}
		if cols, ok := withRules(f.Cols, amounts); ok {
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
