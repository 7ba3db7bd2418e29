package houseorder

import (
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func run(t *testing.T, inputs string) calc.Result {
	t.Helper()
	return calctest.Run(t, Calculator, strings.Split(inputs, "; ")...)
}

// The same house has the same volume, wherever its sizes are taken.
func TestWhereSizesAreTaken(t *testing.T) {
	want := run(t, "length=40 ft; width=28 ft; height=9 ft; core=6 in").Out.Num("net-yd")
	for _, inputs := range []string{
		"measured=inside; length=39 ft; width=27 ft; height=9 ft; core=6 in",
		"measured=centre; length=39.5 ft; width=27.5 ft; height=9 ft; core=6 in",
	} {
		if got := run(t, inputs).Out.Num("net-yd"); math.Abs(got-want) > 1e-9*want {
			t.Errorf("%s: %v, want %v", inputs, got, want)
		}
	}
}

// A longer, wider, higher or thicker wall never takes less.
func TestMoreTakesMore(t *testing.T) {
	least := run(t, "length=30 ft; width=20 ft; height=8 ft; core=6 in").Out.Num("net-yd")
	for _, inputs := range []string{
		"length=31 ft; width=20 ft; height=8 ft; core=6 in", "length=30 ft; width=21 ft; height=8 ft; core=6 in",
		"length=30 ft; width=20 ft; height=9 ft; core=6 in", "length=30 ft; width=20 ft; height=8 ft; core=8 in",
	} {
		if got := run(t, inputs).Out.Num("net-yd"); got <= least {
			t.Errorf("%s: %v, not over %v", inputs, got, least)
		}
	}
}

// A core that leaves no room inside is refused.
func TestNoRoomInside(t *testing.T) {
	if res := run(t, "length=3 ft; width=20 ft; height=8 ft; core=18 in"); res.State != calc.Refused {
		t.Errorf("%v", res.State)
	}
	if res := run(t, "measured=inside; length=1 ft; width=20 ft; height=8 ft; core=18 in"); res.State != calc.OK {
		t.Errorf("%v: %v", res.State, res.Notes)
	}
}
