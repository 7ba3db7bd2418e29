package build

import (
	"bytes"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/calculators/figure"
	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/module/compiling"
)

// Invented calculators: a tank with rows, a table and a drawing, and one with
// nothing but a result. The listing shows a function that really stands in
// the calculators' sources.
var (
	length = &quantity.Display{Dim: quantity.Length,
		US:     quantity.UnitDisplay{Form: quantity.FeetInches, Unit: "ft", Step: 1.0 / 16},
		Metric: quantity.UnitDisplay{Unit: "m", Step: 0.001}}
	volume = &quantity.Display{Dim: quantity.Volume,
		US:     quantity.UnitDisplay{Unit: "ft³", Step: 0.1},
		Metric: quantity.UnitDisplay{Unit: "m³", Step: 0.01}}

	why = calc.Text("tank.why: A tank is no lake.")

	boxes = []calc.Field{{ID: "side", Label: calc.Text("tank.box-side: Box side"), Kind: calc.Number, Display: length,
		Min: &calc.Limit{At: 0, Unit: "ft", Why: why}, Max: &calc.Limit{At: 30, Unit: "ft", Why: why}}}

	cube = &calc.Formula{ID: "cube", Title: calc.Text("tank.cube: Volume of a cube"), Expr: "a^3",
		Result: calc.Var{Symbol: "V", Meaning: calc.Text("tank.v: volume"), Unit: "m³", US: "ft³"},
		Vars:   []calc.Var{{Symbol: "a", Meaning: calc.Text("tank.a: side"), Unit: "m", US: "ft"}},
		Fn:     calc.FuncN(func(v []float64) float64 { return v[0] * v[0] * v[0] }), Go: "calc.ParseDay", Source: "book"}

	tank = &calc.Calculator{
		ID: "tank", Title: calc.Text("tank.title: Tank"), Purpose: calc.Text("tank.purpose: How much a tank holds."),
		In: []calc.Field{
			{ID: "side", Label: calc.Text("tank.side: Side"), Kind: calc.Number, Display: length, Usual: "3 ft",
				Min: &calc.Limit{At: 0, Unit: "ft", Open: true, Why: why}, Max: &calc.Limit{At: 30, Unit: "ft", Why: why}},
			{ID: "shape", Label: calc.Text("tank.shape: Shape"), Kind: calc.Choice, Usual: "cube",
				Options: []calc.Option{{ID: "cube", Label: calc.Text("tank.cubic: cubic")}, {ID: "round", Label: calc.Text("tank.round: round")}}},
			{ID: "boxes", Label: calc.Text("tank.boxes: Boxes"), Kind: calc.Rows, Cols: boxes, MaxRows: 3,
				Usual: "1 ft"},
		},
		Out:      []calc.Field{{ID: "holds", Label: calc.Text("tank.holds: Holds"), Kind: calc.Number, Display: volume, Lead: true}},
		Formulas: []*calc.Formula{cube},
		Sources:  []calc.Source{{ID: "book", Title: "Invented", Status: calc.CommonPractice}},
		Tables:   []calc.Table{{ID: "sides", Title: calc.Text("tank.sides: By side"), Out: "holds", Down: calc.Axis{Path: "side", US: []string{"1 ft", "2 ft"}}}},
		Compute: func(r *calc.Recorder, in calc.Case) {
			if in.Choice("shape") == "round" {
				r.Refuse(calc.At("shape"), calc.Text("tank.no-round: Round tanks are not in this book."))
				return
			}
			r.Put("holds", r.Use(cube, in.Num("side")))
		},
		Draw: func(v calc.Locale, in calc.Case, _ calc.Result) figure.Drawing {
			return figure.Drawing{Width: 10, Height: 10, Title: "Tank", Nodes: []figure.Node{figure.Circle(figure.Ink, figure.Point{X: 5, Y: 5}, 4)}}
		},
	}

	bare = &calc.Calculator{ID: "bare", Title: calc.Text("bare.title: Bare"), Purpose: calc.Text("bare.purpose: One."),
		Out:     []calc.Field{{ID: "one", Label: calc.Text("bare.one: One"), Kind: calc.Number, Display: volume}},
		Compute: func(r *calc.Recorder, _ calc.Case) { r.Put("one", 1) }}
)

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
synonyms: synonyms.tsv
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

` + "```calculator\nid: tank\nset: {side: 2 ft}\n```\n\n```calculator\nid: tank\n```\n\n```table\ncalculator: tank\ntable: sides\n```\n\n" +
	"```figure\nfile: photo.png\nalt: A photo\ncaption: By day\n```\n\n```figure\ncalculator: tank\nalt: A drawing\n```\n\n" +
	"```questions\n- ask: Which first?\n  choices: [Rim, Floor]\n  answer: 2\n  why: Water falls.\n```\n"

// content is a small manual with a page of each kind.
func content() map[string]string {
	return map[string]string{
		"manual.yaml":  manualYAML,
		"synonyms.tsv": "tank\tvat\n",
		"en/index.md":  "---\ntitle: Home\nkind: home\nsummary: The day.\n---\n\nBegin with [filling](fill.md).\n",
		"en/fill.md":   fillPage,
		"en/blow-out.md": "---\ntitle: When a tank opens\nsummary: Stand back.\nstage: filling\norder: 20\nsources: [common practice]\n---\n\n" +
			"## Steps\n\n1. Stand back from the rim.\n",
		"en/words.md":    "---\ntitle: Words\nsummary: What words mean.\nkind: glossary\n---\n\n## Words\n\n- **Rim** (also: edge): the top of a tank.\n",
		"en/cautions.md": "---\ntitle: Cautions\nsummary: All of them.\nkind: cautions\n---\n\n> **DANGER** Deep water.\n",
		"en/sizes.md":    "---\ntitle: Sizes\nsummary: A list.\nkind: reference\n---\n\n| Tank | Side |\n|---|---|\n| Small | 1 ft |\n",
		"es/index.md":    "---\ntitle: Inicio\nkind: home\nsummary: El día.\n---\n\nEmpiece con [llenar](fill.md).\n",
		"es/fill.md": "---\ntitle: Llene el tanque\nsummary: Despacio.\nstage: filling\norder: 10\nroles: [hand]\nsources: [common practice]\n---\n\n" +
			"Deje 2,5 ft libres.\n\n```calculator\nid: tank\n```\n",
		"pictures/tank.svg":  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 120.4 80"><title>Tank</title></svg>`,
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

// write puts files into a folder.
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

// module stands for the compiled module: to a build it is bytes.
var module = []byte("\x1f\x8b\x08\x00 the module")

func optionsFor(dir string) Options {
	return Options{Content: dir, Theme: os.DirFS("../../../themes/plumb"), Calculators: []*calc.Calculator{tank, bare},
		Module: func() (compiling.Module, error) { return compiling.Module{Packed: module}, nil }, Pocket: true}
}

// made builds the small manual with changes to its files (an empty text
// removes one) and to the options.
func made(t *testing.T, changes map[string]string, with func(*Options)) (*Site, []fault.Fault) {
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

// good is made without changes; there must be no error.
func good(t *testing.T) *Site {
	t.Helper()
	site, faults := made(t, nil, nil)
	if site == nil {
		t.Fatalf("the small manual has faults: %v", faults)
	}
	return site
}
