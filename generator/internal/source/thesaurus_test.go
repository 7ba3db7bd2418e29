package source

import (
	"reflect"
	"testing"

	"coursebook/generator/internal/fault"
)

func TestThesaurus(t *testing.T) {
	const list = "# invented words\n\nen:\tfooting\tfoot  ing \tbase\nes:\tzapata\tcimiento\r\n" +
		"en:\tpoker\thead (2)\t>\tvibrator\nen:\thead (2)\tlintel\nen:\tcalc:tank\thow full\tgallons\n" +
		"en:\tkind:calculator\thow many\nen:\tfamily:\tfall\tfell\n"
	var l fault.List
	got := ParseThesaurus("thesaurus.tsv", []byte(list), &l)
	expect(t, &l)
	want := map[string]*Thesaurus{
		"en": {
			Groups: []WordGroup{
				{From: []string{"footing", "foot ing", "base"}},
				{From: []string{"poker", "head"}, To: []string{"vibrator"}},
				{From: []string{"head", "lintel"}},
			},
			Families: [][]string{{"fall", "fell"}},
			Asked: []AskedFor{
				{Calculator: "tank", Words: []string{"how full", "gallons"}, Line: 7, Col: 5},
				{Kind: "calculator", Words: []string{"how many"}, Line: 8, Col: 5},
			},
		},
		"es": {Groups: []WordGroup{{From: []string{"zapata", "cimiento"}}}},
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v\nwant %+v", got, want)
	}
}

// few is the fault of a line with too few words.
const few = "1:1 lone-word line has too few words | write two words that mean the same, or one on each side of >; " +
	"part the cells by tabs, not by spaces or commas"

func TestThesaurusFaults(t *testing.T) {
	tests := []struct{ list, want string }{
		{"en:\tfooting, base", few},
		{"en:", few},
		{"en:\t>\ta", few},
		{"en:\ta\t>", few},
		{"en:\tcalc:tank", few},
		{"en:\tfamily:\tfall", few},
		{"en:\ta\tb\nen:\tañil\t\tb", "2:10 empty empty word between two tabs or at the end | remove the extra tab"},
		{"en:\ta\tb\t", "1:9 empty empty word between two tabs or at the end | remove the extra tab"},
		{"en:\ta\tb\tA", `1:9 repeated "A" stands twice on this line | remove one`},
		{"en:\ta\t>\tb\tA", `1:7 repeated "A" is on both sides | remove one`},
		{"EN:\ta\tb", `1:1 bad-language "EN:" is not a language code ` +
			`| begin the line with two or three lower-case letters, a colon and a tab: en:`},
		{"a\tb", `1:1 bad-language "a" is not a language code ` +
			`| begin the line with two or three lower-case letters, a colon and a tab: en:`},
		{"en:\ta\tb\nen:\tc\tB", `warning 2:7 repeated "B" stands on line 1 too ` +
			`| put all words that mean the same on one line, or mark two senses: B (2)`},
		{"en:\ta\tb\nen:\tc\tb (2)", `warning 2:7 repeated "b" stands on line 1 too ` +
			`| put all words that mean the same on one line, or mark two senses: b (2)`},
	}
	for _, test := range tests {
		var l fault.List
		ParseThesaurus("thesaurus.tsv", []byte(test.list), &l)
		expect(t, &l, test.want)
	}
}

func TestSmallWords(t *testing.T) {
	var l fault.List
	got := ParseSmallWords("small-words.tsv", []byte("# invented\nen:\t0\tthe a\nes:\t3\tcómo\nen:\t2\tneed\n"), &l)
	expect(t, &l)
	want := map[string][]SmallWord{"en": {{"the", 0}, {"a", 0}, {"need", 2}}, "es": {{"cómo", 3}}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v\nwant %+v", got, want)
	}
	for list, want := range map[string]string{
		"en:\tthe": "1:1 small-words a line needs a language, a weight from 0 to 9 and words " +
			"| separate the three by tabs and the words by spaces",
		"en:\t10\tthe": "1:1 small-words a line needs a language, a weight from 0 to 9 and words " +
			"| separate the three by tabs and the words by spaces",
		"en:\t1\tthe\nen:\t2\tof the": `2:7 repeated "the" stands on line 1 too | remove one`,
	} {
		var l fault.List
		ParseSmallWords("small-words.tsv", []byte(list), &l)
		expect(t, &l, want)
	}
}
