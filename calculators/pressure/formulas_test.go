package pressure

import (
	"math"
	"math/rand/v2"
	"testing"
)

// The factors of kilopascals, metresPerHour and celsius are exact: NIST SP 811
// (2008), appendix B.
func kilopascals(p PSF) float64 { return float64(p) * 4.4482216152605 / (0.3048 * 0.3048) / 1000 }

func metresPerHour(r FtPerHour) float64 { return float64(r) * 0.3048 }

func celsius(t Fahrenheit) float64 { return (float64(t) - 32) / 1.8 }

// The metric editions print the equations with other constants
// (7.2, 785, 1156, 244 and 17.8, from memory). They are the US constants
// rounded to at most three digits, so both agree within a hundredth.
func TestMetricForm(t *testing.T) {
	for r := FtPerHour(0.5); r <= 15; r += 0.5 {
		for temp := Fahrenheit(40); temp <= 90; temp += 5 {
			warm := celsius(temp) + 17.8
			slow := 7.2 + 785*metresPerHour(r)/warm
			fast := 7.2 + 1156/warm + 244*metresPerHour(r)/warm
			if got := kilopascals(WallSlow(1, 1, r, temp)); math.Abs(got-slow) > 0.01*slow {
				t.Errorf("slow, %v ft/h, %v °F: %v kPa, metric form %v", r, temp, got, slow)
			}
			if got := kilopascals(WallFast(1, 1, r, temp)); math.Abs(got-fast) > 0.01*fast {
				t.Errorf("fast, %v ft/h, %v °F: %v kPa, metric form %v", r, temp, got, fast)
			}
		}
	}
}

// At 7 ft/h the equations meet at every temperature: 43400 + 7·2800 = 7·9000.
func TestEquationsMeetAtSevenFeet(t *testing.T) {
	for temp := Fahrenheit(32); temp <= 120; temp++ {
		slow, fast := WallSlow(1, 1.2, SlowRise, temp), WallFast(1, 1.2, SlowRise, temp)
		if math.Abs(float64(slow-fast)) > 1e-9 {
			t.Errorf("%v °F: slow %v, fast %v", temp, slow, fast)
		}
	}
}

// Without rise, and as the temperature grows, the slow equation tends to 150 psf.
func TestEquationsAtTheirEnds(t *testing.T) {
	if p := WallSlow(1, 1, 0, 70); p != 150 {
		t.Errorf("no rise: %v psf", p)
	}
	if p := WallSlow(1, 1, 7, 1e12); math.Abs(float64(p)-150) > 1e-6 {
		t.Errorf("very warm: %v psf", p)
	}
	if p := WallFast(1, 1, 0, 70); math.Abs(float64(p)-770) > 1e-9 { // 150 + 43400/70
		t.Errorf("fast equation, no rise: %v psf", p)
	}
}

func TestInverses(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 2))
	for range 2000 {
		r := FtPerHour(15 * rnd.Float64())
		w, h := PCF(85+115*rnd.Float64()), Feet(40*rnd.Float64())
		if back := FluidDepth(FluidHead(w, h), w); math.Abs(float64(back-h)) > 1e-9 {
			t.Errorf("head: %v ft inverts to %v", h, back)
		}
		length, core := 1+500*rnd.Float64(), 0.3+rnd.Float64()
		if back := Rise(Flow(float64(r), length, core), length, core); math.Abs(back-float64(r)) > 1e-9 {
			t.Errorf("flow: %v inverts to %v", r, back)
		}
	}
}

// Both coefficients multiply the whole pressure.
func TestCoefficientsScale(t *testing.T) {
	one, double := WallSlow(1, 1, 4, 70), WallSlow(2, 1.5, 4, 70)
	if math.Abs(float64(double-3*one)) > 1e-9 {
		t.Errorf("slow: %v is not three times %v", double, one)
	}
	one, double = WallFast(1, 1, 9, 70), WallFast(2, 1.5, 9, 70)
	if math.Abs(float64(double-3*one)) > 1e-9 {
		t.Errorf("fast: %v is not three times %v", double, one)
	}
}

// The table of ACI 347R-14, from memory.
func TestChemistry(t *testing.T) {
	for _, c := range []struct {
		cement   Cement
		retarded bool
		want     float64
	}{
		{Plain, false, 1.0}, {Plain, true, 1.2}, {Blend, false, 1.2},
		{Blend, true, 1.4}, {Rich, false, 1.4}, {Rich, true, 1.5}, {"unheard of", true, 1.5},
	} {
		if got := ChemistryCoefficient(c.cement, c.retarded); got != c.want {
			t.Errorf("%s, retarded %v: %v, want %v", c.cement, c.retarded, got, c.want)
		}
	}
}

// The table of ACI 347R-14, from memory, with its steps at 140 and 150.
func TestWeightCoefficient(t *testing.T) {
	for _, c := range []struct {
		w    PCF
		want float64
	}{
		{85, 0.8}, {87, 0.8}, {100, 0.5 * (1 + 100.0/145)}, {139.99, 0.5 * (1 + 139.99/145)},
		{140, 1}, {145, 1}, {150, 1}, {150 * (1 + 1e-12), 1}, {150.01, 150.01 / 145}, {200, 200.0 / 145},
	} {
		if got := WeightCoefficient(c.w); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("%v lb/ft³: %v, want %v", c.w, got, c.want)
		}
	}
	for w := PCF(85); w < 200; w += 0.5 {
		if WeightCoefficient(w+0.5) < WeightCoefficient(w) {
			t.Errorf("the coefficient falls between %v and %v lb/ft³", w, w+0.5)
		}
	}
}

func TestBounded(t *testing.T) {
	for _, c := range []struct{ equation, floor, head, want PSF }{
		{700, 600, 1200, 700}, {400, 600, 1200, 600}, {1500, 600, 1200, 1200}, {400, 600, 450, 450},
	} {
		if got := Bounded(c.equation, c.floor, c.head); got != c.want {
			t.Errorf("%+v gave %v", c, got)
		}
	}
}
