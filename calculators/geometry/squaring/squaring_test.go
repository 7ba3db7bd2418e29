package squaring

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/geometry"
)

func TestSquaringWays(t *testing.T) {
	for _, c := range []struct {
		measured, way string
		sign          float64
	}{{"50 ft 1/2 in", "shorter", 1}, {"49 ft 11-1/2 in", "longer", -1}, {"50 ft", "none", 0}} {
		out := calctest.RunNotes(t, Calculator, nil, "measured="+c.measured).Out
		if out.Choice("way") != c.way || out.Num("error")*c.sign < 0 || out.Num("off")*c.sign < 0 {
			t.Errorf("%s: %s, error %v", c.measured, out.Choice("way"), out.Num("error"))
		}
	}
	calctest.RunNotes(t, Calculator, []calc.Text{farOff}, "measured=53 ft")
	calctest.RunNotes(t, Calculator, []calc.Text{small}, "side-a=3 ft", "side-b=2 ft", "measured=")
	calctest.Refused(t, Calculator, "measured", "measured=70 ft")
	calctest.Refused(t, Calculator, "measured", "measured=10 ft")
	if out := calctest.Run(t, Calculator, "measured=").Out; out.Has("shift") || !out.Has("diagonal") {
		t.Error("a corner was judged without a diagonal")
	}
}

// Every triangle shown is 3-4-5 and fits the sides; the next larger does not.
func TestTriplesFit(t *testing.T) {
	rng := rand.New(rand.NewPCG(43, 44))
	in := calc.NewCase(Calculator.In).With("measured", calc.Value{})
	for range 300 {
		a, b := 0.3+30*rng.Float64(), 0.3+30*rng.Float64()
		out := calc.Run(Calculator, in.With("side-a", calc.Num(a)).With("side-b", calc.Num(b))).Out
		for id, step := range map[string]float64{"triples": tripleFoot, "triples-m": tripleMetre} {
			next := 1.0
			if rows := out.Rows(id); len(rows) > 0 {
				three, four, five := rows[0].Num("three"), rows[0].Num("four"), rows[0].Num("five")
				calctest.Near(t, "right angle", math.Hypot(three, four), five, 1e-9)
				if three > math.Min(a, b)+1e-9 || four > math.Max(a, b)+1e-9 {
					t.Fatalf("%v × %v does not fit %v × %v", three, four, a, b)
				}
				next = math.Round(three/step/3) + 1
			}
			if 3*next*step <= math.Min(a, b)-1e-6 && 4*next*step <= math.Max(a, b)-1e-6 {
				t.Fatalf("a larger triangle fits %v × %v", a, b)
			}
		}
	}
}

// Any outline closes if its last run ends at the start, and the gap is as long as
// any addition to that run.
func TestOutlineCloses(t *testing.T) {
	rng := rand.New(rand.NewPCG(45, 46))
	in := calc.NewCase(Calculator.In).With("check", calc.ChoiceOf(checkOutline))
	row := func(run, turn float64) calc.Case {
		side := geometry.LeftHand
		if turn < 0 {
			side = geometry.RightHand
		}
		return calc.Empty(runCols).
			With("run", calc.Num(run)).
			With("turn", calc.Num(math.Abs(turn))).
			With("side", calc.ChoiceOf(side))
	}
	for range 300 {
		var rows []calc.Case
		var x, y, heading float64
		for range 2 + rng.IntN(5) {
			l, turn := 1+9*rng.Float64(), (2*rng.Float64()-1)*3
			x, y = x+l*math.Cos(heading), y+l*math.Sin(heading)
			back := math.Remainder(math.Atan2(-y, -x)-heading, 2*math.Pi)
			rows = append(rows, row(l, turn))
			heading += turn
			if len(rows) == 1 {
				continue
			}
			closing := append(append(append([]calc.Case(nil), rows[:len(rows)-1]...), row(l, back)),
				row(math.Hypot(x, y)+0.25, 0))
			out := calc.Run(Calculator, in.With("runs", calc.RowsOf(closing...))).Out
			calctest.Near(t, "gap", out.Num("gap"), 0.25, 1e-9)
			calctest.Near(t, "bearing", math.Cos(out.Num("bearing")), -x/math.Hypot(x, y), 1e-6)
		}
	}
}

func TestOutlineNotes(t *testing.T) {
	square := "10 m | 90° | left; 10 m | 90° | left; 10 m | 90° | left; "
	calctest.RunNotes(t, Calculator, nil, "check=outline", "runs="+square+"10 m | 90° | left")
	calctest.RunNotes(t, Calculator, nil, "check=outline", "runs="+square+"10.04 m | 90° | left")
	calctest.RunNotes(t, Calculator, []calc.Text{wide}, "check=outline", "runs="+square+"10.05 m | 90° | left")
	calctest.RunNotes(t, Calculator, []calc.Text{turns}, "check=outline", "runs="+square+"10 m | 89.9° | left")
	calctest.RunNotes(t, Calculator, nil, "check=outline", "runs="+square+"10 m | 90.04° | left")
	res := calctest.RunNotes(t, Calculator, []calc.Text{turns}, "check=outline", "runs="+square+"10 m | 90° | right")
	calctest.Near(t, "turned", calc.From(res.Out.Num("turned"), "°"), 180, 1e-9)
	if out := calctest.RunNotes(t, Calculator, nil, "check=outline",
		"runs=10 m | 120°; 10 m | 120°; 10 m | 120°").Out; out.Has(
		"bearing",
	) {
		t.Error("a closed outline has no direction of its gap")
	}
}
