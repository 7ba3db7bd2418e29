package search

import (
	"go/parser"
	"go/token"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// TestImports: what the package may import without weighing down the module.
func TestImports(t *testing.T) {
	allowed := []string{"errors", "math", "slices", "strings", "unicode/utf8"}
	files, err := filepath.Glob("*.go")
	if err != nil || len(files) < 5 {
		t.Fatalf("%d files, %v", len(files), err)
	}
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		if err != nil {
			t.Fatal(err)
		}
		for _, i := range f.Imports {
			if path, _ := strconv.Unquote(i.Path.Value); !slices.Contains(allowed, path) {
				t.Errorf("%s imports %s", name, path)
			}
		}
	}
}

// TestStopWords: the lists are looked up by halving, so they must be sorted,
// and folded as words are.
func TestStopWords(t *testing.T) {
	for _, lang := range []string{"en", "es-MX"} {
		words := stopWords(lang)
		if len(words) < 50 || !slices.IsSorted(words) {
			t.Errorf("%s: %d words, sorted %v", lang, len(words), slices.IsSorted(words))
		}
		if got := wordsOf(strings.Join(words, " ")); !slices.Equal(got, words) {
			t.Errorf("%s: not folded: %v", lang, got)
		}
	}
	if stopWords("fr") != nil {
		t.Error("an unknown language has stop words")
	}
}
