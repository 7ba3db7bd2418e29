package blockoutuplift

import (
	"testing"

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
	a := calctest.Run(t, Calculator, "side-a=3'", "side-b=1'", "rating=250")
	b := calctest.Run(t, Calculator, "side-a=1'", "side-b=3'", "rating=250")
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
	// Uplift: 5 by 1 by 2 ft in 150 lb/ft³ less 200 lb is 1300 lbf.
	block := []string{"length=5'", "thickness=12", "height=2'", "side-a=3'", "side-b=3'", "own=200", "factor=1"}
	for _, c := range []struct {
		rating string
		want   float64
	}{{"650", 2}, {"649", 3}, {"260", 5}, {"259", 6}, {"5000", 2}} {
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

func TestHeavyBlockStays(t *testing.T) {
	res := calctest.Run(t, Calculator, "own=20000")
	if res.Out.Num("uplift") != 0 || res.Out.Num("straps") != 0 || !calctest.Noted(res, noteStays) ||
		calctest.Noted(res, noteFloats) {
		t.Errorf("uplift %v, straps %v", res.Out.Num("uplift"), res.Out.Num("straps"))
	}
}
