package quantity

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

var styles = []Style{{US, Point}, {US, Comma}, {Metric, Point}, {Metric, Comma}}

// displays are formats of every unit: without a step, with fine and coarse steps,
// with every rounding; and lengths as on a tape.
func displays() []Display {
	var all []Display
	for _, way := range []Rounding{Nearest, Up, Down} {
		for _, u := range units {
			for _, step := range []float64{0, 0.001, 0.05, 0.25, 1, 2.5, 50} {
				sc := UnitDisplay{Unit: u.Symbol, Step: step, Rounding: way}
				all = append(all, Display{Dim: u.Dim, US: sc})
			}
		}
		for _, form := range []Form{FeetInches, Inches} {
			for _, step := range []float64{0, 1.0 / 64, 1.0 / 16, 0.25, 0.5, 1, 6} {
				all = append(all, Display{Dim: Length, US: UnitDisplay{Form: form, Step: step, Rounding: way}})
			}
		}
	}
	return all
}

// Parse reads the text of Format back to the value of Round, to the last bit, and
// Format writes that as the same text.
func checkRoundTrip(t *testing.T, x float64, display Display, style Style) {
	t.Helper()
	text := Format(x, display, style)
	want := Round(x, display, style.System)
	got, err := Parse(text, display, style)
	switch {
	case err != nil:
		t.Errorf("%v in %+v is written %q, which is refused: %v", x, display.In(style.System), text, err)
	case got != want:
		t.Errorf("%v in %+v is written %q, read as %v, rounded as %v", x, display.In(style.System), text, got, want)
	case Format(got, display, style) != text:
		t.Errorf("%v in %+v is written %q, then %q", x, display.In(style.System), text, Format(got, display, style))
	case strings.HasPrefix(text, "-") && strings.Trim(text, "-0.,%° ") == "":
		t.Errorf("%v is written %q", x, text)
	}
	exact := Exact(x, display, style)
	near7, err := Parse(exact, display, style)
	u := display.unit(style.System)
	if err != nil || math.Abs(u.FromSI(near7)-u.FromSI(x)) > 1e-6*math.Abs(u.FromSI(x))+1e-11*u.Offset {
		t.Errorf("%v is written exactly as %q, read as %v, %v", x, exact, near7, err)
	}
}

func TestRoundTrip(t *testing.T) {
	random := rand.New(rand.NewPCG(20, 26))
	for _, display := range displays() {
		u := display.unit(US)
		for _, style := range styles {
			values := []float64{0, 1, -1, 0.5, 12, 1.0 / 3, 11.96875, 12345.678, 1e6, 1e20, -1e-9}
			for range 4 {
				values = append(values, random.NormFloat64()*math.Pow(10, random.Float64()*9-3))
			}
			for _, x := range values {
				checkRoundTrip(t, u.ToSI(x), display, style)
			}
			if t.Failed() {
				t.FailNow()
			}
		}
	}
}

// Rounding changes a value by less than a step, in its direction.
func TestRoundSide(t *testing.T) {
	random := rand.New(rand.NewPCG(8, 11))
	for _, way := range []Rounding{Nearest, Up, Down} {
		display := Display{Dim: Number, US: UnitDisplay{Step: 0.25, Rounding: way}}
		for range 2000 {
			x := random.NormFloat64() * 100
			d := Round(x, display, US) - x
			slack := 1e-9 * math.Max(1, math.Abs(x))
			low, high := -0.125, 0.125
			switch way {
			case Up:
				low, high = 0, 0.25
			case Down:
				low, high = -0.25, 0
			}
			if d < low-slack || d > high+slack {
				t.Fatalf("%v is rounded by %v, way %v", x, d, way)
			}
		}
	}
	if !math.IsNaN(Round(math.NaN(), height, US)) || !math.IsInf(Round(math.Inf(1), height, US), 1) {
		t.Error("what is no number stays so")
	}
}

// A round trip through text in the other system does not change the value.
func FuzzParse(f *testing.F) {
	for _, text := range []string{
		"", "9", `10' 6-1/2"`, "10 ft 6 1/2 in", "10ft6in", `6.5"`, "½", "10′ 6½″", "-1/4 in", "1,500", "1.5.2",
		"12\u202F000 mm", "1e400", "NaN", "70 °F", "1 h 30 min", "3/0", "6 7/4", "150 pcf", "10-6 1/2", "\xff", "５",
	} {
		f.Add(text, uint8(0), uint8(0))
		f.Add(text, uint8(2), uint8(3))
	}
	forms := []Display{height, gap, press, concrete, air, drop, wait, count, share, weight, tie, lean}
	f.Fuzz(func(t *testing.T, text string, which, how uint8) {
		display, style := forms[int(which)%len(forms)], styles[int(how)%len(styles)]
		x, err := Parse(text, display, style)
		if err != nil {
			if x != 0 || err.EN == "" || err.Error() == "" {
				t.Errorf("Parse(%q) = %v, %+v", text, x, err)
			}
			return
		}
		if math.IsNaN(x) || math.IsInf(x, 0) {
			t.Fatalf("Parse(%q) = %v", text, x)
		}
		if math.Abs(x) < 1e290 { // beyond, rounding may pass the limit
			checkRoundTrip(t, x, display, style)
		}
	})
}
