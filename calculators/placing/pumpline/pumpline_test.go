package pumpline

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/placing"
	"coursebook/calculators/quantity"
)

func TestLineVolumes(t *testing.T) {
	calctest.NearBy(
		t,
		"twice the bore, four times the volume",
		placing.LineVolume(0.1, 20),
		4*placing.LineVolume(0.05, 20),
		1e-12,
	)
	two := calctest.Run(t, Calculator, "lines=5 in | 100 ft; 3 in | 25 ft").Out
	calctest.NearBy(
		t,
		"rows add up",
		two.Num("line-m"),
		placing.LineVolume(0.127, 30.48)+placing.LineVolume(0.0762, 7.62),
		1e-12,
	)
	calctest.NearBy(t, "both units hold one volume", two.Num("line-yd"), two.Num("line-m"), 0)
	calctest.NearBy(t, "with the hopper", two.Num("held-yd"), two.Num("line-yd")+calc.SI(0.5, "yd³"), 1e-12)
	calctest.NearBy(t, "waste is ordered", two.Num("extra-yd"), two.Num("held-yd"), 1e-12)
	calctest.NearBy(
		t,
		"what is placed is not",
		calctest.Run(t, Calculator, "at-end=placed").Out.Num("extra-yd"),
		calc.SI(0.5, "yd³"),
		1e-12,
	)
	calctest.NearBy(t, "prime range", two.Num("prime-most-m"), 2*two.Num("prime-least-m"), 1e-12)
	if two.Num("prime-most-m") >= two.Num("line-m") {
		t.Error("a film of grout fills the line")
	}
}

// Volumes have the same units in both systems, and an order is rounded up.
func TestLineUnits(t *testing.T) {
	for _, f := range Calculator.Out {
		want := map[byte]string{'d': "yd³", 'm': "m³"}[f.ID[len(f.ID)-1]]
		if f.Display.Dim != quantity.Volume {
			continue
		}
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			if f.Display.In(sys).Unit != want {
				t.Errorf("%s is in %s", f.ID, f.Display.In(sys).Unit)
			}
		}
	}
	out := calctest.Run(t, Calculator).Out
	for i, f := range out.Fields() {
		if f.ID == "extra-yd" || f.ID == "extra-m" {
			if x := out.At(i).Num; quantity.Round(x, *f.Display, quantity.US) < x*(1-1e-12) {
				t.Errorf("%s is shown short", f.ID)
			}
		}
	}
}

// Limits: 51 lb (23 kg), the load constant of NIOSH; stone of a third of the bore,
// and of 3/8 in for hoses to 2-1/2 in.
func TestLineNotes(t *testing.T) {
	for _, c := range []struct {
		inputs                   []string
		lift, stone, narrow, end bool
	}{
		{nil, true, false, false, false},
		{[]string{"hanging=4 ft"}, false, false, false, false},
		{[]string{"stone=1 in"}, true, false, false, false},
		{[]string{"stone=1-1/16 in"}, true, true, false, false},
		{[]string{"hose=2.5 in", "hanging=4 ft", "stone=1/2 in"}, false, false, true, true},
		{[]string{"hose=2.5 in", "hanging=4 ft", "stone=3/8 in"}, false, false, false, true},
		{[]string{"lines=5 in | 100 ft; 2 in | 20 ft", "hose=2 in", "hanging=4 ft", "stone=3/4 in"}, false, true,
			false, false},
	} {
		res := calctest.Run(t, Calculator, c.inputs...)
		if calctest.Noted(res, noteLift) != c.lift || calctest.Noted(res, noteStone) != c.stone ||
			calctest.Noted(res, noteNarrow) != c.narrow ||
			calctest.Noted(res, noteEnd) != c.end {
			t.Errorf("%v: %v", c.inputs, res.Notes)
		}
		if !calctest.Noted(res, notePrime) {
			t.Error("no note on the prime")
		}
	}
	light := calctest.Run(t, Calculator, "hanging=4 ft", "empty=0 lb/ft").Out.Num("hanging-mass")
	calctest.NearBy(
		t,
		"the hose itself counts",
		calctest.Run(t, Calculator, "hanging=4 ft", "empty=4 lb/ft").Out.Num("hanging-mass"),
		light+calc.SI(16, "lb"),
		1e-9,
	)
}

// What is ordered and lifted is shown rounded up, and no finer than it is known.
func TestShownRounding(t *testing.T) {
	out := calctest.Run(t, Calculator, "lines=4 in | 150 ft", "hopper=0.5 yd³", "hose=3 in", "hanging=12 ft",
		"empty=4 lb/ft", "weight=150 lb/ft³").Out
	for i, f := range out.Fields() {
		want := map[string]string{"extra-yd": "1.0 yd³", "extra-m": "0.8 m³", "hanging-mass": "140 lb"}[f.ID]
		if got := (calc.Locale{}).Write(f, out.At(i)); want != "" && got != want {
			t.Errorf("%s is shown as %s, want %s", f.ID, got, want)
		}
	}
}
