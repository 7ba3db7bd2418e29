package source

import (
	"reflect"
	"testing"

	"coursebook/generator/internal/fault"
)

func TestBlocks(t *testing.T) {
	var l fault.List
	at := func(body string) Block { return Block{Path: "en/a.md", Line: 20, Indent: 3, Body: []byte(body)} }

	c, ok := ParseCalculator(at("id: wall-volume\nset: {height: 8 ft, length: 12, gap: \"10' 6\\\"\"}\n"), &l)
	wantC := CalculatorPlace{ID: "wall-volume",
		Set:   []Setting{{"height", "8 ft", 21, 10}, {"length", "12", 21, 24}, {"gap", `10' 6"`, 21, 36}},
		Lines: map[string]int{"id": 20, "set": 21}}
	if !ok || !reflect.DeepEqual(c, wantC) {
		t.Errorf("calculator: got %+v, %t, want %+v", c, ok, wantC)
	}
	table, ok := ParseTable(at("calculator: form-pressure\ntable: rate\n"), &l)
	if !ok || table.Calculator != "form-pressure" || table.Table != "rate" || table.Lines["table"] != 21 {
		t.Errorf("table: got %+v, %t", table, ok)
	}
	f, ok := ParseFigure(at("file: corner.svg\nalt: Two corners\ncaption: First"), &l)
	if !ok || f.File != "corner.svg" || f.Alt != "Two corners" || f.Caption != "First" {
		t.Errorf("figure: got %+v, %t", f, ok)
	}
	if f, ok = ParseFigure(at("calculator: wall-volume"), &l); !ok || f.Calculator != "wall-volume" {
		t.Errorf("figure of a calculator: got %+v, %t", f, ok)
	}
	q, ok := ParseQuestions(at("- ask: Which side?\n  choices: [One, 2, Both at once]\n  answer: 2\n"+
		"  why: It anchors.\n- ask: How far?\n  answer: 4 ft\n"+
		"- ask: How deep?\n  choices: [1 ft, 2 ft]\n  ordered: yes\n  answer: 1\n"), &l)
	wantQ := []Question{
		{Ask: "Which side?", Choices: []string{"One", "2", "Both at once"}, Right: 2, Answer: "2", Why: "It anchors.",
			Line:  20,
			Lines: map[string]int{"ask": 20, "choices": 21, "answer": 22, "why": 23}},
		{Ask: "How far?", Answer: "4 ft", Line: 24, Lines: map[string]int{"ask": 24, "answer": 25}},
		{Ask: "How deep?", Choices: []string{"1 ft", "2 ft"}, Ordered: "yes", Right: 1, Answer: "1 ft", Line: 26,
			Lines: map[string]int{"ask": 26, "choices": 27, "ordered": 28, "answer": 29}}}
	if !ok || !reflect.DeepEqual(q, wantQ) {
		t.Errorf("questions: got %+v, %t, want %+v", q, ok, wantQ)
	}
	expect(t, &l)
}

func TestBlockFaults(t *testing.T) {
	parse := map[string]func(Block, *fault.List) bool{
		"calculator": func(b Block, l *fault.List) bool { _, ok := ParseCalculator(b, l); return ok },
		"table":      func(b Block, l *fault.List) bool { _, ok := ParseTable(b, l); return ok },
		"figure":     func(b Block, l *fault.List) bool { _, ok := ParseFigure(b, l); return ok },
		"questions":  func(b Block, l *fault.List) bool { _, ok := ParseQuestions(b, l); return ok },
	}
	tests := []struct{ block, body, want string }{
		{"calculator", "", "20:1 missing-key calculator block has no id | add the line id: …"},
		{"calculator", "id: a\nsett: {b: c}",
			`21:1 unknown-key unknown key "sett" in calculator block | did you mean "set"?`},
		{"calculator", "id: a\nset: [b]",
			"21:6 wrong-type set must be names with values, not a list | write set: {height: 8 ft}"},
		{"calculator", "id: a\nset: {b: 1, b: 2}",
			`21:13 duplicate-key key "b" stands twice, first on line 21 | keep one of the two`},
		{"calculator", "id: a\nset: {b: [1]}",
			"21:10 wrong-type b must be a single value, not a list | write b: some value"},
		{"calculator", "id: a\nset: {b: }",
			"21:10 wrong-type b must be a single value, not empty | write b: some value"},
		{"calculator", "id: Wall Volume",
			`20:5 bad-id id "Wall Volume" is not a plain name | use a-z, 0-9 and single hyphens: wall-volume`},
		{"table", "calculator: a", "20:1 missing-key table block has no table | add the line table: …"},
		{"figure", "caption: a",
			"20:1 figure-source figure needs either a file or a calculator " +
				"| write file: name.svg, or calculator: and its id"},
		{"figure", "file: a.svg\ncalculator: b\nalt: c",
			"20:1 figure-source figure needs either a file or a calculator " +
				"| write file: name.svg, or calculator: and its id"},
		{"figure", "file: a.svg",
			"20:1 missing-key figure has no alt | add the line alt: what a reader who cannot see it must know"},
		{"figure", "file: ../a.svg\nalt: b",
			`20:7 bad-path file "../a.svg" is not the path of a file in pictures ` +
				`| write its name, such as file.svg, with / between folders`},
		{"questions", "", "20:1 empty questions block is empty | write - ask: … and answer: …"},
		{"questions", "ask: a\nanswer: b",
			"20:1 wrong-type questions block must be a list, not keys with values " +
				"| write each on its own line after a hyphen: - …"},
		{"questions", "- ask: a", "20:3 missing-key question has no answer | add the line answer: …"},
		{"questions", "- ask: a\n  choices: [b, c]\n  answer: 3",
			"22:11 out-of-range answer is 3, outside 1 to 2 | choose a number in that range"},
		{"questions", "- ask: a\n  choices: [b, c]\n  answer: c",
			"22:11 wrong-type answer must be a whole number, not text | write answer: 1"},
		{"questions", "- ask: a\n  choices: [b]\n  answer: 1",
			"21:12 too-few a question needs at least two choices " +
				"| add a choice, or remove choices and write the answer in words"},
		{"questions", "- ask: a\n  choices: [b, B]\n  answer: 1",
			`21:16 repeated choice "B" stands twice | remove one`},
	}
	for _, test := range tests {
		t.Run(test.want, func(t *testing.T) {
			var l fault.List
			if parse[test.block](Block{Path: "en/a.md", Line: 20, Body: []byte(test.body)}, &l) {
				t.Error("a faulty block is called good")
			}
			expect(t, &l, test.want)
		})
	}
}

// The source line is shown as it is in the file, moved back to its column.
func TestBlockKeepsTheFilesColumns(t *testing.T) {
	var l fault.List
	ParseTable(Block{Path: "en/a.md", Line: 20, Indent: 3, Body: []byte("calculator: a\ntabel: b")}, &l)
	f := l.All()[0]
	if f.Line != 21 || f.Col != 4 || f.Source != "   tabel: b" {
		t.Errorf("got %d:%d %q", f.Line, f.Col, f.Source)
	}
}
