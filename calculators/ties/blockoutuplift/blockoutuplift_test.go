package blockoutuplift

import (
	"math"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// More concrete above a covered block-out, the same on both sides, changes
// neither the uplift nor the net push.
func TestUpliftEndsAtTheTop(t *testing.T) {
	a := calctest.Run(t, Calculator, "side-a=2' 6\"", "side-b=2' 6\"")
	b := calctest.Run(t, Calculator, "side-a=9'", "side-b=9'")
	if !calctest.Equal(a.Out.Num("uplift"), b.Out.Num("uplift")) || a.Out.Num("push") != 0 || b.Out.Num("push") != 0 {
		t.Errorf("%v and %v N", a.Out.Num("uplift"), b.Out.Num("uplift"))
	}
	if !calctest.Noted(a, noteEven) || calctest.Noted(a, noteUneven) {
		t.Error("no note on even levels")
	}
}

// Exchanging the sides changes no result.
func TestSidesMirror(t *testing.T) {
	a := calctest.Run(t, Calculator, "side-a=2' 6\"", "side-b=1' 6\"", "rating=250")
	b := calctest.Run(t, Calculator, "side-a=1' 6\"", "side-b=2' 6\"", "rating=250")
	for _, id := range []string{"uplift", "push", "straps"} {
		if a.Out.Num(id) != b.Out.Num(id) {
			t.Errorf("%s: %v and %v", id, a.Out.Num(id), b.Out.Num(id))
		}
	}
	if !calctest.Noted(a, noteUneven) || calctest.Noted(a, noteEven) {
		t.Error("no note on uneven levels")
	}
}

// Straps are rounded up, an exact number is not, and there are at least two.
func TestStraps(t *testing.T) {
	// Twice 5 by 1 by 2 ft in 150 lb/ft³, less 200 lb, is 2800 lbf.
	block := []string{"length=5'", "thickness=12", "height=2'", "side-a=3'", "side-b=3'", "own=200", "factor=2"}
	for _, c := range []struct {
		rating string
		want   float64
	}{{"1400", 2}, {"1399", 3}, {"560", 5}, {"559", 6}, {"5000", 2}} {
		res := calctest.Run(t, Calculator, append([]string{"rating=" + c.rating}, block...)...)
		if res.Out.Num("straps") != c.want {
			t.Errorf("rated %s: %v straps, want %v", c.rating, res.Out.Num("straps"), c.want)
		}
	}
}

// No rating of the maker is assumed: without it there is no number of straps.
func TestNoRatingNoStraps(t *testing.T) {
	res := calctest.Run(t, Calculator)
	if res.Out.Has("straps") || !calctest.Noted(res, askRating) || !calctest.Noted(res, noteFloats) {
		t.Errorf("straps without a rating: %v", res.Notes)
	}
}

// Sides farther apart than allowed stop the pour: no force and no strap is given.
func TestSidesFarApartAreRefused(t *testing.T) {
	for _, c := range []struct {
		typed []string
		want  calc.State
	}{
		{[]string{"side-a=3'", "side-b=2'"}, calc.OK},
		{[]string{"side-a=3'", "side-b=1' 11\""}, calc.Refused},
		{[]string{"side-a=0", "side-b=10'"}, calc.Refused},
		{[]string{"side-a=10'", "side-b=0", "rating=500"}, calc.Refused},
		{[]string{"side-a=3'", "side-b=2' 6\"", "apart=4\""}, calc.Refused},
		{[]string{"side-a=5'", "side-b=0", "apart=5'"}, calc.Bad},
	} {
		res := calctest.Try(Calculator, c.typed...)
		if res.State != c.want || calctest.Noted(res, refuseApart) != (c.want == calc.Refused) {
			t.Errorf("%v: %s, %v", c.typed, res.State, res.Notes)
		}
	}
}

// A closed sill is filled from one side: the sides may be one lift apart there, and no more.
// The push is the same as at an open sill.
func TestClosedSillTakesOneLift(t *testing.T) {
	for _, c := range []struct {
		typed []string
		want  calc.State
	}{
		{[]string{"side-a=2'", "side-b=0"}, calc.OK},
		{[]string{"side-a=3'", "side-b=1'"}, calc.OK},
		{[]string{"side-a=2' 1\"", "side-b=0"}, calc.Refused},
		{[]string{"side-a=0", "side-b=2' 1\""}, calc.Refused},
		{[]string{"side-a=2'", "side-b=0", "lift=1'"}, calc.Refused},
		{[]string{"side-a=2'", "side-b=1'", "lift=3'"}, calc.Refused},
	} {
		res := calctest.Run(t, Calculator, append([]string{"sill=closed"}, c.typed...)...)
		if res.State != c.want || calctest.Noted(res, noteClosed) != (c.want == calc.OK) {
			t.Errorf("%v: %s, %v", c.typed, res.State, res.Notes)
		}
	}
	one := calctest.Run(t, Calculator, "sill=closed", "side-a=3'", "side-b=2'").Out
	two := calctest.Run(t, Calculator, "sill=open", "side-a=3'", "side-b=2'").Out
	for _, id := range []string{"push", "uplift", "hold"} {
		if one.Num(id) != two.Num(id) {
			t.Errorf("%s: %v at a closed sill, %v at an open one", id, one.Num(id), two.Num(id))
		}
	}
}

// No typed limit lets the sides stand farther apart than the house rule.
func TestSidesApartAreHeldToTheRule(t *testing.T) {
	for _, typed := range []string{"apart=13\"", "apart=2'", "apart=4'"} {
		res := calctest.Run(t, Calculator, "side-a=3'", "side-b=2' 6\"", typed)
		if res.State != calc.Refused || !calctest.Noted(res, calc.RefuseFirm) {
			t.Errorf("%s: %s, %v", typed, res.State, res.Notes)
		}
	}
}

// A block-out heavier than solid concrete is asked about.
func TestHeavyBlockIsAsked(t *testing.T) {
	// 24 by 8 by 30 in. of concrete are 500 lb.
	for own, want := range map[string]bool{"15": false, "499": false, "501": true, "20000": true} {
		if res := calctest.Run(t, Calculator, "own="+own); calctest.Noted(res, askHeavy) != want {
			t.Errorf("%s lb: %v", own, res.Notes)
		}
	}
}

// Straps and weight together hold the factor times what lifts, also where the weight alone
// keeps the block-out down. Straps are never fewer than for the factor on the net uplift.
func TestStrapsHoldTheFactor(t *testing.T) {
	for _, own := range []float64{0, 15, 200, 290, 310, 599, 601} {
		typed := strconv.FormatFloat(own, 'f', -1, 64) + " lb"
		res := calctest.Run(t, Calculator, "length=2'", "thickness=12", "height=1'", "side-a=1'", "side-b=1'",
			"factor=2", "rating=100", "own="+typed)
		straps := math.Max(leastStraps, math.Ceil(res.Out.Num("hold")/calc.SI(100, "lbf")-1e-9))
		hold := calc.From(res.Out.Num("hold"), "lbf")
		calctest.Near(t, typed, hold, math.Max(0, 2*300-own), 1e-6) // 2 ft³ of 150 lb/ft³
		if hold < 2*math.Max(0, 300-own)-1e-6 || res.Out.Num("straps") != straps {
			t.Errorf("%s: %v lbf, %v straps", typed, hold, res.Out.Num("straps"))
		}
		if calctest.Noted(res, noteFloats) != (own < 300) ||
			calctest.Noted(res, noteBarely) != (own > 300 && own < 600) ||
			calctest.Noted(res, noteStays) != (own > 600) {
			t.Errorf("%s: %v", typed, res.Notes)
		}
	}
}

func TestHeavyBlockStays(t *testing.T) {
	res := calctest.Run(t, Calculator, "own=20000")
	if res.Out.Num("uplift") != 0 || res.Out.Num("straps") != leastStraps || !calctest.Noted(res, noteStays) ||
		calctest.Noted(res, noteFloats) {
		t.Errorf("uplift %v, straps %v", res.Out.Num("uplift"), res.Out.Num("straps"))
	}
}
