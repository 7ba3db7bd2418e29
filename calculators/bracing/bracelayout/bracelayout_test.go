package bracelayout

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// Any wall with any openings and stack lines: the rules hold for every brace.
func TestRulesHold(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 12))
	for range 2000 {
		in := randomLayout(rng)
		res := calc.Run(Calculator, in)
		if res.State != calc.OK {
			t.Fatal(res.Notes)
		}
		braces := res.Out.Rows("braces")
		for i, b := range braces {
			at := b.Num("at")
			if at < 0 || at > in.Num("length")+1e-9 || openAt(in, at) {
				t.Fatalf("brace %d at %v is in an opening or off the wall", i+1, at)
			}
			if i == 0 {
				continue
			}
			from := braces[i-1].Num("at")
			if gap := at - from; gap < in.Num("closest")-1e-6 && !openBetween(in, from, at) &&
				b.Choice("for") != "between" &&
				braces[i-1].Choice("for") != "between" {
				t.Fatalf("braces %d and %d are %v apart", i, i+1, gap)
			} else if gap > in.Num("spacing")+1e-9 && !openBetween(in, from, at) {
				t.Fatalf("gap %v is over the spacing %v", gap, in.Num("spacing"))
			}
		}
		for _, s := range in.Rows("stacks") {
			if at := s.Num("at"); !openAt(in, at) && nearest(braces, at) > in.Num("closest") {
				t.Fatalf("no brace near the stack line at %v", at)
			}
		}
		for _, o := range in.Rows("openings") {
			for _, at := range []float64{o.Num("start") - in.Num("side"),
				o.Num("start") + o.Num("width") + in.Num("side")} {
				// A brace is set off a corner that is nearer than 1 ft.
				if at >= nearCorner && at <= in.Num("length")-nearCorner && !openAt(in, at) &&
					nearest(braces, at) > in.Num("closest")+1e-6 {
					t.Fatalf("no brace near the side of an opening at %v", at)
				}
			}
		}
	}
}

func randomLayout(rng *rand.Rand) calc.Case {
	length := 5 + 40*rng.Float64()
	in := calc.NewCase(inputs).With("length", calc.Num(length)).With("spacing", calc.Num(1+2*rng.Float64())).
		With("closest", calc.Num(0.3*rng.Float64())).With("corner", calc.Num(1.5*rng.Float64()))
	var openings, stacks []calc.Case
	for range rng.IntN(4) {
		start := length * 0.8 * rng.Float64()
		openings = append(
			openings,
			calc.NewCase(openingCols).
				With("start", calc.Num(start)).
				With("width", calc.Num(0.2+(length-start-0.2)*0.5*rng.Float64())),
		)
	}
	for range rng.IntN(4) {
		stacks = append(stacks, calc.NewCase(stackCols).With("at", calc.Num(length*rng.Float64())))
	}
	return in.With("openings", calc.RowsOf(openings...)).With("stacks", calc.RowsOf(stacks...))
}

func openAt(in calc.Case, at float64) bool {
	for _, o := range in.Rows("openings") {
		if at > o.Num("start")+1e-6 && at < o.Num("start")+o.Num("width")-1e-6 {
			return true
		}
	}
	return false
}

func openBetween(in calc.Case, from, to float64) bool {
	for _, o := range in.Rows("openings") {
		if mid := o.Num("start") + o.Num("width")/2; mid > from && mid < to {
			return true
		}
	}
	return false
}

func nearest(braces []calc.Case, at float64) float64 {
	best := math.Inf(1)
	for _, b := range braces {
		best = math.Min(best, math.Abs(b.Num("at")-at))
	}
	return best
}

// A wall without openings by hand: 36 ft between the corner braces are six spaces
// of 6 ft; a quarter inch more takes one more brace. A wall in metres and the same
// one in feet take the same braces.
func TestPlainWall(t *testing.T) {
	solid := "openings=; stacks=; spacing=6 ft; corner=2 ft; length="
	for length, want := range map[string]float64{"40 ft": 7, "40 ft 0-1/4 in": 8, "12.192 m": 7, "10 ft": 2,
		"4 ft": 1} {
		if got := calctest.Run(t, Calculator, calctest.Inputs(solid+length)...).Out.Num("count"); got != want {
			t.Errorf("%s: %v braces, want %v", length, got, want)
		}
	}
	last := 0.0
	for _, spacing := range []string{"10 ft", "8 ft", "6 ft", "4 ft", "3 ft"} {
		plain := calctest.Inputs("on-plan=yes; openings=; stacks=; spacing=" + spacing)
		got := calctest.Run(t, Calculator, plain...).Out.Num("count")
		if got <= last {
			t.Errorf("%s: %v braces after %v", spacing, got, last)
		}
		last = got
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{
			Inputs: "openings=38 ft | 3 ft",
			Note:   "This opening ends past the wall, which is {length} long.",
			At:     "openings.1.width",
			Want:   true,
		},
		{
			Inputs: "openings=37 ft | 3 ft",
			Note:   "This opening ends past the wall, which is {length} long.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "stacks=41 ft",
			Note:   "This line is past the wall, which is {length} long.",
			At:     "stacks.1.at",
			Want:   true,
		},
		{
			Inputs: "stacks=9 ft",
			Note: "This line is inside an opening. No brace is set for it: brace above and below as the form maker " +
				"says.",
			At:   "stacks.1.at",
			Want: true,
		},
		{
			Inputs: "stacks=8 ft",
			Note: "This line is inside an opening. No brace is set for it: brace above and below as the form maker " +
				"says.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "stacks=12 ft 6 in",
			Note:   "Two rules ask for braces {gap} apart near {at}. One is set. Is that right with the form maker?",
			At:     "closest",
			Want:   true,
		},
		{
			Inputs: "stacks=12 ft",
			Note:   "Two rules ask for braces {gap} apart near {at}. One is set. Is that right with the form maker?",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "openings=0.5 ft | 3 ft",
			Note:   "There is no room for a brace beside the opening, near {at}. Ask the form maker how to hold it.",
			At:     "openings.1.start",
			Want:   true,
		},
		{
			Inputs: "openings=8 ft | 3 ft; 11.5 ft | 3 ft",
			Note:   "There is no room for a brace beside the opening, near {at}. Ask the form maker how to hold it.",
			At:     "openings.1.start",
			Want:   true,
		},
		{
			Inputs: "openings=8 ft | 4 ft",
			Note:   "{gap} across this opening is more than the largest spacing. Brace the buck and the wall above it.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "openings=8 ft | 4.1 ft",
			Note:   "{gap} across this opening is more than the largest spacing. Brace the buck and the wall above it.",
			At:     "openings.1.width",
			Want:   true,
		},
		{
			Inputs: "span=7 ft",
			Note:   "The largest gap is more than a plank may span, {span}. Add a brace or use rated planks.",
			At:     "span",
			Want:   true,
		},
		{
			Inputs: "span=8 ft",
			Note:   "The largest gap is more than a plank may span, {span}. Add a brace or use rated planks.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "span=7 ft; platform=no",
			Note:   "The largest gap is more than a plank may span, {span}. Add a brace or use rated planks.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "plank=8 ft",
			Note:   "With this lap, a plank does not reach over the largest gap. Use longer planks.",
			At:     "plank",
			Want:   true,
		},
		{
			Inputs: "plank=9 ft",
			Note:   "With this lap, a plank does not reach over the largest gap. Use longer planks.",
			At:     "",
			Want:   false,
		},
		{Inputs: "lap=11 in", Note: "{label} must be at least {limit}. {why}", At: "lap", Want: true},
		{Inputs: "width=17 in", Note: "{label} must be at least {limit}. {why}", At: "width", Want: true},
	})
	if calctest.Run(t, Calculator, "platform=no").Out.Has("planks") {
		t.Error("planks without a platform")
	}
	for _, inputs := range []string{"openings=38 ft | 3 ft", "stacks=41 ft"} {
		if res := calctest.Run(t, Calculator, calctest.Inputs(inputs)...); res.State != calc.Refused {
			t.Errorf("%s is not refused", inputs)
		}
	}
}

// Between a stack line and the side of an opening the stack line stays: there
// the form can hinge.
func TestStackLineStays(t *testing.T) {
	for _, b := range calctest.Run(t, Calculator, "stacks=12 ft 6 in").Out.Rows("braces") {
		if at := calc.From(b.Num("at"), "ft"); math.Abs(at-12.5) < 1e-9 && b.Choice("for") == "stack" {
			return
		}
	}
	t.Error("no brace at the stack line")
}

// The ends count: 6 ft without a brace at each corner is the largest gap, and
// more than the spacing of 2 ft.
func TestEndGaps(t *testing.T) {
	res := calctest.Run(t, Calculator, "length=40 ft", "corner=6 ft", "spacing=2 ft", "on-plan=yes",
		"openings=", "stacks=")
	if got := calc.From(res.Out.Num("largest"), "ft"); math.Abs(got-6) > 1e-9 || !calctest.Noted(res, askCorner) {
		t.Errorf("largest gap %v ft, notes %v", got, res.Notes)
	}
	if calctest.Noted(calctest.Run(t, Calculator, "corner=2 ft", "spacing=6 ft"), askCorner) {
		t.Error("a brace near the corner is asked about")
	}
	res = calctest.Run(t, Calculator, "length=40 ft", "openings=35 ft | 4 ft", "stacks=")
	rows := res.Out.Rows("braces")
	if last := calc.From(rows[len(rows)-1].Num("at"), "ft"); last > 39+1e-9 {
		t.Errorf("a brace at %v ft of a wall of 40 ft", last)
	}
}

// Braces farther apart than the house rule, or a first one farther from its corner, count
// only where the brace plan says so. Closer ones always count.
func TestHouseRulesHoldWithoutThePlan(t *testing.T) {
	wall := "length=40 ft; openings=; stacks=; "
	for _, c := range []struct {
		typed          string
		first, largest float64 // ft
		held           bool
	}{
		{"spacing=12 ft; corner=2 ft", 2, 6, true},
		{"spacing=12 ft; corner=2 ft; on-plan=yes", 2, 12, false},
		{"spacing=6 ft; corner=6 ft", 2, 6, true},
		{"spacing=6 ft; corner=6 ft; on-plan=yes", 6, 6, false},
		{"spacing=4 ft; corner=1 ft", 1, 3.8, false},
		{"spacing=6 ft; corner=2 ft", 2, 6, false},
	} {
		res := calctest.Run(t, Calculator, calctest.Inputs(wall+c.typed)...)
		first := calc.From(res.Out.Rows("braces")[0].Num("at"), "ft")
		largest := calc.From(res.Out.Num("largest"), "ft")
		if math.Abs(first-c.first) > 1e-9 || largest > c.largest+1e-9 || calctest.Noted(res, noteHeld) != c.held {
			t.Errorf("%s: first at %v ft, largest gap %v ft, %v", c.typed, first, largest, res.Notes)
		}
	}
}
