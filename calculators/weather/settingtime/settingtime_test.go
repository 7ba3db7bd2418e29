package settingtime

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/weather"
)

func TestTable(t *testing.T) {
	if h, ok := byTable(75); !ok || math.Abs(h-5) > 1e-12 {
		t.Errorf("between 70 and 80 °F: %v, %v", h, ok)
	}
	if h, ok := byTable(100); !ok || h != 1.67 {
		t.Errorf("last row: %v, %v", h, ok)
	}
	// The reference has 19 h at 30 °F, below what the calculator accepts.
	if h, ok := byTable(30); !ok || h != 19 {
		t.Errorf("first row: %v, %v", h, ok)
	}
	for _, f := range []float64{29, 101} {
		if _, ok := byTable(f); ok {
			t.Errorf("%v °F is outside the table", f)
		}
	}
}

func TestNotes(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
	}{
		{[]string{"concrete=49 °F"}, noteCold}, {[]string{"concrete=91 °F"}, noteHot},
		{[]string{"age=10 h"}, noteJoint}, {[]string{"age=120 min"}, noteOver},
		{[]string{"concrete=95 °F", "age=100 min"}, noteSoon},
		{[]string{"age=5 h"}, noteOver}, {[]string{"age=119 min"}, noteWindow}, {nil, noteWindow},
	} {
		if res := calctest.Run(t, Calculator, c.typed...); !calctest.Noted(res, c.note) {
			t.Errorf("%v: %v", c.typed, res.Notes)
		}
	}
	for _, n := range []calc.Text{noteCold, noteHot, noteJoint, noteSoon, noteOver} {
		if res := calctest.Run(t, Calculator, "concrete=70 °F", "age=60 min"); calctest.Noted(res, n) {
			t.Errorf("%s without cause", n.EN())
		}
	}
	for _, age := range []string{"age=120 min", "age=150 min", "age=5 h"} {
		for _, concrete := range []string{"concrete=60 °F", "concrete=95 °F"} {
			res := calctest.Run(t, Calculator, concrete, age)
			if calctest.Noted(res, noteSoon) || calctest.Noted(res, noteWindow) {
				t.Errorf("%s, %s: the next lift is asked for at the end of the joint window or later", concrete, age)
			}
		}
	}
	if res := calctest.Run(t, Calculator, "final=4 h"); res.State != calc.Refused || !calctest.Noted(res, refuseOrder) {
		t.Error("final set before initial set")
	}
	res := calctest.Run(t, Calculator, "concrete=50 °F", "age=")
	o := res.Out
	if o.Has("left") ||
		!(o.Num("earliest") <= o.Num("initial-set") && o.Num("initial-set") <= o.Num("latest") &&
			o.Num("initial-set") < o.Num("final-set")) {
		t.Errorf("%v", o)
	}
	if calctest.Run(t, Calculator, "concrete=105 °F").Out.Has("by-table") {
		t.Error("the old table ends at 100 °F")
	}
}

// The calculator opens on the setting times that count where the plant gives none, and notes
// an earlier final set.
func TestUsualSet(t *testing.T) {
	in, _ := calctest.RunCase(t, Calculator)
	calctest.Near(t, "initial", calc.From(in.Num("initial"), "h"), weather.UsualInitial, 1e-9)
	calctest.Near(t, "final", calc.From(in.Num("final"), "h"), weather.UsualFinal, 1e-9)
	calctest.Near(t, "reference", calc.From(in.Num("reference"), "°F"), weather.UsualSetAt, 1e-9)
	calctest.Near(t, "Q", in.Num("q"), weather.UsualQ, 1e-9)
	for final, noted := range map[string]bool{"6.9 h": true, "7 h": false, "9 h": false} {
		for _, concrete := range []string{"50 °F", "73 °F", "90 °F"} {
			res := calctest.Run(t, Calculator, "final="+final, "concrete="+concrete)
			if calctest.Noted(res, noteEarly) != noted {
				t.Errorf("%s at %s: %v", final, concrete, res.Notes)
			}
		}
	}
}

// What is left to the initial set is counted from the earliest time that is shown: a known
// set of 2 h may come after 1.0 h in concrete of 85 °F.
func TestLeftIsCountedFromTheEarliest(t *testing.T) {
	for _, c := range []struct {
		age   string
		left  float64 // min
		joint bool
	}{{"30 min", 30, false}, {"45 min", 15, false}, {"60 min", 0, true}, {"70 min", 0, true}} {
		res := calctest.Run(t, Calculator, "concrete=85 °F", "initial=2 h", "final=4 h", "age="+c.age)
		calctest.Near(t, "earliest", calc.From(res.Out.Num("earliest"), "h"), 1, 1e-9)
		if left := calc.From(res.Out.Num("left"), "min"); math.Abs(left-c.left) > 1e-9 {
			t.Errorf("%s: %v min left", c.age, left)
		}
		if calctest.Noted(res, noteJoint) != c.joint || c.joint && calctest.Noted(res, noteSoon) {
			t.Errorf("%s: %v", c.age, res.Notes)
		}
	}
}
