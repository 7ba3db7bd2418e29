package main

import (
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/placing"
)

// roundsOfOneFoot matches a page's mention of rounds of 1 ft, in each language.
var roundsOfOneFoot = map[string]*regexp.Regexp{
	"en": regexp.MustCompile(`rounds? (of|is|are) 1 ft|every round 1 ft`),
	"es": regexp.MustCompile(`vueltas? (es |sea |son )?de 1 ft`),
}

// slowForRounds is the sentence that goes with rounds of 1 ft, in each language. A round has all
// the spots of a lift for half the concrete, so the pump rate of a lift is too fast for it.
var slowForRounds = map[string]string{
	"en": "While a round is 1 ft, the foreman has the pump slowed to the rate for rounds of 1 ft.",
	"es": "Mientras la vuelta sea de 1 ft, el mayordomo manda bajarle a la bomba hasta el caudal para vueltas de 1 ft.",
}

// sameDay are the pages that retell the day of another page, which has the sentence.
var sameDay = []string{"lesson-one-pour"}

// TestRoundsSlowThePump checks that every page with rounds of 1 ft says that the pump is slowed for
// them.
func TestRoundsSlowThePump(t *testing.T) {
	for lang, pattern := range roundsOfOneFoot {
		found := 0
		for _, slug := range slugs(t, lang) {
			text := pageText(t, lang, slug)
			if !pattern.MatchString(text) || slices.Contains(sameDay, slug) {
				continue
			}
			found++
			if !strings.Contains(text, slowForRounds[lang]) {
				t.Errorf("%s/%s.md has rounds of 1 ft without the sentence %q", lang, slug, slowForRounds[lang])
			}
		}
		if found < 7 {
			t.Errorf("%s: %d pages with rounds of 1 ft", lang, found)
		}
	}
}

// headCount matches a count of heads for a pump rate in prose, in each language.
var headCount = map[string]*regexp.Regexp{
	"en": regexp.MustCompile(`(?i)\b([0-9]+|one|two|three|four|five|six) heads? (at|keeps? up with) [0-9]`),
	"es": regexp.MustCompile(`(?i)\b([0-9]+|una|dos|tres|cuatro|cinco|seis) cabezas? (con|dan? abasto a) [0-9]`),
}

// TestHeadCountsNameBothDepths checks that a page with a count of heads for a pump rate, in prose or
// in a table of the calculator, has it for lifts and for rounds, and that each such page is checked
// against the calculator.
func TestHeadCountsNameBothDepths(t *testing.T) {
	depths := map[string]map[string]bool{}
	for _, s := range statedFigures {
		if s.output != "vibrators" {
			continue
		}
		i := slices.IndexFunc(s.inputs, func(in string) bool { return strings.HasPrefix(in, "lift=") })
		if i < 0 {
			t.Fatalf("the figure %v of page %s has no depth", s.figure, s.slug)
		}
		if depths[s.slug] == nil {
			depths[s.slug] = map[string]bool{}
		}
		depths[s.slug][s.inputs[i]] = true
		plain := numberOf(t, s.calculator, s.output, "", append(slices.Clone(s.inputs), "concrete=plain")...)
		if plain != s.figure {
			t.Errorf("page %s says %v heads with entrained air or without: %v without", s.slug, s.figure, plain)
		}
	}
	for slug, has := range depths {
		if !has["lift=2 ft"] || !has["lift=1 ft"] {
			t.Errorf("page %s has counts of heads for %v only", slug, has)
		}
	}
	for lang, pattern := range headCount {
		phrases := 0
		for _, slug := range slugs(t, lang) {
			text := pageText(t, lang, slug)
			for _, phrase := range pattern.FindAllString(text, -1) {
				phrases++
				worked := slices.ContainsFunc(workedTables, func(w workedTable) bool { return w.slug == slug })
				if depths[slug] == nil && !worked {
					t.Errorf("%s/%s.md: no test works out %q", lang, slug, phrase)
				}
			}
			if strings.Contains(text, "table: keep-up\n") != strings.Contains(text, "table: keep-up-rounds\n") {
				t.Errorf("%s/%s.md has the table of vibrators for one depth only", lang, slug)
			}
		}
		if phrases < 3 {
			t.Errorf("%s: %d counts of heads in prose", lang, phrases)
		}
	}
}

// TestRatesOfTheTableAreTheHighest reads the table of crew-pump-rate as printed: each rate is the
// highest that the heads of its column keep up with, at the depth, the spacing and the mix that its
// rows name.
func TestRatesOfTheTableAreTheHighest(t *testing.T) {
	for lang, words := range map[string]struct{ heading, lift, round, low, air, slow string }{
		"en": {"How fast may the pump run?", "lifts of 2 ft", "rounds of 1 ft",
			"reach not known", "with air", "too slow"},
		"es": {"¿Qué tan rápido puede ir la bomba?", "capas de 2 ft", "vueltas de 1 ft",
			"alcance no conocido", "con aire", "muy lento"},
	} {
		_, table, _, ok := cutTable(pageText(t, lang, "crew-pump-rate"), words.heading)
		if !ok {
			t.Fatalf("%s: no table", lang)
		}
		plan, mix := "", ""
		rates := map[float64]int{}
		for line := range strings.Lines(table) {
			cells := strings.Split(strings.Trim(line, "| \n"), " | ")
			depth := 0.0
			switch {
			case strings.Contains(cells[0], words.lift):
				depth, plan, mix = liftDepth, "middle", "plain"
				if strings.Contains(cells[0], words.low) {
					plan = "low"
				}
				if strings.Contains(cells[0], words.air) {
					mix = "air"
				}
			case strings.Contains(cells[0], words.round):
				depth = roundDepth
			default:
				continue
			}
			for heads, cell := range cells[1:] {
				rates[depth]++
				number, _, isRate := strings.Cut(cell, " yd³/h")
				rate, err := strconv.Atoi(number)
				if !isRate {
					if rate, err = 0, nil; !strings.Contains(cell, words.slow) {
						t.Errorf("%s: cell %q", lang, cell)
					}
				}
				highest := rateOfHeads(t, heads+1, plan, mix, depth)
				if err != nil || isRate && rate != highest || !isRate && highest >= placing.LeastPump {
					t.Errorf("%s: %d heads, %s, %s, %v ft: the table has %q, the calculator %d yd³/h", lang, heads+1,
						plan, mix, depth, cell, highest)
				}
			}
		}
		if rates[liftDepth] != 12 || rates[roundDepth] != 12 {
			t.Errorf("%s: %v rates by depth, want 12 of each", lang, rates)
		}
	}
}

// slugs returns the pages of a language, in order.
func slugs(t *testing.T, lang string) []string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(contentDir, lang, "*.md"))
	if err != nil || len(names) == 0 {
		t.Fatal(len(names), err)
	}
	for i, name := range names {
		names[i] = strings.TrimSuffix(filepath.Base(name), ".md")
	}
	return names
}
