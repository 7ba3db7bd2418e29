package conversion

import (
	"math"
	"testing"
)

// The two temperature formulas are inverse, and equal at −40.
func TestTemperatures(t *testing.T) {
	for f := -100.0; f <= 400; f += 7 {
		if back := Fahrenheit(Celsius(f)); math.Abs(back-f) > 1e-12*400 {
			t.Errorf("%v °F comes back as %v", f, back)
		}
	}
	if Celsius(-40) != -40 || math.Abs(Celsius(212)-100) > 1e-12 || math.Abs(Fahrenheit(37)-98.6) > 1e-12 {
		t.Error("fixed points of the scales")
	}
}
