package catalog

import (
	"regexp"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

var (
	// codeSymbol matches symbols of equations and codes: Kzt, K1, Cf, gₙ.
	codeSymbol = regexp.MustCompile(`\bK[dz1-9]\w*|\bCf\b|gₙ|\bHz\b`)
	// shouted matches words in capitals that are no known abbreviation.
	shouted      = regexp.MustCompile(`\p{Lu}{4,}`)
	abbreviation = regexp.MustCompile(`^(ASTM|ASCE|CIRIA|UFGS|NAHB|NRMCA)$`)
)

// Labels and answers are words of the trade: no symbol of an equation and no word in
// capitals. A reader of US units sees no unit of the laboratory.
func TestLabelsAreWordsOfTheTrade(t *testing.T) {
	var check func(id string, f calc.Field)
	check = func(id string, f calc.Field) {
		texts := []string{f.Label.EN()}
		for _, o := range f.Options {
			texts = append(texts, o.Label.EN())
		}
		for _, text := range texts {
			if s := codeSymbol.FindString(text); s != "" {
				t.Errorf("%s: %q has the symbol %s", id, text, s)
			}
			for _, word := range shouted.FindAllString(text, -1) {
				if !abbreviation.MatchString(word) {
					t.Errorf("%s: %q shouts %s", id, text, word)
				}
			}
		}
		if f.Display != nil && !strings.HasPrefix(id, "unit-conversion.") {
			if unit := f.Display.In(quantity.US).Unit; unit == "Hz" || unit == "gₙ" {
				t.Errorf("%s is shown in %s", id, unit)
			}
		}
		for _, col := range f.Cols {
			check(id+"."+col.ID, col)
		}
	}
	for _, c := range All() {
		for _, f := range append(append([]calc.Field{}, c.In...), c.Out...) {
			check(c.ID+"."+f.ID, f)
		}
	}
}

// A strength of concrete is also written in kg/cm², in both systems of units.
func TestStrengthsAreAlsoInKilograms(t *testing.T) {
	var check func(id string, f calc.Field)
	seen := 0
	check = func(id string, f calc.Field) {
		if f.Kind == calc.Number && f.Display.In(quantity.US).Unit == "psi" {
			seen++
			for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
				text := calc.Locale{Style: quantity.Style{System: sys}}.Write(f, calc.In(3000, "psi"))
				if !regexp.MustCompile(`^\S+ (psi|MPa) \(21[01] kg/cm²\)$`).MatchString(text) {
					t.Errorf("%s: 3000 psi is written %s", id, text)
				}
			}
		}
		for _, col := range f.Cols {
			check(id+"."+col.ID, col)
		}
	}
	for _, c := range All() {
		for _, f := range c.Out {
			check(c.ID+"."+f.ID, f)
		}
	}
	if seen < 5 {
		t.Errorf("only %d strengths are printed", seen)
	}
}
