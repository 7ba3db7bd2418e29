package evaporation

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func TestNotes(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		verdict string
		note    calc.Text
	}{
		{[]string{"concrete=87 °F", "air=80 °F", "humidity=50%"}, rateAct, noteAct},
		{[]string{"concrete=70 °F", "air=70 °F", "humidity=70%", "wind=20 mph"}, rateCare, noteCare},
		{[]string{"concrete=70 °F", "air=70 °F", "humidity=70%", "wind=20 mph", "mix=silica"}, rateAct, noteAct},
		{[]string{"concrete=70 °F", "air=70 °F", "humidity=70%", "wind=5 mph"}, rateLow, ""},
		{[]string{"concrete=45 °F", "air=85 °F", "humidity=95%"}, rateDew, noteDew},
		{[]string{"wind=30 mph"}, rateAct, noteGrid},
		{[]string{"wind-height=33 ft"}, rateAct, noteLow},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("verdict") != c.verdict || c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
		if calctest.Noted(res, noteDew) != (c.note == noteDew) ||
			calctest.Noted(res, noteGrid) != (c.note == noteGrid || c.note == noteDew) {
			t.Errorf("%v: notes %v", c.typed, res.Notes)
		}
	}
	if res := calctest.Run(t, Calculator, "concrete=45 °F", "air=85 °F", "humidity=95%"); res.Out.Num("rate") != 0 {
		t.Errorf("dew dries: %v", res.Out.Num("rate"))
	}
	// No rate below zero is shown as 0 without a note, of one equation or of both.
	for _, c := range []struct{ concrete, air, humidity string }{
		{"45 °F", "85 °F", "95%"}, {"60 °F", "80 °F", "50%"}, {"50 °F", "66 °F", "54%"}, {"70 °F", "70 °F", "99%"},
	} {
		res := calctest.Run(t, Calculator, "concrete="+c.concrete, "air="+c.air, "humidity="+c.humidity)
		uno, menzel := res.Out.Num("rate") == 0, res.Out.Num("menzel") == 0
		if calctest.Noted(res, noteDew) != (uno && menzel) || calctest.Noted(res, noteOneDew) != (uno != menzel) {
			t.Errorf("%v: Uno %v, Menzel %v, notes %v", c, res.Out.Num("rate"), res.Out.Num("menzel"), res.Notes)
		}
	}
	for mix, want := range map[string]bool{mixPlain: false, mixBlend: true, mixSilica: false} {
		if calctest.Noted(calctest.Run(t, Calculator, "mix="+mix), noteBlend) != want {
			t.Errorf("mix %s: note on the limit of blends is %v", mix, !want)
		}
	}
	// ACI 305R-99, table 2.1.5 (from memory): 0.2 lb/ft²/h. Uno gives 0.19 and
	// Menzel 0.22: the faster one decides.
	res := calctest.Run(t, Calculator, "concrete=105 °F", "air=95 °F", "humidity=85%", "wind=10 mph")
	if res.Out.Choice("verdict") != rateAct || res.Out.Num("worst") != res.Out.Num("menzel") ||
		!calctest.Noted(res, noteSplit) {
		t.Errorf("the slower equation decides: %v", res.Notes)
	}
	// Just above 0.2 lb/ft²/h by Uno, below it by Menzel: the stricter is noted.
	if res := calctest.Run(t, Calculator, "concrete=70 °F", "air=70 °F", "humidity=30%",
		"wind=15.6 mph"); !calctest.Noted(
		res,
		noteSplit,
	) {
		t.Errorf("the methods split: %v and %v", res.Out.Num("rate")*3600/4.882, res.Out.Num("menzel")*3600/4.882)
	}
}
