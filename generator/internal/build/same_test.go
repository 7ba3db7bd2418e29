package build

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"testing"

	"coursebook/calculators/calc"
	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/release"
)

// childContent is the environment variable with the folder that a child process of the
// test builds. The child prints the hashes of the built files.
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

// The same content gives the same bytes: in another folder, with another time zone and
// locale, and with one processor or several.
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
			t.Errorf("with %v a different site is built:\n%s\nand\n%s", env, first, out)
		}
	}
}

// A change of a page changes its file, the index of its language, release.json, the worker
// and the one-file edition, and no other file.
func TestChangedFiles(t *testing.T) {
	before := buildGood(t)
	sizes := "---\ntitle: Sizes\nsummary: A list.\nkind: reference\n---\n\n| Tank | Side |\n|---|---|\n| Large | 9 " +
		"ft |\n"
	after, faults := buildSite(t, map[string]string{"en/sizes.md": sizes}, nil)
	if after == nil {
		t.Fatal(faults)
	}
	if before.Release == after.Release || bytes.Equal(before.Pocket, after.Pocket) {
		t.Error("the release or the one-file edition does not change")
	}
	var changed []string
	for _, f := range after.Files {
		if !bytes.Equal(file(before, f.Path), f.Data) {
			changed = append(changed, f.Path)
		}
	}
	index := named(t, after, "assets/index-en-", ".txt").Path
	if want := []string{index, "en/sizes.html", "release.json", "sw.js"}; !slices.Equal(changed, want) {
		t.Errorf("changed: %v, not %v", changed, want)
	}
}

// release.json has the id of every page, which is the hash of the page without it, and
// the paths of files of the site. Only release.json and the worker contain the edition;
// no page contains the fingerprint or a listed path.
func TestReleaseList(t *testing.T) {
	site := buildGood(t)
	var list release.List
	if err := json.Unmarshal(file(site, release.Name), &list); err != nil {
		t.Fatal(err)
	}
	if list.Fingerprint != calc.Fingerprint(invented()) {
		t.Errorf("fingerprint %s", list.Fingerprint)
	}
	values := []string{list.Edition, list.Fingerprint, path.Base(list.Module)}
	for _, named := range []string{list.Module, list.Index["en"], list.Index["es"], list.Words["es"]} {
		values = append(values, path.Base(named))
		if file(site, named) == nil {
			t.Errorf("the list has %q, which is no file", named)
		}
	}
	pages := 0
	for _, f := range site.Files {
		if path.Ext(f.Path) != ".html" {
			continue
		}
		pages++
		id := list.Pages[f.Path]
		if len(id) != 16 || !bytes.Contains(f.Data, []byte(id)) {
			t.Errorf("%s does not contain its id %q", f.Path, id)
		}
		if sum(bytes.ReplaceAll(f.Data, []byte(id), nil))[:16] != id {
			t.Errorf("the id of %s is not its hash", f.Path)
		}
		for _, v := range values {
			if bytes.Contains(f.Data, []byte(v)) {
				t.Errorf("%s contains %s", f.Path, v)
			}
		}
	}
	if pages == 0 || pages != len(list.Pages) {
		t.Errorf("%d pages, %d of them listed", pages, len(list.Pages))
	}
	if !bytes.Contains(file(site, "sw.js"), []byte(`"release.json"`)) {
		t.Error("the worker does not list release.json")
	}
	if bytes.Contains(site.Pocket, []byte(release.IDPlaceholder)) {
		t.Error("the one-file edition contains the placeholder of its id")
	}
}
