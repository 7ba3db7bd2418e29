package weather

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/proof"
	"coursebook/calculators/quantity"
)

const publishedDir = "../../testdata/published"

func TestEvaporationProof(t *testing.T) { proof.Calculator(t, Evaporation, publishedDir) }
func TestMixProof(t *testing.T)         { proof.Calculator(t, MixTemp, publishedDir) }
func TestColdProof(t *testing.T)        { proof.Calculator(t, ColdWeather, publishedDir) }
func TestHotProof(t *testing.T)         { proof.Calculator(t, HotWeather, publishedDir) }
func TestSetProof(t *testing.T)         { proof.Calculator(t, SettingTime, publishedDir) }

// run executes a calculator on typed inputs: path, text, path, text…
func run(t *testing.T, c *calc.Calculator, typed ...string) calc.Result {
	t.Helper()
	var entries []calc.Entry
	for i := 0; i < len(typed); i += 2 {
		entries = append(entries, calc.Entry{Path: typed[i], Text: typed[i+1]})
	}
	in, notes := calc.Read(c, entries, quantity.Style{System: quantity.US})
	for _, n := range notes {
		t.Fatalf("%v: %s: %s", typed, n.At, calc.Voice{}.Say(n.Text, n.Slots...))
	}
	return calc.Execute(c, in)
}

// noted tells whether a result carries a text.
func noted(res calc.Result, text calc.Text) bool {
	for _, n := range res.Notes {
		if n.Text == text {
			return true
		}
	}
	return false
}
