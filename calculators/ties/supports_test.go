package ties

import (
	"math"
	"testing"

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

// A simple beam deflects by 5·q·L⁴/(384·E·I) under a moment of q·L²/8: both spans
// put into beam theory give back the stress and the deflection.
func TestSpansInvertBeamTheory(t *testing.T) {
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
