package pourtime

import (
	"testing"

	"coursebook/calculators/calctest"
)

func TestClock(t *testing.T) {
	for _, c := range []struct {
		hours float64
		want  string
	}{{7, "7:00"}, {13.25, "13:15"}, {0, "0:00"}, {24, "0:00"}, {25.5, "1:30"}, {-1.25, "22:45"}, {9 + 1.0/3, "9:20"},
		{9.999999999, "10:00"}, {23.995, "0:00"}} {
		if got := clock(c.hours * 3600); got != c.want {
			t.Errorf("%v h is %s, want %s", c.hours, got, c.want)
		}
	}
}

// The latest start, taken as the start, ends just on time; a minute later it
// does not.
func TestLatestStart(t *testing.T) {
	job := []string{
		"volume=27 yd³",
		"rate=18 yd³/h",
		"moving=50 %",
		"set-up=30 min",
		"clean-up=45 min",
		"before=15 h",
	} // 4 h 15 min
	for _, c := range []struct {
		start   string
		overrun bool
	}{{"10 h 45 min", false}, {"10 h 46 min", true}, {"7 h", false}} {
		res := calctest.Run(t, Calculator, append(job, "start="+c.start)...)
		if calctest.Noted(res, noteOverrun) != c.overrun || !calctest.Noted(res, noteClock) {
			t.Errorf("start %s: %v", c.start, res.Notes)
		}
		if rows := res.Out.Rows("clock"); len(rows) != 5 || rows[4].Num("hour") != 10 || rows[4].Num("minute") != 45 {
			t.Errorf("clock %v", rows)
		}
	}
	if res := calctest.Run(t, Calculator, append(job[:5], "before=4 h")...); !calctest.Noted(res, noteDayPrior) {
		t.Error("a latest start before midnight is not told")
	}
	if res := calctest.Run(t, Calculator, append(job[:5], "before=")...); len(res.Out.Rows("clock")) != 4 {
		t.Error("a latest start without a wish")
	}
	if res := calctest.Run(t, Calculator, append(job[:5], "start=20 h")...); !calctest.Noted(res, noteMidnight) {
		t.Error("a pour past midnight is not told")
	}
}

func TestPourNotes(t *testing.T) {
	for _, c := range []struct {
		inputs []string
		text   string
		want   bool
	}{
		// 10 h
		{[]string{"volume=99 yd³", "rate=12 yd³/h", "moving=100 %", "set-up=45 min", "clean-up=60 min"},
			string(noteLong), false},
		{[]string{"volume=99.6 yd³", "rate=12 yd³/h", "moving=100 %", "set-up=45 min", "clean-up=60 min"},
			string(noteLong), true},
		{[]string{"moving=90 %"}, string(noteSmooth), false},
		{[]string{"moving=91 %"}, string(noteSmooth), true},
	} {
		res := calctest.Run(t, Calculator, c.inputs...)
		found := false
		for _, n := range res.Notes {
			found = found || string(n.Text) == c.text
		}
		if found != c.want {
			t.Errorf("%v: %v, want %v", c.inputs, found, c.want)
		}
	}
	// standing time and running time make the whole
	res := calctest.Run(t, Calculator, "volume=12 yd³", "rate=12 yd³/h", "moving=50 %")
	calctest.NearBy(t, "pumping", res.Out.Num("pumping"), 7200, 1e-12)
	calctest.NearBy(t, "standing", res.Out.Num("standing"), 3600, 1e-12)
	calctest.NearBy(
		t,
		"crew hours",
		calctest.Run(t, Calculator, "crew=10").Out.Num("crew-hours"),
		2*calctest.Run(t, Calculator, "crew=5").Out.Num("crew-hours"),
		1e-12,
	)
}
