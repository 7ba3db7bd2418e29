package markdown

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
)

// A page as large as the limits allow takes no more than a few times what
// goldmark alone takes: nothing here may grow with the square.
func TestLargePages(t *testing.T) {
	md := goldmark.New(goldmark.WithExtensions(extension.GFM))
	for name, unit := range map[string]string{
		"amounts":   "1 ft ",
		"inches":    `6" `,
		"numbers":   "1 2 3 ",
		"digits":    "1",
		"fractions": "1/2 in. (13 mm) ",
		"lines":     "2\nft, ",
		"headings":  "## a\n",
		"steps":     "1. **Hold point**\n",
		"checks":    "- [ ] a\n",
		"mixed":     "- [ ] a\n- b\n",
		"cautions":  "> **DANGER**\n\n",
		"brackets":  "[",
		"pictures":  "![a](b.svg) ",
		"stars":     "*a **b ",
		"ticks":     "`a ",
		"breaks":    "a  \n",
		"inner":     "<http://a> ",
		"tags":      "<b>",
		"links":     "[a](javascript:x) ",
		"tables":    "|a|\n|-|\n|a row of three cells and more|\n\n",
		"blocks":    "```tabel\n```\n",
		"terms":     "a cold lift ",
		"escapes":   "&amp;\\*",
	} {
		text := largest(unit)
		start := time.Now()
		var out bytes.Buffer
		if err := md.Convert(text, &out); err != nil {
			t.Fatal(err)
		}
		plain := time.Since(start)
		start = time.Now()
		var faults fault.List
		d := parse("x", string(text), &faults)
		d.Body(resolved(d))
		for _, f := range faults.All() {
			if limitCodes[f.Code] {
				t.Errorf("%s: beyond a limit: %v", name, f)
			}
		}
		if took := time.Since(start); took > 10*plain+2*time.Second {
			t.Errorf("%s: %v, goldmark alone %v", name, took, plain)
		} else {
			t.Logf("%s: %v, goldmark alone %v", name, took, plain)
		}
	}
}

// largest is a page of the unit over and over, up to a quarter of the largest
// size, with blank lines between where the marks in it call for them.
func largest(unit string) []byte {
	const size = source.MaxText / 4
	marks := countMarks([]byte(unit))
	var b bytes.Buffer
	for run, page := 0, 0; b.Len()+len(unit) <= size && page+marks <= mostPageMarks; {
		if run += marks; run > mostMarks {
			b.WriteString("\n\n")
			run = marks
		}
		page += marks
		b.WriteString(unit)
	}
	return b.Bytes()
}

// A page of nothing but openings is refused before it is read: reading it
// would take minutes.
func TestNested(t *testing.T) {
	for _, text := range []string{strings.Repeat("> ", 5000), strings.Repeat("- ", 5000) + "x",
		"a\n" + strings.Repeat("1. ", 5000) + "x\n"} {
		var faults fault.List
		d := parse("x", text, &faults)
		all := faults.All()
		if len(all) != 1 || all[0].Code != "nested" || len(d.Page.Sections) != 0 {
			t.Errorf("%.20q: faults %v, sections %v", text, all, d.Page.Sections)
		}
	}
	if n := markers([]byte(strings.Repeat("- ", 50) + "\n")); n != 0 {
		t.Errorf("a rule has %d markers", n)
	}
	if n := markers([]byte("> > 1. - [ ] text - more > and")); n != 4 {
		t.Errorf("%d markers, want 4", n)
	}
}

func TestManyFaults(t *testing.T) {
	var faults fault.List
	parse("x", strings.Repeat("<b> ", 1000), &faults)
	all := faults.All()
	if n := len(all); n != mostFaults || all[n-1].Code != "too-many" {
		t.Errorf("%d faults, last %v", n, all[n-1])
	}
}
