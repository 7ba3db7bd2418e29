package rateofrise

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

// The verdict changes where the age on return exceeds the window: a lift of
// 81 ft³ at 81 ft³/h takes one hour.
func TestVerdictTurns(t *testing.T) {
	job := []string{
		"length=81 ft",
		"core=12 in",
		"height=8 ft",
		"lift=1 ft",
		"rate=3 yd³/h",
		"moving=100 %",
		"stop=6 ft",
		"way=around",
	}
	for _, c := range []struct {
		age, window, want  string
		tight, late, stale bool
	}{
		{"60 min", "120 min", inTime, true, false, false},
		{"60 min", "119 min", tooLate, false, true, false},
		{"45 min", "120 min", inTime, false, false, false},
		{"45.1 min", "120 min", inTime, true, false, false},
		{"120 min", "120 min", tooLate, false, false, true},
	} {
		res := calctest.Run(t, Calculator, append(job, "age="+c.age, "window="+c.window)...)
		if got := res.Out.Choice("verdict"); got != c.want || calctest.Noted(res, noteTight) != c.tight ||
			calctest.Noted(res, noteLate) != c.late ||
			calctest.Noted(res, noteStale) != c.stale {
			t.Errorf("age %s, window %s: %s, notes %v", c.age, c.window, got, res.Notes)
		}
		if !calctest.Noted(res, noteAlive) {
			t.Error("no note on the vibrator test")
		}
	}
	res := calctest.Run(t, Calculator, append(job, "age=60 min", "window=119 min")...)
	if longest := calc.From(res.Out.Num("longest"), "ft"); math.Abs(longest-81*59.0/60) > 1e-6 {
		t.Errorf("longest loop %v ft", longest)
	}
	again := calctest.Run(t, Calculator, append(job[1:7], "length=79.65 ft", "age=60 min", "window=119 min")...)
	if again.Out.Choice("verdict") != inTime {
		t.Error("the hose is not back in time from the longest loop")
	}
}

// The limits of ACI 347 (14.7 ft/h, the stricter edition) and US Army EN5466 (5 ft/h) are open:
// there is no note at the limit, and one just above it.
func TestRiseLimits(t *testing.T) {
	for _, c := range []struct {
		inputs      []string
		fluid, fast bool
	}{ // one lift of 2 ft
		{[]string{"length=27 ft", "stop=27 ft", "core=12 in", "rate=5 yd³/h"}, false, false},
		{[]string{"length=27 ft", "stop=27 ft", "core=12 in", "rate=5.01 yd³/h"}, false, true},
		{[]string{"length=27 ft", "stop=27 ft", "core=12 in", "rate=14.7 yd³/h"}, false, true},
		{[]string{"length=27 ft", "stop=27 ft", "core=12 in", "rate=14.71 yd³/h"}, true, true},
		{[]string{"length=270 ft", "stop=2 ft", "core=12 in", "rate=15 yd³/h"}, true, false},
	} {
		one := calctest.Run(t, Calculator, append(c.inputs, "lift=2 ft", "height=2 ft")...)
		if calctest.Noted(one, noteFluid) != c.fluid || calctest.Noted(one, noteFast) != c.fast ||
			calctest.Noted(one, noteLiftFluid) {
			t.Errorf("one lift, %v: %v", c.inputs, one.Notes)
		}
		more := calctest.Run(t, Calculator, append(c.inputs, "lift=2 ft", "height=8 ft")...)
		if calctest.Noted(more, noteLiftFluid) != c.fluid || calctest.Noted(more, noteFast) != c.fast ||
			calctest.Noted(more, noteFluid) {
			t.Errorf("lifts of 2 ft, %v: %v", c.inputs, more.Notes)
		}
		// A wall that rises too fast is never called in time.
		over := c.fast || calctest.Noted(more, noteHouse)
		if verdict := more.Out.Choice("verdict"); over != (verdict == tooFast) {
			t.Errorf("%v: verdict %s", c.inputs, verdict)
		}
	}
}

func TestRiseEdges(t *testing.T) {
	if res := calctest.Run(t, Calculator, "length=5 ft", "stop=6 ft"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseStop) {
		t.Error("a stop longer than the loop is not refused")
	}
	res := calctest.Run(t, Calculator, "height=18 in", "lift=2 ft")
	if res.Out.Choice("verdict") != single || res.Out.Num("lifts") != 1 || res.Out.Has("spare") ||
		calctest.Noted(res, noteAlive) {
		t.Errorf("one lift: %v", res.Notes)
	}
	calctest.NearBy(t, "one lift is the whole height", res.Out.Num("loop-time"), res.Out.Num("pour-time"), 1e-12)
	if res := calctest.Run(t, Calculator, "wanted="); res.Out.Has("rate-stop") || res.Out.Has("rate-average") {
		t.Error("a pump rate without a wanted rise")
	}
}

// The earlier of the plant's window and ours counts, and the hose must be back by it.
func TestJointWindow(t *testing.T) {
	ours := calctest.Run(t, Calculator, "age=60 min", "window=120 min")
	for _, c := range []struct {
		window string
		backBy float64 // min
		noted  bool
	}{
		{"90 min", 30, false}, {"120 min", 60, false}, {"121 min", 60, true}, {"600 min", 60, true},
		{"30 min", 0, false},
	} {
		res := calctest.Run(t, Calculator, "age=60 min", "window="+c.window)
		calctest.Near(t, c.window, res.Out.Num("back-by")/60, c.backBy, 1e-9)
		if calctest.Noted(res, calc.NoteHeld) != c.noted {
			t.Errorf("%s: %v", c.window, res.Notes)
		}
		if c.noted && (res.Out.Num("spare") != ours.Out.Num("spare") ||
			res.Out.Choice("verdict") != ours.Out.Choice("verdict") ||
			res.Out.Num("longest") != ours.Out.Num("longest")) {
			t.Errorf("%s allows more than our own window", c.window)
		}
	}
	// A load of 90 min and a pass of 50 min: too late by any page, whatever the plant gives.
	late := calctest.Run(t, Calculator, "age=90 min", "window=300 min", "length=190 ft")
	if late.Out.Choice("verdict") != tooLate {
		t.Errorf("a pass back at the age of %v min is in time", late.Out.Num("return-age")/60)
	}
}

// There and back, the ends wait two passes for the hose, around a closed loop one.
// The longest pass is in time.
func TestThereAndBack(t *testing.T) {
	job := []string{
		"length=100 ft", "height=8 ft", "lift=2 ft", "rate=9.5 yd³/h", "moving=75 %", "age=45 min", "window=120 min",
	}
	loop := calctest.Run(t, Calculator, append(job, "way=around")...)
	back := calctest.Run(t, Calculator, append(job, "way=back")...)
	pass := loop.Out.Num("loop-time")
	calctest.NearBy(t, "around", loop.Out.Num("return-age"), 45*60+pass, 1e-12)
	calctest.NearBy(t, "there and back", back.Out.Num("return-age"), 45*60+2*pass, 1e-12)
	calctest.NearBy(t, "longest", back.Out.Num("longest"), loop.Out.Num("longest")/2, 1e-12)
	if calctest.Noted(loop, noteEnds) || !calctest.Noted(back, noteEnds) {
		t.Errorf("note on the ends: around %v, there and back %v", loop.Notes, back.Notes)
	}
	late := calctest.Run(t, Calculator, append(job[1:], "length=140 ft", "way=back")...)
	if late.Out.Choice("verdict") != tooLate || loop.Out.Choice("verdict") != inTime {
		t.Errorf("around %s, there and back %s", loop.Out.Choice("verdict"), late.Out.Choice("verdict"))
	}
}

// A rise over the house rule of 4 ft/h is noted, also where another rise or none is
// wanted. The planned wait counts, other pauses do not.
func TestHouseRise(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		noted   bool
		verdict string
	}{
		{[]string{"length=27 ft", "core=12 in", "rate=4 yd³/h", "moving=100 %"}, false, inTime},
		{[]string{"length=27 ft", "core=12 in", "rate=4.01 yd³/h", "moving=100 %"}, true, tooFast},
		{[]string{"length=27 ft", "core=12 in", "rate=4.01 yd³/h", "moving=99 %"}, true, tooFast},
		{[]string{"length=27 ft", "core=12 in", "rate=4.01 yd³/h", "wait=1 min"}, false, inTime},
		{[]string{"rate=15 yd³/h", "wait=3 min"}, false, inTime},
		{[]string{"rate=15 yd³/h", "wait=2 min"}, true, tooFast},
		{[]string{"rate=15 yd³/h", "moving=100 %"}, true, tooFast},
		{[]string{"rate=17 yd³/h", "moving=100 %", "wanted="}, true, tooFast},
		{[]string{"rate=17 yd³/h", "moving=75 %", "wanted="}, true, tooFast},
		{[]string{"rate=15 yd³/h", "moving=100 %", "wanted=3 ft/h"}, true, tooFast},
	} {
		res := calctest.Run(t, Calculator, append(c.typed, "lift=2 ft", "age=45 min")...)
		if got := res.Out.Choice("verdict"); calctest.Noted(res, noteHouse) != c.noted || got != c.verdict {
			t.Errorf("%v: %s, %v", c.typed, got, res.Notes)
		}
	}
}

// The wait after each pass is part of the time of a pass, and there is one less than lifts.
func TestWait(t *testing.T) {
	job := []string{"length=100 ft", "height=8 ft", "lift=2 ft", "rate=12 yd³/h", "moving=75 %", "age=45 min",
		"window=120 min"}
	for way, passes := range map[string]float64{"around": 1, "back": 2} {
		without := calctest.Run(t, Calculator, append(job, "way="+way)...)
		with := calctest.Run(t, Calculator, append(job, "way="+way, "wait=6 min")...)
		for id, minutes := range map[string]float64{"loop-time": 6, "return-age": 6 * passes, "pour-time": 18,
			"spare": -6 * passes} {
			calctest.NearBy(t, way+", "+id, with.Out.Num(id), without.Out.Num(id)+minutes*60, 1e-12)
		}
		longest := calc.From(with.Out.Num("longest"), "ft")
		again := calctest.Run(t, Calculator, append(job[1:], "way="+way, "wait=6 min",
			fmt.Sprintf("length=%v ft", longest))...)
		calctest.Near(t, way+", longest pass", again.Out.Num("spare")/60, 0, 1e-6)
	}
	if share := calc.From(placing.UsualShare, "%"); Calculator.In[7].Usual != fmt.Sprint(share, " %") {
		t.Errorf("the usual share of the time is %s, not %v %%", Calculator.In[7].Usual, share)
	}
}

// A rise over the Army's greatest names the house rule beside it, because that counts.
func TestWhichRiseCounts(t *testing.T) {
	res := calctest.Run(t, Calculator, "length=27 ft", "core=12 in", "lift=2 ft", "rate=5.5 yd³/h")
	note, ok := calctest.NoteOf(res, noteFast)
	said := calc.Locale{Style: quantity.Style{System: quantity.US}}.Say(note.Text, note.Slots...)
	if !ok || !strings.Contains(said, "5.0 ft/h") || !strings.Contains(said, "4.0 ft/h, which counts") {
		t.Errorf("%s; %v", said, res.Notes)
	}
}
