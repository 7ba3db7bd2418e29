package tieload

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The spacing of ties is rounded down as in the Army subcourse EN5151, part C:
// 13.6 in. to 13 in.
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
		{[]string{"missing=0", "capacity=300"}, faceSound, noteUnused, false},
		{[]string{"missing=1"}, faceBack, noteBack, false},
		{[]string{"missing=0", "face=weak"}, faceBack, noteBack, false},
		{[]string{"missing=1", "capacity=599"}, faceBack, noteBeyond, true},
		{[]string{"missing=1", "capacity=600"}, faceWithin, "", true},
		{[]string{"missing=0", "face=weak", "capacity=700"}, faceWithin, "", true},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("backing") != c.want || res.Out.Has("face-height") != c.height {
			t.Errorf("%v: %s, height %v", c.typed, res.Out.Choice("backing"), res.Out.Has("face-height"))
		}
		for _, n := range []calc.Text{noteBack, noteBeyond, noteUnused} {
			if calctest.Noted(res, n) != (n == c.note) {
				t.Errorf("%v: note %s", c.typed, n.EN())
			}
		}
	}
}

func TestVerdict(t *testing.T) {
	for _, c := range []struct {
		typed []string
		want  string
		note  calc.Text
	}{
		{[]string{"missing=0", "strength=1070"}, holds, ""},
		{[]string{"missing=0", "strength=1060"}, fails, noteOver}, // 600 psf on 8 by 16 in. is 533.3 lbf
		{nil, unrated, askStrength},
		{[]string{"factor=1.9", "strength=2000"}, holds, noteFactor},
		{[]string{"missing=3", "strength=2000"}, fails, noteMany},
		{[]string{"sharing=3", "strength=2000"}, holds, noteShared},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("verdict") != c.want || c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, notes %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
	}
	res := calctest.Run(t, Calculator, "strength=2000")
	for _, n := range []calc.Text{noteOver, noteFactor, noteMany, noteShared, askStrength} {
		if calctest.Noted(res, n) {
			t.Errorf("the default case says %s", n.EN())
		}
	}
}

// shown formats an output in US units.
func shown(c *calc.Calculator, res calc.Result, id string) string {
	for i, f := range res.Out.Fields() {
		if f.ID == id {
			return calc.Locale{}.Write(f, res.Out.At(i))
		}
	}
	return ""
}
