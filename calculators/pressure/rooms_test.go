package pressure_test

import (
	"math"
	"os"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/calculators/figure"
	"coursebook/calculators/pressure/ciriapressure"
	"coursebook/calculators/pressure/dinpressure"
	"coursebook/calculators/pressure/formpressure"
	"coursebook/calculators/quantity"
)

func kPaOf(res calc.Result) float64 { return calc.From(res.Out.Num("pressure"), "kPa") }

// A short setting time and concrete above the warmest do not lower the pressure.
func TestNoCredit(t *testing.T) {
	for _, c := range []struct {
		of   *calc.Calculator
		a, b []string
	}{
		{ciriapressure.Calculator, []string{"temperature=30 °C"}, []string{"temperature=45 °C"}},
		{dinpressure.Calculator, []string{"set=5 h"}, []string{"set=2 h"}},
		{dinpressure.Calculator, []string{"temperature=60 °F"}, []string{"temperature=90 °F"}},
	} {
		a := calctest.Run(t, c.of, c.a...)
		b := calctest.Run(t, c.of, c.b...)
		if math.Abs(kPaOf(a)-kPaOf(b)) > 1e-9 {
			t.Errorf("%s %v: %v kPa against %v", c.of.ID, c.b, kPaOf(a), kPaOf(b))
		}
	}
}

// The pressure does not fall with more rise, a wetter class, a longer set or
// cooler concrete, and does not exceed the fluid head.
func TestMonotonic(t *testing.T) {
	for _, c := range []struct {
		of     *calc.Calculator
		path   string
		values []string
	}{
		{ciriapressure.Calculator, "rise", []string{"1", "2", "4", "7", "12", "30"}},
		{ciriapressure.Calculator, "temperature", []string{"86", "70", "60", "50", "41", "35"}},
		{ciriapressure.Calculator, "cement", []string{"plain", "blend", "rich"}},
		{ciriapressure.Calculator, "form-height", []string{"10'", "12'", "20'", "40'"}},
		{dinpressure.Calculator, "rise", []string{"1", "2", "4", "7", "12", "22", "30"}},
		{dinpressure.Calculator, "class", []string{"f1", "f2", "f3", "f4", "scc", "f6"}},
		{dinpressure.Calculator, "set", []string{"5", "7", "10", "15", "20", "25"}},
		{dinpressure.Calculator, "temperature", []string{"90", "60", "50", "40"}},
	} {
		last := 0.0
		for _, v := range c.values {
			res := calctest.Run(t, c.of, c.path+"="+v)
			if kPaOf(res) < last || res.Out.Num("pressure") > res.Out.Num("head") {
				t.Errorf("%s %s=%s: %v kPa after %v", c.of.ID, c.path, v, kPaOf(res), last)
			}
			last = kPaOf(res)
		}
	}
}

// Both calculators and form-pressure give the same results for a pour.
func TestThreeCalculatorsAgree(t *testing.T) {
	pour := []string{"height=13'", "rise=4", "temperature=60 °F", "weight=150", "cement=blend", "admixture=retards"}
	aci := calctest.Run(
		t,
		formpressure.Calculator,
		append([]string{"how=once", "slump=5 in", "stop=15 ft", "thickness=36 in", "pump-rate=1"}, pour...)...)
	ciria := calctest.Run(t, ciriapressure.Calculator, append([]string{"form-height=13'"}, pour...)...)
	din := calctest.Run(t, dinpressure.Calculator, append([]string{"set-at=60 °F"}, pour...)...)
	for i, want := range []float64{aci.Out.Num("pressure-us"), ciria.Out.Num("pressure"), din.Out.Num("pressure")} {
		for _, res := range []calc.Result{ciria, din} {
			if got := res.Out.Rows("methods")[i].Num("pressure"); math.Abs(got-want) > 1e-6*want {
				t.Errorf("method %d: %v Pa compared, %v by itself", i, got, want)
			}
		}
	}
	for i, m := range []string{"aci", "ciria", "din"} {
		if din.Out.Rows("methods")[i].Choice("method") != m {
			t.Errorf("method %d is not %s", i, m)
		}
	}
}

// The drawing names all three lines and the fluid head, with values.
func TestCompareFigure(t *testing.T) {
	for _, c := range []*calc.Calculator{ciriapressure.Calculator, dinpressure.Calculator} {
		in, res := calctest.RunCase(t, c)
		d := c.Draw(calc.Locale{Style: quantity.Style{}}, in, res)
		text := figure.SVG(d)
		for _, want := range []string{"ACI 347: ", "CIRIA 108: ", "DIN 18218: ", "Full fluid head: 1500 psf",
			"f-limit"} {
			if !strings.Contains(text, want) {
				t.Errorf("%s does not draw %q", c.ID, want)
			}
		}
		if dir := os.Getenv("FIGURES"); dir != "" {
			os.WriteFile(dir+"/"+c.ID+".svg", []byte(text), 0o600)
		}
	}
}
