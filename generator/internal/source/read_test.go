package source

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"coursebook/generator/internal/fault"
)

// fileFaults lists the faults as "path:line:col code text".
func fileFaults(l *fault.List) []string {
	var out []string
	for _, f := range l.All() {
		out = append(out, fmt.Sprintf("%s:%d:%d %s %s", f.File, f.Line, f.Col, f.Code, f.Text))
		if f.Hint == "" {
			out = append(out, "no hint")
		}
	}
	return out
}

func write(t *testing.T, dir string, files map[string]string) {
	t.Helper()
	for name, data := range files {
		p := filepath.Join(dir, filepath.FromSlash(name))
		if err := errors.Join(os.MkdirAll(filepath.Dir(p), 0o755), os.WriteFile(p, []byte(data), 0o644)); err != nil {
			t.Fatal(err)
		}
	}
}

func TestRead(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, map[string]string{
		"manual.yaml":          "title: {}\n",
		"thesaurus.tsv":        "a\tb\n",
		"en/first-day.md":      "\uFEFF---\r\nline\rend",
		"pt-br/first-day.md":   "olá\n",
		"pictures/corner.svg":  "<svg/>",
		"pictures/Corner2.png": "\x89PNG\x00\xff\r\n",
		"notes/old plan.txt":   "\x00",
		".git/config":          "\x00",
		"en/.draft.md":         "\x00",
	})
	if err := os.Symlink("first-day.md", filepath.Join(dir, "en", "again.md")); err != nil {
		t.Fatal(err)
	}
	var l fault.List
	var got []string
	for _, f := range Read(dir, &l) {
		got = append(got, fmt.Sprintf("%s %d %q %s %s", f.Path, f.Kind, f.Data, f.Language(), f.Slug()))
		if want := fmt.Sprintf("%x", sha256.Sum256(f.Data)); f.Sum != want {
			t.Errorf("%s has sum %s, want %s", f.Path, f.Sum, want)
		}
	}
	want := []string{
		fmt.Sprintf("en/again.md %d %q en again", Page, "---\nline\nend"),
		fmt.Sprintf("en/first-day.md %d %q en first-day", Page, "---\nline\nend"),
		fmt.Sprintf("manual.yaml %d %q  ", ManualFile, "title: {}\n"),
		fmt.Sprintf("notes/old plan.txt %d %q  ", Other, "\x00"),
		fmt.Sprintf("pictures/Corner2.png %d %q  ", Picture, "\x89PNG\x00\xff\r\n"),
		fmt.Sprintf("pictures/corner.svg %d %q  ", Picture, "<svg/>"),
		fmt.Sprintf("pt-br/first-day.md %d %q pt-br first-day", Page, "olá\n"),
		fmt.Sprintf("thesaurus.tsv %d %q  ", Words, "a\tb\n"),
	}
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	if faults := fileFaults(&l); faults != nil {
		t.Errorf("faults: %q", faults)
	}
}

func TestReadWithoutFolder(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, map[string]string{"file": "x"})
	for name, want := range map[string]string{
		"none": ".:0:0 no-folder cannot open the content folder: it does not exist",
		"file": ".:0:0 no-folder cannot open the content folder: not a directory",
	} {
		var l fault.List
		if files := Read(filepath.Join(dir, name), &l); files != nil {
			t.Errorf("got files %v", files)
		}
		if got := fileFaults(&l); !slices.Equal(got, []string{want}) {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

func TestLinksAndDevices(t *testing.T) {
	base := t.TempDir()
	dir := filepath.Join(base, "content")
	write(t, base, map[string]string{"secret.md": "secret", "content/en/a.md": "a", "content/pictures/b.svg": "<svg/>"})
	for link, to := range map[string]string{
		"en/out.md":     "../../secret.md",
		"en/far.md":     filepath.Join(base, "secret.md"),
		"en/lost.md":    "nothing.md",
		"en/circle.md":  "circle.md",
		"en/folder":     "../pictures",
		"en/inner":      "..",
		"en/through.md": "../../content/en/a.md",
	} {
		if err := os.Symlink(to, filepath.Join(dir, link)); err != nil {
			t.Fatal(err)
		}
	}
	socket, err := net.Listen("unix", filepath.Join(dir, "en", "s.md"))
	if err != nil {
		t.Fatal(err)
	}
	defer socket.Close()
	var l fault.List
	files := Read(dir, &l)
	want := []string{
		"en/circle.md:1:0 link-circle symbolic link leads in a circle",
		"en/far.md:1:0 link-leaves symbolic link leads out of the content folder",
		"en/folder:1:0 link-to-folder symbolic link to a folder is not followed",
		"en/inner:1:0 link-to-folder symbolic link to a folder is not followed",
		"en/lost.md:1:0 link-dangles symbolic link leads to nothing",
		"en/out.md:1:0 link-leaves symbolic link leads out of the content folder",
		"en/s.md:1:0 not-a-file neither a file nor a folder, but a device, pipe or socket",
		"en/through.md:1:0 link-leaves symbolic link leads out of the content folder",
	}
	if got := fileFaults(&l); !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	if len(files) != 2 {
		t.Errorf("read %d files, want the two good ones", len(files))
	}
}

func TestNamesAndSizes(t *testing.T) {
	deep := strings.Repeat("d/", MaxDepth)
	tests := []struct {
		name  string
		files []string
		data  string
		want  []string
	}{
		{"case twins", []string{"en/ab.md", "pictures/X.svg", "pictures/x.svg"}, "x",
			[]string{`pictures/x.svg:1:0 same-name name differs from "pictures/X.svg" only by upper and lower case`}},
		{"folder twins", []string{"pictures/a.svg", "Pictures/b.svg"}, "x",
			[]string{`pictures:1:0 same-name name differs from "Pictures" only by upper and lower case`}},
		{"page names", []string{"en/First Day.md", "en/año.md", "en/a--b.md", "en/-.md"}, "x", []string{
			`en/-.md:1:0 page-name file name "-.md" does not fit a web address`,
			`en/First Day.md:1:0 page-name file name "First Day.md" does not fit a web address`,
			`en/a--b.md:1:0 page-name file name "a--b.md" does not fit a web address`,
			`en/año.md:1:0 page-name file name "año.md" does not fit a web address`}},
		{"kept names", []string{"en/all.md", "en/con.md"}, "x", []string{
			`en/all.md:1:0 page-name name "all.md" is kept for the A–Z list`,
			`en/con.md:1:0 file-name file name "con.md" means a device on Windows`}},
		{"page places", []string{"readme.md", "en/sub/a.md", "english/a.md", "en/A.MD"}, "x", []string{
			"en/A.MD:1:0 page-place page does not lie directly in a language folder",
			"en/sub/a.md:1:0 page-place page does not lie directly in a language folder",
			"english/a.md:1:0 page-place page does not lie directly in a language folder",
			"readme.md:1:0 page-place page does not lie directly in a language folder"}},
		{"folder for a page", []string{"en/a.md/b.txt", "c.md/d.svg"}, "x", []string{
			"c.md:1:0 folder-page folder stands where a page would",
			"en/a.md:1:0 folder-page folder stands where a page would"}},
		{"pictures", []string{"pictures/a b.png", "pictures/c.gif"}, "x", []string{
			`pictures/a b.png:1:0 file-name file name "a b.png" does not fit a web address`,
			"pictures/c.gif:1:0 picture-type kind of picture is not known"}},
		{"depth", []string{deep + "a.txt", deep + "d/b.txt"}, "x",
			[]string{deep + "d:1:0 too-deep folder lies more than 8 folders deep"}},
		{"text size", []string{"en/a.md", "pictures/a.svg"}, strings.Repeat("x", MaxText+1),
			[]string{"en/a.md:1:0 oversize holds 1048577 bytes, more than the limit of 1048576"}},
		{"picture size", []string{"pictures/a.png"}, strings.Repeat("x", MaxPicture+1),
			[]string{"pictures/a.png:1:0 oversize holds 8388609 bytes, more than the limit of 8388608"}},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			fsys := fstest.MapFS{}
			for _, f := range test.files {
				fsys[f] = &fstest.MapFile{Data: []byte(test.data)}
			}
			var l fault.List
			ReadFS(fsys, &l)
			if got := fileFaults(&l); !slices.Equal(got, test.want) {
				t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(test.want, "\n"))
			}
		})
	}
}

func TestTextOfFiles(t *testing.T) {
	tests := []struct {
		data string
		want []string
	}{
		{"ok\tñ — 日本\n", nil},
		{"ok\nañ\xff\xfe\n", []string{"2:3 not-utf8 byte 0xFF, which is not UTF-8"}},
		{"a\x00b", []string{"1:2 nul character NUL, which belongs in no text"}},
		{"añ\u202eb\u2066\n\u200b", []string{
			"1:3 direction-control character U+202E, which turns the writing direction",
			"1:5 direction-control character U+2066, which turns the writing direction"}},
		{"a\x1b[2J\x7f", []string{"1:2 control-character control character U+001B",
			"1:6 control-character control character U+007F"}},
	}
	for _, test := range tests {
		for _, name := range []string{"en/a.md", "manual.yaml", "thesaurus.tsv", "pictures/a.svg"} {
			var l fault.List
			files := ReadFS(fstest.MapFS{name: {Data: []byte(test.data)}}, &l)
			var want []string
			for _, w := range test.want {
				want = append(want, name+":"+w)
			}
			if got := fileFaults(&l); !slices.Equal(got, want) {
				t.Errorf("%q: got %q, want %q", test.data, got, want)
			}
			if (len(files) == 1) != (want == nil) {
				t.Errorf("%q: %d files", test.data, len(files))
			}
		}
	}
	var l fault.List
	ReadFS(fstest.MapFS{"en/a.md": {Data: []byte(strings.Repeat("\x01", 5000))}}, &l)
	if got := l.Errors(); got != maxTextFaults {
		t.Errorf("%d errors for a file full of controls, want %d", got, maxTextFaults)
	}
}

// locked denies some names, as a disk does to those without permission.
type locked struct {
	fstest.MapFS
	deny []string
}

func (l locked) Open(name string) (fs.File, error) {
	if slices.Contains(l.deny, name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return l.MapFS.Open(name)
}

func (l locked) ReadFile(name string) ([]byte, error) {
	if slices.Contains(l.deny, name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return l.MapFS.ReadFile(name)
}

func (l locked) ReadDir(name string) ([]fs.DirEntry, error) {
	if slices.Contains(l.deny, name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return l.MapFS.ReadDir(name)
}

func TestUnreadable(t *testing.T) {
	fsys := locked{fstest.MapFS{"en/a.md": {Data: []byte("a")}, "en/b.md": {Data: []byte("b")},
		"es/a.md": {Data: []byte("a")}},
		[]string{"en/b.md", "es"}}
	var l fault.List
	files := ReadFS(fsys, &l)
	want := []string{"en/b.md:1:0 unreadable cannot be read: permission denied",
		"es:1:0 unreadable cannot be read: permission denied"}
	if got := fileFaults(&l); !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if len(files) != 1 || files[0].Path != "en/a.md" {
		t.Errorf("got %v, want the one readable file", files)
	}
}
