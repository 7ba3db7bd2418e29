package calc_test

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
)

// An input that is looser than its house rule gets a caution before all other notes, a
// stricter one none. One beyond the published limit is refused, and so is one looser than
// a firm rule.
func TestLooserThanTheRule(t *testing.T) {
	for _, c := range []struct {
		direction calc.Direction
		typed     string
		level     calc.Level
		noted     calc.Text
	}{
		{calc.AtMost, "2 ft", 0, ""}, {calc.AtMost, "600 mm", 0, ""}, {calc.AtMost, "1 ft", 0, ""},
		{calc.AtMost, "2.5 ft", calc.LevelCaution, calc.NoteLooser},
		{calc.AtMost, "3 ft", calc.LevelCaution, calc.NoteLooser},
		{calc.AtMost, "3.1 ft", calc.LevelRefusal, calc.RefusePassing},
		{calc.AtLeast, "9 ft", 0, ""}, {calc.AtLeast, "4 ft", 0, ""},
		{calc.AtLeast, "3.5 ft", calc.LevelCaution, calc.NoteLooser},
		{calc.AtLeast, "2 ft", calc.LevelRefusal, calc.RefusePassing},
	} {
		tank := calctest.Tank()
		tank.In[0].Usual, tank.In[0].Rule = "", "side"
		rule := &calc.Rule{ID: "side", Display: &displays.Height, Direction: c.direction, Limit: "3 ft",
			Source: calc.Source{Title: "A book"}}
		amount := map[calc.Direction]string{calc.AtMost: "2 ft", calc.AtLeast: "4 ft"}[c.direction]
		ruled := calc.WithRules([]*calc.Calculator{tank}, map[string]string{"side": amount}, rule)[0]
		in, refused := calc.Read(ruled, []calc.Entry{{Path: "side", Text: c.typed}}, calc.Locale{}.Style)
		if len(refused) > 0 {
			t.Fatal(refused)
		}
		notes := calc.Run(ruled, in).Notes
		var first calc.Note
		if len(notes) > 0 && (notes[0].Text == calc.NoteLooser || notes[0].Text == calc.RefusePassing) {
			first = notes[0]
		}
		if first.Text != c.noted || first.Level != c.level {
			t.Errorf("%v %s: %s %q, want %s %q", c.direction, c.typed, first.Level, first.Text, c.level, c.noted)
		}
	}
}

// A looser input of a calculator that holds to the rule is noted as not used.
func TestHeldToTheRule(t *testing.T) {
	for holds, want := range map[bool]calc.Text{true: calc.NoteHeld, false: calc.NoteLooser} {
		tank := calctest.Tank()
		tank.In[0].Usual, tank.In[0].Rule, tank.In[0].HoldsRule = "", "side", holds
		rule := &calc.Rule{ID: "side", Display: &displays.Height, Limit: "3 ft", Source: calc.Source{Title: "A book"}}
		ruled := calc.WithRules([]*calc.Calculator{tank}, map[string]string{"side": "2 ft"}, rule)[0]
		in, refused := calc.Read(ruled, []calc.Entry{{Path: "side", Text: "2.5 ft"}}, calc.Locale{}.Style)
		if len(refused) > 0 {
			t.Fatal(refused)
		}
		if n := calc.Run(ruled, in).Notes[0]; n.Text != want || n.Level != calc.LevelCaution {
			t.Errorf("holds %v: %s %q", holds, n.Level, n.Text)
		}
	}
}

// A firm rule without a published limit refuses what is looser than its amount. A bound
// that is typed as a page writes it in metric units is within it.
func TestFirmRule(t *testing.T) {
	for _, c := range []struct {
		typed string
		want  calc.State
	}{
		{"2 ft", calc.OK}, {"1 ft", calc.OK}, {"0.61 m", calc.OK}, {"0.62 m", calc.Refused}, {"2.5 ft", calc.Refused},
	} {
		tank := calctest.Tank()
		tank.In[0].Usual, tank.In[0].Rule, tank.In[0].Display = "", "side", &displays.Height
		rule := &calc.Rule{ID: "side", Display: &displays.Height, Firm: true}
		ruled := calc.WithRules([]*calc.Calculator{tank}, map[string]string{"side": "2 ft"}, rule)[0]
		in, rejected := calc.Read(ruled, []calc.Entry{{Path: "side", Text: c.typed}}, calc.Locale{}.Style)
		if len(rejected) > 0 {
			t.Fatal(rejected)
		}
		if in.LooserThanHouse("side") != (c.want == calc.Refused) {
			t.Errorf("%s: looser %v", c.typed, in.LooserThanHouse("side"))
		}
		res := calc.Run(ruled, in)
		if res.State != c.want || calctest.Noted(res, calc.RefuseFirm) != (c.want == calc.Refused) ||
			calctest.Noted(res, calc.NoteLooser) {
			t.Errorf("%s: %s, %v", c.typed, res.State, res.Notes)
		}
	}
}
