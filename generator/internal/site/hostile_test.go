package site_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"coursebook/calculators/quantity"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/markdown"
	"coursebook/generator/internal/page"
	"coursebook/generator/internal/site"
	"coursebook/generator/internal/source"

	"golang.org/x/tools/txtar"
)

var update = flag.Bool("update", false, "write the wanted faults anew")

// hostile is the folder of bad input for tests of several packages.
const hostile = "../../../testdata/hostile"

// assemble reads a content folder in memory, in the steps of package build.
func assemble(files fstest.MapFS) (*site.Site, []*markdown.Document, []fault.Fault) {
	var faults fault.List
	read := source.ReadFS(files, &faults)
	var manual source.Manual
	for _, f := range read {
		if f.Kind == source.ManualFile {
			manual = source.ParseManual(f.Path, f.Data, &faults)
		}
	}
	languages := map[string]markdown.Language{}
	for _, l := range manual.Languages {
		if l.Decimal == "comma" {
			languages[l.Code] = markdown.Language{Mark: quantity.Comma}
		}
	}
	var docs []*markdown.Document
	var pages []*page.Page
	for _, f := range read {
		if f.Kind == source.Page {
			d := markdown.Parse(f, languages[f.Language()], &faults)
			docs = append(docs, d)
			pages = append(pages, &d.Page)
		}
	}
	s := site.Assemble(manual, read, pages, calculators, &faults)
	s.CheckProse(read, &faults)
	return s, docs, faults.All()
}

// folder returns the files of base.txtar, replaced and extended by those of an
// archive.
func folder(tb testing.TB, archive *txtar.Archive) fstest.MapFS {
	tb.Helper()
	base, err := txtar.ParseFile(hostile + "/base.txtar")
	if err != nil {
		tb.Fatal(err)
	}
	files := fstest.MapFS{}
	for _, a := range []*txtar.Archive{base, archive} {
		for _, f := range a.Files {
			if f.Name != "want" {
				files[f.Name] = &fstest.MapFile{Data: f.Data}
			}
		}
	}
	return files
}

// TestHostile: every archive of bad input gives exactly its faults.
func TestHostile(t *testing.T) {
	shared, _ := filepath.Glob(hostile + "/*.txtar")
	local, _ := filepath.Glob("testdata/*.txtar")
	if len(shared) < 2 || len(local) == 0 {
		t.Fatal("no archives")
	}
	for _, path := range append(shared, local...) {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".txtar"), func(t *testing.T) {
			archive, err := txtar.ParseFile(path)
			if err != nil {
				t.Fatal(err)
			}
			_, _, faults := assemble(folder(t, archive))
			var got bytes.Buffer
			fault.Print(&got, faults)
			want := ""
			for i := range archive.Files {
				if f := &archive.Files[i]; f.Name == "want" {
					want = string(f.Data)
					f.Data = got.Bytes()
				}
			}
			if *update && filepath.Base(path) != "base.txtar" {
				if err := os.WriteFile(path, txtar.Format(archive), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if got.String() != want {
				t.Errorf("got\n%s\nwant\n%s", &got, want)
			}
			for _, f := range faults {
				if f.Code == "" || strings.HasSuffix(f.Text, ".") {
					t.Errorf("fault %+v has no code or ends with a full stop", f)
				}
			}
		})
	}
}
