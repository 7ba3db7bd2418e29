package main

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/placing/rateofrise"
)

// The house on the page the-hour, and the minutes of one pair of reader and turner.
const (
	hourCorners, hourWalls = 8, 7
	cornerMinutes          = 4.0
	curveMinutes           = 15.0
	wallMinutes            = 5.0
	secondReadingMinutes   = 5.0  // the foreman reads all corners again
	measuringMinutes       = 10.0 // however many pairs there are
)

// TestHourFits compares the table that says how many pairs the walls need with its own
// arithmetic, and the last minutes of the plan with the sum for three pairs, in each
// language.
func TestHourFits(t *testing.T) {
	for lang, headings := range map[string][2]string{
		"en": {"Does it fit?", "Minute by minute"},
		"es": {"¿Alcanza?", "Minuto por minuto"},
	} {
		text := manualPage(t, lang, "the-hour")
		_, table, _, ok := cutTable(text, headings[0])
		if !ok {
			t.Fatalf("%s: the page has no table below %q", lang, headings[0])
		}
		rows := strings.Split(strings.TrimSpace(table), "\n")
		if len(rows) != 8 {
			t.Fatalf("%s: %d rows", lang, len(rows))
		}
		sum := 0.0
		for column, pairs := range []int{1, 2, 3} {
			want := []float64{
				sharedMinutes(pairs, slices.Repeat([]float64{cornerMinutes}, hourCorners)),
				secondReadingMinutes,
				sharedMinutes(pairs, firstTime(1)),
				sharedMinutes(pairs, firstTime(0.5)),
				measuringMinutes,
			}
			sum = 0
			for i, minutes := range want {
				sum += minutes
				checkMinutes(t, rows[i+2], column, minutes)
			}
			checkMinutes(t, rows[7], column, sum)
		}
		_, plan, _, ok := cutTable(text, headings[1])
		spare := fmt.Sprintf("\n| %v %s 60 |", sum, map[string]string{"en": "to", "es": "a"}[lang])
		if !ok || !strings.Contains(plan, spare) {
			t.Errorf("%s: the plan has no row %q", lang, spare)
		}
	}
}

// A crew of 5 or 7 straightens in planned pauses of the pump. The crew of 5 pours half the
// house.
const (
	pauseMinutes    = 15.0
	onlyReadMinutes = 1.0 // a corner that is still on its mark
)

// TestSmallCrewsFit compares the table for 5 and 7 hands with its own arithmetic, in each
// language. The walls must be done within the hour.
func TestSmallCrewsFit(t *testing.T) {
	whole := firstTime(1)
	half := slices.Repeat([]float64{wallMinutes}, 4)
	for lang, heading := range map[string]string{"en": "With 5 or 7 hands", "es": "Con 5 o 7 personas"} {
		_, table, _, ok := cutTable(manualPage(t, lang, "the-hour"), heading)
		rows := strings.Split(strings.TrimSpace(table), "\n")
		if !ok || len(rows) != 10 {
			t.Fatalf("%s: %d rows below %q", lang, len(rows), heading)
		}
		for i, mix := range []string{"plain", "air"} {
			for column := range 2 {
				checkLoop(t, rows[8+i], column, loopWithPause(t, column+1, mix))
			}
		}
		for column, crew := range []struct {
			pairs, corners int
			walls          []float64
		}{{1, hourCorners / 2, half}, {2, hourCorners, whole}} {
			pairs := float64(crew.pairs)
			// The pause also holds the foreman's reading, after the pairs are done.
			locked := pairs * math.Floor((pauseMinutes-secondReadingMinutes)/cornerMinutes)
			second := slices.Clone(crew.walls)
			for i := range second {
				second[i] /= 2
			}
			hour := sharedMinutes(crew.pairs, slices.Repeat([]float64{onlyReadMinutes}, crew.corners)) +
				secondReadingMinutes + sharedMinutes(crew.pairs, crew.walls) +
				sharedMinutes(crew.pairs, second) + measuringMinutes
			for i, want := range []float64{
				pairs, locked, pairs * math.Floor(pauseMinutes/wallMinutes),
				math.Ceil(float64(crew.corners) / locked), hour,
			} {
				checkMinutes(t, rows[i+3], column, want)
			}
			if hour > 60 {
				t.Errorf("%d pairs take %v min", crew.pairs, hour)
			}
		}
	}
}

// loopWithPause returns the longest loop in ft, down to ten, of a number of heads in lifts with a
// planned pause in each pass. The pump rate and the load are those of crew-pump-rate.
func loopWithPause(t *testing.T, heads int, mix string) int {
	t.Helper()
	rate := rateOfHeads(t, heads, "middle", mix, liftDepth)
	load := float64(largestLoad(t, rate)) / 2
	loop := numberOf(t, rateofrise.Calculator, "longest", "ft", jobLength, "core=8 in",
		fmt.Sprintf("lift=%v ft", liftDepth), "moving="+pumpMoving, fmt.Sprintf("rate=%d yd3/h", rate),
		fmt.Sprintf("wait=%v min", pauseMinutes), fmt.Sprintf("age=%v min", oldest(t, rate, load)/minute))
	return int(loop/10) * 10
}

// checkLoop checks the feet in a column, from 0, after the name of a row.
func checkLoop(t *testing.T, row string, column, feet int) {
	t.Helper()
	if got, want := strings.TrimSpace(strings.Split(row, "|")[column+2]), fmt.Sprintf("%d ft", feet); got != want {
		t.Errorf("%s: %q, want %s", row, got, want)
	}
}

// TestLessonCountsThePause checks the age and the longest loop that lesson-crew-and-clock gives for
// seven hands, air and a planned pause in each pass. The ages are the whole minutes that the
// calculators show, rounded up.
func TestLessonCountsThePause(t *testing.T) {
	rate := rateOfHeads(t, 2, "middle", "air", liftDepth)
	load := float64(largestLoad(t, rate)) / 2
	age := numberOf(t, rateofrise.Calculator, "return-age", "min", jobLength, "core=8 in",
		fmt.Sprintf("lift=%v ft", liftDepth), "moving="+pumpMoving, fmt.Sprintf("rate=%d yd3/h", rate),
		fmt.Sprintf("wait=%v min", pauseMinutes), fmt.Sprintf("age=%v min", math.Ceil(oldest(t, rate, load)/minute)))
	longest := loopWithPause(t, 2, "air")
	for lang, text := range map[string]string{
		"en": "the face is %.0f min old. That is too late, and the longest loop is %d ft",
		"es": "la cara tiene %.0f min. Es tarde, y la vuelta más larga es de %d ft",
	} {
		want := fmt.Sprintf(text, math.Ceil(age), longest)
		if !strings.Contains(pageText(t, lang, "lesson-crew-and-clock"), want) {
			t.Errorf("%s: the lesson does not say %q", lang, want)
		}
	}
}

// firstTime returns the minutes of the curve and of each wall, times a share.
func firstTime(share float64) []float64 {
	jobs := []float64{share * curveMinutes}
	return append(jobs, slices.Repeat([]float64{share * wallMinutes}, hourWalls)...)
}

// sharedMinutes returns when the last pair is done with jobs that are not split. Each job
// goes to the pair that is free first.
func sharedMinutes(pairs int, jobs []float64) float64 {
	busy := make([]float64, pairs)
	for _, minutes := range jobs {
		first := slices.Index(busy, slices.Min(busy))
		busy[first] += minutes
	}
	return slices.Max(busy)
}

// checkMinutes checks the minutes in a column, from 0, after the name of a row.
func checkMinutes(t *testing.T, row string, column int, want float64) {
	t.Helper()
	cell := strings.Trim(strings.Split(row, "|")[column+2], " *")
	if got := strings.TrimSuffix(cell, " min"); got != strconv.FormatFloat(want, 'f', -1, 64) {
		t.Errorf("%s: %q, want %v min", row, cell, want)
	}
}

// The stage hour has two hold points, locked and hands off.
func TestHourHoldPoints(t *testing.T) {
	want := map[string]int{"corners-first": 1, "string-line": 1}
	for lang, lead := range map[string]string{"en": "**Hold point**", "es": "**Punto de espera**"} {
		for slug, text := range hourPages(t, lang) {
			if got := strings.Count(text, lead); got != want[slug] {
				t.Errorf("%s/%s has %d hold points, want %d", lang, slug, got, want[slug])
			}
		}
	}
}

// hourly finds a number of hours.
var hourly = regexp.MustCompile(`\d\s*(h|hours|horas)\b`)

// No page of the stage hour names a number of hours: it would read as a permission to
// load the wall.
func TestHourNamesNoHours(t *testing.T) {
	for _, lang := range []string{"en", "es"} {
		for slug, text := range hourPages(t, lang) {
			if found := hourly.FindString(text); found != "" {
				t.Errorf("%s/%s says %q", lang, slug, found)
			}
		}
	}
}

// fewTurns finds an order to turn a brace more than a quarter turn at a time.
var fewTurns = regexp.MustCompile(
	`(?i)few turns|half turns?\b|cuantas vueltas (al|a la)|unas cuantas vueltas|media vuelta`,
)

// Braces go by quarter turns on every page.
func TestQuarterTurnsOnly(t *testing.T) {
	for _, lang := range []string{"en", "es"} {
		names, err := filepath.Glob(filepath.Join(contentDir, lang, "*.md"))
		if err != nil || len(names) == 0 {
			t.Fatal("no pages", err)
		}
		for _, name := range names {
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			if found := fewTurns.FindString(string(data)); found != "" {
				t.Errorf("%s says %q", name, found)
			}
		}
	}
}

// The call words of the braces and their arm signs are the same on the page of the
// string line and on the crew talk card, and none is a word of the pump.
func TestCallWords(t *testing.T) {
	for lang, headings := range map[string][2]string{
		"en": {"The four words", "Call words"},
		"es": {"Las cuatro voces", "Las voces"},
	} {
		var tables [2]map[string]string
		for i, slug := range []string{"string-line", "crew-talk"} {
			_, table, _, ok := cutTable(manualPage(t, lang, slug), headings[i])
			if !ok {
				t.Fatalf("%s/%s has no table below %q", lang, slug, headings[i])
			}
			tables[i] = map[string]string{}
			for _, row := range strings.Split(strings.TrimSpace(table), "\n")[2:] {
				cells := strings.Split(row, "|")
				tables[i][strings.TrimSpace(cells[1])] = strings.TrimSpace(cells[3])
			}
		}
		if len(tables[0]) != 4 || len(tables[1]) != 4 {
			t.Errorf("%s: %d and %d call words, want 4", lang, len(tables[0]), len(tables[1]))
		}
		for word, sign := range tables[0] {
			if !sameSign(tables[1][word], sign) {
				t.Errorf("%s: %s is %q and %q", lang, word, sign, tables[1][word])
			}
			for _, pump := range []string{"STOP", "PUMP", "PARE", "BOMBEE"} {
				if strings.Contains(word, pump) {
					t.Errorf("%s: %s is a word of the pump", lang, word)
				}
			}
		}
	}
}

// pumpSigns are the words for parts of the body that make a sign, by language.
var pumpSigns = map[string][]string{
	"en": {"thumb", "fist", "finger", "arm"},
	"es": {"pulgar", "puño", "dedo", "brazo"},
}

// No arm sign of the braces is made with a part of the body that makes a sign of the pump.
// The reader is in the sight of the pump operator.
func TestBraceSignsAreNotPumpSigns(t *testing.T) {
	for lang, headings := range map[string][2]string{
		"en": {"The signals", "The four words"},
		"es": {"Las señas", "Las cuatro voces"},
	} {
		_, pump, _, ok := cutTable(manualPage(t, lang, "pump-set-up"), headings[0])
		_, braces, _, found := cutTable(manualPage(t, lang, "string-line"), headings[1])
		if !ok || !found {
			t.Fatalf("%s: no table of signals or none of call words", lang)
		}
		pump = strings.ToLower(pump)
		for _, row := range strings.Split(strings.TrimSpace(braces), "\n")[2:] {
			sign := strings.Split(row, "|")[3]
			for _, part := range pumpSigns[lang] {
				if strings.Contains(pump, part) && strings.Contains(sign, part) {
					t.Errorf("%s: the sign %q of the braces is one of the pump", lang, strings.TrimSpace(sign))
				}
			}
		}
		for _, part := range pumpSigns[lang] {
			if !strings.Contains(pump, part) {
				t.Errorf("%s: the pump has no sign with %q", lang, part)
			}
		}
	}
}

// sameSign compares two descriptions of an arm sign without articles.
func sameSign(a, b string) bool {
	plain := strings.NewReplacer("your ", "the ")
	return a != "" && plain.Replace(a) == plain.Replace(b)
}

// goodCall finds a call in quotation marks that ends in the reader's word for a brace that
// is done.
var goodCall = regexp.MustCompile(`(?i)"([\pL' ]+ )?(good|buen[oa]s?)[.,]?"`)

// The word that takes the bar off a brace ends no other call: between rounds both are
// shouted at once.
func TestGoodBelongsToTheBraces(t *testing.T) {
	if !goodCall.MatchString(`calls "frame good"`) || goodCall.MatchString(`calls "frame ready"`) {
		t.Error("the expression does not find calls")
	}
	for _, lang := range []string{"en", "es"} {
		names, err := filepath.Glob(filepath.Join(contentDir, lang, "*.md"))
		if err != nil || len(names) == 0 {
			t.Fatal("no pages", err)
		}
		for _, name := range names {
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			if found := goodCall.FindString(string(data)); found != "" {
				t.Errorf("%s has the call %s", name, found)
			}
		}
	}
}

// hourPages returns the text below the header of every page of the stage hour, by slug.
func hourPages(t *testing.T, lang string) map[string]string {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(contentDir, lang, "*.md"))
	if err != nil {
		t.Fatal(err)
	}
	pages := map[string]string{}
	for _, name := range names {
		slug := strings.TrimSuffix(filepath.Base(name), ".md")
		text := manualPage(t, lang, slug)
		header, body, _ := strings.Cut(strings.TrimPrefix(text, "---\n"), "\n---\n")
		if strings.Contains(header, "\nstage: hour\n") {
			pages[slug] = body
		}
	}
	if len(pages) < 6 {
		t.Fatalf("%s: %d pages in the stage hour", lang, len(pages))
	}
	return pages
}

// manualPage returns the source of a page.
func manualPage(t *testing.T, lang, slug string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(contentDir, lang, slug+".md"))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}
