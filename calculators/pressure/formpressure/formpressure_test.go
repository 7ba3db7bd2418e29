package formpressure

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
)

var us = quantity.Style{System: quantity.US}

func expect(t *testing.T, res calc.Result, id string, want float64, unit string) {
	t.Helper()
	if got := calc.From(res.Out.Num(id), unit); !res.Out.Has(id) || math.Abs(got-want) > 1e-6*math.Abs(want) {
		t.Errorf("%s: %v %s, want %v", id, got, unit, want)
	}
}

// In the default case the form holds by the average rise, but not by the rise at
// the hose.
func TestDefaultCase(t *testing.T) {
	res := calctest.Run(t, Calculator)
	if res.Out.Choice("verdict") != fails || !calctest.Noted(res, noteAverage) || !calctest.Noted(res, noteFails) {
		t.Errorf("verdict %s, notes %v", res.Out.Choice("verdict"), res.Notes)
	}
	expect(t, res, "rise-local", 81, "ft/h") // 12·27/(6·2/3)
	expect(t, res, "rise-average", 324/(140*8.0/12), "ft/h")
	expect(t, res, "pressure-local", 1200, "psf")
	expect(t, res, "pressure-average", 1.4*(150+9000*324/(140*8.0/12)/70), "psf")
	expect(t, res, "fluid-limit", 6, "ft")
	expect(t, res, "highest-rise", 70*(900/1.4-150)/9000, "ft/h")
	if len(res.Out.Rows("by-depth")) != depthRows {
		t.Errorf("%d rows by depth", len(res.Out.Rows("by-depth")))
	}
}

// No form passes on the average: regardless of the average, a rise at the hose
// that exceeds the rating fails.
func TestNeverOnTheAverageAlone(t *testing.T) {
	for _, length := range []string{"50", "200", "1000", "2000"} {
		res := calctest.Run(t, Calculator, "length="+length, "height=10")
		if res.Out.Num("pressure-average") > res.Out.Num("pressure-local") || res.Out.Choice("verdict") != fails {
			t.Errorf("%s ft of wall: %s", length, res.Out.Choice("verdict"))
		}
	}
}

func TestVerdicts(t *testing.T) {
	for _, c := range []struct {
		name  string
		typed []string
		want  string
		note  calc.Text
	}{
		{"no rating", []string{"rating="}, unrated, askRating},
		{"takes the fluid head", []string{"rating=1200"}, holds, noteAny},
		{"just under the fluid head", []string{"rating=1195"}, fails, noteFails},
		{"below the floor", []string{"rating=500", "rise=3.6"}, fails, helpBelow},
		{"below the floor, low wall", []string{"rating=500", "height=3'"}, holds, noteAny},
		{"slow enough", []string{"rise=3.8"}, holds, noteSlump},
		{"a little too fast", []string{"rise=3.9"}, fails, helpSlow},
		{"wet", []string{"slump=8", "rise=3.6"}, fails, helpFluid},
		{"cold", []string{"temperature=38", "rise=3.6"}, fails, noteCold},
		{"hot", []string{"temperature=95", "rise=3.6"}, holds, noteHot},
		{"shaken from outside", []string{"vibration=outside", "rise=3.6"}, fails, helpFluid},
		{"shaken over 5 ft", []string{"vibration=outside", "disturbed=5'", "rise=3.6"}, holds, noteShaken},
		{"deep poker, shallow depth", []string{"vibration=deep", "disturbed=3'", "rise=3.6"}, holds, askDisturbed},
		{"too tall", []string{"height=20'", "rise=3.6"}, fails, helpTall},
		{"near 14 ft", []string{"height=14'", "rise=3.6"}, holds, noteHeight},
		{"near 15 ft/h", []string{"height=14'", "rise=15", "rating=2000"}, holds, noteRise},
		{"near 40 °F", []string{"temperature=41", "rise=3.6", "rating=1100"}, fails, noteFails},
		{"near 40 °F, strong", []string{"temperature=41", "rise=3.6", "rating=1195", "height=9'"}, fails, noteChilly},
		{"strong form ends with the method", []string{"height=14'", "rise=10", "rating=2000"}, holds, noteMethod},
		{"so slow that the floor counts", []string{"length=1000", "rise=1"}, holds, noteFloor},
		{"measured below the average", []string{"rise=1"}, holds, askRise},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if got := res.Out.Choice("verdict"); got != c.want || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, want %s with “%s”; notes %v", c.name, got, c.want, c.note.EN(), res.Notes)
		}
	}
}

// A stop longer than the wall is refused, and a local rise below the average.
func TestRefusesALongStop(t *testing.T) {
	res := calctest.Run(t, Calculator, "length=10 ft", "stop=12 ft")
	if res.State != calc.Refused || !calctest.Noted(res, refuseStop) || res.Notes[0].At.Field != "stop" {
		t.Errorf("%s: %v", res.State, res.Notes)
	}
	if res = calctest.Run(t, Calculator, "length=12 ft", "stop=12 ft"); res.State != calc.OK {
		t.Errorf("a stop as long as the wall: %s", res.State)
	}
}

// An input outside its limits is refused at its field with a reason.
func TestRefusesWhatNoWallIs(t *testing.T) {
	for _, c := range []struct{ path, text string }{
		{"height", "41 ft"}, {"height", "0"}, {"thickness", "1 in"}, {"pump-rate", "300"}, {"weight", "15"},
		{"temperature", "30 °F"}, {"temperature", "130"}, {"slump", "13"}, {"rating", "50"}, {"length", ""},
		{"cement", "mystery"},
	} {
		_, notes := calc.Read(Calculator, []calc.Entry{{Path: c.path, Text: c.text}}, us)
		if len(notes) != 1 || notes[0].At.Field != c.path || notes[0].Level != calc.LevelRefusal {
			t.Errorf("%s=%s: %v", c.path, c.text, notes)
		}
	}
}

// The form maker's lift and rise are separate from the rating, and a note states that.
func TestGuide(t *testing.T) {
	for _, c := range []struct {
		name  string
		typed []string
		want  string
		note  calc.Text
	}{
		{"none", nil, guideNone, askGuide},
		{"half of it", []string{"guide-lift=4 ft"}, guideNone, askGuideBoth},
		{"other half", []string{"guide-rate=4"}, guideNone, askGuideBoth},
		{"average only", []string{"guide-lift=4 ft", "guide-rate=4"}, guideAverage, noteGuideAverage},
		{"beyond", []string{"guide-lift=4 ft", "guide-rate=3"}, guideBeyond, noteGuideBeyond},
		{"within", []string{"guide-lift=4 ft", "guide-rate=4", "rise=3.9"}, guideWithin, noteGuideWithin},
		{"lift above the rating", []string{"guide-lift=4 ft", "guide-rate=4", "rating=500"}, guideAverage,
			noteGuideLift},
		{"lifts", []string{"guide-lift=4 ft", "guide-rate=4", "rating="}, guideAverage, noteLifts},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if got := res.Out.Choice("guide"); got != c.want || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, want %s with “%s”", c.name, got, c.want, c.note.EN())
		}
	}
	res := calctest.Run(t, Calculator, "guide-lift=4 ft", "guide-rate=4", "height=9'")
	expect(t, res, "guide-lifts", 3, "")
	expect(t, res, "guide-time", 60, "min")
	expect(t, res, "guide-flow", 4*140*8/12.0/27, "yd³/h")
	if res = calctest.Run(t, Calculator, "guide-lift=4 ft", "guide-rate=4", "height=8'"); res.Out.Num(
		"guide-lifts",
	) != 2 {
		t.Errorf("8 ft in lifts of 4 ft: %v", res.Out.Num("guide-lifts"))
	}
}

// anyCase returns random inputs within their limits.
func anyCase(rnd *rand.Rand) calc.Case {
	in := calc.NewCase(Calculator.In)
	for _, f := range Calculator.In {
		switch {
		case f.Kind == calc.Choice:
			in = in.With(f.ID, calc.ChoiceOf(f.Options[rnd.IntN(len(f.Options))].ID))
		case f.Optional && rnd.IntN(2) == 0:
			in = in.With(f.ID, calc.Value{})
		default:
			least, most, _ := f.Limits()
			x := least.SI + (most.SI-least.SI)*math.Pow(rnd.Float64(), 2)
			if rnd.IntN(10) == 0 {
				x = []float64{least.SI, most.SI}[rnd.IntN(2)]
			}
			in = in.With(f.ID, calc.Num(x))
		}
	}
	return in
}

// Random inputs give a consistent result or a refusal: the verdict follows from
// the pressure, the worked example is short and ends with the printed pressure,
// and the drawing is inside its frame.
func TestAllOverTheInputs(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 8))
	for range 5000 {
		in := anyCase(rnd)
		res := calc.Run(Calculator, in)
		if res.State != calc.OK {
			if !calctest.Noted(res, refuseStop) {
				t.Fatalf("%s: %v", res.State, res.Notes)
			}
			continue
		}
		checkVerdict(t, in, res)
		checkSteps(t, res)
		v := calc.Locale{Style: quantity.Style{System: quantity.System(rnd.IntN(2)), Mark: quantity.Mark(rnd.IntN(2))}}
		checkBox(t, Calculator.Draw(v, in, res))
	}
}

func checkVerdict(t *testing.T, in calc.Case, res calc.Result) {
	t.Helper()
	local, average := res.Out.Num("pressure-local"), res.Out.Num("pressure-average")
	if average > local*(1+1e-9) {
		t.Fatalf("average %v above local %v", average, local)
	}
	rating := in.Num("rating")
	holding := local <= rating*(1+1e-9)
	switch verdict := res.Out.Choice("verdict"); {
	case !in.Has("rating"):
		if verdict != unrated || res.Out.Has("highest-rise") || res.Out.Has("fluid-limit") {
			t.Fatalf("unrated: %s", verdict)
		}
	case holding != (verdict == holds):
		t.Fatalf("%s at %v Pa for %v Pa", verdict, local, rating)
	case res.Out.Has("highest-rise"):
		slower := res.Out.Num("rise-local") <= res.Out.Num("highest-rise")*(1+1e-9)
		if slower != holding {
			t.Fatalf("%s although the rise %v is against %v", verdict, res.Out.Num("rise-local"),
				res.Out.Num("highest-rise"))
		}
	}
	last := res.Out.Rows("by-depth")[depthRows-1]
	if math.Abs(last.Num("local")-local) > 1e-9*local {
		t.Fatalf("the last depth has %v, the wall %v", last.Num("local"), local)
	}
}

func checkSteps(t *testing.T, res calc.Result) {
	t.Helper()
	if len(res.Steps) > 8 {
		t.Fatalf("%d steps", len(res.Steps))
	}
	for _, s := range res.Steps {
		want := res.Out.Num("pressure-local")
		if s.Of.EN() == ofAverage.EN() {
			want = res.Out.Num("pressure-average")
		}
		if s.Formula == pressure.BoundedFormula && math.Abs(s.Out-want) > 1e-9*want {
			t.Fatalf("the worked example ends in %v, the result is %v", s.Out, want)
		}
		if (s.Formula == pressure.RiseSlowFormula || s.Formula == pressure.RiseFastFormula) &&
			math.Abs(s.Out-res.Out.Num("highest-rise")) > 1e-9*s.Out {
			t.Fatalf("the worked example ends in %v, the highest rise is %v", s.Out, res.Out.Num("highest-rise"))
		}
	}
}

// Sentences are short.
func TestTextsFit(t *testing.T) {
	for _, text := range []calc.Text{noteRapid, noteWet, noteCold, noteShaken, noteHot, noteFloor, noteHeight,
		noteRise, noteSlump, noteChilly,
		askRise, askDisturbed, refuseStop, askRating, noteFails, noteAverage, noteAny, noteMethod, helpDepth,
		helpBelow, helpSlow, helpFluid,
		helpTall, askGuide, askGuideBoth, noteLifts, noteGuideWithin, noteGuideAverage, noteGuideBeyond, noteGuideLift,
		cautions[0].Text, cautions[1].Text, cautions[2].Text} {
		for _, sentence := range strings.Split(text.EN(), ". ") {
			if n := len(strings.Fields(sentence)); n > 25 {
				t.Errorf("%s: sentence of %d words", text.EN(), n)
			}
		}
	}
}

// Limits written out in texts without slots equal those of the method.
func TestTextsNameTheMethodsLimits(t *testing.T) {
	feet := func(x pressure.Feet) string {
		return strings.TrimSuffix(quantity.Exact(ft(x), displays.Height, us), " ft") + " ft"
	}
	for _, c := range []struct{ in, want string }{
		{pressure.WallSlowFormula.Limits.EN(), feet(pressure.SlowHeight) + " ("},
		{pressure.WallSlowFormula.Limits.EN(), feet(pressure.VibrationDepth) + " ("},
		{pressure.WallSlowFormula.Limits.EN(), quantity.Exact(ftPerH(pressure.SlowRise), displays.RiseTyped, us)},
		{pressure.WallSlowFormula.Limits.EN(), strings.TrimSuffix(quantity.Exact(calc.SI(float64(pressure.MethodSlump),
			"in"), displays.Inches, us), " in") + " in."},
		{pressure.WallFastFormula.Limits.EN(), quantity.Exact(ftPerH(pressure.MethodRise), displays.RiseTyped, us)},
		{tables[0].Note.EN(), feet(pressure.SlowHeight)},
		{pressure.HeavyWeightFormula.Limits.EN(), quantity.Exact(calc.SI(float64(pressure.HeavyAbove), "lb/ft³"),
			displays.UnitWeight, us)},
		{pressure.LightWeightFormula.Limits.EN(), quantity.Exact(calc.SI(float64(pressure.LightBelow), "lb/ft³"),
			displays.UnitWeight, us)},
		{inputs[11].Options[0].Label.EN(), feet(pressure.VibrationDepth)},
	} {
		if !strings.Contains(c.in, c.want) {
			t.Errorf("“%s” does not name %s", c.in, c.want)
		}
	}
}

// Every note has its slots filled, in both systems.
func TestSlotsAreFilled(t *testing.T) {
	for _, typed := range [][]string{
		{}, {"rating=500", "guide-lift=4 ft", "guide-rate=4"}, {"slump=8"}, {"temperature=38"},
		{"temperature=95", "rise=3.6"},
		{"vibration=deep", "disturbed=3'"}, {"height=20'", "rise=3.6"}, {"height=14'", "rise=15", "rating=2000"},
		{"temperature=41", "rise=3", "height=9'"}, {"rise=3.6", "length=1000"}, {"length=10", "stop=11"},
		{"rating=1200"},
		{"guide-lift=4 ft", "guide-rate=2"}, {"guide-lift=4 ft", "guide-rate=4", "rise=3.6"}, {"rise=1", "length=1000"},
	} {
		res := calctest.Run(t, Calculator, typed...)
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			v := calc.Locale{Style: quantity.Style{System: sys}}
			for _, n := range res.Notes {
				if written := v.Say(n.Text, n.Slots...); strings.ContainsAny(written, "{}") {
					t.Errorf("%v: %s", typed, written)
				}
			}
		}
	}
}

// Every cell of the printed tables has a value, in both systems, and each table
// rises or falls as the method does.
func TestTables(t *testing.T) {
	for _, table := range tables {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			down, across := table.Down.US, table.Across.US
			if sys == quantity.Metric {
				down, across = table.Down.Metric, table.Across.Metric
			}
			grid := make([][]float64, len(down))
			for i, d := range down {
				for _, a := range across {
					entries := append(append([]calc.Entry{}, table.Set...),
						calc.Entry{Path: table.Down.Path, Text: d}, calc.Entry{Path: table.Across.Path, Text: a})
					in, notes := calc.Read(Calculator, entries, quantity.Style{System: sys})
					res := calc.Run(Calculator, in)
					if len(notes) > 0 || !res.Out.Has(table.Out) {
						t.Fatalf("%s: nothing at %s, %s: %v", table.ID, d, a, notes)
					}
					grid[i] = append(grid[i], res.Out.Num(table.Out))
				}
			}
			for i := 1; i < len(grid); i++ {
				for j := range grid[i] {
					if grid[i][j] < grid[i-1][j] {
						t.Errorf("%s: falls from row %d to %d", table.ID, i, i+1)
					}
				}
			}
		}
	}
}
