package footingvolume

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The default case with 5 % of waste, computed by hand: 138' 8" less four widths of
// 16 in. is 133' 4"; by 16 × 8 in. that is 118.52 ft³. Stem wall 29.33 ft³, pads 18.75 ft³.
func TestFootingDefaultByHand(t *testing.T) {
	out := calctest.RunNotes(t, Calculator, []calc.Text{calc.NoteLooser}, "waste=5 %").Out
	calctest.Near(t, "net", calc.From(out.Num("net-yd"), "ft³"), 118.5185+29.3333+18.75, 0.001)
	calctest.Near(t, "order", calc.From(out.Num("order-yd"), "yd³"), 6.5, 1e-9)
	kinds := out.Rows("by-kind")
	sum := 0.0
	for _, k := range kinds {
		calctest.Near(t, "pair", k.Num("yd"), k.Num("m"), 0)
		sum += k.Num("yd")
	}
	if len(kinds) != 3 || kinds[1].Choice("kind") != stemWallKind {
		t.Errorf("kinds: %v", kinds)
	}
	calctest.Near(t, "kinds add up", sum, out.Num("net-m"), 1e-12)
}

func TestFootingNotes(t *testing.T) {
	for _, c := range []struct {
		part string
		want []calc.Text
	}{
		{"footing | 20 ft | 16 in | 6 in", nil},
		{"footing | 20 ft | 16 in | 5-7/8 in", []calc.Text{thin}},
		{"pad | 2 ft | 2 ft | 24 in", nil},
		{"pad | 2 ft | 2 ft | 24-1/8 in", []calc.Text{swapped}},
		{"grade-beam | 20 ft | 12 in | 4 ft", nil},
		{"grade-beam | 20 ft | 12 in | 4 in", nil},
		{"stem-wall | 20 ft | 8 in | 8 in", nil},
		{"stem-wall | 20 ft | 9 in | 8 in", []calc.Text{thick}},
		{"stem-wall | 20 ft | 3 in | 4 in", nil},
	} {
		calctest.RunNotes(t, Calculator, c.want, "parts="+c.part)
	}
	calctest.Refused(t, Calculator, "parts.2.corners",
		"parts=footing | 20 ft | 16 in | 8 in; footing | 5 ft | 16 in | 8 in | 4")
	if calctest.Try(Calculator, "parts=").State != calc.Bad {
		t.Error("no rows were accepted")
	}
}

// A larger input never needs less concrete, and twice the count needs twice the
// volume.
func TestFootingGrows(t *testing.T) {
	net := func(part string) float64 { return calctest.Run(t, Calculator, "parts="+part).Out.Num("net-m") }
	base := net("footing | 20 ft | 16 in | 8 in | 0 | 1")
	for _, more := range []string{"footing | 21 ft | 16 in | 8 in | 0 | 1", "footing | 20 ft | 17 in | 8 in | 0 | 1",
		"footing | 20 ft | 16 in | 9 in | 0 | 1", "footing | 20 ft | 16 in | 8 in | -1 | 1"} {
		if net(more) <= base {
			t.Errorf("%s does not need more", more)
		}
	}
	calctest.Near(t, "twice", net("footing | 20 ft | 16 in | 8 in | 0 | 2"), 2*base, 1e-12)
}

// The order covers the volume with waste, in whole steps of the unit sold in.
func TestFootingOrder(t *testing.T) {
	for _, c := range []struct{ sold, step, unit string }{{"yd3", "step-yd=0.25", "yd³"}, {"m3", "step-m=0.2", "m³"}} {
		out := calctest.Run(t, Calculator, "sold-in="+c.sold, c.step, "waste=12 %").Out
		order := calc.From(out.Num("order-m"), c.unit)
		calctest.Near(t, "waste", out.Num("with-waste-m"), 1.12*out.Num("net-m"), 1e-12)
		calctest.Near(t, "both units", out.Num("order-m"), out.Num("order-yd"), 0)
		if need := calc.From(out.Num("with-waste-m"), c.unit); order < need || order > need+0.25 {
			t.Errorf("order %v for %v", order, need)
		}
	}
}
