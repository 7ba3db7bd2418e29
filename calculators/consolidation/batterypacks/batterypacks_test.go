package batterypacks

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// With enough chargers the number of packs is bounded, and charging never needs
// more packs.
func TestChargingBounds(t *testing.T) {
	for _, pour := range []string{"1 h", "3 h", "8 h", "24 h"} {
		out := calctest.Run(t, Calculator, "pour="+pour).Out
		if out.Num("with") > out.Num("without") || out.Num("bring") != out.Num("with")+1 {
			t.Errorf(
				"%s: %v with, %v without, %v to bring",
				pour,
				out.Num("with"),
				out.Num("without"),
				out.Num("bring"),
			)
		}
		many := calctest.Run(t, Calculator, "pour="+pour, "chargers=40").Out.Num("with")
		if many > 2*(1+math.Ceil(60/37.5)) {
			t.Errorf("%s: %v packs with chargers for all", pour, many)
		}
	}
	none := calctest.Run(t, Calculator, "chargers=0").Out
	if none.Num("with") != none.Num("without") || none.Has("keep-up") {
		t.Error("no charger must mean the same packs as without charging")
	}
}

func TestBatteryNotes(t *testing.T) {
	all := []calc.Text{noteChargers, notePower, noteSpare, askCold, noteHard}
	calctest.CheckNotesAmong(t, Calculator, all, []calctest.NotesCase{
		{Inputs: nil, Want: []calc.Text{noteChargers}},
		{Inputs: []string{"chargers=4"}, Want: nil},
		{Inputs: []string{"chargers=0"}, Want: []calc.Text{notePower}},
		{Inputs: []string{"chargers=0", "spare=0"}, Want: []calc.Text{notePower, noteSpare}},
		{Inputs: []string{"chargers=4", "cold=0%"}, Want: []calc.Text{askCold}},
		{Inputs: []string{"chargers=40", "minutes=5 min", "duty=100%"}, Want: []calc.Text{noteHard}},
		{Inputs: []string{"pour=30 min"}, Want: nil}, // no pack is changed
	})
	label := calctest.Run(t, Calculator, "known=label", "volts=18", "amp-hours=5", "draw=360 W")
	if got := label.Out.Num("run") / 60; math.Abs(got-15) > 1e-9 { // 90 Wh over 360 W
		t.Errorf("a 90 Wh pack runs 360 W for %v min", got)
	}
}

// The chargers that keep up are one number, in the answer and in the note: no more than
// one for each pack that is changed.
func TestChargersAreOneNumber(t *testing.T) {
	res := calctest.Run(t, Calculator, "pour=24 h", "charge=24 h", "minutes=5 min", "tools=2", "chargers=2")
	n, ok := calctest.NoteOf(res, noteChargers)
	if !ok {
		t.Fatal("two chargers keep up with a charge of a day")
	}
	shown := calc.Locale{}.Say("{count}", calc.Count("count", int(res.Out.Num("keep-up"))))
	if got := (calc.Locale{}).Say("{count}", n.Slots...); got != shown ||
		res.Out.Num("keep-up") != res.Out.Num("without")-2 {
		t.Errorf("%s in the note, %s in the answer", got, shown)
	}
}

// A run time is never shown longer than it is: 24.9 min, and 41.5 min by the
// clock where the tool runs 60 % of the time.
func TestRunTimesRoundDown(t *testing.T) {
	res := calctest.Run(t, Calculator, "known=minutes", "minutes=24.9 min", "cold=0%", "duty=60%")
	for id, want := range map[string]string{"run": "24 min", "lasts": "41 min"} {
		for i, f := range res.Out.Fields() {
			if got := (calc.Locale{}).Write(f, res.Out.At(i)); f.ID == id && got != want {
				t.Errorf("%s is shown as %s, want %s", id, got, want)
			}
		}
	}
}
