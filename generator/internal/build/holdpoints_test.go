package build

import (
	"os"
	"slices"
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
)

// pourStages are the stages of pour day on which the work waits for hold points.
var pourStages = []string{"morning", "placing", "consolidation", "hour"}

// holdPoint is a hold point of pour day: its page and a phrase of its text in each language.
type holdPoint struct {
	slug   string
	phrase map[string]string
}

// pourHolds are the eight hold points of pour day. Nobody can release more on one day.
var pourHolds = []holdPoint{
	{"pour-morning-walk", map[string]string{"en": "releases the wall", "es": "libera el muro"}},
	{"pump-set-up", map[string]string{"en": "Operator and foreman", "es": "operador y el mayordomo"}},
	{"slump-water-and-ticket", map[string]string{"en": "First truck", "es": "Primer camión"}},
	{"first-lift", map[string]string{"en": "says \"pump\"", "es": "dice \"bombee\""}},
	{"first-lift", map[string]string{"en": "\"second lift\"", "es": "\"segunda capa\""}},
	{restartSlug, map[string]string{"en": "Restart after any stop", "es": "después de cualquier paro"}},
	{"corners-first", map[string]string{"en": "\"locked\"", "es": "\"trabada\""}},
	{"string-line", map[string]string{"en": "\"hands off\"", "es": "\"nadie toca\""}},
}

// restartSlug is the page of the restart, the one hold point of pour day that is on a page of
// the stage trouble.
const restartSlug = "pump-breakdown"

// TestHoldPointsOfPourDay checks that the stages of pour day have the eight named hold points
// and no other, in every language of the manual.
func TestHoldPointsOfPourDay(t *testing.T) {
	options := Options{Content: "../../../content", Theme: os.DirFS("../../../themes/plumb")}
	b := read(options, markdown.Parse, &fault.List{})
	if b.Site == nil {
		t.Fatal("the manual was not read")
	}
	for _, l := range b.Site.Languages {
		found := make([]int, len(pourHolds))
		for _, st := range l.Stages {
			if !slices.Contains(pourStages, st.ID) {
				continue
			}
			for _, e := range st.Pages {
				for _, s := range e.Page.Steps {
					if !s.Hold {
						continue
					}
					i := findHold(l.Code, e.Page.Slug, s.Text)
					if i < 0 {
						t.Errorf("%s: line %d: a hold point that is none of the eight: %s", e.Page.Path, s.Line, s.Text)
						continue
					}
					found[i]++
				}
			}
		}
		restart := b.Site.Page(l.Code, restartSlug)
		if restart == nil {
			t.Errorf("%s has no page %s", l.Code, restartSlug)
			continue
		}
		for _, s := range restart.Steps {
			if i := findHold(l.Code, restartSlug, s.Text); i >= 0 && s.Hold {
				found[i]++
			}
		}
		for i, n := range found {
			if n != 1 {
				t.Errorf("%s: %d hold points %q on the page %s, not 1", l.Code, n, pourHolds[i].phrase[l.Code],
					pourHolds[i].slug)
			}
		}
	}
}

// findHold returns the place in pourHolds of a hold point; -1 if it is none of them.
func findHold(lang, slug, text string) int {
	return slices.IndexFunc(pourHolds, func(h holdPoint) bool {
		return h.slug == slug && strings.Contains(text, h.phrase[lang])
	})
}
