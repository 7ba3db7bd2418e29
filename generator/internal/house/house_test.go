package house

import (
	"io/fs"
	"os"
	"path/filepath"
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

	for _, dir := range []string{"", "deep", "deep/er", "deep/other"} { // another module's go.mod is passed by
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

// A binary that carries its parts reads nothing of the disk and runs no Go.
func TestPacked(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	h := &House{packed: fstest.MapFS{
		ModulePath:                    {Data: []byte("module")},
		ThemePath + "/icon.svg":       {Data: []byte("icon")},
		StarterPath + "/manual.yaml":  {Data: []byte("manual")},
		StarterPath + "/en/corner.md": {Data: []byte("corner")},
	}}
	if data, err := h.Module(); err != nil || string(data) != "module" || h.Root() != "" {
		t.Errorf("module %q, %v, root %q", data, err, h.Root())
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

// Where the module does not compile, the compiler's words are handed on.
func TestModuleThatDoesNotCompile(t *testing.T) {
	root := t.TempDir()
	if err := os.MkdirAll(filepath.Join(root, "generator/browser"), 0o755); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{"go.mod": "module coursebook\n\ngo 1.26\n", "generator/browser/main.go": "package main\n\nfunc main() { nothing() }\n"} {
		if err := os.WriteFile(filepath.Join(root, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	data, err := (&House{root: root}).Module()
	if err == nil || data != nil || !strings.Contains(err.Error(), "undefined: nothing") {
		t.Errorf("%v", err)
	}
	t.Setenv("PATH", t.TempDir())
	if _, err := (&House{root: root}).Module(); err == nil {
		t.Error("the module was compiled without Go")
	}
}
