package catalog

import (
	"bytes"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"golang.org/x/tools/txtar"
)

const (
	catalogFile = "calculators/catalog/catalog.go"
	wordsFile   = "calculators/words/es/placing.tsv"
	publishFile = "testdata/published/hose-content.tsv"
	manualFile  = "content/manual.yaml"
)

// Adding a calculator takes a folder, a file of published values, translations, a
// place in a group of the manual and two lines of the catalog. The test adds one in a copy of the project,
// and expects a fault for each part that is left out.
func TestAddingACalculator(t *testing.T) {
	start := time.Now()
	project := copyProject(t)
	before := project.read(t)
	added, err := txtar.ParseFile("../../testdata/added/hose-content.txtar")
	if err != nil {
		t.Fatal(err)
	}
	parts := map[string]string{}
	for _, f := range added.Files {
		parts[f.Name] = string(f.Data)
	}
	for _, name := range slices.Sorted(maps.Keys(parts)) {
		if strings.HasSuffix(name, ".go") {
			project.write(t, name, parts[name])
		}
	}
	catalog := before[catalogFile]
	catalog = insertBefore(t, catalog, "\t\"coursebook/calculators/placing/pourtime\"\n", parts["import"])
	catalog = insertBefore(t, catalog, "\t\tpumpline.Calculator,\n", parts["list"])
	project.write(t, catalogFile, catalog)

	const check = "TestCatalog/hose-content"
	project.fails(t, "create "+publishFile, "go", "test", "./calculators/catalog", "-run", check)
	project.write(t, publishFile, parts[publishFile])
	project.succeeds(t, "hose-content", "go", "test", "./calculators/catalog", "-run", check, "-v")
	project.fails(t, "7 texts have no Español translation", "go", "run", "./generator", "inspect", "-strict")
	project.succeeds(t, "# "+wordsFile+"\nA hose is emptied", "go", "run", "./generator", "inspect", "-words", "es")
	project.write(t, wordsFile, before[wordsFile]+parts["words"])
	project.fails(t, `calculator "hose-content" is in no group`, "go", "run", "./generator", "inspect", "-strict")
	project.write(t, manualFile, strings.Replace(before[manualFile], "pump-line, ", "pump-line, hose-content, ", 1))
	project.succeeds(t, "No faults, no warnings.", "go", "run", "./generator", "inspect", "-strict")
	project.succeeds(t, "0.05 yd³", "go", "run", "./generator", "calc", "hose-content")

	project.checkChanges(t, before)
	t.Logf("a calculator added and checked in %.1f s, copy included", time.Since(start).Seconds())
}

// project is a copy of the project's tracked files.
type project struct{ root string }

// copied are the folders and files that the commands of the test read.
var copied = []string{"calculators", "content", "generator", "themes", "testdata/published", "go.mod", "go.sum"}

func copyProject(t *testing.T) project {
	t.Helper()
	p := project{t.TempDir()}
	for _, name := range copied {
		from, to := filepath.Join("../..", name), filepath.Join(p.root, name)
		info, err := os.Stat(from)
		if err != nil {
			t.Fatal(err)
		}
		if info.IsDir() {
			err = os.CopyFS(to, os.DirFS(from))
		} else if data, readErr := os.ReadFile(from); readErr == nil {
			err = os.WriteFile(to, data, 0o644)
		} else {
			err = readErr
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return p
}

// read returns every file of the project by its slash-separated path.
func (p project) read(t *testing.T) map[string]string {
	t.Helper()
	files := map[string]string{}
	err := filepath.WalkDir(p.root, func(name string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(p.root, name)
		files[filepath.ToSlash(rel)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func (p project) write(t *testing.T, name, text string) {
	t.Helper()
	name = filepath.Join(p.root, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// run runs a command in the project and returns its combined output.
func (p project) run(args ...string) (string, error) {
	cmd := exec.Command(args[0], args[1:]...)
	cmd.Dir = p.root
	cmd.Env = append(os.Environ(), "PWD="+p.root, "COURSEBOOK_CHECKOUT=")
	out, err := cmd.CombinedOutput()
	return string(out), err
}

func (p project) succeeds(t *testing.T, want string, args ...string) {
	t.Helper()
	if out, err := p.run(args...); err != nil || !strings.Contains(out, want) {
		t.Errorf("%s: %v, want %q\n%s", strings.Join(args, " "), err, want, out)
	}
}

func (p project) fails(t *testing.T, want string, args ...string) {
	t.Helper()
	if out, err := p.run(args...); err == nil || !strings.Contains(out, want) {
		t.Errorf("%s: %v, want a failure with %q\n%s", strings.Join(args, " "), err, want, out)
	}
}

// checkChanges checks that only the files of the addition have changed.
func (p project) checkChanges(t *testing.T, before map[string]string) {
	t.Helper()
	after := p.read(t)
	var changed []string
	for name, text := range after {
		if old, ok := before[name]; !ok || old != text {
			changed = append(changed, name)
		}
	}
	for name := range before {
		if _, ok := after[name]; !ok {
			changed = append(changed, name+" (gone)")
		}
	}
	slices.Sort(changed)
	want := []string{catalogFile, "calculators/placing/hosecontent/calculator.go",
		"calculators/placing/hosecontent/compute.go", wordsFile, manualFile, publishFile}
	if !slices.Equal(changed, want) {
		t.Errorf("changed files %q, want %q", changed, want)
	}
	if n := lines(after[catalogFile]) - lines(before[catalogFile]); n != 2 {
		t.Errorf("the catalog has %d more lines, want 2", n)
	}
}

func lines(text string) int { return bytes.Count([]byte(text), []byte("\n")) }

func insertBefore(t *testing.T, text, line, added string) string {
	t.Helper()
	if strings.Count(text, line) != 1 {
		t.Fatalf("the catalog does not have the line %q exactly once", line)
	}
	return strings.Replace(text, line, added+line, 1)
}
