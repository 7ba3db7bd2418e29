package main

import (
	"encoding/json"
	"strings"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/catalog"
	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
)

// runCommand runs the command and returns what it prints and its status.
func runCommand(args ...string) (out, errs string, status int) {
	var o, e strings.Builder
	status = run(std{&o, &e}, args)
	return o.String(), e.String(), status
}

// Every calculator of the catalog runs on the command line: as text, as JSON, in
// metric units, with a decimal comma and in Spanish. Its help lists every input.
// A refused value is reported with the name of its input.
func TestEveryCalculatorOnTheCommandLine(t *testing.T) {
	for _, c := range catalog.All() {
		t.Run(c.ID, func(t *testing.T) {
			for _, options := range [][]string{
				nil, {"-work"}, {"-units", "metric"}, {"-units", "metric", "-comma"}, {"-lang", "es"},
			} {
				out, errs, status := runCommand(append([]string{"calc", c.ID}, options...)...)
				if status != fine || len(out) < 40 {
					t.Errorf("%v: status %d, %q, %q", options, status, out, errs)
				}
			}
			out, _, status := runCommand("calc", c.ID, "-h")
			for _, f := range c.In {
				if status != fine || !strings.Contains(out, f.ID) {
					t.Errorf("-h does not explain %s", f.ID)
				}
			}
			asJSON(t, c)
			refusesNonsense(t, c)
		})
	}
}

// A refused case prints the reason alone, in one line: neither notes nor the
// calculator's cautions follow it.
func TestRefusalPrintsTheReasonAlone(t *testing.T) {
	for _, args := range [][]string{
		{"wind-on-wall", "attach=9 ft 1 in"},
		{"plumb-check", "readings=10 ft | 0 in"},
		{"rate-of-rise", "length=5 ft", "stop=6 ft", "lift=2 ft"},
		{"water-added", "water=200 US gal", "load=5 yd³"},
		{"block-out-uplift", "factor=1"},
		{"block-out-uplift", "apart=4 ft"},
		{"slump-check", "ordered=9 in"},
		{"vibrator", "most-apart=18 in"},
		{"rate-of-rise", "lift=9 ft"},
		{"rate-of-rise", "wanted=15 ft/h"},
		{"form-pressure", "rise-house=6 ft/h"},
		{"truck-spacing", "limit=2 h"},
	} {
		out, errs, status := runCommand(append([]string{"calc"}, args...)...)
		if status != faulty || out != "" || strings.Count(errs, "\n") != 1 || !strings.HasPrefix(errs, "REFUSAL: ") {
			t.Errorf("%v: status %d, %q, %q", args, status, out, errs)
		}
	}
}

// A number past the published limit of its house rule is refused on the command line in
// every calculator, also in JSON: no number is printed.
func TestNoNumberPastALimit(t *testing.T) {
	tried := 0
	for _, c := range catalog.All() {
		c.RuleFields(func(f calc.Field) {
			rule := rules.Find(rules.All(), f.Rule)
			si, err := rule.Parse(rule.Limit, quantity.Point)
			if err != nil { // a rule without a published limit
				return
			}
			tried++
			past := si * 1.01
			if rule.Direction == calc.AtLeast {
				past = si * 0.99
			}
			typed := []string{"calc", c.ID, f.ID + "=" + quantity.Exact(past, *f.Display, quantity.Style{})}
			switch c.ID + " " + f.ID {
			case "hot-weather own-time":
				typed = append(typed, "rule=own")
			case "block-out-uplift lift":
				typed = append(typed, "sill=closed")
			}
			for _, args := range [][]string{typed, append(typed, "-json")} {
				out, errs, status := runCommand(args...)
				within := strings.Contains(errs, " must be at most ") || strings.Contains(errs, " must be at least ")
				if status != faulty || out != "" || !within && !strings.Contains(errs, rule.Source.Title) {
					t.Errorf("%v: status %d, %q, %q", args, status, out, errs)
				}
			}
		})
	}
	if tried < 15 {
		t.Errorf("only %d inputs were tried", tried)
	}
}

func asJSON(t *testing.T, c *calc.Calculator) {
	t.Helper()
	out, errs, status := runCommand("calc", c.ID, "-json")
	var result struct {
		Calculator string
		Inputs     map[string]any
		Outputs    map[string]any
	}
	if err := json.Unmarshal([]byte(out), &result); err != nil || status != fine {
		t.Fatalf("-json: %v, status %d, %s", err, status, errs)
	}
	if result.Calculator != c.ID || len(result.Outputs) == 0 || len(result.Inputs) == 0 {
		t.Errorf("-json gives %+v", result)
	}
}

// refusesNonsense enters values that are no number of the field's unit into each
// number field that the default case asks for.
func refusesNonsense(t *testing.T, c *calc.Calculator) {
	t.Helper()
	usual := calc.NewCase(c.In)
	tried := 0
	for _, f := range c.In {
		if f.Kind != calc.Number || !usual.Asked(f.ID) {
			continue
		}
		for _, bad := range []string{"abc", "1,500", "1e400", "9 furlongs", "NaN"} {
			out, errs, status := runCommand("calc", c.ID, f.ID+"="+bad)
			if status != faulty || out != "" || !strings.Contains(errs, c.ID+": "+f.ID+": ") {
				t.Errorf("%s=%s: status %d, %q, %q", f.ID, bad, status, out, errs)
			}
			tried++
		}
	}
	_, errs, status := runCommand("calc", c.ID, "no-such-input=1")
	if status != faulty || !strings.Contains(errs, "no-such-input") {
		t.Errorf("an unknown input: status %d, %q", status, errs)
	}
	if tried == 0 {
		t.Error("the default case asks for no number")
	}
}

// An input that is typed and does not apply is named, and one that applies is not.
func TestUnusedInputIsNamed(t *testing.T) {
	for _, c := range []struct {
		args   []string
		unused bool
	}{
		{[]string{"calc", "hot-weather", "own-time=60 min"}, true},
		{[]string{"calc", "hot-weather", "own-time=60 min", "-json"}, true},
		{[]string{"calc", "hot-weather", "own-time=60 min", "rule=own"}, false},
		{[]string{"calc", "hot-weather", "age=40 min"}, false},
	} {
		_, errs, status := runCommand(c.args...)
		if named := strings.Contains(errs, "own-time: it does not apply"); named != c.unused || status != fine {
			t.Errorf("%v: status %d, %s", c.args, status, errs)
		}
	}
}

// The page of house rules names every rule that a calculator holds against a looser number.
func TestHouseRulesPageNamesTheRulesThatHold(t *testing.T) {
	named := map[string]map[string]string{
		"pause":         {"en": "a planned pause", "es": "la pausa planeada"},
		"joint-window":  {"en": "the joint window", "es": "el tiempo de la junta"},
		"hands-off":     {"en": "hands off", "es": "la hora de nadie toca"},
		"hands-off-hot": {"en": "the hot day", "es": "el día caliente"},
		"hot-day":       {"en": "the hot day", "es": "el día caliente"},
		"head-spacing":  {"en": "the spots of vibration", "es": "los puntos de vibrado"},
		"hot-load":      {"en": "a hot load", "es": "la carga caliente"},
		"ticket-age":    {"en": "the age of a load", "es": "la edad de la carga"},
		"brace-spacing": {"en": "the spacing of braces", "es": "la separación de los puntales"},
		"brace-corner":  {"en": "the first brace from a corner", "es": "el primero desde la esquina"},
	}
	held := map[string]bool{"brace-spacing": true, "brace-corner": true}
	for _, c := range catalog.All() {
		c.RuleFields(func(f calc.Field) {
			if f.HoldsRule {
				held[f.Rule] = true
			}
		})
	}
	for rule := range held {
		for _, lang := range []string{"en", "es"} {
			phrase, ok := named[rule][lang]
			if text := pageText(t, lang, "house-rules"); !ok || !strings.Contains(text, phrase) {
				t.Errorf("%s/house-rules.md does not say that %s holds: %q", lang, rule, phrase)
			}
		}
	}
	if len(held) != len(named) {
		t.Errorf("%d rules hold, the page names %d", len(held), len(named))
	}
}
