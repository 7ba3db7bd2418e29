package main

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var (
	// posterNames finds the list of posters in manual.yaml.
	posterNames = regexp.MustCompile(`(?m)^posters:\n((?:  - [a-z0-9-]+\n)+)`)
	// stepLead finds the number and the bold lead of a step.
	stepLead = regexp.MustCompile(`(?m)^(\d+)\. \*\*([^*]+)\*\*`)
)

// A poster prints the bold leads of the steps alone. A question without its answer helps
// nobody, and the poster of a form that opens has to hold who waits for what.
func TestPosterLeads(t *testing.T) {
	manual, err := os.ReadFile(filepath.Join(contentDir, "manual.yaml"))
	if err != nil {
		t.Fatal(err)
	}
	list := posterNames.FindSubmatch(manual)
	if list == nil {
		t.Fatal("manual.yaml has no posters")
	}
	for _, slug := range strings.Fields(strings.ReplaceAll(string(list[1]), "  - ", " ")) {
		for _, lang := range []string{"en", "es"} {
			leads := stepLead.FindAllStringSubmatch(manualPage(t, lang, slug), -1)
			if len(leads) == 0 {
				t.Errorf("%s/%s.md has no leads", lang, slug)
			}
			for _, lead := range leads {
				if strings.HasSuffix(lead[2], "?") {
					t.Errorf("%s/%s.md, step %s: the poster asks %q and gives no answer", lang, slug, lead[1], lead[2])
				}
			}
		}
	}
	for lang, words := range map[string][]string{
		"en": {"wo quiet looks, five minutes apart", `"go in"`, "lat face only"},
		"es": {"dos miradas, con cinco minutos", `"entren"`, "olo en una cara plana"},
	} {
		var leads strings.Builder
		for _, lead := range stepLead.FindAllStringSubmatch(manualPage(t, lang, "blow-out"), -1) {
			leads.WriteString(lead[2] + "\n")
		}
		for _, word := range words {
			if !strings.Contains(leads.String(), word) {
				t.Errorf("%s/blow-out.md: no lead has %q:\n%s", lang, word, leads.String())
			}
		}
	}
}
