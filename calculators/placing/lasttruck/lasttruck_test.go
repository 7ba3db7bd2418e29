package lasttruck

import (
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The plant's times and least load, and the time of day, have no usual value:
// a result that rests on one is given only once it is entered.
func TestThePlantIsAsked(t *testing.T) {
	for _, f := range Calculator.In {
		switch f.ID {
		case "least-yd", "least-m", "needed", "lead", "cut-off", "now", "hopper", "take-on", "open", "drums":
			if f.Usual != "" {
				t.Errorf("%s has the usual value %q", f.ID, f.Usual)
			}
		}
	}
	res := calctest.RunNotes(t, Calculator, []calc.Text{askLeast, askNeeded, askLead, askCutOff})
	if res.Out.Has("call-by") || res.Out.Choice("verdict") != ask {
		t.Errorf("without the plant's times: %s, call by %v", res.Out.Choice("verdict"), res.Out.Value("call-by"))
	}
	for _, inputs := range [][]string{{"needed=14:00"}, {"lead=30 min"}, {"cut-off=13:00"}} {
		if calctest.Run(t, Calculator, inputs...).Out.Has("call-by") {
			t.Errorf("%v: a time to call", inputs)
		}
	}
	res = calctest.Run(t, Calculator, "needed=14:00", "lead=30 min")
	if res.Out.Choice("verdict") != ask || !calctest.Noted(res, askCutOff) {
		t.Error("no question for the plant's cut-off")
	}
}

// Line and hopper are added only if they still take on concrete.
func TestLineIsNotOrderedTwice(t *testing.T) {
	job := []string{"walls=110 ft | 8 in | 2 ft", "drums=3 yd³ | guess"}
	base := calctest.Run(t, Calculator, job...)
	same := calctest.Run(t, Calculator, append(job, "take-on=2 yd³")...)
	empty := calctest.Run(t, Calculator, append(job, "line=more", "take-on=2 yd³")...)
	calctest.NearBy(t, "line full", same.Out.Num("missing-m"), base.Out.Num("missing-m"), 1e-12)
	calctest.NearBy(t, "line empty", empty.Out.Num("missing-m"), base.Out.Num("missing-m")+calc.SI(2, "yd³"), 1e-12)
	if res := calctest.Try(Calculator, append(job, "line=more")...); res.State != calc.Bad {
		t.Errorf("an empty line without its volume: %s", res.State)
	}
}

// At random: the order covers what is missing, is a whole number of steps and
// covers the least load; it is at most a step above the larger of the two. A
// drum more never raises it, and a full load takes off at least what a guess of
// the same volume does.
func TestOrder(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	yd := func(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) + " yd³" }
	for range 300 {
		open, drum, least := 20*rnd.Float64(), 10*rnd.Float64(), 6*rnd.Float64()
		step := []float64{0.25, 0.5, 1}[rnd.IntN(3)]
		job := []string{"by=volume", "open=" + yd(open), "least-yd=" + yd(least), "step-yd=" + yd(step)}
		without := calctest.Run(t, Calculator, job...)
		guessed := calctest.Run(t, Calculator, append(job, "drums="+yd(drum)+" | guess")...)
		known := calctest.Run(t, Calculator, append(job, "drums="+yd(drum)+" | full")...)
		for _, res := range []calc.Result{without, guessed, known} {
			missing, order := calc.From(res.Out.Num("missing-m"), "yd³"), calc.From(res.Out.Num("order-m"), "yd³")
			if (missing == 0) != (order == 0) ||
				(missing == 0) != slices.Contains([]string{nothing, measure}, res.Out.Choice("verdict")) {
				t.Fatalf("%v: %v missing, %v ordered, %s", job, missing, order, res.Out.Choice("verdict"))
			}
			if order == 0 {
				continue
			}
			need := math.Max(missing, least)
			if order < need*(1-1e-9) || order > need+step || math.Abs(order/step-math.Round(order/step)) > 1e-9 {
				t.Fatalf("%v: %v missing, %v ordered", job, missing, order)
			}
		}
		a, b, c := without.Out.Num("missing-m"), guessed.Out.Num("missing-m"), known.Out.Num("missing-m")
		if b > a*(1+1e-12) || c > b*(1+1e-12) {
			t.Fatalf("%v: missing %v, with a guess %v, with a ticket %v", job, a, b, c)
		}
	}
}

// Only drums known by their tickets leave nothing to call. Where it takes a guess, the
// verdict is to measure, with no order.
func TestGuessAloneCoversNothing(t *testing.T) {
	for _, c := range []struct {
		drums, more, want string
	}{
		{"11 yd³ | full", "", nothing}, // 10 % waste on 10 yd³
		{"9 yd³ | full; 4 yd³ | guess", "", measure},
		{"9 yd³ | full; 4 yd³ | guess", "hopper=2 yd³", nothing},
		{"16 yd³ | guess; 16 yd³ | guess", "", measure},
		{"9 yd³ | full; 3 yd³ | guess", "waste=0", measure},
		{"10 yd³ | full; 3 yd³ | guess", "waste=0", nothing},
		{"9 yd³ | full; 3 yd³ | guess", "", ask},
	} {
		res := calctest.Run(t, Calculator, calctest.Inputs("by=volume; open=10 yd³; drums="+c.drums+"; "+c.more)...)
		if got := res.Out.Choice("verdict"); got != c.want || res.Out.Has("order-yd") != (c.want != measure) ||
			calctest.Noted(res, noteMeasure) != (c.want == measure) ||
			calctest.Noted(res, noteEnough) != (c.want == nothing) {
			t.Errorf("%v: %s, %v", c, got, res.Notes)
		}
	}
}

// The time to call, around the plant's cut-off, the time now and midnight.
func TestCallTime(t *testing.T) {
	for _, c := range []struct {
		inputs  []string
		by      string
		verdict string
		notes   []calc.Text
	}{
		{[]string{"needed=14:00", "lead=45 min", "cut-off=15:00", "now=13:15"}, "13:15", call, nil},
		{[]string{"needed=14:00", "lead=45 min", "cut-off=15:00", "now=13:16"}, "13:15", late, []calc.Text{noteLate}},
		{[]string{"needed=14:00", "lead=45 min", "cut-off=13:00", "now=13:00"}, "13:00", call, []calc.Text{noteCutOff}},
		{[]string{"needed=14:00", "lead=45 min", "cut-off=13:00", "now=13:01"}, "13:00", late,
			[]calc.Text{noteCutOff, noteClosed}},
		{[]string{"needed=1:00", "lead=90 min", "cut-off=2:00", "now=23:00"}, "23:30 (-1 d)", call,
			[]calc.Text{noteDay}},
		{[]string{"needed=23:30", "lead=60 min", "cut-off=0:30", "now=22:00"}, "22:30", call, nil},
		{[]string{"needed=14:00", "lead=45 min", "now=13:16"}, "13:15", late, []calc.Text{askCutOff, noteLate}},
	} {
		res := calctest.Run(t, Calculator, append(c.inputs, "least-yd=0")...)
		if got := calc.FormatClock(res.Out.Num("call-by")); got != c.by || res.Out.Choice("verdict") != c.verdict {
			t.Errorf("%v: by %s, %s", c.inputs, got, res.Out.Choice("verdict"))
		}
		calctest.RunNotes(t, Calculator, c.notes, append(c.inputs, "least-yd=0")...)
	}
	if res := calctest.Run(t, Calculator, "by=volume", "open=30 yd³"); !calctest.Noted(res, askHalf) {
		t.Error("no note on an order for more than one truck")
	}
	if res := calctest.Run(t, Calculator, "by=volume", "open=9 yd³", "waste=0"); calctest.Noted(res, askHalf) {
		t.Error("a note on an order for one truck")
	}
}
