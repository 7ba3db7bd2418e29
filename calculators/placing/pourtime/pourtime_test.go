package pourtime

import (
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

func TestClock(t *testing.T) {
	for _, c := range []struct {
		hours float64
		want  string
	}{
		{7, "7:00"}, {13.25, "13:15"}, {0, "0:00"}, {24, "0:00 (+1 d)"}, {25.5, "1:30 (+1 d)"},
		{-1.25, "22:45 (-1 d)"}, {9 + 1.0/3, "9:20"}, {9.999999999, "10:00"}, {23.995, "0:00 (+1 d)"},
	} {
		if got := clock(c.hours * 3600); got != c.want {
			t.Errorf("%v h is %s, want %s", c.hours, got, c.want)
		}
	}
}

// A pour that begins at the latest start ends on time; one that begins a minute
// later does not.
func TestLatestStart(t *testing.T) {
	job := []string{
		"volume=27 yd³",
		"rate=18 yd³/h",
		"moving=50 %",
		"set-up=30 min",
		"clean-up=45 min",
		"before=15:00",
	} // 4 h 15 min
	for _, c := range []struct {
		start   string
		overrun bool
	}{{"10:45", false}, {"10:46 am", true}, {"7h00", false}} {
		res := calctest.Run(t, Calculator, append(job, "start="+c.start)...)
		if calctest.Noted(res, noteOverrun) != c.overrun || !calctest.Noted(res, noteClock) {
			t.Errorf("start %s: %v", c.start, res.Notes)
		}
		if rows := res.Out.Rows("clock"); len(rows) != 5 || rows[4].Num("time") != 10.75*3600 {
			t.Errorf("clock %v", rows)
		}
	}
	early := calctest.Run(t, Calculator, append(job[:5], "start=0:30", "before=3:00")...)
	if !calctest.Noted(early, noteDayPrior) {
		t.Error("no note on a latest start before midnight")
	}
	if res := calctest.Run(t, Calculator, append(job[:5], "before=")...); len(res.Out.Rows("clock")) != 4 {
		t.Error("a latest start without a time to be done by")
	}
	if res := calctest.Run(t, Calculator, append(job[:5], "start=20:00")...); !calctest.Noted(res, noteMidnight) {
		t.Error("no note on a pour past midnight")
	}
	// From 23:00 to 3:15 of the next day, wanted by 5:00: in time.
	night := calctest.Run(t, Calculator, append(job[:5], "start=23:00", "before=5:00")...)
	if calctest.Noted(night, noteOverrun) || calc.FormatClock(night.Out.Rows("clock")[3].Num("time")) != "3:15 (+1 d)" {
		t.Errorf("a pour over midnight: %v", night.Notes)
	}
	// The pump is on site for set-up, pumping and wash-out: 4 h 15 min.
	if booked := night.Out.Num("booked"); booked != 5*3600 {
		t.Errorf("%v s are booked", booked)
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
	// Standing and running time add up to the pumping time.
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

// The set-up that the calculator opens on is called assumed, and one that is typed is not.
func TestSetUpIsAssumed(t *testing.T) {
	for _, c := range []struct {
		typed   []string
		assumed bool
	}{{nil, true}, {[]string{"set-up=60 min"}, false}, {[]string{"set-up=30 min"}, false}} {
		if res := calctest.Run(t, Calculator, c.typed...); calctest.Noted(res, askSetUp) != c.assumed {
			t.Errorf("%v: %v", c.typed, res.Notes)
		}
	}
}
