package output

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"coursebook/generator/internal/fault"
)

// madeUp returns an invented site in which every file contains the version.
func madeUp(version string) []File {
	files := []File{{"index.html", []byte("home " + version)}, {"sw.js", []byte("worker " + version)}}
	for i := range 30 {
		files = append(files, File{fmt.Sprintf("en/page%d.html", i), []byte(strings.Repeat(version, 500+i))})
	}
	return append(files, File{"assets/" + version + ".css", []byte(version)})
}

// disk reads a published folder back, without the marker.
func disk(t *testing.T, dir string) []File {
	t.Helper()
	var files []File
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(path)
		rel, _ := filepath.Rel(dir, path)
		if rel != markerName {
			files = append(files, File{filepath.ToSlash(rel), data})
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func publish(t *testing.T, target, version string) {
	t.Helper()
	files := madeUp(version)
	if err := Publish(target, files, Release(files)); err != nil {
		t.Fatal(err)
	}
	holds(t, target, version)
}

func holds(t *testing.T, target, version string) {
	t.Helper()
	if Release(disk(t, target)) != Release(madeUp(version)) {
		t.Errorf("the target does not hold version %s", version)
	}
}

// alone checks that the folder of the target contains nothing else.
func alone(t *testing.T, target string) {
	t.Helper()
	entries, err := os.ReadDir(filepath.Dir(target))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if e.Name() != filepath.Base(target) {
			t.Errorf("%s was left beside the target", e.Name())
		}
	}
}

// byJournal makes exchange fail for the rest of the test, so that the journal is
// used.
func byJournal(t *testing.T) {
	exchangeFolders = func(a, b string) error { return errNoExchange }
	t.Cleanup(func() { exchangeFolders = exchange })
}

func TestPublish(t *testing.T) {
	for _, method := range []string{"exchange", "journal"} {
		t.Run(method, func(t *testing.T) {
			if method == "journal" {
				byJournal(t)
			}
			target := filepath.Join(t.TempDir(), "deep", "site")
			for _, version := range []string{"one", "two", "two", "three"} {
				publish(t, target, version)
				alone(t, target)
			}
			if err := Recover(target); err != nil {
				t.Error(err)
			}
			holds(t, target, "three")
		})
	}
}

func TestPublishIntoAnEmptyFolder(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	if err := os.Mkdir(target, 0o700); err != nil {
		t.Fatal(err)
	}
	publish(t, target, "one")
	publish(t, target, "two")
	if info, err := os.Stat(target); err != nil || info.Mode().Perm() != 0o700 {
		t.Errorf("the folder's permissions became %v, %v", info.Mode(), err)
	}
}

// refusal checks that Publish returns a fault with the text.
func refusal(t *testing.T, target string, files []File, text string) {
	t.Helper()
	err := Publish(target, files, Release(files))
	var f fault.Fault
	switch {
	case !errors.As(err, &f):
		t.Errorf("got %v, want a fault", err)
	case !strings.Contains(f.Text, text):
		t.Errorf("got %q, want %q in it", f.Text, text)
	case f.Hint == "" || f.File == "" || f.Code == "":
		t.Errorf("incomplete fault %+v", f)
	}
}

func TestTargetsOfOthers(t *testing.T) {
	dir := t.TempDir()
	mkdir := func(name string) string {
		p := filepath.Join(dir, name)
		if err := os.Mkdir(p, 0o755); err != nil {
			t.Fatal(err)
		}
		return p
	}
	put := func(path, data string) {
		if err := os.WriteFile(path, []byte(data), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	full := mkdir("full")
	put(filepath.Join(full, "letter.txt"), "dear")
	refusal(t, full, madeUp("one"), "not empty and was not written by coursebook")
	put(filepath.Join(full, markerName), "something else")
	refusal(t, full, madeUp("one"), "not empty and was not written by coursebook")
	if data, err := os.ReadFile(filepath.Join(full, "letter.txt")); err != nil || string(data) != "dear" {
		t.Error("the letter is gone")
	}

	file := filepath.Join(dir, "file")
	put(file, "x")
	refusal(t, file, madeUp("one"), "target is a file")
	refusal(t, filepath.Join(file, "site"), madeUp("one"), "cannot lock the target")
	refusal(t, filepath.Join(file, "a", "site"), madeUp("one"), "cannot")

	link := filepath.Join(dir, "link")
	if err := os.Symlink(mkdir("elsewhere"), link); err != nil {
		t.Fatal(err)
	}
	refusal(t, link, madeUp("one"), "symbolic link")
	refusal(t, "/", madeUp("one"), "cannot be a target folder")

	ours := filepath.Join(dir, "ours")
	publish(t, ours, "one")
	put(filepath.Join(ours, ".DS_Store"), "left by a file manager")
	put(filepath.Join(ours, "en", "NOTES"), "keep me")
	refusal(t, ours, madeUp("two"), `target holds "en/NOTES"`)
	if err := os.Remove(filepath.Join(ours, "en", "NOTES")); err != nil {
		t.Fatal(err)
	}
	publish(t, ours, "two")
}

func TestPaths(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	for _, path := range []string{"../x", "a/../../x", "/etc/x", "", ".", "a//b", "a/", "./a", `a\b`, "c:x", "a\x00",
		"a\nb"} {
		files := []File{{path, nil}}
		err := Publish(target, files, "r")
		var f fault.Fault
		if !errors.As(err, &f) || f.Code != "output-path" {
			t.Errorf("path %q: got %v", path, err)
		}
	}
	refusal(t, target, []File{{".coursebook", nil}}, "kept for the marker")
	refusal(t, target, []File{{"a", nil}, {"a", nil}}, `clashes with "a"`)
	refusal(t, target, []File{{"a/b", nil}, {"A/B", nil}}, `clashes with "a/b"`)
	refusal(t, target, []File{{"a/b/c", nil}, {"A", nil}}, `needs a folder where the file "A" stands`)
	if _, err := os.Lstat(target); !os.IsNotExist(err) {
		t.Error("a refused site was written")
	}
}

func TestLock(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	publish(t, target, "one")
	_, unlock, err := open(target, true)
	if err != nil {
		t.Fatal(err)
	}
	refusal(t, target, madeUp("two"), "another build is writing this target")
	var f fault.Fault
	if err := Recover(target); !errors.As(err, &f) || f.Code != "busy" {
		t.Errorf("Recover gave %v", err)
	}
	unlock()
	publish(t, target, "two")
	alone(t, target)
}

// A target with the same release is not replaced, unless a file in it has
// changed.
func TestUnchangedTarget(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	publish(t, target, "one")
	before, _ := os.Stat(target)
	publish(t, target, "one")
	if after, _ := os.Stat(target); !os.SameFile(before, after) {
		t.Error("an unchanged target was replaced")
	}
	if err := os.WriteFile(filepath.Join(target, "index.html"), []byte("home 0ne"), 0o644); err != nil {
		t.Fatal(err)
	}
	publish(t, target, "one")
}

// Each change of a page gets a later second, also when pages of equal size are
// published in fast succession or a page is missing from one release. Unchanged
// pages keep their time. Web servers distinguish versions by size and time in
// seconds (nginx: ETag is time and size in hexadecimal).
func TestTimes(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	second := func(name string) int64 {
		info, err := os.Stat(filepath.Join(target, name))
		if err != nil {
			t.Fatal(err)
		}
		return info.ModTime().Unix()
	}
	times := map[string]int64{} // by content of the page
	seen := map[int64]string{}
	constant := int64(0)
	for i, content := range []string{"aaa", "bbb", "", "ccc", "aaa", "ddd"} {
		files := []File{{"constant.html", []byte("same")}, {"other.html", fmt.Append(nil, i)}}
		if content != "" {
			files = append(files, File{"page.html", []byte(content)})
		}
		if err := Publish(target, files, Release(files)); err != nil {
			t.Fatal(err)
		}
		if i == 0 {
			constant = second("constant.html")
		}
		if got := second("constant.html"); got != constant {
			t.Errorf("an unchanged page went from time %d to %d", constant, got)
		}
		if content == "" {
			continue
		}
		now := second("page.html")
		if other, taken := seen[now]; taken {
			t.Errorf("pages %q and %q share a size and the second %d", other, content, now)
		}
		seen[now], times[content] = content, now
	}
	if ahead := times["ddd"] - time.Now().Unix(); ahead > 10 {
		t.Errorf("times ran %d s ahead", ahead)
	}
}

// After a write that fails the old release is in place, and nothing is left
// beside it.
func TestFailureWhileWriting(t *testing.T) {
	target := filepath.Join(t.TempDir(), "site")
	publish(t, target, "one")
	long := strings.Repeat("x", 300) // longer than any file system's names
	refusal(t, target, append(madeUp("two"), File{"en/" + long, nil}), "cannot write the new release")
	holds(t, target, "one")
	alone(t, target)
}

func TestRelease(t *testing.T) {
	a := []File{{"a", []byte("1")}, {"b", []byte("2")}}
	b := slices.Clone(a)
	slices.Reverse(b)
	if Release(a) != Release(b) {
		t.Error("the order of the files changes the release")
	}
	for _, other := range [][]File{{{"a", []byte("2")}, {"b", []byte("1")}}, a[:1],
		{{"a", []byte("1")}, {"c", []byte("2")}}} {
		if Release(other) == Release(a) {
			t.Errorf("%v has the release of %v", other, a)
		}
	}
	// printf '%s a\n%s b\n' $(printf 1|sha256sum|cut -c-64) $(printf 2|sha256sum|cut -c-64) | sha256sum
	if got, want := Release(a), "49a37c6f09fae537f43764205d44e7d06f7d281bff421c13cda83d2278c18a83"; got != want {
		t.Errorf("release is %s, want %s", got, want)
	}
}

func BenchmarkPublishTenThousandPages(b *testing.B) {
	target := filepath.Join(b.TempDir(), "site")
	files := make([]File, 10_000)
	for i := range files {
		files[i] = File{fmt.Sprintf("en/page%d.html", i), nil}
	}
	for n := 0; b.Loop(); n++ {
		for i := range files {
			files[i].Data = fmt.Append(nil, n, strings.Repeat("wall ", 2000))
		}
		if err := Publish(target, files, fmt.Sprint(n)); err != nil {
			b.Fatal(err)
		}
	}
}
