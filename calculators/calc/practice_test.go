package calc_test

import (
	"math"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

var tankDrill = calc.Drill{Of: tank, Vary: []string{"side", "boxes.1.side"}, Answer: "holds", Tolerance: "2 %"}

// Sampled inputs differ from seed to seed, are within their limits, read back as
// typed, and are the same for the same seed.
func TestSample(t *testing.T) {
	for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
		v := calc.Locale{Style: quantity.Style{System: sys}}
		seen := map[string]bool{}
		for seed := range uint64(60) {
			in, res, ok := tankDrill.Sample(seed, sys)
			if !ok || res.State != calc.OK {
				t.Fatalf("seed %d gives no case", seed)
			}
			again, _, _ := tankDrill.Sample(seed, sys)
			if again.Num("side") != in.Num("side") {
				t.Errorf("seed %d gives two different cases", seed)
			}
			if side := in.Num("side"); side < calc.SI(1.5, "ft")-1e-9 || side > calc.SI(4.5, "ft")+1e-9 {
				t.Errorf("side %v m is too far from 3 ft", side)
			}
			typed, notes := calc.Read(tank, v.Entries(in), v.Style)
			if len(notes) > 0 || math.Abs(typed.Num("side")-in.Num("side")) > 1e-12 {
				t.Errorf("seed %d: typed, %v becomes %v: %v", seed, in.Num("side"), typed.Num("side"), notes)
			}
			if in.Rows("boxes")[0].Text("name") != "small" {
				t.Error("a fixed input has changed")
			}
			seen[v.Write(tank.In[0], in.Value("side"))] = true
		}
		if len(seen) < 5 {
			t.Errorf("only %d different sides: %v", len(seen), seen)
		}
	}
}

func TestJudge(t *testing.T) {
	_, res, ok := tankDrill.Sample(7, quantity.US)
	if !ok {
		t.Fatal("no case")
	}
	right := calc.From(res.Out.Num("holds"), "ft³")
	us, comma := quantity.Style{}, quantity.Style{System: quantity.Metric, Mark: quantity.Comma}
	text := func(x float64) string { return strconv.FormatFloat(x, 'f', 3, 64) }
	for _, c := range []struct {
		typed string
		style quantity.Style
		want  calc.Verdict
	}{
		{text(right), us, calc.Right},
		{text(right*1.019) + " ft³", us, calc.Right},
		{text(right*1.03) + " ft³", us, calc.Wrong},
		{text(right*0.97) + " ft³", us, calc.Wrong},
		{text(right*0.0283168466) + " m3", us, calc.Right},
		{"much", us, calc.Unread},
		{"", us, calc.Unread},
		{"3 ft", us, calc.Unread},
		{"1,5", us, calc.Unread},
		{"0,0 m3", comma, calc.Wrong},
	} {
		if got, note := tankDrill.Judge(res, c.typed, c.style); got != c.want ||
			(got == calc.Unread) != (note.Text != "") {
			t.Errorf("%q: %s (%s), want %s", c.typed, got, note.Text, c.want)
		}
	}
	narrow := tankDrill
	narrow.Tolerance = "0.001 ft³"
	shown := calc.Locale{}.Write(tank.Out[0], res.Out.Value("holds"))
	if got, _ := narrow.Judge(res, shown, us); got != calc.Right {
		t.Errorf("the result as shown, %s, is judged %s", shown, got)
	}
}

func TestDrillProblems(t *testing.T) {
	for want, d := range map[string]calc.Drill{
		"": tankDrill,
		"tank has no output lid that is a number": {Of: tank, Answer: "lid",
			Tolerance: "2 %"},
		"tank has no output left that is a number": {Of: tank,
			Answer: "left", Tolerance: "2 %"},
		"the tolerance near is neither a share (2 %) nor an amount of the answer (1/16 in.)": {Of: tank,
			Answer: "holds", Tolerance: "near"},
		"tank has no input width": {Of: tank,
			Answer: "holds", Tolerance: "2 %", Vary: []string{"width"}},
		"tank has no input boxes.2.side": {Of: tank,
			Answer: "holds", Tolerance: "2 %", Vary: []string{"boxes.2.side"}},
		"depth has no usual value to vary": {Of: tank,
			Answer: "holds", Tolerance: "2 %", Vary: []string{"depth"}},
		"day is nothing that varies": {Of: tank,
			Answer: "holds", Tolerance: "2 %", Vary: []string{"day"}},
		"side: Side must be at most 30' 0\". A tank is no lake.": {Of: tank,
			Answer: "holds", Tolerance: "2 %", Set: []calc.Entry{{Path: "side", Text: "90 ft"}}},
	} {
		if got := d.Problem(); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
