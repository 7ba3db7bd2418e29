package wallvolume

import (
	"encoding/xml"
	"io"
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
)

var bare = []string{"measured=centre", "openings=", "block-outs=", "waste=0"}

func with(more ...string) []string { return merge(bare, more) }

func TestDefaultCase(t *testing.T) {
	res := calctest.Run(t, Calculator)
	if res.State != calc.OK || len(res.Steps) > 8 {
		t.Fatalf("default case: %v with %d steps", res.State, len(res.Steps))
	}
}

// The default case with 10 % of waste and trucks of 9 yd³, computed by hand: 136 ft
// around less four cores is 133.33 ft; 8 ft by 8 in. of that is 711.11 ft³. Door 38 × 82
// in., four windows 36 × 24 in., two pockets 8 × 10 × 4 in. total 30.80 ft³. With 10 % the 25.20 yd³ are 27.72.
func TestDefaultByHand(t *testing.T) {
	res := calctest.Run(t, Calculator, "waste=10 %", "truck-yd=9 yd³")
	out := res.Out
	calctest.Near(t, "walls", calc.From(out.Num("walls-yd"), "ft³"), 711.111, 0.001)
	calctest.Near(t, "holes", calc.From(out.Num("holes-m"), "ft³"), (38*82+4*36*24)*8/1728.0+2*320/1728.0, 1e-9)
	calctest.Near(t, "order", calc.From(out.Num("order-yd"), "yd³"), 28, 1e-9)
	calctest.Near(t, "loads", out.Num("loads"), 4, 0)
	calctest.Near(t, "last", calc.From(out.Num("last-load-yd"), "yd³"), 1, 1e-9)
}

func TestBothUnitsForEveryReader(t *testing.T) {
	for _, id := range []string{"order", "net", "walls", "holes", "with-waste", "last-load", "difference"} {
		for _, end := range []struct{ id, unit string }{{"-yd", "yd³"}, {"-m", "m³"}} {
			i := indexOf(Calculator.Out, id+end.id)
			for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
				if i < 0 || Calculator.Out[i].Display.In(sys).Unit != end.unit {
					t.Errorf("%s%s is not in %s for every reader", id, end.id, end.unit)
				}
			}
		}
	}
	// An order in yards, read in metres, must not be short when read back.
	res := calctest.Run(t, Calculator)
	show := Calculator.Out[indexOf(Calculator.Out, "order-m")].Display
	if quantity.Round(res.Out.Num("order-m"), *show, quantity.Metric) < res.Out.Num("order-m")*(1-1e-12) {
		t.Error("the order shown in meters is short of the order in yards")
	}
}

func indexOf(fields []calc.Field, id string) int {
	for i, f := range fields {
		if f.ID == id {
			return i
		}
	}
	return -1
}

// Scaling: twice the length is twice the volume; twice the core too on the
// centre line; and the way of measuring does not change the volume of a wall.
func TestScalingAndFaces(t *testing.T) {
	net := func(inputs ...string) float64 {
		res := calctest.Run(t, Calculator, with(inputs...)...)
		if res.State != calc.OK {
			t.Fatal(inputs, res.Notes)
		}
		return res.Out.Num("net-m")
	}
	one := net("runs=10 ft | 8 ft", "core=6 in")
	calctest.Near(t, "length", net("runs=20 ft | 8 ft", "core=6 in"), 2*one, 1e-12)
	calctest.Near(t, "count", net("runs=10 ft | 8 ft | 2", "core=6 in"), 2*one, 1e-12)
	calctest.Near(t, "core", net("runs=10 ft | 8 ft", "core=12 in"), 2*one, 1e-12)
	calctest.Near(t, "height", net("runs=10 ft | 16 ft", "core=6 in"), 2*one, 1e-12)
	middle := net("runs=130 ft | 8 ft", "core=6 in")
	calctest.Near(t, "outside", net("measured=outside", "runs=132 ft | 8 ft", "core=6 in"), middle, 1e-9)
	calctest.Near(t, "inside", net("measured=inside", "runs=128 ft | 8 ft", "core=6 in"), middle, 1e-9)
	calctest.Near(
		t,
		"curve of 360°",
		net("runs=", "core=6 in", "curve=yes", "curve-radius=10 ft", "curve-angle=360", "curve-height=8 ft"),
		math.Pi*(100-9.5*9.5)*8*calc.SI(1, "ft³"),
		1e-9,
	)
}

func TestWholeLoadsAndSteps(t *testing.T) {
	// 10 ft × 8 ft × 4.05 in. = 27 ft³: one yard exactly, in any arithmetic.
	res := calctest.Run(t, Calculator, with("runs=10 ft | 8 ft", "core=4.05 in", "step-yd=0.25", "truck-yd=1")...)
	calctest.Near(t, "one yard stays one yard", calc.From(res.Out.Num("order-yd"), "yd³"), 1, 1e-9)
	calctest.Near(t, "one load", res.Out.Num("loads"), 1, 0)
	res = calctest.Run(
		t,
		Calculator,
		with("runs=10 m | 2.5 m", "core=200 mm", "sold-in=m3", "step-m=0.5", "truck-m=8")...)
	calctest.Near(t, "five metres", res.Out.Num("order-m"), 5, 1e-9)
	res = calctest.Run(t, Calculator, with("runs=10 m | 2.5 m", "core=201 mm", "sold-in=m3")...)
	calctest.Near(t, "a little more is the next step", res.Out.Num("order-m"), 5.5, 1e-9)
}

func TestRefusals(t *testing.T) {
	for _, c := range []struct {
		inputs   []string
		key      calc.Text
		at       string
		wantRead bool
	}{
		{with("runs="), "There is no wall yet. Add a row of straight walls or a curved wall.", "runs", false},
		{[]string{"runs=2 ft | 8 ft", "openings=", "block-outs="}, "The corners take off more than the walls hold. " +
			"Check lengths, corners and core.", "runs", false},
		{with("runs=10 ft | 8 ft", "openings=3 ft | 9 ft"), "This is taller than the tallest wall, {limit}.",
			"openings.1.height", false},
		{with("runs=10 ft | 8 ft", "openings=1 ft | 1 ft; 11 ft | 3 ft"), "This is wider than the longest wall, " +
			"{limit}.", "openings.2.width", false},
		{with("runs=10 ft | 8 ft", "openings=10 ft | 8 ft"), "Openings and block-outs are bigger than the walls. " +
			"Check sizes and counts.", "openings", false},
		{with("runs=10 ft | 8 ft", "openings=5 ft | 8 ft | 3"), "Openings and block-outs are bigger than the walls. " +
			"Check sizes and counts.", "openings", false},
		{with("runs=10 ft | 8 ft", "core=6 in", "block-outs=1 ft | 1 ft | 7 in"),
			"This is deeper than the core, {limit}. " +
				"Enter it as an opening.", "block-outs.1.depth", false},
		{with("runs=10 ft | 8 ft", "curve=yes", "curve-radius=6 in"), "The core is thicker than this radius allows. " +
			"The radius at the outside must be over {limit}.", "curve-radius", false},
		{with("runs=10 ft | 8 ft", "core=1 in"), "{label} must be at least {limit}. {why}", "core", true},
		{with("runs=10 ft | 8 ft", "waste=-1"), "{label} must be at least {limit}. {why}", "waste", true},
		{with("runs=10 ft | 0"), "{label} must be more than {limit}. {why}", "runs.1.height", true},
		{with("runs=10 ft | 8 ft | 1.5"), "{label} must be a whole number.", "runs.1.count", true},
	} {
		res := calctest.Try(Calculator, c.inputs...)
		n, ok := calctest.NoteOf(res, c.key)
		if !ok || n.At.String() != c.at || n.Level != calc.LevelRefusal || (res.State == calc.Bad) != c.wantRead {
			t.Errorf("%v: %v %v, want %s at %s", c.inputs, res.State, res.Notes, c.key, c.at)
		}
		if res.State != calc.Bad && res.Out.Has("order-yd") {
			t.Errorf("%v: a refused result has outputs", c.inputs)
		}
	}
}

func TestNotes(t *testing.T) {
	wall := []string{"runs=133' 4\" | 8 ft", "core=8 in", "waste=5"} // 26.34 yd³ net, 28 with waste and step
	for _, c := range []struct {
		more string
		key  calc.Text
		want bool
	}{
		{"order=28", "Your order is {typed}. The walls take that number in the other unit: {right}. Which unit did " +
			"you mean?", false},
		{"order=28", "Your order is {typed}, this comes to {right}. They differ by more than 10 %. Which unit did " +
			"you mean?", false},
		{"order=21.4", "Your order is {typed}. The walls take that number in the other unit: {right}. Which unit did " +
			"you mean?", true},
		{"order=36.6; order-unit=m3", "Your order is {typed}, this comes to {right}. They differ by more than 10 %. " +
			"Which unit did you mean?", true},
		{"order=28; order-unit=m3", "Your order is {typed}. The walls take that number in the other unit: {right}. " +
			"Which unit did you mean?", true},
		{"order=50", "Your order is {typed}, this comes to {right}. They differ by more than 10 %. Which unit did " +
			"you mean?", true},
		{"order=27", "Your order of {typed} is less than the volume with waste, {need}.", true},
		{"order=27.9", "Your order of {typed} is less than the volume with waste, {need}.", false},
		{"truck-yd=9", "The last load is small: {load}. Ask the plant, or even out the loads.", true},
		{"truck-yd=10", "The last load is small: {load}. Ask the plant, or even out the loads.", false},
		{"measured=outside; outside-corners=5", "Outside less inside corners is {corners}. A closed plan has 4. Is " +
			"this wall open at the ends?", true},
		{"measured=outside; outside-corners=6; inside-corners=2", "Outside less inside corners is {corners}. A " +
			"closed plan has 4. Is this wall open at the ends?", false},
		{"curve=yes; curve-by=chord; curve-rise=7 ft", "The rise is more than half the chord, so the curve is over a " +
			"half circle. Is that right?", true},
	} {
		res := calctest.Run(t, Calculator, merge(with(wall...), strings.Split(c.more, "; "))...)
		if _, got := calctest.NoteOf(res, c.key); got != c.want {
			t.Errorf("%s: note %s is %v, want %v; notes %v", c.more, c.key, got, c.want, res.Notes)
		}
	}
	res := calctest.Run(t, Calculator, "runs=40 ft | 8 ft; 40 ft | 9 ft")
	if n, ok := calctest.NoteOf(res, "Heights differ. The corners were taken at {height}, so the order does not run "+
		"short."); !ok ||
		n.Slots[0].SI() != calc.SI(8, "ft") {
		t.Error("differing heights are not told, or at the wrong height")
	}
}

// merge lets later inputs replace earlier ones of the same name.
func merge(first, second []string) []string {
	var out []string
	for _, a := range first {
		name, _, _ := strings.Cut(a, "=")
		keep := true
		for _, b := range second {
			keep = keep && !strings.HasPrefix(b, name+"=")
		}
		if keep {
			out = append(out, a)
		}
	}
	return append(out, second...)
}

// If corners have different heights, the order is not short for any distribution
// of the corners.
func TestMixedHeightsNeverShort(t *testing.T) {
	for _, side := range []string{"outside", "inside"} {
		res := calctest.Run(t, Calculator, "measured="+side, "runs=40 ft | 8 ft; 40 ft | 10 ft", "core=8 in",
			"openings=", "block-outs=")
		got := calc.From(res.Out.Num("walls-yd"), "ft³")
		sign := 1.0
		if side == "inside" {
			sign = -1
		}
		for low := range 5 { // low of the four corners are 8 ft high
			th := 8.0 / 12
			exact := th * (40*8 + 40*10 - sign*th*(float64(low)*8+float64(4-low)*10))
			if got < exact-1e-9 {
				t.Errorf("%s: %v ft³ is short of %v with %d low corners", side, got, exact, low)
			}
		}
	}
}

// Any inputs within their limits give a finite result or a refusal with a
// reason, and a drawing inside its frame.
func TestAnyInput(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 8))
	counts := map[calc.State]int{}
	for range 4000 {
		in := sample(rng, Calculator.In)
		res := calc.Run(Calculator, in)
		counts[res.State]++
		if _, bad := calctest.NoteOf(res, calc.NoNumber); bad {
			t.Fatalf("no number for %v", calc.Locale{}.Entries(in))
		}
		if res.State == calc.OK {
			checkOut(t, res.Out)
		}
		for _, mark := range []quantity.Style{{}, {System: quantity.Metric, Mark: quantity.Comma}} {
			checkDrawing(t, Calculator.Draw(calc.Locale{Style: mark}, in, res), res.State)
		}
	}
	if counts[calc.OK] < 400 || counts[calc.Refused] < 400 {
		t.Errorf("the samples are one-sided: %v", counts)
	}
}

func checkOut(t *testing.T, out calc.Case) {
	t.Helper()
	walls, holes, net, need, order := out.Num(
		"walls-m",
	), out.Num(
		"holes-m",
	), out.Num(
		"net-m",
	), out.Num(
		"with-waste-m",
	), out.Num(
		"order-m",
	)
	if !(holes >= 0 && net > 0 && need >= net && order >= need*(1-1e-8) && math.Abs(walls-holes-net) <= 1e-9*walls) {
		t.Fatalf("walls %v, holes %v, net %v, need %v, order %v", walls, holes, net, need, order)
	}
	if n := out.Num("loads"); n < 1 || n != math.Trunc(n) || out.Num("length") <= 0 {
		t.Fatalf("loads %v, length %v", n, out.Num("length"))
	}
}

// sample fills every field with a value within its limits, spread evenly on a
// logarithmic scale so that both small and large values occur.
func sample(rng *rand.Rand, fields []calc.Field) calc.Case {
	c := calc.NewCase(fields)
	for _, f := range fields {
		switch f.Kind {
		case calc.Number:
			if !f.Optional || rng.IntN(2) == 0 {
				c = c.With(f.ID, calc.Num(between(rng, f)))
			}
		case calc.Choice:
			c = c.With(f.ID, calc.ChoiceOf(f.Options[rng.IntN(len(f.Options))].ID))
		case calc.Flag:
			c = c.With(f.ID, calc.Bool(rng.IntN(2) == 0))
		case calc.FreeText:
			c = c.With(f.ID, calc.TextOf(strings.Repeat("W", rng.IntN(9))))
		case calc.Rows:
			var rows []calc.Case
			for range rng.IntN(4) {
				rows = append(rows, sample(rng, f.Cols))
			}
			c = c.With(f.ID, calc.RowsOf(rows...))
		}
	}
	return c
}

func between(rng *rand.Rand, f calc.Field) float64 {
	least, most, _ := f.Limits()
	low, high := least.SI, most.SI
	from := math.Max(low, high*1e-4)
	x := from * math.Pow(high/from, rng.Float64())
	if f.Whole {
		x = math.Max(low, math.Round(x))
	}
	return math.Min(x, high)
}

// checkDrawing parses a drawing as XML and checks that every coordinate, and the
// estimated width of every text, is inside the frame.
func checkDrawing(t *testing.T, d figure.Drawing, state calc.State) {
	t.Helper()
	if state != calc.OK {
		if !d.Empty() {
			t.Fatal("a refused result was drawn")
		}
		return
	}
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
		if s, ok := tok.(xml.StartElement); ok {
			checkElement(t, d, s)
		}
	}
}

func checkElement(t *testing.T, d figure.Drawing, s xml.StartElement) {
	t.Helper()
	at := map[string]float64{}
	for _, a := range s.Attr {
		if x, err := strconv.ParseFloat(a.Value, 64); err == nil {
			at[a.Name.Local] = x
		}
	}
	right, foot := at["x"]+at["width"], at["y"]+at["height"]
	for _, x := range []float64{at["x"], at["x1"], at["x2"], right} {
		if s.Name.Local != "svg" && (x < -0.01 || x > d.Width+0.01) {
			t.Fatalf("%s is outside the frame: %v", s.Name.Local, at)
		}
	}
	for _, y := range []float64{at["y"], at["y1"], at["y2"], foot} {
		if s.Name.Local != "svg" && (y < -0.01 || y > d.Height+0.01) {
			t.Fatalf("%s is outside the frame: %v, height %v", s.Name.Local, at, d.Height)
		}
	}
	if at["width"] < 0 || at["height"] < 0 {
		t.Fatalf("%s has a negative size: %v", s.Name.Local, at)
	}
}

// Every cell of the printed tables is length × core × height.
func TestTables(t *testing.T) {
	for _, table := range Calculator.Tables {
		for _, sys := range []quantity.System{quantity.US, quantity.Metric} {
			down, across := table.Down.US, table.Across.US
			if sys == quantity.Metric {
				down, across = table.Down.Metric, table.Across.Metric
			}
			for _, a := range down {
				for _, b := range across {
					entries := append(append([]calc.Entry(nil), table.Set...),
						calc.Entry{Path: table.Down.Path, Text: a}, calc.Entry{Path: table.Across.Path, Text: b})
					in, notes := calc.Read(calctest.WithRules(Calculator), entries, quantity.Style{System: sys})
					if len(notes) > 0 {
						t.Fatal(notes)
					}
					run := in.Rows("runs")[0]
					want := in.Num("core") * run.Num("height") * run.Num("length")
					calctest.Near(t, table.ID+" "+a+" "+b, calc.Run(Calculator, in).Out.Num(table.Out), want, 1e-12)
				}
			}
		}
	}
}
