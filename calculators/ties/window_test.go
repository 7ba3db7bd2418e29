package ties

import (
	"math"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The span equations of form design, as the University of Florida teaches
// them (Week 7, Wall Forms), for three or more spans: L = 10.95·√(F·S/w) and
// L = 1.69·∛(E·I/w).
func TestSpanEquations(t *testing.T) {
	const b, d, q, f, e = 9.25, 1.5, 500.0, 800.0, 1.2e6
	s, i := b*d*d/6, b*d*d*d/12
	if got, want := BendSpan(10, f, b, d, q), 10.95*math.Sqrt(f*s/q); math.Abs(got-want) > 0.001*want {
		t.Errorf("stress: %v, %v", got, want)
	}
	if got, want := SagSpan(145, e, b, d, q, 360), 1.69*math.Cbrt(e*i/q); math.Abs(got-want) > 0.001*want {
		t.Errorf("bending: %v, %v", got, want)
	}
}

// A simple beam bends by 5·q·L⁴/(384·E·I) and carries q·L²/8: put back in,
// both spans give the stress and the bend that were asked.
func TestSpansTurnBeamTheoryRound(t *testing.T) {
	const b, d, q, f, e, r = 9.25, 1.5, 400.0, 800.0, 1.2e6, 360.0
	s, i, line := b*d*d/6, b*d*d*d/12, q/12 // lbf/in
	l := BendSpan(8, f, b, d, q)
	if stress := line * l * l / 8 / s; !calctest.Equal(stress, f) {
		t.Errorf("stress %v", stress)
	}
	l = SagSpan(76.8, e, b, d, q, r)
	if bend := 5 * line * l * l * l * l / (384 * e * i); !calctest.Equal(bend, l/r) {
		t.Errorf("bend %v of %v", bend, l)
	}
}

func row(res calc.Result, side int) calc.Case { return res.Out.Rows("sides")[side] }

func TestFormPressureCapsJambsAndSillOnly(t *testing.T) {
	free := calctest.Run(t, WindowSupports, "cover=10'", "height=48")
	capped := calctest.Run(t, WindowSupports, "cover=10'", "height=48", "form-pressure=700")
	if got := calc.From(free.Out.Num("sill"), "psf"); !calctest.Equal(got, 2100) {
		t.Errorf("fluid head at the sill %v", got)
	}
	if got := calc.From(capped.Out.Num("sill"), "psf"); !calctest.Equal(got, 700) {
		t.Errorf("capped at %v", got)
	}
	if head := calc.From(row(capped, 0).Num("pressure"), "psf"); !calctest.Equal(head, 1500) {
		t.Errorf("the head carries %v", head)
	}
	if !calctest.Noted(capped, windowCapped) || calctest.Noted(capped, windowFluid) || !calctest.Noted(free, windowFluid) || calctest.Noted(free, windowCapped) {
		t.Error("what counts is not told")
	}
}

// n supports make n + 1 spans, none wider than allowed; one fewer would.
func TestSupportsAreEnoughAndNoMore(t *testing.T) {
	for _, beam := range []string{spanSimple, spanThrough} {
		for _, width := range []string{"12", "36", "72", "120", "200"} {
			in, res := calctest.RunCase(t, WindowSupports, "width="+width, "beam="+beam)
			for i, span := range []float64{in.Num("width"), in.Num("height"), in.Num("width")} {
				n, l := row(res, i).Num("supports"), row(res, i).Num("spacing")
				if span/(n+1) > l*(1+1e-9) || n > 0 && span/n <= l*(1-1e-9) {
					t.Errorf("%s %s side %d: %v supports at %v over %v m", beam, width, i, n, l, span)
				}
			}
		}
	}
}

// A board that runs through spans farther only where three spans fit.
func TestContinuousBoard(t *testing.T) {
	simple := calctest.Run(t, WindowSupports, "width=150", "rating=")
	through := calctest.Run(t, WindowSupports, "width=150", "rating=", "beam=through")
	if !(row(through, 2).Num("spacing") > row(simple, 2).Num("spacing")) {
		t.Error("a board over many spans gains nothing")
	}
	short := calctest.Run(t, WindowSupports, "width=30", "rating=", "beam=through")
	alike := calctest.Run(t, WindowSupports, "width=30", "rating=")
	if row(short, 2).Num("spacing") != row(alike, 2).Num("spacing") || !calctest.Noted(short, windowShort) {
		t.Error("a board over two spans counts as more")
	}
	if calctest.Noted(alike, windowShort) {
		t.Error("a simple beam is told to be short")
	}
}

func TestWindowNotes(t *testing.T) {
	for _, c := range []struct {
		typed []string
		note  calc.Text
		want  bool
	}{
		{nil, windowRated, false},
		{[]string{"rating="}, windowRated, true},
		{nil, windowNone, false},
		{[]string{"width=10"}, windowNone, true},
		{[]string{"height=12", "width=60"}, windowNone, true},
		{[]string{"cover=4'", "width=100", "height=80"}, windowNone, false},
		{[]string{"rating=100"}, windowTight, true},
		{nil, windowTight, false},
	} {
		res := calctest.Run(t, WindowSupports, c.typed...)
		if calctest.Noted(res, c.note) != c.want {
			t.Errorf("%v: %s is %v", c.typed, c.note.EN(), calctest.Noted(res, c.note))
		}
	}
}

// A weaker support stands closer, and decides.
func TestSupportDecides(t *testing.T) {
	res := calctest.Run(t, WindowSupports, "rating=500")
	if row(res, 2).Choice("governs") != bySupport {
		t.Errorf("decided by %s", row(res, 2).Choice("governs"))
	}
	want := 500 / (calc.From(row(res, 2).Num("load"), "lbf/ft"))
	if got := calc.From(row(res, 2).Num("spacing"), "ft"); !calctest.Equal(got, want) {
		t.Errorf("%v ft, want %v", got, want)
	}
}
