package main

import (
	"bytes"
	"compress/gzip"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"coursebook/calculators/catalog"
	"coursebook/calculators/rules"
	"coursebook/generator/internal/build"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/offline"
	"coursebook/generator/internal/parts"
	editions "coursebook/generator/internal/release"
	"coursebook/generator/module/compiling"
)

// editLimit bounds what a phone that has saved the manual fetches after one
// added sentence, in bytes after gzip.
const editLimit = 120_000

// One sentence added to a page of the manual changes that page, the index of its
// language, the list of the release and the worker, and no other file.
func TestOneAddedSentence(t *testing.T) {
	content := filepath.Join(t.TempDir(), "content")
	if err := os.CopyFS(content, os.DirFS("../content")); err != nil {
		t.Fatal(err)
	}
	before := siteOf(t, content)
	edited := filepath.Join(content, "en", "bar-release.md")
	text, err := os.ReadFile(edited)
	if err != nil {
		t.Fatal(err)
	}
	text = append(text, "\nWipe the lever before it goes back into its box.\n"...)
	if err := os.WriteFile(edited, text, 0o644); err != nil {
		t.Fatal(err)
	}
	after := siteOf(t, content)

	if len(after) < 300 {
		t.Fatalf("%d files", len(after))
	}
	var changed, gone []string
	for path, data := range after {
		if !bytes.Equal(before[path], data) {
			changed = append(changed, path)
		}
	}
	for path := range before {
		if after[path] == nil {
			gone = append(gone, path)
		}
	}
	index := func(files map[string][]byte) string {
		for path := range files {
			if ok, _ := filepath.Match("assets/index-en-*.txt", path); ok {
				return path
			}
		}
		return "no English index"
	}
	slices.Sort(changed)
	want := []string{index(after), "en/bar-release.html", editions.Name, offline.WorkerName}
	if !slices.Equal(changed, want) {
		t.Errorf("changed: %v, not %v", changed, want)
	}
	if want := []string{index(before)}; !slices.Equal(gone, want) {
		t.Errorf("no longer there: %v, not %v", gone, want)
	}
	size := 0
	for _, path := range changed {
		n := gzipped(t, after[path])
		t.Logf("%s: %d B after gzip", path, n)
		size += n
	}
	t.Logf("%d of %d files, %d B after gzip", len(changed), len(after), size)
	if size > editLimit {
		t.Errorf("an added sentence costs %d B after gzip, limit %d B", size, editLimit)
	}
}

// siteOf builds a manual with the real calculators and theme. The module is
// replaced by a few bytes: a build copies it without reading it.
func siteOf(t *testing.T, content string) map[string][]byte {
	t.Helper()
	module := func() (compiling.Module, error) { return compiling.Module{Packed: []byte("\x1f\x8b the module")}, nil }
	o := build.Options{Content: content, Theme: os.DirFS("../themes/plumb"), Calculators: catalog.All(),
		Rules: rules.All(), Module: module}
	var faults fault.List
	site := build.Make(o, &faults)
	if site == nil {
		fault.Print(os.Stderr, faults.All())
		t.Fatal("the manual does not build")
	}
	files := map[string][]byte{}
	for _, f := range site.Files {
		files[f.Path] = f.Data
	}
	return files
}

func gzipped(t *testing.T, data []byte) int {
	t.Helper()
	var b bytes.Buffer
	w := gzip.NewWriter(&b)
	if _, err := w.Write(data); err != nil {
		t.Fatal(err)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Len()
}

// A contractor changes one line, the amount of a house rule in manual.yaml. Then pages
// print the new amount, calculators start with it, the list of the release has it, and
// every other page is the same.
func TestOneChangedRule(t *testing.T) {
	content := filepath.Join(t.TempDir(), "content")
	source, err := parts.Open()
	if err != nil {
		t.Fatal(err)
	}
	starter, err := source.Starter()
	if err != nil {
		t.Fatal(err)
	}
	if err := os.CopyFS(content, starter); err != nil {
		t.Fatal(err)
	}
	before := siteOf(t, content)
	manual := filepath.Join(content, "manual.yaml")
	text, err := os.ReadFile(manual)
	if err != nil {
		t.Fatal(err)
	}
	const old, changed = "  - id: lift\n    amount: 2 ft\n", "  - id: lift\n    amount: 18 in.\n"
	if strings.Count(string(text), old) != 1 {
		t.Fatal("the starter's manual has no house rule for the lift")
	}
	if err := os.WriteFile(manual, []byte(strings.Replace(string(text), old, changed, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
	after := siteOf(t, content)
	for path, want := range map[string]string{
		"en/pour-the-wall.html":      "18 in.",
		"en/house-rules.html":        "18 in.",
		"en/calc/vibrator.html":      `18"`,
		editions.Name:                `"lift": "18 in."`,
		"en/order-the-concrete.html": "",
		"en/calc/truck-spacing.html": "",
		"en/calc/water-added.html":   "",
		"index.html":                 "",
	} {
		same := bytes.Equal(before[path], after[path])
		if want == "" && !same {
			t.Errorf("%s has changed", path)
		}
		if want != "" && (same || !bytes.Contains(bytes.ReplaceAll(after[path], []byte("&#34;"), []byte(`"`)),
			[]byte(want))) {
			t.Errorf("%s does not say %s", path, want)
		}
		if len(after[path]) == 0 {
			t.Errorf("there is no %s", path)
		}
	}
}
