package catalog

import (
	"regexp"
	"testing"

	"coursebook/calculators/calc"
)

// notOfMaker lists inputs that mention a maker but whose example value a page may
// use: no form or person depends on them.
var notOfMaker = map[string]string{
	"battery-packs.minutes": "the reader's own watch serves as well",
	"pump-line.empty":       "a catalogue weight",
	"wind-on-wall.factor":   "says which kind of rating it goes with",
}

var namesMaker = regexp.MustCompile(`(?i)\bmaker|\bratings?\b|\bplate\b`)

// Every input with a maker's rating, plate or guide is marked: a page shows no
// example result that depends on one.
func TestNumbersOfMakersAreMarked(t *testing.T) {
	english := calc.Locale{}
	marked := 0
	for _, c := range All() {
		for _, f := range c.In {
			if f.Maker {
				marked++
			}
			text := english.Say(f.Label)
			if f.Help != "" {
				text += " " + english.Say(f.Help)
			}
			id := c.ID + "." + f.ID
			_, exempt := notOfMaker[id]
			if named := namesMaker.MatchString(text); named != (f.Maker || exempt) || f.Maker && exempt {
				t.Errorf("%s: %q; Maker is %v, exempt %v", id, text, f.Maker, exempt)
			}
		}
	}
	if marked < 10 {
		t.Errorf("only %d inputs are marked", marked)
	}
}
