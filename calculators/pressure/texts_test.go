package pressure

import (
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/displays"
	"coursebook/calculators/quantity"
)

// Sentences are short enough for gloved hands.
func TestTextsFit(t *testing.T) {
	for _, text := range []calc.Text{noteRapid, noteWet, noteCold, noteShaken, noteHot, noteFloor, noteHeight, noteRise, noteSlump, noteChilly,
		askRise, askDisturbed, refuseStop, askRating, noteFails, noteAverage, noteAny, noteMethod, helpDepth, helpBelow, helpSlow, helpFluid,
		helpTall, askGuide, askGuideBoth, noteLifts, noteGuideWithin, noteGuideAverage, noteGuideBeyond, noteGuideLift,
		cautions[0].Text, cautions[1].Text, cautions[2].Text} {
		for _, sentence := range strings.Split(text.EN(), ". ") {
			if n := len(strings.Fields(sentence)); n > 25 {
				t.Errorf("%s: sentence of %d words", text.EN(), n)
			}
		}
	}
}

// Texts without slots repeat some limits in words; they must be those of the
// method.
func TestTextsNameTheMethodsLimits(t *testing.T) {
	feet := func(x Feet) string {
		return strings.TrimSuffix(quantity.Exact(ft(x), displays.Height, us), " ft") + " ft"
	}
	for _, c := range []struct{ in, want string }{
		{eqSlow.Limits.EN(), feet(SlowHeight) + " ("}, {eqSlow.Limits.EN(), feet(VibrationDepth) + " ("},
		{eqSlow.Limits.EN(), quantity.Exact(ftPerH(SlowRise), displays.RiseTyped, us)},
		{eqSlow.Limits.EN(), strings.TrimSuffix(quantity.Exact(calc.SI(float64(MethodSlump), "in"), displays.Inches, us), " in") + " in."},
		{eqFast.Limits.EN(), quantity.Exact(ftPerH(MethodRise), displays.RiseTyped, us)},
		{tables[0].Note.EN(), feet(SlowHeight)},
		{eqHeavy.Limits.EN(), quantity.Exact(calc.SI(float64(HeavyAbove), "lb/ft³"), displays.UnitWeight, us)},
		{eqLight.Limits.EN(), quantity.Exact(calc.SI(float64(LightBelow), "lb/ft³"), displays.UnitWeight, us)},
		{inputs[11].Options[0].Label.EN(), feet(VibrationDepth)},
	} {
		if !strings.Contains(c.in, c.want) {
			t.Errorf("“%s” does not name %s", c.in, c.want)
		}
	}
}

// Every note has its slots filled, in both systems.
func TestSlotsAreFilled(t *testing.T) {
	for _, typed := range [][]string{
		{}, {"rating=500", "guide-lift=4 ft", "guide-rate=4"}, {"slump=8"}, {"temperature=38"}, {"temperature=95", "rise=3.6"},
		{"vibration=deep", "disturbed=3'"}, {"height=20'", "rise=3.6"}, {"height=14'", "rise=15", "rating=2000"},
		{"temperature=41", "rise=3", "height=9'"}, {"rise=3.6", "length=1000"}, {"length=10", "stop=11"}, {"rating=1200"},
		{"guide-lift=4 ft", "guide-rate=2"}, {"guide-lift=4 ft", "guide-rate=4", "rise=3.6"}, {"rise=1", "length=1000"},
	} {
		res := calctest.Run(t, FormPressure, typed...)
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			v := calc.Locale{Style: quantity.Style{System: sys}}
			for _, n := range res.Notes {
				if said := v.Say(n.Text, n.Slots...); strings.ContainsAny(said, "{}") {
					t.Errorf("%v: %s", typed, said)
				}
			}
		}
	}
}

// Every cell of the printed tables is filled, in both systems, and each table
// runs the way the method does.
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
					entries := append(append([]calc.Entry{}, table.Set...), calc.Entry{Path: table.Down.Path, Text: d}, calc.Entry{Path: table.Across.Path, Text: a})
					in, notes := calc.Read(FormPressure, entries, quantity.Style{System: sys})
					res := calc.Run(FormPressure, in)
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
