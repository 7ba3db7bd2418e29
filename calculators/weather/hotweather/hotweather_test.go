package hotweather

import (
	"strconv"
	"strings"
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
		{[]string{"concrete=75 °F", "age=80 min", "load=2 yd³"}, loadHurry, 10, noteHurry},
		{[]string{"concrete=75 °F", "age=95 min"}, loadLate, 0, noteLate},
		{[]string{"concrete=75 °F", "age=89 min", "turns=100", "load=0.5 yd³", "rate=30 yd³/h"}, loadHurry, 1,
			noteHurry},
		{[]string{"concrete=75 °F", "age=90 min", "turns=100"}, loadLate, 0, noteLate},
		{[]string{"concrete=75 °F", "turns=269"}, loadGood, 55, ""},
		{[]string{"concrete=75 °F", "turns=270"}, loadHurry, 55, noteDrum},
		{[]string{"concrete=75 °F", "turns=300"}, loadLate, none, noteTurns},
		{[]string{"concrete=75 °F", "turns=301"}, loadLate, none, noteTurns},
		{[]string{"concrete=86 °F", "hot-time=60 min"}, loadPart, 25, noteHeat86},
		{[]string{"concrete=85.9 °F", "hot-time=60 min"}, loadGood, 55, noteEighty},
		{[]string{"concrete=86 °F"}, loadGood, 55, noteEighty},
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
		calctest.Noted(calctest.Run(t, Calculator, "concrete=85.9 °F", "hot-time=60 min"), noteHeat86) {
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
			if res.State != calc.OK {
				continue
			}
			got := res.Out.Choice("verdict")
			if f > 95 && got != loadHot || f > 90 && got != loadHot && got != loadHouse {
				t.Errorf("%s, limit %d °F: %s", concrete, limit, res.Out.Choice("verdict"))
			}
		}
	}
}

// The house rule refuses a load that a looser limit of the job would take, and hot air has
// the lower limits of UFGS 03300A by its humidity. Humidity that is not known counts as dry.
func TestHouseRuleAndHotAir(t *testing.T) {
	for _, c := range []struct{ typed, verdict string }{
		{"limit-temp=95 °F; concrete=90 °F", loadGood},
		{"limit-temp=95 °F; concrete=91 °F", loadHouse},
		{"limit-temp=95 °F; concrete=95 °F", loadHouse},
		{"limit-temp=95 °F; concrete=96 °F", loadHot},
		{"limit-temp=88 °F; concrete=89 °F", loadHot},
		{"concrete=91 °F", loadHot},
		{"air=85 °F; concrete=90 °F", loadGood},
		{"air=86 °F; humidity=humid; concrete=90 °F", loadGood},
		{"air=86 °F; humidity=humid; limit-temp=95 °F; concrete=91 °F", loadHouse},
		{"air=86 °F; humidity=middle; concrete=85 °F", loadGood},
		{"air=86 °F; humidity=middle; concrete=86 °F", loadHot},
		{"air=86 °F; humidity=dry; concrete=80 °F", loadGood},
		{"air=86 °F; humidity=dry; concrete=81 °F", loadHot},
		{"air=86 °F; concrete=81 °F", loadHot},
		{"air=86 °F; humidity=humid; limit-temp=85 °F; concrete=86 °F", loadHot},
	} {
		typed := append([]string{"age=5 min"}, strings.Split(c.typed, "; ")...)
		res := calctest.Run(t, Calculator, typed...)
		if got := res.Out.Choice("verdict"); got != c.verdict || calctest.Noted(res, noteHouse) != (got == loadHouse) {
			t.Errorf("%s: %s, %v", c.typed, got, res.Notes)
		}
		looser := strings.Contains(c.typed, "limit-temp=95")
		if calctest.Noted(res, calc.NoteHeld) != looser || calctest.Noted(res, calc.NoteLooser) {
			t.Errorf("%s: %v", c.typed, res.Notes)
		}
	}
	res := calctest.Run(t, Calculator, "air=90 °F")
	if !calctest.Noted(res, askHumidity) {
		t.Error("the humidity of hot air is not asked for")
	}
}

// A load that cannot be emptied within its time is never within the limits. What goes in is
// what the pump takes until the time is up: 9 yd³ at 9 yd³/h take an hour.
func TestPartOfALoad(t *testing.T) {
	for _, c := range []struct {
		age, verdict string
		part         float64 // yd³
	}{
		{"30 min", loadGood, 9}, {"31 min", loadPart, 8.85}, {"60 min", loadPart, 4.5}, {"89 min", loadPart, 0.15},
		{"90 min", loadLate, 0}, {"95 min", loadLate, 0},
	} {
		res := calctest.Run(t, Calculator, "concrete=75 °F", "age="+c.age, "load=9 yd³", "rate=9 yd³/h")
		if got := res.Out.Choice("verdict"); got != c.verdict || calctest.Noted(res, notePart) != (got == loadPart) {
			t.Errorf("%s: %s, %v", c.age, got, res.Notes)
		}
		calctest.NearBy(t, c.age, calc.From(res.Out.Num("part"), "yd³")+1, c.part+1, 1e-9)
	}
	hot := calctest.Run(t, Calculator, "concrete=93 °F", "age=10 min", "limit-temp=90 °F")
	if hot.Out.Choice("verdict") != loadHot || hot.Out.Has("part") {
		t.Error("a part of a hot load is placed")
	}
}

// A time over 90 min gives no answer, whatever the specification says.
func TestLongTimeIsRefused(t *testing.T) {
	for own, want := range map[string]calc.State{
		"45": calc.OK, "90": calc.OK, "91": calc.Bad, "300": calc.Bad,
	} {
		res := calctest.Try(Calculator, "concrete=75 °F", "rule=own", "own-time="+own+" min")
		if res.State != want || want == calc.Bad && res.Notes[0].At.Field != "own-time" {
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
