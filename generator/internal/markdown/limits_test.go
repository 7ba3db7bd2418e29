package markdown

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"time"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/source"
)

// limitCodes are the codes of the faults that refuse a page beyond a limit.
var limitCodes = map[string]bool{"nested": true, "marks": true, "table-columns": true, "table-cells": true,
	"link-definitions": true}

// tableOf is a table of a number of columns and rows, whose rows end early.
func tableOf(columns, rows int) string {
	return strings.Repeat("|a", columns) + "|\n" + strings.Repeat("|-", columns) + "|\n" + strings.Repeat("|\n", rows)
}

// growing is lines that each continue the one before.
func growing(size int, line func(i int) string) string {
	var b strings.Builder
	for i := 0; b.Len() < size; i++ {
		b.WriteString(line(i))
	}
	return b.String()
}

// blowUps are pages of about the given size whose cost grows with the square
// of the size, or with a product of their parts, when they are parsed without
// limits. The value is the code of the fault that refuses the page of 1 MB;
// "" for one that parses.
func blowUps(size int) map[string][2]string {
	uses := "\n\n" + strings.Repeat("[b] ", min(size/8, 900))
	pictures := "\n\n" + strings.Repeat("![b]\n\n", min(size/10, 900))
	paragraph := strings.Repeat("*a_", mostMarks/2) + "\n\n"
	pages := map[string][2]string{
		"wide table":        {tableOf(500*size/18_000, size*4/9), "table-columns"},
		"long table":        {tableOf(40, size/2), "table-cells"},
		"one row":           {tableOf(size/4, 0), "table-columns"},
		"one column":        {tableOf(1, size/2), "table-cells"},
		"table in a quote":  {"> " + strings.ReplaceAll(tableOf(40, size/4), "\n", "\n> "), "table-cells"},
		"table in a list":   {"1. " + strings.ReplaceAll(tableOf(40, size/5), "\n", "\n   "), "table-cells"},
		"many tables":       {strings.Repeat(tableOf(40, 30)+"\n", size/224), "table-cells"},
		"bars in code":      {"|a|\n|-|\n" + strings.Repeat("|`\\|`|\n", size/7), "table-cells"},
		"closed brackets":   {strings.Repeat("[", size/2) + strings.Repeat("]", size/2), "marks"},
		"nested pictures":   {strings.Repeat("![", size/6) + strings.Repeat("](b)", size/6), "marks"},
		"long rule in text": {"a" + strings.Repeat("*", size/2) + "b" + strings.Repeat("*", size/2), "marks"},
		"nested lists":      {growing(size, func(i int) string { return strings.Repeat("  ", i) + "- a\n" }), ""},
		"quotations":        {strings.Repeat(strings.Repeat("> ", mostNested)+"a\n\n", size/(2*mostNested+3)), ""},
		"lazy quotation":    {strings.Repeat("> ", mostNested) + strings.Repeat("a\n", size/2), ""},
		"rising ticks":      {growing(size, func(i int) string { return strings.Repeat("`", i+1) + "a " }), ""},
		"definitions":       {growing(size, func(i int) string { return fmt.Sprintf("[a%d]: b\n", i) }), "marks"},
		"long address":      {"[b]: " + strings.Repeat("x", size/2) + uses, "link-definitions"},
		"long title":        {"[b]: c.md \"" + strings.Repeat("x", size/2) + "\"" + uses, "link-definitions"},
		"long caption":      {"[b]: c.svg \"" + strings.Repeat("&amp;", size/10) + "\"" + pictures, "link-definitions"},
		"apart":             {strings.Repeat(paragraph, size/len(paragraph)+1), "marks"},
	}
	for _, unit := range []string{"*a_", "*a **a ", "*a **b_c__d", "*a_b~", "***a", "~a ~~b", "[", "![", "[a](",
		"[a](b", "[a](<", "[](", "![](a", "[a]: b\n",
		"[a]\n", "[[a]", "- [ ] a\n", "[a](b)]", "![[", "*]"} {
		pages["run of "+unit] = [2]string{strings.Repeat(unit, size/len(unit)), "marks"}
	}
	for _, unit := range []string{"<!--a ", "<?a ", "<![CDATA[", "<a b=\"", "<http://a ", "`a ", "|a|\n|\n", "a\n=\n",
		"<div>\n\n", "- a\n> b\n", "&#x26;", "(", "a  \n"} {
		code := ""
		if unit == "<![CDATA[" {
			code = "marks"
		}
		pages["run of "+unit] = [2]string{strings.Repeat(unit, size/len(unit)), code}
	}
	return pages
}

// cost parses and renders a page and returns the bytes allocated.
func cost(text string) (faults []fault.Fault, allocated uint64, took time.Duration) {
	var list fault.List
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	start := time.Now()
	d := parse("x", text, &list)
	d.Body(resolved(d))
	took = time.Since(start)
	runtime.ReadMemStats(&after)
	return list.All(), after.TotalAlloc - before.TotalAlloc, took
}

// Any page parses or is refused in a bounded time and with a
// bounded number of bytes allocated in all. Without limits the 18 kB of a wide
// table take 1 GB.
func TestBlowUp(t *testing.T) {
	for _, c := range []struct {
		size  int
		bytes uint64
		time  time.Duration
	}{{18_000, 16 << 20, 2 * time.Second}, {source.MaxText - 2_000, 600 << 20, 20 * time.Second}} {
		for name, page := range blowUps(c.size) {
			text, code := page[0], page[1]
			faults, allocated, took := cost(text)
			if allocated > c.bytes || took > c.time {
				t.Errorf("%s of %d B: %d kB allocated, %v", name, len(text), allocated>>10, took)
			}
			refused := ""
			for _, f := range faults {
				if limitCodes[f.Code] {
					refused = f.Code
					if f.Line < 1 || f.Col < 1 || f.Hint == "" || f.File == "" {
						t.Errorf("%s: incomplete fault %+v", name, f)
					}
				}
			}
			if c.size > 1_000_000 && refused != code {
				t.Errorf("%s of %d B is refused for %q, want %q", name, len(text), refused, code)
			}
			t.Logf("%-20q %7d B: %6d kB, %4d ms %s", name, len(text), allocated>>10, took.Milliseconds(), refused)
		}
	}
}

// The last page within each limit parses, the next one is refused, with the
// line that goes beyond.
func TestLimits(t *testing.T) {
	filler := strings.Repeat("*a* "+strings.Repeat("*a* ", mostMarks/2-1)+"\n\n", mostPageMarks/mostMarks)
	for _, c := range []struct{ good, bad, want string }{
		{strings.Repeat("*a* ", mostMarks/2), "\n*a",
			"marks: more than 2000 of the signs * _ ~ [ ] without a blank line between"},
		{filler, "*a", "marks: page has more than 20000 of the signs * _ ~ [ ]"},
		{tableOf(mostColumns, 2), "\n" + tableOf(mostColumns+1, 2),
			"table-columns: table has 41 columns, more than 40"},
		{tableOf(mostColumns, mostCells/mostColumns-2), "|\n",
			"table-cells: tables of the page have more than 20000 cells"},
		{strings.Repeat("> ", mostNested) + "a\n", strings.Repeat("> ", mostNested+1) + "a\n",
			"nested: more than 20 lists and quotations within each other"},
		{"[b]: https://x \"" + strings.Repeat("x", 10_000-9) + "\"\n\n" + strings.Repeat("[b]\n", 11),
			strings.Repeat("[b]\n", 10),
			"link-definitions: links take more than 100000 bytes from their definitions"},
	} {
		for _, text := range []string{c.good, c.good + c.bad} {
			faults, _, _ := cost(text)
			var got []string
			for _, f := range faults {
				if limitCodes[f.Code] {
					got = append(got, f.Code+": "+f.Text)
				}
			}
			switch {
			case text == c.good && len(got) > 0:
				t.Errorf("within the limit: %v", got)
			case text != c.good && (len(got) != 1 || got[0] != c.want):
				t.Errorf("beyond the limit: %v, want %s", got, c.want)
			}
		}
	}
}

// Rules, blanks to fill in and the manual's own pages are within the limits.
func TestLimitsOfHonestPages(t *testing.T) {
	pages := map[string]string{
		"rules":  strings.Repeat(strings.Repeat("*", 100)+"\n", 300) + strings.Repeat("_ _ _\n", 1000),
		"blanks": strings.Repeat("Name: ____________________\n", 90),
		"art":    strings.Repeat("+-----+-----+\n", 500),
	}
	names, err := filepath.Glob("../../../content/*/*.md")
	if err != nil || len(names) < 100 {
		t.Fatalf("%d pages of the manual, %v", len(names), err)
	}
	for _, name := range names {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		pages[name] = string(text)
	}
	for name, text := range pages {
		w := &walker{src: []byte(text), faults: new(fault.List)}
		if w.overLimit() {
			t.Errorf("%s: %v", name, w.faults.All())
		}
	}
}
