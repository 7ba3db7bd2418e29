package linerounds

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
)

// quarterInch is the tolerance of the cases below.
const quarterInch = "tolerance=1/4 in"

func TestWays(t *testing.T) {
	for rows, want := range map[string]string{
		"1 | 1-1/2 in | 1-1/4 in":           "closer",
		"1 | 1-1/2 in | 1 in":               "good",
		"1 | 1-1/2 in | 1-1/2 in":           "still",
		"1 | 1-1/2 in | 1-17/32 in":         "still", // less than a tape shows
		"1 | 1-1/2 in | 1-9/16 in":          "wrong",
		"1 | 1-1/2 in | 1/4 in":             "past",
		"1 | 7/8 in | 1-1/8 in":             "dragged",
		"1 | 2-1/2 in | 1-1/2 in | 2 in":    "wrong", // the last round counts
		"1 | 2-1/2 in | 3 in | 1-1/2 in":    "closer",
		"1 | 1/4 in | 0 in":                 "wrong", // too near and nearer
		"1 | 1-1/2 in | 1-1/4 in | 7/8 in":  "good",
		"1 | 1 in | 1 in | 1-3/4 in":        "dragged",
		"1 | 1-1/2 in | 15/16 in | 9/16 in": "good",
	} {
		if got := calctest.Run(t, Calculator, quarterInch,
			"braces="+rows).Out.Rows("lines")[0].Choice("way"); got != want {
			t.Errorf("%s: %s, want %s", rows, got, want)
		}
	}
}

func TestDone(t *testing.T) {
	for rows, want := range map[string]string{
		"1 | 3/4 in | 3/4 in; 2 | 1 in | 7/8 in":                              "round-1",
		"1 | 3/4 in | 3/4 in; 2 | 1-1/8 in | 7/8 in":                          "round-2",
		"1 | 3/4 in | 1-1/8 in; 2 | 1-1/8 in | 7/8 in":                        "not-yet",
		"1 | 3/4 in | 1-1/8 in | 1 in; 2 | 1-1/8 in | 7/8 in | 1 in":          "round-3",
		"1 | 3/4 in | 3/4 in | 1-1/8 in; 2 | 1-1/8 in | 7/8 in | 1 in":        "not-yet", // good once is not enough
		"1 | 3/4 in | 1-1/8 in; 2 | 1-1/8 in | 7/8 in | 1 in":                 "not-yet", // the latest reading counts
		"1 | 1-1/8 in | 1-1/16 in | 7/8 in; 2 | 3/4 in | 13/16 in | 13/16 in": "round-3",
	} {
		if got := calctest.Run(t, Calculator, quarterInch, "braces="+rows).Out.Choice("done"); got != want {
			t.Errorf("%s: %s, want %s", rows, got, want)
		}
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{
			Note: "Which side is the string on? Answer, and it shows whether to lengthen or shorten.",
			At:   "string-side",
			Want: true,
		},
		{
			Inputs: "string-side=brace",
			Note:   "Which side is the string on? Answer, and it shows whether to lengthen or shorten.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "concrete=stiff",
			Note:   "The concrete has stiffened. Leave every brace. Write the readings down and tell the foreman.",
			At:     "concrete",
			Want:   true,
		},
		{
			Note: "The concrete has stiffened. Leave every brace. Write the readings down and tell the foreman.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "braces=1 | 1-1/4 in | 1-3/4 in",
			Note: "Brace {name} went {moved} farther off. Check the string side and which way its thread runs " +
				"before you turn it again.",
			At:   "braces.1.gap-2",
			Want: true,
		},
		{
			Inputs: "braces=1 | 1-1/4 in | 1-3/4 in",
			Note:   "Its error about doubled. That is the mark of a turn the wrong way.",
			At:     "braces.1.gap-2",
			Want:   true,
		},
		{
			Inputs: "braces=1 | 1-3/4 in | 1-7/8 in",
			Note:   "Its error about doubled. That is the mark of a turn the wrong way.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "braces=1 | 1-1/4 in | 1-3/4 in; 2 | 1-1/4 in | 1-3/4 in",
			Note:   "More braces went the wrong way than came in. Is the string on the side you think?",
			At:     "string-side",
			Want:   true,
		},
		{
			Inputs: "braces=1 | 1-1/4 in | 1-3/4 in; 2 | 1-1/4 in | 3/4 in",
			Note:   "More braces went the wrong way than came in. Is the string on the side you think?",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "braces=1 | 1-1/2 in | 1/4 in",
			Note:   "Brace {name} went past the line. Check the travel of one turn, and turn less.",
			At:     "braces.1.gap-2",
			Want:   true,
		},
		{
			Inputs: "braces=1 | 1-1/2 in | 1-1/2 in",
			Note: "Brace {name} did not move. Look for slack, a loose foot or loose screws. If all is fast, two " +
				"braces turn together.",
			At:   "braces.1.gap-2",
			Want: true,
		},
		{
			Inputs: "braces=1 | 3/4 in | 7/8 in",
			Note: "A brace that was good moved {moved}. The wall moves together: read both neighbors after each " +
				"quarter turn.",
			At:   "braces",
			Want: true,
		},
		{
			Inputs: "braces=1 | 3/4 in | 3/4 in",
			Note: "A brace that was good moved {moved}. The wall moves together: read both neighbors after each " +
				"quarter turn.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "braces=1 | 3/4 in | 3/4 in | 3/4 in; 2 | 1 in | 3/4 in",
			Note:   "Not every brace was read in round 3. Read them all: the wall moves together.",
			At:     "braces.2.gap-3",
			Want:   true,
		},
		{Note: "Not every brace was read in round 3. Read them all: the wall moves together.", At: "", Want: false},
		{
			Inputs: "braces=1 | 2 in | 1-3/4 in",
			Note: "Brace {name} needs {turns} turns. Go by quarter turns, and read the whole wall again after one " +
				"turn.",
			At:   "braces.1.gap-2",
			Want: true,
		},
	})
}

// With stiffened concrete readings are given, and no turns or directions.
func TestStiff(t *testing.T) {
	res := calctest.Run(t, Calculator, "concrete=stiff", "string-side=brace")
	if res.State != calc.OK || res.Out.Has("turns") || res.Out.Num("to-turn") != 0 || res.Out.Choice("next") != "stop" {
		t.Error("turns are given for stiffened concrete")
	}
	for _, l := range res.Out.Rows("lines") {
		if l.Has("turns") || l.Has("turn") || !l.Has("off-2") {
			t.Error("a row has turns, or lacks its reading")
		}
	}
}

// A wall off by more than 1 in. is cleared: a warning comes first, and no output has
// turns or directions. At an empty form the foreman looks.
func TestFarOff(t *testing.T) {
	for _, c := range []struct {
		braces, concrete, next string
		far                    calc.Text
	}{
		{"1 | 3/4 in | 3/4 in; 2 | 1-1/2 in | 1-13/16 in", "plastic", "clear", bracing.NoteFarOff},
		{"1 | 3/4 in | 3/4 in; 2 | 1-1/2 in | 1-13/16 in", "stiff", "clear", bracing.NoteFarOff},
		{"1 | 3/4 in | 3/4 in; 2 | 1-1/2 in | 1-13/16 in", "none", "look", bracing.NoteFarEmpty},
		{"1 | 3/4 in | 3/4 in; 2 | 2 in | 1-3/4 in", "plastic", "again", ""}, // the last round counts
	} {
		res := calctest.Run(t, Calculator, "string-side=brace", "concrete="+c.concrete, "braces="+c.braces)
		noted := calctest.Noted(res, bracing.NoteFarOff) || calctest.Noted(res, bracing.NoteFarEmpty)
		if res.Out.Choice("next") != c.next || noted != (c.far != "") {
			t.Errorf("%s, %s: %s, %v", c.braces, c.concrete, res.Out.Choice("next"), res.Notes)
		}
		if c.far == "" {
			continue
		}
		if n := res.Notes[0]; n.Level != calc.LevelWarning || n.Text != c.far ||
			n.At.String() != "braces.2.gap-2" {
			t.Errorf("the first note is %v", n)
		}
		if calctest.Noted(res, bracing.NoteMoreRounds) || res.Out.Has("turns") || res.Out.Has("to-turn") {
			t.Error("turns are given for a wall that is far off")
		}
		for _, l := range res.Out.Rows("lines") {
			if l.Has("turns") || l.Has("turn") || l.Has("move") || !l.Has("off-2") {
				t.Error("a row has turns or a direction, or lacks its reading")
			}
		}
	}
}

// A brace that moved the wrong way gets no direction: the same one would repeat
// the error.
func TestWrongWayGetsNoOrder(t *testing.T) {
	lines := calctest.Run(
		t,
		Calculator,
		"string-side=brace",
		"braces=1 | 1-1/4 in | 1-3/4 in; 2 | 1-1/2 in | 1-1/8 in",
	).Out.Rows(
		"lines",
	)
	if lines[0].Has("turn") || lines[1].Choice("turn") != "shorten" {
		t.Error(lines[0].Choice("turn"), lines[1].Choice("turn"))
	}
}

// A wall whose braces move their neighbours is set in rounds: each round makes
// the turns computed in the last one, until the worst is within tolerance.
func TestRoundsConverge(t *testing.T) {
	rng := rand.New(rand.NewPCG(17, 18))
	for range 200 {
		off := make([]float64, 6)
		for i := range off {
			off[i] = (rng.Float64()*2 - 1) * 0.018
		}
		before, done := append([]float64(nil), off...), false
		for range 12 {
			res := calc.Run(Calculator, roundsCase(before, off))
			if res.Out.Choice("done") != "not-yet" {
				done = true
				break
			}
			copy(before, off)
			turnBraces(off, res.Out.Rows("lines"))
		}
		if !done {
			t.Fatalf("not in line after 12 rounds: %v", off)
		}
	}
}

func roundsCase(before, off []float64) calc.Case {
	cols := inputs[2].Cols
	var rows []calc.Case
	for i := range off {
		rows = append(
			rows,
			calc.NewCase(cols).With("gap-1", calc.Num(0.019+before[i])).With("gap-2", calc.Num(0.019+off[i])),
		)
	}
	return calc.NewCase(calctest.WithRules(Calculator).In).With("block", calc.Num(0.019)).
		With("braces", calc.RowsOf(rows...))
}

// turnBraces turns each brace to the nearest quarter; a fifth of its movement
// goes to each neighbour.
func turnBraces(off []float64, lines []calc.Case) {
	move := make([]float64, len(off))
	for i, l := range lines {
		by := quantity.Round(l.Num("turns"), *bracing.Quarters, quantity.US) *
			bracing.PerTurn(calc.SI(0.2, "in"), math.Sqrt(61)*0.3048, 5*0.3048, 8*0.3048, 6*0.3048)
		if l.Choice("move") == "toward" {
			by = -by
		}
		move[i] += by
		for _, k := range []int{i - 1, i + 1} {
			if k >= 0 && k < len(move) {
				move[k] += by / 5
			}
		}
	}
	for i := range off {
		off[i] += move[i]
	}
}

// Where a quarter turn moves the wall by more than the tolerance, the next round goes by
// eighths. A screw with which no brace can be turned is the foreman's, not another round.
func TestCoarseScrews(t *testing.T) {
	for _, c := range []struct {
		travel, next string
		toTurn       float64
	}{{"0.2 in", "again", 1}, {"0.4 in", "eighths", 1}, {"1.9 in", "coarse", 0}} {
		res := calctest.Run(t, Calculator, "string-side=brace", "travel="+c.travel, "tolerance=1/8 in",
			"braces=1 | 3/4 in | 3/4 in; 2 | 1-1/4 in | 1 in")
		if got := res.Out.Choice("next"); got != c.next || res.Out.Num("to-turn") != c.toTurn {
			t.Errorf("%s: %s, %v to turn", c.travel, got, res.Out.Num("to-turn"))
		}
	}
}

// Wherever turns are given the answer says to give them by quarters, or by eighths where a
// quarter turn is too much for the tolerance.
func TestTurnsAreGivenByQuarters(t *testing.T) {
	for _, c := range []struct {
		typed []string
		try   calc.Text
	}{
		{nil, bracing.NoteTry},
		{[]string{"braces=1 | 1-1/4 in | 1-1/2 in; 2 | 1-1/2 in | 1-1/8 in"}, bracing.NoteTry},
		{[]string{"travel=0.4 in"}, bracing.NoteTryEighth},
		{[]string{"concrete=stiff"}, ""},
		{[]string{"braces=1 | 1 in | 3/4 in; 2 | 1 in | 3/4 in"}, ""},
	} {
		res := calctest.Run(t, Calculator, c.typed...)
		for _, note := range []calc.Text{bracing.NoteTry, bracing.NoteTryEighth} {
			if calctest.Noted(res, note) != (note == c.try) {
				t.Errorf("%v: want “%s”, %v", c.typed, c.try.EN(), res.Notes)
			}
		}
		if (res.Out.Num("to-turn") > 0) != (c.try != "") {
			t.Errorf("%v: %v braces to turn", c.typed, res.Out.Num("to-turn"))
		}
	}
}
