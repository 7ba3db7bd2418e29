package stringline

import (
	"encoding/xml"
	"io"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/bracing"
	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

func TestDefaultCase(t *testing.T) {
	if res := calctest.Run(t, Calculator); res.State != calc.OK || len(res.Steps) > 8 {
		t.Fatalf("default case: %v with %d steps", res.State, len(res.Steps))
	}
}

// The default case by hand: row 3 reads 1-1/4 in. on 3/4 in. blocks, 1/2 in.
// too far. At the brace 6/8 of that; cos θ = 5/√61; five turns to the inch.
func TestDefaultByHand(t *testing.T) {
	res := calctest.Run(t, Calculator)
	calctest.Near(t, "worst", calc.From(res.Out.Num("worst"), "in"), 0.5, 1e-12)
	calctest.Near(t, "turns", res.Out.Num("turns"), 0.5*0.75*5/math.Sqrt(61)/0.2, 1e-12)
	calctest.Near(t, "row", res.Out.Num("worst-row"), 3, 0)
	calctest.Near(t, "to turn", res.Out.Num("to-turn"), 3, 0)
	// Default rows are numbered too.
	calctest.Near(t, "row", calctest.Run(t, Calculator).Out.Num("worst-row"), 3, 0)
}

// Without the side of the string no output gives a direction of turning, and the
// number of turns is the same for both sides.
func TestSideIsAskedNeverAssumed(t *testing.T) {
	open, brace, other := calctest.Run(
		t,
		Calculator,
	), calctest.Run(
		t,
		Calculator,
		"string-side=brace",
	), calctest.Run(
		t,
		Calculator,
		"string-side=other",
	)
	n, ok := calctest.NoteOf(open, "Which side is the string on? Answer, and it shows whether to lengthen or shorten.")
	if !ok || n.Level != calc.LevelAsk {
		t.Error("the side is not asked for")
	}
	for i, l := range open.Out.Rows("lines") {
		if l.Has("turn") || l.Has("brace-move") {
			t.Errorf("row %d gives a direction of turning without the side", i+1)
		}
		b, o := brace.Out.Rows("lines")[i], other.Out.Rows("lines")[i]
		if l.Num("turns") != b.Num("turns") || b.Num("turns") != o.Num("turns") ||
			b.Choice("move") != o.Choice("move") {
			t.Errorf("row %d: the side changes more than the way to turn", i+1)
		}
		opposite := map[string]string{"lengthen": "shorten", "shorten": "lengthen", "leave": "leave"}
		if o.Choice("turn") != opposite[b.Choice("turn")] {
			t.Errorf("row %d: %s on the brace side, %s on the other", i+1, b.Choice("turn"), o.Choice("turn"))
		}
	}
	_, ok = calctest.NoteOf(brace, "For a string on the brace side: wide gap, shorten; narrow gap, lengthen.")
	if !ok {
		t.Error("the answer is not repeated")
	}
	if _, ok := calctest.NoteOf(other, "For a string on the far side of the wall: wide gap, lengthen; narrow gap, "+
		"shorten."); !ok {
		t.Error("the answer is not repeated")
	}
}

// A wall in coordinates is leaned at random, read by string from either side and
// set by the turns computed. Turned to the nearest quarter it is then on the line
// within an eighth of a turn and the error of the linear formula. A wrong sign
// would double the deviation instead.
func TestTurningSetsTheWall(t *testing.T) {
	rng := rand.New(rand.NewPCG(5, 6))
	for range 300 {
		g := calctest.Triangle{Run: 1.2 + 1.3*rng.Float64(), Attach: 1.5 + rng.Float64(), Below: 0.5 * rng.Float64()}
		high, block, travel := 2+1.5*rng.Float64(), 0.019, 0.003+0.004*rng.Float64()
		lean := (rng.Float64()*2 - 1) * 0.007 // under 1 in.
		for _, side := range []string{"brace", "other"} {
			gap := block + high*math.Sin(lean) // the string hangs between wall and brace
			if side == "other" {
				gap = block - high*math.Sin(lean)
			}
			if gap < 0 {
				continue
			}
			in := calc.NewCase(Calculator.In)
			for id, x := range map[string]float64{"block": block, "string-height": high, "attach-height": g.Attach,
				"foot-distance": g.Run,
				"foot-below":    g.Below, "travel": travel, "tolerance": calc.SI(1.0/16, "in")} {
				in = in.With(id, calc.Num(x))
			}
			row := calc.NewCase(readingCols).With("gap", calc.Num(gap))
			in = in.With("thread-as", calc.ChoiceOf("travel")).
				With("string-side", calc.ChoiceOf(side)).
				With("readings", calc.RowsOf(row))
			l := calc.Run(Calculator, in).Out.Rows("lines")[0]
			turns := quantity.Round(l.Num("turns"), *bracing.Quarters, quantity.US)
			length := g.Length(lean)
			switch l.Choice("turn") {
			case "lengthen":
				length += turns * travel
			case "shorten":
				length -= turns * travel
			}
			after := math.Abs(high * math.Sin(g.OffPlumb(length)))
			before := math.Abs(high * math.Sin(lean))
			eighth := bracing.PerTurn(travel, g.Length(0), g.Run, high, g.Attach) / 8
			limit := math.Max(eighth, 0)*1.05 + 0.02*before
			if l.Flag("within") {
				limit = calc.SI(1.0/16, "in") * (1 + 1e-6)
			}
			if after > limit {
				t.Fatalf(
					"string on the %s side: off %v before, %v after %v turns to %s",
					side,
					before,
					after,
					turns,
					l.Choice("turn"),
				)
			}
		}
	}
}

// Tolerance, order of work and rounding.
func TestOrderOfWork(t *testing.T) {
	res := calctest.Run(
		t,
		Calculator,
		"string-side=brace", "tolerance=1/4 in",
		"readings=A | 1-1/16 in | 2 ft; B | 1-3/4 in | 8 ft; C | 1 in | 14 ft; D | 0.2 in | 20 ft; E | 3/4 in | 26 ft",
	)
	var order []int
	for _, l := range res.Out.Rows("lines") {
		order = append(order, int(l.Num("order")))
	}
	want := []int{1, 2, 0, 3, 0} // the end first, then the worst; 1/8 in. off is within
	for i := range want {
		if order[i] != want[i] {
			t.Fatalf("order %v, want %v", order, want)
		}
	}
	// With distances, the ends are the outermost readings, not the outer rows.
	res = calctest.Run(t, Calculator, "readings=B | 1-3/4 in | 8 ft; A | 1-1/16 in | 2 ft; C | 1-1/2 in | 14 ft")
	if lines := res.Out.Rows("lines"); lines[1].Num("order") != 2 || lines[2].Num("order") != 1 ||
		lines[0].Num("order") != 3 {
		t.Error("the ends are not those by distance")
	}
	if lines := calctest.Run(t, Calculator, "readings=B | 1-1/2 in; A | 1-3/4 in").Out.Rows("lines"); lines[1].Num(
		"order",
	) != 1 {
		t.Error("of two ends the worse is not first")
	}
}

func TestTooLate(t *testing.T) {
	res := calctest.Run(t, Calculator, "concrete=stiff", "string-side=brace")
	if n, ok := calctest.NoteOf(res, "The concrete has stiffened. Do not turn any brace: it would crack the wall or "+
		"tear the brace loose. Write the readings down and tell the foreman."); !ok ||
		n.Level != calc.LevelWarning ||
		res.State != calc.OK {
		t.Fatal("no warning that the concrete has stiffened")
	}
	if res.Out.Has("turns") || res.Out.Num("to-turn") != 0 {
		t.Error("turns are given for stiffened concrete")
	}
	for _, l := range res.Out.Rows("lines") {
		if l.Has("turns") || l.Has("turn") || !l.Has("off") {
			t.Error("a row has turns, or lacks its reading")
		}
	}
	for _, s := range res.Steps {
		if s.Formula == bracing.TurnsFormula || s.Formula == bracing.BraceChangeFormula {
			t.Error("the worked example has turns")
		}
	}
	if Calculator.Cautions[0].Level != calc.LevelWarning {
		t.Error("the hold point is not a warning of the calculator")
	}
}

// A wall that is off by more than 1 in. is cleared, and a string
// that its end blocks do not prove gives no turn: neither has turns or directions, in
// outputs, steps or drawing.
func TestHeld(t *testing.T) {
	far, turns := "readings=1 | 3/4 in; 2 | 1-13/16 in", "readings=1 | 3/4 in; 2 | 1-3/4 in"
	for _, c := range []struct{ inputs, next string }{
		{"string-side=brace; " + far, nextClear},
		{"string-side=brace; readings=1 | 6 in; 2 | 3/4 in", nextClear},
		{"string-side=brace; concrete=stiff; " + far, nextClear},
		{"string-side=brace; first-end=1 in; " + far, nextClear},
		{"string-side=brace; concrete=none; " + far, nextLook},
		{"string-side=brace; " + turns, nextTurn},
		{"string-side=brace; readings=1 | 3/4 in; 2 | 7/8 in", nextGood},
		{"string-side=brace; concrete=stiff; " + turns, nextStop},
		{"string-side=brace; first-end=1 in; " + turns, nextProve},
		{"string-side=other; second-end=1-1/4 in; " + turns, nextProve},
		{"string-side=other; second-end=; " + turns, nextProve},
		{"string-side=other; second-end=25/32 in; " + turns, nextTurn},
		{"string-side=brace; block=0 in; first-end=; second-end=; readings=1 | 1/2 in", nextTurn},
		{"string-side=brace; block=0 in; first-end=; second-end=1/4 in; readings=1 | 1/2 in", nextProve},
	} {
		in, res := calctest.RunCase(t, Calculator, calctest.Inputs(c.inputs)...)
		if res.Out.Choice("next") != c.next {
			t.Errorf("%s: %s, want %s", c.inputs, res.Out.Choice("next"), c.next)
		}
		n := res.Notes[0]
		first := n.Text == bracing.NoteFarOff && n.Level == calc.LevelWarning
		empty := n.Text == bracing.NoteFarEmpty && n.Level == calc.LevelWarning
		if first != (c.next == nextClear) || empty != (c.next == nextLook) ||
			calctest.Noted(res, noteTry) != (c.next == nextTurn || c.next == nextGood) {
			t.Errorf("%s: notes %v", c.inputs, res.Notes)
		}
		svg := figure.SVG(draw(calc.Locale{}, in, res))
		if arrow := strings.Contains(svg, `"f-`+string(figure.Ink)+`"`); arrow != (c.next == nextTurn) {
			t.Errorf("%s: arrow in the drawing is %v", c.inputs, arrow)
		}
		if c.next == nextTurn || c.next == nextGood {
			continue
		}
		if res.Out.Has("turns") || res.Out.Has("to-turn") {
			t.Errorf("%s: turns are given", c.inputs)
		}
		for _, l := range res.Out.Rows("lines") {
			if l.Has("turns") || l.Has("turn") || l.Has("move") || l.Has("brace-move") || !l.Has("off") {
				t.Errorf("%s: a row has turns or a direction, or lacks its reading", c.inputs)
			}
		}
		for _, s := range res.Steps {
			if s.Formula == bracing.TurnsFormula || s.Formula == bracing.BraceChangeFormula {
				t.Errorf("%s: the worked example has turns", c.inputs)
			}
		}
	}
}

func TestNotes(t *testing.T) {
	for _, c := range []struct {
		inputs string
		key    calc.Text
		at     string
		want   bool
	}{
		{"readings=7 | 1-1/8 in", bracing.NoteMoreRounds, "", false},
		{"readings=7 | 1-1/4 in", bracing.NoteMoreRounds, "readings.1.gap", true},
		{"first-end=7/8 in", "The gap here is {gap}, the block is {block}. Set the string again before you turn a " +
			"brace.", "first-end", true},
		{"second-end=25/32 in", "The gap here is {gap}, the block is {block}. Set the string again before you turn a " +
			"brace.", "", false},
		{"second-end=", "Read the gap at both end blocks. Until then the string is not proved.", "first-end", true},
		{"block=3/8 in", "With blocks under {least} a bulge lifts the string. Are the blocks right?", "block", true},
		{"block=1/2 in", "With blocks under {least} a bulge lifts the string. Are the blocks right?", "", false},
		{"readings=1 | 0 in", "The wall touches or lifts the string here. Use thicker blocks and read again.",
			"readings.1.gap", true},
		{"readings=1 | 1-1/4 in; 2 | 1-1/2 in; 3 | 1-1/4 in", "All readings are off the same way. Check the end " +
			"blocks before you turn a brace.", "readings", true},
		{"readings=1 | 1-1/4 in; 2 | 1/4 in; 3 | 1-1/4 in", "All readings are off the same way. Check the end blocks " +
			"before you turn a brace.", "", false},
		{"readings=1 | 1/4 in; 2 | 1-3/8 in", "This reading is {jump} from the one before. Read it again.",
			"readings.2.gap", true},
		{"readings=1 | 3/4 in; 2 | 1-3/4 in", "This reading is {jump} from the one before. Read it again.", "", false},
		{"string-side=brace", "Shortening pulls the wall. The brace must be fixed to pull, at wall and foot.", "",
			true},
		{"string-side=brace; readings=1 | 1/4 in", "Shortening pulls the wall. The brace must be fixed to pull, at " +
			"wall and foot.", "", false},
		{"foot-distance=3 ft", "The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds " +
			"badly. The foreman looks before it is turned.", "foot-distance", true},
		{"foot-distance=17 ft", "The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds " +
			"badly. The foreman looks before it is turned.", "foot-distance", true},
		{"foot-distance=5 ft", "The brace stands at {slope}. Army practice is 20° to 60°. Outside that it holds " +
			"badly. The foreman looks before it is turned.", "", false},
		{"string-height=6 ft; tolerance=1/4 in", "This tolerance is wider than the plumb limit of ACI 117-10 at this " +
			"height, {limit}.",
			"tolerance", true},
		{"tolerance=1/4 in", "This tolerance is wider than the plumb limit of ACI 117-10 at this height, {limit}.", "",
			false},
		{"", "The worst is beyond the plumb limit of ACI 117-10 at this height, {limit}.", "readings", true},
		{"string-height=15 ft", "The worst is beyond the plumb limit of ACI 117-10 at this height, {limit}.", "",
			false},
		{"thread-as=travel; travel=1 in; tolerance=1/8 in", "A quarter turn moves the wall by {move}, more than the " +
			"tolerance. Turn by eighths.", "tolerance", true},
		{"readings=1 | -1/8 in", "{label} must be at least {limit}. {why}", "readings.1.gap", true},
		{"tolerance=3/8 in", "{label} must be at most {limit}. {why}", "tolerance", true},
		{"readings=1 | 13 in", "{label} must be at most {limit}. {why}", "readings.1.gap", true},
		{"readings=", "{label} needs at least {min} rows.", "readings", true},
		{"string-side=left", "{label} has no answer “{text}”. Choose one of: {options}.", "string-side", true},
	} {
		res := calctest.Try(Calculator, calctest.Inputs(c.inputs)...)
		n, got := calctest.NoteOf(res, c.key)
		if got != c.want || (got && c.at != "" && n.At.String() != c.at) {
			t.Errorf("%s: %s is %v at %s, want %v at %s", c.inputs, c.key, got, n.At.String(), c.want, c.at)
		}
	}
}

func TestBowOutput(t *testing.T) {
	res := calctest.Run(t, Calculator, "readings=1 | 3/4 in | 0 ft; 2 | 1-1/4 in | 20 ft; 3 | 3/4 in | 40 ft")
	calctest.Near(t, "radius", calc.From(res.Out.Num("bow-radius"), "ft"), 4800, 1e-6)
	for _, rows := range []string{"1 | 3/4 in; 2 | 1-1/4 in; 3 | 3/4 in", "1 | 3/4 in | 0 ft; 2 | 3/4 in | 20 ft; 3 " +
		"| 3/4 in | 40 ft",
		"1 | 3/4 in | 0 ft; 2 | 1-1/4 in | 10 ft; 3 | 3/4 in | 40 ft", "1 | 3/4 in | 5 ft; 2 | 1 in | 5 ft; 3 | 3/4 " +
			"in | 5 ft"} {
		if calctest.Run(t, Calculator, "readings="+rows).Out.Has("bow-radius") {
			t.Errorf("%s: a bow without enough readings", rows)
		}
	}
}

func TestTables(t *testing.T) {
	for _, table := range Calculator.Tables {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			down, across := table.Down.US, table.Across.US
			if sys == quantity.Metric {
				down, across = table.Down.Metric, table.Across.Metric
			}
			for _, b := range across {
				last := 0.0
				for _, a := range down {
					entries := append(
						append([]calc.Entry(nil), table.Set...),
						calc.Entry{Path: table.Down.Path, Text: a},
						calc.Entry{Path: table.Across.Path, Text: b},
					)
					in, notes := calc.Read(calctest.WithRules(Calculator), entries, quantity.Style{System: sys})
					res := calc.Run(Calculator, in)
					if len(notes) > 0 || res.State != calc.OK {
						t.Fatal(notes, res.Notes)
					}
					got := res.Out.Num("turns")
					if got <= last {
						t.Errorf("%s: %s at %s gives %v turns after %v", table.ID, a, b, got, last)
					}
					last = got
				}
			}
		}
	}
}

// Any inputs within their limits give finite results and a drawing that stays
// in its frame.
func TestAnyInput(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	for range 3000 {
		in := sample(rng, Calculator.In)
		res := calc.Run(Calculator, in)
		if res.State != calc.OK {
			t.Fatalf("%v for %v", res.Notes, calc.Locale{}.Entries(in))
		}
		if n := len(res.Out.Rows("lines")); n != len(in.Rows("readings")) {
			t.Fatalf("%d lines of %d readings", n, len(in.Rows("readings")))
		}
		for _, style := range []quantity.Style{{}, {System: quantity.Metric, Mark: quantity.Comma}} {
			checkDrawing(t, Calculator.Draw(calc.Locale{Style: style}, in, res))
		}
	}
	if !Calculator.Draw(calc.Locale{}, calc.NewCase(Calculator.In), calc.Result{State: calc.Refused}).Empty() {
		t.Error("a refused result was drawn")
	}
}

func sample(rng *rand.Rand, fields []calc.Field) calc.Case {
	c := calc.NewCase(fields)
	for _, f := range fields {
		switch f.Kind {
		case calc.Number:
			if !f.Optional || rng.IntN(4) > 0 {
				least, most, _ := f.Limits()
				c = c.With(f.ID, calc.Num(least.SI+rng.Float64()*(most.SI-least.SI)))
			}
		case calc.Choice:
			if !f.Optional || rng.IntN(3) > 0 {
				c = c.With(f.ID, calc.ChoiceOf(f.Options[rng.IntN(len(f.Options))].ID))
			}
		case calc.FreeText:
			c = c.With(f.ID, calc.TextOf(strings.Repeat("W", rng.IntN(24))))
		case calc.Rows:
			var rows []calc.Case
			for range f.MinRows + rng.IntN(6) {
				rows = append(rows, sample(rng, f.Cols))
			}
			c = c.With(f.ID, calc.RowsOf(rows...))
		}
	}
	return c
}

// checkDrawing parses a drawing as XML and checks that every coordinate, and the
// estimated width of short texts, is inside the frame.
func checkDrawing(t *testing.T, d figure.Drawing) {
	t.Helper()
	if d.Width > 360 || d.Title == "" || d.Desc == "" || strings.Contains(d.Desc, "{") {
		t.Fatalf("drawing: width %v, title %q, desc %q", d.Width, d.Title, d.Desc)
	}
	dec := xml.NewDecoder(strings.NewReader(figure.SVG(d)))
	for {
		tok, err := dec.Token()
		if err == io.EOF {
			return
		}
		if err != nil {
			t.Fatal(err)
		}
		if s, ok := tok.(xml.StartElement); ok && s.Name.Local != "svg" {
			checkElement(t, d, s)
		}
	}
}

func checkElement(t *testing.T, d figure.Drawing, s xml.StartElement) {
	t.Helper()
	at := map[string]float64{}
	inside := func(x, y float64) {
		if x < -0.01 || x > d.Width+0.01 || y < -0.01 || y > d.Height+0.01 {
			t.Fatalf("%s leaves the frame of %v × %v: %v", s.Name.Local, d.Width, d.Height, s.Attr)
		}
	}
	for _, a := range s.Attr {
		if a.Name.Local == "points" {
			for _, pair := range strings.Fields(a.Value) {
				xs, ys, _ := strings.Cut(pair, ",")
				x, _ := strconv.ParseFloat(xs, 64)
				y, _ := strconv.ParseFloat(ys, 64)
				inside(x, y)
			}
		}
		if x, err := strconv.ParseFloat(a.Value, 64); err == nil {
			at[a.Name.Local] = x
		}
	}
	inside(at["x"], at["y"])
	inside(at["x"]+at["width"], at["y"]+at["height"])
	inside(at["x1"], at["y1"])
	inside(at["x2"], at["y2"])
	inside(at["cx"]+at["r"], at["cy"]+at["r"])
}

// Where a quarter turn moves the wall by more than the tolerance, braces are turned by
// eighths. A screw that is too coarse even for that turns none.
func TestCoarseScrews(t *testing.T) {
	for _, c := range []struct {
		travel, next string
		toTurn       float64
	}{{"0.2 in", nextTurn, 1}, {"0.4 in", nextEighths, 1}, {"1.9 in", nextCoarse, 0}} {
		res := calctest.Run(t, Calculator, "string-side=brace", "thread-as=travel", "travel="+c.travel,
			"tolerance=1/8 in", "readings=1 | 3/4 in; 2 | 1 in; 3 | 3/4 in")
		if got := res.Out.Choice("next"); got != c.next || res.Out.Num("to-turn") != c.toTurn {
			t.Errorf("%s: %s, %v to turn", c.travel, got, res.Out.Num("to-turn"))
		}
		if calctest.Noted(res, noteTry) != (c.next == nextTurn) ||
			calctest.Noted(res, noteTryEighth) != (c.next == nextEighths) {
			t.Errorf("%s: %v", c.travel, res.Notes)
		}
		if turn := res.Out.Rows("lines")[1].Has("turn"); turn != (c.next != nextCoarse) {
			t.Errorf("%s: a direction is given: %v", c.travel, turn)
		}
	}
}

// The movement of the wall that was read at the string is taken as it is: no lever is
// applied to it, so a gap as wide as one turn moves the wall takes one turn.
func TestTurnReadAtTheString(t *testing.T) {
	for _, c := range []struct {
		moves, gap string
		turns      float64
	}{{"1/4 in", "1 in", 1}, {"1/2 in", "1 in", 0.5}, {"1/4 in", "1-1/4 in", 2}} {
		for _, brace := range []string{
			"attach-height=6 ft; foot-distance=5 ft",
			"attach-height=4 ft; foot-distance=7 ft",
			"string-height=9 ft; foot-below=1 ft",
		} {
			set := append([]string{"string-side=brace", "thread-as=wall", "wall-travel=" + c.moves,
				"readings=1 | 3/4 in; 2 | " + c.gap + "; 3 | 3/4 in"}, strings.Split(brace, "; ")...)
			res := calctest.Run(t, Calculator, set...)
			if got := res.Out.Num("turns"); math.Abs(got-c.turns) > 1e-9 {
				t.Errorf("one turn %s, gap %s, %s: %v turns", c.moves, c.gap, brace, got)
			}
		}
	}
	// The travel of the screw is not the movement of the wall.
	res := calctest.Run(t, Calculator, "string-side=brace", "thread-as=travel", "travel=1/4 in",
		"readings=1 | 3/4 in; 2 | 1 in; 3 | 3/4 in")
	if got := res.Out.Num("turns"); math.Abs(got-1) < 0.1 {
		t.Errorf("the travel of the screw is taken for the movement of the wall: %v turns", got)
	}
}
