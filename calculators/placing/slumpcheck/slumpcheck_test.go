package slumpcheck

import (
	"math"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

// quarters calls f with every slump of the cone to a quarter of an inch, as it
// is typed.
func quarters(f func(s float64, typed string)) {
	for q := 0; q <= 44; q++ {
		s := float64(q) / 4
		f(s, strconv.FormatFloat(s, 'f', 2, 64)+" in")
	}
}

// Over 7 in. nothing goes in or is adjusted, whatever was ordered, by one test or
// by two; nor does it over 7 in. at the hose.
func TestNothingOverTheWallGoesIn(t *testing.T) {
	quarters(func(s float64, typed string) {
		for _, order := range []string{"7 in", "6 in", "4 in"} {
			for _, as := range []string{maximum, nominal} {
				for _, state := range []string{came, adjusted, out} {
					job := []string{"ordered=" + order, "ordered-as=" + as, "state=" + state}
					one := calctest.Run(t, Calculator, append(job, "chute="+typed)...).Out.Choice("verdict")
					two := calctest.Run(t, Calculator, append(job, "chute="+typed, "chute-2="+typed)...)
					hose := calctest.Run(t, Calculator, append(job, "chute=6 1/2 in", "hose="+typed)...)
					if s > 7 && (one != again || two.Out.Choice("verdict") != refuse || two.Out.Num("water") != 0) {
						t.Errorf("%v chute %s: %s, then %s", job, typed, one, two.Out.Choice("verdict"))
					}
					if v := hose.Out.Choice("verdict"); s > 7 && (v == goesIn || v == reducer || v == withheld) {
						t.Errorf("%v hose %s: %s", job, typed, v)
					}
					low := s < calc.From(two.Out.Num("least"), "in")-1e-9 && s < 6
					if s <= 7 && two.Out.Choice("verdict") == refuse && state != came && (state == out || !low) {
						t.Errorf("%v: a load of %s within the order is refused", job, typed)
					}
				}
			}
		}
	})
}

// A load of which one test is over 7 in. goes in only where the test at the hose is
// not, whichever test came first.
func TestOneTestOverTheWall(t *testing.T) {
	for _, chute := range [][]string{{"chute=7 1/4 in", "chute-2=6 3/4 in"}, {"chute=6 3/4 in", "chute-2=7 1/4 in"}} {
		for _, state := range []string{came, adjusted, out} {
			job := append([]string{"state=" + state}, chute...)
			if res := calctest.Run(t, Calculator, job...); res.Out.Choice("verdict") != again ||
				res.Out.Num("water") != 0 || calc.From(res.Out.Num("goes-by"), "in") < 7.2 {
				t.Errorf("%v: %s", job, res.Out.Choice("verdict"))
			}
			for hose, want := range map[string]string{"7 1/4 in": again, "7 in": goesIn, "6 in": goesIn} {
				if v := calctest.Run(t, Calculator, append(job, "hose="+hose)...).Out.Choice("verdict"); v != want {
					t.Errorf("%v, hose %s: %s", job, hose, v)
				}
			}
		}
	}
}

// Our order is 7 in. maximum: 6 to 7 in. goes in, 4-1/2 to 6 in. is adjusted and
// never refused, below that the plant is called.
func TestOurOrder(t *testing.T) {
	quarters(func(s float64, typed string) {
		one := calctest.Run(t, Calculator, "chute="+typed).Out.Choice("verdict")
		two := calctest.Run(t, Calculator, "chute="+typed, "chute-2="+typed).Out.Choice("verdict")
		wantOne, wantTwo := again, refuse
		switch {
		case s < 4.5:
			wantOne, wantTwo = plant, plant
		case s < 6:
			wantOne, wantTwo = reducer, reducer
		case s <= 7:
			wantOne, wantTwo = goesIn, goesIn
		}
		if one != wantOne || two != wantTwo {
			t.Errorf("%s: %s then %s, want %s then %s", typed, one, two, wantOne, wantTwo)
		}
	})
}

// A load is adjusted once. Stiffer than the order allows after that, it goes back. Otherwise under
// 6 in. nothing more goes in, and the plant is called, whatever is on the truck.
func TestAdjustedOnce(t *testing.T) {
	quarters(func(s float64, typed string) {
		for _, truck := range [][]string{{"reducer=yes"}, {"reducer=no", "withheld=12 US gal"}} {
			res := calctest.Run(t, Calculator, append(truck, "chute="+typed, "state=adjusted")...)
			want := again
			switch {
			case s < 4.5:
				want = refuse
			case s < 6:
				want = plant
			case s <= 7:
				want = goesIn
			}
			if v := res.Out.Choice("verdict"); v != want || res.Out.Num("water") != 0 {
				t.Errorf("%v, %s: %s, want %s", truck, typed, v, want)
			}
			if calctest.Noted(res, noteBack) != (s < 4.5) || calctest.Noted(res, noteSecond) != (want == plant) {
				t.Errorf("%v, %s: %v", truck, typed, res.Notes)
			}
		}
	})
}

// The water never brings a load past the aim by the fastest rule, is never more
// than was withheld, and is none once water went in or the load is going out.
func TestWater(t *testing.T) {
	quarters(func(s float64, typed string) {
		for _, w := range []float64{0, 3, 12, 60} {
			for _, state := range []string{came, adjusted, out} {
				res := calctest.Run(t, Calculator, "chute="+typed, "reducer=no", "load=8 yd³", "state="+state,
					"withheld="+strconv.FormatFloat(w, 'f', 1, 64)+" US gal")
				may, verdict := calc.From(res.Out.Num("water"), "US gal"), res.Out.Choice("verdict")
				if may > w+1e-9 || s+fastest*may/8 > math.Max(s, waterAim)+1e-9 || state != came && may != 0 {
					t.Errorf("%s %s, %v gal withheld: %v gal", typed, state, w, may)
				}
				if (may > 0) != (verdict == withheld) {
					t.Errorf("%s %s, %v gal withheld: %v gal and %s", typed, state, w, may, verdict)
				}
			}
		}
	})
}

// Half a gallon is the least that is measured in. Less is no water, and the plant is called.
func TestHalfAGallon(t *testing.T) {
	for _, c := range []struct {
		inputs []string
		want   string
	}{
		{[]string{"withheld=0.2 US gal", "load=8 yd³", "chute=5 in"}, plant},
		{[]string{"withheld=0.5 US gal", "load=8 yd³", "chute=5 in"}, withheld},
		{[]string{"withheld=20 US gal", "load=0.5 yd³", "chute=5 in"}, withheld}, // 0.6 gal
		{[]string{"withheld=20 US gal", "load=0.5 yd³", "chute=5 1/2 in"}, plant},
	} {
		inputs := append([]string{"reducer=no", "state=came"}, c.inputs...)
		res := calctest.Run(t, Calculator, inputs...)
		if v := res.Out.Choice("verdict"); v != c.want || calctest.Noted(res, noteNone) != (c.want == plant) {
			t.Errorf("%v: %s", inputs, v)
		}
	}
}

// The higher of two tests counts, whatever both are.
func TestTheHigherCounts(t *testing.T) {
	quarters(func(a float64, first string) {
		quarters(func(b float64, second string) {
			got := calctest.Run(t, Calculator, "chute="+first, "chute-2="+second).Out.Num("goes-by")
			if math.Abs(calc.From(got, "in")-max(a, b)) > 1e-9 {
				t.Fatalf("%s and %s: %v counts", first, second, got)
			}
		})
	})
}

// The two tests count alike: their order does not change what is done, except
// for the notes.
func TestTestsCountAlike(t *testing.T) {
	quarters(func(_ float64, a string) {
		quarters(func(_ float64, b string) {
			one := calctest.Run(t, Calculator, "chute="+a, "chute-2="+b)
			two := calctest.Run(t, Calculator, "chute="+b, "chute-2="+a)
			if one.Out.Choice("verdict") != two.Out.Choice("verdict") ||
				one.Out.Num("goes-by") != two.Out.Num("goes-by") {
				t.Fatalf("%s and %s: %s, turned round %s", a, b, one.Out.Choice("verdict"), two.Out.Choice("verdict"))
			}
		})
	})
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{Inputs: "chute=7 1/4 in", Note: noteAgain, At: "chute", Want: true},
		{Inputs: "chute=7 in", Note: noteAgain, Want: false},
		{Inputs: "chute=8 in; chute-2=7 1/2 in", Note: noteRefuse, At: "chute", Want: true},
		{Inputs: "chute=7 1/2 in; chute-2=7 1/2 in", Note: noteYours, Want: false},
		{Inputs: "ordered=6 in; ordered-as=nominal; chute=7 1/2 in; chute-2=7 1/4 in", Note: noteYours, At: "ordered",
			Want: true},
		{Inputs: "ordered=6 in; ordered-as=nominal; chute=8 in; chute-2=7 3/4 in", Note: noteYours, Want: false},
		{Inputs: "ordered=6 in; chute=6 3/4 in; chute-2=6 1/2 in", Note: noteWater, At: "ordered", Want: true},
		{Inputs: "ordered=6 in; chute=6 3/4 in; chute-2=6 1/2 in; state=adjusted", Note: noteRefuse, Want: false},
		{Inputs: "ordered=6 in; ordered-as=nominal", Note: noteWet, At: "ordered", Want: true},
		{Inputs: "ordered=7 in", Note: noteWet, Want: false},
		{Inputs: "ordered=4 in; ordered-as=nominal", Note: noteDry, At: "ordered", Want: true},
		{Inputs: "ordered=6 in", Note: noteDry, Want: false},
		{Inputs: "chute=4 in; chute-2=4 in", Note: noteStiff, At: "chute", Want: true},
		{Inputs: "chute=5 in; reducer=no; withheld=0", Note: noteNone, At: "reducer", Want: true},
		{Inputs: "chute=5 in; reducer=no; withheld=9 US gal", Note: noteNone, Want: false},
		{Inputs: "chute=5 in; withheld=9 US gal; state=out", Note: noteOnce, At: "state", Want: true},
		{Inputs: "chute=4 in; state=adjusted", Note: noteBack, At: "chute", Want: true},
		{Inputs: "chute=4 in", Note: noteBack, Want: false},
		{Inputs: "chute=4 in; state=adjusted", Note: noteStiff, Want: false},
		{Inputs: "chute=5 in; state=adjusted", Note: noteSecond, At: "state", Want: true},
		{Inputs: "chute=6 in; state=adjusted", Note: noteSecond, Want: false},
		{Inputs: "chute=7 in; chute-2=6 in", Note: noteApart, At: "chute-2", Want: true},
		{Inputs: "chute=7 in; chute-2=6 1/4 in", Note: noteApart, Want: false},
		{Inputs: "ordered=6 in; chute=6 1/2 in; chute-2=5 3/4 in", Note: noteSplit, At: "chute", Want: true},
		{Inputs: "ordered=6 in; chute=5 3/4 in; chute-2=6 1/2 in", Note: noteSplit, At: "chute-2", Want: true},
		{Inputs: "chute=7 1/2 in; chute-2=6 3/4 in", Note: noteOver, At: "hose", Want: true},
		{Inputs: "chute=6 3/4 in; chute-2=7 1/2 in", Note: noteOver, At: "hose", Want: true},
		{Inputs: "chute=6 3/4 in; chute-2=7 1/2 in; hose=6 1/2 in", Note: noteOver, Want: false},
		{Inputs: "chute=6 in", Note: noteCode, At: "chute", Want: true},
		{Inputs: "chute=6 1/4 in", Note: noteCode, Want: false},
		{Inputs: "chute=6 1/2 in; hose=7 1/4 in", Note: noteHose, At: "hose", Want: true},
		{Inputs: "chute=6 1/2 in; hose=5 in", Note: noteLoss, At: "hose", Want: true},
		{Inputs: "chute=6 1/2 in; hose=6 in", Note: noteLoss, Want: false},
		{Inputs: "chute=6 1/2 in; hose=5 in", Note: noteCode, At: "hose", Want: true},
		{Inputs: "chute=6 1/2 in; hose=6 in", Note: noteCode, Want: false},
		{Inputs: "chute=7 in; hose=3 in", Note: noteSet, At: "hose", Want: true},
		{Inputs: "chute=7 in; hose=4 1/2 in", Note: noteSet, Want: false},
	})
}

// A load that has stiffened to less than 4-1/2 in. at the hose never goes in, whatever it
// was at the chute.
func TestStiffAtTheHose(t *testing.T) {
	quarters(func(s float64, typed string) {
		for _, state := range []string{came, adjusted, out} {
			for _, chute := range []string{"6 in", "6 1/2 in", "7 in"} {
				v := calctest.Run(t, Calculator, "chute="+chute, "hose="+typed, "state="+state).Out.Choice("verdict")
				want := goesIn
				switch {
				case s < 4.5:
					want = plant
				case s > 7:
					want = again
				}
				if v != want {
					t.Errorf("%s, chute %s, hose %s: %s, want %s", state, chute, typed, v, want)
				}
			}
		}
	})
}

// A verdict does not change when the reader changes the units: every reading is
// written in the other units and typed again.
func TestVerdictInOtherUnits(t *testing.T) {
	metric := calc.Locale{Style: quantity.Style{System: quantity.Metric}}
	c := calctest.WithRules(Calculator)
	quarters(func(_ float64, typed string) {
		in, res := calctest.RunCase(t, Calculator, "chute="+typed)
		again, notes := calc.Read(c, metric.Entries(in), metric.Style)
		if len(notes) > 0 {
			t.Fatal(notes)
		}
		if got := calc.Run(c, again); got.Out.Choice("verdict") != res.Out.Choice("verdict") {
			t.Errorf("%s: %s, in metric %s", typed, res.Out.Choice("verdict"), got.Out.Choice("verdict"))
		}
	})
}

// Where one of two tests is over and one is not, a third decides: over again, the load is
// refused; within, the higher of the two within counts.
func TestThirdPortion(t *testing.T) {
	for _, c := range []struct {
		chute, second, third string
		verdict              string
		counts               float64 // in.
	}{
		{"7 1/4", "6 3/4", "7 1/2", refuse, 7.5}, {"7 1/4", "6 3/4", "7 1/4", refuse, 7.25},
		{"7 1/4", "6 3/4", "7", goesIn, 7}, {"6 1/2", "7 1/4", "6 1/4", goesIn, 6.5},
		{"8", "6 1/2", "6 3/4", goesIn, 6.75}, {"7 1/4", "6 3/4", "", again, 7.25},
		{"6 3/4", "6 1/2", "7 1/2", goesIn, 6.75}, // two within count, and no third is needed
	} {
		res := calctest.Run(t, Calculator, "ordered=7 in", "chute="+c.chute, "chute-2="+c.second, "chute-3="+c.third)
		if got := res.Out.Choice("verdict"); got != c.verdict {
			t.Errorf("%+v: %s, %v", c, got, res.Notes)
		}
		calctest.Near(t, "the slump that counts", calc.From(res.Out.Num("goes-by"), "in"), c.counts, 1e-9)
		decided := c.chute != "6 3/4" && c.verdict == goesIn
		if calctest.Noted(res, noteThird) != decided {
			t.Errorf("%+v: %v", c, res.Notes)
		}
	}
}
