package barlaps

import (
	"math"
	"strconv"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/quantity"
	"coursebook/calculators/steel"
)

// The shown development lengths are those printed in the table of CSA A23.3,
// rounded up to 10 mm (public repository of engineers' general values; the
// two misprints of that table are left out).
func TestShownLengthsOfA23(t *testing.T) {
	metric := quantity.Style{System: quantity.Metric}
	for _, c := range []struct{ bar, fc, want string }{
		{"10m", "20 MPa", "370 mm"}, {"15m", "20 MPa", "520 mm"}, {"25m", "20 MPa", "1020 mm"},
		{"30m", "20 MPa", "1210 mm"},
		{"15m", "25 MPa", "470 mm"}, {"20m", "25 MPa", "570 mm"}, {"30m", "25 MPa", "1080 mm"},
		{"10m", "30 MPa", "300 mm"}, {"30m", "30 MPa", "990 mm"},
	} {
		res := calctest.Run(t, Calculator, "bar="+c.bar, "fy=400 MPa", "fc="+c.fc)
		row := res.Out.Rows("laps")[2]
		if got := quantity.Format(row.Num("development"), length, metric); row.Choice("rule") != ruleCSA ||
			got != c.want {
			t.Errorf("%s at %s: %s, printed %s", c.bar, c.fc, got, c.want)
		}
	}
}

// row returns the row of a rule.
func row(t *testing.T, res calc.Result, rule string) calc.Case {
	t.Helper()
	for _, r := range res.Out.Rows("laps") {
		if r.Choice("rule") == rule {
			return r
		}
	}
	t.Fatalf("no row %s", rule)
	return calc.Case{}
}

// The factors multiply as in the codes: position times coating is capped at
// 1.7, lightweight concrete divides by 0.75 (ACI) or multiplies by 1.3 (CSA),
// other cases of cover are half as long again (ACI) and a third longer (CSA).
func TestFactors(t *testing.T) {
	base := calctest.Run(t, Calculator, "bar=6")
	for _, c := range []struct {
		typed    []string
		aci, csa float64
	}{
		{[]string{"top=yes"}, 1.3, 1.3},
		{[]string{"coating=epoxy"}, 1.2, 1.2},
		{[]string{"coating=epoxy-close"}, 1.5, 1.5},
		{[]string{"top=yes", "coating=epoxy"}, 1.56, 1.56},
		{[]string{"top=yes", "coating=epoxy-close"}, 1.7, 1.7},
		{[]string{"light=yes"}, 1 / 0.75, 1.3},
		{[]string{"fc=12000 psi"}, math.Sqrt(3000) / 100, math.Sqrt(calc.From(calc.SI(3000, "psi"), "MPa")) / 8},
		{[]string{"fy=40000"}, 2.0 / 3, 2.0 / 3},
		{[]string{"fy=80000"}, 1.15 * 4 / 3, 4.0 / 3},
		{[]string{"fy=100000"}, 1.3 * 5 / 3, 5.0 / 3},
	} {
		res := calctest.Run(t, Calculator, append([]string{"bar=6"}, c.typed...)...)
		for rule, want := range map[string]float64{ruleACI: c.aci, ruleACIOther: c.aci, ruleCSA: c.csa,
			ruleCSAOther: c.csa} {
			got := row(t, res, rule).Num("development") / row(t, base, rule).Num("development")
			calctest.Near(t, rule+" with "+c.typed[0], got, want, 1e-9)
		}
	}
	calctest.Near(
		t,
		"other cases, ACI",
		row(t, base, ruleACIOther).Num("development")/row(t, base, ruleACI).Num("development"),
		1.5,
		1e-9,
	)
	calctest.Near(
		t,
		"other cases, CSA",
		row(t, base, ruleCSAOther).Num("development")/row(t, base, ruleCSA).Num("development"),
		4.0/3,
		1e-9,
	)
}

// Between #6 and #7 the constant of ACI steps from 25 to 20; laps of either
// class are never below the least length, and Class B is 1.3 times Class A.
func TestClassesAndSteps(t *testing.T) {
	six, seven := calctest.Run(t, Calculator, "bar=6"), calctest.Run(t, Calculator, "bar=7")
	calctest.Near(
		t,
		"the step at #7",
		row(t, seven, ruleACI).Num("development")/row(t, six, ruleACI).Num("development"),
		7.0/6*25/20,
		1e-9,
	)
	for _, b := range steel.Bars {
		res := calctest.Run(t, Calculator, "bar="+b.ID)
		for _, r := range res.Out.Rows("laps")[:4] {
			if b.Diameter > largestBar {
				if r.Has("lap-a") || r.Has("lap-b") {
					t.Errorf("%s has a lap", b.ID)
				}
				continue
			}
			a, lap := r.Num("lap-a"), r.Num("lap-b")
			if a < 300*steel.Mm*(1-calc.Slack) || lap < a || lap > 1.3*a*(1+calc.Slack) {
				t.Errorf("%s %s: laps %v and %v", b.ID, r.Choice("rule"), a, lap)
			}
		}
	}
}

// No row is singled out: every rule for the bar has its row, always in the same
// order.
func TestNoRowIsPicked(t *testing.T) {
	for bar, want := range map[string]int{"3": 4, "4": 5, "6": 5, "7": 4, "10m": 5, "15m": 5, "20m": 4} {
		if got := len(calctest.Run(t, Calculator, "bar="+bar).Out.Rows("laps")); got != want {
			t.Errorf("%s: %d rows, want %d", bar, got, want)
		}
	}
	if got := len(calctest.Run(t, Calculator, "bar=10M", "fy=500 MPa").Out.Rows("laps")); got != 4 {
		t.Errorf("a table for 400 MPa has a row at 500 MPa: %d rows", got)
	}
	for _, f := range Calculator.Out {
		if f.Lead && f.ID != "least" && f.ID != "most" && f.ID != "verdict" {
			t.Errorf("%s singles out a rule", f.ID)
		}
	}
	// The leading outputs are the least and the greatest lap of the rows.
	out := calctest.Run(t, Calculator, "bar=6").Out
	for _, row := range out.Rows("laps") {
		if lap := row.Num("lap-b"); lap < out.Num("least") || lap > out.Num("most") {
			t.Errorf("%v lies outside the span shown", lap)
		}
	}
}

func TestNotes(t *testing.T) {
	calctest.CheckNotes(t, Calculator, []calctest.NoteCase{
		{Note: noteShort, Want: true},
		{Inputs: "drawn=60 in", Note: noteShort, Want: false},
		{Inputs: "drawn=", Note: noteShort, Want: false},
		{Inputs: "bar=14", Note: noteNo, Want: true},
		{Inputs: "bar=11", Note: noteNo, Want: false},
		{Inputs: "bar=35M", Note: noteNo, Want: false},
		{Inputs: "bar=3", Note: noteIRC, Want: true},
		{Inputs: "fy=61000", Note: noteIRC, Want: true},
		{Note: noteIRC, Want: false},
		{Inputs: "top=yes", Note: noteFlat, Want: true},
		{Inputs: "light=yes", Note: noteFlat, Want: true},
		{Note: noteFlat, Want: false},
		{Inputs: "fy=75000", Note: noteGrade, Want: true},
		{Note: noteGrade, Want: false},
		{Inputs: "fc=65 MPa", Note: noteCap, Want: true},
		{Inputs: "fc=64 MPa", Note: noteCap, Want: false},
	})
}

// A lap on the drawing shorter than every row is a stop, one shorter than some rows is
// a question, and the verdict agrees with the rows.
func TestDrawnLap(t *testing.T) {
	for _, b := range steel.Bars {
		for drawn := 6; drawn <= 120; drawn += 6 {
			res := calctest.Run(t, Calculator, "bar="+b.ID, "drawn="+strconv.Itoa(drawn)+" in")
			rows, shorter := 0, 0
			for _, r := range res.Out.Rows("laps") {
				if r.Has("drawing") {
					rows++
				}
				if r.Choice("drawing") == "shorter" {
					shorter++
				}
			}
			want := lapAsk
			switch {
			case rows == 0:
				want = ""
			case shorter == rows:
				want = lapStop
			case shorter == 0:
				want = lapLong
			}
			if got := res.Out.Choice("verdict"); got != want || calctest.Noted(res, noteStop) != (want == lapStop) ||
				calctest.Noted(res, noteShort) != (want == lapAsk) {
				t.Errorf("%s, %d in. drawn, shorter than %d of %d rows: %q", b.ID, drawn, shorter, rows, got)
			}
		}
	}
	stop := calctest.Run(t, Calculator, "bar=5", "drawn=12 in")
	if stop.Out.Choice("verdict") != lapStop {
		t.Errorf("12 in. on #5: %s", stop.Out.Choice("verdict"))
	}
	for _, n := range stop.Notes {
		if n.Text == noteStop && n.Level != calc.LevelWarning {
			t.Errorf("the stop is a note of level %v", n.Level)
		}
	}
	if calctest.Run(t, Calculator, "drawn=").Out.Has("verdict") {
		t.Error("a verdict without a drawing")
	}
}

// No code gives a lap of #14 and #18, so there is no shortest one.
func TestLargestBarsHaveNoLaps(t *testing.T) {
	for _, bar := range []string{"14", "18"} {
		if out := calctest.Run(t, Calculator, "bar="+bar).Out; out.Has("least") || out.Has("most") {
			t.Errorf("#%s: laps of %v to %v", bar, out.Num("least"), out.Num("most"))
		}
	}
	if out := calctest.Run(t, Calculator, "bar=5").Out; !out.Has("least") || out.Num("least") <= 0 {
		t.Error("#5 has no shortest lap")
	}
}
