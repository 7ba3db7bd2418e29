package plumbcheck

import (
	"slices"
	"testing"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// A reading equal to a limit is within it, a sixteenth more is beyond.
func TestVerdicts(t *testing.T) {
	for _, c := range []struct{ inputs, out, want string }{
		{"height=10 ft; readings=10 ft | 0.36 in", "new", "within"},
		{"height=10 ft; readings=10 ft | 0.361 in", "new", "beyond"},
		{"height=10 ft; readings=10 ft | -0.36 in", "new", "within"},
		{"height=10 ft; readings=10 ft | -0.361 in", "new", "beyond"},
		{"height=10 ft; readings=10 ft | 1 in", "old", "within"},
		{"height=10 ft; readings=10 ft | 1.01 in", "old", "beyond"},
		{"height=10 ft; readings=10 ft | 1.01 in", "next", "clear"},
		{"height=10 ft; readings=10 ft | 1 in", "next", "set"},
		{"height=10 ft; readings=10 ft | 1/8 in", "next", "write"},
		{"height=10 ft; readings=10 ft | 0.13 in", "next", "set"},
		{"height=10 ft; readings=10 ft | 1/8 in", "house", "within"},
		{"height=10 ft; readings=10 ft | -1/4 in", "house", "beyond"},
		{"height=40 ft; readings=40 ft | 1 in", "new", "within"}, // from 27 ft 9 in. both say 1 in.
		{"height=40 ft; readings=40 ft | 1.01 in", "new", "beyond"},
		{"height=10 ft; readings=5 ft | -6 in; 10 ft | 0 in", "next", "clear"},
		{"height=10 ft; readings=5 ft | 0.19 in; 10 ft | 0 in", "new", "beyond"}, // a belly counts at its own height
		{"what=edge; height=10 ft; readings=10 ft | 0.24 in", "new", "within"},
		{"what=edge; height=10 ft; readings=10 ft | 0.25 in", "new", "beyond"},
		{"what=edge; height=10 ft; readings=10 ft | 0.51 in", "old", "beyond"},
	} {
		if got := calctest.Run(t, Calculator, calctest.Inputs(c.inputs)...).Out.Choice(c.out); got != c.want {
			t.Errorf("%s: %s by the %s book, want %s", c.inputs, got, c.out, c.want)
		}
	}
}

func find(res calc.Result, book string) calc.Case {
	for _, row := range res.Out.Rows("checks") {
		if row.Choice("book") == book {
			return row
		}
	}
	return calc.Case{}
}

// The lean between readings on both sides of plumb is their sum.
func TestLeanBetweenReadings(t *testing.T) {
	res := calctest.Run(t, Calculator, "height=9 ft", "readings=6 ft | 1/4 in; 9 ft | -1/4 in")
	row := find(res, "slope")
	calctest.Near(t, "measured", calc.From(row.Num("measured"), "in"), 0.5, 1e-9)
	calctest.Near(t, "limit", calc.From(row.Num("limit"), "mm"), 10, 1e-9)
	if row.Flag("within") || res.Out.Choice("old") != "within" {
		t.Error("a kink of 1/2 in. in 3 ft passes")
	}
	// Far apart, the limit grows with the distance: 6 m, 20 mm.
	row = find(calctest.Run(t, Calculator, "height=6 m", "readings=6 m | 19 mm"), "slope")
	calctest.Near(t, "limit", calc.From(row.Num("limit"), "mm"), 20, 1e-9)
}

// The order in which readings are typed does not matter.
func TestReadingsAreSorted(t *testing.T) {
	a := calctest.Run(t, Calculator, "readings=3 ft | 1/8 in; 6 ft | 1/2 in; 9 ft | 1/4 in")
	b := calctest.Run(t, Calculator, "readings=9 ft | 1/4 in; 3 ft | 1/8 in; 6 ft | 1/2 in")
	for _, id := range []string{"worst", "bow", "limit-top"} {
		if a.Out.Num(id) != b.Out.Num(id) {
			t.Errorf("%s: %v and %v", id, a.Out.Num(id), b.Out.Num(id))
		}
	}
	// At 6 ft the line from base to top is 1/6 in. off: 1/2 − 1/6.
	calctest.Near(t, "bow", calc.From(a.Out.Num("bow"), "in"), 1.0/3, 1e-9)
}

// The editions of a basement wall differ by more than three times, the
// home-builder guideline by more than five (ACI 117-90 and -10, NAHB 2-13).
func TestEditionsDiffer(t *testing.T) {
	res := calctest.Run(t, Calculator, "height=8 ft", "readings=8 ft | 1/16 in", "own=1/4 in", "step=1/8 in")
	limit := func(book string) float64 { return calc.From(find(res, book).Num("limit"), "in") }
	calctest.Near(t, "old to new", limit("old")/limit("new"), 3.47, 0.005)
	calctest.Near(t, "home to new", limit("home")/limit("new"), 5.21, 0.005)
	calctest.Near(t, "own", limit("own"), 0.25, 1e-9)
	if len(res.Out.Rows("checks")) != 8 {
		t.Errorf("%d lines", len(res.Out.Rows("checks")))
	}
	if n := len(calctest.Run(t, Calculator, "gap=").Out.Rows("checks")); n != 5 {
		t.Errorf("%d lines without straightedge, step and own tolerance", n)
	}
}

// The note on the rule of the crew is given only where the book passes the wall.
func TestCrewRule(t *testing.T) {
	for off, want := range map[string]bool{"1/8 in": false, "1/4 in": true, "3/8 in": false, "1 1/2 in": false} {
		res := calctest.Run(t, Calculator, "height=9 ft", "readings=9 ft | "+off)
		if calctest.Noted(res, noteCrew) != want {
			t.Errorf("%s: %v", off, res.Notes)
		}
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{
			Inputs: "readings=10 ft | 0 in",
			Note:   "This reading is above the wall, which is {height} high.",
			At:     "readings.1.up",
			Want:   true,
		},
		{
			Inputs: "readings=4 ft | 0 in; 4 ft | 1/8 in",
			Note:   "Two readings stand at the same height. Give one for each height.",
			At:     "readings",
			Want:   true,
		},
		{
			Inputs: "readings=8 ft | 0 in",
			Note:   "The highest reading is at {up}. Read the top of the wall too.",
			At:     "readings",
			Want:   true,
		},
		{
			Inputs: "readings=8 ft 2 in | 0 in",
			Note:   "The highest reading is at {up}. Read the top of the wall too.",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "readings=9 ft | 3/8 in",
			Note: "The editions differ: plumb by the 1990 one, beyond by the newer ones. Ask which edition the " +
				"project papers name.",
			At:   "readings",
			Want: true,
		},
		{
			Inputs: "readings=9 ft | 1-1/8 in",
			Note: "The editions differ: plumb by the 1990 one, beyond by the newer ones. Ask which edition the " +
				"project papers name.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "readings=9 ft | 1 in",
			Note: "Beyond the limit of ACI 117-10. Before hands off, and only while the concrete is still plastic, " +
				"set the braces. After that turn none, and tell the foreman.",
			At:   "readings",
			Want: true,
		},
		{
			Inputs: "readings=9 ft | 1/4 in",
			Note: "Beyond the limit of ACI 117-10. Before hands off, and only while the concrete is still plastic, " +
				"set the braces. After that turn none, and tell the foreman.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "readings=9 ft | 1 in",
			Note: "The home-builder guideline is over five times as loose as ACI 117-10. It settles claims, it is " +
				"no aim.",
			At:   "readings",
			Want: true,
		},
		{
			Inputs: "readings=9 ft | 2 in",
			Note: "The home-builder guideline is over five times as loose as ACI 117-10. It settles claims, it is " +
				"no aim.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "own=3/8 in",
			Note:   "Your project's tolerance is wider than ACI 117-10 at {up}: {limit}. Is it right?",
			At:     "own",
			Want:   true,
		},
		{
			Inputs: "own=5/16 in",
			Note:   "Your project's tolerance is wider than ACI 117-10 at {up}: {limit}. Is it right?",
			At:     "",
			Want:   false,
		},
		{
			Inputs: "stories=one",
			Note: "Plumb the next story from the lines of the plan, not from this wall. Leans add up from story " +
				"to story.",
			At:   "stories",
			Want: true,
		},
		{
			Note: "Plumb the next story from the lines of the plan, not from this wall. Leans add up from story to " +
				"story.",
			At:   "",
			Want: false,
		},
		{
			Inputs: "what=edge",
			Note: "The tighter limits are for exposed corner columns and joint grooves. For a plain wall corner " +
				"take the wall face.",
			At:   "what",
			Want: true,
		},
		{Inputs: "height=84 ft", Note: "{label} must be at most {limit}. {why}", At: "height", Want: true},
	})
	for _, inputs := range []string{"readings=10 ft | 0 in", "readings=4 ft | 0 in; 4 ft | 1/8 in"} {
		if res := calctest.Run(t, Calculator, calctest.Inputs(inputs)...); res.State != calc.Refused {
			t.Errorf("%s is not refused", inputs)
		}
	}
}

// A wall out by more than 1 in. is cleared: the warning comes first, and no note is
// on braces.
func TestFarOut(t *testing.T) {
	for _, out := range []string{"1-1/16 in", "-6 in", "12 in"} {
		res := calctest.Run(t, Calculator, "readings=3 ft | 0 in; 9 ft | "+out)
		if n := res.Notes[0]; n.Level != calc.LevelWarning || n.Text != bracing.NoteFarOff ||
			n.At.String() != "readings" {
			t.Errorf("%s: the first note is %v", out, n)
		}
		for _, n := range []calc.Text{noteBeyond, askEdition, noteHome} {
			if calctest.Noted(res, n) {
				t.Errorf("%s: %s", out, n.EN())
			}
		}
	}
	if calctest.Noted(calctest.Run(t, Calculator, "readings=9 ft | 1 in"), bracing.NoteFarOff) {
		t.Error("1 in. itself is beyond it")
	}
}

// The home-builder guideline counts for readings up to 10 ft only.
func TestHomeGuidelineEndsAtTenFeet(t *testing.T) {
	row := find(calctest.Run(t, Calculator, "height=20 ft", "readings=10 ft | 1/2 in; 20 ft | 9 in"), "home")
	calctest.Near(t, "height", calc.From(row.Num("up"), "ft"), 10, 1e-9)
	if !row.Flag("within") {
		t.Error("1/2 in. at 10 ft is beyond the guideline")
	}
	res := calctest.Run(t, Calculator, "height=83 ft 4 in", "readings=83 ft 4 in | 1.1 in")
	for _, row := range res.Out.Rows("checks") {
		if row.Choice("book") == "home" {
			t.Error("the guideline is used for a reading at 83 ft")
		}
	}
	if calctest.Noted(res, noteHome) {
		t.Error("a note compares with the guideline at 83 ft")
	}
}

// Where measured and limit look alike and the check fails, a note has both in
// hundredths.
func TestHairBeyond(t *testing.T) {
	limits := func(inputs ...string) (got []string) {
		for _, n := range calctest.Run(t, Calculator, inputs...).Notes {
			if n.Text == noteHair {
				got = append(got, calc.Locale{}.Say(n.Text, n.Slots...))
			}
		}
		return got
	}
	// 9 ft: 0.324 in., shown as 5/16 like 0.33 in.
	want := []string{"Beyond by a hair: 0.33 in measured, 0.32 in allowed."}
	if got := limits("readings=9 ft | 0.33 in"); !slices.Equal(got, want) {
		t.Errorf("0.33 in. of 0.324: %q", got)
	}
	if got := limits("readings=9 ft | 3/8 in"); got != nil {
		t.Errorf("3/8 in. of 0.324: %q", got)
	}
	if got := limits("readings=9 ft | 5/16 in"); got != nil {
		t.Errorf("5/16 in. of 0.324: %q", got)
	}
}
