package quantity

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"
)

var styles = []Style{{US, Point}, {US, Comma}, {Metric, Point}, {Metric, Comma}}

// shows are ways to write every unit: without a step, with fine and coarse
// ones, in every direction; and lengths as a tape is read.
func shows() []Display {
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

// What Format writes, Parse reads back to what Round gives, to the last bit;
// and writing that again gives the same text.
func checkRoundTrip(t *testing.T, x float64, show Display, style Style) {
	t.Helper()
	text := Format(x, show, style)
	want := Round(x, show, style.System)
	got, err := Parse(text, show, style)
	switch {
	case err != nil:
		t.Errorf("%v in %+v is written %q, which is refused: %v", x, show.In(style.System), text, err)
	case got != want:
		t.Errorf("%v in %+v is written %q, read as %v, rounded as %v", x, show.In(style.System), text, got, want)
	case Format(got, show, style) != text:
		t.Errorf("%v in %+v is written %q, then %q", x, show.In(style.System), text, Format(got, show, style))
	case strings.HasPrefix(text, "-") && strings.Trim(text, "-0.,%° ") == "":
		t.Errorf("%v is written %q", x, text)
	}
	exact := Exact(x, show, style)
	near7, err := Parse(exact, show, style)
	u := show.unit(style.System)
	if err != nil || math.Abs(u.FromSI(near7)-u.FromSI(x)) > 1e-6*math.Abs(u.FromSI(x))+1e-11*u.Offset {
		t.Errorf("%v is written exactly as %q, read as %v, %v", x, exact, near7, err)
	}
}

func TestRoundTrip(t *testing.T) {
	random := rand.New(rand.NewPCG(20, 26))
	for _, show := range shows() {
		u := show.unit(US)
		for _, style := range styles {
			values := []float64{0, 1, -1, 0.5, 12, 1.0 / 3, 11.96875, 12345.678, 1e6, 1e20, -1e-9}
			for range 4 {
				values = append(values, random.NormFloat64()*math.Pow(10, random.Float64()*9-3))
			}
			for _, x := range values {
				checkRoundTrip(t, u.ToSI(x), show, style)
			}
			if t.Failed() {
				t.FailNow()
			}
		}
	}
}

// Rounding stays within a step, on the side asked for.
func TestRoundSide(t *testing.T) {
	random := rand.New(rand.NewPCG(8, 11))
	for _, way := range []Rounding{Nearest, Up, Down} {
		show := Display{Dim: Number, US: UnitDisplay{Step: 0.25, Rounding: way}}
		for range 2000 {
			x := random.NormFloat64() * 100
			d := Round(x, show, US) - x
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

// A round trip through the other system's typed text keeps the value.
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
		show, style := forms[int(which)%len(forms)], styles[int(how)%len(styles)]
		x, err := Parse(text, show, style)
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
			checkRoundTrip(t, x, show, style)
		}
	})
}
