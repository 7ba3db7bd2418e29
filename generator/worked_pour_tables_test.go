package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/placing/rateofrise"
)

func init() {
	heading := func(en, es string) map[string]string { return map[string]string{"en": en, "es": es} }
	workedTables = append(workedTables,
		workedTable{"pour-clock", heading("The numbers", "Los números"), pourNumbers},
		workedTable{"pour-clock", heading("The clock", "El reloj"), pourClock},
		workedTable{"pour-clock", heading("The trucks", "Los camiones"), pourTrucks},
		workedTable{"pour-clock", heading("Hands off, side by side", "Nadie toca, lado por lado"), pourSides},
	)
}

func pourNumbers(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	rows := [][]string{{say["what"], say["plan"], say["bad"]}}
	days := []workedPour{workPour(t, goodDay), workPour(t, badDay)}
	add := func(name string, cell func(w workedPour) string) {
		rows = append(rows, []string{say[name], cell(days[0]), cell(days[1])})
	}
	add("concrete", func(w workedPour) string { return w.day.concrete + ", " + w.day.air })
	add("net", func(w workedPour) string { return tenth(w.net) + " yd³" })
	add("order", func(w workedPour) string { return tenth(w.order) + " yd³" })
	add("loads", func(w workedPour) string { return strconv.Itoa(int(w.loads)) })
	add("spacing", func(w workedPour) string { return minutes(w.spacing) })
	add("heads", func(w workedPour) string { return fmt.Sprintf("%v + %v", w.heads, w.withSpare-w.heads) })
	add("lift", func(w workedPour) string { return minutes(w.lift) })
	add("running", func(w workedPour) string {
		return tenth(liftDepth/(w.pumped()*movingShare/3600)) + " ft/h"
	})
	add("wait", func(w workedPour) string { return strconv.Itoa(int(math.Round(w.wait/minute))) + " min" })
	add("rise", func(w workedPour) string { return tenth(calc.From(w.rise, "ft/h")) + " ft/h" })
	add("window", func(w workedPour) string { return w.day.window })
	add("counts", func(w workedPour) string { return minutes(w.window) })
	add("age", func(w workedPour) string { return minutes(w.returnAge) })
	add("spare", func(w workedPour) string {
		if w.returnAge >= w.window {
			return say["no-spare"]
		}
		return minutes(early(w.window - w.returnAge))
	})
	add("verdict", func(w workedPour) string { return say[verdictWord(t, w.verdict)] })
	add("set", func(w workedPour) string { return tenth(w.set/3600) + " h" })
	add("allowed", func(w workedPour) string { return minutes(w.allowed) })
	add("back-by", func(w workedPour) string { return minutes(early(w.backBy)) })
	psf := func(p float64) string {
		return strconv.Itoa(int(math.Ceil(p/calc.SI(1, "psf")/10-1e-9))*10) + " psf"
	}
	add("mix", func(workedPour) string { return fmt.Sprintf(say["plain"], jobSet) })
	add("pressure", func(w workedPour) string { return psf(w.pressure) })
	add("unknown", func(w workedPour) string { return psf(w.unknownMix) })
	add("form", func(workedPour) string { return say["unchecked"] })
	return rows
}

// verdictWord returns the key in pourWords of a verdict of rate-of-rise.
func verdictWord(t *testing.T, id string) string {
	t.Helper()
	keys := []string{"in-time", "too-late", "too-fast"}
	for i, o := range rateofrise.Calculator.Out[0].Options[:len(keys)] {
		if o.ID == id {
			return keys[i]
		}
	}
	t.Fatalf("rate-of-rise has the verdict %q, which the worked pour has no word for", id)
	return ""
}

func pourClock(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	type event struct {
		text      string
		good, bad float64 // 0 if the day has no such event
	}
	var events []event
	add := func(text string, at func(w workedPour) float64) {
		events = append(events, event{text, at(good), at(bad)})
	}
	add(say["start"], func(w workedPour) float64 { return w.start })
	add(say["pump"], func(w workedPour) float64 { return w.start + pumpComes })
	add(say["walked"], func(w workedPour) float64 { return w.start + wallWalked })
	add(say["talk"], func(w workedPour) float64 { return w.start + talkBegins })
	add(say["ready"], func(w workedPour) float64 { return w.start + talkBegins + talkTime })
	add(say["batched1"], func(w workedPour) float64 { return w.firstBatched() })
	add(say["ticket"], func(w workedPour) float64 { return w.first + firstTest })
	add(say["first"], func(w workedPour) float64 { return w.first })
	add(say["second"], func(w workedPour) float64 { return w.liftStart(2) })
	for n := 3; n < good.lifts; n++ {
		add(fmt.Sprintf(say["liftN"], n), func(w workedPour) float64 { return w.isPlaced(n, w.liftStart(n)) })
	}
	events = append(events,
		event{say["decide"], 0, early(bad.decision())},
		event{say["waits"], 0, early(bad.thirdTruck)},
		event{say["joint"], 0, early(bad.joint)},
	)
	last := fmt.Sprintf(say["call"], tenth(good.callOrder)+" yd³")
	add(last, func(w workedPour) float64 { return early(w.callBy) })
	add(say["last-lift"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.liftStart(w.lifts)) })
	add(say["full"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.last) })
	add(say["wash"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.last+topUpTime) })
	add(say["tops"], func(w workedPour) float64 { return w.isPlaced(w.lifts, w.last+topsTime) })
	add(say["pull"], func(w workedPour) float64 { return w.sideFull(0) })
	add(say["sooner"], func(w workedPour) float64 { return early(sideTimes(w)[0]) })
	add(say["final"], func(w workedPour) float64 { return early(sideTimes(w)[3]) })
	add(say["done"], func(w workedPour) float64 { return w.done })
	when := func(e event) float64 {
		if e.good == 0 {
			return e.bad
		}
		return e.good
	}
	slices.SortStableFunc(events, func(a, b event) int { return cmp.Compare(when(a), when(b)) })
	rows := [][]string{{say["plan"], say["bad"], say["what"]}}
	for _, e := range events {
		rows = append(rows, []string{fiveMinutes(e.good), fiveMinutes(e.bad), e.text})
	}
	return rows
}

// sideTimes returns the times of hands off of the sides, in order.
func sideTimes(w workedPour) []float64 {
	var times []float64
	for _, s := range w.sides {
		times = append(times, s.Num("off"))
	}
	slices.Sort(times)
	return times
}

func pourTrucks(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	rows := [][]string{{say["load"]}}
	for _, day := range []string{"plan", "bad"} {
		for _, what := range []string{"batched", "hopper", "empty"} {
			rows[0] = append(rows[0], say[day]+": "+say[what])
		}
	}
	for n := 1; n <= int(good.loads); n++ {
		row := []string{strconv.Itoa(n)}
		for _, w := range []workedPour{good, bad} {
			batched, hopper, empty := w.truck(n)
			if w.joint > 0 && n > 2 {
				row = append(row, say["off-truck"], say["off-truck"], say["off-truck"])
				continue
			}
			row = append(row, fiveMinutes(batched), fiveMinutes(hopper), fiveMinutes(empty))
		}
		rows = append(rows, row)
	}
	return rows
}

func pourSides(t *testing.T, lang string) [][]string {
	say := pourWords[lang]
	rules := map[string]string{"last": say["last"], "set": say["setrule"]}
	good, bad := workPour(t, goodDay), workPour(t, badDay)
	rows := [][]string{{say["side"]}}
	for _, day := range []string{"plan", "bad"} {
		rows[0] = append(rows[0], say[day]+": "+say["off"], say["by"], say["straighten"])
	}
	for i := range good.sides {
		row := []string{say["side"+strconv.Itoa(i+1)]}
		for _, w := range []workedPour{good, bad} {
			side := w.sides[i]
			rule, plan := rules[side.Choice("rule")], say[side.Choice("plan")]
			if rule == "" || plan == "" {
				t.Fatalf("hands-off answers %s, %s, which the worked pour has no words for", side.Choice("rule"),
					side.Choice("plan"))
			}
			row = append(row, fiveMinutes(early(side.Num("off"))), rule, plan)
		}
		rows = append(rows, row)
	}
	return rows
}

func yards(v float64) string { return strconv.FormatFloat(v, 'f', 4, 64) + " yd3" }

func tenth(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }

// minutes writes a duration in s, to five minutes.
func minutes(s float64) string {
	return strconv.Itoa(int(math.Round(s/(5*minute)))*5) + " min"
}

// clockTime writes a time of day for an input.
func clockTime(s float64) string {
	m := int(math.Round(s / minute))
	return fmt.Sprintf("%d:%02d", m/60, m%60)
}

// fiveMinutes writes a time of day to the nearest five minutes; 0 is a dash.
func fiveMinutes(s float64) string {
	if s == 0 {
		return "–"
	}
	return clockTime(math.Round(s/(5*minute)) * 5 * minute)
}

// early returns a time of day down to five minutes, for a time that may not be passed.
func early(s float64) float64 { return math.Floor(s/(5*minute)) * 5 * minute }
