//go:build unix

package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coursebook/calculators/catalog"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/build"
	"coursebook/generator/internal/parts"
	"coursebook/generator/module/compiling"
)

// With a Go version that is not tested the build succeeds, and prints which step
// it left out and why.
func TestUntestedGoVersion(t *testing.T) {
	b := newWorkshop(t)
	const reason = "warning: the module keeps its function names and line numbers: "
	for version, untested := range map[string]bool{"go1.26.0": false, "go1.99.2": true} {
		b.writeGo(t, version)
		out, err := b.command("build", "-content", "one", "-out", "site").CombinedOutput()
		if err != nil {
			t.Fatalf("%s: %v\n%s", version, err, out)
		}
		text := string(out)
		if strings.Contains(text, reason) != untested || strings.Contains(text, "this Go is "+version) != untested {
			t.Errorf("%s: the build prints %q", version, text)
		}
	}
}

// A preview prints the warnings that inspect does not list, at each build.
func TestPreviewPrintsBuildWarnings(t *testing.T) {
	root, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	module := compiling.Module{Packed: []byte("\x1f\x8b"), Notes: []string{"a step was left out"}}
	o := build.Options{
		Content: filepath.Join(root, filepath.FromSlash(parts.StarterPath)),
		Theme:   os.DirFS(filepath.Join(root, filepath.FromSlash(parts.ThemePath))),
		Preview: true, Calculators: catalog.All(), Rules: rules.All(),
		Module: func() (compiling.Module, error) { return module, nil },
	}
	var printed strings.Builder
	rebuild := previewBuild(std{err: &printed}, o, newProgress(&printed))
	for n := range 2 {
		files, faults := rebuild()
		if files == nil {
			t.Fatalf("no site: %v", faults)
		}
		if got := strings.Count(printed.String(), "warning: a step was left out"); got != n+1 {
			t.Errorf("after %d builds the warning is printed %d times: %q", n+1, got, printed.String())
		}
	}
}
