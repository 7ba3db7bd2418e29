package calctest

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
)

// anywhereRounds is the number of random cases for each calculator.
const anywhereRounds = 400

// anywhere runs a calculator on random inputs within their limits. It must give
// a result or refuse, the slots of every text must be filled, and its drawing
// must be inside the frame.
func anywhere(t *testing.T, c *calc.Calculator) {
	t.Helper()
	rnd := rand.New(rand.NewPCG(3, 4))
	answered := 0
	for i := range anywhereRounds {
		style := styles[i%len(styles)]
		v := calc.Locale{Style: style}
		in := random(rnd, calc.NewCase(c.In))
		res := calc.Run(c, in)
		for _, n := range res.Notes {
			if text := v.Say(n.Text, n.Slots...); strings.ContainsAny(text, "{}") {
				t.Fatalf("%s: a slot is not filled in %q", c.ID, text)
			}
		}
		if res.State == calc.Refused && len(res.Notes) == 0 {
			t.Fatalf("%s refuses without a reason: %v", c.ID, v.Entries(in))
		}
		for _, s := range res.Steps {
			v.Work(s)
		}
		if res.State == calc.OK {
			answered++
		}
		if c.Draw == nil {
			continue
		}
		d := c.Draw(v, in, res)
		if text := d.Title + d.Desc; strings.ContainsAny(text, "{}") {
			t.Fatalf("%s: a slot is not filled in the drawing: %q", c.ID, text)
		}
		if !insideFrame(t, c, d.Nodes, d) {
			t.Fatalf("%s draws outside its frame for %v", c.ID, v.Entries(in))
		}
	}
	if answered < anywhereRounds/20 {
		t.Errorf("%s gives a result for only %d of %d random cases", c.ID, answered, anywhereRounds)
	}
}

// random returns the case with about half of its fields changed to random values
// within their limits.
func random(rnd *rand.Rand, in calc.Case) calc.Case {
	for _, f := range in.Fields() {
		if rnd.IntN(2) == 0 {
			continue
		}
		switch f.Kind {
		case calc.Number:
			if f.Optional && rnd.IntN(4) == 0 {
				in = in.With(f.ID, calc.Value{})
			} else {
				in = in.With(f.ID, calc.Num(number(rnd, f)))
			}
		case calc.Choice:
			in = in.With(f.ID, calc.ChoiceOf(f.Options[rnd.IntN(len(f.Options))].ID))
		case calc.Flag:
			in = in.With(f.ID, calc.Bool(rnd.IntN(2) == 0))
		case calc.Day:
			in = in.With(f.ID, calc.Num(float64(20000+rnd.IntN(2000))))
		case calc.Clock:
			in = in.With(f.ID, calc.Num(float64(60*rnd.IntN(24*60))))
		case calc.Rows:
			var rows []calc.Case
			for range f.MinRows + rnd.IntN(min(f.MaxRows-f.MinRows, 6)+1) {
				rows = append(rows, filled(rnd, f))
			}
			in = in.With(f.ID, calc.RowsOf(rows...))
		}
	}
	return in
}

// filled returns a row with every number set, as Read requires.
func filled(rnd *rand.Rand, f calc.Field) calc.Case {
	row := random(rnd, calc.NewCase(f.Cols))
	for _, col := range f.Cols {
		if row.Has(col.ID) || col.Optional {
			continue
		}
		switch col.Kind {
		case calc.Number:
			row = row.With(col.ID, calc.Num(number(rnd, col)))
		case calc.Choice:
			row = row.With(col.ID, calc.ChoiceOf(col.Options[0].ID))
		case calc.Day:
			row = row.With(col.ID, calc.Num(20000))
		case calc.Clock:
			row = row.With(col.ID, calc.Num(7*3600))
		}
	}
	return row
}

// number returns a random value within the limits, in SI, sometimes one of them.
func number(rnd *rand.Rand, f calc.Field) float64 {
	least, most, _ := f.Limits()
	low, high := least.SI, most.SI
	x := low + rnd.Float64()*(high-low)
	switch rnd.IntN(8) {
	case 0:
		if !least.Open {
			x = low
		}
	case 1:
		if !most.Open {
			x = high
		}
	case 2, 3, 4: // low values are more likely than the largest allowed
		x = low + rnd.Float64()*rnd.Float64()*rnd.Float64()*(high-low)
	}
	if f.Whole {
		x = math.Max(math.Ceil(low), math.Floor(x))
	}
	return x
}

// insideFrame reports whether the coordinates of shapes, and of texts without the
// width of their letters, are inside the drawing d. It reports the first that is
// not as an error of the test.
func insideFrame(t *testing.T, c *calc.Calculator, nodes []figure.Node, d figure.Drawing) bool {
	for _, n := range nodes {
		for _, a := range n.Attrs {
			var limit float64
			switch a.Name {
			case "x", "x1", "x2", "cx":
				limit = d.Width
			case "y", "y1", "y2", "cy":
				limit = d.Height
			case "points":
				if !pointsInside(a.Value, d) {
					t.Errorf("%s: points %s of a %s", c.ID, a.Value, n.Tag)
					return false
				}
				continue
			case "width", "height", "r":
				if x, err := strconv.ParseFloat(a.Value, 64); err != nil || !(x >= 0) {
					t.Errorf("%s: %s of a %s is %s", c.ID, a.Name, n.Tag, a.Value)
					return false
				}
				continue
			default:
				continue
			}
			if x, err := strconv.ParseFloat(a.Value, 64); err != nil || !(x >= 0 && x <= limit) {
				t.Errorf("%s: %s of a %s is %s, outside 0 to %v", c.ID, a.Name, n.Tag, a.Value, limit)
				return false
			}
		}
		if !insideFrame(t, c, n.Kids, d) {
			return false
		}
	}
	return true
}

// pointsInside reports whether all points of a points attribute are inside the
// drawing; false if one cannot be read.
func pointsInside(list string, d figure.Drawing) bool {
	for _, p := range strings.Fields(list) {
		a, b, ok := strings.Cut(p, ",")
		x, err1 := strconv.ParseFloat(a, 64)
		y, err2 := strconv.ParseFloat(b, 64)
		if !ok || err1 != nil || err2 != nil || !(x >= 0 && x <= d.Width && y >= 0 && y <= d.Height) {
			return false
		}
	}
	return true
}
