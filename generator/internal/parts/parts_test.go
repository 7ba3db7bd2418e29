package parts

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

func TestOpen(t *testing.T) {
	root, err := filepath.EvalSymlinks(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	write := func(name, text string) {
		t.Helper()
		name = filepath.Join(root, name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("go.mod", "module coursebook\n\ngo 1.26\n")
	write("deep/er/x", "")
	write("deep/other/go.mod", "module other\n")
	write(ThemePath+"/icon.svg", "<svg/>")
	write(StarterPath+"/manual.yaml", "title")

	for _, dir := range []string{"", "deep", "deep/er", "deep/other"} { // other has the go.mod of another module
		t.Chdir(filepath.Join(root, dir))
		h, err := Open()
		if err != nil || h.Root() != root {
			t.Fatalf("%q: %+v, %v", dir, h, err)
		}
		theme, err := h.Theme()
		if err != nil {
			t.Fatal(err)
		}
		starter, err := h.Starter()
		if err != nil {
			t.Fatal(err)
		}
		for name, part := range map[string]fs.FS{"icon.svg": theme, "manual.yaml": starter} {
			if _, err := fs.Stat(part, name); err != nil {
				t.Errorf("%q: %v", dir, err)
			}
		}
	}

	t.Chdir(t.TempDir())
	if h, err := Open(); err == nil || !strings.Contains(err.Error(), "run coursebook inside its checkout") {
		t.Errorf("outside a checkout: %+v, %v", h, err)
	}
	t.Setenv(CheckoutVariable, root)
	if h, err := Open(); err != nil || h.Root() != root {
		t.Errorf("by the variable: %+v, %v", h, err)
	}
}

// A binary that embeds the parts reads no other file and does not run Go.
func TestPacked(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	h := &Source{packed: fstest.MapFS{
		modulePath:                    {Data: []byte("module")},
		notesPath:                     {Data: []byte("one\ntwo")},
		ThemePath + "/icon.svg":       {Data: []byte("icon")},
		StarterPath + "/manual.yaml":  {Data: []byte("manual")},
		StarterPath + "/en/corner.md": {Data: []byte("corner")},
	}}
	m, err := h.Module()
	if err != nil || string(m.Packed) != "module" || !slices.Equal(m.Notes, []string{"one", "two"}) || h.Root() != "" {
		t.Errorf("module %q, %v, root %q", m, err, h.Root())
	}
	theme, err := h.Theme()
	if err != nil {
		t.Fatal(err)
	}
	if data, err := fs.ReadFile(theme, "icon.svg"); err != nil || string(data) != "icon" {
		t.Errorf("icon %q, %v", data, err)
	}
	starter, err := h.Starter()
	if err != nil {
		t.Fatal(err)
	}
	if names, err := fs.Glob(starter, "*/*.md"); err != nil || len(names) != 1 {
		t.Errorf("starter %v, %v", names, err)
	}
}

// A binary that embeds the output of Pack reads the same parts. Pack removes the
// files of an earlier pack.
func TestPack(t *testing.T) {
	out := t.TempDir()
	if err := os.WriteFile(filepath.Join(out, "old"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	for _, notes := range []string{"", "one", "one\ntwo"} {
		from := &Source{packed: fstest.MapFS{
			modulePath:                   {Data: []byte("module")},
			notesPath:                    {Data: []byte(notes)},
			ThemePath + "/icon.svg":      {Data: []byte("icon")},
			StarterPath + "/manual.yaml": {Data: []byte("manual")},
			manualPath:                   {Data: []byte("rules")},
		}}
		if _, err := from.Pack(out); err != nil {
			t.Fatal(err)
		}
		read := &Source{packed: os.DirFS(out)}
		m, err := read.Module()
		if err != nil || string(m.Packed) != "module" || strings.Join(m.Notes, "\n") != notes {
			t.Errorf("%q: module %q, %v", notes, m, err)
		}
		wants := map[string]string{ThemePath + "/icon.svg": "icon", StarterPath + "/manual.yaml": "manual"}
		for name, text := range wants {
			if data, err := fs.ReadFile(read.packed, name); err != nil || string(data) != text {
				t.Errorf("%s: %q, %v", name, data, err)
			}
		}
		if path, data, err := read.Manual(); err != nil || path != manualPath || string(data) != "rules" {
			t.Errorf("%s: %q, %v", path, data, err)
		}
		if _, err := fs.Stat(read.packed, "old"); err == nil {
			t.Error("a file of an earlier pack is still there")
		}
	}
}
