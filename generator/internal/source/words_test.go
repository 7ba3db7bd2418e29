package source

import (
	"reflect"
	"testing"

	"coursebook/generator/internal/fault"
)

func TestSynonyms(t *testing.T) {
	const list = "# invented words\n\nen:\tfooting\tfoot  ing \tbase\nes:\tzapata\tcimiento\n" +
		"vibrator\tpoker\nen:\tbrace\tstrut\n"
	var l fault.List
	got := ParseSynonyms("synonyms.tsv", []byte(list), &l)
	expect(t, &l)
	want := map[string][][]string{
		"en": {{"footing", "foot ing", "base"}, {"brace", "strut"}},
		"es": {{"zapata", "cimiento"}},
		"":   {{"vibrator", "poker"}},
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestSynonymFaults(t *testing.T) {
	tests := []struct{ list, want string }{
		{"footing, base",
			"1:1 lone-word line has fewer than two words that mean the same " +
				"| part the words by tabs, not by spaces or commas"},
		{"en:",
			"1:1 lone-word line has fewer than two words that mean the same " +
				"| part the words by tabs, not by spaces or commas"},
		{"a\tb\nañil\t\tb", "2:6 empty empty word between two tabs or at the end | remove the extra tab"},
		{"a\tb\t", "1:5 empty empty word between two tabs or at the end | remove the extra tab"},
		{"en:\ta\tb\tA", `1:9 repeated "A" stands twice on this line | remove one`},
		{"EN:\ta\tb",
			`1:1 bad-language "EN" is not a language code | write two or three lower-case letters and a colon: en:`},
		{"a\tb\nc\tB", `warning 2:3 repeated "B" stands on line 1 too | put all words that mean the same on one line`},
	}
	for _, test := range tests {
		var l fault.List
		ParseSynonyms("synonyms.tsv", []byte(test.list), &l)
		expect(t, &l, test.want)
	}
}
