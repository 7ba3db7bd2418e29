package unitconversion

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

func convert(t *testing.T, kind, text string) calc.Result {
	t.Helper()
	in, notes := calc.Read(
		Calculator,
		[]calc.Entry{{Path: "kind", Text: kind}, {Path: kind, Text: text}},
		quantity.Style{},
	)
	if len(notes) > 0 {
		return calc.Result{State: calc.Bad, Notes: notes}
	}
	return calc.Run(Calculator, in)
}

// Every kind has its input and its pair, in units of one dimension, asks for
// itself alone, and lists every unit the program knows of it.
func TestKindsAreWhole(t *testing.T) {
	for _, k := range kinds {
		in := calc.NewCase(inputs).With("kind", calc.ChoiceOf(k.ID))
		for _, other := range kinds {
			if in.Asked(other.ID) != (other.ID == k.ID) {
				t.Errorf("%s asked for %s", other.ID, k.ID)
			}
		}
		dim := find(inputs, k.ID).Display.Dim
		res := calc.Run(Calculator, in)
		if got, want := len(res.Out.Rows("units")), len(quantity.Units(dim)); got != want || want < 2 {
			t.Errorf("%s: %d units listed, want %d", k.ID, got, want)
		}
		for _, end := range []string{"-own", "-other"} {
			if find(outputs, k.ID+end).Display.Dim != dim || res.Out.Num(k.ID+end) != in.Num(k.ID) {
				t.Errorf("%s%s is not the value typed", k.ID, end)
			}
		}
	}
}

// Each listed value, parsed with its unit, is the value that was entered.
func TestListReadsBack(t *testing.T) {
	for _, k := range kinds {
		res := calc.Run(Calculator, calc.NewCase(inputs).With("kind", calc.ChoiceOf(k.ID)))
		want := calc.NewCase(inputs).Num(k.ID)
		for _, row := range res.Out.Rows("units") {
			text := strconv.FormatFloat(row.Num("value"), 'f', -1, 64) + " " + row.Text("unit")
			si, err := quantity.Parse(text, *find(inputs, k.ID).Display, quantity.Style{})
			if err != nil || math.Abs(si-want) > 1e-9*math.Abs(want) {
				t.Errorf("%s: %s reads back as %v, want %v (%v)", k.ID, text, si, want, err)
			}
		}
	}
}

// No listed value is shown with more than five significant digits, unless it is whole.
func TestListIsShownShort(t *testing.T) {
	for _, k := range kinds {
		res := calc.Run(Calculator, calc.NewCase(inputs).With("kind", calc.ChoiceOf(k.ID)))
		for _, row := range res.Out.Rows("units") {
			shown := quantity.Format(row.Num("value"), listed, quantity.Style{})
			whole, part, _ := strings.Cut(shown, ".")
			digits := strings.TrimLeft(strings.ReplaceAll(whole, "\u202F", "")+part, "-0")
			if part != "" && len(digits) > 5 {
				t.Errorf("%s in %s is shown as %s", k.ID, row.Text("unit"), shown)
			}
		}
	}
}

// A value too small for a usual unit is only in the list, with a note. This does
// not apply to 0 and to temperatures.
func TestTooSmall(t *testing.T) {
	for _, c := range []struct {
		kind, text string
		notes      int
	}{
		{"pressure", "600 psf", 0}, {"pressure", "21 psf", 0}, {"pressure", "20 psf", 1}, {"pressure", "9 psf", 2},
		{"pressure", "0 psf", 0},
		{"length", "5/8 in", 0}, {"length", "3/8 in", 2}, {"temperature", "0.1 °C", 0}, {"speed", "3 ft/h", 2},
	} {
		res := convert(t, c.kind, c.text)
		if len(res.Notes) != c.notes {
			t.Errorf("%s: %d notes, want %d", c.text, len(res.Notes), c.notes)
		}
		given := 0
		for _, end := range []string{"-own", "-other"} {
			if res.Out.Has(c.kind + end) {
				given++
			}
		}
		if (given == 2) != (c.notes == 0) || given == 1 || len(res.Out.Rows("units")) == 0 {
			t.Errorf("%s: given in %d units", c.text, given)
		}
	}
}

func TestLimits(t *testing.T) {
	for _, c := range []struct{ kind, text string }{
		{"temperature", "-460 °F"}, {"temperature", "-273.16 °C"}, {"length", "-1 ft"}, {"mass", "2000000 lb"},
		{"length", "3 kg"},
	} {
		if res := convert(t, c.kind, c.text); res.State != calc.Bad {
			t.Errorf("%s %s was accepted", c.kind, c.text)
		}
	}
	if res := convert(t, "temperature", "0 K"); res.State != calc.OK {
		t.Errorf("absolute zero was refused: %v", res.Notes)
	}
	if res := convert(t, "temperature-difference", "-20 C°"); res.State != calc.OK {
		t.Errorf("a fall was refused: %v", res.Notes)
	}
}

// The marks of the scales are at round values that lie where they are drawn.
func TestScales(t *testing.T) {
	for _, x := range []float64{0.03, 0.9, 1, 1.01, 4.9, 50, 51, 7e6} {
		got := round125(x)
		if got < x*(1-1e-9) || got > 2.5*x*(1+1e-9) {
			t.Errorf("a step of %v for %v", got, x)
		}
	}
	foot, _ := quantity.Find("ft")
	r := ruler{from: 0, to: 3.048}
	marks := 0
	for _, n := range r.ticks(50, 1, foot) {
		if n.Tag == "text" {
			feet, err := strconv.ParseFloat(n.Text, 64)
			if err != nil || n.Attrs[1].Value != figure.Coordinate(scaleLeft+scaleWide*feet/10) {
				t.Errorf("mark %s is at %v", n.Text, n.Attrs[1])
			}
			marks++
		}
	}
	if marks < 3 {
		t.Errorf("only %d marks", marks)
	}
}

// Every cell of the printed tables is in the unit of the other system.
func TestTables(t *testing.T) {
	for _, table := range tables {
		for sys, typed := range [][]string{table.Down.US, table.Down.Metric} {
			style := quantity.Style{System: quantity.System(sys)}
			foreign := usualUnit(find(outputs, table.Down.Path+"-own"), 1-style.System).Symbol
			for _, text := range typed {
				entries := append(
					append([]calc.Entry(nil), table.Set...),
					calc.Entry{Path: table.Down.Path, Text: text},
				)
				in, notes := calc.Read(Calculator, entries, style)
				res := calc.Run(Calculator, in)
				if len(notes) > 0 || !res.Out.Has(table.Out) ||
					usualUnit(find(outputs, table.Out), style.System).Symbol != foreign {
					t.Errorf("table %s at %s: %v", table.ID, text, notes)
				}
			}
		}
	}
}
