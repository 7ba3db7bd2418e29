package markdown

import (
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/quantity"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/source"
)

// ruled parses a page with two house rules: lift is 18 in., hot-load 90 °F.
func ruled(t *testing.T, body string, mark quantity.Mark) (*Document, []string) {
	t.Helper()
	l := Language{Mark: mark, Rules: map[string]Rule{}}
	for id, amount := range map[string]string{"lift": "18 in.", "hot-load": "90 °F"} {
		r := Rule{Rule: rules.Find(rules.All(), id), Amount: WithMark(amount, mark)}
		r.SI, _ = r.Parse(amount, quantity.Point)
		l.Rules[id] = r
	}
	lift := l.Rules["lift"]
	lift.Words = []string{"lifts of"}
	l.Rules["lift"] = lift
	var faults fault.List
	d := Parse(source.File{Path: "en/p.md", Kind: source.Page,
		Data: []byte("---\ntitle: P\nsummary: S\ngear: [\"Stick of [2 ft](rule:lift)\"]\n---\n\n" + body)}, l, &faults)
	var list []string
	for _, f := range faults.All() {
		if strings.HasPrefix(f.Code, "rule") {
			list = append(list, f.Code)
		}
	}
	return d, list
}

// A page prints the author's figure where it equals the amount of the rule, in any unit,
// and the amount of the rule elsewhere: in running text, leads, steps, tables and blocks.
func TestRuleAmounts(t *testing.T) {
	body := "Lift [18 in.](rule:lift), [1.5 ft](rule:lift), [2 ft](rule:lift).\n\n" +
		"1. **Lift [2 ft](rule:lift).** Go on.\n\n| a |\n|---|\n| [2 ft](rule:lift) |\n\n" +
		"```questions\n- ask: \"How deep is [2 ft](rule:lift)?\"\n  answer: \"[2 ft](rule:lift)\"\n  why: It " +
		"is.\n```\n\n" +
		"```calculator\nid: vibrator\nset: {lift: \"rule:lift\"}\n```\n"
	d, faults := ruled(t, body, quantity.Point)
	text := d.Page.Sections[0].Text
	for _, want := range []string{"Lift 18 in., 1.5 ft, 18 in..", "Lift 18 in.. Go on.", "18 in."} {
		if !strings.Contains(text, want) {
			t.Errorf("the text %q lacks %q", text, want)
		}
	}
	if s := d.Page.Steps[0]; s.Text != "Lift 18 in.. Go on." || s.Text[:s.Lead] != "Lift 18 in.." {
		t.Errorf("the step is %q with a lead of %d bytes", s.Text, s.Lead)
	}
	if q := d.Page.Questions()[0]; q.Ask != "How deep is 18 in.?" || q.Words != "18 in." {
		t.Errorf("the question is %+v", q)
	}
	if got := d.Page.Places[1].Set[0].Text; got != "18 in." {
		t.Errorf("the input is %q", got)
	}
	if got := d.Page.Header.Gear[0]; got != "Stick of 18 in." {
		t.Errorf("the gear is %q", got)
	}
	if strings.Contains(text, "2 ft") {
		t.Errorf("the text still has the author's figure: %q", text)
	}
	for _, code := range faults {
		if code != "rule-differs" {
			t.Errorf("a fault %s", code)
		}
	}
	if len(faults) != 5 { // ask and answer are on one line
		t.Errorf("%d lines differ, want 5: %v", len(faults), faults)
	}
	links := 0
	for _, l := range d.Page.Links {
		if l.Target == "rule:lift" {
			links++
		}
	}
	if links != 5 {
		t.Errorf("%d links to the rule, want 5", links)
	}
}

func TestRuleFaults(t *testing.T) {
	for body, want := range map[string][]string{
		"At [18 in.](rule:lift).":                               nil,
		"At [18 in.](rule:lfit).":                               {"rule-unknown"},
		"At [deep](rule:lift).":                                 {"rule-text"},
		"At [18 psf](rule:lift).":                               {"rule-text"},
		"At [90 °F](rule:hot-load).":                            nil,
		"Place lifts of 18 in. now.":                            {"rule-bare"},
		"Place lifts of 2 ft now.":                              {"rule-bare"},
		"Place lifts of [2 ft](rule:none) now.":                 nil,
		"Place lifts of [18 in.](rule:lift) now.":               nil,
		"Place lifts of 90 °F now.":                             nil, // another dimension
		"Place lifts of sand. The wall is 9 ft high.":           nil, // another sentence
		"Forklifts of 2 ft.":                                    nil, // another word
		"A wall of 9 ft.\n\nPlace lifts of sand.":               nil, // another block
		"- ask: x\n":                                            nil,
		"`[2 ft](rule:none)` is how to write it.":               nil,
		"[**18 in.**](rule:lift) is the lift.":                  nil,
		"```rules\nid: lift\n```":                               {"rules-extra"},
		"```questions\n- ask: Lifts of 2 ft?\n  answer: y\n```": {"rule-bare"},
		"```calculator\nid: v\nset: {lift: \"rule:x\"}\n```":    {"rule-unknown"},
	} {
		_, got := ruled(t, body, quantity.Point)
		got = slices.DeleteFunc(got, func(code string) bool { return code == "rule-differs" }) // the header's
		if !slices.Equal(got, want) {
			t.Errorf("%q: %v, want %v", body, got, want)
		}
	}
}

// In a language with a decimal comma the amount is written with a comma.
func TestRuleWithComma(t *testing.T) {
	if got := WithMark("1.5 in.", quantity.Comma); got != "1,5 in." {
		t.Error(got)
	}
	d, faults := ruled(t, "Lift [1,5 ft](rule:lift).", quantity.Comma)
	if !strings.Contains(d.Page.Sections[0].Text, "1,5 ft") || len(faults) != 1 {
		t.Errorf("%q, %v", d.Page.Sections[0].Text, faults)
	}
}

// A rules block is a place of its page.
func TestRulesBlock(t *testing.T) {
	d, _ := ruled(t, "```rules\n```\n", quantity.Point)
	if len(d.Page.Places) != 1 || d.Page.Places[0].Kind != page.Rules {
		t.Errorf("places %+v", d.Page.Places)
	}
}
