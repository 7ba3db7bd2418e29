package formpressure

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	house "coursebook/calculators/rules"
)

// The form maker's guide comes first: a plan beyond it is no plan.
func TestGuide(t *testing.T) {
	guide := []string{"guide-lift=4 ft", "guide-rate=4"}
	for _, c := range []struct {
		name  string
		typed []string
		want  string
		deed  string
		note  calc.Text
	}{
		{"none", []string{"rating="}, guideNone, unchecked, askGuide},
		{"half of it", slow("guide-lift=4 ft", "rating=1200"), guideNone, doUnguided, askGuideBoth},
		{"other half", slow("guide-rate=4", "rating=1200"), guideNone, doUnguided, askGuideBoth},
		{"not entered", job("guide-gives=unread", "rating=1350"), guideNone, doUnguided, askGuide},
		{"it gives none", job("rating=1350"), guideSilent, doGo, noteGo},
		{"one go is one lift", slow(guide...), guideBeyond, doGuide, noteGuideBeyond},
		{"one go within", slow(append(guide, "height=4 ft")...), guideWithin, doGo, noteGuideWithin},
		{"lifts within", job(append(guide, "rating=1350")...), guideWithin, doGo, noteGuideWithin},
		{"lifts too fast", job("guide-lift=4 ft", "guide-rate=2"), guideBeyond, doWait, noteGuideBeyond},
		{"lifts too thick", job("guide-lift=1 ft", "guide-rate=4"), guideBeyond, doGuide, noteGuideBeyond},
		{"lift above the rating", job("guide-lift=4 ft", "guide-rate=4", "rating=500"), guideWithin, doStop,
			noteGuideLift},
		{"lifts of the guide", job("guide-lift=4 ft", "guide-rate=4", "rating="), guideWithin, unchecked, noteLifts},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		if res.Out.Choice("guide") != c.want || res.Out.Choice("deed") != c.deed || !calctest.Noted(res, c.note) {
			t.Errorf("%s: %s, %s, want %s, %s with “%s”", c.name, res.Out.Choice("guide"), res.Out.Choice("deed"),
				c.want, c.deed, c.note.EN())
		}
	}
	res := calctest.Run(t, Calculator, "guide-lift=4 ft", "guide-rate=4", "height=9'")
	expect(t, res, "guide-time", 30, "min") // 2 ft at 4 ft/h
	res = calctest.Run(t, Calculator, job("guide-lift=4 ft", "guide-rate=2")...)
	if got := calc.From(res.Out.Num("not-before"), "min"); got < 60 || got > 61 { // 2 ft at 2 ft/h, in whole minutes
		t.Errorf("not before %v min", got)
	}
}

// A lift deeper than the guide's has no wait: it would be that of the wrong lift.
func TestLiftOverTheGuide(t *testing.T) {
	for _, rating := range []string{"900", "600"} {
		res := calctest.Run(t, Calculator, job("guide-lift=1 ft", "guide-rate=2", "rating="+rating)...)
		if res.Out.Choice("deed") != doGuide || !calctest.Noted(res, noteGuideRetype) || res.Out.Has("wait") ||
			res.Out.Has("not-before") || res.Out.Has("wait-form") {
			t.Errorf("rating %s: %s, %v", rating, res.Out.Choice("deed"), res.Notes)
		}
	}
}

// A pour that ends lower still keeps the greatest rise: in lifts by a wait, in one go by
// the height that an hour may add.
func TestLowerPourKeepsTheRise(t *testing.T) {
	res := calctest.Run(t, Calculator, job("pump-rate=15", "rating=600")...)
	if res.Out.Choice("deed") != doStop || !calctest.Noted(res, noteOverRule) {
		t.Errorf("in lifts: %s, %v", res.Out.Choice("deed"), res.Notes)
	}
	slow := calctest.Run(t, Calculator, job("rating=900", "how=back", "length=90 ft", "wait=20 min")...)
	if slow.Out.Choice("deed") != doStop || calctest.Noted(slow, noteOverRule) {
		t.Errorf("in lifts, slow as typed: %s, %v", slow.Out.Choice("deed"), slow.Notes)
	}
	res = calctest.Run(t, Calculator, oneGoRated("vibration=deep", "rating=1000")...)
	if res.Out.Choice("deed") != doStop {
		t.Errorf("in one go: %s", res.Out.Choice("deed"))
	}
	for _, n := range res.Notes {
		if n.Text == helpDepth {
			if got := (calc.Locale{Style: us}).Say(n.Text, n.Slots...); !strings.Contains(got, "at 4' 0\"") {
				t.Errorf("in one go: %s", got)
			}
		}
	}
}

// The house rule for the rise counts beside the form and the form maker's rise: the
// lowest of them, with or without the guide's lift.
func TestGreatestRise(t *testing.T) {
	for _, c := range []struct {
		typed []string
		deed  string
		wait  float64 // min
	}{
		{[]string{"pump-rate=15"}, doWait, 3}, // 27.65 min a round; 2 ft at 4 ft/h take 30
		{[]string{"pump-rate=25", "rating=1500"}, doSlow, 14},
		{[]string{"pump-rate=38", "rating=1600"}, doSlow, 20},
		{[]string{"pump-rate=15", "wait=3 min"}, doWritten, 0},
		{[]string{"pump-rate=15", "rise-house=3"}, doWait, 13},
		{[]string{"pump-rate=15", "guide-lift=4 ft", "guide-rate=5"}, doWait, 3},
		{[]string{"pump-rate=25", "rating=1300", "guide-lift=4 ft", "guide-rate=30"}, doSlow, 14},
		{[]string{"pump-rate=15", "guide-lift=4 ft", "guide-rate=3"}, doWait, 13},
		{[]string{"pump-rate=15", "guide-rate=5"}, doWait, 3},
		{[]string{"pump-rate=15", "guide-rate=3"}, doWait, 13},
		{[]string{"rating=1500", "rise-house=0.5"}, doSlow, 0},
	} {
		res := calctest.Run(t, Calculator, job(c.typed...)...)
		if got := paceOf(res); got != c.deed || res.Out.Has("wait") != (c.wait > 0) {
			t.Errorf("%v: %s, want %s", c.typed, got, c.deed)
		}
		if c.wait > 0 {
			expect(t, res, "wait", c.wait, "min")
		}
	}
}

// A lift or a rise looser than its house rule is asked about first: no pressure,
// however low, makes it a plan. Within the rule the same wall is a plan. The crew of the
// test has set itself a lift of 1 ft and a rise of 3 ft/h.
func TestLooserThanTheHouseRule(t *testing.T) {
	amounts := maps.Clone(calctest.Amounts())
	amounts["lift"], amounts["rise"] = "1 ft", "3 ft/h"
	strict := calc.WithRules([]*calc.Calculator{Calculator}, amounts, house.All()...)[0]
	for _, c := range []struct {
		typed string
		field string // "" where no rule is passed
	}{
		{"lift=1 ft", ""}, {"lift=1.1 ft", "lift"}, {"lift=2 ft", "lift"},
		{"rise-house=3 ft/h", ""}, {"rise-house=3.1 ft/h", "rise-house"}, {"rise-house=4 ft/h", "rise-house"},
	} {
		for _, rating := range []string{"3000", ""} {
			var entries []calc.Entry
			for _, typed := range job("lift=1 ft", "pump-rate=5", "rise-house=3 ft/h", "rating="+rating, c.typed) {
				name, value, _ := strings.Cut(typed, "=")
				entries = slices.DeleteFunc(entries, func(e calc.Entry) bool { return e.Path == name })
				entries = append(entries, calc.Entry{Path: name, Text: value})
			}
			in, rejected := calc.Read(strict, entries, us)
			if len(rejected) > 0 {
				t.Fatal(rejected)
			}
			res := calc.Run(strict, in)
			want := doGo
			switch {
			case rating == "":
				want = unchecked
			case c.field != "":
				want = doHouse
			}
			warned := ""
			for _, n := range res.Notes {
				if n.Text == noteHouse {
					warned += n.At.Field
				}
			}
			if got := res.Out.Choice("deed"); got != want || warned != c.field || calctest.Noted(res, calc.NoteLooser) {
				t.Errorf("%s, rating %q: %s, want %s; warned at %q: %v", c.typed, rating, got, want, warned, res.Notes)
			}
			if want == doHouse && (res.Out.Has("wait") || res.Out.Has("not-before")) {
				t.Errorf("%s: a plan over the house rule", c.typed)
			}
		}
	}
}

// A guide looser than the house rules is asked about.
func TestLooserGuide(t *testing.T) {
	for _, c := range []struct {
		typed []string
		asked string // the field, or "" for none
	}{
		{[]string{"guide-lift=2 ft", "guide-rate=4"}, ""},
		{[]string{"guide-lift=1 ft", "guide-rate=3"}, ""},
		{[]string{"guide-lift=2 ft", "guide-rate=30"}, "guide-rate"},
		{[]string{"guide-lift=4 ft", "guide-rate=4"}, "guide-lift"},
	} {
		asked := ""
		for _, n := range calctest.Run(t, Calculator, job(c.typed...)...).Notes {
			if n.Text == askLooser {
				asked += n.At.Field
			}
		}
		if asked != c.asked {
			t.Errorf("%v: asked at %q, want %q", c.typed, asked, c.asked)
		}
	}
	loose := calctest.Run(t, Calculator, job("guide-lift=4 ft", "guide-rate=30")...)
	expect(t, loose, "guide-time", 30, "min") // 2 ft at 4 ft/h, both by the house rules
}

// Without a rating the form is not checked, and a rise over the house rule asks for a
// wait or a slower pump.
func TestRiseWithoutARating(t *testing.T) {
	for _, c := range []struct {
		typed []string
		wait  float64 // min; 0: none
		note  calc.Text
	}{
		{nil, 0, ""},
		{[]string{"pump-rate=15"}, 3, noteOverRule},
		{[]string{"pump-rate=15", "wait=3 min"}, 0, ""},
		{[]string{"pump-rate=30"}, 17, noteOverRule}, // 13.8 min a round; 2 ft at 4 ft/h take 30
		{[]string{"pump-rate=15", "guide-rate=3"}, 13, noteOverRule},
		{[]string{"rise-house=0.6"}, 0, noteOverSlow},
		{[]string{"how=once"}, 0, noteFast},
		{[]string{"how=once", "height=4 ft"}, 0, ""},
		{[]string{"pump-rate=30", "slump=8 in"}, 0, ""},
	} {
		res := calctest.Run(t, Calculator, job(append(c.typed, "rating=")...)...)
		if got := res.Out.Choice("deed"); got != unchecked && got != doRefuse {
			t.Errorf("%v: %s", c.typed, got)
		}
		for _, note := range []calc.Text{noteOverRule, noteOverSlow, noteFast} {
			if calctest.Noted(res, note) != (note == c.note) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.note.EN(), res.Notes)
			}
		}
		if res.Out.Has("wait-rise") != (c.wait > 0) {
			t.Errorf("%v: wait %v s", c.typed, res.Out.Num("wait-rise"))
		} else if c.wait > 0 {
			expect(t, res, "wait-rise", c.wait, "min")
		}
	}
}

// A lift typed as a page shows it in metric units is within the house rule of 2 ft.
func TestMetricLiftIsWithinTheRule(t *testing.T) {
	for _, lift := range []string{"0.6 m", "0.61 m"} {
		in, res := calctest.RunCase(t, Calculator, job("lift="+lift)...)
		if in.LooserThanHouse("lift") || res.Out.Choice("deed") == doHouse {
			t.Errorf("%s: %s", lift, res.Out.Choice("deed"))
		}
	}
}
