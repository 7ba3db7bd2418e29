//go:build unix

package main

import (
	"bytes"
	"compress/gzip"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"coursebook/generator/internal/output"
	"coursebook/generator/internal/parts"
)

// The command builds two manuals in turn into one folder and is killed at random
// moments: while it reads, renders, stages or exchanges the folders. The folder
// always holds one of the two sites, complete. The next start removes what the
// killed one left beside it, even when that start stops at a fault.
func TestKilledBuildLeavesAWholeSite(t *testing.T) {
	const kills, bound = 12, 60 * time.Second
	b := newWorkshop(t)
	whole := map[string]string{}
	for _, book := range []string{"one", "two"} {
		b.run(t, true, "build", "-content", book, "-out", "want-"+book)
		whole[release(t, filepath.Join(b.dir, "want-"+book))] = book
	}
	if len(whole) != 2 {
		t.Fatal("the two manuals build the same site")
	}
	target := filepath.Join(b.dir, "out", "site")
	b.run(t, true, "build", "-content", "one", "-out", target)
	started := time.Now()
	b.run(t, true, "build", "-content", "two", "-out", target)
	usual := time.Since(started)

	random := rand.New(rand.NewPCG(2, 6))
	end := time.Now().Add(bound)
	hit := 0
	for i := 0; i < kills && time.Now().Before(end); i++ {
		other := map[string]string{"one": "two", "two": "one"}[whole[release(t, target)]]
		if b.kill(t, other, target, i%2 == 0, random, usual) {
			hit++
		}
		b.run(t, false, "build", "-content", "broken", "-out", target)
		if whole[release(t, target)] == "" {
			t.Fatalf("after kill %d the folder holds neither site whole", i)
		}
		beside, err := os.ReadDir(filepath.Dir(target))
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range beside {
			for _, leftover := range []string{"-stage", "-old", "-journal"} {
				if strings.HasSuffix(e.Name(), leftover) {
					t.Errorf("after kill %d the next start leaves %s", i, e.Name())
				}
			}
		}
	}
	if hit == 0 {
		t.Error("no build was killed: each ended first")
	}
}

// workshop is a folder with manuals and a go command that only copies a module
// compiled before, so that no kill falls into the compilation.
type workshop struct {
	dir string
	env []string
}

func newWorkshop(t *testing.T) workshop {
	t.Helper()
	root, err := filepath.Abs("..")
	if err != nil {
		t.Fatal(err)
	}
	b := workshop{dir: t.TempDir()}
	bin := filepath.Join(b.dir, "bin")
	b.env = append(os.Environ(), parts.CheckoutVariable+"="+root, "PATH="+bin+":"+os.Getenv("PATH"))
	starter := os.DirFS(filepath.Join(root, parts.StarterPath))
	for _, book := range []string{"one", "two", "broken"} {
		if err := os.CopyFS(filepath.Join(b.dir, book), starter); err != nil {
			t.Fatal(err)
		}
	}
	b.write(t, "two/en/more.md", "---\ntitle: More\nsummary: One page more.\nkind: reference\n---\nText.\n", 0o644)
	b.write(t, "broken/en/more.md", "---\ntitel: More\n---\nText.\n", 0o644)
	b.write(t, "module.wasm", string(compiledModule(t, root)), 0o644)
	b.writeGo(t, "go1.26.0")
	return b
}

// writeGo writes the go command, which prints a version and copies the module.
func (b workshop) writeGo(t *testing.T, version string) {
	t.Helper()
	script := `#!/bin/sh
if [ "$1" = env ]; then echo VERSION; exit; fi
while [ $# -gt 1 ]; do
	if [ "$1" = -o ]; then exec cp 'MODULE' "$2"; fi
	shift
done
exit 1
`
	names := strings.NewReplacer("VERSION", version, "MODULE", filepath.Join(b.dir, "module.wasm"))
	b.write(t, "bin/go", names.Replace(script), 0o755)
}

func (b workshop) write(t *testing.T, name, text string, mode fs.FileMode) {
	t.Helper()
	name = filepath.Join(b.dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), mode); err != nil {
		t.Fatal(err)
	}
}

// compiledModule returns the module of the real build, uncompressed.
func compiledModule(t *testing.T, root string) []byte {
	t.Helper()
	t.Setenv(parts.CheckoutVariable, root)
	h, err := parts.Open()
	if err != nil {
		t.Fatal(err)
	}
	module, err := h.Module()
	if err != nil {
		t.Fatal(err)
	}
	z, err := gzip.NewReader(bytes.NewReader(module.Packed))
	if err != nil {
		t.Fatal(err)
	}
	raw, err := io.ReadAll(z)
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

func (b workshop) command(args ...string) *exec.Cmd {
	c := exec.Command("coursebook", args...) // this test binary; see TestMain
	c.Dir, c.Env = b.dir, b.env
	return c
}

func (b workshop) run(t *testing.T, good bool, args ...string) {
	t.Helper()
	if out, err := b.command(args...).CombinedOutput(); (err == nil) != good {
		t.Fatalf("coursebook %v: %v\n%s", args, err, out)
	}
}

// kill starts a build and kills it: at a random moment of its usual duration or,
// with writing, shortly after the staging directory exists. It reports whether
// the kill ended the build.
func (b workshop) kill(t *testing.T, book, target string, writing bool, random *rand.Rand, usual time.Duration) bool {
	t.Helper()
	c := b.command("build", "-content", book, "-out", target)
	if err := c.Start(); err != nil {
		t.Fatal(err)
	}
	ended := make(chan struct{})
	go func() {
		c.Wait() // reports the kill as an error
		close(ended)
	}()
	wait := time.Duration(random.Int64N(int64(usual)))
	if writing {
		stage := filepath.Join(filepath.Dir(target), "."+filepath.Base(target)+".coursebook-stage")
		for begun := false; !begun; {
			_, err := os.Stat(stage)
			select {
			case <-ended:
				begun = true
			case <-time.After(time.Millisecond):
				begun = err == nil
			}
		}
		wait = time.Duration(random.Int64N(int64(30 * time.Millisecond)))
	}
	select {
	case <-ended:
	case <-time.After(wait):
		c.Process.Kill() // an error means that it has just ended
		<-ended
	}
	status, ok := c.ProcessState.Sys().(syscall.WaitStatus)
	return ok && status.Signaled()
}

// release returns the release of the files in a folder, without the marker.
func release(t *testing.T, dir string) string {
	t.Helper()
	var files []output.File
	err := filepath.WalkDir(dir, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || d.Name() == ".coursebook" {
			return err
		}
		data, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(dir, name)
		files = append(files, output.File{Path: filepath.ToSlash(rel), Data: data})
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return output.Release(files)
}
