package formpressure

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/placing/rateofrise"
)

// job is a loop of 140 ft, 8 in. thick and 9 ft high, in lifts of 2 ft of plain
// concrete at 70 °F, with an invented rating.
func job(typed ...string) []string {
	return replaced([]string{"height=9 ft", "pump-rate=10 yd³/h", "slump=6 in", "cement=plain", "admixture=none",
		"set=5 h",
		"age=45 min", "rating=1000", "rating-is=working", "guide-gives=silent"}, typed...)
}

// The setting times of the mixes are converted to 70 °F, as the plant gives them.
var mixes = map[string][]string{
	"plain 70 °F":          nil,
	"blend 70 °F":          {"cement=blend", "set=6.5 h"},
	"retarded blend 70 °F": {"cement=blend", "admixture=retards", "set=8 h"},
	"plain 50 °F":          {"temperature=50", "set=4.8774 h", "thickness=12 in", "length=93.33333333 ft"},
	"retarded blend 50 °F": {"cement=blend", "admixture=retards", "temperature=50", "set=8 h",
		"thickness=12 in", "length=93.33333333 ft"},
}

// What to do at an invented rating of 1000 psf: every cell is a deed.
func TestEveryCellHasADeed(t *testing.T) {
	const noPlan = -1
	for mix, row := range map[string]map[string]float64{ // minutes by pump rate, 0: go
		"plain 70 °F":          {"10": 0, "15": 0, "25": 8, "60": 17},
		"blend 70 °F":          {"10": 0, "15": 6, "25": 17, "60": 27},
		"retarded blend 70 °F": {"10": 5, "15": 19, "25": 30, "60": 40},
		"plain 50 °F":          {"15": 38, "25": 49, "60": 59},
		"retarded blend 50 °F": {"10": noPlan, "15": noPlan, "25": noPlan, "60": noPlan},
	} {
		for rate, minutes := range row {
			res := calctest.Run(t, Calculator, job(append(mixes[mix], "pump-rate="+rate)...)...)
			// Without a wait it is within the rating only with the set that is typed.
			want := doWritten
			asked := math.Max(minutes, map[string]float64{"15": 3, "25": 14, "60": 24}[rate]) // 2 ft every 30 min
			switch {
			case minutes == noPlan:
				want = doMix
				expect(t, res, "fluid-limit", 1000.0/150, "ft")
				if res.Out.Choice("mix") != mixBoth || !calctest.Noted(res, noteNoWait) ||
					!calctest.Noted(res, helpDepthMix) ||
					!(calctest.Noted(res, helpMix) || calctest.Noted(res, helpMixWait)) {
					t.Errorf("%s at %s: mix %s, %v", mix, rate, res.Out.Choice("mix"), res.Notes)
				}
			case asked > 0:
				expect(t, res, "wait", asked, "min")
				want = checkWait(t, job(append(mixes[mix], "pump-rate="+rate)...), res, asked > minutes)
			}
			if minutes >= 0 {
				expect(t, res, "wait-form", minutes, "min")
			}
			if got := paceOf(res); got != want {
				t.Errorf("%s at %s yd³/h: %s, want %s; %v", mix, rate, got, want, res.Notes)
			}
		}
	}
}

// checkWait checks an answer with a wait, and returns the deed that it must be. A pump that is
// too fast for the heads, and a wait beyond a planned pause, ask for a slower pump: the rate
// and the wait that the headline names are a plan. Where no slower pump helps, the wait is
// named as a stop.
func checkWait(t *testing.T, typed []string, res calc.Result, byRise bool) string {
	t.Helper()
	in, _ := calctest.RunCase(t, Calculator, typed...)
	heads := consolidation.CrewFlow(consolidation.RestAir, in.Num("thickness"), in.Num("lift"), calc.SI(6, "in"))
	said := (calc.Locale{Style: us}).Say(res.Headline.Text, res.Headline.Slots...)
	var flow, wait float64
	if n, _ := fmt.Sscanf(said, "Slow the pump to %f yd³/h, wait %f min", &flow, &wait); n > 0 {
		again := replaced(typed, fmt.Sprintf("pump-rate=%v yd³/h", flow), fmt.Sprintf("wait=%v min", wait))
		stop := wait > 15 // no slower pump needs only a planned pause
		if deed := paceOf(calctest.Run(t, Calculator, again...)); isWithin(deed) == stop || stop && deed != doWait ||
			!(calctest.Noted(res, helpSlower) || calctest.Noted(res, helpSlowerWait)) {
			t.Errorf("%v: %s gives %s; %v", typed, said, deed, res.Notes)
		}
		return doSlow
	}
	long := calc.From(res.Out.Num("wait"), "min")
	if calc.Over(in.Num("pump-rate"), heads) || calctest.Noted(res, helpTrucks) != (long > longWait) ||
		calctest.Noted(res, noteLongPause) != (long > 15) {
		t.Errorf("%v: “%s” at a wait of %v min; %v", typed, said, long, res.Notes)
	}
	if (calctest.Noted(res, noteByRise) || calctest.Noted(res, noteByRiseOnly)) != byRise {
		t.Errorf("%v: form or rise does not ask for the wait: %v", typed, res.Notes)
	}
	return doWait
}

// A pump that no usual crew's heads keep up with, or a wait beyond a planned pause, is no plan
// even where the wait is typed. The rate that is named instead is never below what a pump runs
// at, and where none is back in time the answer says so.
func TestSlowerPump(t *testing.T) {
	for _, c := range []struct {
		typed []string
		deed  string
		said  string
	}{
		{[]string{"pump-rate=60", "wait=24 min", "rating=1350"}, doSlow, "Slow the pump to 15.0 yd³/h, wait 3 min"},
		{[]string{"pump-rate=60", "rating=1350"}, doSlow, "Slow the pump to 15.0 yd³/h, wait 3 min"},
		{[]string{"pump-rate=60", "wait=24 min", "rating=1350", "length=280 ft", "age=10 min"}, doSlow,
			"Slow the pump to 15.0 yd³/h"},
		{[]string{"pump-rate=17", "wait=16 min", "rating=1350"}, doLess, ""},
		{[]string{"pump-rate=10", "length=40 ft", "rating=1350"}, doSlow, "Slow the pump to 7.0 yd³/h, wait 14 min"},
		{[]string{"pump-rate=10", "length=10 ft", "rating=1350"}, doWait, "Wait 28 min: each one is a stop"},
		{[]string{"pump-rate=60", "length=400 ft", "rating=1350"}, doSlow, ""},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		said := (calc.Locale{Style: us}).Say(res.Headline.Text, res.Headline.Slots...)
		if res.Out.Choice("deed") != c.deed || said != c.said ||
			calctest.Noted(res, noteNoSlower) != (c.deed == doSlow && c.said == "") {
			t.Errorf("%v: %s “%s”, want %s “%s”; %v", c.typed, res.Out.Choice("deed"), said, c.deed, c.said, res.Notes)
		}
	}
}

// The answer says which of form and rise sets the wait, and that the form may open
// without it; the other one's wait is named beside it.
func TestWhatGovernsTheWait(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
		fails bool // the plan without the wait is over the rating
	}{
		{[]string{"pump-rate=18", "rating=950"}, noteByRise, true},
		{[]string{"pump-rate=15"}, noteByRiseOnly, false},
		{[]string{"round=20 min", "rating=900"}, noteByBoth, true}, // 10 min by each
		{[]string{"pump-rate=15", "cement=blend", "admixture=retards", "set=8 h", "rating=1100"}, noteByForm, true},
		{[]string{"cement=blend", "admixture=retards", "set=8 h"}, noteByFormOnly, true},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		for _, note := range []calc.Text{noteByRise, noteByRiseOnly, noteByForm, noteByBoth, noteByFormOnly} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.note.EN(), res.Notes)
			}
		}
		if paceOf(res) != doWait || calctest.Noted(res, noteFails) ||
			calctest.Noted(res, noteFailsNow) != c.fails {
			t.Errorf("%v: %s, %v", c.typed, paceOf(res), res.Notes)
		}
		if longer := math.Max(res.Out.Num("wait-form"), res.Out.Num("wait-rise")); res.Out.Num("wait") != longer {
			t.Errorf("%v: wait %v s, the longer of both is %v s", c.typed, res.Out.Num("wait"), longer)
		}
	}
}

// Where no wait keeps the greatest rise, the answer names the measured rise or the wait
// that is not enough, and not the mix.
func TestSlowThePump(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
	}{
		{[]string{"rise=8 ft/h", "rating=1500"}, noteMeasured},
		{[]string{"rise=8 ft/h", "rating=900"}, noteMeasured},
		{[]string{"rise-house=0.5", "rating=1500"}, noteTooSlow},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if res.Out.Choice("deed") != doSlow || !calctest.Noted(res, c.note) || calctest.Noted(res, noteNoWait) {
			t.Errorf("%v: %s, %v", c.typed, res.Out.Choice("deed"), res.Notes)
		}
	}
}

// Without a rating that is met by any mix, today's pour ends lower.
func TestStopIsTheLastDeed(t *testing.T) {
	res := calctest.Run(t, Calculator, job("rating=600")...)
	if res.Out.Choice("deed") != doStop || !calctest.Noted(res, helpDepth) {
		t.Errorf("%s, %v", res.Out.Choice("deed"), res.Notes)
	}
	expect(t, res, "fluid-limit", 4, "ft")
}

// At the ends of a wall walked there and back two lifts count as one, and the times
// are twice as long.
func TestThereAndBack(t *testing.T) {
	around, ends := calctest.Run(t, Calculator, job("rating=1350")...),
		calctest.Run(t, Calculator, job("rating=1350", "how=back")...)
	if !calctest.Noted(ends, noteEnds) || ends.Out.Num("pressure-local") <= around.Out.Num("pressure-local") {
		t.Errorf("%v Pa, a loop has %v", ends.Out.Num("pressure-local"), around.Out.Num("pressure-local"))
	}
	calctest.NearBy(t, "not before", ends.Out.Num("not-before"), 2*around.Out.Num("not-before"), 1e-9)
}

// Where the form needs more time than the joint allows, there is no lift plan.
func TestNotBeforeAndBackByCross(t *testing.T) {
	hot := job("temperature=90", "pump-rate=60", "age=90 min", "cement=blend", "set=5 h", "rating=800")
	res := calctest.Run(t, Calculator, hot...)
	if res.Out.Choice("deed") == doGo || res.Out.Choice("deed") == doWait || !calctest.Noted(res, noteCrossed) ||
		res.Out.Num("not-before") <= res.Out.Num("back-by") {
		t.Errorf("%s: not before %v s, back by %v s; %v", res.Out.Choice("deed"), res.Out.Num("not-before"),
			res.Out.Num("back-by"), res.Notes)
	}
	long := calctest.Run(t, Calculator, job("length=600 ft", "temperature=80", "age=90 min", "rating=1350")...)
	if long.Out.Choice("deed") != doShorten || !calctest.Noted(long, noteTooLong) || calctest.Noted(long, helpDepth) {
		t.Errorf("a pass longer than the window: %s, %v", long.Out.Choice("deed"), long.Notes)
	}
	set := calctest.Run(t, Calculator, job("temperature=88", "set=2 h", "pump-rate=20")...)
	if set.Out.Choice("deed") != doShorten || !calctest.Noted(set, noteNoWindow) || calctest.Noted(set, noteTooLong) {
		t.Errorf("the joint sets before the hose is back: %s, %v", set.Out.Choice("deed"), set.Notes)
	}
	fresh := calctest.Run(t, Calculator, replaced(hot, "age=0 min", "set=12 h", "rating=1000")...)
	if fresh.Out.Choice("deed") != doSlow || calctest.Noted(fresh, noteNoSlower) {
		t.Errorf("with time left: %s", fresh.Out.Choice("deed"))
	}
}

// Back by is the end of the joint window where that comes before the set: the plan that
// rate-of-rise calls too late is no plan here.
func TestJointWindowCounts(t *testing.T) {
	for age, minutes := range map[string]float64{"0 min": 120, "45 min": 75, "90 min": 30} {
		res := calctest.Run(t, Calculator, job("age="+age, "rating=1350")...)
		expect(t, res, "back-by", minutes, "min")
		late := minutes < 41.4 // a pass of 6.91 yd³ at 10 yd³/h
		if deed := res.Out.Choice("deed"); (deed == doGo) == late || !calctest.Noted(res, noteJoint) {
			t.Errorf("age %s: %s, %v", age, deed, res.Notes)
		}
	}
	hot := calctest.Run(t, Calculator, job("temperature=100", "age=0 min", "set=2 h")...)
	if calctest.Noted(hot, noteJoint) || hot.Out.Num("back-by") >= 120*60 {
		t.Errorf("an early set: back by %v s, %v", hot.Out.Num("back-by"), hot.Notes)
	}
}

// The pressures of the job before rounding.
func TestPressuresOfTheJob(t *testing.T) {
	for rate, want := range map[string]float64{"10": 799, "15": 927, "25": 1222, "60": 1350} {
		res := calctest.Run(t, Calculator, job("pump-rate="+rate)...)
		calctest.Near(t, rate+" yd³/h", calc.From(res.Out.Num("pressure-local"), "psf"), want, 0.6)
	}
	cold := calctest.Run(t, Calculator, job("temperature=50", "cement=blend", "admixture=retards", "set=8 h",
		"thickness=12 in", "length=93.33333333 ft",

		"wait=19.52 min")...)
	if got := calc.From(cold.Out.Num("pressure-local"), "psf"); got < 1177 {
		t.Errorf("a cold retarded blend every 61 min: %v psf", got)
	}
}

// Both setting windows follow the plant or the estimate; an unknown mix sets late
// for the form and early for the joint.
func TestUnknownMixCountsTwice(t *testing.T) {
	unknown := calctest.Run(t, Calculator, job("set=", "cement=unknown", "admixture=unknown")...)
	plain := calctest.Run(t, Calculator, job("set=")...)
	if unknown.Out.Num("set-used") <= plain.Out.Num("set-used") ||
		unknown.Out.Num("back-by") > plain.Out.Num("back-by") {
		t.Errorf("unknown: set %v s, back by %v s; plain: %v, %v", unknown.Out.Num("set-used"),
			unknown.Out.Num("back-by"), plain.Out.Num("set-used"), plain.Out.Num("back-by"))
	}
}

// Another mix is at most 20 °F warmer, without a retarder where that alone helps, and
// its warmth has a caution.
func TestWarmerMix(t *testing.T) {
	for _, c := range []struct{ cold, want float64 }{{41, 61}, {45, 65}, {50, 70}, {60, 70}} {
		res := calctest.Run(t, Calculator, job(fmt.Sprintf("temperature=%v", c.cold), "rating=860",
			"pump-rate=8", "set=8 h", "age=0 min")...)
		if res.Out.Has("mix-temperature") {
			expect(t, res, "mix-temperature", calc.From(calc.SI(c.want, "°F"), "°F"), "°F")
			if !calctest.Noted(res, noteWarmer) {
				t.Errorf("%v °F: no caution about warmer concrete", c.cold)
			}
		} else if res.Out.Choice("mix") != "" {
			t.Errorf("%v °F: %s without its temperature", c.cold, res.Out.Choice("mix"))
		}
	}
	free := calctest.Run(t, Calculator, job("cement=plain", "admixture=retards", "set=12 h", "temperature=60",
		"rating=1200", "pump-rate=10")...)
	if free.Out.Choice("mix") != mixFree || free.Out.Has("mix-temperature") || calctest.Noted(free, noteWarmer) {
		t.Errorf("%s: mix %q, %v", free.Out.Choice("deed"), free.Out.Choice("mix"), free.Notes)
	}
}

// Without the plant's time the joint goes by the earliest of our estimates.
func TestJointGoesByTheEarliest(t *testing.T) {
	cold := []string{"temperature=50", "set=", "cement=blend", "admixture=retards"}
	late, fast := calctest.Run(t, Calculator, job(cold...)...),
		calctest.Run(t, Calculator, job("temperature=50", "set=5 h")...)
	if late.Out.Num("back-by") != fast.Out.Num("back-by") {
		t.Errorf("back by %v s, plain concrete %v s", late.Out.Num("back-by"), fast.Out.Num("back-by"))
	}
}

// A wait that is typed too long has a plan with a shorter one, and the note gives its limits.
func TestWaitTypedTooLong(t *testing.T) {
	long := job("pump-rate=15", "wait=60 min", "rating=1350")
	res := calctest.Run(t, Calculator, long...)
	if res.Out.Choice("deed") != doLess || !calctest.Noted(res, noteTooLongWait) {
		t.Fatalf("%s, %v", res.Out.Choice("deed"), res.Notes)
	}
	var least, most float64
	for _, n := range res.Notes {
		if n.Text == noteTooLongWait {
			said := calc.Locale{Style: us}.Say(n.Text, n.Slots...)
			if _, err := fmt.Sscanf(said[strings.Index(said, "Wait at"):], "Wait at least %v min and at most %v min",
				&least, &most); err != nil {
				t.Fatalf("%s: %v", said, err)
			}
		}
	}
	for wait, want := range map[float64]string{least: doGo, most: doGo, most + 1: doLess, least - 1: doWait} {
		typed := replaced(long, fmt.Sprintf("wait=%v min", wait))
		if got := deedOf(t, typed...); got != want {
			t.Errorf("a wait of %v min, of %v to %v: %s, want %s", wait, least, most, got, want)
		}
	}
}

// The form may be taller than what is placed: CIRIA Report 108 then gives more, and a form
// that is typed lower changes nothing.
func TestFormHeight(t *testing.T) {
	at := func(typed ...string) float64 {
		return calctest.Run(t, Calculator, job(typed...)...).Out.Rows("methods")[1].Num("pressure")
	}
	same, tall := at(), at("form-height=14 ft")
	if at("form-height=9 ft") != same || at("form-height=5 ft") != same || tall <= same {
		t.Errorf("by CIRIA 108 %v Pa with a form of 9 ft, %v with 14 ft, %v with 5 ft", same, tall,
			at("form-height=5 ft"))
	}
}

// A wait that a pass with its pauses has no time for is no plan.
func TestPausesCross(t *testing.T) {
	res := calctest.Run(t, Calculator, job(append(mixes["plain 50 °F"], "pump-rate=10")...)...)
	if res.Out.Choice("deed") != doMix || !calctest.Noted(res, noteCrossed) {
		t.Errorf("%s, %v", res.Out.Choice("deed"), res.Notes)
	}
}

// Form pressure and rate of rise agree on a pass with the usual pauses: what is placed as
// planned is back in time.
func TestBackInTimeAsInRateOfRise(t *testing.T) {
	for way, how := range map[string]string{"around": around, "back": back} {
		for length := 60; length <= 260; length += 20 {
			shared := []string{fmt.Sprintf("length=%d ft", length), "lift=2 ft", "age=45 min"}
			pressed := calctest.Run(t, Calculator, append(shared, "how="+how, "rating=3000",
				"rating-is=working", "guide-gives=silent", "pump-rate=12",
				"rise-house=4", "wait=0")...)
			rises := calctest.Run(t, rateofrise.Calculator, append(shared, "way="+way, "rate=12")...)
			late := rises.Out.Choice("verdict") == "late"
			if deed := pressed.Out.Choice("deed"); late != (deed == doShorten) {
				t.Errorf("%d ft, %s: %s, and in rate of rise late is %v", length, way, deed, late)
			}
		}
	}
}

// The note of the table by rating gives the rise below which a 2 ft lift has no plan. A short
// pass shows it: the wait alone takes the window, and one minute more is too late.
func TestLeastRiseOfTheTable(t *testing.T) {
	note := Calculator.Tables[1].Note.EN()
	for _, age := range []float64{45, 80} {
		window := 120 - age // min, of a joint window of 120 min
		rise := 2 / (window / 60)
		for _, want := range []string{fmt.Sprintf("%.3g ft/h (%.2f m/h)", rise, rise*0.3048),
			fmt.Sprintf("loads %v min old", age), "joint window of 120 min"} {
			if !strings.Contains(note, want) {
				t.Errorf("the note does not have “%s”: %s", want, note)
			}
		}
		for wait, deed := range map[float64]string{window - 3: doGo, window + 1: doLess} {
			res := calctest.Run(t, Calculator, job(fmt.Sprintf("age=%v min", age), fmt.Sprintf("wait=%v min", wait),
				"joint-most=120 min", "pause-most=", "length=10 ft", "pump-rate=18", "rating=3000")...)
			rose := calc.From(res.Out.Num("rise-local"), "ft/h")
			if got := res.Out.Choice("deed"); got != deed || (rose < rise) != (deed == doLess) {
				t.Errorf("age %v, wait %v: %s at %v ft/h, want %s", age, wait, got, rose, deed)
			}
		}
	}
}
