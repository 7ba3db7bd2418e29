package preview

import (
	"context"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/fsnotify/fsnotify"

	"coursebook/generator/internal/fault"
)

func TestLoopback(t *testing.T) {
	for addr, good := range map[string]bool{
		"127.0.0.1:8080": true, "localhost:0": true, "[::1]:8080": true, "127.9.9.9:1": true,
		"0.0.0.0:8080": false, ":8080": false, "[::]:8080": false, "192.168.1.5:8080": false, "10.0.0.1:80": false,
		"example.org:80": false, "localhost.example.org:80": false, "8080": false, "": false, "127.0.0.1": false,
	} {
		err := loopback(addr)
		if (err == nil) != good {
			t.Errorf("%s: %v", addr, err)
		}
		if err != nil && !strings.Contains(err.Error(), "127.0.0.1") {
			t.Errorf("%s: no usable address in %q", addr, err)
		}
	}
}

// An address that cannot be used is an error before the first build.
func TestRunRefuses(t *testing.T) {
	taken, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		t.Fatal(err)
	}
	defer taken.Close()
	for addr, want := range map[string]string{
		"0.0.0.0:0":            "is not on this machine",
		taken.Addr().String():  "choose another with -addr",
		"127.0.0.1:not-a-port": "not-a-port",
	} {
		s := New(func() (map[string][]byte, []fault.Fault) { t.Errorf("%s: built", addr); return nil, nil }, quietly)
		if err := s.Run(t.Context(), addr, nil, nil); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s: %v", addr, err)
		}
	}
	s := New((&site{}).build, quietly)
	if err := s.Run(t.Context(), "127.0.0.1:0", []string{filepath.Join(t.TempDir(), "none")}, nil); err == nil {
		t.Error("a folder that is not there is watched")
	}
}

// writer runs a preview of a temporary folder and writes files to it.
type writer struct {
	t      *testing.T
	folder string
	builds chan string // content of the files at each build
	url    string
}

func begin(t *testing.T) *writer {
	t.Helper()
	w := &writer{t: t, folder: t.TempDir(), builds: make(chan string, 100)}
	w.write("note.md", "begun")
	s := New(func() (map[string][]byte, []fault.Fault) {
		text := ""
		for _, name := range []string{"note.md", "es/deep/first.md"} {
			data, _ := os.ReadFile(filepath.Join(w.folder, filepath.FromSlash(name))) // empty where there is none
			text += string(data)
		}
		w.builds <- text
		if strings.Contains(text, "fault") {
			return nil, broken
		}
		return whole(text), nil
	}, quietly)
	ctx, stop := context.WithCancel(context.Background())
	ready, ended := make(chan string, 1), make(chan error, 1)
	go func() { ended <- s.Run(ctx, "127.0.0.1:0", []string{w.folder}, func(url string) { ready <- url }) }()
	t.Cleanup(func() {
		stop()
		select {
		case err := <-ended:
			if err != nil {
				t.Error(err)
			}
		case <-time.After(patience):
			t.Error("the server does not stop")
		}
	})
	select {
	case w.url = <-ready:
	case err := <-ended:
		t.Fatal(err)
	}
	w.built("begun")
	return w
}

func (w *writer) write(name, text string) {
	w.t.Helper()
	name = filepath.Join(w.folder, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		w.t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		w.t.Fatal(err)
	}
}

// built waits for a build in which the content of the files is text.
func (w *writer) built(text string) {
	w.t.Helper()
	limit := time.After(patience)
	for {
		select {
		case got := <-w.builds:
			if got == text {
				return
			}
		case <-limit:
			w.t.Fatalf("no build of %q", text)
		}
	}
}

func TestRebuildsOnChange(t *testing.T) {
	w := begin(t)
	page := listen(t, strings.TrimSuffix(w.url, "/"))
	w.write("note.md", "changed")
	w.built("changed")
	page.want("faults", "")
	page.want("built", "{}")

	w.write("note.md", "fault")
	w.built("fault")
	page.want("faults", "unknown key")
	r, err := http.Get(w.url)
	if err != nil {
		t.Fatal(err)
	}
	defer r.Body.Close()
	if got := body(t, r); got != "<h1>changed</h1>" {
		t.Errorf("with faults the page is %s", got)
	}

	if err := os.Rename(filepath.Join(w.folder, "note.md"), filepath.Join(w.folder, "other.md")); err != nil {
		t.Fatal(err)
	}
	w.built("")
}

// A folder made while the preview runs is watched, with the folders in it.
func TestNewFolderIsWatched(t *testing.T) {
	w := begin(t)
	w.write("es/deep/first.md", " and new")
	w.built("begun and new")
	w.write("es/deep/first.md", " and changed")
	w.built("begun and changed")
}

// Hidden folders, such as those of version control, are not watched.
func TestHiddenFoldersAreNotWatched(t *testing.T) {
	folder := filepath.Join(t.TempDir(), ".book") // the folder of the manual may be hidden
	for _, name := range []string{"en", "pictures/deep", ".git/objects", "en/.old"} {
		if err := os.MkdirAll(filepath.Join(folder, filepath.FromSlash(name)), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	w, err := fsnotify.NewWatcher()
	if err != nil {
		t.Fatal(err)
	}
	defer w.Close()
	if err := watchBelow(w, folder); err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, name := range w.WatchList() {
		rel, err := filepath.Rel(folder, name)
		if err != nil {
			t.Fatal(err)
		}
		got = append(got, filepath.ToSlash(rel))
	}
	slices.Sort(got)
	if want := []string{".", "en", "pictures", "pictures/deep"}; !slices.Equal(got, want) {
		t.Errorf("watched: %v", got)
	}
	for name, want := range map[string]bool{"a/.b": true, "a/b": false, ".a/b": false} {
		if hidden(name) != want {
			t.Errorf("hidden(%s) is %v", name, !want)
		}
	}
}
