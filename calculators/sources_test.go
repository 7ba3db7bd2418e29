package calculators

import (
	"io/fs"
	"os"
	"path"
	"strings"
	"testing"
)

// The embedded trees hold every Go file below this folder, at any depth,
// and every file of translations. A pattern that omits a level of folders
// omits its listings and texts without an error.
func TestEmbeddedTreesAreComplete(t *testing.T) {
	sources, words := 0, 0
	err := fs.WalkDir(os.DirFS("."), ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.Contains(name, "/") {
			return err
		}
		tree := Sources
		switch path.Ext(name) {
		case ".go":
			sources++
		case ".tsv":
			tree = Words
			words++
		default:
			t.Errorf("%s is neither a source nor a file of translations", name)
			return nil
		}
		if _, err := fs.Stat(tree, name); err != nil {
			t.Errorf("%s is not embedded", name)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if sources < 37 || words < 11 {
		t.Errorf("found only %d sources and %d files of translations", sources, words)
	}
}
