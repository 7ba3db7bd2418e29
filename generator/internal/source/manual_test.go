package source

import (
	"reflect"
	"testing"

	"coursebook/generator/internal/fault"
)

const goodManual = `title: {en: Wall book, es: Libro de muros}
subtitle:
  en: An invented crew
  es: Una cuadrilla inventada
revised: 2026-03-31
address: https://example.org/walls
languages:
  - {code: en, name: English, decimal: point}
  - {code: es, name: Español, decimal: comma}
stages:
  - id: plan
    title: {en: Plan, es: Planear}
    hint: {en: The week before, es: La semana antes}
  - id: pour
    title: {en: Pour, es: Colar}
roles:
  - id: foreman
    title: {en: Foreman, es: Capataz}
posters: [blow-out, crew-talk]
thesaurus: thesaurus.tsv
`

func TestManual(t *testing.T) {
	var l fault.List
	got := ParseManual("manual.yaml", []byte(goodManual), &l)
	expect(t, &l)
	want := Manual{
		Title:    map[string]string{"en": "Wall book", "es": "Libro de muros"},
		Subtitle: map[string]string{"en": "An invented crew", "es": "Una cuadrilla inventada"},
		Revised:  "2026-03-31", Address: "https://example.org/walls/", Thesaurus: "thesaurus.tsv",
		Languages: []Language{{"en", "English", "point", 8}, {"es", "Español", "comma", 9}},
		Stages: []Stage{
			{"plan", map[string]string{"en": "Plan", "es": "Planear"},
				map[string]string{"en": "The week before", "es": "La semana antes"}, 11},
			{"pour", map[string]string{"en": "Pour", "es": "Colar"}, nil, 14}},
		Roles:   []Role{{"foreman", map[string]string{"en": "Foreman", "es": "Capataz"}, 17}},
		Posters: []Poster{{"blow-out", 19, 11}, {"crew-talk", 19, 21}},
		Lines: map[string]int{"title": 1, "subtitle": 2, "revised": 5, "address": 6, "languages": 7, "stages": 10,
			"roles": 16, "posters": 19, "thesaurus": 20},
	}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v\nwant %+v", got, want)
	}
}

// Parts of a manual.yaml for manualFaults.
const (
	head      = "title: {en: A}\n"
	languages = "languages: [{code: en, name: English, decimal: point}]\n"
	stages    = "stages: [{id: a, title: {en: A}}]\n"
	spanish   = "languages: [{code: en, name: English, decimal: point}, " +
		"{code: es, name: Español, decimal: comma}]\n"
)

// manualFaults are manuals with the faults that each gives.
var manualFaults = []struct {
	name, manual string
	want         []string
}{
	{"empty", "", []string{
		"1:1 missing-key manual.yaml has no languages | add the line languages: …",
		"1:1 missing-key manual.yaml has no stages | add the line stages: …",
		"1:1 missing-key manual.yaml has no title | add the line title: …"}},
	{"plain title", "title: A\n" + languages + stages,
		[]string{"1:8 wrong-type title must be a text for each language, not text | write title: {en: …}"}},
	{"unknown language", "title: {en: A, fr: B}\n" + languages + stages,
		[]string{`1:16 unknown-language title is told in "fr", which is not among the languages | use one of: en`}},
	{"missing translation", head + spanish + "stages: [{id: a, title: {en: A, es: A}}]\n",
		[]string{"warning 1:8 missing-language title lacks the language es | add es: …"}},
	{"missing first language", "title: {es: A}\n" + spanish + "stages: [{id: a, title: {en: A, es: A}}]\n",
		[]string{"1:8 missing-language title lacks the first language, en | add en: …"}},
	{"language code", head + "languages: [{code: English, name: E, decimal: point}]\n" + stages,
		[]string{`2:20 bad-language "English" is not a language code ` +
			`| write two or three lower-case letters: en, es, pt-br`}},
	{"decimal mark", head + "languages: [{code: en, name: E, decimal: dot}]\n" + stages,
		[]string{`2:42 unknown-word decimal cannot be "dot" | use one of: point, comma`}},
	{"language twice",
		head + "languages: [{code: en, name: E, decimal: point}, {code: en, name: F, decimal: point}]\n" + stages,
		[]string{`2:57 duplicate-id language "en" stands twice, first on line 2 ` +
			`| rename or remove one of the two`}},
	{"no stages", head + languages + "stages: []\n", []string{"3:9 empty stages is empty | list at least one"}},
	{"stage twice", head + languages + "stages:\n- {id: a, title: {en: A}}\n- {id: a, title: {en: A}}\n",
		[]string{`5:8 duplicate-id stage "a" stands twice, first on line 4 | rename or remove one of the two`}},
	{"stage without title", head + languages + "stages:\n- id: a\n",
		[]string{"4:3 missing-key stage has no title | add the line title: …"}},
	{"stage is text", head + languages + "stages: [plan]\n",
		[]string{"3:10 wrong-type stage must be keys with values, not text | write id: …"}},
	{"unknown key in a role", head + languages + stages + "roles: [{id: a, title: {en: A}, names: b}]\n",
		[]string{`4:33 unknown-key unknown key "names" in role | use one of: id, title`}},
	{"address", head + languages + stages + "address: walls/\n",
		[]string{`4:10 bad-address address "walls/" is not the web address of a folder ` +
			`| write https://, the host and the folder`}},
	{"posters as text", head + languages + stages + "posters: blow-out\n",
		[]string{`4:10 wrong-type posters must be a list, not text | write posters: [blow-out]`}},
	{"poster twice", head + languages + stages + "posters:\n- crew-talk\n- crew-talk\n",
		[]string{`6:3 duplicate-id poster "crew-talk" stands twice, first on line 5 ` +
			`| rename or remove one of the two`}},
	{"poster by its file", head + languages + stages + "posters: [crew_talk.md]\n",
		[]string{`4:11 bad-id poster id "crew_talk.md" is not a plain name ` +
			`| use a-z, 0-9 and single hyphens: crew-talk-md`}},
	{"thesaurus outside", head + languages + stages + "thesaurus: ../words.tsv\n",
		[]string{`4:12 bad-path thesaurus "../words.tsv" is not the path of a file in the content folder ` +
			`| write its name, such as thesaurus.tsv, with / between folders`}},
	{"second document", head + languages + stages + "---\ntitle: B\n",
		[]string{"4:1 yaml-documents a second YAML document starts here | keep one document: remove the line ---"}},
	{"date", head + languages + stages + "revised: 31.03.2026\n",
		[]string{`4:10 bad-date revised: "31.03.2026" is not a date ` +
			`| write year, month and day with hyphens: 2026-03-31`}},
}

func TestManualFaults(t *testing.T) {
	for _, test := range manualFaults {
		t.Run(test.name, func(t *testing.T) {
			var l fault.List
			ParseManual("manual.yaml", []byte(test.manual), &l)
			expect(t, &l, test.want...)
		})
	}
}
