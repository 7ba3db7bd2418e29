package compiling

import (
	"bytes"
	"encoding/json"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// pageOnly are the fields of declarations that only pages print, by type of package
// calc. The module never reads them, but the linker keeps what a variable refers to.
var pageOnly = map[string][]string{
	"Calculator": {"Purpose", "Sources", "Cautions", "Tables"},
	"Formula":    {"Limits", "Go", "Source"},
	"Field":      {"Help", "LeastSource", "MostSource", "Decides", "Example"},
}

// overlay writes the files of the calculators without the fields pageOnly to a folder,
// and there the file for the option -overlay of go build, whose path it returns. Only
// what the module compiles from changes; a test compares the answers of the module with
// those of the unchanged code.
func overlay(root, dir string) (string, error) {
	files, err := filepath.Glob(filepath.Join(root, "calculators", "*", "*.go"))
	if err != nil {
		return "", err
	}
	rooms, err := filepath.Glob(filepath.Join(root, "calculators", "*", "*", "*.go"))
	if err != nil {
		return "", err
	}
	top, err := filepath.Abs(filepath.Join(root, "calculators"))
	if err != nil {
		return "", err
	}
	replace := map[string]string{}
	for _, path := range append(files, rooms...) {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		src, err := os.ReadFile(path)
		if err != nil {
			return "", err
		}
		trimmed, changed, err := withoutPageOnly(path, src)
		if err != nil {
			return "", err
		}
		if !changed {
			continue
		}
		if path, err = filepath.Abs(path); err != nil {
			return "", err
		}
		name := strings.ReplaceAll(strings.TrimPrefix(path, top), string(filepath.Separator), "_")
		replace[path] = filepath.Join(dir, name) // the compiler's messages name this file
		if err := os.WriteFile(replace[path], trimmed, 0o644); err != nil {
			return "", err
		}
	}
	data, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	list := filepath.Join(dir, "overlay.json")
	return list, os.WriteFile(list, data, 0o644)
}

// withoutPageOnly returns a Go file without the fields pageOnly in composite literals.
// Each value is kept in a variable _ at the end, which the linker drops, so that the
// imports are still used. changed is false where the file has none; a file that does not
// parse is an error.
func withoutPageOnly(path string, src []byte) (trimmed []byte, changed bool, err error) {
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, path, src, parser.SkipObjectResolution)
	if err != nil {
		return nil, false, err
	}
	at := func(p token.Pos) int { return set.Position(p).Offset }
	var fields []*ast.KeyValueExpr
	listed := map[*ast.CompositeLit]string{} // types of the literals in a list, which do not name them
	ast.Inspect(file, func(n ast.Node) bool {
		literal, ok := n.(*ast.CompositeLit)
		if !ok {
			return true
		}
		name := calcType(literal.Type)
		if list, ok := literal.Type.(*ast.ArrayType); ok {
			for _, e := range literal.Elts {
				if element, ok := e.(*ast.CompositeLit); ok && element.Type == nil {
					listed[element] = calcType(list.Elt)
				}
			}
		} else if literal.Type == nil {
			name = listed[literal]
		}
		names := pageOnly[name]
		for _, e := range literal.Elts {
			kv, ok := e.(*ast.KeyValueExpr)
			if !ok {
				continue
			}
			if key, ok := kv.Key.(*ast.Ident); ok && slices.Contains(names, key.Name) {
				fields = append(fields, kv)
			}
		}
		return true
	})
	if len(fields) == 0 {
		return src, false, nil
	}
	slices.SortFunc(fields, func(a, b *ast.KeyValueExpr) int { return int(b.Pos() - a.Pos()) })
	out := append([]byte(nil), src...)
	var values []byte
	for _, f := range fields {
		end := at(f.End())
		for end < len(src) && src[end] != ',' && src[end] != '}' {
			end++
		}
		if src[end] == ',' {
			end++
		}
		values = fmt.Appendf(values, "\nvar _ = %s\n", src[at(f.Value.Pos()):at(f.Value.End())])
		lines := bytes.Count(src[at(f.Pos()):end], []byte("\n")) // kept, for the compiler's messages
		rest := append(bytes.Repeat([]byte("\n"), lines), out[end:]...)
		out = append(out[:at(f.Pos())], rest...)
	}
	return append(out, values...), true, nil
}

// calcType returns the name of a type of package calc, such as Formula; "" for another
// type or none. A literal inside a list of pointers has no type and is left as it is.
func calcType(t ast.Expr) string {
	selector, ok := t.(*ast.SelectorExpr)
	if !ok {
		return ""
	}
	if pkg, ok := selector.X.(*ast.Ident); !ok || pkg.Name != "calc" {
		return ""
	}
	return selector.Sel.Name
}
