package bartakeoff

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func TestRefusals(t *testing.T) {
	if res := calctest.Run(t, Calculator, "length=2 ft", "first=13 in"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseFirst) {
		t.Error("a first vertical past the middle is accepted")
	}
	if res := calctest.Run(t, Calculator, "height=1 ft", "course-first=7 in"); res.State != calc.Refused ||
		!calctest.Noted(res, refuseCourse) {
		t.Error("crossing horizontals are accepted")
	}
	if res := calctest.Run(t, Calculator, "height=1 ft", "course-first=7 in", "courses=1"); res.State != calc.OK {
		t.Error("counted horizontals need no spacing")
	}
}

// The rows by size and the rows by part have the same total, and the stock bars
// are at least as long as the pieces cut from them.
func TestTakeOffAddsUp(t *testing.T) {
	for _, typed := range [][]string{
		nil, {"layers=2"}, {"dowels=no", "corners=0", "extra=0"}, {"horizontal=5"},
		{"height=30 ft", "stock=20 ft"}, {"waste=0 %"},
		{"vertical=15M", "horizontal=10M", "dowel=15M", "extra-bar=15M"},
	} {
		res := calctest.Run(t, Calculator, typed...)
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
	one, two := calctest.Run(t, Calculator, "extra=0"), calctest.Run(t, Calculator, "extra=0", "layers=2")
	calctest.Near(t, "two layers", two.Out.Num("net"), 2*one.Out.Num("net"), 1e-9)
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{Inputs: "height=19 ft", Note: noteLong, Want: true},
		{Inputs: "height=18 ft", Note: noteLong, Want: false},
		{Inputs: "lap=19 in", Note: askLap, Want: true},
		{Inputs: "lap=20 in", Note: askLap, Want: false},
		{Inputs: "horizontal=10M", Note: askMixed, Want: true},
		{Note: askMixed, Want: false},
		{Inputs: "spacing=49 in", Note: askWide, Want: true},
		{Inputs: "spacing=48 in", Note: askWide, Want: false},
		{Inputs: "course=60 in; courses=3", Note: askWide, Want: false},
	})
}
