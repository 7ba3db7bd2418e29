package consolidation

import (
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

// noteCase says which of some notes a job must have.
type noteCase struct {
	typed []string
	want  []calc.Text
}

// exactly checks that each job has the wanted ones of all, and no other of them.
func exactly(t *testing.T, c *calc.Calculator, all []calc.Text, cases []noteCase) {
	t.Helper()
	for _, k := range cases {
		res := calctest.Run(t, c, k.typed...)
		for _, note := range all {
			if calctest.Noted(res, note) != slices.Contains(k.want, note) {
				t.Errorf("%s %v (%s): note %s", c.ID, k.typed, res.State, note.EN())
			}
		}
	}
}

func TestVibratorNotes(t *testing.T) {
	all := []calc.Text{refuseGap, refuseWhip, refuseLift, noteGap, noteStiff, noteFace, askSeen, noteLift, noteInto, noteFast, noteMany,
		noteFoot, askFoot, footLonger, footWindow, footOut, footStages}
	exactly(t, InternalVibrator, all, []noteCase{
		{nil, nil},
		{[]string{"gap=2.3 in"}, []calc.Text{noteGap}},
		{[]string{"gap=30 mm"}, []calc.Text{noteGap}},
		{[]string{"gap=29 mm"}, []calc.Text{refuseGap}},
		{[]string{"head=normal", "gap=90 mm"}, []calc.Text{noteStiff}},
		{[]string{"head=pencil"}, []calc.Text{noteFace}},
		{[]string{"core=9.8 in"}, nil},
		{[]string{"core=10 in"}, []calc.Text{noteFace}},
		{[]string{"plan=low"}, []calc.Text{noteFace}},
		{[]string{"plan=low", "core=6 in"}, nil},
		{[]string{"plan=seen", "seen=10.5 in"}, []calc.Text{askSeen}},
		{[]string{"plan=seen", "seen=9 in"}, nil},
		{[]string{"lift=610 mm"}, []calc.Text{noteLift}},
		{[]string{"lift=2 ft"}, nil},
		{[]string{"into=3.9 in"}, []calc.Text{noteInto}},
		{[]string{"into=4 in"}, nil},
		{[]string{"speed=3.1 in/s"}, []calc.Text{noteFast}},
		{[]string{"pump=30 yd³/h"}, []calc.Text{noteMany}},
		{[]string{"height=11 ft"}, nil},
		{[]string{"height=12 ft"}, []calc.Text{noteFoot, askFoot}},
		{[]string{"height=12 ft", "foot=longer"}, []calc.Text{noteFoot, footLonger}},
		{[]string{"height=12 ft", "foot=window"}, []calc.Text{noteFoot, footWindow}},
		{[]string{"height=12 ft", "foot=outside"}, []calc.Text{noteFoot, footOut}},
		{[]string{"height=12 ft", "foot=stages"}, []calc.Text{noteFoot, footStages}},
		{[]string{"height=9 ft", "foot=stages"}, nil},
		{[]string{"whip=3 ft"}, []calc.Text{refuseWhip}},
		{[]string{"lift=4 ft", "height=3 ft"}, []calc.Text{refuseLift}},
	})
}

// The length of a wall cancels: as many vibrators keep up on a long wall as
// on a short one, but for rounding places up.
func TestVibratorsDoNotDependOnLength(t *testing.T) {
	for _, length := range []string{"50 ft", "100 ft", "500 ft", "2000 ft"} {
		if got := calctest.Run(t, InternalVibrator, "length="+length, "openings=0").Out.Num("vibrators"); got != 2 {
			t.Errorf("%s of wall: %v vibrators", length, got)
		}
	}
}

// More pump, more time at rest, a shorter reach or a thinner core never ask
// for fewer vibrators.
func TestVibratorsMonotone(t *testing.T) {
	for _, c := range [][]string{
		{"pump", "2 yd³/h", "6 yd³/h", "12 yd³/h", "24 yd³/h", "60 yd³/h"},
		{"plan", "high", "middle", "low"},
		{"core", "18 in", "12 in", "8 in", "6 in", "4 in"},
		{"speed", "6 in/s", "3 in/s", "1 in/s"},
		{"concrete", "air", "plain"},
		{"openings", "0", "3", "20", "100"},
	} {
		last := 0.0
		for _, text := range c[1:] {
			got := calctest.Run(t, InternalVibrator, c[0]+"="+text).Out.Num("vibrators")
			if got < last {
				t.Errorf("%s %s: %v vibrators, fewer than %v", c[0], text, got, last)
			}
			last = got
		}
	}
}

// The vibrators found do keep up, and one less would not.
func TestVibratorsKeepUp(t *testing.T) {
	for _, pump := range []string{"3 yd³/h", "8 yd³/h", "10 yd³/h", "17 yd³/h", "60 yd³/h"} {
		out := calctest.Run(t, InternalVibrator, "pump="+pump).Out
		n, pass, fill := out.Num("vibrators"), out.Num("pass-high"), out.Num("fill")
		if pass/n > fill || n > 1 && pass/(n-1) <= fill {
			t.Errorf("%s: %v vibrators for %v s of work in %v s", pump, n, pass, fill)
		}
		if out.Num("with-spare") != n+1 {
			t.Errorf("%s: %v with a spare", pump, out.Num("with-spare"))
		}
	}
}

// Two fields that overlap by a quarter of their width cover a strip: at the
// reach the two circles meet, on paper and by the formula.
func TestReachIsWhereFieldsMeet(t *testing.T) {
	for _, r := range []float64{80, 130, 250, 600} {
		s := Spacing(r)
		y := Reach(r, s)
		if d := math.Hypot(s/2, y); math.Abs(d-r) > 1e-9*r {
			t.Errorf("radius %v: the corner lies at %v", r, d)
		}
		if math.Abs(y/r-math.Sqrt(7)/4) > 1e-12 {
			t.Errorf("radius %v: reach %v", r, y)
		}
	}
}

func TestCountsAtTheEdge(t *testing.T) {
	if got := Along(19.5, 0.195); got != 100 {
		t.Errorf("100 spacings make %v places", got)
	}
	if got := Along(19.5001, 0.195); got != 101 {
		t.Errorf("a little more than 100 spacings make %v places", got)
	}
	out := calctest.Run(t, InternalVibrator, "plan=low", "length=19.5 m", "openings=0").Out
	if out.Num("along") != 100 || out.Num("extra") != 0 {
		t.Errorf("%v places and %v more", out.Num("along"), out.Num("extra"))
	}
}

// stock plays a pour through minute by minute in another way than Charging:
// it tries a number of packs and tells whether the pour stops.
func stock(packs, slots, changes, chargers int, lasts, charge float64) bool {
	full := packs - slots
	if full < 0 {
		return false
	}
	var waiting int
	var busy []float64 // when each occupied charger is done
	clock := 0.0
	for k := 1; k <= changes; k++ {
		now := float64(k) * lasts
		for {
			slices.Sort(busy)
			if len(busy) == 0 || busy[0] > now+1e-6 {
				break
			}
			clock = busy[0]
			busy = busy[1:]
			full++
			if waiting > 0 {
				waiting--
				busy = append(busy, clock+charge)
			}
		}
		if full < slots {
			return false
		}
		full -= slots
		for range slots {
			if len(busy) < chargers {
				busy = append(busy, now+charge)
			} else {
				waiting++
			}
		}
	}
	return true
}

// Charging gives the fewest packs with which a played pour does not stop.
func TestChargingAgainstPlay(t *testing.T) {
	rnd := rand.New(rand.NewPCG(5, 6))
	for range 2000 {
		slots, chargers, changes := 1+rnd.IntN(5), rnd.IntN(6), rnd.IntN(12)
		lasts, charge := float64(10+rnd.IntN(50)), float64(10+rnd.IntN(120))
		change, charged := Charging(slots, changes, chargers, lasts, charge)
		packs := int(Bound(float64(slots), float64(change), float64(charged)))
		if !stock(packs, slots, changes, chargers, lasts, charge) || stock(packs-1, slots, changes, chargers, lasts, charge) {
			t.Fatalf("%d slots, %d changes of %v min, %d chargers of %v min: %d packs", slots, changes, lasts, chargers, charge, packs)
		}
	}
}

// With enough chargers the stock is bounded; charging never asks for more.
func TestChargingBounds(t *testing.T) {
	for _, pour := range []string{"1 h", "3 h", "8 h", "24 h"} {
		out := calctest.Run(t, BatteryPacks, "pour="+pour).Out
		if out.Num("with") > out.Num("without") || out.Num("bring") != out.Num("with")+1 {
			t.Errorf("%s: %v with, %v without, %v to bring", pour, out.Num("with"), out.Num("without"), out.Num("bring"))
		}
		many := calctest.Run(t, BatteryPacks, "pour="+pour, "chargers=40").Out.Num("with")
		if many > 2*(1+math.Ceil(60/37.5)) {
			t.Errorf("%s: %v packs with chargers for all", pour, many)
		}
	}
	none := calctest.Run(t, BatteryPacks, "chargers=0").Out
	if none.Num("with") != none.Num("without") || none.Has("keep-up") {
		t.Error("no charger must mean the same packs as without charging")
	}
}

func TestBatteryNotes(t *testing.T) {
	all := []calc.Text{noteChargers, notePower, noteSpare, askCold, noteHard}
	exactly(t, BatteryPacks, all, []noteCase{
		{nil, []calc.Text{noteChargers}},
		{[]string{"chargers=4"}, nil},
		{[]string{"chargers=0"}, []calc.Text{notePower}},
		{[]string{"chargers=0", "spare=0"}, []calc.Text{notePower, noteSpare}},
		{[]string{"chargers=4", "cold=0%"}, []calc.Text{askCold}},
		{[]string{"chargers=40", "minutes=5 min", "duty=100%"}, []calc.Text{noteHard}},
		{[]string{"pour=30 min"}, nil}, // no pack is ever changed
	})
	label := calctest.Run(t, BatteryPacks, "known=label", "volts=18", "amp-hours=5", "draw=360 W")
	if got := label.Out.Num("run") / 60; math.Abs(got-15) > 1e-9 { // 90 Wh over 360 W
		t.Errorf("a 90 Wh pack runs 360 W for %v min", got)
	}
}

// Foam gets no number of force, count or floor; stiff forms get them.
func TestOutside(t *testing.T) {
	numbers := []string{"force", "vibrators", "force-each", "floor"}
	foam, hard := calctest.Run(t, OutsideVibration), calctest.Run(t, OutsideVibration, "form=stiff")
	for _, id := range numbers {
		if foam.Out.Has(id) || !hard.Out.Has(id) {
			t.Errorf("%s: foam %v, stiff %v", id, foam.Out.Has(id), hard.Out.Has(id))
		}
	}
	practice := []calc.Text{noteNothing, noteOnlyFoot, noteShort, noteWeb, noteBulge, noteNever}
	exactly(t, OutsideVibration, append([]calc.Text{noteBuiltFor, noteLow}, practice...), []noteCase{
		{nil, practice},
		{[]string{"form=stiff"}, []calc.Text{noteBuiltFor}},
		{[]string{"form=stiff", "amplitude=0.001 in", "frequency=9000 vpm"}, []calc.Text{noteBuiltFor, noteLow}},
		{[]string{"form=stiff", "amplitude=0.04 mm", "frequency=9000 vpm"}, []calc.Text{noteBuiltFor}},
	})
	half, full := calctest.Run(t, OutsideVibration, "frequency=3000 vpm").Out, calctest.Run(t, OutsideVibration, "frequency=6000 vpm").Out
	if r := full.Num("acceleration") / half.Num("acceleration"); math.Abs(r-4) > 1e-12 {
		t.Errorf("twice the speed gives %v times the acceleration", r)
	}
	out := hard.Out
	if got := out.Num("force-each") * out.Num("vibrators"); math.Abs(got-out.Num("force")) > 1e-9*got {
		t.Errorf("the vibrators together give %v N of %v N", got, out.Num("force"))
	}
}

// The groups grow from one to the next, and every option has its group.
func TestHeads(t *testing.T) {
	for i, h := range heads {
		if headOptions[i].ID != h.id || findHead(h.id) != i {
			t.Errorf("group %s is not option %d", h.id, i)
		}
		for _, s := range []span{h.diameter, h.frequency, h.radius, h.rate} {
			if s.low >= s.high {
				t.Errorf("%s: range %v", h.id, s)
			}
		}
		if i > 0 && (h.radius.low <= heads[i-1].radius.low || h.rate.high <= heads[i-1].rate.high || h.frequency.high >= heads[i-1].frequency.high) {
			t.Errorf("%s does not follow %s", h.id, heads[i-1].id)
		}
	}
}

// Sentences are short enough for gloved hands.
func TestTextsFit(t *testing.T) {
	for _, c := range []*calc.Calculator{InternalVibrator, BatteryPacks, OutsideVibration} {
		for _, n := range c.Cautions {
			for _, sentence := range strings.Split(n.Text.EN(), ". ") {
				if words := len(strings.Fields(sentence)); words > 25 {
					t.Errorf("%s: sentence of %d words", n.Text.EN(), words)
				}
			}
		}
	}
}

// Texts without slots repeat some limits in words; they must be those of the
// method.
func TestTextsNameTheLimits(t *testing.T) {
	inches := func(m float64) string {
		return quantity.Exact(m, quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in"}}, quantity.Style{})
	}
	mm := func(s span) string {
		return "(" + quantity.Exact(s.low, quantity.Display{}, quantity.Style{}) + "–" + quantity.Exact(s.high, quantity.Display{}, quantity.Style{}) + " mm)"
	}
	for _, f := range vibratorIn {
		if f.ID == "into" && !strings.Contains(f.Help.EN(), inches(leastInto)+".") {
			t.Errorf("“%s” does not name %s", f.Help.EN(), inches(leastInto))
		}
	}
	for i, o := range headOptions {
		if !strings.Contains(o.Label.EN(), mm(heads[i].diameter)) {
			t.Errorf("“%s” does not name %s", o.Label.EN(), mm(heads[i].diameter))
		}
	}
}
