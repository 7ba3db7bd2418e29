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
