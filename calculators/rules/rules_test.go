package rules

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Every rule is named, has a display and a limit that can be read, and a source exactly
// where it has a limit.
func TestAll(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range All() {
		if r.ID == "" || seen[r.ID] {
			t.Errorf("rule %q is declared twice or has no ID", r.ID)
		}
		seen[r.ID] = true
		if p := r.Display.Check(); p != "" {
			t.Errorf("%s: %s", r.ID, p)
		}
		if (r.Limit == "") != (r.Source == calc.Source{}) {
			t.Errorf("%s: a limit needs a source, and a source a limit", r.ID)
		}
		if r.Limit == "" {
			continue
		}
		if r.Source.Title == "" || r.Source.Where == "" {
			t.Errorf("%s: the source has no title or place", r.ID)
		}
		limit, err := r.Parse(r.Limit, quantity.Point)
		if err != nil {
			t.Fatalf("%s: %v", r.ID, err)
		}
		if r.Looser(limit) {
			t.Errorf("%s: the limit itself is refused", r.ID)
		}
		if looser := limit * 1.01; r.Looser(looser) != (r.Direction == AtMost) {
			t.Errorf("%s: more than the limit is judged in the wrong direction", r.ID)
		}
		if less := limit * 0.99; r.Looser(less) != (r.Direction == AtLeast) {
			t.Errorf("%s: less than the limit is judged in the wrong direction", r.ID)
		}
	}
	if Find(All(), "lift") == nil || Find(All(), "lifts") != nil {
		t.Error("Find")
	}
}

// An amount is read with the point of an abbreviation and in either system of units.
func TestParse(t *testing.T) {
	r := &Rule{ID: "r", Display: &displays.Inches}
	for text, mm := range map[string]float64{"6 in.": 152.4, "6 in": 152.4, "0.5 ft": 152.4, "150 mm": 150} {
		got, err := r.Parse(text, quantity.Point)
		if err != nil || got < mm/1000-1e-9 || got > mm/1000+1e-9 {
			t.Errorf("%s is %v, %v", text, got, err)
		}
	}
	if got, err := r.Parse("0,5 m", quantity.Comma); err != nil || got != 0.5 {
		t.Errorf("a decimal comma: %v, %v", got, err)
	}
	for _, text := range []string{"", "6 psf", "some"} {
		if _, err := r.Parse(text, quantity.Point); err == nil {
			t.Errorf("%q is accepted", text)
		}
	}
	if (&Rule{Display: &displays.Inches}).Looser(1e9) {
		t.Error("a rule without a limit is passed")
	}
}
