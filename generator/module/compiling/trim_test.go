package compiling

import (
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// The fields that only pages print leave the literals of calc.Calculator, calc.Formula and
// calc.Field, those in a list too, and nothing else changes: other types keep fields of the
// same names.
func TestWithoutPageOnly(t *testing.T) {
	const src = "package p\n\nvar C = &calc.Calculator{ID: \"c\", Sources: []calc.Source{{ID: \"a}, b\"}},\n" +
		"\tCautions: cautions, In: inputs,\n\tTables: []calc.Table{{ID: \"t\"}}}\n" +
		"var F = &calc.Formula{ID: \"f\", Limits: calc.Text(\"To 4 ft, \" +\n\t\"no more.\")}\n" +
		"var O = other.Formula{Limits: 1}\nvar L = calc.Limit{Source: \"a\"}\n" +
		"var I = []calc.Field{{ID: \"i\", Help: calc.Text(\"h\"), Cols: []calc.Field{{Decides: 1, ID: \"j\"}}}}\n" +
		"var P = []other.Field{{Help: 1}}\n"
	out, changed, err := withoutPageOnly("p.go", []byte(src))
	if err != nil || !changed {
		t.Fatal(changed, err)
	}
	head, tail, _ := strings.Cut(string(out), "\nvar _ = ")
	for _, gone := range []string{"Sources:", "Cautions:", "Tables:", "Limits: calc", "Help: calc", "Decides:"} {
		if strings.Contains(head, gone) {
			t.Errorf("%s is still there:\n%s", gone, head)
		}
	}
	for _, kept := range []string{`ID: "c",`, "In: inputs,", `ID: "f",`, "other.Formula{Limits: 1}",
		`calc.Limit{Source: "a"}`, `{ID: "i",`, `ID: "j"}`, "other.Field{{Help: 1}}"} {
		if !strings.Contains(head, kept) {
			t.Errorf("%s is gone:\n%s", kept, head)
		}
	}
	if !strings.Contains(tail, `[]calc.Source{{ID: "a}, b"}}`) || !strings.Contains(tail, "cautions") {
		t.Errorf("the values are not kept:\n%s", tail)
	}
	if _, err := parser.ParseFile(token.NewFileSet(), "p.go", out, 0); err != nil {
		t.Error(err)
	}
	if _, changed, err := withoutPageOnly("p.go", []byte("package p\n")); err != nil || changed {
		t.Error(changed, err)
	}
	if _, _, err := withoutPageOnly("p.go", []byte("package")); err == nil {
		t.Error("a file that is not Go is accepted")
	}
}

// Every file with a calculator is replaced, and each replacement is Go.
func TestOverlay(t *testing.T) {
	dir := t.TempDir()
	list, err := overlay(filepath.Join("..", "..", ".."), dir)
	if err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(list)
	if err != nil {
		t.Fatal(err)
	}
	rooms, err := filepath.Glob(filepath.Join("..", "..", "..", "calculators", "*", "*", "calculator.go"))
	if err != nil || len(rooms) < 37 {
		t.Fatal(len(rooms), err)
	}
	for _, room := range rooms {
		path, err := filepath.Abs(room)
		if err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(string(data), path) {
			t.Errorf("%s is not replaced", path)
		}
	}
	files, err := filepath.Glob(filepath.Join(dir, "*.go"))
	if err != nil || len(files) < len(rooms) {
		t.Fatal(len(files), err)
	}
	for _, f := range files {
		if _, err := parser.ParseFile(token.NewFileSet(), f, nil, 0); err != nil {
			t.Error(err)
		}
	}
}
