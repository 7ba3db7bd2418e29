package handsoff

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// run returns the only wall of a pour, and the result.
func run(t *testing.T, wall string, more ...string) (calc.Case, calc.Result) {
	t.Helper()
	res := calctest.Run(t, Calculator, append([]string{"walls=" + wall}, more...)...)
	if res.State != calc.OK {
		t.Fatalf("%s %v: %v", wall, more, res.Notes)
	}
	return res.Out.Rows("lines")[0], res
}

// The earliest of the clock rules decides, and the plan follows from what is left.
func TestRules(t *testing.T) {
	for _, c := range []struct {
		wall string
		more []string
		off  string
		rule string
		plan string
		left float64 // min
	}{
		{"N | 7:00 | 9:00", nil, "10:00", ruleLast, planAfter, 60},
		{"N | 7:00 | 9:00", []string{"air=81 °F"}, "9:30", ruleLast, planAfter, 30},
		{"N | 7:00 | 9:00", []string{"concrete=81 °F"}, "9:30", ruleLast, planAfter, 30},
		{"N | 7:00 | 9:00", []string{"concrete=80 °F", "air=80 °F"}, "10:00", ruleLast, planAfter, 60},
		{"N | 7:00 | 11:45", nil, "12:00", ruleSet, planEarly, 15},
		{"N | 7:00 | 12:00", nil, "12:00", ruleSet, planBetween, 0},
		{"N | 7:00 | 12:40", nil, "12:00", ruleSet, planBetween, -40},
		{"N | 7:00 | 9:00", []string{"plant-set=2.25 h"}, "9:15", ruleSet, planEarly, 15},
		{"N | 7:00 | 9:00 | 9:20", nil, "9:20", ruleGiven, planEarly, 20},
		{"N | 7:00 | 9:00 | 8:20", nil, "8:20", ruleGiven, planBetween, -40},
		{"N | 7:00 | 9:00 | 10:00", nil, "10:00", ruleLast, planAfter, 60},
		{"N | 7:00 | 9:00 | 14:00", nil, "10:00", ruleLast, planAfter, 60},
		{"N | 22:30 | 0:30", nil, "1:30 (+1 d)", ruleLast, planAfter, 60},
		{"N | 22:30 | 0:30 | 1:00", nil, "1:00 (+1 d)", ruleGiven, planAfter, 30},
		{"N | 22:30 | 0:30 | 23:50", nil, "23:50", ruleGiven, planBetween, -40},
		// A hot day never allows more than another day.
		{"N | 7:00 | 9:00", []string{"air=90 °F", "wait=20 min"}, "9:20", ruleLast, planEarly, 20},
	} {
		w, _ := run(t, c.wall, c.more...)
		if got := calc.FormatClock(w.Num("off")); got != c.off || w.Choice("rule") != c.rule ||
			w.Choice("plan") != c.plan {
			t.Errorf("%s %v: %s %s %s", c.wall, c.more, got, w.Choice("rule"), w.Choice("plan"))
		}
		calctest.Near(t, c.wall, w.Num("left"), 60*c.left, 1e-6)
	}
}

func TestRefused(t *testing.T) {
	calctest.Refused(t, Calculator, "walls.1.last", "walls=N | 7:00 | 7:00")
	calctest.Refused(t, Calculator, "walls.1.last", "walls=N | 7:00 | 6:00")
	calctest.Refused(t, Calculator, "walls.2.last", "walls=N | 7:00 | 9:00; S | 7:00 | 19:01")
	calctest.Refused(t, Calculator, "walls.1.given", "walls=N | 7:00 | 9:00 | 6:59")
}

func TestNotes(t *testing.T) {
	all := []calc.Text{noteBetween, noteEarly, noteHot, askPlant, askSet, noteSooner}
	calctest.CheckNotesAmong(t, Calculator, all, []calctest.NotesCase{
		{Inputs: []string{"walls=N | 7:00 | 9:00"}, Want: []calc.Text{askPlant, noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 9:00", "plant-set=6 h"}, Want: []calc.Text{noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 9:00", "plant-set=12 h"}, Want: []calc.Text{noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 9:00", "plant-set=12.1 h"}, Want: []calc.Text{askSet, noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 9:00", "plant-set=48 h"}, Want: []calc.Text{askSet, noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 8:00", "plant-set=1.5 h"}, Want: []calc.Text{noteSooner}},
		{
			Inputs: []string{"walls=N | 7:00 | 7:30", "plant-set=1.4 h"},
			Want:   []calc.Text{askSet, noteSooner},
		},
		{
			Inputs: []string{"walls=N | 7:00 | 9:00", "initial=20 h"},
			Want:   []calc.Text{askPlant, askSet, noteSooner},
		},
		{Inputs: []string{"walls=N | 7:00 | 12:40"}, Want: []calc.Text{noteBetween, askPlant, noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 11:45"}, Want: []calc.Text{noteEarly, askPlant, noteSooner}},
		{Inputs: []string{"walls=N | 7:00 | 9:00", "air=81 °F"}, Want: []calc.Text{noteHot, askPlant, noteSooner}},
	})
}

// A wait over 120 min is out of range.
func TestLongestWait(t *testing.T) {
	var cases []calctest.NoteCase
	for _, id := range []string{"wait", "hot-wait"} {
		for typed, over := range map[string]bool{"120 min": false, "121 min": true} {
			cases = append(cases, calctest.NoteCase{Inputs: id + "=" + typed,
				Note: "{label} must be at most {limit}. {why}", At: id, Want: over})
		}
	}
	calctest.CheckNotes(t, Calculator, cases)
}

// Of the plant's figure and our estimate the earlier one counts. A later figure of the plant counts
// only in writing, and the answer asks for it.
func TestLaterFigureOfThePlantIsInWriting(t *testing.T) {
	hot := []string{"concrete=88 °F", "air=75 °F"}
	for _, c := range []struct {
		more []string
		off  string
		note calc.Text
	}{
		{nil, "10:00", askPlant},
		{[]string{"plant-set=2 h"}, "9:30", ""},
		{[]string{"plant-set=6 h"}, "10:00", askWritten},
		{[]string{"plant-set=10 h"}, "10:00", askWritten},
		{[]string{"plant-set=10 h", "plant-word=none"}, "10:00", askWritten},
		{[]string{"plant-set=6 h", "plant-word=written"}, "11:10", noteWritten},
		{[]string{"plant-set=10 h", "plant-word=written"}, "11:10", noteWritten},
	} {
		w, res := run(t, "N | 7:30 | 10:40", append(c.more, hot...)...)
		if got := calc.FormatClock(w.Num("off")); got != c.off {
			t.Errorf("%v: %s, want %s", c.more, got, c.off)
		}
		for _, note := range []calc.Text{askPlant, askWritten, noteWritten} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.more, c.note.EN(), res.Notes)
			}
		}
	}
}

// The lead outputs are those of the wall with the least time left.
func TestTightest(t *testing.T) {
	res := calctest.Run(t, Calculator, "walls=N | 7:00 | 9:00; S | 7:00 | 12:40; E | 8:00 | 9:30")
	if res.Out.Num("tightest") != 2 || res.Out.Choice("plan") != planBetween || res.Out.Choice("rule") != ruleSet {
		t.Error(res.Out)
	}
	calctest.Near(t, "first of all walls", res.Out.Num("earliest"), 10*3600, 1e-6)
}

// Over random pours hands off is never later than any rule allows. It comes no
// later where a load was batched earlier, the wall was full earlier, the concrete
// is warmer, the plant's figure is less, or a time is given.
func TestNeverLater(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	clock := func(min int) string { return calc.FormatClock(float64(60 * min)) }
	for range 400 {
		first := 300 + rng.IntN(300)
		last := first + 1 + rng.IntN(480)
		given := first + rng.IntN(600)
		f, air, set := 45+rng.IntN(60), 40+rng.IntN(60), 1+6*rng.Float64()
		at := func(first, last, f, air int, set float64, given string) (off, left float64) {
			wall := fmt.Sprintf("N | %s | %s%s", clock(first), clock(last), given)
			w, _ := run(t, wall, fmt.Sprintf("concrete=%d °F", f), fmt.Sprintf("air=%d °F", air),
				fmt.Sprintf("plant-set=%.3f h", set))
			return w.Num("off"), w.Num("left")
		}
		off, left := at(first, last, f, air, set, "")
		allowed := 60.0
		if f > 80 || air > 80 {
			allowed = 30
		}
		if off > 60*(float64(last)+allowed)+1e-6 || off > 60*float64(first)+3600*set+4 {
			t.Fatalf("later than a rule: %s", clock(int(off)/60))
		}
		calctest.Near(t, "left", left, off-60*float64(last), 1e-6)
		for name, other := range map[string]func() (float64, float64){
			"earlier load":    func() (float64, float64) { return at(first-1, last, f, air, set, "") },
			"full earlier":    func() (float64, float64) { return at(first, max(first+1, last-1), f, air, set, "") },
			"warmer concrete": func() (float64, float64) { return at(first, last, f+5, air, set, "") },
			"warmer air":      func() (float64, float64) { return at(first, last, f, air+5, set, "") },
			"sets sooner":     func() (float64, float64) { return at(first, last, f, air, set-0.5, "") },
			"a time given":    func() (float64, float64) { return at(first, last, f, air, set, " | "+clock(given)) },
		} {
			if got, _ := other(); got > off+1e-6 {
				t.Fatalf("%s: later by %v min", name, (got-off)/60)
			}
		}
	}
}

// Our estimate falls as the concrete warms, and hands off follows it.
func TestWarmerByEstimate(t *testing.T) {
	last := 48 * 3600.0
	for f := 40; f <= 110; f += 5 {
		w, res := run(t, "N | 7:00 | 18:00", fmt.Sprintf("concrete=%d °F", f))
		if off := w.Num("off"); off > last || w.Choice("rule") == ruleSet && off != 7*3600+res.Out.Num("set") {
			t.Errorf("%d °F: %s", f, calc.FormatClock(off))
		} else {
			last = off
		}
	}
}

// A typed time or limit that is looser than its house rule does not count, and one that
// is stricter does.
func TestStricterThanTheHouse(t *testing.T) {
	for _, c := range []struct {
		typed []string
		left  float64 // min
		noted bool
	}{
		{[]string{"hot-from=100 °F", "air=95 °F"}, 30, true},
		{[]string{"hot-wait=120 min", "air=95 °F"}, 30, true},
		{[]string{"hot-wait=120 min", "air=70 °F"}, 60, true},
		{[]string{"wait=120 min"}, 60, true},
		{[]string{"wait=45 min"}, 45, false},
		{[]string{"hot-from=70 °F", "air=75 °F"}, 30, false},
		{[]string{"hot-wait=20 min", "air=95 °F"}, 20, false},
	} {
		w, res := run(t, "A | 7:30 | 10:10", c.typed...)
		calctest.Near(t, strings.Join(c.typed, " "), w.Num("left"), 60*c.left, 1e-6)
		if calctest.Noted(res, calc.NoteHeld) != c.noted {
			t.Errorf("%v: %v", c.typed, res.Notes)
		}
	}
}

// A load over 90 °F is warned of.
func TestHotLoad(t *testing.T) {
	for concrete, want := range map[string]bool{"90 °F": false, "91 °F": true, "110 °F": true} {
		if res := calctest.Run(t, Calculator, "concrete="+concrete); calctest.Noted(res, noteHotLoad) != want {
			t.Errorf("%s: %v", concrete, res.Notes)
		}
	}
}
