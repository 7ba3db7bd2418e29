package expression

import (
	"math"
	"testing"
)

func TestEvalAndPlain(t *testing.T) {
	vars := map[string]float64{"C_w": 1, "C_c": 1.2, "R": 4, "T": 70, "f'c": 3000, "x": -2}
	for _, c := range []struct {
		text, plain string
		want        float64
	}{
		{"C_w*C_c*(150 + 9000*R/T)", "C_w × C_c × (150 + 9000 × R / T)", 1.2 * (150 + 9000*4.0/70)},
		{"0.5*(1 + 1)", "0.5 × (1 + 1)", 1},
		{"2^3^2", "2^3^2", 512},
		{"-x^2", "−x^2", -4},
		{"8 - 3 - 2", "8 − 3 − 2", 3},
		{"8/4/2", "8 / 4 / 2", 1},
		{"sqrt(f'c)", "√(f'c)", math.Sqrt(3000)},
		{"max(R, min(T, 3), 1)", "max(R, min(T, 3), 1)", 4},
		{"2*asin(1/2)", "2 × asin(1 / 2)", math.Pi / 3},
		{"pi*R", "π × R", 4 * math.Pi},
	} {
		n, err := Parse(c.text)
		if err != nil {
			t.Errorf("%s: %v", c.text, err)
			continue
		}
		got, err := Eval(n, vars)
		if err != nil || math.Abs(got-c.want) > 1e-12*math.Abs(c.want) {
			t.Errorf("%s = %v (%v), want %v", c.text, got, err, c.want)
		}
		if p := Plain(n); p != c.plain {
			t.Errorf("Plain(%s) = %s, want %s", c.text, p, c.plain)
		}
	}
}

func TestSubstitute(t *testing.T) {
	n, err := Parse("a - b*theta_1")
	if err != nil {
		t.Fatal(err)
	}
	if got := Substitute(n, map[string]string{"a": "3", "b": "-2"}); got != "3 − (-2) × θ_1" {
		t.Errorf("got %s", got)
	}
}

func TestParseRefuses(t *testing.T) {
	for _, text := range []string{"", "1 +", "(1", "sqrt 2", "sqrt(1, 2)", "max(1)", "1.2.3", "1 2", "a b", "$"} {
		if _, err := Parse(text); err == nil {
			t.Errorf("%q was read without an error", text)
		}
	}
	n, _ := Parse("q + 1")
	if _, err := Eval(n, nil); err == nil {
		t.Error("an unknown name was computed")
	}
}
