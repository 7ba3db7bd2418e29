package pressure

import (
	"math"
	"math/rand/v2"
	"testing"
)

func wall(height Feet) Pour {
	return Pour{Height: height, Weight: 150, Cw: 1, Cc: 1.2, Temp: 70, Slump: 6}
}

// Which rule holds where: the limits of ACI 347-04 sec. 2.2.2 as the letter
// in Concrete Construction repeats them; 15 ft/h is from memory.
func TestEquationByItsLimits(t *testing.T) {
	wet, cold := wall(10), wall(10)
	wet.Slump, cold.Temp = 7.1, 39
	edge := wall(10)
	edge.Slump, edge.Temp = 7, 40
	for _, c := range []struct {
		name string
		pour Pour
		rise FtPerHour
		want Rule
	}{
		{"low and slow", wall(10), 3, Slow}, {"14 ft and slow", wall(14), 6.9, Slow},
		{"over 14 ft and slow", wall(14.1), 3, Fast}, {"low at 7 ft/h", wall(10), 7, Fast},
		{"low at 15 ft/h", wall(10), 15, Fast}, {"over 15 ft/h", wall(10), 15.1, Fluid},
		{"tall over 15 ft/h", wall(20), 15.1, Fluid}, {"wet", wet, 1, Fluid}, {"cold", cold, 1, Fluid},
		{"on both edges", edge, 3, Slow},
	} {
		if got := c.pour.Equation(c.rise); got != c.want {
			t.Errorf("%s: %s, want %s", c.name, got, c.want)
		}
	}
}

// The jumps, computed by hand: each is upwards, beyond its limit.
func TestJumps(t *testing.T) {
	for _, c := range []struct {
		name    string
		pour    Pour
		rise    FtPerHour
		want    PSF
		decides Rule
	}{
		{"14 ft", wall(14), 3, 642.857, Slow},        // 1.2·(150 + 27000/70)
		{"14.01 ft", wall(14.01), 3, 1068, Fast},     // 1.2·(150 + (43400 + 8400)/70)
		{"15 ft/h", wall(30), 15, 1644, Fast},        // 1.2·(150 + (43400 + 42000)/70)
		{"15.01 ft/h", wall(30), 15.01, 4500, Fluid}, // 150·30
		// no coefficient
		{"slump 7.01", Pour{Height: 12, Weight: 150, Cw: 1.1, Cc: 1.4, Temp: 70, Slump: 7.01}, 1, 1800, Fluid},
		{"39.9 °F", Pour{Height: 12, Weight: 150, Cw: 1, Cc: 1, Temp: 39.9, Slump: 5}, 1, 1800, Fluid},
		// 150 + 54000/90
		{"110 °F as 90 °F", Pour{Height: 14, Weight: 150, Cw: 1, Cc: 1, Temp: 110, Slump: 5}, 6, 750, Slow},
		{"floor", wall(12), 0.5, 600, Floor},
		{"floor of light concrete", Pour{Height: 14, Weight: 115, Cw: 0.9, Cc: 1, Temp: 70, Slump: 5}, 1, 540, Floor},
		{"head below the floor", wall(3), 1, 450, Fluid},
		{"head below the equation", wall(5), 6, 750, Fluid},
	} {
		got, rule := c.pour.Pressure(c.rise)
		if math.Abs(float64(got-c.want)) > 0.001 || rule != c.decides {
			t.Errorf("%s: %v psf by %s, want %v by %s", c.name, got, rule, c.want, c.decides)
		}
	}
}

// Shaken concrete is a fluid over the whole height, regardless of the equation.
func TestShaken(t *testing.T) {
	p := wall(12)
	p.Shaken = true
	if got, rule := p.Pressure(2); got != 1800 || rule != Fluid {
		t.Errorf("shaken: %v psf by %s", got, rule)
	}
}

// The limits and the floor of the SI edition only raise the pressure.
func TestSIEdition(t *testing.T) {
	for _, c := range []struct {
		name       string
		pour       Pour
		rise       FtPerHour
		kPa        float64
		by         Rule
		sameInBoth bool
	}{
		{"floor", wall(12), 0.5, 30, Floor, false},
		{"between 4.2 m and 14 ft", wall(13.9), 3, kilopascals(WallFast(1, 1.2, 3, 70)), Fast, false},
		{"between 4.5 m/h and 15 ft/h", wall(13), 14.9, kilopascals(150 * 13), Fluid, false},
		{"within both", wall(12), 4, kilopascals(WallSlow(1, 1.2, 4, 70)), Slow, true},
	} {
		got, rule := c.pour.Stricter(c.rise)
		us, _ := c.pour.Pressure(c.rise)
		if math.Abs(kilopascals(got)-c.kPa) > 1e-6 || rule != c.by || (got == us) != c.sameInBoth {
			t.Errorf("%s: %v kPa by %s, want %v by %s", c.name, kilopascals(got), rule, c.kPa, c.by)
		}
	}
	rnd := rand.New(rand.NewPCG(11, 12))
	for range 5000 {
		p, r := anyPour(rnd), FtPerHour(20*rnd.Float64())
		us, _ := p.Pressure(r)
		if both, _ := p.Stricter(r); both < us || both > p.Head() {
			t.Fatalf("%+v at %v: %v psf in the US edition, %v in both", p, r, us, both)
		}
	}
}

func anyPour(rnd *rand.Rand) Pour {
	p := Pour{
		Height: Feet(
			1 + 39*rnd.Float64()), Weight: PCF(85 + 115*rnd.Float64()), Temp: Fahrenheit(32 + 88*rnd.Float64()),
		Slump: Inches(
			3 + 5*rnd.Float64()), Cc: ChemistryCoefficient([]Cement{Plain, Blend, Rich}[rnd.IntN(3)], rnd.IntN(2) == 0),
	}
	p.Cw = WeightCoefficient(p.Weight)
	if rnd.IntN(6) == 0 {
		p.Shaken = true
	}
	return p
}

// What holds for every pour: never above the fluid head, never below the
// floor unless the head is, never less for a faster rise, a taller wall or
// colder concrete.
func TestPressureProperties(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 4))
	for range 20000 {
		p, r := anyPour(rnd), FtPerHour(20*rnd.Float64())
		got, _ := p.Pressure(r)
		if got > p.Head() || got < min(LeastPressure(p.Cw), p.Head()) {
			t.Fatalf("%+v at %v: %v psf is out of bounds", p, r, got)
		}
		if faster, _ := p.Pressure(r * 1.1); faster < got-1e-9 {
			t.Fatalf("%+v: %v psf at %v falls to %v when faster", p, got, r, faster)
		}
		taller, colder := p, p
		taller.Height *= 1.1
		colder.Temp *= 0.9
		if more, _ := taller.Pressure(r); more < got-1e-9 {
			t.Fatalf("%+v at %v: %v psf falls to %v when taller", p, r, got, more)
		}
		if more, _ := colder.Pressure(r); more < got-1e-9 {
			t.Fatalf("%+v at %v: %v psf falls to %v when colder", p, r, got, more)
		}
		foot, top := p.AtDepth(p.Height, got), p.AtDepth(0, got)
		if math.Abs(float64(foot-got)) > 1e-9 || top != 0 {
			t.Fatalf("%+v: envelope from %v to %v, greatest %v", p, top, foot, got)
		}
	}
}

// The equations end at 4.5 m/h, and the calculators switch where the printed limit is.
func TestFastestRiseIsAsPrinted(t *testing.T) {
	if MethodRiseSI != 14.7 || float64(MethodRiseSI)*0.3048 > 4.5 {
		t.Errorf("%v ft/h is not 14.7 ft/h or above 4.5 m/h", MethodRiseSI)
	}
}
