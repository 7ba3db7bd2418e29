package coldweather

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/weather"
)

// Colder air never lowers the limits, nor does a thinner section.
func TestLimitsAreMonotone(t *testing.T) {
	for i, row := range weather.ColdRows {
		if row.Mixed[0] <= row.Placed || row.Mixed[1] <= row.Mixed[0] || row.Mixed[2] <= row.Mixed[1] {
			t.Errorf("row %d: %v", i, row)
		}
		if i == 0 {
			continue
		}
		before := weather.ColdRows[i-1]
		if row.Placed >= before.Placed || row.Drop >= before.Drop || row.Mixed[2] >= before.Mixed[2] {
			t.Errorf("row %d against the one before: %v", i, row)
		}
	}
	for _, s := range []string{serviceSheltered, serviceExposed, servicePartly} {
		d := protectionDays(s)
		if d.frost[1] >= d.frost[0] || d.strength[1] >= d.strength[0] || d.strength[0] < d.frost[0] {
			t.Errorf("%s: %v", s, d)
		}
	}
}

func TestNotes(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		verdict string
		note    calc.Text
	}{
		{[]string{"concrete=54 °F"}, warmNot, noteToo},
		{[]string{"concrete=55 °F"}, warmOK, noteCooling},
		{[]string{"concrete=65 °F"}, warmOK, noteSlowly},
		{[]string{"concrete=91 °F"}, warmHot, noteOverhot},
		{[]string{"concrete=90 °F"}, warmOK, noteWarm},
		{[]string{"concrete=100 °F", "air=45 °F"}, warmHot, noteOverhot},
		{[]string{"concrete=95 °F", "air=20 °F"}, warmHot, noteOverhot},
		{[]string{"concrete="}, warmNone, noteSlowly},
		{[]string{"concrete=65 °F", "air=45 °F"}, warmOK, noteMild},
		{[]string{"concrete=65 °F", "air=38 °F", "surface=56 °F"}, warmOK, noteAtOnce},
		{[]string{"concrete=65 °F", "air=38 °F", "surface=56 °F"}, warmOK, noteProved},
		{[]string{"concrete=65 °F", "surface=50 °F"}, warmOK, noteInsulated},
		{[]string{"concrete=65 °F", "service=partly"}, warmOK, notePartly},
		{[]string{"concrete=65 °F", "service=loaded"}, warmOK, noteLoaded},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("verdict") != c.verdict || !calctest.Noted(res, c.note) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("verdict"), res.Notes)
		}
	}
	// 55 °F is the least for 8 in.: 75 °F is the most in the cold, 85 °F draws a caution.
	for _, c := range []struct {
		inputs []string
		want   bool
	}{
		{[]string{"concrete=75 °F"}, false},
		{[]string{"concrete=75.5 °F"}, true},
		{[]string{"concrete=85 °F"}, true},
		{[]string{"concrete=85 °F", "air=45 °F"}, false},
		{[]string{"concrete=71 °F", "section=24 in"}, true},
	} {
		if res := calctest.Run(t, Calculator, c.inputs...); calctest.Noted(res, noteWarm) != c.want {
			t.Errorf("%v: caution on warm concrete is %v", c.inputs, !c.want)
		}
	}
	// Near-freezing concrete: 32 °F under its cover in air of 25 °F.
	cold := calctest.Run(t, Calculator, "air=25 °F", "surface=32 °F")
	if cold.Out.Has("uncover") || calctest.Noted(cold, noteAtOnce) || !calctest.Noted(cold, noteInsulated) {
		t.Errorf("covers come off cold concrete: %v", cold.Notes)
	}
	if calctest.Run(t, Calculator, "service=loaded").Out.Has("strength") {
		t.Error("days are given for a full load")
	}
	// 60 °F under the cover, 0 °F outside, 8 in. wall: 60 of 50 F° in 24 h.
	calctest.Near(
		t,
		"uncover",
		calctest.Run(t, Calculator, "air=0 °F", "surface=60 °F").Out.Num("uncover")/3600,
		28.8,
		1e-9,
	)
}
