package main

import (
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/placing"
	"coursebook/calculators/placing/rateofrise"
	"coursebook/calculators/placing/truckspacing"
	"coursebook/calculators/pressure/formpressure"
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

	// pairBehindTheHose is the number of heads of the crew that straightens while the hose runs.
	// Smaller crews straighten in a pause each round.
	pairBehindTheHose = 3
)

// depths are the two depths in ft in which the pages place concrete all around, with the share of
// the largest load that goes with each. A lift takes the hose longer to come back.
var depths = []struct {
	name  string
	feet  float64
	share float64
}{
	{"lift", liftDepth, 0.5},
	{"round", roundDepth, 1},
}

// headsAndRates returns the highest whole pump rate that one, two and three heads keep up
// with, for concrete without and with air, at the spacing for a reach that is not known and
// at the house rule, in lifts and in rounds. Below each is the load whose last concrete is
// not too old at that rate, and the shortest loop that keeps the house rule on the rise with
// the longest on which the hose is back in the joint window with that load, and below that the
// loop for crews that need a pause each round to straighten. A rate below that of the slowest pump
// is none.
func headsAndRates(t *testing.T, lang string) [][]string {
	header := map[string][]string{
		"en": {"Spots", "5 hands, 1 head", "7 hands, 2 heads", "9 hands, 3 heads"},
		"es": {"Puntos", "5 personas, 1 cabeza", "7 personas, 2 cabezas", "9 personas, 3 cabezas"},
	}[lang]
	apart := map[string][2]string{"en": {"", " apart"}, "es": {"A ", ""}}[lang]
	marks := map[string]map[string]string{
		"en": {"low": ", reach not known", "middle": ", our rule", "lift": ", lifts of [2 ft](rule:none)",
			"round": "The same in rounds of 1 ft", "load-lift": "Load and loop in lifts",
			"load-round": "Load and loop in rounds", "slow": "too slow for a pump", "none": "none",
			"to": "to", "up-to": "up to", "air": ", with air", "plain": ", without air",
			"pause": "Loop with a pause of [15 min](rule:pause) each round"},
		"es": {"low": ", alcance no conocido", "middle": ", nuestra regla", "lift": ", capas de [2 ft](rule:none)",
			"round": "Lo mismo en vueltas de 1 ft", "load-lift": "Carga y largo en capas",
			"load-round": "Carga y largo en vueltas", "slow": "muy lento para la bomba",
			"none": "ninguno", "to": "a", "up-to": "hasta", "air": ", con aire", "plain": ", sin aire",
			"pause": "Largo con una pausa de [15 min](rule:pause) en cada vuelta"},
	}[lang]
	rows := [][]string{header}
	for _, mix := range []string{"plain", "air"} {
		for _, plan := range []string{"low", "middle"} {
			spacing := numberOf(t, vibrator.Calculator, "spacing", "in", jobLength, "plan="+plan, "concrete="+mix)
			for _, depth := range depths {
				rates := []string{marks[depth.name]}
				if depth.name == "lift" {
					rates[0] = apart[0] + inches(spacing) + apart[1] + marks[plan] + marks[mix] + marks[depth.name]
				}
				loads := []string{marks["load-"+depth.name]}
				paused := []string{marks["pause"]}
				for heads := 1; heads <= 3; heads++ {
					rate := rateOfHeads(t, heads, plan, mix, depth.feet)
					if rate < placing.LeastPump {
						rates, loads, paused = append(rates, marks["slow"]), append(loads, "–"), append(paused, "–")
						continue
					}
					load := float64(largestLoad(t, rate)) * depth.share
					loop := func(pause float64) string {
						shortest := shortestLoop(t, rate, depth.feet, pause)
						longest := longestLoop(t, rate, load, depth.feet, pause)
						switch {
						case shortest == 0:
							return fmt.Sprintf("%s %d ft", marks["up-to"], longest)
						case shortest > longest:
							return marks["none"]
						case shortest == longest:
							return fmt.Sprintf("%d ft", shortest)
						}
						return fmt.Sprintf("%d %s %d ft", shortest, marks["to"], longest)
					}
					rates = append(rates, strconv.Itoa(rate)+" yd³/h")
					loads = append(loads, halves(load)+" yd³, "+loop(0))
					if heads < pairBehindTheHose {
						paused = append(paused, loop(pauseMinutes*minute))
					} else {
						paused = append(paused, "–")
					}
				}
				rows = append(rows, rates, loads)
				if slices.ContainsFunc(paused[1:], func(cell string) bool { return cell != "–" }) {
					rows = append(rows, paused)
				}
			}
		}
	}
	return rows
}

// rateOfHeads returns the highest whole pump rate in yd³/h that a number of heads keeps up with at
// a depth in ft; 0 if there is none.
func rateOfHeads(t *testing.T, heads int, plan, mix string, depth float64) int {
	t.Helper()
	rate := 0
	for headsFor(t, rate+1, depth, "plan="+plan, "concrete="+mix) <= heads {
		rate++
	}
	return rate
}

// headsFor returns how many heads keep up on the loop of the worked job at a pump rate in yd³/h and
// a depth in ft.
func headsFor(t *testing.T, rate int, depth float64, inputs ...string) int {
	t.Helper()
	return int(numberOf(t, vibrator.Calculator, "vibrators", "", append(inputs, jobLength, "core=8 in",
		fmt.Sprintf("lift=%v ft", depth), fmt.Sprintf("pump=%d yd3/h", rate))...))
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

// TestDepthsAreHouseRules checks that the depths of the tables are those of the crew: the lift, and
// the lift on a curve, which is the depth of a low round.
func TestDepthsAreHouseRules(t *testing.T) {
	for rule, feet := range map[string]float64{"lift": liftDepth, "curve-lift": roundDepth} {
		if got := houseAmount(t, rule) / calc.SI(1, "ft"); math.Abs(got-feet) > 1e-9 {
			t.Errorf("the house rule %s is %v ft, and the tables are for %v ft", rule, got, feet)
		}
	}
}

// TestLessonOnTheCrew checks the figures that lesson-crew-and-clock reads off the table: seven
// hands, air and the house rule for the spots.
func TestLessonOnTheCrew(t *testing.T) {
	lift, round := rateOfHeads(t, 2, "middle", "air", liftDepth), rateOfHeads(t, 2, "middle", "air", roundDepth)
	load := float64(largestLoad(t, lift)) / 2
	for lang, texts := range map[string][]string{
		"en": {
			"says %d yd³/h in lifts of 2 ft and %d yd³/h in rounds of 1 ft",
			"In lifts, with loads of %s yd³, the row allows %d to %d ft. In rounds it allows %d to %d ft",
		},
		"es": {
			"dice %d yd³/h en capas de 2 ft y %d yd³/h en vueltas de 1 ft",
			"En capas, con cargas de %s yd³, el renglón da de %d a %d ft. En vueltas da de %d a %d ft",
		},
	} {
		for _, text := range []string{
			fmt.Sprintf(texts[0], lift, round),
			fmt.Sprintf(texts[1], halves(load), shortestLoop(t, lift, liftDepth, 0),
				longestLoop(t, lift, load, liftDepth, 0),
				shortestLoop(t, round, roundDepth, 0),
				longestLoop(t, round, float64(largestLoad(t, round)), roundDepth, 0)),
		} {
			if !strings.Contains(pageText(t, lang, "lesson-crew-and-clock"), text) {
				t.Errorf("%s: the lesson does not say %q", lang, text)
			}
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
// house rule at a depth in ft. A planned pause in s each round counts in the rise, as the rule says;
// without a pause the pump runs. It is 0 where the pause alone keeps the rule.
func shortestLoop(t *testing.T, rate int, depth, pause float64) int {
	t.Helper()
	const feet = 100
	rise := numberOf(t, rateofrise.Calculator, "rise-average", "", fmt.Sprintf("length=%d ft", feet), "core=8 in",
		fmt.Sprintf("lift=%v ft", depth), fmt.Sprintf("rate=%d yd3/h", rate))
	lift := calc.SI(depth, "ft")
	least := lift/houseAmount(t, "rise") - pause // s, the time that the pump must take for one round
	return max(0, int(math.Ceil(feet*least*rise/lift/10-calc.Slack))*10)
}

// longestLoop returns the loop in ft, down to ten, on which the hose is back in the joint
// window of the house at a depth in ft, with a pause in s each round.
func longestLoop(t *testing.T, rate int, load, depth, pause float64) int {
	t.Helper()
	loop := numberOf(t, rateofrise.Calculator, "longest", "ft", jobLength, "core=8 in",
		fmt.Sprintf("lift=%v ft", depth), "moving="+pumpMoving, fmt.Sprintf("rate=%d yd3/h", rate),
		fmt.Sprintf("wait=%v min", pause/minute), fmt.Sprintf("age=%v min", oldest(t, rate, load)/minute))
	return int(loop/10+calc.Slack) * 10
}

// inches writes a length in inches, down to the half inch, as the calculator shows it.
func inches(in float64) string { return halves(in) + " in." }

// halves writes a number down to the half.
func halves(x float64) string {
	n := int(x*2 + 1e-9)
	if n%2 == 0 {
		return strconv.Itoa(n / 2)
	}
	return strconv.Itoa(n/2) + "-1/2"
}

// TestCrewFlowIsThatOfTheTable checks that the rate that form-pressure offers nine hands is the one
// of the table for spots of the house rule, with air and without.
func TestCrewFlowIsThatOfTheTable(t *testing.T) {
	for mix, rest := range map[string]float64{"plain": consolidation.RestPlain, "air": consolidation.RestAir} {
		for _, depth := range []float64{liftDepth, roundDepth} {
			flow := consolidation.CrewFlow(rest, calc.SI(8, "in"), calc.SI(depth, "ft"), calc.SI(6, "in"))
			want := rateOfHeads(t, consolidation.CrewHeads, "middle", mix, depth)
			if got := calc.From(flow, "yd³/h"); math.Abs(got-float64(want)) > 1e-6 {
				t.Errorf("%s, %v ft: %v yd³/h, the table has %d", mix, depth, got, want)
			}
		}
	}
}

// TestPausedLoopKeepsTheRise checks that the shortest loop with a planned pause keeps the house rule
// for the rise in form-pressure, and that one three tenths shorter does not.
func TestPausedLoopKeepsTheRise(t *testing.T) {
	most := houseAmount(t, "rise") / calc.SI(1, "ft/h")
	for heads, mix := range map[int]string{1: "plain", 2: "air"} {
		rate := rateOfHeads(t, heads, "middle", mix, liftDepth)
		shortest := shortestLoop(t, rate, liftDepth, pauseMinutes*minute)
		rise := func(share float64) float64 {
			return numberOf(t, formpressure.Calculator, "rise-local", "ft/h", "thickness=8 in",
				fmt.Sprintf("length=%v ft", share*float64(shortest)), fmt.Sprintf("lift=%v ft", liftDepth),
				fmt.Sprintf("pump-rate=%d yd³/h", rate), fmt.Sprintf("wait=%v min", pauseMinutes))
		}
		if long, short := rise(1), rise(0.7); long > most+1e-9 || short <= most {
			t.Errorf("%d yd³/h: %v ft/h on %d ft, %v ft/h on a shorter loop", rate, long, shortest, short)
		}
	}
}
