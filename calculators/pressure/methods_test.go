package pressure

import (
	"math"
	"testing"
)

// The printed line for self-compacting concrete is between those for F5 and F6,
// quoted from memory, at every rise; so is the line of its chart.
func TestSelfCompactingLiesBetween(t *testing.T) {
	for v := 0.5; v <= 7; v += 0.5 {
		f5, _ := DINFlowing(0.24, v, 5, 1, 25)
		scc, _ := DINFlowing(0.26, v, 5, 1, 25)
		f6, _ := DINFlowing(0.304, v, 5, 1, 25)
		if !(f5 < scc && scc < f6) || math.Abs(scc-(25+33*v)) > 0.5*v+1e-9 {
			t.Errorf("at %v m/h: %v, %v, %v kPa", v, f5, scc, f6)
		}
	}
}

// The rule is the least pressure up to the point where the equation passes it.
func TestLeastPressureIsTheRule(t *testing.T) {
	for _, c := range []struct {
		v    float64
		kPa  float64
		rule string
	}{
		{0, 25, SetByLeast}, {0.8, 25, SetByLeast}, {1, 26, SetByEquation},
	} {
		if kPa, rule := DINStiff(5, 21, c.v, 1, 1, 25); math.Abs(kPa-c.kPa) > 1e-9 || rule != c.rule {
			t.Errorf("F1 at %v m/h: %v kPa, %s; want %v, %s", c.v, kPa, rule, c.kPa, c.rule)
		}
	}
	if kPa, rule := DINFlowing(0.26, 0.1, 5, 1, 25); kPa != DINLeastFlowing || rule != SetByLeast {
		t.Errorf("SCC at 0.1 m/h: %v kPa, %s", kPa, rule)
	}
	if kPa, rule := DINFlowing(0.26, 1, 5, 1, 25); math.Abs(kPa-57.5) > 1e-9 || rule != SetByEquation {
		t.Errorf("SCC at 1 m/h: %v kPa, %s", kPa, rule)
	}
}
