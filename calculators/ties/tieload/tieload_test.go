package tieload

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The Army subcourse EN5151 rounds the spacing of ties down: 13.6 in. is
// 13 in. (Part C), and so does this.
func TestSpacingIsRoundedDown(t *testing.T) {
	res := calctest.Run(t, Calculator, "strength=1420", "factor=1", "pressure=1250", "up=12", "missing=0")
	if got := shown(Calculator, res, "widest"); got != `13"` {
		t.Errorf("shown as %s", got)
	}
}

func TestFaceIsBackedUnlessItsCapacityIsKnown(t *testing.T) {
	for _, c := range []struct {
		typed  []string
		want   string
		note   calc.Text
		height bool
	}{
		{[]string{"missing=0"}, faceSound, "", false},
		{[]string{"missing=0", "capacity=300"}, faceSound, noNeed, false},
		{[]string{"missing=1"}, faceBack, back, false},
		{[]string{"missing=0", "face=weak"}, faceBack, back, false},
		{[]string{"missing=1", "capacity=599"}, faceBack, beyond, true},
		{[]string{"missing=1", "capacity=600"}, faceWithin, "", true},
		{[]string{"missing=0", "face=weak", "capacity=700"}, faceWithin, "", true},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("backing") != c.want || res.Out.Has("face-height") != c.height {
			t.Errorf("%v: %s, height %v", c.typed, res.Out.Choice("backing"), res.Out.Has("face-height"))
		}
		for _, n := range []calc.Text{back, beyond, noNeed} {
			if calctest.Noted(res, n) != (n == c.note) {
				t.Errorf("%v: note %s", c.typed, n.EN())
			}
		}
	}
}

func TestTieVerdict(t *testing.T) {
	for _, c := range []struct {
		typed []string
		want  string
		note  calc.Text
	}{
		{[]string{"missing=0", "strength=1070"}, holds, ""},
		{[]string{"missing=0", "strength=1060"}, fails, over}, // 600 psf on 8 by 16 in. is 533.3 lbf
		{[]string{"strength="}, unrated, tieAsk},
		{[]string{"factor=1.9"}, holds, factor},
		{[]string{"missing=3"}, fails, many},
		{[]string{"sharing=3"}, holds, share},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("verdict") != c.want || c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, notes %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
	}
	res := calctest.Run(t, Calculator)
	for _, n := range []calc.Text{over, factor, many, share, tieAsk} {
		if calctest.Noted(res, n) {
			t.Errorf("the default case says %s", n.EN())
		}
	}
}

// shown is an output as a reader of US units sees it.
func shown(c *calc.Calculator, res calc.Result, id string) string {
	for i, f := range res.Out.Fields() {
		if f.ID == id {
			return calc.Locale{}.Write(f, res.Out.At(i))
		}
	}
	return ""
}
