package fault

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"
)

func printed(faults ...Fault) string {
	var b strings.Builder
	Print(&b, faults)
	return b.String()
}

func TestPrint(t *testing.T) {
	tests := []struct {
		name   string
		faults []Fault
		want   string
	}{
		{"nothing", nil, ""},
		{"whole", []Fault{{File: "en/footing.md", Line: 3, Col: 1, Text: `unknown key "titel"`,
			Source: "titel: Footing", Hint: `write "title"`}},
			`en/footing.md:3:1: error: unknown key "titel"
  titel: Footing
  ^
  hint: write "title"
1 error
`},
		{"tabs are kept under tabs", []Fault{{File: "a.tsv", Line: 2, Col: 4, Text: "empty word", Source: "a\tb\t\tc"}},
			"a.tsv:2:4: error: empty word\n" +
				"  a\tb\t\tc\n" +
				"   \t ^\n" +
				"1 error\n"},
		{"wide runes count one", []Fault{{File: "a.md", Line: 1, Col: 3, Text: "bad", Source: "日本x"}},
			"a.md:1:3: error: bad\n  日本x\n    ^\n1 error\n"},
		{"direction marks are shown and pushed past", []Fault{{File: "a.md", Line: 1, Col: 3, Text: "bad",
			Source: "a\u202eb"}},
			"a.md:1:3: error: bad\n  a\\u202eb\n         ^\n1 error\n"},
		{
			"controls and broken bytes",
			[]Fault{{File: "a\x1b.md", Line: 1, Col: 1, Text: "bad \x07", Source: "\xff\x1b[2J\U000E0001"}},
			"a\\x1b.md:1:1: error: bad \\x07\n  \\xff\\x1b[2J\\U000e0001\n  ^\n1 error\n",
		},
		{"caret behind the end", []Fault{{File: "a.md", Line: 1, Col: 99, Text: "unclosed", Source: "ab"}},
			"a.md:1:99: error: unclosed\n  ab\n    ^\n1 error\n"},
		{"no column, no caret", []Fault{{File: "a.md", Line: 4, Text: "odd", Source: "text", Severity: Warning}},
			"a.md:4: warning: odd\n  text\n1 warning\n"},
		{"no line", []Fault{{File: "a.md", Text: "too big", Source: "not shown"}}, "a.md: error: too big\n1 error\n"},
		{"no file", []Fault{{Text: "no theme"}}, "error: no theme\n1 error\n"},
		{"count", []Fault{{Text: "a"}, {Text: "b"}, {Text: "c", Severity: Warning}},
			"error: a\nerror: b\nwarning: c\n2 errors, 1 warning\n"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			if got := printed(test.faults...); got != test.want {
				t.Errorf("got\n%s\nwant\n%s", got, test.want)
			}
		})
	}
}

func TestPrintCutsLongLines(t *testing.T) {
	line := strings.Repeat("x", 300) + "!" + strings.Repeat("y", 300)
	tests := []struct {
		col  int
		line string
	}{
		{301, "…" + strings.Repeat("x", 59) + "!" + strings.Repeat("y", 60) + "…"},
		{1, strings.Repeat("x", 120) + "…"},
		{602, "…" + strings.Repeat("y", 120)},
	}
	for _, test := range tests {
		got := strings.Split(printed(Fault{File: "f", Line: 1, Col: test.col, Source: line}), "\n")
		if got[1] != indent+test.line {
			t.Errorf("column %d: line is\n%q, want\n%q", test.col, got[1], indent+test.line)
		}
		under := []rune(got[1] + " ")[len([]rune(got[2]))-1]
		want := []rune(line + " ")[test.col-1]
		if under != want {
			t.Errorf("column %d: the caret is under %q, want %q", test.col, under, want)
		}
	}
}

func TestListSortsAndDropsRepeats(t *testing.T) {
	var l List
	l.Errorf("z", "b.md", 1, 1, "late")
	l.Errorf("z", "a.md", 10, 1, "ten")
	l.Errorf("z", "a.md", 2, 5, "two %s", "five")
	l.Errorf("z", "a.md", 2, 3, "two three")
	l.Warnf("z", "a.md", 2, 3, "two three")
	l.Errorf("z", "a.md", 2, 3, "two three")
	var got []string
	for _, f := range l.All() {
		got = append(got, f.Error())
	}
	want := []string{
		"a.md:2:3: error: two three",
		"a.md:2:3: warning: two three",
		"a.md:2:5: error: two five",
		"a.md:10:1: error: ten",
		"b.md:1:1: error: late",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if l.Errors() != 4 || l.Warnings() != 1 {
		t.Errorf("%d errors and %d warnings, want 4 and 1", l.Errors(), l.Warnings())
	}
}

func TestListIsSafeForConcurrentUse(t *testing.T) {
	var l List
	var group sync.WaitGroup
	for i := range 50 {
		group.Go(func() { l.Errorf("n", fmt.Sprintf("f%02d", i), 1, 1, "x") })
	}
	group.Wait()
	if got := l.Errors(); got != 50 {
		t.Errorf("%d errors, want 50", got)
	}
}

func TestUnder(t *testing.T) {
	faults := []Fault{{File: "en/a.md"}, {File: "."}, {}}
	got := Under("book", faults)
	if got[0].File != "book/en/a.md" || got[1].File != "book" || got[2].File != "" {
		t.Errorf("got %q, %q, %q", got[0].File, got[1].File, got[2].File)
	}
	if faults[0].File != "en/a.md" {
		t.Error("Under changed the faults it was given")
	}
}

func TestLineAndPosition(t *testing.T) {
	data := []byte("one\r\ntwó x\n\nlast")
	for n, want := range map[int]string{-1: "", 0: "", 1: "one", 2: "twó x", 3: "", 4: "last", 5: ""} {
		if got := Line(data, n); got != want {
			t.Errorf("line %d is %q, want %q", n, got, want)
		}
	}
	for offset, want := range map[int][2]int{-3: {1, 1}, 0: {1, 1}, 5: {2, 1}, 10: {2, 5}, 12: {3, 1}, 13: {4, 1},
		999: {4, 5}} {
		if line, col := Position(data, offset); line != want[0] || col != want[1] {
			t.Errorf("offset %d is at %d:%d, want %v", offset, line, col, want)
		}
	}
}

func TestNearest(t *testing.T) {
	keys := []string{"title", "summary", "stage", "order", "roles"}
	tests := map[string]string{
		"titel": "title", "Title": "title", "tittle": "title", "stag": "stage", "role": "roles",
		"sumary": "summary", "odrer": "order", "colour": "", "": "", strings.Repeat("title", 1000): "",
	}
	for word, want := range tests {
		if got, ok := Nearest(word, keys); got != want || ok != (want != "") {
			t.Errorf("Nearest(%.20q) = %q, %t; want %q", word, got, ok, want)
		}
	}
}

// Textbook distances: "kitten" to "sitting" takes three edits; "ca" to "abc" takes
// three when no letter is edited twice.
func TestDistance(t *testing.T) {
	for _, test := range []struct {
		a, b string
		want int
	}{{"kitten", "sitting", 3}, {"ca", "abc", 3}, {"ab", "ba", 1}, {"", "abc", 3}, {"año", "ano", 1}} {
		if got := distance([]rune(test.a), []rune(test.b)); got != test.want {
			t.Errorf("distance(%q, %q) = %d, want %d", test.a, test.b, got, test.want)
		}
	}
}
