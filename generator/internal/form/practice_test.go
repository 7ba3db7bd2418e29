package form

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// A question has the inputs needed to answer it, in both systems, and the same numbers
// for the same seed; a tank of side a holds a³.
func TestNewNumberQuestion(t *testing.T) {
	d := calc.Drill{Of: tank, Vary: []string{"side"}, Answer: "holds", Tolerance: "2 %"}
	seen := map[string]bool{}
	for seed := range uint64(12) {
		a, ok := NewNumberQuestion(d, nil, quantity.Point, seed)
		if !ok {
			t.Fatalf("seed %d draws nothing", seed)
		}
		if b, _ := NewNumberQuestion(d, nil, quantity.Point, seed); b.Given[0] != a.Given[0] {
			t.Errorf("seed %d draws different numbers", seed)
		}
		if !a.Given[0].Varies || a.Given[0].Label != "Side" || len(a.Steps) == 0 || a.Unit != (Both{"ft³", "m³"}) {
			t.Fatalf("the question is %+v", a)
		}
		side := number(t, a.Given[0].Text.Metric, " m")
		holds := number(t, a.Asked.Shown.Metric, " m³")
		if math.Abs(holds-side*side*side) > 0.02+0.01*holds {
			t.Errorf("a side of %v m gives %v m³", side, holds)
		}
		seen[a.Given[0].Text.US] = true
	}
	if len(seen) < 4 {
		t.Errorf("only %d different sides", len(seen))
	}
	d.Set = []calc.Entry{{Path: "side", Text: "900 ft"}}
	if _, ok := NewNumberQuestion(d, nil, quantity.Point, 1); ok {
		t.Error("a tank beyond its limit is asked for")
	}
}

func number(t *testing.T, text, unit string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(strings.TrimSuffix(text, unit), 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// 3 ft cubed is 27 ft³ (GNU units 2.22: 0.764554858 m³).
func TestNewExample(t *testing.T) {
	e, notes := NewExample(tank, nil, quantity.Point, []calc.Entry{{Path: "side", Text: "3 ft"}})
	if len(notes) > 0 || e.Title == "" || len(e.Steps) == 0 || len(e.Given) == 0 {
		t.Fatalf("%+v, %v", e, notes)
	}
	if r := e.Steps[0].Result; !strings.HasPrefix(r.US, "27 ft³") || !strings.HasPrefix(r.Metric, "0.76455 m³") {
		t.Errorf("the step results in %+v", r)
	}
	if _, notes = NewExample(tank, nil, quantity.Point, []calc.Entry{{Path: "side", Text: "900 ft"}}); len(notes) == 0 {
		t.Error("an example beyond the limit is not refused")
	}
}
