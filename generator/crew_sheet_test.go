package main

import (
	"slices"
	"strconv"
	"strings"
	"testing"
)

// crewSheetWords are the words of the page crew-sheet that its checks look for, in each language.
var crewSheetWords = map[string]struct {
	jobs, kit, deputy, aid, nobody, pairs, full, reads, turns string
}{
	"en": {
		jobs: "Jobs that need a name", kit: "Blow-out kit", deputy: "Deputy", aid: "First-aid hand",
		nobody: "Nobody",
		pairs:  "Pairs at the braces", full: "When the walls are full", reads: ", reads", turns: ", turns",
	},
	"es": {
		jobs: "Trabajos que llevan nombre", kit: "Kit de reventada", deputy: "Suplente", aid: "Primeros auxilios",
		nobody: "Nadie",
		pairs:  "Parejas en los puntales", full: "Con los muros llenos", reads: ", lee", turns: ", en el tensor",
	},
}

// TestDeputyIsNoKitHand checks that the crew sheet names no deputy who carries the kit, because at a
// blow-out both are needed at the same moment.
func TestDeputyIsNoKitHand(t *testing.T) {
	for lang, words := range crewSheetWords {
		kit := sheetRow(t, lang, words.jobs, words.kit)
		deputies := sheetRow(t, lang, words.jobs, words.deputy)
		for column, deputy := range deputies {
			if deputy == "" || kit[column] == "" {
				t.Errorf("%s: column %d: deputy %q, kit %q", lang, column, deputy, kit[column])
			}
			if !strings.HasPrefix(deputy, words.nobody) &&
				strings.Contains(strings.ToLower(kit[column]), strings.ToLower(deputy)) {
				t.Errorf("%s: column %d: the deputy %q is one of the kit hands %q", lang, column, deputy, kit[column])
			}
		}
	}
}

// TestFirstAidHandIsNoKitHand checks that the crew sheet has a first-aid hand in every column who
// neither carries the kit nor is the deputy, because at a blow-out all are needed at the same moment.
func TestFirstAidHandIsNoKitHand(t *testing.T) {
	for lang, words := range crewSheetWords {
		kit := sheetRow(t, lang, words.jobs, words.kit)
		deputies := sheetRow(t, lang, words.jobs, words.deputy)
		for column, aid := range sheetRow(t, lang, words.jobs, words.aid) {
			lower := strings.ToLower(aid)
			if len(lower) < 4 || strings.Contains(strings.ToLower(kit[column]), lower) ||
				strings.EqualFold(aid, deputies[column]) {
				t.Errorf("%s: column %d: first aid %q, kit %q, deputy %q", lang, column, aid, kit[column],
					deputies[column])
			}
		}
	}
}

// TestPairsAreTwoPeople checks the pairs of the crew sheet: as many as its list of jobs says, a reader
// and a turner in each, and nobody in two places.
func TestPairsAreTwoPeople(t *testing.T) {
	for lang, words := range crewSheetWords {
		for column, count := range sheetRow(t, lang, words.jobs, words.pairs) {
			var people []string
			for _, role := range []string{words.reads, words.turns} {
				for _, pair := range []string{"A", "B", "C"} {
					name := map[string]string{"en": "Pair ", "es": "Pareja "}[lang] + pair + role
					if who := sheetRow(t, lang, words.full, name)[column]; who != "–" {
						people = append(people, who)
					}
				}
			}
			if strconv.Itoa(len(people)/2) != count || len(people)%2 != 0 {
				t.Errorf("%s: column %d: %d people, the jobs say %s pairs", lang, column, len(people), count)
			}
			slices.Sort(people)
			if len(slices.Compact(slices.Clone(people))) != len(people) {
				t.Errorf("%s: column %d: somebody has two places in %v", lang, column, people)
			}
		}
	}
}

// sheetRow returns the cells of a row of crew-sheet after its name, for 5, 7 and 9 hands. The row is
// in the first table below a heading.
func sheetRow(t *testing.T, lang, heading, name string) []string {
	t.Helper()
	_, table, _, ok := cutTable(pageText(t, lang, "crew-sheet"), heading)
	if !ok {
		t.Fatalf("%s: no table below %q", lang, heading)
	}
	for line := range strings.Lines(table) {
		cells := strings.Split(strings.Trim(line, "|\n"), "|")
		if !strings.HasPrefix(strings.TrimSpace(cells[0]), name) || len(cells) != 4 {
			continue
		}
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		return cells[1:]
	}
	t.Fatalf("%s: no row %q below %q", lang, name, heading)
	return nil
}
