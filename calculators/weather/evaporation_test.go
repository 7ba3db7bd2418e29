package weather

import (
	"math"
	"math/rand/v2"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
)

// The SI form is the US form with rounded constants: exact conversion of units
// gives 5.276, 17.78 and 4.02, and about 4 % more.
func TestUnoForms(t *testing.T) {
	rnd := rand.New(rand.NewPCG(1, 1))
	for range 300 {
		c, a, r, v := 10+30*rnd.Float64(), 5+30*rnd.Float64(), rnd.Float64(), 40*rnd.Float64()
		exact := 1e-6 * math.Pow(1.8, 2.5) * 0.4 / 1.609344 * 4.882427636383051 // kg/m²/h
		si := exact * (math.Pow(c+32/1.8, 2.5) - r*math.Pow(a+32/1.8, 2.5)) * (v + 1.609344/0.4)
		us := calc.SI(UnoUS(1.8*c+32, 1.8*a+32, r, v/1.609344), "lb/ft²/h") * 3600
		calctest.Near(t, "exact change of units", us, si, 1e-9*math.Max(1, math.Abs(si)))
	}
	calctest.Near(
		t,
		"scale",
		1e-6*math.Pow(1.8, 2.5)*0.4/1.609344*4.882427636383051,
		5.276e-6,
		1.5e-9,
	) // weather meters use 5.275
	ratio := UnoSI(
		calc.From(calc.SI(87, "°F"), "°C"),
		calc.From(calc.SI(80, "°F"), "°C"),
		0.5,
		12*1.609344,
	) / (UnoUS(87, 80, 0.5, 12) * 4.882427636383051)
	calctest.Near(t, "ratio of the forms at the chart's example", ratio, 0.957, 0.001)
}

// Within the grid of the reference the two methods agree within about 20 %.
func TestMethodsAgree(t *testing.T) {
	compared := 0
	for c := 10.0; c <= 40; c += 5 {
		for d := -10.0; d <= 5; d += 5 {
			for r := 0.2; r <= 0.8; r += 0.2 {
				for v := 0.0; v <= 40; v += 10 {
					uno := calc.SI(UnoUS(1.8*c+32, 1.8*(c+d)+32, r, v/1.609344), "lb/ft²/h") * 3600
					if uno <= 0.3 {
						continue
					}
					compared++
					psi := func(x float64) float64 { return calc.From(calc.SI(VapourPressure(x), "kPa"), "psi") }
					menzel := calc.SI(MenzelUS(psi(c), psi(c+d), r, v/1.609344), "lb/ft²/h") * 3600
					if math.Abs(menzel/uno-1) > 0.22 {
						t.Errorf("concrete %v, air %v °C, %v, %v km/h: Uno %v, Menzel %v", c, c+d, r, v, uno, menzel)
					}
				}
			}
		}
	}
	if compared < 100 {
		t.Errorf("only %d compared", compared)
	}
}

// Wind and warm concrete raise the rate, humidity lowers it.
func TestEvaporationIsMonotone(t *testing.T) {
	rnd := rand.New(rand.NewPCG(2, 2))
	for range 500 {
		c, a, r, v := 40+60*rnd.Float64(), 40+60*rnd.Float64(), rnd.Float64(), 40*rnd.Float64()
		if UnoUS(c+1, a, r, v) <= UnoUS(c, a, r, v) || UnoUS(c, a, r+0.01, v) >= UnoUS(c, a, r, v) {
			t.Fatalf("%v %v %v %v", c, a, r, v)
		}
	}
	calctest.Near(t, "wind at the height of the reading", WindAt(3, 7, 7), 3, 1e-12)
	calctest.Near(t, "converted and back", WindAt(WindAt(3, 0.5, 10), 10, 0.5), 3, 1e-12)
}
