package steel

import (
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Spaces between counted bars never exceed the spacing, and one bar fewer
// would make them.
func TestBarCountIsEnoughAndLeast(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		length, spacing := 1+20*rnd.Float64(), 0.1+rnd.Float64()
		edge := length / 2 * rnd.Float64()
		n := BarCount(length, edge, spacing)
		between := length - 2*edge
		if (n-1)*spacing < between*(1-calc.Slack) || n > 1 && (n-2)*spacing >= between*(1+calc.Slack) {
			t.Fatalf("%v bars over %v at %v", n, between, spacing)
		}
	}
}

// Lapped pieces cover the run, one fewer does not, and the steel is the run
// and its laps.
func TestPiecesCoverTheRun(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 8))
	for range 2000 {
		length, stock := 1+60*rnd.Float64(), 3+15*rnd.Float64()
		lap := stock / 2 * rnd.Float64()
		n := Pieces(length, lap, stock)
		if reach := n*stock - (n-1)*lap; reach < length*(1-calc.Slack) {
			t.Fatalf("%v pieces of %v reach %v of %v", n, stock, reach, length)
		}
		if less := (n-1)*stock - (n-2)*lap; n > 1 && less >= length*(1+calc.Slack) {
			t.Fatalf("%v pieces of %v are one too many for %v", n, stock, length)
		}
		if steel := LappedLength(length, n, lap); steel > n*stock*(1+calc.Slack) {
			t.Fatalf("%v of steel from %v pieces of %v", steel, n, stock)
		}
	}
}

// The rows by size and the rows by part hold the same steel, and stock bars
// hold at least what is cut from them.
func TestTakeOffAddsUp(t *testing.T) {
	for _, typed := range [][]string{
		nil, {"layers=2"}, {"dowels=no", "corners=0", "extra=0"}, {"horizontal=5"},
		{"height=30 ft", "stock=20 ft"}, {"waste=0 %"}, {"vertical=15M", "horizontal=10M", "dowel=15M", "extra-bar=15M"},
	} {
		res := calctest.Run(t, BarTakeOff, typed...)
		var byPart, bySize, stock float64
		for _, p := range res.Out.Rows("parts") {
			byPart += p.Num("weight")
			if long := p.Num("stock") * calc.SI(20, "ft"); long < p.Num("length")*(1-calc.Slack) {
				t.Errorf("%v %s: %v m from %v bars", typed, p.Choice("part"), p.Num("length"), p.Num("stock"))
			}
		}
		for _, s := range res.Out.Rows("sizes") {
			bySize += s.Num("weight")
			stock += s.Num("stock")
		}
		calctest.Near(t, "by part", byPart, res.Out.Num("net"), 1e-9*byPart)
		calctest.Near(t, "by size", bySize, res.Out.Num("weight"), 1e-9*bySize)
		calctest.Near(t, "stock bars", stock, res.Out.Num("stock-bars"), 0)
		if res.Out.Num("weight") < res.Out.Num("net") {
			t.Error("waste makes steel lighter")
		}
	}
	one, two := calctest.Run(t, BarTakeOff, "extra=0"), calctest.Run(t, BarTakeOff, "extra=0", "layers=2")
	calctest.Near(t, "two layers", two.Out.Num("net"), 2*one.Out.Num("net"), 1e-9)
}

// Stone: the smallest rule governs, and the sieve is the next one down.
func TestStoneRoundsDown(t *testing.T) {
	for _, c := range []struct {
		most    float64
		in, met float64 // inches, mm; 0 for none
	}{
		{9 * mm, 0, 0}, {0.375 * inch, 0.375, 0}, {10 * mm, 0.375, 10}, {0.49 * inch, 0.375, 10}, {0.5 * inch, 0.5, 10}, {14 * mm, 0.5, 14},
		{0.75 * inch, 0.75, 14}, {20 * mm, 0.75, 20}, {1 * inch, 1, 25}, {1.49 * inch, 1, 25}, {1.5 * inch, 1.5, 25}, {40 * mm, 1.5, 40}, {100 * mm, 1.5, 40},
	} {
		calctest.Near(t, "inch sieve", sieve(inchSizes[:], c.most)/inch, c.in, 1e-12)
		calctest.Near(t, "metric sieve", sieve(metricSizes[:], c.most)/mm, c.met, 1e-12)
	}
	for _, c := range []struct {
		typed   []string
		governs string
	}{
		{nil, byGap}, {[]string{"core=4 in"}, byForms}, {[]string{"cover=0.75 in"}, byCover}, {[]string{"slab=2 in"}, bySlab},
		{[]string{"hose=2.6 in"}, byHose}, {[]string{"hose=2 in"}, bySmall}, {[]string{"hose=2.6 in", "stone=rounded"}, byGap},
	} {
		res := calctest.Run(t, AggregateSize, c.typed...)
		if got := res.Out.Choice("governs"); got != c.governs {
			t.Errorf("%v: %s governs, want %s", c.typed, got, c.governs)
		}
		for _, r := range res.Out.Rows("rules") {
			if r.Num("most") < res.Out.Num("most")*(1-calc.Slack) {
				t.Errorf("%v: %s is tighter than the result", c.typed, r.Choice("rule"))
			}
		}
	}
}
