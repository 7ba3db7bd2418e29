package tieload

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The spacing of ties is rounded down as in the Army subcourse EN5151, part C:
// 13.6 in. to 13 in.
func TestSpacingIsRoundedDown(t *testing.T) {
	res := calctest.Run(t, Calculator, "given=working", "strength=1420", "pressure=1250", "up=12", "missing=0")
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
		{[]string{"missing=1", "capacity=629"}, faceBack, noteBeyond, true},
		{[]string{"missing=1", "capacity=630"}, faceWithin, askCapacity, true},
		{[]string{"missing=0", "face=weak", "capacity=700"}, faceWithin, askCapacity, true},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("backing") != c.want || res.Out.Has("face-height") != c.height {
			t.Errorf("%v: %s, height %v", c.typed, res.Out.Choice("backing"), res.Out.Has("face-height"))
		}
		for _, n := range []calc.Text{noteBack, noteBeyond, noteUnused, askCapacity} {
			// A capacity that counts is asked about, whether it suffices or not.
			if calctest.Noted(res, n) != (n == c.note || n == askCapacity && c.height) {
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
		{[]string{"missing=0", "strength=1120"}, holds, ""},
		{[]string{"missing=0", "strength=1110"}, fails, noteOver}, // 630 psf on 8 by 16 in. is 560 lbf
		{nil, unrated, askStrength},
		{[]string{"given=working", "strength=840"}, holds, ""}, // one missing: 840 lbf
		{[]string{"given=working", "strength=839"}, fails, noteOver},
		{[]string{"missing=3", "strength=2000"}, fails, noteMany},
		{[]string{"missing=3", "strength=20000"}, doubt, noteMany},
		{[]string{"missing=2", "strength=20000"}, holds, ""},
		{[]string{"sharing=5", "strength=20000"}, doubt, noteShared},
		{[]string{"sharing=5", "strength=1000"}, fails, noteShared},
		{[]string{"sharing=4", "strength=20000"}, holds, noteShared},
		{[]string{"missing=6", "sharing=8", "strength=20000"}, doubt, noteShared},
		{[]string{"missing=0", "sharing=8", "strength=20000"}, holds, ""},
		{[]string{"sharing=3", "strength=2000"}, holds, noteShared},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("verdict") != c.want || c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, notes %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
	}
	res := calctest.Run(t, Calculator, "strength=2000")
	for _, n := range []calc.Text{noteOver, noteMany, noteShared, askStrength, askCapacity} {
		if calctest.Noted(res, n) {
			t.Errorf("the default case says %s", n.EN())
		}
	}
}

// A pressure under the book's least is asked about, and gives no spacing wider than the one
// entered.
func TestLowPressureIsAsked(t *testing.T) {
	for _, c := range []struct {
		typed  []string
		asked  bool
		widest bool
	}{
		{[]string{"pressure=630 psf", "strength=5000"}, false, true},
		{[]string{"pressure=629 psf", "strength=5000"}, true, false},
		{[]string{"pressure=10 psf", "strength=5000"}, true, false},
		{[]string{"pressure=600 psf", "strength=900"}, true, true}, // less than entered
	} {
		res := calctest.Run(t, Calculator, append([]string{"missing=0"}, c.typed...)...)
		if calctest.Noted(res, askLow) != c.asked || res.Out.Has("widest") != c.widest {
			t.Errorf("%v: %v, widest %v", c.typed, res.Notes, res.Out.Has("widest"))
		}
	}
}

// A factor below 2 is refused, not judged.
func TestFactorOfFormTies(t *testing.T) {
	for typed, want := range map[string]calc.State{"1": calc.Bad, "1.9": calc.Bad, "2": calc.OK, "3": calc.OK} {
		if res := calctest.Try(Calculator, "strength=2000", "factor="+typed); res.State != want {
			t.Errorf("factor %s: %s", typed, res.State)
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
