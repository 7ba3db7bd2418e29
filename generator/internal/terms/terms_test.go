package terms

import (
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
)

const list = "# a comment\n" +
	"es:\trelease\tliberar\tsuelt* por, soltar la varilla\tsuelta por dentro\n" +
	"es:\tstop!\t¡pare!\talto\tlo alto, page:eyes\n" +
	"en:\tstory\tstory\tstorey*\n"

func parsed(t *testing.T) List {
	t.Helper()
	var faults fault.List
	l := Parse("terms.tsv", []byte(list), &faults)
	if len(faults.All()) > 0 {
		t.Fatal(faults.All())
	}
	return l
}

func TestCheck(t *testing.T) {
	l := parsed(t)
	for _, c := range []struct{ lang, page, text, found string }{
		{"es", "", "Caja suelta por el mayordomo", "suelta por"},
		{"es", "", "Una caja **suelta** por el mayordomo", "suelta** por"}, // marks between words
		{"es", "", "La caja suelta. Por eso", ""},                          // two sentences
		{"es", "", "va suelta por dentro", ""},                             // the phrase is right
		{"es", "", "suelta por fuera", "suelta por"},
		{"es", "", "Grite ¡alto!", "alto"},
		{"es", "", "ALTO", "ALTO"},
		{"es", "", "En lo alto del muro", ""},
		{"es", "", "asfalto y altos", ""}, // whole words, and no star
		{"es", "eyes", "¡Alto!", ""},      // the page is right
		{"en", "", "alto suelta por", ""}, // another language
		{"en", "", "two-storeyed, storeys", "storeys"},
		{"en", "", "", ""},
	} {
		var faults fault.List
		l.Check(c.lang, []Text{{File: "x", Line: 1, Col: 1, Page: c.page, Text: c.text}}, &faults)
		found := ""
		for _, f := range faults.All() {
			_, rest, _ := strings.Cut(f.Text, `"`)
			found, _, _ = strings.Cut(rest, `"`)
		}
		if found != c.found {
			t.Errorf("%q: found %q, want %q", c.text, found, c.found)
		}
	}
}

func TestPlaceOfAWord(t *testing.T) {
	var faults fault.List
	parsed(t).Check("en", []Text{{File: "x", Line: 7, Col: 5, Text: "a storey\nand a storey"}}, &faults)
	all := faults.All()
	if len(all) != 2 || all[0].Line != 7 || all[0].Col != 7 || all[1].Line != 8 || all[1].Col != 7 ||
		all[0].Severity != fault.Warning || all[1].Source != "and a storey" {
		t.Error(all)
	}
}

func TestBadLines(t *testing.T) {
	for line, want := range map[string]string{
		"es\ta\tb\tc":         "bad-language",
		"es:\ta\tb":           "term-line",
		"es:\ta\tb\tc\td\te":  "term-line",
		"es:\ta\t\tc":         "term-line",
		"es:\ta\tb\t":         "term-line",
		"es:\ta\tb\tc,,d":     "empty",
		"es:\ta\tb\tc\td,":    "empty",
		"es:\ta\tb\tc*d":      "term-star",
		"es:\ta\tb\tc\tall *": "term-star",
	} {
		var faults fault.List
		l := Parse("terms.tsv", []byte(line), &faults)
		if len(l) > 0 || faults.Errors() != 1 || faults.All()[0].Code != want {
			t.Errorf("%q: %v, want %s", line, faults.All(), want)
		}
	}
}

// Every word of a page keeps its place, and only prose is left.
func TestPageText(t *testing.T) {
	page := "---\ntitle: Uno\nwords: [dos]\nsources:\n  - tres\ngear:\n  - cuatro\n---\n" +
		"Cinco [seis](siete.md#ocho) `nueve` (also: diez).\n" +
		"```figure\nfile: once.svg\nalt: doce\n```\n" +
		"```questions\n- ask: trece\n  choices: [catorce]\n  calculator: quince\n```\nfile: dieciséis\n"
	got := PageText(page)
	if len(got) != len(page) || strings.Count(got, "\n") != strings.Count(page, "\n") {
		t.Fatalf("other size: %q", got)
	}
	left := strings.Join(strings.Fields(strings.NewReplacer("[", " ", "]", " ", ".", " ").Replace(got)), " ")
	if want := "Uno - cuatro Cinco seis doce trece catorce file: dieciséis"; left != want {
		t.Errorf("left %q, want %q", left, want)
	}
	if strings.Index(got, "Cinco") != strings.Index(page, "Cinco") {
		t.Error("a word has moved")
	}
}

// Of the manual's file only the texts of the language stay, at their places.
func TestManualText(t *testing.T) {
	const manual = "title:\n  en: Wall\n  es: Muro\nrules:\n  - id: lift\n    words:\n" +
		"      es: [capa de]\n    basis:\n      es: Límite propio\n" +
		"hint: {en: One, es: \"Uno, dos\"}\nterms: terms.tsv\n"
	got := ManualText(manual, "es")
	if len(got) != len(manual) || strings.Join(strings.Fields(got), " ") != "Muro Límite propio \"Uno, dos\"" {
		t.Errorf("texts %q", got)
	}
	for _, word := range []string{"Muro", "Límite", "dos"} {
		if strings.Index(got, word) != strings.Index(manual, word) {
			t.Errorf("%s is moved to byte %d", word, strings.Index(got, word))
		}
	}
}

func TestLabels(t *testing.T) {
	svg := "<svg><title>Uno</title>\n<g><text x=\"1\">Dos <tspan>tres</tspan></text></g>" +
		"<style>no</style>\n<desc>cuatro</desc></svg>"
	var got []string
	texts := Labels("p.svg", []byte(svg))
	for _, l := range texts {
		got = append(got, strings.TrimSpace(l.Text))
	}
	s := strings.Join(got, " ")
	if s != "Uno Dos tres cuatro" || texts[1].Line != 2 || texts[3].Line != 3 || texts[0].Col != 13 {
		t.Error(texts)
	}
}
