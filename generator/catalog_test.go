package main

import (
	"encoding/json"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/catalog"
)

// printed runs the command and returns what it says and its status.
func printed(args ...string) (out, errs string, status int) {
	var o, e strings.Builder
	status = run(std{&o, &e}, args)
	return o.String(), e.String(), status
}

// Every entry of the catalog answers on the command line: as text, as JSON, in
// metric and with a decimal comma, with its inputs explained, as a drawing;
// and it refuses what no input can be, naming the input.
func TestEveryCalculatorOnTheCommandLine(t *testing.T) {
	for _, c := range catalog.All() {
		t.Run(c.ID, func(t *testing.T) {
			for _, options := range [][]string{nil, {"-work"}, {"-units", "metric"}, {"-units", "metric", "-comma"},
				{"-lang", "es"}} {
				out, errs, status := printed(append([]string{"calc", c.ID}, options...)...)
				if status != fine || len(out) < 40 {
					t.Errorf("%v: status %d, %q, %q", options, status, out, errs)
				}
			}
			out, _, status := printed("calc", c.ID, "-h")
			for _, f := range c.In {
				if status != fine || !strings.Contains(out, f.ID) {
					t.Errorf("-h does not explain %s", f.ID)
				}
			}
			asJSON(t, c)
			mistakes(t, c)
		})
	}
}

func asJSON(t *testing.T, c *calc.Calculator) {
	t.Helper()
	out, errs, status := printed("calc", c.ID, "-json")
	var answer struct {
		Calculator string
		Inputs     map[string]any
		Outputs    map[string]any
	}
	if err := json.Unmarshal([]byte(out), &answer); err != nil || status != fine {
		t.Fatalf("-json: %v, status %d, %s", err, status, errs)
	}
	if answer.Calculator != c.ID || len(answer.Outputs) == 0 || len(answer.Inputs) == 0 {
		t.Errorf("-json says %+v", answer)
	}
}

// mistakes types nonsense into each number that is asked for in the default case.
func mistakes(t *testing.T, c *calc.Calculator) {
	t.Helper()
	usual := calc.NewCase(c.In)
	tried := 0
	for _, f := range c.In {
		if f.Kind != calc.Number || !usual.Asked(f.ID) {
			continue
		}
		for _, bad := range []string{"abc", "1,500", "1e400", "9 furlongs", "NaN"} {
			out, errs, status := printed("calc", c.ID, f.ID+"="+bad)
			if status != faulty || out != "" || !strings.Contains(errs, c.ID+": "+f.ID+": ") {
				t.Errorf("%s=%s: status %d, %q, %q", f.ID, bad, status, out, errs)
			}
			tried++
		}
	}
	if _, errs, status := printed("calc", c.ID, "no-such-input=1"); status != faulty ||
		!strings.Contains(errs, "no-such-input") {
		t.Errorf("an unknown input: status %d, %q", status, errs)
	}
	if tried == 0 {
		t.Error("no number to slip on")
	}
}
