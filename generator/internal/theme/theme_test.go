package theme

import (
	"encoding/xml"
	"io"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"
)

// Every kind renders, writes hostile text as text and nothing inline that the policy
// would block.
func TestEveryKind(t *testing.T) {
	th := load(t, nil)
	inline := regexp.MustCompile(`\son[a-z]+="|\sstyle="|<[^>]*javascript:|ZgotmplZ`)
	for kind, view := range samples() {
		out, err := th.Render(kind, view)
		if err != nil {
			t.Fatalf("%s: %v", kind, err)
		}
		html := string(out)
		if strings.Contains(html, "<script>alert") || strings.Contains(html, "<img src=x") {
			t.Errorf("%s: hostile text became markup", kind)
		}
		if bad := inline.FindString(html); bad != "" {
			t.Errorf("%s: contains %q", kind, bad)
		}
		if kind != "all-body" && !policyFirst.MatchString(html) {
			t.Errorf("%s: the policy does not follow the charset", kind)
		}
		wellNested(t, kind, html)
	}
}

// policyFirst matches a page whose policy is before everything that it loads.
var policyFirst = regexp.MustCompile(
	`<head>\s*<meta charset="utf-8">\s*` +
		`<meta http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;">`,
)

// void elements have no end tag in HTML.
var void = regexp.MustCompile(`<(meta|link|input|img|br|hr|path|circle)(\s[^>]*[^/])?>`)

// wellNested parses a page with the standard library's XML decoder, which fails if an
// element is not closed.
func wellNested(t *testing.T, kind, html string) {
	t.Helper()
	html = strings.Replace(html, "<!doctype html>", "", 1)
	html = void.ReplaceAllString(html, "<$1$2/>")
	html = regexp.MustCompile(`(?s)<(script|style)[^>]*>.*?</(script|style)>`).ReplaceAllString(html, "")
	html = regexp.MustCompile(`\s(hidden|checked|disabled|novalidate|selected)\b`).ReplaceAllString(html, "")
	dec := xml.NewDecoder(strings.NewReader("<x>" + html + "</x>"))
	for {
		_, err := dec.Token()
		if err == io.EOF {
			return
		}
		if err != nil {
			t.Errorf("%s: %v", kind, err)
			return
		}
	}
}

// IDs are unique on each page, and every id that a label or a description points
// at is there.
func TestIDs(t *testing.T) {
	th := load(t, nil)
	id := regexp.MustCompile(`\sid="([^"]*)"`)
	ref := regexp.MustCompile(`\s(?:for|aria-describedby|aria-labelledby)="([^"]*)"`)
	for _, kind := range []string{"procedure", "home", "calculator", "all", "pocket", "lesson", "course", "training"} {
		out, err := th.Render(kind, samples()[kind])
		if err != nil {
			t.Fatal(err)
		}
		seen := map[string]bool{}
		for _, m := range id.FindAllStringSubmatch(string(out), -1) {
			if seen[m[1]] {
				t.Errorf("%s: id %s occurs twice", kind, m[1])
			}
			seen[m[1]] = true
		}
		for _, m := range ref.FindAllStringSubmatch(string(out), -1) {
			if !seen[m[1]] {
				t.Errorf("%s: nothing has the id %s", kind, m[1])
			}
		}
	}
}

func TestPair(t *testing.T) {
	view := samples()["calculator"]
	out, err := load(t, nil).Render("calculator", view)
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{
		`<span class="q"><span class="us">1 yd³</span><span class="si">0.8 m³</span></span>`,
		`<span class="either"><span class="us">us</span><span class="si">si</span></span>`,
		`value="8&#39; 0&#34;"`, `data-keys="&#39; &#34; / -"`,
	} {
		if !strings.Contains(string(out), want) {
			t.Errorf("no %s", want)
		}
	}
}

func TestTranslation(t *testing.T) {
	th := load(t, map[string]map[string]string{"es": {"ui.all": "Todas"}})
	es, err := th.For("es")
	if err != nil {
		t.Fatal(err)
	}
	out, err := es.Render("missing", samples()["missing"])
	if err != nil || !strings.Contains(string(out), ">Todas<") {
		t.Errorf("no translated text, error %v", err)
	}
	if es.Text("ui.all") != "Todas" || th.Text("ui.all") != "All pages, A to Z" ||
		es.Text("ui.unknown") != "ui.unknown" {
		t.Error("Text does not follow the language")
	}
}

func TestFaults(t *testing.T) {
	cases := map[string]struct {
		files fstest.MapFS
		want  string
	}{
		"no words": {fstest.MapFS{}, "words.tsv"},
		"twice": {
			fstest.MapFS{"words.tsv": {Data: []byte("ui.a\tA\nui.a\tB\n")}},
			"words.tsv:2: a line is a key of its own, a tab, and a text",
		},
		"no tab": {fstest.MapFS{"words.tsv": {Data: []byte("# words\nui.a A\n")}}, "words.tsv:2:"},
		"no kind": {
			fstest.MapFS{
				"words.tsv":        {Data: []byte("ui.a\tA\n")},
				"templates/a.html": {Data: []byte(`{{define "procedure"}}{{end}}`)},
			},
			`no template named "home"`,
		},
	}
	for name, c := range cases {
		if _, err := Load(c.files, nil, []string{"procedure", "home"}); err == nil ||
			!strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := load(t, nil).uiText("en", "ui.no-such", nil); err == nil {
		t.Error("an unknown key is accepted")
	}
}

// The text of a data block is written unchanged; a text that would end the element is
// an error.
func TestDataBlock(t *testing.T) {
	out, err := dataBlock("module", "QUJD+/=")
	if err != nil || out != `<script type="text/plain" id="module">QUJD+/=</script>` {
		t.Errorf("%s %v", out, err)
	}
	for _, bad := range []string{"a</SCRIPT>", "<!-- x"} {
		if _, err := dataBlock("x", bad); err == nil {
			t.Errorf("%q is accepted", bad)
		}
	}
}

// A short word of a title is not broken at its hyphen, and nothing of it is markup.
func TestTitle(t *testing.T) {
	for text, want := range map[string]string{
		"Bar take-off for a <wall>":  `Bar <span class="whole">take-off</span> for a &lt;wall&gt;`,
		"Last round":                 "Last round",
		"A very-long-word-of-a-name": "A very-long-word-of-a-name",
	} {
		if got := string(title(text)); got != want {
			t.Errorf("%q: %s, want %s", text, got, want)
		}
	}
}

// The unit of a table is in its caption once, and not in its cells.
func TestCaption(t *testing.T) {
	if got := caption("Net volume, yd³", "yd³") + "; " + caption("Weight", "lb") + "; " + caption("Turns", "") + "; " +
		bare("yd³", "0.49\u00a0yd³") + "; " + bare("yd³", "—") + "; " + bare("", "does not hold"); got !=
		"Net volume, yd³; Weight, lb; Turns; 0.49; —; does not hold" {
		t.Error(got)
	}
}
