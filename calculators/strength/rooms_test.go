package strength_test

import (
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/strength/maturity"
	"coursebook/calculators/strength/strengthgain"
)

// No text of the calculators is worded as a permission.
func TestTexts(t *testing.T) {
	for _, c := range []*calc.Calculator{maturity.Calculator, strengthgain.Calculator} {
		for _, f := range append(append([]calc.Field{}, c.In...), c.Out...) {
			for _, g := range append([]calc.Field{f}, f.Cols...) {
				for _, word := range []string{"safe", "allowed", "you may", "ready"} {
					if strings.Contains(strings.ToLower(g.Label.EN()+g.Help.EN()), word) {
						t.Errorf("%s %s says %q", c.ID, g.ID, word)
					}
				}
			}
		}
		if c.Cautions[0].Level != calc.LevelWarning || !strings.Contains(c.Cautions[0].Text.EN(), "engineer") {
			t.Errorf("%s does not open with the engineer's word", c.ID)
		}
	}
}
