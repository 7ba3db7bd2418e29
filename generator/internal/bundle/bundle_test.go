package bundle

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"coursebook/generator/internal/fault"
)

func theme(files map[string]string) fstest.MapFS {
	dir := fstest.MapFS{}
	for name, text := range files {
		dir[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return dir
}

func printed(faults *fault.List) string {
	var b bytes.Buffer
	fault.Print(&b, faults.All())
	return b.String()
}

func TestStyle(t *testing.T) {
	dir := theme(map[string]string{
		"css/index.css":      "@layer base;\n@import \"./base.css\" layer(base);\n@import \"./parts/box\";\n",
		"css/base.css":       "/* a note */ p { color : #ff0000; background: url(icon.svg) }\n",
		"css/parts/box.css":  "@container (min-width: 20em) { .box { margin: 0px; & b { color: red } } }\n",
		"css/never-used.css": ".never{}",
	})
	var faults fault.List
	got := string(Style(dir, "css/index.css", &faults))
	if s := printed(&faults); s != "" {
		t.Fatal(s)
	}
	for _, want := range []string{"@layer base", "url(icon.svg)", "@container", ".box"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %s in %s", want, got)
		}
	}
	for _, not := range []string{"a note", "never", "@import", "color : "} {
		if strings.Contains(got, not) {
			t.Errorf("%s in %s", not, got)
		}
	}
}

func TestScript(t *testing.T) {
	dir := theme(map[string]string{
		"ts/index.ts": "import { add } from './lib/add'\nconst n: number = add(1, 2)\n" +
			"console.log(`${n}</script>ñ`)\n",
		"ts/lib/add.ts": "/*! a licence */ import { one } from '../one.ts'\n" +
			"export const add = (a: number, b: number): number => a + b + one\n" +
			"export const unused = 'no one needs this'\n",
		"ts/one.ts": "export const one = 1\n",
	})
	var faults fault.List
	got := string(Script(dir, "ts/index.ts", &faults))
	if s := printed(&faults); s != "" {
		t.Fatal(s)
	}
	for _, not := range []string{"import", "export", "number", "no one needs", "a licence", "</script>",
		"sourceMapping"} {
		if strings.Contains(got, not) {
			t.Errorf("%s in %s", not, got)
		}
	}
	if !strings.HasPrefix(got, "(()=>{") && !strings.HasPrefix(got, `"use strict";(()=>{`) ||
		!strings.Contains(got, "ñ") {
		t.Errorf("no classic script in UTF-8: %s", got)
	}
	if again := Script(dir, "ts/index.ts", &faults); string(again) != got {
		t.Error("two runs differ")
	}
}

// A fault in a theme names the file by its path in the theme, with line and column.
func TestFaults(t *testing.T) {
	for name, c := range map[string]struct {
		entry string
		files map[string]string
		want  string
	}{
		"syntax": {"ts/index.ts", map[string]string{"ts/index.ts": "const a = 1\nconst = 2\n"},
			"ts/index.ts:2:7: error: "},
		"runes": {"ts/index.ts", map[string]string{"ts/index.ts": "/* ñññ */ const = 2\n"},
			"ts/index.ts:1:17: error: "},
		"in an import": {"ts/index.ts", map[string]string{"ts/index.ts": "import './a'\n",
			"ts/a.ts": "\n\n  let let\n"}, "ts/a.ts:3:"},
		"not there": {"ts/index.ts", map[string]string{"ts/index.ts": "import './gone'\n"},
			"ts/index.ts:1:8: error: the theme has no file ts/gone"},
		"no entry": {"ts/index.ts", map[string]string{}, "the theme has no file ts/index.ts"},
		"outside": {"ts/index.ts", map[string]string{"ts/index.ts": "import '../../x'\n"},
			"ts/index.ts:1:8: error: the theme has no file ../x"},
		"absolute": {"ts/index.ts", map[string]string{"ts/index.ts": "import '/etc/passwd'\n"},
			"error: the theme has no file ts/etc/passwd"},
		"a package": {"ts/index.ts", map[string]string{"ts/index.ts": "import 'left-pad'\n"},
			"error: the theme has no file ts/left-pad"},
		"style import": {"css/index.css", map[string]string{"css/index.css": "\n@import './gone.css';\n"},
			"css/index.css:2:9: error: the theme has no file css/gone.css"},
		"style, syntax": {"css/index.css", map[string]string{"css/index.css": "a { color: red\nb { margin 1px }\n"},
			"css/index.css:2:11: warning: "},
	} {
		var faults fault.List
		out := build(theme(c.files), c.entry, &faults)
		got := printed(&faults)
		if !strings.Contains(got, c.want) {
			t.Errorf("%s: want %q, got %q (output %q)", name, c.want, got, out)
		}
		if faults.Errors() > 0 && out != nil {
			t.Errorf("%s: there is output in spite of errors", name)
		}
	}
}

// The name of an asset changes with its content. The hash is computed with the
// standard library.
func TestNamed(t *testing.T) {
	sum := sha256.Sum256([]byte("abc"))
	want := "assets/page-" + hex.EncodeToString(sum[:])[:10] + ".js"
	if got := Named("page", "js", []byte("abc")); got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	if Named("page", "js", []byte("abd")) == Named("page", "js", []byte("abc")) {
		t.Error("two contents, one name")
	}
}

// The example of W3C, "Content Security Policy Level 3", section 8.3.
func TestHash(t *testing.T) {
	const want = "'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng='"
	if got := Hash([]byte("alert('Hello, world.');")); got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

func TestMinifier(t *testing.T) {
	const page = "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n" +
		"<title>A  B</title>\n</head>\n<body>\n" +
		"<p  class=\"a b\">One   two <b>three</b> four</p>\n<!-- a note -->\n<pre>\n  kept  as is\n</pre>\n" +
		"<input type=\"text\" value=\"8&#39; 0&#34;\"><ul><li>x</li></ul>\n" +
		"<script type=\"text/plain\" id=\"d\">A+/=  =</script></body></html>\n"
	m := NewMinifier()
	got, err := m.HTML([]byte(page))
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{"<!doctype html>", `<html lang="en">`, "</body>", "</html>", "</p>", "</li>",
		`class="a b"`, "One two <b>three</b> four",
		"\n  kept  as is\n", `type="text"`, "A+/=  ="} {
		if !strings.Contains(string(got), want) {
			t.Errorf("no %q in %s", want, got)
		}
	}
	if strings.Contains(string(got), "a note") || len(got) >= len(page) {
		t.Errorf("not smaller: %s", got)
	}
	if twice, err := m.HTML(bytes.Clone(got)); err != nil || !bytes.Equal(twice, got) {
		t.Errorf("not stable: %s %v", twice, err)
	}
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			if again, err := m.HTML([]byte(page)); err != nil || !bytes.Equal(again, got) {
				t.Errorf("in parallel: %s %v", again, err)
			}
		})
	}
	wg.Wait()
}
