package catalog

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"slices"
	"strconv"
	"strings"
	"testing"

	"coursebook/calculators"
	"coursebook/calculators/calc"
	"coursebook/calculators/quantity"
)

// The catalog lists exactly the calculators that the sources declare, without
// those of package calctest.
func TestEveryDeclarationIsListed(t *testing.T) {
	var declared, listed []string
	err := fs.WalkDir(calculators.Sources, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasSuffix(name, "_test.go") || strings.HasPrefix(name, "calctest/") {
			return err
		}
		data, err := fs.ReadFile(calculators.Sources, name)
		if err != nil {
			return err
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, data, 0)
		if err != nil {
			return err
		}
		ast.Inspect(file, func(n ast.Node) bool {
			if id := declaredID(n); id != "" {
				declared = append(declared, id)
			}
			return true
		})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range All() {
		listed = append(listed, c.ID)
	}
	slices.Sort(declared)
	slices.Sort(listed)
	if !slices.Equal(declared, listed) {
		t.Errorf("declared: %v\nlisted: %v", declared, listed)
	}
}

// declaredID is the ID of a literal calc.Calculator{ID: "…", …}; empty for
// any other node.
func declaredID(n ast.Node) string {
	lit, ok := n.(*ast.CompositeLit)
	if !ok {
		return ""
	}
	if s, ok := lit.Type.(*ast.SelectorExpr); !ok || s.Sel.Name != "Calculator" {
		return ""
	}
	for _, e := range lit.Elts {
		kv, ok := e.(*ast.KeyValueExpr)
		if !ok {
			continue
		}
		key, ok1 := kv.Key.(*ast.Ident)
		value, ok2 := kv.Value.(*ast.BasicLit)
		if ok1 && ok2 && key.Name == "ID" {
			id, _ := strconv.Unquote(value.Value)
			return id
		}
	}
	return ""
}

// mostFirst is the most inputs that a page shows before the folded ones.
const mostFirst = 4

// Where there are more than six inputs, the declaration names those that decide, at most four at a time, and each has
// a place of its own.
func TestFewInputsDecide(t *testing.T) {
	for _, c := range All() {
		in := calc.NewCase(c.In)
		places := map[uint8]string{}
		for _, f := range c.In {
			if f.Decides == 0 || !in.Asked(f.ID) {
				continue
			}
			if other := places[f.Decides]; other != "" {
				t.Errorf("%s: %s and %s have the same place", c.ID, f.ID, other)
			}
			places[f.Decides] = f.ID
		}
		if len(places) > mostFirst || len(places) == 0 && len(c.In) > 6 {
			t.Errorf("%s: %d of %d inputs decide: %v", c.ID, len(places), len(c.In), places)
		}
	}
}

// A measure is asked for by more than one calculator, and in one dimension.
func TestMeasuresAreShared(t *testing.T) {
	dims := map[string]quantity.Dimension{}
	count := map[string]int{}
	for _, c := range All() {
		for _, f := range c.In {
			if f.Measure == "" {
				continue
			}
			if dim, ok := dims[f.Measure]; ok && dim != f.Display.Dim {
				t.Errorf("%s of %s has another dimension than elsewhere", f.ID, c.ID)
			}
			dims[f.Measure] = f.Display.Dim
			count[f.Measure]++
		}
	}
	for name, n := range count {
		if n < 2 {
			t.Errorf("%s is asked for once", name)
		}
	}
	if len(count) < 10 {
		t.Errorf("only %d measures are shared", len(count))
	}
}
