package anchorbolts

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// job is a layout typed in inches.
type job struct {
	pieces, cleats []float64
	gaps           [][2]float64
	diameter, end  float64
	spacing, clear float64
}

func inches(list []float64) string {
	var b strings.Builder
	for _, x := range list {
		b.WriteString(strconv.FormatFloat(x, 'g', -1, 64) + " in; ")
	}
	return b.String()
}

func (j job) inputs() []string {
	gaps := ""
	for _, g := range j.gaps {
		gaps += strings.TrimSuffix(inches(g[:1]), "; ") + " | " + inches(g[1:])
	}
	one := func(x float64) string { return strings.TrimSuffix(inches([]float64{x}), "; ") }
	return []string{"pieces=" + inches(j.pieces), "cleats=" + inches(j.cleats), "gaps=" + gaps,
		"diameter=" + one(j.diameter), "end=" + one(j.end), "drawing=" + one(j.spacing), "clear=" + one(j.clear)}
}

// stretches lists the pieces without the gaps, in inches. Gaps do not touch.
func (j job) stretches() (list [][2]float64) {
	at := 0.0
	for _, p := range j.pieces {
		list = append(list, [2]float64{at, at + p})
		at += p
	}
	for _, g := range j.gaps {
		var rest [][2]float64
		for _, s := range list {
			for _, r := range [][2]float64{{s[0], math.Min(s[1], g[0])}, {math.Max(s[0], g[0]+g[1]), s[1]}} {
				if r[1] > r[0]+1e-6 {
					rest = append(rest, r)
				}
			}
		}
		list = rest
	}
	return list
}

// check compares a layout with the rules: two bolts or more in each stretch, the
// first and the last between seven diameters and 12 in. from its end, none
// farther apart than the spacing, and none at a cleat unless it is marked.
func (j job) check(t *testing.T, res calc.Result) {
	t.Helper()
	rows, k := res.Out.Rows("bolts"), 0
	marked := 0
	for _, s := range j.stretches() {
		var at []float64
		for ; k < len(rows); k++ {
			x := calc.From(rows[k].Num("at"), "in")
			if x > s[1] {
				break
			}
			at = append(at, x)
			blocked := false
			for _, c := range j.cleats {
				blocked = blocked || math.Abs(x-c) < j.clear-1e-6
			}
			if blocked != (rows[k].Choice("for") == moves) {
				t.Fatalf("%v: bolt at %v in. is %s", j, x, rows[k].Choice("for"))
			}
			if blocked {
				marked++
			}
		}
		if len(at) < 2 {
			t.Fatalf("%v: %d bolts from %v to %v", j, len(at), s[0], s[1])
		}
		for _, end := range []float64{at[0] - s[0], s[1] - at[len(at)-1]} {
			if end < 7*j.diameter-1e-6 || end > 12+1e-6 {
				t.Fatalf("%v: a bolt %v in. from an end", j, end)
			}
		}
		for i := 1; i < len(at); i++ {
			if gap := at[i] - at[i-1]; gap <= 0 || gap > j.spacing+1e-6 {
				t.Fatalf("%v: %v in. apart at %v in.", j, gap, at[i])
			}
		}
		if n := len(at); len(j.cleats) == 0 {
			end := math.Max(7*j.diameter, math.Min(math.Max(j.end, 7*j.diameter), (s[1]-s[0]-7*j.diameter)/2))
			if want := math.Max(1, math.Ceil((s[1]-s[0]-2*end)/j.spacing-1e-9)) + 1; n != int(want) {
				t.Fatalf("%v: %d bolts from %v to %v, want %v", j, n, s[0], s[1], want)
			}
		}
	}
	if k != len(rows) || res.Out.Num("count") != float64(len(rows)) {
		t.Fatalf("%v: %d bolts are outside the plates", j, len(rows)-k)
	}
	notes := 0
	for _, n := range res.Notes {
		if n.Text == noteMove {
			notes++
		}
	}
	if notes != marked {
		t.Fatalf("%v: %d notes on %d blocked bolts", j, notes, marked)
	}
}

// At random: pieces of 1 to 20 ft, gaps in some of them, cleats close and far apart.
func TestLayout(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 8))
	between := func(a, b float64) float64 { return a + (b-a)*rnd.Float64() }
	answered := 0
	for i := range 3000 {
		j := job{diameter: []float64{0.5, 0.625, 0.75}[rnd.IntN(3)], end: between(3, 12), spacing: between(12, 72),
			clear: between(0, 6)}
		total := 0.0
		for range 1 + rnd.IntN(4) {
			p := math.Round(between(12, 240))
			if rnd.IntN(3) == 0 {
				p = math.Round(between(12, 40))
			}
			j.pieces = append(j.pieces, p)
			if p > 60 && rnd.IntN(3) == 0 {
				j.gaps = append(j.gaps, [2]float64{total + math.Round(between(0, p-36)), 36})
			}
			total += p
		}
		if i%3 > 0 {
			for c := between(0, 48); c < total && len(j.cleats) < 40; c += between(12, 72) {
				j.cleats = append(j.cleats, c)
			}
		}
		short := false
		for _, s := range j.stretches() {
			short = short || s[1]-s[0] < 21*j.diameter
		}
		res := calctest.Run(t, Calculator, j.inputs()...)
		if (res.State == calc.Refused) != short {
			t.Fatalf("%v: %s", j, res.State)
		}
		if res.State == calc.OK {
			answered++
			j.check(t, res)
		}
	}
	if answered < 1000 {
		t.Errorf("only %d layouts were checked", answered)
	}
}

// A smaller spacing never takes fewer bolts, and cleats never make the count
// smaller.
func TestCountMonotonic(t *testing.T) {
	last := math.Inf(1)
	for spacing := 12.0; spacing <= 72; spacing++ {
		bare := job{pieces: []float64{190, 133}, diameter: 0.5, end: 8, spacing: spacing, clear: 4}
		busy := bare
		for c := 20.0; c < 320; c += 48 {
			busy.cleats = append(busy.cleats, c)
		}
		n := calctest.Run(t, Calculator, bare.inputs()...).Out.Num("count")
		m := calctest.Run(t, Calculator, busy.inputs()...).Out.Num("count")
		if n > last || m < n {
			t.Errorf("%v in. apart: %v bolts after %v, %v with cleats", spacing, n, last, m)
		}
		last = n
	}
}

// The drawing comes before the code, and is asked for where there is none.
func TestTheDrawingWins(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{Inputs: "drawing=", Note: noteCode, At: "drawing", Want: true},
		{Inputs: "drawing=3 ft", Note: noteCode, Want: false},
		{Inputs: "drawing=6 ft", Note: noteWider, Want: false},
		{Inputs: "drawing=7 ft", Note: noteWider, At: "drawing", Want: true},
		{Inputs: "drawing=5 ft; stories=tall", Note: noteWider, At: "drawing", Want: true},
		{Inputs: "diameter=1 in; end=6 in", Note: noteEnd, At: "end", Want: true},
		{Inputs: "diameter=1/2 in; end=3 1/2 in", Note: noteEnd, Want: false},
		{Inputs: "pieces=8 ft; gaps=; cleats=8 in; clear=5 in", Note: noteMove, At: "cleats", Want: true},
		{Inputs: "pieces=8 ft; gaps=; cleats=8 in; clear=4 in", Note: noteMove, Want: false},
	})
	for typed, want := range map[string]string{
		"drawing=": byCode, "drawing=3 ft": byDrawing, "drawing=7 ft": byDrawing,
	} {
		if got := calctest.Run(t, Calculator, typed).Out.Choice("by"); got != want {
			t.Errorf("%s: the layout is for %s", typed, got)
		}
	}
	calctest.NearBy(t, "drawing", calctest.Run(t, Calculator, "drawing=7 ft").Out.Num("spacing"),
		calc.SI(7, "ft"), 1e-12)
	calctest.Refused(t, Calculator, "gaps.1.start", "pieces=8 ft", "gaps=7 ft | 2 ft")
	calctest.Refused(t, Calculator, "gaps", "pieces=8 ft", "gaps=0 ft | 8 ft")
	calctest.Refused(t, Calculator, "pieces", "pieces=8 ft", "gaps=7 in | 3 ft")
}
