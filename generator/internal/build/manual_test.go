package build

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/calctest"
	"coursebook/generator/internal/fault"
	"coursebook/generator/module/compiling"
)

// invented returns the calculators of the invented manual. The listing of the tank's
// formula is a function of the calculators' sources. No source has a link, so that every
// link out of the site is one of the manual.
func invented() []*calc.Calculator {
	tank := calctest.Tank()
	tank.Formulas[0].Go = "calc.ParseDay"
	tank.Sources[0].Link = ""
	return []*calc.Calculator{tank, calctest.Bare()}
}

const manualYAML = `title: {en: Tank book, es: Libro de tanques}
subtitle: {en: How tanks are filled, es: Cómo se llenan los tanques}
revised: 2026-11-25
languages:
  - {code: en, name: English, decimal: point}
  - {code: es, name: Español, decimal: comma}
stages:
  - {id: before, title: {en: Before, es: Antes}, hint: {en: Ready, es: Listo}}
  - {id: filling, title: {en: Filling, es: Llenado}}
roles:
  - {id: hand, title: {en: Hand, es: Ayudante}}
thesaurus: thesaurus.tsv
`

const fillPage = `---
title: Fill the tank
summary: Slowly, in lifts.
stage: filling
order: 10
roles: [hand]
when: Morning
time: 20 min
gear: [Hose]
sources: [common practice]
next: [blow-out]
words: [vat]
revised: 2026-11-25
---

Keep 2 ft clear of the ‹rim›; a lift is 300 mm. See [the words](words.md#words), [again](#steps), [the tank](calc:tank)
and [a standard](https://example.org/standard?a=1&b=2#part).

![A tank](../pictures/tank.svg)

> **WARNING** Water drowns & <b>wets</b>.

## Steps

1. **Open.** Turn the valve.
2. **Hold point: level.** Look at it.

## Check

- [ ] The valve is shut.

` + "```calculator\nid: tank\nset: {side: 2 ft}\n```\n\n```calculator\nid: tank\n```\n\n```table\ncalculator: " +
	"tank\ntable: sides\n```\n\n" +
	"```figure\nfile: photo.png\nalt: A photo\ncaption: By day\n```\n\n```figure\ncalculator: tank\nalt: A " +
	"drawing\n```\n\n" +
	"```questions\n- ask: Which first?\n  choices: [Rim, Floor]\n  answer: 2\n  why: Water falls.\n```\n"

// content is an invented manual with a page of each kind.
func content() map[string]string {
	return map[string]string{
		"manual.yaml":   manualYAML,
		"thesaurus.tsv": "en:\ttank\tvat\n",
		"en/index.md":   "---\ntitle: Home\nkind: home\nsummary: The day.\n---\n\nBegin with [filling](fill.md).\n",
		"en/fill.md":    fillPage,
		"en/blow-out.md": "---\ntitle: When a tank opens\nsummary: Stand back.\nstage: filling\norder: 20\nsources: " +
			"[common practice]\n---\n\n" +
			"## Steps\n\n1. Stand back from the rim.\n",
		"en/words.md": "---\ntitle: Words\nsummary: What words mean.\nkind: glossary\n---\n\n## Words\n\n- " +
			"**Rim** (also: edge): the top of a tank.\n",
		"en/cautions.md": "---\ntitle: Cautions\nsummary: All of them.\nkind: cautions\n---\n\n> **DANGER** Deep " +
			"water.\n",
		"en/sizes.md": "---\ntitle: Sizes\nsummary: A list.\nkind: reference\n---\n\n| Tank | Side " +
			"|\n|---|---|\n| Small | 1 ft |\n",
		"es/index.md": "---\ntitle: Inicio\nkind: home\nsummary: El día.\n---\n\nEmpiece con [llenar](fill.md).\n",
		"es/fill.md": "---\ntitle: Llene el tanque\nsummary: Despacio.\nstage: filling\norder: 10\nroles: " +
			"[hand]\nsources: [common practice]\n---\n\n" +
			"Deje 2,5 ft libres.\n\n```calculator\nid: tank\n```\n",
		"pictures/tank.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120.4 80">` +
			`<title>Tank</title></svg>`,
		"pictures/photo.png": photo(),
	}
}

// photo is a PNG picture of 7 by 5 dots.
func photo() string {
	var b bytes.Buffer
	if err := png.Encode(&b, image.NewGray(image.Rect(0, 0, 7, 5))); err != nil {
		panic(err)
	}
	return b.String()
}

// write writes files to a folder.
func write(t testing.TB, dir string, files map[string]string) {
	t.Helper()
	for name, text := range files {
		name = filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// module is the compiled module of the tests: package build does not read it.
var module = []byte("\x1f\x8b\x08\x00 the module")

func optionsFor(dir string) Options {
	return Options{Content: dir, Theme: os.DirFS("../../../themes/plumb"), Calculators: invented(),
		Module: func() (compiling.Module, error) { return compiling.Module{Packed: module}, nil }, Pocket: true}
}

// buildSite builds the invented manual with changes to its files (an empty text
// removes one) and to the options.
func buildSite(t *testing.T, changes map[string]string, with func(*Options)) (*Site, []fault.Fault) {
	t.Helper()
	files := content()
	for name, text := range changes {
		if files[name] = text; text == "" {
			delete(files, name)
		}
	}
	dir := t.TempDir()
	write(t, dir, files)
	o := optionsFor(dir)
	if with != nil {
		with(&o)
	}
	var faults fault.List
	site := Make(o, &faults)
	list := faults.All()
	for i := range list {
		if rel, err := filepath.Rel(dir, list[i].File); err == nil && filepath.IsAbs(list[i].File) {
			list[i].File = filepath.ToSlash(rel)
		}
	}
	return site, list
}

// buildGood builds the invented manual without changes; it fails on any fault.
func buildGood(t *testing.T) *Site {
	t.Helper()
	site, faults := buildSite(t, nil, nil)
	if site == nil {
		t.Fatalf("the invented manual has faults: %v", faults)
	}
	return site
}
