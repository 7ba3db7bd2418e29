package formpressure

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/consolidation/vibrator"
	"coursebook/calculators/displays"
	"coursebook/calculators/pressure"
	"coursebook/calculators/quantity"
	"coursebook/calculators/weather/settingtime"
)

// Without the plant's figure the final set is no earlier than the one that setting-time
// opens on, at any temperature and for any mix, and the answer names what it is taken from.
func TestOneClockForTheSet(t *testing.T) {
	for temp := 55; temp <= 90; temp += 5 {
		usual := calctest.Run(t, settingtime.Calculator, fmt.Sprintf("concrete=%d °F", temp)).Out.Num("final-set")
		for cement, by := range map[string][2]string{
			"plain": {setUsual, setMix}, "blend": {setUsual, setMix}, "rich": {setMix, setMix},
			pressure.Unknown: {setMix, setMix},
		} {
			for i, admixture := range []string{pressure.AdmixNone, pressure.AdmixRetards} {
				res := calctest.Run(t, Calculator, job("set=", fmt.Sprintf("temperature=%d °F", temp),
					"cement="+cement, "admixture="+admixture)...)
				got := res.Out.Num("set-used")
				if got < usual*(1-1e-9) || (by[i] == setUsual) != calctest.Equal(got, usual) ||
					res.Out.Choice("set-by") != by[i] {
					t.Errorf("%s, %s at %d °F: %v s by %s, setting time gives %v s", cement, admixture, temp, got,
						res.Out.Choice("set-by"), usual)
				}
			}
		}
	}
	if res := calctest.Run(t, Calculator, job()...); res.Out.Choice("set-by") != setTyped {
		t.Errorf("a set of 5 h is taken from %s", res.Out.Choice("set-by"))
	}
}

// A final set that is typed and earlier than our estimate is used, and the answer says so:
// the pressure by our estimate stands beside it, and whether the plan holds by that figure alone.
func TestEarlySetIsSaid(t *testing.T) {
	for _, c := range []struct {
		typed []string
		deed  string
		shown string // the option of set-typed, or ""
		note  calc.Text
	}{
		{job(), doWritten, setDecides, noteSetFlips},
		{job("rating=1200"), doGo, setEarly, noteEarlySet},
		{job("rating="), unchecked, setEarly, noteEarlySet},
		{job("pump-rate=15"), doWritten, setDecides, noteSetWait},
		{job("pump-rate=15", "temperature=60 °F", "set=2 h", "rating=1150"), doWritten, setDecides, noteSetWait},
		{job("pump-rate=15", "rating=1350"), doWait, setEarly, noteEarlySet},
		{job("set=7.5 h", "rating=1300"), doGo, setEarly, noteEarlySet},
		{job("set=8 h", "rating=1300"), doGo, "", ""},
		{job("set=", "rating=1300"), doGo, "", askSet},
		{slow("rating=700", "height=9 ft", "set=5 h", "cement=plain", "admixture=none", "pump-rate=3"), doWritten,
			setDecides,
			noteSetFlips},
		{slow("rating=1000", "height=9 ft", "set=5 h", "cement=plain", "admixture=none", "pump-rate=20"), doSlow,
			setDecides,
			noteSetSlow},
	} {
		in, res := calctest.RunCase(t, Calculator, c.typed...)
		if got := res.Out.Choice("deed"); got != c.deed || res.Out.Choice("set-typed") != c.shown {
			t.Errorf("%v: %s, set %q; want %s, %q; %v psf by our estimate", c.typed, got, res.Out.Choice("set-typed"),
				c.deed, c.shown, calc.From(res.Out.Num("pressure-estimate"), "psf"))
		}
		if c.note != "" && !calctest.Noted(res, c.note) {
			t.Errorf("%v: no “%s”: %v", c.typed, c.note.EN(), res.Notes)
		}
		if res.Out.Has("pressure-estimate") != (c.shown != "") ||
			calctest.Noted(res, noteEarlySet) != (c.shown != "") {
			t.Errorf("%v: our estimate is shown: %v", c.typed, res.Out.Has("pressure-estimate"))
		}
		if c.shown == setDecides && c.note != noteSetSlow &&
			!calc.Over(res.Out.Num("pressure-estimate"), in.Num("rating")) {
			t.Errorf("%v: %v Pa by our estimate is within the rating", c.typed, res.Out.Num("pressure-estimate"))
		}
	}
	// The pressure by our estimate is the one of the same plan with that set.
	for _, typed := range [][]string{job(), slow("set=5 h")} {
		ours := calctest.Run(t, Calculator, replaced(typed, "set=")...).Out.Num("pressure-local")
		calctest.NearBy(t, typed[0], calctest.Run(t, Calculator, typed...).Out.Num("pressure-estimate"), ours, 1e-9)
	}
}

// A wait up to the house rule is a planned pause, and a longer one is a stop. The crew of the
// second case has set itself a pause of 2 min.
func TestAWaitIsAPause(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
	}{
		{job(), ""}, {job("pump-rate=15"), notePause}, {job("pump-rate=15", "wait=15 min"), notePause},
		{job("pump-rate=15", "pause-most=2 min"), ""}, {job("pump-rate=15", "wait=16 min"), noteLongPause},
		{job("pump-rate=10", "length=10 ft", "rating=1350"), noteLongPause},
		{job("pump-rate=15", "wait=16 min", "pause-most=60 min"), noteLongPause},
		{oneGoRated(), ""},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		for _, note := range []calc.Text{notePause, noteLongPause} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.note.EN(), res.Notes)
			}
		}
	}
}

// The rate that the heads of nine hands keep up with is the highest whole one at which vibrator
// needs no fourth head, with air and without. The note comes above the rate without air, and a
// rate above the one with air is slowed to the one without.
func TestHeadsOfTheCrew(t *testing.T) {
	flow := func(rest float64) float64 {
		return calc.From(consolidation.CrewFlow(rest, calc.SI(8, "in"), calc.SI(2, "ft"), calc.SI(6, "in")), "yd³/h")
	}
	plain, air := flow(consolidation.RestPlain), flow(consolidation.RestAir)
	for _, c := range []struct {
		concrete string
		rate     float64
		heads    float64
	}{{"plain", plain, 3}, {"plain", plain + 1, 4}, {"air", air, 3}, {"air", air + 1, 4}} {
		heads := calctest.Run(t, vibrator.Calculator, "length=140 ft", "core=8 in", "lift=2 ft", "into=6 in",
			"openings=3", "concrete="+c.concrete, fmt.Sprintf("pump=%v yd³/h", c.rate)).Out.Num("vibrators")
		if heads != c.heads {
			t.Errorf("%s, %v yd³/h: %v heads, want %v", c.concrete, c.rate, heads, c.heads)
		}
		res := calctest.Run(t, Calculator, job("rating=1350", fmt.Sprintf("pump-rate=%v yd³/h", c.rate))...)
		slowed := strings.HasPrefix((calc.Locale{Style: us}).Say(res.Headline.Text, res.Headline.Slots...),
			fmt.Sprintf("Slow the pump to %.1f yd³/h", plain))
		if calctest.Noted(res, noteHeads) != (c.rate > plain) || slowed != (c.rate > air) {
			t.Errorf("%v yd³/h: slowed %v, %v", c.rate, slowed, res.Notes)
		}
	}
}

// The answer names the flow class of DIN 18218 beside its pressure, and where that decides the
// slump it holds to.
func TestFlowClassIsNamed(t *testing.T) {
	wettest := strings.TrimSuffix(quantity.Exact(calc.SI(float64(pressure.MethodSlump), "in"), displays.Inches, us),
		" in") + " in."
	note, ok := calctest.NoteOf(calctest.Run(t, Calculator, job("pump-rate=15")...), noteClass)
	said := note.Text.EN()
	for _, want := range []string{"F4", wettest, "F5", "refused", "from memory"} {
		if !ok || !strings.Contains(said, want) {
			t.Errorf("the answer does not name %s: %s", want, said)
		}
	}
	if calctest.Noted(calctest.Run(t, Calculator, job("pump-rate=10")...), noteClass) {
		t.Error("the class is explained where another method decides")
	}
	for _, list := range [][]calc.Option{rules, outputField("methods").Cols[0].Options} {
		for _, o := range list {
			if o.ID == byDIN && !strings.Contains(o.Label.EN(), "F4") {
				t.Errorf("the method has no class: %s", o.Label.EN())
			}
		}
	}
	if deed := deedOf(t, job("slump=7.25 in", "rating=3000")...); deed != doRefuse {
		t.Errorf("class F5 is %s", deed)
	}
}

// A limit of heat, age or joint looser than the house rule does not count, as in hot-weather
// and rate-of-rise: a hot or old load is refused.
func TestLooserLimitsAreHeld(t *testing.T) {
	for _, c := range []struct {
		typed []string
		deed  string
	}{
		{[]string{"hottest=95 °F", "rating=3000"}, doGo},
		{[]string{"hottest=95 °F", "temperature=92 °F", "rating=3000"}, doTooHot},
		{[]string{"hottest=95 °F", "temperature=92 °F", "rating="}, doTooHot},
		{[]string{"joint-most=300 min", "rating=3000", "age=45 min"}, doGo},
		{[]string{"joint-most=300 min", "rating=3000", "age=90 min"}, doShorten},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if got := res.Out.Choice("deed"); got != c.deed || !calctest.Noted(res, calc.NoteHeld) {
			t.Errorf("%v: %s, want %s; %v", c.typed, got, c.deed, res.Notes)
		}
	}
}

// Without the plant's figure a retarder, or an admixture that is not known, makes the set
// 3.5 h later than with none, whatever the cement. The same wall is then over its rating.
func TestRetarderDelaysOurSet(t *testing.T) {
	for _, cement := range []string{"plain", "blend", "rich", pressure.Unknown} {
		at := func(admixture string) float64 {
			return calctest.Run(t, Calculator, job("set=", "cement="+cement, "admixture="+admixture)...).
				Out.Num("set-used")
		}
		for _, admixture := range []string{pressure.AdmixRetards, pressure.Unknown} {
			if late := calc.From(at(admixture)-at(pressure.AdmixNone), "h"); math.Abs(late-3.5) > 1e-9 {
				t.Errorf("%s, %s: %v h later", cement, admixture, late)
			}
		}
	}
	wall := []string{"set=", "pump-rate=12", "rating=1150", "wait=3 min"}
	if deed := deedOf(t, job(wall...)...); deed != doGo {
		t.Errorf("with no admixture: %s", deed)
	}
	for _, admixture := range []string{pressure.AdmixRetards, pressure.Unknown} {
		if deed := deedOf(t, job(append(wall, "admixture="+admixture)...)...); within(deed) && deed != doWait {
			t.Errorf("%s: %s", admixture, deed)
		}
	}
}

// Where the verdict holds only with the set that is typed, the headline says so, in lifts and
// in one go, with a wait and without. The estimate has the name of the plan that it is of.
func TestHeadlineAsksForTheSetInWriting(t *testing.T) {
	for _, c := range []struct {
		typed []string
		said  string
	}{
		{job("pump-rate=12"), "Only with the plant's set in writing"},
		{job("pump-rate=15"), "Only with the plant's set in writing: wait 3 min. Without it: 16 min"},
		{job("pump-rate=15", "wait=60 min"), "Only with the plant's set in writing: wait 3 min. Without it: 16 min"},
		{job("guide-gives=unread"), "Only with the plant's set in writing"},
		{slow(), "Only with the plant's set in writing"},
		{job("pump-rate=15", "rating=1350"), "Wait 3 min after each pass"},
		{job("rating=1350"), "Within the rating. The foreman decides."},
	} {
		in, res := calctest.RunCase(t, Calculator, c.typed...)
		said := (calc.Locale{Style: us}).Say(res.Headline.Text, res.Headline.Slots...)
		if said == "" {
			said = optionOf("deed", res.Out.Choice("deed"))
		}
		if said != c.said {
			t.Errorf("%v: “%s”, want “%s”", c.typed, said, c.said)
		}
		waits := paceOf(res) == doWait || paceOf(res) == doLess
		if over := calc.Over(res.Out.Num("estimate-wait"), in.Num("rating")); waits &&
			over != (res.Out.Choice("deed") == doWritten) {
			t.Errorf("%v: %s, by our estimate with the wait over the rating: %v", c.typed, res.Out.Choice("deed"), over)
		}
		planned, waited := res.Out.Num("pressure-estimate"), res.Out.Num("estimate-wait")
		if res.Out.Has("estimate-wait") != waits || paceOf(res) == doWait && waited >= planned {
			t.Errorf("%v: %v Pa by our estimate, with the wait %v Pa", c.typed, planned, waited)
		}
	}
}

// optionOf is the English label of an option of an output.
func optionOf(output, id string) string {
	for _, o := range outputField(output).Options {
		if o.ID == id {
			return o.Label.EN()
		}
	}
	return ""
}
