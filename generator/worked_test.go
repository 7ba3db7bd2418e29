package main

import (
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/placing"
	"coursebook/calculators/placing/rateofrise"
	"coursebook/calculators/placing/truckspacing"
)

var update = flag.Bool("update", false, "write the tables of the manual that are worked by calculators")

// contentDir is the folder of the manual, from this package.
const contentDir = "../content"

// workedTable is a table of the manual that the calculators work out. It is the first
// table below a heading of a page.
type workedTable struct {
	slug string
	// heading is the text of the heading in each language.
	heading map[string]string
	// rows returns the rows in a language; the first is the header.
	rows func(t *testing.T, lang string) [][]string
}

var workedTables = []workedTable{
	{
		slug:    "crew-pump-rate",
		heading: map[string]string{"en": "How fast may the pump run?", "es": "¿Qué tan rápido puede ir la bomba?"},
		rows:    headsAndRates,
	},
}

// TestWorkedTables compares the tables of the manual with what the calculators give. With
// -update it writes them.
func TestWorkedTables(t *testing.T) {
	for _, table := range workedTables {
		for lang, heading := range table.heading {
			name := filepath.Join(contentDir, lang, table.slug+".md")
			data, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			before, got, after, ok := cutTable(string(data), heading)
			if !ok {
				t.Errorf("%s has no table below the heading %q", name, heading)
				continue
			}
			want := writeTable(table.rows(t, lang))
			if got == want {
				continue
			}
			if !*update {
				t.Errorf("%s, %q: the calculators give\n%s\nthe page has\n%s\nRun make golden after looking at it.",
					name, heading, want, got)
				continue
			}
			if err := os.WriteFile(name, []byte(before+want+after), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}

// cutTable splits a page at the first table below a heading.
func cutTable(text, heading string) (before, table, after string, ok bool) {
	start := strings.Index(text, "## "+heading+"\n")
	if start < 0 {
		return "", "", "", false
	}
	first := strings.Index(text[start:], "\n|")
	if next := strings.Index(text[start+1:], "\n## "); first < 0 || next >= 0 && next < first {
		return "", "", "", false
	}
	start += first + 1
	end := start
	for strings.HasPrefix(text[end:], "|") {
		line := strings.IndexByte(text[end:], '\n')
		if line < 0 {
			return text[:start], text[start:], "", true
		}
		end += line + 1
	}
	return text[:start], text[start:end], text[end:], true
}

// writeTable writes rows as a table in Markdown.
func writeTable(rows [][]string) string {
	var b strings.Builder
	for i, row := range rows {
		b.WriteString("| " + strings.Join(row, " | ") + " |\n")
		if i == 0 {
			b.WriteString("|" + strings.Repeat("---|", len(row)) + "\n")
		}
	}
	return b.String()
}

// TestCutTable checks that a table is found below its own heading only.
func TestCutTable(t *testing.T) {
	const page = "## One\n\nText.\n\n## Two\n\n| A |\n|---|\n| b |\n\nEnd.\n"
	if _, _, _, ok := cutTable(page, "One"); ok {
		t.Error("a table was found below a heading that has none")
	}
	before, table, after, ok := cutTable(page, "Two")
	if !ok || table != "| A |\n|---|\n| b |\n" || before+table+after != page {
		t.Errorf("%q, %q, %q, %v", before, table, after, ok)
	}
}

// numberOf returns an output of a result in a unit.
func numberOf(t *testing.T, c *calc.Calculator, id, unit string, inputs ...string) float64 {
	t.Helper()
	r := calctest.Run(t, c, inputs...)
	if !r.Out.Has(id) {
		t.Fatalf("%s %v has no %s", c.ID, inputs, id)
	}
	if unit == "" {
		return r.Out.Num(id)
	}
	return r.Out.Num(id) / calc.SI(1, unit)
}

// The worked job: a house of eight corners and one curve, invented.
const jobLength = "length=140 ft"

// longestRide is the oldest that the last concrete of a load may be, and largestTruck the
// largest load in yd³ that the table names.
const (
	longestRide  = 90 * minute
	largestTruck = 10
	movingShare  = 0.75 // pumpMoving as a number
)

// headsAndRates returns the highest whole pump rate that one, two and three heads keep up
// with, for concrete without and with air, at the spacing for a reach that is not known and
// at the house rule, the largest load whose last concrete is not too old at that rate, and
// the shortest loop that keeps the house rule on the rise with the longest on which the hose
// is back in the joint window: with that load in rounds of half the depth, and with half of it.
// A rate below that of the slowest pump is none.
func headsAndRates(t *testing.T, lang string) [][]string {
	header := map[string][]string{
		"en": {"Spots", "5 hands, 1 head", "7 hands, 2 heads", "9 hands, 3 heads"},
		"es": {"Puntos", "5 personas, 1 cabeza", "7 personas, 2 cabezas", "9 personas, 3 cabezas"},
	}[lang]
	apart := map[string][2]string{"en": {"", " apart"}, "es": {"A ", ""}}[lang]
	marks := map[string]map[string]string{
		"en": {"low": ", reach not known", "middle": ", our rule", "load": "Largest load",
			"thin": "Loop with that load, rounds of 1 ft", "half": "Loop with half that load, full lifts",
			"slow": "too slow for a pump", "none": "none", "to": "to", "air": ", with air", "plain": ", without air"},
		"es": {"low": ", alcance no conocido", "middle": ", nuestra regla", "load": "Carga más grande",
			"thin": "Largo con esa carga, en vueltas de 1 ft", "half": "Largo con media carga, capa entera",
			"slow": "muy lento para la bomba", "none": "ninguna",
			"to": "a", "air": ", con aire", "plain": ", sin aire"},
	}[lang]
	rows := [][]string{header}
	for _, mix := range []string{"plain", "air"} {
		for _, plan := range []string{"low", "middle"} {
			inputs := []string{jobLength, "plan=" + plan, "concrete=" + mix}
			spacing := numberOf(t, vibrator.Calculator, "spacing", "in", inputs...)
			rates := []string{apart[0] + inches(spacing) + apart[1] + marks[plan] + marks[mix]}
			loads := []string{marks["load"]}
			halves, thin := []string{marks["half"]}, []string{marks["thin"]}
			for heads := 1.0; heads <= 3; heads++ {
				rate := 0
				for numberOf(t, vibrator.Calculator, "vibrators", "",
					append(inputs[:3:3], "pump="+strconv.Itoa(rate+1)+" yd3/h")...) <= heads {
					rate++
				}
				if rate < placing.LeastPump {
					rates = append(rates, marks["slow"])
					loads = append(loads, "–")
					halves, thin = append(halves, "–"), append(thin, "–")
					continue
				}
				rates = append(rates, strconv.Itoa(rate)+" yd³/h")
				load := largestLoad(t, rate)
				loads = append(loads, strconv.Itoa(load)+" yd³")
				between := func(longest int) string {
					shortest := shortestLoop(t, rate)
					if shortest > longest {
						return marks["none"]
					}
					return fmt.Sprintf("%d %s %d ft", shortest, marks["to"], longest)
				}
				whole := longestLoop(t, rate, float64(load))
				halves = append(halves, between(longestLoop(t, rate, float64(load)/2)))
				thin = append(thin, between(2*whole))
			}
			rows = append(rows, rates, loads, thin, halves)
		}
	}
	return rows
}

// largestLoad returns the largest load in whole yd³ that is empty in time at a pump rate in
// yd³/h.
func largestLoad(t *testing.T, rate int) int {
	t.Helper()
	for load := largestTruck; load > 0; load-- {
		if oldest(t, rate, float64(load)) <= longestRide {
			return load
		}
	}
	t.Fatalf("at %d yd³/h no load is empty in time", rate)
	return 0
}

// TestLessonOnTheCrew checks the figures that lesson-crew-and-clock reads off the table: seven
// hands, air and the house rule for the spots.
func TestLessonOnTheCrew(t *testing.T) {
	const rate = 12
	load := largestLoad(t, rate)
	shortest, half := shortestLoop(t, rate), longestLoop(t, rate, float64(load)/2)
	thin := 2 * longestLoop(t, rate, float64(load))
	for lang, text := range map[string]string{
		"en": "With loads of %d yd³ in rounds of 1 ft that row allows %d to %d ft, with half loads %d to %d ft",
		"es": "Con cargas de %d yd³ en vueltas de 1 ft ese renglón da de %d a %d ft, con media carga de %d a %d ft",
	} {
		text = fmt.Sprintf(text, load, shortest, thin, shortest, half)
		if !strings.Contains(manualPage(t, lang, "lesson-crew-and-clock"), text) {
			t.Errorf("%s: the lesson does not say %q", lang, text)
		}
		row := fmt.Sprintf("| %d yd³/h |", rate)
		if !strings.Contains(manualPage(t, lang, "crew-pump-rate"), row) {
			t.Errorf("%s: the table has no rate of %d yd³/h", lang, rate)
		}
	}
}

// oldest returns the age in s of the last concrete of a load in yd³. The pump rate in yd³/h
// is while it runs; the trucks are emptied at the rate with its stops.
func oldest(t *testing.T, rate int, load float64) float64 {
	t.Helper()
	return numberOf(t, truckspacing.Calculator, "age-last", "", "order=30 yd3", fmt.Sprintf("truck=%v yd3", load),
		fmt.Sprintf("rate=%v yd3/h", float64(rate)*movingShare))
}

// shortestLoop returns the loop in ft, up to ten, on which the wall rises no faster than the
// house rule while the pump runs.
func shortestLoop(t *testing.T, rate int) int {
	t.Helper()
	const feet = 100
	rise := numberOf(t, rateofrise.Calculator, "rise-average", "", fmt.Sprintf("length=%d ft", feet), "core=8 in",
		"lift=2 ft", fmt.Sprintf("rate=%d yd3/h", rate))
	return int(math.Ceil(feet*rise/houseAmount(t, "rise")/10-calc.Slack)) * 10
}

// longestLoop returns the loop in ft, down to ten, on which the hose is back in the joint
// window of the house with lifts of 2 ft.
func longestLoop(t *testing.T, rate int, load float64) int {
	t.Helper()
	loop := numberOf(t, rateofrise.Calculator, "longest", "ft", jobLength, "core=8 in", "lift=2 ft",
		"moving="+pumpMoving, fmt.Sprintf("rate=%d yd3/h", rate),
		fmt.Sprintf("age=%v min", oldest(t, rate, load)/minute))
	return int(loop/10) * 10
}

// inches writes a length in inches, down to the half inch, as the calculator shows it.
func inches(in float64) string {
	halves := int(in*2 + 1e-9)
	if halves%2 == 0 {
		return strconv.Itoa(halves/2) + " in."
	}
	return strconv.Itoa(halves/2) + "-1/2 in."
}
