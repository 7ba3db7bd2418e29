package ties

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The Army subcourse EN5151 rounds the spacing of ties down: 13.6 in. is
// 13 in. (Part C), and so does this.
func TestSpacingIsRoundedDown(t *testing.T) {
	res := calctest.Run(t, TieLoad, "strength=1420", "factor=1", "pressure=1250", "up=12", "missing=0")
	if got := shown(TieLoad, res, "widest"); got != `13"` {
		t.Errorf("shown as %s", got)
	}
}

// At the widest spacing a tie carries exactly its working load.
func TestSpacingTurnsLoadRound(t *testing.T) {
	for n := range 7 {
		for m := 1; m < 8; m++ {
			s := TieSpacing(900, 600, 1.5, float64(n), float64(m))
			if f := TieForce(600, TieArea(s, 1.5, float64(n), float64(m))); !calctest.Equal(f, 900) {
				t.Errorf("%d missing of %d: %v", n, m, f)
			}
		}
	}
}

// What the ties of a row carry together is the pressure on the whole row,
// however many are missing between two whole ones.
func TestLoadIsNeverLost(t *testing.T) {
	for n := range 7 {
		end := TieForce(600, TieArea(1, 1, float64(n), 2))
		if whole := 600 * float64(n+2); !calctest.Equal(2*end, whole) {
			t.Errorf("%d missing: two ties carry %v of %v", n, 2*end, whole)
		}
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
		{[]string{"missing=0", "capacity=300"}, faceSound, tieNoNeed, false},
		{[]string{"missing=1"}, faceBack, tieBack, false},
		{[]string{"missing=0", "face=weak"}, faceBack, tieBack, false},
		{[]string{"missing=1", "capacity=599"}, faceBack, tieBeyond, true},
		{[]string{"missing=1", "capacity=600"}, faceWithin, "", true},
		{[]string{"missing=0", "face=weak", "capacity=700"}, faceWithin, "", true},
	} {
		res := calctest.Run(t, TieLoad, c.typed...)
		if res.Out.Choice("backing") != c.want || res.Out.Has("face-height") != c.height {
			t.Errorf("%v: %s, height %v", c.typed, res.Out.Choice("backing"), res.Out.Has("face-height"))
		}
		for _, n := range []calc.Text{tieBack, tieBeyond, tieNoNeed} {
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
		{[]string{"missing=0", "strength=1070"}, tieHolds, ""},
		{[]string{"missing=0", "strength=1060"}, tieFails, tieOver}, // 600 psf on 8 by 16 in. is 533.3 lbf
		{[]string{"strength="}, tieUnrated, tieAsk},
		{[]string{"factor=1.9"}, tieHolds, tieFactor},
		{[]string{"missing=3"}, tieFails, tieMany},
		{[]string{"sharing=3"}, tieHolds, tieShare},
	} {
		res := calctest.Run(t, TieLoad, c.typed...)
		if res.Out.Choice("verdict") != c.want || c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, notes %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
	}
	res := calctest.Run(t, TieLoad)
	for _, n := range []calc.Text{tieOver, tieFactor, tieMany, tieShare, tieAsk} {
		if calctest.Noted(res, n) {
			t.Errorf("the default case says %s", n.EN())
		}
	}
}
