package quantity

import (
	goparser "go/parser"
	"go/token"
	"os"
	"strconv"
	"strings"
	"testing"
)

// The package travels to the phone, so it stays with these imports.
func TestImports(t *testing.T) {
	allowed := map[string]bool{"errors": true, "math": true, "strconv": true, "strings": true, "unicode/utf8": true}
	files, err := os.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	read := 0
	for _, f := range files {
		if !strings.HasSuffix(f.Name(), ".go") || strings.HasSuffix(f.Name(), "_test.go") {
			continue
		}
		file, err := goparser.ParseFile(token.NewFileSet(), f.Name(), nil, goparser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		read++
		for _, im := range file.Imports {
			if path, _ := strconv.Unquote(im.Path.Value); !allowed[path] {
				t.Errorf("%s imports %s, which may not travel to the phone", f.Name(), path)
			}
		}
	}
	if read == 0 {
		t.Fatal("no source file was read")
	}
}
