package translations

import (
	"bytes"
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
	"coursebook/calculators/shelf"
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
		"tank/a.go":      "package tank\n\nvar a = calc.Text(\"tank.a: One {x}.\")\nvar b = Text(`tank.b: Two`)\n",
		"tank/b.go":      "package tank\n\nfunc f() { use(calc.Text(\"tank.c: Joined \" +\n\t\"of \" + \"parts: three\")) }\n",
		"calctest/a.go":  "package calctest\n\nvar x = calc.Text(\"calctest.x: not for readers\")\n",
		"tank/a_test.go": "package tank\n\nvar x = calc.Text(\"tank.test: not for readers\")\n",
		"tank/deep/c.go": "package deep\n\nvar x = calc.Text(\"deep.x: Four\")\n",
		"tank/c.go":      "package tank\n\nvar d = calc.Text(key + \": computed\")\nvar e = Other(\"tank.e: no text\")\nvar g = calc.Text(\"no colon\")\n",
	}), &faults)
	if err != nil || faults.Errors() > 0 {
		t.Fatal(err, faults.All())
	}
	own := Texts{}
	for key, text := range texts {
		if !strings.HasPrefix(key, "quantity.") {
			own[key] = text
		}
	}
	want := Texts{"tank.a": "One {x}.", "tank.b": "Two", "tank.c": "Joined of parts: three", "deep.x": "Four"}
	if !maps.Equal(own, want) {
		t.Errorf("got %v, want %v", own, want)
	}
	for _, trouble := range quantity.AllParseErrors() {
		if texts[trouble.Key] != trouble.EN {
			t.Errorf("no text for the refusal %s", trouble.Key)
		}
	}
}

// Every text that a listed calculator holds is found in the sources, so none
// is left without a translator.
func TestEveryTextIsFound(t *testing.T) {
	var faults fault.List
	found, err := FromSources(calculators.Sources, &faults)
	if err != nil || faults.Errors() > 0 {
		t.Fatal(err, faults.All())
	}
	held := Texts{}
	for _, c := range shelf.All() {
		before := len(held)
		collect(reflect.ValueOf(c), held)
		if len(held)-before < 10 {
			t.Errorf("%s adds only %d texts", c.ID, len(held)-before)
		}
	}
	for key, text := range held {
		if found[key] != text {
			t.Errorf("%s: the declaration says %q, the sources %q", key, text, found[key])
		}
	}
}

// collect adds every calc.Text below a value.
func collect(v reflect.Value, texts Texts) {
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
			text := calc.Text(v.String())
			texts[text.Key()] = text.EN()
		}
	}
}

func TestOneKeyTwoTexts(t *testing.T) {
	var faults fault.List
	_, err := FromSources(sources(map[string]string{
		"a/a.go": "package a\n\nvar a = calc.Text(\"k.a: One\")\nvar b = calc.Text(\"k.a: One\")\n",
		"b/b.go": "package b\n\nvar a =  calc.Text(\"k.a: Two\")\n",
	}), &faults)
	if err != nil {
		t.Fatal(err)
	}
	want := "calculators/b/b.go:3:10: error: the key k.a has two English texts\n  hint: give one of them another key\n1 error\n"
	if got := printed(&faults); got != want {
		t.Errorf("got %s", got)
	}
}

func TestSourcesThatDoNotParse(t *testing.T) {
	var faults fault.List
	if _, err := FromSources(sources(map[string]string{"a/a.go": "package a\nvar"}), &faults); err == nil || !strings.Contains(err.Error(), "a/a.go:2") {
		t.Errorf("got %v", err)
	}
}

func printed(faults *fault.List) string {
	var b bytes.Buffer
	fault.Print(&b, faults.All())
	return b.String()
}

var english = Texts{"a": "Depth of {what} in {unit}", "b": "Side", "c": "Lid"}

func TestParse(t *testing.T) {
	for name, c := range map[string]struct {
		file string
		want calc.Translations
		says string // of the only fault
	}{
		"good":           {"# note\n\na\t" + Hash(english["a"]) + "\tEn {unit}: hondura de {what}\nb\t" + Hash("Side") + "\tLado\n", calc.Translations{"a": "En {unit}: hondura de {what}", "b": "Lado"}, ""},
		"Windows lines":  {"b\t" + Hash("Side") + "\tLado\r\n\r\nc\t" + Hash("Lid") + "\tTapa\r\n", calc.Translations{"b": "Lado", "c": "Tapa"}, ""},
		"empty":          {"", calc.Translations{}, ""},
		"two parts":      {"\nb\tLado\n", calc.Translations{}, "es.tsv:2:1: error: a line needs three parts: key, hash, text"},
		"no text":        {"b\t" + Hash("Side") + "\t\n", calc.Translations{}, "es.tsv:1:1: error: a line needs three parts"},
		"tab in text":    {"b\t" + Hash("Side") + "\tLa\tdo\n", calc.Translations{}, "error: a line needs three parts"},
		"unknown key":    {"z\t00000000\tZeta\n", calc.Translations{}, "error: no text has the key z"},
		"stale":          {"b\t00000000\tLado\n", calc.Translations{"b": "Lado"}, "look at “Side”, correct the text and write the hash " + Hash("Side")},
		"twice":          {"b\t" + Hash("Side") + "\tLado\nb\t" + Hash("Side") + "\tCostado\n", calc.Translations{"b": "Costado"}, "es.tsv:2:1: error: the key b stands twice"},
		"slot forgotten": {"a\t" + Hash(english["a"]) + "\tHondura de {what}\n", calc.Translations{"a": "Hondura de {what}"}, "use exactly these: {unit} {what}"},
		"slot renamed":   {"a\t" + Hash(english["a"]) + "\tHondura de {que} en {unit}\n", calc.Translations{"a": "Hondura de {que} en {unit}"}, "the slots of a differ from the English text"},
	} {
		var faults fault.List
		got := calc.Translations{}
		Parse("es.tsv", []byte(c.file), english, got, &faults)
		if !maps.Equal(got, c.want) {
			t.Errorf("%s: got %v", name, got)
		}
		said := printed(&faults)
		if (c.says == "") != (said == "") || !strings.Contains(said, c.says) || c.says != "" && !strings.HasSuffix(said, "\n1 error\n") {
			t.Errorf("%s: said %q", name, said)
		}
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
	all := Texts{"b": "Side", "a": "Depth", "c": "Lid"}
	if got := Missing(all, calc.Translations{"b": "Lado"}); !slices.Equal(got, []string{"a", "c"}) {
		t.Errorf("missing: %v", got)
	}
	if got := Missing(all, nil); len(got) != 3 {
		t.Errorf("without words: %v", got)
	}
}

// FuzzParse: whatever a file holds, a translation that is taken is of a known
// key, and a file without faults keeps every slot.
func FuzzParse(f *testing.F) {
	f.Add("a\t" + Hash(english["a"]) + "\t{unit}{what}\n")
	f.Add("b\t\t\t\n#\r\n\x00")
	f.Fuzz(func(t *testing.T, text string) {
		var faults fault.List
		got := calc.Translations{}
		Parse("es.tsv", []byte(text), english, got, &faults)
		for key, said := range got {
			if _, known := english[key]; !known || said == "" {
				t.Errorf("%q is taken as %q", key, said)
			}
			if faults.Errors() == 0 && !slices.Equal(slotsOf(said), slotsOf(english[key])) {
				t.Errorf("%q passes with other slots", said)
			}
		}
	})
}
