package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// Lines of Go code have at most so many columns, with a tab of four: what two
// versions of a file fill side by side on one screen.
const (
	mostColumns = 120
	tabColumns  = 4
)

func TestLinesAreNarrow(t *testing.T) {
	files := 0
	for _, root := range []string{"../calculators", "../generator"} {
		err := filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") {
				return err
			}
			data, err := os.ReadFile(name)
			if err != nil {
				return err
			}
			files++
			for i, line := range strings.Split(string(data), "\n") {
				if n := columns(line); n > mostColumns {
					t.Errorf("%s:%d: %d columns, at most %d", name, i+1, n, mostColumns)
				}
			}
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if files < 300 {
		t.Errorf("only %d files are read", files)
	}
}

// columns counts the columns of a line.
func columns(line string) int {
	n := 0
	for _, r := range line {
		if r == '\t' {
			n += tabColumns - n%tabColumns
		} else {
			n++
		}
	}
	return n
}
