package hotweather

import (
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func TestLoads(t *testing.T) {
	const none = -1 // no time left is given
	for _, c := range []struct {
		typed   []string
		verdict string
		left    float64 // min
		note    calc.Text
	}{
		{[]string{"concrete=75 °F"}, loadGood, 55, askCounter},
		{[]string{"concrete=75 °F", "age=80 min"}, loadHurry, 10, noteHurry},
		{[]string{"concrete=75 °F", "age=95 min"}, loadLate, 0, noteLate},
		{[]string{"concrete=75 °F", "age=89 min", "turns=100"}, loadHurry, 1, noteHurry},
		{[]string{"concrete=75 °F", "age=90 min", "turns=100"}, loadLate, 0, noteLate},
		{[]string{"concrete=75 °F", "turns=269"}, loadGood, 55, ""},
		{[]string{"concrete=75 °F", "turns=270"}, loadHurry, 55, noteDrum},
		{[]string{"concrete=75 °F", "turns=300"}, loadLate, none, noteTurns},
		{[]string{"concrete=75 °F", "turns=301"}, loadLate, none, noteTurns},
		{[]string{"concrete=86 °F"}, loadGood, 25, noteHeat86},
		{[]string{"concrete=85.9 °F"}, loadGood, 55, noteEighty},
		{[]string{"concrete=86 °F", "hot-time="}, loadGood, 55, noteEighty},
		{[]string{"concrete=96 °F", "hot-time=120 min"}, loadHot, none, noteToo},
		{[]string{"concrete=75 °F", "rule=c94-new"}, loadGood, 55, noteAgreed},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("verdict") != c.verdict || c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
		if c.left == none {
			for _, id := range []string{"left", "by", "turns-left"} {
				if res.Out.Has(id) {
					t.Errorf("%v: a refused load has %s", c.typed, id)
				}
			}
			continue
		}
		calctest.Near(t, "time left", res.Out.Num("left")/60, c.left, 1e-9)
	}
	if calctest.Noted(calctest.Run(t, Calculator, "concrete=79 °F"), noteEighty) ||
		calctest.Noted(calctest.Run(t, Calculator, "concrete=85.9 °F"), noteHeat86) {
		t.Error("a note on heat comes too early")
	}
	if res := calctest.Run(t, Calculator, "concrete=75 °F", "rule=own", "own-time=45 min"); res.Out.Has(
		"turns-limit",
	) ||
		res.Out.Num("limit") != 45*60 {
		t.Errorf("own rule: %v", res.Out.Num("limit"))
	}
}

// No load over 95 °F, the published limit, is within its limits, whatever limit is
// typed: a higher limit is not read.
func TestPublishedHeatHolds(t *testing.T) {
	for f := 80; f <= 110; f++ {
		concrete := "concrete=" + strconv.Itoa(f) + " °F"
		for limit := 85; limit <= 105; limit += 5 {
			res := calctest.Try(Calculator, concrete, "age=5 min", "limit-temp="+strconv.Itoa(limit)+" °F")
			if limit > 95 != (res.State == calc.Bad) {
				t.Errorf("%s, limit %d °F: %s", concrete, limit, res.State)
			}
			if res.State == calc.OK && f > 95 && res.Out.Choice("verdict") != loadHot {
				t.Errorf("%s, limit %d °F: %s", concrete, limit, res.Out.Choice("verdict"))
			}
		}
	}
}

// A time over 90 min gives no answer, whatever the specification says.
func TestLongTimeIsRefused(t *testing.T) {
	for own, want := range map[string]calc.State{
		"45": calc.OK, "90": calc.OK, "91": calc.Refused, "300": calc.Refused,
	} {
		res := calctest.Run(t, Calculator, "concrete=75 °F", "rule=own", "own-time="+own+" min")
		if res.State != want || calctest.Noted(res, calc.RefusePassing) != (want == calc.Refused) {
			t.Errorf("%s min: %s, %v", own, res.State, res.Notes)
		}
	}
}

func TestEmptyBy(t *testing.T) {
	res := calctest.Run(t, Calculator, "batched=11:10 pm", "concrete=75 °F")
	if got := calc.FormatClock(res.Out.Num("by")); got != "0:40 (+1 d)" {
		t.Errorf("empty by %s", got)
	}
}
