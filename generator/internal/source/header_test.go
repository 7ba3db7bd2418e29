package source

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
)

// lines lists the faults as "line:col code text | hint", warnings with a leading
// "warning ".
func lines(l *fault.List) []string {
	var out []string
	for _, f := range l.All() {
		s := fmt.Sprintf("%d:%d %s %s | %s", f.Line, f.Col, f.Code, f.Text, f.Hint)
		if f.Severity == fault.Warning {
			s = "warning " + s
		}
		out = append(out, s)
	}
	return out
}

func expect(t *testing.T, l *fault.List, want ...string) {
	t.Helper()
	if got := lines(l); !slices.Equal(got, want) {
		t.Errorf("faults are\n\t%s\nwant\n\t%s", strings.Join(got, "\n\t"), strings.Join(want, "\n\t"))
	}
}

func TestHeader(t *testing.T) {
	const page = `---
title: Set the corners   # first things first
summary: >
  Corners before
  straight runs
stage: first-course
order: 2
roles: [foreman, hand]
when: before the first lift
time: 45 min
gear:
  - level
  - "10' 6\" tape"
sources: [common practice]
next: [brace-walls]
words: [edge, "2x4"]
revised: 2028-02-29
---
# Body
`
	var l fault.List
	h, body, line := ParseHeader("en/corners.md", []byte(page), &l)
	expect(t, &l)
	want := Header{Title: "Set the corners", Summary: "Corners before straight runs", Stage: "first-course",
		Kind:  "procedure",
		Order: 2, Roles: []string{"foreman", "hand"}, When: "before the first lift", Time: "45 min",
		Gear: []string{"level", `10' 6" tape`}, Sources: []string{"common practice"}, Next: []string{"brace-walls"},
		Words: []string{"edge", "2x4"}, Revised: "2028-02-29",
		Lines: map[string]int{"title": 2, "summary": 3, "stage": 6, "order": 7, "roles": 8, "when": 9, "time": 10,
			"gear": 11, "sources": 14, "next": 15, "words": 16, "revised": 17}}
	if !reflect.DeepEqual(h, want) {
		t.Errorf("got %+v\nwant %+v", h, want)
	}
	if string(body) != "# Body\n" || line != 19 {
		t.Errorf("body %q on line %d", body, line)
	}
}

func TestHeaderFences(t *testing.T) {
	tests := []struct {
		name, page string
		body       string
		line       int
		want       []string
	}{
		{"no header", "# Body\n", "# Body\n", 1,
			[]string{"1:1 header-missing page does not start with a header " +
				"| start the page with a line ---, then title: …, then a line ---"}},
		{"empty file", "", "", 1,
			[]string{"1:1 header-missing page does not start with a header " +
				"| start the page with a line ---, then title: …, then a line ---"}},
		{"blank line first", "\n---\ntitle: a\n---\n", "\n---\ntitle: a\n---\n", 1,
			[]string{"1:1 header-missing page does not start with a header " +
				"| start the page with a line ---, then title: …, then a line ---"}},
		{"not closed", "---\ntitle: a\nkind: home\n", "", 1,
			[]string{"1:1 header-open header is not closed | put a line --- below the header's last key"}},
		{"empty header", "---\n---\nBody", "Body", 3,
			[]string{"2:1 missing-key page header has no title | add the line title: …",
				"2:1 missing-key procedure has no stage | add the line stage: …, or another kind: reference"}},
		{"windows lines and trailing spaces", "---  \r\ntitle: a\r\nkind: home\r\n---\r\nBody\r\n", "Body\r\n", 5, nil},
		{"no body", "---\ntitle: a\nkind: home\n---", "", 5, nil},
		{"rule in the body", "---\ntitle: a\nkind: home\n---\na\n---\nb\n", "a\n---\nb\n", 5, nil},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			var l fault.List
			_, body, line := ParseHeader("en/a.md", []byte(test.page), &l)
			expect(t, &l, test.want...)
			if string(body) != test.body || line != test.line {
				t.Errorf("body is %q on line %d, want %q on %d", body, line, test.body, test.line)
			}
		})
	}
}

// headerFaults are headers with the fault that each gives.
var headerFaults = []struct{ header, want string }{
	{"titel: a\nkind: home", `2:1 unknown-key unknown key "titel" in page header | did you mean "title"?`},
	{"title: a\nkind: home\ncolour: red",
		`4:1 unknown-key unknown key "colour" in page header ` +
			`| use one of: title, summary, stage, kind, order, roles, when, time, gear, sources, next, ` +
			`lessons, reads, words, least, call, revised`},
	{"title: a\nStage: b", `3:1 unknown-key unknown key "Stage" in page header | did you mean "stage"?`},
	{"title: a\nkind: home\ntitle: b",
		`4:1 duplicate-key key "title" stands twice, first on line 2 | keep one of the two`},
	{"kind: home", `2:1 missing-key page header has no title | add the line title: …`},
	{"title: a", `2:1 missing-key procedure has no stage | add the line stage: …, or another kind: reference`},
	{"title: a\nkind: procedure",
		`2:1 missing-key procedure has no stage | add the line stage: …, or another kind: reference`},
	{"title: a\nkind: glosary", `3:7 unknown-word kind cannot be "glosary" | did you mean "glossary"?`},
	{"title: a\nkind: home\norder: first",
		`4:8 wrong-type order must be a whole number, not text | write order: 1`},
	{"title: a\nkind: home\norder: 1.5",
		`4:8 wrong-type order must be a whole number, not the number 1.5 | write order: 1`},
	{"title: a\nkind: home\norder: -1",
		`4:8 out-of-range order is -1, outside 0 to 1000000 | choose a number in that range`},
	{"title: 12\nkind: home", `2:8 wrong-type title must be text, not the number 12 | put it in quotes: "12"`},
	{"title: true\nkind: home", `2:8 wrong-type title must be text, not true or false | put it in quotes: "true"`},
	{"title:\nkind: home", `2:7 wrong-type title must be text, not empty | write the text, or remove the line`},
	{"title: ''\nkind: home", `2:8 empty title is empty | write the text, or remove the line`},
	{"title: [a]\nkind: home", `2:8 wrong-type title must be text, not a list | write title: some text`},
	{"title: {a: b}\nkind: home",
		`2:8 wrong-type title must be text, not keys with values | write title: some text`},
	{"title: a\nkind: home\nroles: foreman",
		`4:8 wrong-type roles must be a list, not text | write roles: [foreman]`},
	{"title: a\nkind: home\nroles: [b, 3]",
		`4:12 wrong-type each of roles must be text, not the number 3 | put it in quotes: "3"`},
	{"title: a\nkind: home\nroles: [b, b]", `4:12 repeated "b" stands twice in roles | remove one`},
	{"title: a\nstage: First Day",
		`3:8 bad-id stage "First Day" is not a plain name | use a-z, 0-9 and single hyphens: first-day`},
	{"title: a\nkind: home\nrevised: 2026-02-29",
		`4:10 bad-date revised: there is no day 2026-02-29 | check month and day: the order is year, month, day`},
	{"title: a\nkind: home\nrevised: 3/31/2026",
		`4:10 bad-date revised: "3/31/2026" is not a date | write year, month and day with hyphens: 2026-03-31`},
	{"title: a\nkind: home\nrevised: 0026-03-31",
		`4:10 bad-date revised: the year 26 is too long ago | write the year with four digits`},
	{"title: a\nkind: home\nrevised: [2026-03-31]",
		`4:10 wrong-type revised must be a date, not a list | write revised: 2026-03-31`},
	{"title: \"a\\u202eb\"\nkind: home",
		`2:10 direction-control title holds the character U+202E, which turns the writing direction ` +
			`| delete the character`},
	{"title: \"a\\0b\"\nkind: home",
		`2:10 nul title holds the character NUL, which belongs in no text | delete the character`},
	{"- title", `2:1 wrong-type page header must be keys with values, not a list | write title: …`},
	{"title: &a b\nkind: home",
		`2:8 yaml-anchor anchor &a is not allowed | remove it; write the value out where it is needed`},
	{"title: *a\nkind: home",
		`2:8 yaml-alias an alias is not allowed | write the value out; put text that starts with * in quotes`},
	{"<<: {title: a}\nkind: home", `2:1 yaml-merge merge key << is not allowed | write the keys out`},
	{"title: !!str a\nkind: home", `2:8 yaml-tag tag !!str is not allowed | remove it`},
	{"title: a\nkind: home\n--- b",
		`4:1 yaml-documents a second YAML document starts here | keep one document: remove the line ---`},
	{"title: a\nkind: home\n...\nb: c", `5:1 yaml-outside text stands outside the keys | write key: value`},
	{"[a]: b\ntitle: a\nkind: home", `2:1 odd-key key is not a plain word | write a word, a colon and a value`},
	{"title: a: b\nkind: home",
		`2:9 yaml-colon a second colon stands on this line | put the value in quotes: "…: …"`},
	{"título: a: b\nkind: home",
		`2:10 yaml-colon a second colon stands on this line | put the value in quotes: "…: …"`},
	{"title: a\n  kind: home",
		`3:3 yaml-key a key cannot stand here ` +
			`| check the line above: it lacks a colon, or this one is indented too far`},
	{"title: a\nkind: home\nroles: [a, b\nwhen: c\ntime: d",
		`4:8 yaml-bracket a bracket [ is opened and not closed, or a comma is missing ` +
			`| close the list with ], with commas between its items`},
	{"title: {a: b\nkind: home",
		`2:8 yaml-bracket a brace { is opened and not closed, or a comma is missing ` +
			`| close it with }, with commas between the pairs`},
	{"kind: home\ntitle: \"a\nwhen: b",
		`3:8 yaml-quote a quotation mark is opened and not closed | close it on the same line`},
	{"kind: home\ntitle: 'a' b",
		`3:8 yaml-rest something stands behind the closing quotation mark or bracket ` +
			`| put the whole value in quotes`},
	{"kind: home\n\ttitle: a", `3:1 yaml-tab a tab stands where only spaces may | indent with spaces`},
	{"kind: home\ntitle: @a",
		`3:8 yaml-character a value cannot start with this character | put the value in quotes`},
	{"kind: home\ntitle: \"a\\q\"",
		`3:10 yaml-escape a backslash in double quotes starts no known escape ` +
			`| use single quotes, or write \\ for a backslash`},
	{"kind: home\ntitle: a\n- b",
		`4:1 yaml-key this line does not go on with what stands above ` +
			`| write key: value, starting in the same column as the keys above`},
	{"kind: home\ntitle: a\ngear:\n- b\n-c\nwhen: d",
		`6:1 yaml-no-colon this line has no colon ` +
			`| write key: value, or a hyphen and a space before an item of a list`},
	{"kind: home\nroles: - a\ntitle: b",
		`3:8 yaml-list a list cannot start here | start the list on the next line`},
	{"%YAML 9",
		`2:1 yaml-syntax this line is not valid YAML (did not find expected digit or '.' character) ` +
			`| write key: value; put values with special characters in quotes`},
}

func TestHeaderFaults(t *testing.T) {
	for _, test := range headerFaults {
		t.Run(test.want, func(t *testing.T) {
			var l fault.List
			ParseHeader("en/a.md", []byte("---\n"+test.header+"\n---\nBody\n"), &l)
			expect(t, &l, test.want)
		})
	}
}

func TestHeaderPrinted(t *testing.T) {
	var l fault.List
	ParseHeader("en/a.md", []byte("---\ntitle: a\nkind: home\nrevised: 2026-13-01\n---\n"), &l)
	var b strings.Builder
	fault.Print(&b, fault.Under("content", l.All()))
	const want = `content/en/a.md:4:10: error: revised: there is no day 2026-13-01
  revised: 2026-13-01
           ^
  hint: check month and day: the order is year, month, day
1 error
`
	if b.String() != want {
		t.Errorf("got\n%s\nwant\n%s", b.String(), want)
	}
}

// A text with endless faults is cut short, and still found faulty.
func TestFaultsAreBounded(t *testing.T) {
	var header strings.Builder
	for i := range 3000 {
		fmt.Fprintf(&header, "zzzzzz%d: a\n", i)
	}
	var l fault.List
	ParseHeader("en/a.md", []byte("---\n"+header.String()+"---\n"), &l)
	if got := l.Errors(); got != maxFaults {
		t.Errorf("%d errors, want %d", got, maxFaults)
	}
}

// Beyond maxSearched lines the library's own line is good enough.
func TestSyntaxErrorInALongText(t *testing.T) {
	long := strings.Repeat("# fill\n", maxSearched) + "title: a: b\n" + strings.Repeat("# fill\n", 9)
	var l fault.List
	ParseManual("manual.yaml", []byte(long), &l)
	expect(t, &l, fmt.Sprintf(`%d:9 yaml-colon a second colon stands on this line | put the value in quotes: "…: …"`,
		maxSearched+1))
}
