package catalog

import (
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
)

// asking holds what makes a calculator ask for an input that it does not always ask for.
var asking = map[string]string{"hot-weather own-time": "rule=own", "block-out-uplift lift": "sill=closed"}

// An input past the limit of its house rule gives no verdict in any calculator: the
// refusal is at the input and names the limit and its document. The limit itself gives an
// answer, also as a page writes it in metric units.
func TestNoAnswerPastTheLimitOfARule(t *testing.T) {
	tried := 0
	for _, c := range All() {
		c.RuleFields(func(f calc.Field) {
			rule := rules.Find(rules.All(), f.Rule)
			limit, refusal := rule.Limit, calc.RefusePassing
			if rule.Firm {
				limit, refusal = calctest.Amounts()[rule.ID], calc.RefuseFirm
			}
			if limit == "" {
				return
			}
			tried++
			asked := asked(c, f)
			si, err := rule.Parse(limit, quantity.Point)
			if err != nil {
				t.Fatal(err)
			}
			for _, share := range []float64{1.06, 1.5, 0.94, 0.5} {
				past := si * share
				if (share > 1) != (rule.Direction == calc.AtMost) || outside(f, past) {
					continue
				}
				typed := f.ID + "=" + quantity.Exact(past, *f.Display, quantity.Style{})
				res := calctest.Try(c, append(asked, typed)...)
				note, _ := calctest.NoteOf(res, refusal)
				said := calc.Locale{}.Say(note.Text, note.Slots...)
				if res.State != calc.Refused || note.At.Field != f.ID || !strings.Contains(said, rule.Source.Title) ||
					!strings.Contains(said, quantity.Format(si, *f.Display, quantity.Style{})) || answers(c, res) {
					t.Errorf("%s %s: %s, %q", c.ID, typed, res.State, said)
				}
			}
			for _, style := range []quantity.Style{{}, {System: quantity.Metric}} {
				typed := f.ID + "=" + quantity.Format(si, *f.Display, style)
				if res := calctest.Try(c, append(asked, typed)...); calctest.Noted(res, refusal) {
					t.Errorf("%s %s: the limit itself is refused", c.ID, typed)
				}
			}
		})
	}
	if tried < 15 {
		t.Errorf("only %d inputs have a rule with a limit", tried)
	}
}

// outside reports whether a field does not take a number, in SI.
func outside(f calc.Field, si float64) bool {
	least, most, ok := f.Limits()
	return ok && (si < least.SI || si > most.SI)
}

// answers reports whether a result has any output.
func answers(c *calc.Calculator, res calc.Result) bool {
	return slices.ContainsFunc(c.Out, func(o calc.Field) bool { return res.Out.Has(o.ID) })
}

// asked returns what is typed for a calculator to ask for a field.
func asked(c *calc.Calculator, f calc.Field) []string {
	if typed := asking[c.ID+" "+f.ID]; typed != "" {
		return []string{typed}
	}
	return nil
}

// The calculators of the string line clear the wall at the amount of the house rule.
func TestTheWallIsClearedAtTheRule(t *testing.T) {
	si, err := rules.Find(rules.All(), "clear-the-wall").Parse(calctest.Amounts()["clear-the-wall"], quantity.Point)
	if err != nil || !calctest.Equal(si, bracing.MostOff) {
		t.Errorf("the house rule is %v m, %v, the calculators clear at %v m", si, err, bracing.MostOff)
	}
}
