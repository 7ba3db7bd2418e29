package weather

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Colder air never asks for less, nor does a thinner section.
func TestColdRunsTheRightWay(t *testing.T) {
	for i, row := range coldRows {
		if row.mixed[0] <= row.placed || row.mixed[1] <= row.mixed[0] || row.mixed[2] <= row.mixed[1] {
			t.Errorf("row %d: %v", i, row)
		}
		if i > 0 && (row.placed >= coldRows[i-1].placed || row.drop >= coldRows[i-1].drop || row.mixed[2] >= coldRows[i-1].mixed[2]) {
			t.Errorf("row %d against the one before: %v", i, row)
		}
	}
	for _, s := range []string{serviceSheltered, serviceExposed, servicePartly} {
		d := protectionDays(s)
		if d.frost[1] >= d.frost[0] || d.strength[1] >= d.strength[0] || d.strength[0] < d.frost[0] {
			t.Errorf("%s: %v", s, d)
		}
	}
}

func TestColdNotes(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		verdict string
		note    calc.Text
	}{
		{[]string{"concrete=54 °F"}, warmNot, noteTooCold},
		{[]string{"concrete=55 °F"}, warmOK, noteCooling},
		{[]string{"concrete=65 °F"}, warmOK, noteSlowly},
		{[]string{"concrete=91 °F"}, warmOK, noteOverhot},
		{[]string{"concrete="}, warmNone, noteSlowly},
		{[]string{"concrete=65 °F", "air=45 °F"}, warmOK, noteMild},
		{[]string{"concrete=65 °F", "surface=45 °F"}, warmOK, noteAtOnce},
		{[]string{"concrete=65 °F", "surface=50 °F"}, warmOK, noteKept},
		{[]string{"concrete=65 °F", "service=partly"}, warmOK, notePartly},
		{[]string{"concrete=65 °F", "service=loaded"}, warmOK, noteLoaded},
	} {
		res := calctest.Run(t, ColdWeather, c.typed...)
		if res.Out.Choice("verdict") != c.verdict || !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
	}
	if calctest.Run(t, ColdWeather, "service=loaded").Out.Has("strength") {
		t.Error("days are told for a full load")
	}
	// 60 °F under the cover, 0 °F outside, 8 in. wall: 60 of 50 F° in 24 h.
	calctest.Near(t, "uncover", calctest.Run(t, ColdWeather, "air=0 °F", "surface=60 °F").Out.Num("uncover")/3600, 28.8, 1e-9)
}

func TestHotLoads(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		verdict string
		left    float64 // min
		note    calc.Text
	}{
		{[]string{"concrete=75 °F"}, loadGood, 55, askCounter},
		{[]string{"concrete=75 °F", "age=80 min"}, loadHurry, 10, noteHurry},
		{[]string{"concrete=75 °F", "age=95 min"}, loadLate, 0, noteLate},
		{[]string{"concrete=75 °F", "turns=301"}, loadLate, 55, noteTurns},
		{[]string{"concrete=86 °F"}, loadGood, 25, noteHeat86},
		{[]string{"concrete=85.9 °F"}, loadGood, 55, noteEighty},
		{[]string{"concrete=86 °F", "hot-time="}, loadGood, 55, noteEighty},
		{[]string{"concrete=96 °F", "hot-time=120 min"}, loadHot, 55, noteTooHot},
		{[]string{"concrete=75 °F", "rule=c94-new"}, loadGood, 55, noteAgreed},
	} {
		res := calctest.Run(t, HotWeather, c.typed...)
		if res.Out.Choice("verdict") != c.verdict || !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
		calctest.Near(t, "time left", res.Out.Num("left")/60, c.left, 1e-9)
	}
	if calctest.Noted(calctest.Run(t, HotWeather, "concrete=79 °F"), noteEighty) || calctest.Noted(calctest.Run(t, HotWeather, "concrete=85.9 °F"), noteHeat86) {
		t.Error("a note on heat comes too early")
	}
	if res := calctest.Run(t, HotWeather, "concrete=75 °F", "rule=own", "own-time=45 min"); res.Out.Has("turns-limit") || res.Out.Num("limit") != 45*60 {
		t.Errorf("own rule: %v", res.Out.Num("limit"))
	}
}

func TestClock(t *testing.T) {
	for _, c := range []struct {
		text string
		want int
		ok   bool
	}{
		{"7:40", 460, true}, {"07:40", 460, true}, {"0:00", 0, true}, {"23:59", 1439, true},
		{"24:00", 0, false}, {"7:60", 0, false}, {"740", 0, false}, {"7:4", 0, false}, {"", 0, false}, {":40", 0, false}, {"7:40:", 0, false}, {"7 40", 0, false}, {"123:00", 0, false},
	} {
		got, ok := clock(c.text)
		if ok != c.ok || ok && got != c.want {
			t.Errorf("%q: %d, %v", c.text, got, ok)
		}
	}
	if res := calctest.Run(t, HotWeather, "batched=23:10", "concrete=75 °F"); res.Out.Text("by") != "00:40" {
		t.Errorf("past midnight: %s", res.Out.Text("by"))
	}
	if res := calctest.Run(t, HotWeather, "batched=10am"); res.State != calc.Refused || !calctest.Noted(res, refuseClock) {
		t.Error("a batch time that is none")
	}
}

// Warmer is sooner; the known time comes back at its own temperature; there
// and back gives the start; rule and equation agree within a third of each
// other from 50 to 90 °F.
func TestSetting(t *testing.T) {
	last := math.Inf(1)
	for f := 33.0; f <= 110; f++ {
		k, r := calc.SI(f, "°F"), calc.SI(73, "°F")
		set := SetArrhenius(5, 5000, k, r)
		if set >= last {
			t.Fatalf("slower at %v °F", f)
		}
		last = set
		calctest.Near(t, "there and back", SetArrhenius(set, 5000, r, k), 5, 1e-9)
		if f >= 50 && f <= 90 && math.Abs(SetDoubling(5, f, 73)/set-1) > 0.1 {
			t.Errorf("%v °F: rule %v, equation %v", f, SetDoubling(5, f, 73), set)
		}
	}
	calctest.Near(t, "own temperature", SetArrhenius(5, 5000, 296, 296), 5, 1e-12)
	calctest.Near(t, "doubling", SetDoubling(5, 53, 73), 10, 1e-12)
}

func TestSetTable(t *testing.T) {
	if h, ok := setByTable(75); !ok || math.Abs(h-5) > 1e-12 {
		t.Errorf("between 70 and 80 °F: %v, %v", h, ok)
	}
	if h, ok := setByTable(100); !ok || h != 1.67 {
		t.Errorf("last row: %v, %v", h, ok)
	}
	// The reference has 19 h at 30 °F, below what the calculator accepts.
	if h, ok := setByTable(30); !ok || h != 19 {
		t.Errorf("first row: %v, %v", h, ok)
	}
	for _, f := range []float64{29, 101} {
		if _, ok := setByTable(f); ok {
			t.Errorf("%v °F is outside the table", f)
		}
	}
}

func TestSettingNotes(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
	}{
		{[]string{"concrete=49 °F"}, noteSetCold}, {[]string{"concrete=91 °F"}, noteSetHot},
		{[]string{"age=10 h"}, noteJoint}, {[]string{"age=5 h"}, noteSoon},
	} {
		if res := calctest.Run(t, SettingTime, c.typed...); !calctest.Noted(res, c.note) {
			t.Errorf("%v: %v", c.typed, res.Notes)
		}
	}
	for _, n := range []calc.Text{noteSetCold, noteSetHot, noteJoint, noteSoon} {
		if res := calctest.Run(t, SettingTime, "concrete=70 °F", "age=60 min"); calctest.Noted(res, n) {
			t.Errorf("%s without cause", n.EN())
		}
	}
	if res := calctest.Run(t, SettingTime, "final=4 h"); res.State != calc.Refused || !calctest.Noted(res, refuseOrder) {
		t.Error("final set before initial set")
	}
	res := calctest.Run(t, SettingTime, "concrete=50 °F", "age=")
	o := res.Out
	if o.Has("left") || !(o.Num("earliest") <= o.Num("initial-set") && o.Num("initial-set") <= o.Num("latest") && o.Num("initial-set") < o.Num("final-set")) {
		t.Errorf("%v", o)
	}
	if calctest.Run(t, SettingTime, "concrete=105 °F").Out.Has("by-table") {
		t.Error("the old table ends at 100 °F")
	}
}
