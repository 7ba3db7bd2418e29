package translations

import (
	"bytes"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/calculators/catalog"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
)

// SHA-256 of "abc" begins ba7816bf (FIPS 180-2, appendix B.1).
func TestHash(t *testing.T) {
	if got := Hash("abc"); got != "ba7816bf" {
		t.Errorf("got %s", got)
	}
}

func sources(texts map[string]string) fstest.MapFS {
	tree := fstest.MapFS{}
	for name, text := range texts {
		tree[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return tree
}

func TestFromSources(t *testing.T) {
	var faults fault.List
	texts, err := FromSources(sources(map[string]string{
		"tank/a.go":      "package tank\n\nvar a = calc.Text(\"One {x}.\")\nvar b = Text(`Two|feminine`)\n",
		"tank/b.go":      "package tank\n\nfunc f() { use(calc.Text(\"Joined \" +\n\t\"of \" + \"parts: three\")) }\n",
		"calctest/a.go":  "package calctest\n\nvar x = calc.Text(\"not for readers either\")\n",
		"tank/a_test.go": "package tank\n\nvar x = calc.Text(\"not for readers\")\n",
		"tank/room/c.go": "package room\n\nvar x = calc.Text(\"In a deeper folder\")\nvar y = calc.Text(\"Both\")\n",
		"barrel/d.go":    "package barrel\n\nvar y = calc.Text(\"Both\")\n",
		"calc/e.go":      "package calc\n\nvar z = Text(\"Of all\")\n",
		"tank/computed.go": "package tank\n\nvar d = calc.Text(key + \"computed\")\nvar e = Other(\"no text\")\n" +
			"var f = in.Text(\"a field\")\nvar g = calc.Text(\"\")\n",
	}), &faults)
	if err != nil || faults.Errors() > 0 {
		t.Fatal(err, faults.All())
	}
	for _, e := range quantity.AllParseErrors() {
		key := calc.Text(e.EN).Key()
		if texts[key].Topic != "common" || string(texts[key].Text) != e.EN {
			t.Errorf("no text for the parse error %q", e.EN)
		}
		delete(texts, key)
	}
	got := map[calc.Text]string{}
	for key, text := range texts {
		if key != text.Key() {
			t.Errorf("%q is listed under %x", text.Text, key)
		}
		got[text.Text] = text.Topic
	}
	want := map[calc.Text]string{"One {x}.": "tank", "Two|feminine": "tank", "Joined of parts: three": "tank",
		"In a deeper folder": "tank", "Both": "common", "Of all": "common"}
	if !maps.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

// Every text of a calculator in the catalog is found in the sources, so that none
// lacks a translation unnoticed.
func TestEveryTextIsFound(t *testing.T) {
	var faults fault.List
	found, err := FromSources(calculators.Sources, &faults)
	if err != nil || faults.Errors() > 0 {
		t.Fatal(err, faults.All())
	}
	for _, c := range catalog.All() {
		held := map[calc.Text]bool{}
		collect(reflect.ValueOf(c), held)
		if len(held) < 20 {
			t.Errorf("%s holds only %d texts", c.ID, len(held))
		}
		for text := range held {
			if found[text.Key()].Text != text {
				t.Errorf("%s: the sources lack the text %q", c.ID, text)
			}
		}
	}
}

// No sentence of a text has more than 25 words, and no text has a signal word,
// which the theme adds for the level of a note.
func TestSentencesAreShort(t *testing.T) {
	var faults fault.List
	found, err := FromSources(calculators.Sources, &faults)
	if err != nil {
		t.Fatal(err)
	}
	if len(found) < 2000 {
		t.Errorf("only %d texts are found", len(found))
	}
	signal := regexp.MustCompile(`\b(DANGER|WARNING|CAUTION|NOTICE)\b`)
	for _, text := range found {
		if text.Topic == Cited { // lists of places and figures
			continue
		}
		for _, sentence := range strings.Split(text.EN(), ". ") {
			if n := len(strings.Fields(sentence)); n > 25 {
				t.Errorf("a sentence of %d words: %s", n, sentence)
			}
		}
		if signal.MatchString(text.EN()) {
			t.Errorf("a signal word: %s", text.EN())
		}
	}
}

// collect adds every calc.Text below a value.
func collect(v reflect.Value, texts map[calc.Text]bool) {
	switch v.Kind() {
	case reflect.Pointer, reflect.Interface:
		if !v.IsNil() {
			collect(v.Elem(), texts)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			collect(v.Field(i), texts)
		}
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			collect(v.Index(i), texts)
		}
	case reflect.String:
		if v.Type() == reflect.TypeFor[calc.Text]() && v.String() != "" {
			texts[calc.Text(v.String())] = true
		}
	}
}

// The two literals have the same FNV-1a hash of 64 bits.
func TestOneKeyTwoTexts(t *testing.T) {
	var faults fault.List
	_, err := FromSources(sources(map[string]string{
		"a/a.go": "package a\n\nvar a = calc.Text(\"8yn0iYCKYHlIj4-BwPqk\")\n" +
			"var b = calc.Text(\"8yn0iYCKYHlIj4-BwPqk\")\n",
		"b/b.go": "package b\n\nvar a =  calc.Text(\"GReLUrM4wMqfg9yzV3KQ\")\n",
	}), &faults)
	if err != nil {
		t.Fatal(err)
	}
	want := "calculators/b/b.go:3:10: error: this text has the key of “8yn0iYCKYHlIj4-BwPqk”\n" +
		"  hint: change a word of one of them\n1 error\n"
	if got := printed(&faults); got != want {
		t.Errorf("got %s", got)
	}
}

func TestSourcesThatDoNotParse(t *testing.T) {
	var faults fault.List
	if _, err := FromSources(sources(map[string]string{"a/a.go": "package a\nvar"}), &faults); err == nil ||
		!strings.Contains(err.Error(), "a/a.go:2") {
		t.Errorf("got %v", err)
	}
}

func printed(faults *fault.List) string {
	var b bytes.Buffer
	fault.Print(&b, faults.All())
	return b.String()
}

var english = Keyed{"a": "Depth of {what} in {unit}", "b": "Side", "c": "Lid"}

func TestParseKeyed(t *testing.T) {
	type words = map[string]string
	for name, c := range map[string]struct {
		file  string
		want  words
		fault string // part of the only fault
	}{
		"good": {"# note\n\na\t" + Hash(english["a"]) + "\tEn {unit}: hondura de {what}\nb\t" + Hash("Side") +
			"\tLado\n",
			words{"a": "En {unit}: hondura de {what}", "b": "Lado"}, ""},
		"Windows lines": {"b\t" + Hash("Side") + "\tLado\r\n\r\nc\t" + Hash("Lid") + "\tTapa\r\n",
			words{"b": "Lado", "c": "Tapa"}, ""},
		"empty":       {"", words{}, ""},
		"two parts":   {"\nb\tLado\n", words{}, "es.tsv:2:1: error: a line needs three parts: key, hash, text"},
		"no text":     {"b\t" + Hash("Side") + "\t\n", words{}, "es.tsv:1:1: error: a line needs three parts"},
		"tab in text": {"b\t" + Hash("Side") + "\tLa\tdo\n", words{}, "error: a line needs three parts"},
		"unknown key": {"z\t00000000\tZeta\n", words{}, "error: no text has the key z"},
		"stale": {"b\t00000000\tLado\n", words{"b": "Lado"},
			"look at “Side”, correct the text and write the hash " + Hash("Side")},
		"twice": {"b\t" + Hash("Side") + "\tLado\nb\t" + Hash("Side") + "\tCostado\n", words{"b": "Costado"},
			"es.tsv:2:1: error: the key b is given twice"},
		"slot forgotten": {"a\t" + Hash(english["a"]) + "\tHondura de {what}\n", words{"a": "Hondura de {what}"},
			"use exactly these: {unit} {what}"},
		"slot renamed": {"a\t" + Hash(english["a"]) + "\tHondura de {que} en {unit}\n",
			words{"a": "Hondura de {que} en {unit}"},
			"the slots differ from the English text"},
	} {
		var faults fault.List
		got := words{}
		english.Parse("es.tsv", []byte(c.file), got, &faults)
		if !maps.Equal(got, c.want) {
			t.Errorf("%s: got %v", name, got)
		}
		checkOnlyFault(t, name, &faults, c.fault)
	}
}

// checkOnlyFault checks that there is no fault where text is empty, and otherwise
// exactly one, which contains it.
func checkOnlyFault(t *testing.T, name string, faults *fault.List, text string) {
	t.Helper()
	got := printed(faults)
	if (text == "") != (got == "") || !strings.Contains(got, text) ||
		text != "" && !strings.HasSuffix(got, "\n1 error\n") {
		t.Errorf("%s: faults %q", name, got)
	}
}

var tankTexts = textsOf("#3 bar", "Depth of {what} in {unit}", "Side", "How many", "How many|feminine")

func textsOf(list ...calc.Text) Texts {
	texts := Texts{}
	for _, text := range list {
		texts.add(Text{Text: text, Topic: "tank"})
	}
	return texts
}

func TestParseTexts(t *testing.T) {
	type words = map[calc.Text]string
	for name, c := range map[string]struct {
		file  string
		want  words
		fault string // part of the only fault
	}{
		"good": {"# note\n\nDepth of {what} in {unit}\tEn {unit}: hondura de {what}\nSide\tLado\r\n",
			words{"Depth of {what} in {unit}": "En {unit}: hondura de {what}", "Side": "Lado"}, ""},
		"number sign": {"#3 bar\tVarilla #3\n", words{"#3 bar": "Varilla #3"}, ""},
		"marks": {"How many\tCuántos\nHow many|feminine\tCuántas\n",
			words{"How many": "Cuántos", "How many|feminine": "Cuántas"}, ""},
		"one part": {"\nSide\n", words{}, "es.tsv:2:1: error: a line needs two parts: English text, translation"},
		"no text":  {"Side\t\n", words{}, "es.tsv:1:1: error: a line needs two parts"},
		"tab":      {"Side\tLa\tdo\n", words{}, "error: a line needs two parts"},
		"twice": {"Side\tLado\nSide\tCostado\n", words{"Side": "Costado"},
			"es.tsv:2:1: error: this text is translated twice"},
		"slot lost": {"Depth of {what} in {unit}\tHondura\n", words{"Depth of {what} in {unit}": "Hondura"},
			"use exactly these: {unit} {what}"},
		"edited": {"Sides\tLado\n", words{},
			"es.tsv:1:1: error: no text of the calculators reads “Sides”\n  Sides\tLado\n  ^\n" +
				"  hint: write “Side” in its place"},
	} {
		var faults fault.List
		got, want := calc.Translations{}, calc.Translations{}
		for text, translation := range c.want {
			want[text.Key()] = translation
		}
		orphans := tankTexts.Parse("es.tsv", []byte(c.file), got, &faults)
		tankTexts.Report(orphans, got)
		if !maps.Equal(got, want) {
			t.Errorf("%s: got %v", name, got)
		}
		checkOnlyFault(t, name, &faults, c.fault)
	}
}

func TestSlots(t *testing.T) {
	for text, want := range map[string][]string{
		"none": nil, "{b} {a} {b}": {"{a}", "{b}"}, "open {a": nil, "} {a}": {"{a}"}, "{}": {"{}"},
	} {
		if got := slotsOf(text); !slices.Equal(got, want) {
			t.Errorf("%s: %v", text, got)
		}
	}
}

func TestMissing(t *testing.T) {
	if got := english.Missing(map[string]string{"b": "Lado"}); !slices.Equal(got, []string{"a", "c"}) {
		t.Errorf("missing: %v", got)
	}
	if got := english.Missing(nil); len(got) != 3 {
		t.Errorf("without words: %v", got)
	}
	got := tankTexts.Missing(calc.Translations{calc.Text("Side").Key(): "Lado"})
	if len(got) != 4 || got[1].Text != "Depth of {what} in {unit}" || got[3].Text != "How many|feminine" {
		t.Errorf("missing: %v", got)
	}
}

// FuzzParse: in any file a translation that is accepted is of a
// known text, and a file without faults keeps every slot.
func FuzzParse(f *testing.F) {
	f.Add("a\t" + Hash(english["a"]) + "\t{unit}{what}\n")
	f.Add("b\t\t\t\n#\r\n\x00")
	f.Add("Side\tLado\nHow many|feminine\tCuántas\nDepth of {what} in {unit}\t{unit}{what}")
	f.Fuzz(func(t *testing.T, text string) {
		var faults fault.List
		keyed, words := map[string]string{}, calc.Translations{}
		english.Parse("es.tsv", []byte(text), keyed, &faults)
		for key, translation := range keyed {
			if _, known := english[key]; !known || translation == "" {
				t.Errorf("%q is accepted as %q", key, translation)
			}
			if faults.Errors() == 0 && !slices.Equal(slotsOf(translation), slotsOf(english[key])) {
				t.Errorf("%q passes with other slots", translation)
			}
		}
		faults = fault.List{}
		orphans := tankTexts.Parse("es.tsv", []byte(text), words, &faults)
		for key, translation := range words {
			known, ok := tankTexts[key]
			if !ok || translation == "" {
				t.Errorf("%x is accepted as %q", key, translation)
			}
			if faults.Errors() == 0 && !slices.Equal(slotsOf(translation), slotsOf(known.EN())) {
				t.Errorf("%q passes with other slots", translation)
			}
		}
		tankTexts.Report(orphans, words)
		if len(orphans) > 0 && faults.Errors() == 0 {
			t.Errorf("orphans %v are not reported", orphans)
		}
	})
}
