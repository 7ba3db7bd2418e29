package radiuswall

import (
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The gaps of the cuts add up to the difference of the two faces, and the rest of
// the inside face is its developed length.
func TestCutsCloseTheDifference(t *testing.T) {
	for _, by := range []string{"cuts-by=spacing", "cuts-by=count", "cuts-by=gap"} {
		for _, at := range []string{"outside", "centre", "inside"} {
			out := calctest.RunNotes(t, Calculator, nil, by, "at="+at).Out
			n := out.Num("cuts")
			calctest.Near(t, by, n*out.Num("cut-gap"), out.Num("form-outside")-out.Num("form-inside"), 1e-9)
			calctest.Near(t, by, n*out.Num("cut-spacing"), out.Num("form-outside"), 1e-9)
			calctest.Near(t, by, n*out.Num("turn"), out.Num("curve-angle"), 1e-9)
			calctest.Near(t, "arc is the face measured", out.Num("arc"), out.Num(map[string]string{
				"outside": "core-outside", "centre": "core-middle", "inside": "core-inside"}[at]), 1e-9)
		}
	}
}

func TestCutCounts(t *testing.T) {
	out := calctest.Run(t, Calculator, "cuts-by=spacing", "spacing=8 in").Out
	if calc.From(out.Num("cut-spacing"), "in") > 8 ||
		calc.From(out.Num("form-outside"), "in")/(out.Num("cuts")-1) <= 8 {
		t.Errorf("%v cuts are not the fewest within 8 in.", out.Num("cuts"))
	}
	out = calctest.Run(t, Calculator, "cuts-by=gap", "gap=1/2 in").Out
	gap := calc.From(out.Num("cut-gap"), "in")
	if gap > 0.5 || gap*out.Num("cuts")/(out.Num("cuts")-1) <= 0.5 {
		t.Errorf("%v cuts are not the fewest of 1/2 in.", out.Num("cuts"))
	}
}

// The volume is the difference of two sectors, for each measured line.
func TestCurvedCore(t *testing.T) {
	out := calctest.Run(t, Calculator, "at=inside", "radius=12 ft", "angle=75°", "core=10 in", "height=9 ft").Out
	ri, ro := 12.0, 12+10.0/12
	calctest.Near(t, "volume", calc.From(out.Num("volume-yd"), "ft³"), 75.0/360*math.Pi*(ro*ro-ri*ri)*9, 1e-9)
	calctest.Near(t, "both units", out.Num("volume-m"), out.Num("volume-yd"), 0)
}

func TestRadiusLimits(t *testing.T) {
	// inside face of an 8 in. core with 2-1/2 in. foam: over 10-1/2 in.
	calctest.Refused(t, Calculator, "radius", "radius=10-1/2 in")
	calctest.RunNotes(t, Calculator, nil, "radius=10-9/16 in", "cuts-by=count", "count=90")
	calctest.Refused(t, Calculator, "radius", "radius=8 in", "foam=")
	calctest.RunNotes(t, Calculator, []calc.Text{curveNoFoam}, "radius=8-1/16 in", "foam=", "cuts-by=count", "count=90")
	calctest.Refused(t, Calculator, "chord", "by=chord", "chord=1 ft", "rise=5 in")
	res := calctest.Run(t, Calculator, "radius=10 in")
	calctest.Near(t, "limit", calc.From(res.Notes[0].Slots[0].SI(), "in"), 10.5, 1e-9)
}

func TestRadiusNotes(t *testing.T) {
	calctest.RunNotes(t, Calculator, nil, "by=chord", "chord=12 ft", "rise=6 ft")
	calctest.RunNotes(t, Calculator, []calc.Text{curveOver}, "by=chord", "chord=12 ft", "rise=6 ft 1 in")
	calctest.RunNotes(t, Calculator, []calc.Text{curveFlats}, "cuts-by=count", "count=8")
	if res := calctest.Run(t, Calculator, "foam="); res.Out.Has("form-inside") || !res.Out.Has("core-inside") {
		t.Error("faces of a form without foam")
	}
}

// Of two faces the outer one is always longer.
func TestFacesInOrder(t *testing.T) {
	out := calctest.Run(t, Calculator).Out
	last := math.Inf(1)
	for _, id := range []string{"form-outside", "core-outside", "core-middle", "core-inside", "form-inside"} {
		if out.Num(id) >= last {
			t.Errorf("%s is not shorter than the face outside it", id)
		}
		last = out.Num(id)
	}
}

// Cuts are shown no finer than a saw in foam works.
func TestCutsAreShownCoarsely(t *testing.T) {
	res := calctest.Run(t, Calculator, "cuts-by=count", "count=2")
	for i, f := range res.Out.Fields() {
		if f.ID != "cut-gap" && f.ID != "cut-spacing" {
			continue
		}
		if text := (calc.Locale{}).Write(f, res.Out.At(i)); strings.Contains(text, "/16") {
			t.Errorf("%s is shown as %s", f.ID, text)
		}
	}
}
