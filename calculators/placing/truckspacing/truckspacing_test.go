package truckspacing

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The guide's job (65 min round trip, 10 min each) with too few, enough and
// too many trucks; 5 trucks make 10 yd³ every 13 min, 46.15 yd³/h.
func TestFeed(t *testing.T) {
	guide := []string{
		"load=5 min",
		"check=5 min",
		"haul=20 min",
		"wait=0 min",
		"wash=5 min",
		"truck=10 yd³",
		"rate=60 yd³/h",
		"order=150 yd³",
	}
	for _, c := range []struct {
		have        string
		feed        string
		pump, truck float64 // min
		rate        float64 // yd³/h
	}{
		{"have=5", starved, 3, 0, 600.0 / 13},
		{"have=7", fed, 0, 5, 60},
		{"have=", fed, 0, 5, 60},
		{"have=9", fed, 0, 25, 60},
		{"have=15", fed, 0, 0, 60},
		{"have=40", fed, 0, 0, 60},
	} {
		res := calctest.Run(t, Calculator, append(guide, c.have)...)
		if res.Out.Choice("feed") != c.feed || calctest.Noted(res, noteStarved) != (c.feed == starved) {
			t.Errorf("%s: %s", c.have, res.Out.Choice("feed"))
		}
		calctest.NearBy(t, c.have+" pump", res.Out.Num("pump-wait")+60, 60*(1+c.pump), 1e-9)
		calctest.NearBy(t, c.have+" truck", res.Out.Num("truck-wait")+60, 60*(1+c.truck), 1e-9)
		calctest.NearBy(t, c.have+" rate", calc.From(res.Out.Num("real-rate"), "yd³/h"), c.rate, 1e-9)
	}
	// An empty drive back counts as long as the drive out.
	calctest.NearBy(t, "cycle", calctest.Run(t, Calculator, guide...).Out.Num("cycle"), 65*60, 1e-12)
}

// ASTM C94, older editions: 90 min to the end of discharge. There is no note at
// the limit, and one a minute later.
func TestDischargeLimit(t *testing.T) {
	job := []string{
		"load=0 min",
		"check=0 min",
		"wait=0 min",
		"wash=0 min",
		"truck=10 yd³",
		"rate=20 yd³/h",
		"order=10 yd³",
	}
	for _, c := range []struct {
		haul      string
		old, near bool
	}{{"60 min", false, true}, {"61 min", true, false}, {"46 min", false, true}, {"45 min", false, false}} {
		res := calctest.Run(t, Calculator, append(job, "haul="+c.haul)...)
		if calctest.Noted(res, noteOld) != c.old || calctest.Noted(res, noteNear) != c.near ||
			(res.Out.Choice("feed") == old) != c.old {
			t.Errorf("haul %s: %v", c.haul, res.Notes)
		}
	}
	queue := []string{
		"load=5 min",
		"check=5 min",
		"haul=20 min",
		"wait=0 min",
		"wash=5 min",
		"truck=10 yd³",
		"rate=60 yd³/h",
		"order=150 yd³",
		"limit=60 min",
	}
	if !calctest.Noted(calctest.Run(t, Calculator, append(queue, "have=9")...), noteQueue) ||
		calctest.Noted(calctest.Run(t, Calculator, append(queue, "have=7")...), noteQueue) {
		t.Error("wrong note on trucks that wait past the limit")
	}
}

// A faster pump needs more trucks and never makes the concrete older.
func TestTrucksMonotonic(t *testing.T) {
	last, age := 0.0, math.Inf(1)
	for _, rate := range []string{"5", "10", "15", "20", "30", "45", "60", "90"} {
		res := calctest.Run(t, Calculator, "order=900 yd³", "rate="+rate)
		if n := res.Out.Num("trucks"); n < last || res.Out.Num("age-last") > age {
			t.Errorf("at %s: %v trucks after %v", rate, n, last)
		}
		last, age = res.Out.Num("trucks"), res.Out.Num("age-last")
	}
}

// An order smaller than a truck is one load: it empties in its own time, and a
// larger truck changes nothing.
func TestOrderBelowOneTruck(t *testing.T) {
	small := calctest.Run(t, Calculator, "order=5 yd³", "truck=9 yd³", "rate=12 yd³/h").Out
	same := calctest.Run(t, Calculator, "order=5 yd³", "truck=5 yd³", "rate=12 yd³/h").Out
	calctest.Near(t, "minutes to empty", small.Num("spacing")/60, 25, 1e-9)
	calctest.Near(t, "minutes, age of the last", small.Num("age-last")/60, 60, 1e-9) // 5 + 5 + 20 + 5 + 25
	for _, id := range []string{"spacing", "age-last", "cycle", "real-rate", "loads", "trucks"} {
		if small.Num(id) != same.Num(id) {
			t.Errorf("%s: %v in a large truck, %v in one of the size", id, small.Num(id), same.Num(id))
		}
	}
}

// A pump that stands longer for each truck than a pause may be planned is no plan, and
// neither a longer pause typed nor a slower pump with the same trucks hides it.
func TestALongWaitIsNoPlan(t *testing.T) {
	for _, c := range []struct{ typed, feed string }{
		{"have=1", hungry}, {"have=1; pause=60 min", hungry}, {"have=2", starved}, {"have=3", fed},
		{"have=5; load=5 min; check=5 min; haul=20 min; wait=0 min; wash=5 min; truck=10 yd³; rate=60 yd³/h; " +
			"order=150 yd³", starved},
		{"have=5; load=5 min; check=5 min; haul=20 min; wait=0 min; wash=5 min; truck=10 yd³; rate=60 yd³/h; " +
			"order=150 yd³; pause=2 min", hungry},
		{"have=1; limit=60 min", old},
	} {
		res := calctest.Run(t, Calculator, calctest.Inputs(c.typed)...)
		if got := res.Out.Choice("feed"); got != c.feed {
			t.Errorf("%s: %s, want %s", c.typed, got, c.feed)
		}
		if calctest.Noted(res, noteHungry) == calctest.Noted(res, noteStarved) && res.Out.Num("pump-wait") > 1 {
			t.Errorf("%s: %v", c.typed, res.Notes)
		}
	}
}
