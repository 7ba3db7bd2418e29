package formpressure

import (
	"math"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
)

var us = quantity.Style{System: quantity.US}

// ruled is the calculator with the amounts of the house rules.
var ruled = calctest.WithRules(Calculator)

func expect(t *testing.T, res calc.Result, id string, want float64, unit string) {
	t.Helper()
	if got := calc.From(res.Out.Num(id), unit); !res.Out.Has(id) || math.Abs(got-want) > 1e-6*math.Abs(want) {
		t.Errorf("%s: %v %s, want %v", id, got, unit, want)
	}
}

func deedOf(t *testing.T, typed ...string) string {
	t.Helper()
	return calctest.Run(t, Calculator, typed...).Out.Choice("deed")
}

// paceOf is the deed by pace alone. A plan that waits only with the set that is typed keeps the
// notes of its wait.
func paceOf(res calc.Result) string {
	deed := res.Out.Choice("deed")
	switch {
	case deed == doWritten && (calctest.Noted(res, helpWait) || calctest.Noted(res, helpWaitBack)):
		return doWait
	case deed == doWritten && calctest.Noted(res, noteTooLongWait):
		return doLess
	}
	return deed
}

// replaced is a list of inputs in which later ones replace those of the same name.
func replaced(list []string, typed ...string) []string {
	var out []string
	for _, s := range slices.Concat(list, typed) {
		name, _, _ := strings.Cut(s, "=")
		out = slices.DeleteFunc(out, func(o string) bool { return strings.HasPrefix(o, name+"=") })
		out = append(out, s)
	}
	return out
}

// oneGoRated is a wall in one go with the mix and the rating of the tests.
func oneGoRated(typed ...string) []string {
	return replaced([]string{"how=once", "rating=900", "rating-is=working", "guide-gives=silent",
		"cement=blend", "admixture=retards", "set=5 h"}, typed...)
}

// In one go the form holds by the average rise, but not by the rise at the hose, and
// the answer names no pump rate that no pump runs.
func TestInOneGo(t *testing.T) {
	res := calctest.Run(t, Calculator, oneGoRated()...)
	if res.Out.Choice("deed") != doLifts || !calctest.Noted(res, noteFails) ||
		!calctest.Noted(res, helpLifts) || res.Out.Has("highest-flow") {
		t.Errorf("%s, notes %v", res.Out.Choice("deed"), res.Notes)
	}
	expect(t, res, "rise-local", 81, "ft/h") // 12·27/(6·2/3)
	expect(t, res, "rise-average", 324/(140*8.0/12), "ft/h")
	expect(t, res, "pressure-local", 1200, "psf")
	expect(t, res, "fluid-limit", 6, "ft")
	expect(t, res, "highest-rise", 70*(900/1.4-150)/9000, "ft/h") // ACI 347 sets it
	if len(res.Out.Rows("by-depth")) != depthRows {
		t.Errorf("%d rows by depth", len(res.Out.Rows("by-depth")))
	}
	res = calctest.Run(t, Calculator, slow("pump-rate=20 yd³/h")...)
	if res.Out.Choice("deed") != doSlow || !calctest.Noted(res, helpSlow) {
		t.Errorf("a thick wall: %s, notes %v", res.Out.Choice("deed"), res.Notes)
	}
	rise := math.Min(res.Out.Num("highest-rise"), calc.SI(4, "ft/h"))
	calctest.NearBy(t, "flow", res.Out.Num("highest-flow"), rise*calc.SI(45, "ft²"), 1e-9)
}

// No form passes on the average: regardless of the average, a rise at the hose
// that exceeds the rating fails.
func TestNeverOnTheAverageAlone(t *testing.T) {
	for _, length := range []string{"50", "200", "1000", "2000"} {
		res := calctest.Run(t, Calculator, oneGoRated("length="+length, "height=10")...)
		if res.Out.Num("rise-average") > res.Out.Num("rise-local") || res.Out.Choice("deed") == doGo {
			t.Errorf("%s ft of wall: %s", length, res.Out.Choice("deed"))
		}
	}
}

// slow is a wall so thick that the rise at the hose is 3.47 ft/h.
func slow(typed ...string) []string {
	return replaced(oneGoRated("stop=15 ft", "thickness=36 in", "pump-rate=5.785714 yd³/h"), typed...)
}

func TestDeedsInOneGo(t *testing.T) {
	for _, c := range []struct {
		name  string
		typed []string
		want  string
		note  calc.Text
	}{
		{"no rating", slow("rating="), unchecked, askRating},
		{"takes the fluid head", slow("rating=1200"), doGo, noteAny},
		{"just under the fluid head", oneGoRated("rating=1195"), doLifts, noteFails},
		{"below the floor", slow("rating=500"), doLifts, helpNone},
		{"below the floor, low wall", slow("rating=500", "height=3'"), doGo, noteAny},
		{"slow enough by that set alone", slow(), doWritten, noteSlump},
		{"a little too fast", slow("rise=3.9"), doSlow, helpSlow},
		{"wet", slow("slump=8"), doRefuse, noteWet},
		{"wet, no rating", slow("slump=8", "rating="), doRefuse, noteWet},
		{"cold", slow("temperature=38"), doTooCold, noteTooCold},
		{"cold, no rating", slow("temperature=49.5", "rating="), doTooCold, noteTooCold},
		{"cold for a thin core", slow("temperature=54.5", "thickness=11.75 in"), doTooCold, noteTooCold},
		{"too stiff", slow("slump=2"), doTooStiff, noteTooStiff},
		{"hot", slow("temperature=95"), doTooHot, noteTooHot},
		{"deep head", slow("vibration=deep"), doStop, noteShaken},
		{"no mark", slow("vibration=unmarked"), doStop, noteShaken},
		{"vibrated again", slow("vibration=again"), doStop, helpFluid},
		{"buried hose", slow("hose=below"), doAsk, noteBelow},
		{"buried hose, fluid head held", slow("hose=below", "rating=2000"), doAsk, noteBelow},
		{"outside", slow("outside=first"), doAsk, noteOutsideOnce},
		{"outside, fluid head held", slow("outside=above", "rating=2000"), doAsk, noteOutsideOnce},
		{"too tall", slow("height=20'"), doLifts, helpNone},
		{"near 14 ft", slow("height=13.7 ft", "rating=1300", "guide-gives=unread"), doUnguided, askGuide},
		{"near 15 ft/h", slow("height=14'", "rise=14", "rating=2100"), doSlow, noteFast},
		{"the same on a thin wall", oneGoRated("rating=2100"), doLifts, noteFast},
		{"the same, the hour adds 4 ft", oneGoRated("rating=2100", "height=4'"), doGo, noteAny},
		{"close to the least", slow("temperature=50", "rating=1100"), doLifts, noteFails},
		{"near 40 °F", slow("temperature=41", "rating=1300", "height=9'", "pump-rate=1",
			"cement=plain", "admixture=none"), doTooCold, noteTooCold},
		{"so slow that the floor counts", slow("pump-rate=0.5", "guide-gives=unread"), doUnguided, askGuide},
		{"too old", slow("age=91 min"), doTooOld, noteTooOld},
		{"unknown mix", slow("cement=unknown", "rating=890"), doSlow, notePlain},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if got := res.Out.Choice("deed"); got != c.want || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, want %s with “%s”; notes %v", c.name, got, c.want, c.note.EN(), res.Notes)
		}
	}
}

// The least pressure of the SI edition counts for the answer, and is the pressure shown.
func TestStricterEdition(t *testing.T) {
	typed := slow("pump-rate=1", "height=14'", "cement=plain", "admixture=none", "temperature=90")
	if got := deedOf(t, replaced(typed, "rating=610")...); got == doGo {
		t.Errorf("600 psf at a rating of 610: %s", got)
	}
	res := calctest.Run(t, Calculator, typed...)
	expect(t, res, "floor-si", 30, "kPa")
	expect(t, res, "floor", 600, "psf")
	least := slices.IndexFunc(res.Steps, func(s calc.Step) bool { return s.Formula == pressure.LeastPressureFormula })
	if least < 0 || math.Abs(res.Steps[least].Out-calc.SI(30, "kPa")) > 1e-3 {
		t.Errorf("the larger of both editions is not derived: %v", res.Steps)
	}
	expect(t, res, "pressure-us", 600, "psf")
	if res.Out.Num("pressure-local") < res.Out.Num("floor-si") {
		t.Errorf("%v Pa is below the floor of the SI edition", res.Out.Num("pressure-local"))
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
					in, notes := calc.Read(ruled, entries, quantity.Style{System: sys})
					res := calc.Run(ruled, in)
					if len(notes) > 0 || !res.Out.Has(table.Out) {
						t.Fatalf("%s: nothing at %s, %s: %v", table.ID, d, a, notes)
					}
					grid[i] = append(grid[i], res.Out.Num(table.Out))
				}
			}
			if table.Out == "highest-rise" {
				top := grid[len(grid)-1]
				if most := calc.SI(4, "ft/h"); math.Abs(slices.Max(top)-most) > 1e-9 || grid[0][0] >= most {
					t.Errorf("rating: %v m/s at the highest rating, %v at the lowest", top, grid[0])
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
