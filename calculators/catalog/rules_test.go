package catalog

import (
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// ruleInputs are the inputs whose default value is a number that each crew sets for
// itself.
var ruleInputs = map[string][]string{
	"bar-take-off":     {"waste"},
	"block-out-uplift": {"factor", "apart"},
	"brace-layout":     {"spacing", "corner"},
	"course-take-off":  {"waste"},
	"footing-volume":   {"waste", "step-yd", "step-m"},
	"hot-weather":      {"limit-temp", "rule", "hot-from", "load", "rate"},
	"last-truck":       {"waste", "step-yd", "step-m"},
	"line-rounds":      {"tolerance", "block"},
	"plumb-check":      {"class", "what", "crew"},
	"pour-time":        {"moving", "set-up", "clean-up"},
	"rate-of-rise":     {"lift", "way", "moving", "age", "window"},
	"setting-time":     {"age"},
	"slump-check":      {"ordered"},
	"string-line":      {"tolerance", "block"},
	"tie-load":         {"factor"},
	"truck-spacing":    {"truck", "rate", "limit"},
	"vibrator":         {"plan", "lift", "into", "speed", "most-apart"},
	"wall-volume":      {"waste", "truck-yd", "truck-m", "step-yd", "step-m"},
	"water-added":      {"limit"},
	"wind-on-wall":     {"clear", "spacing"},
}

// Published rows type every input that a crew's own number may fill, so that no row
// depends on a default value.
func TestPublishedRowsTypeTheInputsOfRules(t *testing.T) {
	rows := 0
	for _, c := range All() {
		names := ruleInputs[c.ID]
		for _, name := range names {
			if !slices.ContainsFunc(c.In, func(f calc.Field) bool { return f.ID == name && f.Usual+f.Rule != "" }) {
				t.Errorf("%s has no input %s with a default value", c.ID, name)
			}
		}
		published, err := calctest.Published(c)
		if err != nil {
			t.Error(err)
		}
		for _, r := range published {
			if len(names) == 0 || r.Formula() != "" {
				continue
			}
			rows++
			for _, name := range names {
				if !slices.ContainsFunc(r.Inputs, func(e calc.Entry) bool {
					return e.Path == name || strings.HasPrefix(e.Path, name+".")
				}) {
					t.Errorf("testdata/published/%s.tsv: row %s does not type %s", c.ID, r.ID, name)
				}
			}
		}
	}
	if rows < 100 {
		t.Errorf("only %d rows were checked", rows)
	}
}

// A truck carries the same everywhere, and truck spacing opens with the pump rate of
// the pages.
func TestTrucksOpenAlike(t *testing.T) {
	want := map[string]string{
		"wall-volume.truck-yd": "9 yd³", "truck-spacing.truck": "9 yd³", "truck-spacing.rate": "12 yd³/h",
	}
	found := 0
	for _, c := range All() {
		for _, f := range c.In {
			if usual, ok := want[c.ID+"."+f.ID]; ok && f.Usual == usual {
				found++
			}
		}
	}
	if found != len(want) {
		t.Errorf("%d inputs of %v open so", found, want)
	}
}
