package output

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
)

// enterFolder makes a temporary folder with a manual, a site and other files, and
// changes the working folder to it.
func enterFolder(t *testing.T) {
	t.Helper()
	t.Chdir(t.TempDir())
	for name, text := range map[string]string{
		"content/manual.yaml": "title: {en: A}\n", "content/en/a.md": "text\n", "site/index.html": "<!doctype html>\n",
		"thesis.html": "<!doctype html>\n<title>Thesis</title>\n", "empty.html": "",
	} {
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// listing returns every file below the working folder with its content.
func listing(t *testing.T) string {
	t.Helper()
	var b strings.Builder
	err := filepath.WalkDir(".", func(name string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		b.WriteString(name)
		if d.Type().IsRegular() {
			data, err := os.ReadFile(name)
			if err != nil {
				return err
			}
			b.WriteString(" " + string(data))
		}
		b.WriteString("\n")
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestOneFileReplacesItsOwn(t *testing.T) {
	enterFolder(t)
	for _, name := range []string{"book.html", "new/deep/book.html", "site.html", "content.html",
		"./content/../other.html"} {
		o := OneFile{Path: name, Content: "content", Site: "site"}
		for _, text := range []string{"<p>one", "<p>two"} {
			if err := o.Write([]byte(text)); err != nil {
				t.Fatalf("%s: %v", name, err)
			}
			got, err := os.ReadFile(name)
			if err != nil || string(got) != oneFileMark+text {
				t.Errorf("%s holds %q (%v)", name, got, err)
			}
		}
		left, _ := filepath.Glob(filepath.Join(filepath.Dir(name), ".*coursebook*"))
		if len(left) > 0 {
			t.Errorf("left beside %s: %v", name, left)
		}
	}
	info, err := os.Stat("book.html")
	if err != nil || info.Mode().Perm()&0o044 == 0 {
		t.Errorf("others cannot read the edition: %v %v", info.Mode(), err)
	}
}

func TestOneFileRefuses(t *testing.T) {
	enterFolder(t)
	abs, err := filepath.Abs("content")
	if err != nil {
		t.Fatal(err)
	}
	for link, to := range map[string]string{"way": "content/en", "alias.html": "thesis.html", "gone.html": "nowhere",
		"sites": "site"} {
		if err := os.Symlink(to, link); err != nil {
			t.Fatal(err)
		}
	}
	before := listing(t)
	for _, c := range []struct{ path, site, want string }{
		{"content/manual.yaml", "site", "lies inside content, the folder of -content"},
		{"content/new.html", "site", "lies inside content, the folder of -content"},
		{"./site/../content/deep/er/new.html", "site", "lies inside content, the folder of -content"},
		{filepath.Join(abs, "new.html"), "site", "lies inside content, the folder of -content"},
		{"way/new.html", "site", "lies inside content, the folder of -content"},
		{"way/deep/new.html", "site", "lies inside content, the folder of -content"},
		{"content", "site", "lies inside content, the folder of -content"},
		{"site/book.html", "site", "lies inside site, the folder of -out"},
		{"sites/book.html", "site", "lies inside site, the folder of -out"},
		{"site/book.html", "sites", "lies inside sites, the folder of -out"},
		{"later/book.html", "later", "lies inside later, the folder of -out"},
		{"later", "later", "lies inside later, the folder of -out"},
		{"later", "later/site", "is a folder that later/site, the folder of -out, lies in"},
		{".", "site", "is a folder that content, the folder of -content, lies in"},
		{"new/", "site", `"new/" names no file`},
		{"", "site", `"" names no file`},
		{"thesis.html", "site", "exists and is not an earlier one-file edition"},
		{"way/../thesis.html", "site", "exists and is not an earlier one-file edition"},
		{"empty.html", "site", "exists and is not an earlier one-file edition"},
		{"alias.html", "site", "is a symbolic link"},
		{"gone.html", "site", "is a symbolic link"},
		{t.TempDir(), "site", "is a folder"},
		{os.DevNull, "site", "is a device, pipe or socket"},
		{"thesis.html/book.html", "site", "cannot find the file's folder: "},
	} {
		o := OneFile{Path: c.path, Content: "content", Site: c.site}
		for what, err := range map[string]error{"Check": o.Check(), "Write": o.Write([]byte("<p>"))} {
			var f fault.Fault
			if !errors.As(err, &f) || f.File != filepath.ToSlash(c.path) || f.Hint == "" {
				t.Errorf("%s of %q: %#v is no fault with file and hint", what, c.path, err)
			} else if f.Text != c.want && !(strings.HasSuffix(c.want, ": ") && strings.HasPrefix(f.Text, c.want)) {
				t.Errorf("%s of %q: got %q, want %q", what, c.path, f.Text, c.want)
			}
		}
	}
	if after := listing(t); after != before {
		t.Errorf("files changed from\n%s\nto\n%s", before, after)
	}
}

// A Write removes the partial file of one that was killed, and does not follow a
// symbolic link of that name.
func TestOneFileAfterAKill(t *testing.T) {
	enterFolder(t)
	stage := ".book.html.coursebook-stage"
	o := OneFile{Path: "book.html", Content: "content", Site: "site"}
	if err := os.WriteFile(stage, []byte("half"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := o.Write([]byte("<p>one")); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("thesis.html", stage); err != nil {
		t.Fatal(err)
	}
	if err := o.Write([]byte("<p>two")); err != nil {
		t.Fatal(err)
	}
	if _, err := os.Lstat(stage); !os.IsNotExist(err) {
		t.Errorf("%s is left: %v", stage, err)
	}
	if data, err := os.ReadFile("thesis.html"); err != nil || !strings.Contains(string(data), "Thesis") {
		t.Errorf("the other file holds %q (%v)", data, err)
	}
}
