package build

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"coursebook/generator/internal/fault"
)

// childContent names the folder that a child of the test builds; it prints
// what came of it.
const childContent = "COURSEBOOK_TEST_CONTENT"

func TestMain(m *testing.M) {
	dir := os.Getenv(childContent)
	if dir == "" {
		os.Exit(m.Run())
	}
	var faults fault.List
	site := Make(optionsFor(dir), &faults)
	if site == nil {
		fault.Print(os.Stderr, faults.All())
		os.Exit(1)
	}
	for _, f := range site.Files {
		fmt.Println(f.Path, sum(f.Data))
	}
	fmt.Println("release", site.Release)
	fmt.Println("pocket", sum(site.Pocket))
}

func sum(data []byte) string {
	s := sha256.Sum256(data)
	return hex.EncodeToString(s[:])
}

// The same content gives the same bytes: in another folder, another zone and
// language of the machine, and with one processor or several.
func TestSameBytesEverywhere(t *testing.T) {
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	var first []byte
	for i, env := range [][]string{
		{"TZ=UTC", "LANG=C", "LC_ALL=C", "GOMAXPROCS=1"},
		{"TZ=Pacific/Kiritimati", "LANG=tr_TR.UTF-8", "LC_ALL=tr_TR.UTF-8", "GOMAXPROCS=4"},
		{"TZ=America/St_Johns", "LANG=es_ES.UTF-8", "LC_ALL=", "GOMAXPROCS=3"},
	} {
		dir := filepath.Join(t.TempDir(), fmt.Sprint("folder ", i), "book")
		write(t, dir, content())
		child := exec.Command(self)
		child.Env = append(append(os.Environ(), env...), childContent+"="+dir)
		child.Stderr = os.Stderr
		out, err := child.Output()
		if err != nil {
			t.Fatal(err)
		}
		if first == nil {
			first = out
		}
		if !bytes.Equal(out, first) || bytes.Count(out, []byte("\n")) < 25 {
			t.Errorf("with %v another site is built:\n%s\nand\n%s", env, first, out)
		}
	}
}

// One changed letter of the content makes another release and another
// edition, and changes no file but those that show it.
func TestAChangeShows(t *testing.T) {
	before := good(t)
	after, faults := made(t, map[string]string{"en/sizes.md": "---\ntitle: Sizes\nsummary: A list.\nkind: reference\n---\n\n| Tank | Side |\n|---|---|\n| Large | 9 ft |\n"}, nil)
	if after == nil {
		t.Fatal(faults)
	}
	if before.Release == after.Release {
		t.Error("the release is the same")
	}
	if bytes.Equal(before.Pocket, after.Pocket) || bytes.Equal(file(before, "sw.js"), file(after, "sw.js")) {
		t.Error("the worker or the one-file edition does not change")
	}
	for _, f := range before.Files {
		data := file(after, f.Path)
		if data != nil && filepath.Dir(f.Path) == "assets" && !bytes.Equal(data, f.Data) {
			t.Errorf("%s keeps its name with other content", f.Path)
		}
		if filepath.Ext(f.Path) == ".html" && bytes.Equal(data, f.Data) {
			t.Errorf("%s does not show the new edition", f.Path)
		}
	}
}
