package vibrator

import (
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/consolidation"
	"coursebook/calculators/quantity"
)

func TestVibratorNotes(t *testing.T) {
	all := []calc.Text{
		refuseGap,
		refuseWhip,
		refuseLift,
		refuseDeep,
		noteGap,
		noteStiff,
		noteFace,
		noteFaceNever,
		askSeen,
		noteInto,
		noteFast,
		noteMany,
		noteFoot,
		askFoot,
		noteLonger,
		noteWindow,
		refuseOutside,
		noteStages,
	}
	calctest.CheckNotesAmong(t, Calculator, all, []calctest.NotesCase{
		{Inputs: nil, Want: nil},
		{Inputs: []string{"gap=2.3 in"}, Want: []calc.Text{noteGap}},
		{Inputs: []string{"gap=30 mm"}, Want: []calc.Text{noteGap}},
		{Inputs: []string{"gap=29 mm"}, Want: []calc.Text{refuseGap}},
		{Inputs: []string{"head=normal", "gap=90 mm"}, Want: []calc.Text{noteStiff}},
		{Inputs: []string{"head=pencil"}, Want: []calc.Text{noteFace}},
		{Inputs: []string{"head=pencil", "core=9 in"}, Want: []calc.Text{noteFaceNever}},
		{Inputs: []string{"core=9.8 in"}, Want: nil},
		{Inputs: []string{"core=10 in"}, Want: []calc.Text{noteFace}},
		{Inputs: []string{"plan=low"}, Want: []calc.Text{noteFace}},
		{Inputs: []string{"plan=low", "core=6 in"}, Want: nil},
		{Inputs: []string{"plan=seen", "seen=10.5 in"}, Want: []calc.Text{askSeen}},
		{Inputs: []string{"plan=seen", "seen=9 in"}, Want: nil},
		{Inputs: []string{"lift=610 mm"}, Want: nil},
		{Inputs: []string{"lift=2 ft"}, Want: nil},
		{Inputs: []string{"into=3.9 in"}, Want: []calc.Text{noteInto}},
		{Inputs: []string{"into=4 in"}, Want: nil},
		{Inputs: []string{"into=6 in"}, Want: nil},
		{Inputs: []string{"into=6.5 in"}, Want: []calc.Text{refuseDeep}},
		{Inputs: []string{"into=12 in"}, Want: []calc.Text{refuseDeep}},
		{Inputs: []string{"into=48 in"}, Want: []calc.Text{refuseDeep}},
		{Inputs: []string{"speed=3.1 in/s"}, Want: []calc.Text{noteFast}},
		{Inputs: []string{"pump=30 yd³/h"}, Want: []calc.Text{noteMany}},
		{Inputs: []string{"height=11 ft"}, Want: nil},
		{Inputs: []string{"height=12 ft"}, Want: []calc.Text{noteFoot, askFoot}},
		{Inputs: []string{"height=12 ft", "foot=longer"}, Want: []calc.Text{noteFoot, noteLonger}},
		{Inputs: []string{"height=12 ft", "foot=window"}, Want: []calc.Text{noteFoot, noteWindow}},
		{Inputs: []string{"height=12 ft", "foot=outside"}, Want: []calc.Text{refuseOutside}},
		{Inputs: []string{"height=12 ft", "foot=stages"}, Want: []calc.Text{noteFoot, noteStages}},
		{Inputs: []string{"height=9 ft", "foot=stages"}, Want: nil},
		{Inputs: []string{"whip=3 ft"}, Want: []calc.Text{refuseWhip}},
		{Inputs: []string{"lift=2 ft", "height=1.5 ft"}, Want: []calc.Text{refuseLift}},
	})
}

// A reach that nobody has seen is asked about, and no plan steps farther than the rule of the
// crew.
func TestReachNotSeen(t *testing.T) {
	all := []calc.Text{askReach, noteWide}
	calctest.CheckNotesAmong(t, Calculator, all, []calctest.NotesCase{
		{Inputs: nil, Want: []calc.Text{askReach}}, // 11 in. apart
		{Inputs: []string{"plan=low"}, Want: nil},
		{Inputs: []string{"plan=seen", "seen=7 in"}, Want: nil},
		{Inputs: []string{"plan=seen", "seen=9 in"}, Want: []calc.Text{noteWide}},
		{Inputs: []string{"plan=high"}, Want: all},
		{Inputs: []string{"plan=high", "most-apart=15 in"}, Want: all},
		{Inputs: []string{"most-apart=10 in"}, Want: all},
		{Inputs: []string{"head=normal", "gap=4 in"}, Want: all},
	})
	for plan, want := range map[string]float64{"low": 195, "middle": 285, "high": 279.4} { // mm; 11 in. is 279.4
		out := calctest.Run(t, Calculator, "plan="+plan).Out
		calctest.Near(t, plan, out.Num("spacing"), want/1000, 1e-9)
		calctest.Near(t, plan+", row", out.Rows("apart")[0].Num("spacing"), want/1000, 1e-9)
	}
}

// A step over the rule of the crew does not count, whatever the reach; a shorter one does.
func TestMostApartHoldsTheRule(t *testing.T) {
	for _, c := range []struct {
		typed string
		want  float64 // mm
		held  bool
	}{{"15 in", 279.4, true}, {"12 in", 279.4, true}, {"11 in", 279.4, false}, {"8 in", 203.2, false}} {
		res := calctest.Run(t, Calculator, "plan=high", "most-apart="+c.typed)
		calctest.Near(t, c.typed, res.Out.Num("spacing"), c.want/1000, 1e-9)
		if got := calctest.Noted(res, calc.NoteHeld); got != c.held || calctest.Noted(res, calc.NoteLooser) {
			t.Errorf("%s: notes %v", c.typed, res.Notes)
		}
	}
}

// A round of half the depth has as many places and takes half the time to fill, so the same pump
// rate needs more vibrators, and each table names the depth it is for.
func TestRoundsNeedMoreThanLifts(t *testing.T) {
	for _, pump := range []string{"5 yd³/h", "10 yd³/h", "15 yd³/h"} {
		lift := calctest.Run(t, Calculator, "pump="+pump, "lift=2 ft").Out
		round := calctest.Run(t, Calculator, "pump="+pump, "lift=1 ft").Out
		if lift.Num("places") != round.Num("places") || round.Num("vibrators") <= lift.Num("vibrators") {
			t.Errorf("%s: %v vibrators in lifts, %v in rounds", pump, lift.Num("vibrators"), round.Num("vibrators"))
		}
	}
	for _, table := range tables {
		depth := strings.TrimSuffix(table.Set[0].Text, " mm")
		if table.Set[0].Path != "lift" || !strings.Contains(table.Note.EN(), "("+depth+" mm)") {
			t.Errorf("the note of %s does not name %s mm: %s", table.ID, depth, table.Note.EN())
		}
	}
}

// The notes of the tables name the inputs that the tables are worked out with. A printed table stands
// without the form, so its note may not speak of a job above it.
func TestTableNotesNameTheInputs(t *testing.T) {
	usual := func(id string) string {
		for _, f := range inputs {
			if f.ID == id {
				return f.Usual
			}
		}
		t.Fatalf("no input %s", id)
		return ""
	}
	if usual("head") != "thin" || usual("concrete") != "air" || usual("plan") != "middle" {
		t.Errorf("head %s, %s, plan %s", usual("head"), usual("concrete"), usual("plan"))
	}
	spacing := calctest.Run(t, Calculator).Out.Num("spacing")
	for _, table := range tables {
		for _, part := range []string{
			"air-entrained", "head of 1¼ to 2½ in. (30–60 mm)", usual("openings") + " openings",
			"places 11 in. (280 mm) apart",
		} {
			if !strings.Contains(string(table.Note), part) || strings.Contains(string(table.Note), "above") {
				t.Errorf("the note of table %s is %q, without %q", table.ID, table.Note, part)
			}
		}
	}
	if in := calc.From(spacing, "in"); in < 10.75 || in > 11.25 {
		t.Errorf("the places are %v in. apart, and the notes say 11", in)
	}
}

// The length of a wall cancels: the same number of vibrators keeps up on a long
// wall and on a short one, apart from rounding places up.
func TestVibratorsDoNotDependOnLength(t *testing.T) {
	for _, length := range []string{"50 ft", "100 ft", "500 ft", "2000 ft"} {
		if got := calctest.Run(t, Calculator, "length="+length, "openings=0").Out.Num("vibrators"); got != 2 {
			t.Errorf("%s of wall: %v vibrators", length, got)
		}
	}
}

// A higher pump rate, more time at rest, a smaller radius or a thinner core never
// need fewer vibrators.
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
			got := calctest.Run(t, Calculator, c[0]+"="+text).Out.Num("vibrators")
			if got < last {
				t.Errorf("%s %s: %v vibrators, fewer than %v", c[0], text, got, last)
			}
			last = got
		}
	}
}

// The vibrators computed keep up, and one fewer does not.
func TestVibratorsKeepUp(t *testing.T) {
	for _, pump := range []string{"3 yd³/h", "8 yd³/h", "10 yd³/h", "17 yd³/h", "60 yd³/h"} {
		out := calctest.Run(t, Calculator, "pump="+pump).Out
		n, pass, fill := out.Num("vibrators"), out.Num("pass-high"), out.Num("fill")
		if pass/n > fill || n > 1 && pass/(n-1) <= fill {
			t.Errorf("%s: %v vibrators for %v s of work in %v s", pump, n, pass, fill)
		}
		if out.Num("with-spare") != n+1 {
			t.Errorf("%s: %v with a spare", pump, out.Num("with-spare"))
		}
	}
}

func TestCountsAtTheEdge(t *testing.T) {
	if got := consolidation.Along(19.5, 0.195); got != 100 {
		t.Errorf("100 spacings make %v places", got)
	}
	if got := consolidation.Along(19.5001, 0.195); got != 101 {
		t.Errorf("a little more than 100 spacings make %v places", got)
	}
	// 195 mm, shown as 7-1/2 in., 190.5 mm.
	out := calctest.Run(t, Calculator, "plan=low", "length=19.05 m", "openings=0").Out
	if out.Num("along") != 100 || out.Num("extra") != 0 {
		t.Errorf("%v places and %v more", out.Num("along"), out.Num("extra"))
	}
}

// The groups ascend, and every option has its group.
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
		if i > 0 &&
			(h.radius.low <= heads[i-1].radius.low || h.rate.high <= heads[i-1].rate.high ||
				h.frequency.high >= heads[i-1].frequency.high) {
			t.Errorf("%s does not follow %s", h.id, heads[i-1].id)
		}
	}
}

// Limits repeated in texts without slots are those of the method.
func TestTextsNameTheLimits(t *testing.T) {
	inches := func(m float64) string {
		return quantity.Exact(
			m,
			quantity.Display{Dim: quantity.Length, US: quantity.UnitDisplay{Unit: "in"}},
			quantity.Style{},
		)
	}
	mm := func(s span) string {
		return "(" + quantity.Exact(
			s.low,
			quantity.Display{},
			quantity.Style{},
		) + "–" + quantity.Exact(
			s.high,
			quantity.Display{},
			quantity.Style{},
		) + " mm)"
	}
	for _, f := range inputs {
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

// The places counted suffice at the spacing that a reader of either system sees.
func TestPlacesAreCountedAtTheShownSpacing(t *testing.T) {
	spacing := calc.Field{Kind: calc.Number, Display: &showApart}
	for _, inputs := range [][]string{nil, {"plan=low"}, {"plan=high"}, {"plan=seen", "seen=5.3 in"}, {"head=pencil"}} {
		inputs = append(inputs, "length=1999 ft", "openings=0")
		out := calctest.Run(t, Calculator, inputs...).Out
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			style := quantity.Style{System: sys}
			text := (calc.Locale{Style: style}).Write(spacing, out.Value("spacing"))
			apart, err := quantity.Parse(text, showApart, style)
			if err != nil {
				t.Fatal(err)
			}
			if need := consolidation.Along(calc.SI(1999, "ft"), apart); out.Num("along") < need {
				t.Errorf("%v: %v places, %v at %s", inputs, out.Num("along"), need, text)
			}
		}
	}
	// 11 in. as shown, not 11.25 in.
	if got := calctest.Run(t, Calculator, "length=100 ft", "head=thin", "plan=middle").Out.Num("along"); got != 110 {
		t.Errorf("%v places along 100 ft at 11 in.", got)
	}
}

// The spacing that the note proposes reaches the faces, and is closer than the
// plan.
func TestProposedSpacingReachesTheFaces(t *testing.T) {
	for _, c := range []struct{ seen, core string }{{"6 in", "8 in"}, {"7 in", "10 in"}, {"5 in", "7 in"}} {
		in, res := calctest.RunCase(t, Calculator, "plan=seen", "seen="+c.seen, "core="+c.core)
		n, ok := calctest.NoteOf(res, noteFace)
		if !ok {
			t.Errorf("%s, %s: %v", c.seen, c.core, res.Notes)
			continue
		}
		closer, err := quantity.Parse(calc.Locale{}.Say(calc.Text("{closer}"), n.Slots...), showApart, quantity.Style{})
		if err != nil {
			t.Fatal(err)
		}
		reach := consolidation.Reach(in.Num("seen"), closer)
		if reach < in.Num("core")/2 || closer >= res.Out.Num("spacing") {
			t.Errorf("%s, %s: %v m apart reaches %v m", c.seen, c.core, closer, reach)
		}
	}
}
