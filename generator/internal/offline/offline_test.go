package offline

import (
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"coursebook/generator/internal/fault"
	"coursebook/generator/internal/output"

	"github.com/evanw/esbuild/pkg/api"
)

// File is one of the site's files.
type File struct {
	Path string
	Data []byte
}

func entries(files ...File) []output.Entry {
	list := make([]output.Entry, len(files))
	for i, f := range files {
		list[i] = output.File{Path: f.Path, Data: f.Data}.Entry()
	}
	return list
}

var site = []File{
	{"index.html", []byte("abc")},
	{"en/pour.html", nil},
	{"assets/a-0123456789.css", []byte("p{}")},
}

// The hashes are NIST's example values for FIPS 180-4: the message "abc" and the
// empty message.
func TestManifest(t *testing.T) {
	sri := func(hexadecimal string) string {
		sum, err := hex.DecodeString(hexadecimal)
		if err != nil {
			t.Fatal(err)
		}
		return "sha256-" + base64.StdEncoding.EncodeToString(sum)
	}
	r, err := Manifest(entries(site...))
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]Entry{
		"index.html":   {"index.html", sri("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"), 3},
		"en/pour.html": {"en/pour.html", sri("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"), 0},
	}
	var urls []string
	for _, e := range r.Entries {
		urls = append(urls, e.URL)
		if w, ok := want[e.URL]; ok && e != w {
			t.Errorf("got %v, want %v", e, w)
		}
	}
	if !slices.Equal(urls, []string{"assets/a-0123456789.css", "en/pour.html", "index.html"}) || r.Bytes != 6 {
		t.Errorf("got %v with %d bytes", urls, r.Bytes)
	}
}

func TestReleaseIDNamesTheFiles(t *testing.T) {
	id := func(files ...File) string {
		r, err := Manifest(entries(files...))
		if err != nil {
			t.Fatal(err)
		}
		return r.ID
	}
	turned := slices.Clone(site)
	slices.Reverse(turned)
	if id(site...) != id(turned...) {
		t.Error("the order of the files changes the ID")
	}
	seen := map[string]bool{id(site...): true}
	for _, files := range [][]File{
		site[:2], nil,
		{site[0], site[1], {"assets/b-0123456789.css", []byte("p{}")}},
		{site[0], site[1], {"assets/a-0123456789.css", []byte("q{}")}},
		{{"index.html", nil}, {"en/pour.html", []byte("abc")}, site[2]},
	} {
		if i := id(files...); seen[i] || len(i) != 64 {
			t.Errorf("ID %q of %v is taken or no hash", i, files)
		} else {
			seen[i] = true
		}
	}
}

func TestManifestRefuses(t *testing.T) {
	for path, text := range map[string]string{
		"index.html":      "listed twice",
		"sw.js":           "cannot list itself",
		"/a.html":         "not a plain relative URL",
		"../a.html":       "not a plain relative URL",
		"a/./b":           "not a plain relative URL",
		"a//b":            "not a plain relative URL",
		"":                "not a plain relative URL",
		"https:a":         "not a plain relative URL",
		"a b.html":        "not a plain relative URL",
		"año.html":        "not a plain relative URL",
		"a.html?x":        "not a plain relative URL",
		"a%2e.html":       "not a plain relative URL",
		".coursebook":     "not a plain relative URL",
		"a\u2028.html":    "not a plain relative URL",
		"en/pour.html\n":  "not a plain relative URL",
		"en\\pour.html":   "not a plain relative URL",
		"en/pour.html#a":  "not a plain relative URL",
		"en/\"pour\".htm": "not a plain relative URL",
	} {
		_, err := Manifest(append(entries(site...), entries(File{path, nil})...))
		var f fault.Fault
		if !errors.As(err, &f) || !strings.Contains(f.Text, text) || f.Hint == "" {
			t.Errorf("path %q: got %v, want %q", path, err, text)
		}
	}
}

// The prefix of the worker is valid JSON and, by an independent parser, valid
// JavaScript.
func TestWorker(t *testing.T) {
	r, err := Manifest(entries(site...))
	if err != nil {
		t.Fatal(err)
	}
	const code = "self.addEventListener('install',()=>{console.log(RELEASE.id)});\n"
	script := Worker(code, r)
	if script != Worker(code, r) {
		t.Error("the same release gives two scripts")
	}
	parsed := api.Transform(script, api.TransformOptions{Loader: api.LoaderJS})
	if len(parsed.Errors)+len(parsed.Warnings) > 0 {
		t.Errorf("not good JavaScript: %v %v", parsed.Errors, parsed.Warnings)
	}
	rest, ok := strings.CutPrefix(script, "\"use strict\";\nconst RELEASE=")
	list, ok2 := strings.CutSuffix(rest, ";\n"+code)
	if !ok || !ok2 {
		t.Fatalf("unexpected script\n%s", script)
	}
	var got struct {
		ID    string
		Bytes int64
		Files [][3]any
	}
	if err := json.Unmarshal([]byte(list), &got); err != nil {
		t.Fatal(err)
	}
	if got.ID != r.ID || got.Bytes != r.Bytes || len(got.Files) != len(r.Entries) {
		t.Errorf("got %+v, want %+v", got, r)
	}
	for i, e := range r.Entries {
		if want := [3]any{e.URL, e.Integrity, float64(e.Bytes)}; got.Files[i] != want {
			t.Errorf("got %v, want %v", got.Files[i], want)
		}
	}
	empty, err := Manifest(nil)
	if err != nil {
		t.Fatal(err)
	}
	if parsed := api.Transform(Worker("", empty), api.TransformOptions{}); len(parsed.Errors) > 0 {
		t.Errorf("an empty release is not good JavaScript: %v", parsed.Errors)
	}
}

func TestWebmanifest(t *testing.T) {
	app := App{Name: "Wall <book> & cards", ShortName: "Walls", Language: "en", Start: ".",
		Theme: "#1a4f9c", Background: "#ffffff",
		Icons: []Icon{
			{"assets/icon-0123456789.png", "192x192", "image/png", ""},
			{"assets/icon-9876543210.svg", "any", "image/svg+xml", "any maskable"},
		}}
	const want = `{
  "name": "Wall <book> & cards",
  "short_name": "Walls",
  "lang": "en",
  "start_url": ".",
  "scope": ".",
  "display": "standalone",
  "theme_color": "#1a4f9c",
  "background_color": "#ffffff",
  "icons": [
    {
      "src": "assets/icon-0123456789.png",
      "sizes": "192x192",
      "type": "image/png"
    },
    {
      "src": "assets/icon-9876543210.svg",
      "sizes": "any",
      "type": "image/svg+xml",
      "purpose": "any maskable"
    }
  ]
}
`
	got, err := Webmanifest(app)
	if err != nil || string(got) != want {
		t.Errorf("got %v\n%s\nwant\n%s", err, got, want)
	}

	for i, spoil := range []func(*App){
		func(a *App) { a.Name = " " },
		func(a *App) { a.ShortName = "" },
		func(a *App) { a.Theme = "blue" },
		func(a *App) { a.Background = "#fff" },
		func(a *App) { a.Icons = nil },
		func(a *App) { a.Icons[0].Src = "/icon.png" },
		func(a *App) { a.Icons[0].Src = "https://example.org/icon.png" },
		func(a *App) { a.Icons[0].Sizes = "big" },
		func(a *App) { a.Icons[0].Type = "png" },
		func(a *App) { a.Icons[0].Purpose = "any, maskable" },
	} {
		bad := app
		bad.Icons = slices.Clone(app.Icons)
		spoil(&bad)
		var f fault.Fault
		if got, err := Webmanifest(bad); got != nil || !errors.As(err, &f) || f.Hint == "" {
			t.Errorf("case %d: got %s, %v", i, got, err)
		}
	}
}

// BenchmarkManifest measures a manual of ten thousand pages.
func BenchmarkManifest(b *testing.B) {
	files := make([]File, 10_000)
	for i := range files {
		files[i] = File{fmt.Sprintf("en/page%d.html", i), make([]byte, 10_000)}
	}
	for b.Loop() {
		r, err := Manifest(entries(files...))
		if err != nil {
			b.Fatal(err)
		}
		Worker("", r)
	}
}
