package source

import (
	"testing"

	"coursebook/generator/internal/fault"
)

// checkFaults holds what every fault must have.
func checkFaults(t *testing.T, l *fault.List, path string) {
	t.Helper()
	for _, f := range l.All() {
		if f.File != path || f.Line < 1 || f.Col < 1 || f.Text == "" || f.Hint == "" || f.Code == "" {
			t.Errorf("incomplete fault %+v", f)
		}
	}
}

func FuzzHeader(f *testing.F) {
	for _, seed := range []string{
		"---\ntitle: a\nstage: b\nroles: [c, d]\nrevised: 2026-03-31\n---\nBody\n",
		"---\ntitle: &a b\nstage: *a\n<<: {x: y}\n---\n", "---\ntitle: 'a\n", "---\n? [a]\n: {b: c}\n...\n--- d\n---\n",
		"",
		"---\ntitle: \"a \\u202E \\x07 \\0 \\\\ \\\n b \\e\"\nsummary: \"\\UFFFFFFFF\"\n---\n",
		"---\n\xff\x00\u202e: |\n  a\n---\n",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		var l fault.List
		h, body, line := ParseHeader("en/a.md", data, &l)
		checkFaults(t, &l, "en/a.md")
		if l.Errors() == 0 && (h.Title == "" || h.Lines["title"] < 2) {
			t.Errorf("no fault and no title in %+v", h)
		}
		if line < 1 || len(body) > len(data) || string(body) != string(data[len(data)-len(body):]) && body != nil {
			t.Errorf("body %q on line %d is not the end of the file", body, line)
		}
	})
}

func FuzzManual(f *testing.F) {
	f.Add([]byte(goodManual))
	f.Add([]byte("title: [a\n"))
	f.Add([]byte("languages: [{code: en}, {code: en}]\nstages: {}\n---\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var l fault.List
		m := ParseManual("manual.yaml", data, &l)
		checkFaults(t, &l, "manual.yaml")
		if l.Errors() == 0 && (len(m.Languages) == 0 || len(m.Stages) == 0 || m.Title[m.Languages[0].Code] == "") {
			t.Errorf("no fault and an unusable manual %+v", m)
		}
	})
}

func FuzzThesaurus(f *testing.F) {
	f.Add([]byte("en:\ta\tb\n# c\nen:\td\t>\te\nen:\tcalc:x\tf\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		var l fault.List
		for lang, list := range ParseThesaurus("thesaurus.tsv", data, &l) {
			for _, g := range list.Groups {
				if len(g.From)+len(g.To) < 2 || len(g.From) == 0 {
					t.Errorf("group %q of %q has too few words", g, lang)
				}
			}
			for _, a := range list.Asked {
				if len(a.Words) == 0 || a.Line < 1 {
					t.Errorf("%+v of %q is incomplete", a, lang)
				}
			}
		}
		for lang, list := range ParseSmallWords("small-words.tsv", data, &l) {
			for _, w := range list {
				if w.Word == "" || w.Tenth < 0 || w.Tenth > 9 {
					t.Errorf("%+v of %q", w, lang)
				}
			}
		}
		for _, f := range l.All() {
			if f.File != "thesaurus.tsv" && f.File != "small-words.tsv" {
				t.Errorf("fault in %q", f.File)
			}
		}
	})
}
