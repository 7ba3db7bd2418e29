package markdown

import (
	"testing"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown/amount"
)

// A lead is measured in the text as a reader sees it, and a line of the model
// reads on another page as it does on its own.
func TestLine(t *testing.T) {
	finder := amount.New("en", quantity.Point)
	for text, want := range map[string]string{
		"1. **Stand 2 ft off.** Wait.": `<strong>Stand <span class="q"><span class="us own">2 ft</span>` +
			`<span class="si">600 mm</span></span> off.</strong> Wait.`,
		"1. Wait a while.":                `Wait a while.`,
		"1. **Ask R\\&D.** <Now>.":        `<strong>Ask R&amp;D.</strong> &lt;Now>.`,
		"1. Wait **here.**":               `Wait here.`,
		"1. **Hold point** Stand by.":     `<strong>Hold point</strong> Stand by.`,
		"1. **Two\n   lines.** Then one.": `<strong>Two lines.</strong> Then one.`,
		"- [ ] **Path.** 90 min of it":    `<strong>Path.</strong> 90 min of it`,
		"- [ ] Path":                      `Path`,
	} {
		var faults fault.List
		p := parse("line", text+"\n", &faults).Page
		got := ""
		for _, s := range p.Steps {
			got += Line(s.Text, s.Lead, finder)
		}
		for _, c := range p.Checks {
			got += Line(c.Text, c.Lead, finder)
		}
		if got != want {
			t.Errorf("%q:\n got %s\nwant %s", text, got, want)
		}
	}
}
