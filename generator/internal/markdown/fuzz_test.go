package markdown

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode/utf8"

	"coursebook/generator/internal/fault"
)

// live is markup that only this package may write, and never with these names.
var live = regexp.MustCompile(`(?i)<(script|iframe|object|style|svg|form|link|meta|base)[\s/>]|` +
	`<[^>]*\s(on[a-z]+|style)=|(href|src)="[^"]*(javascript|data|vbscript):`)

// FuzzParse: for any page, parsing and rendering end, the HTML is
// UTF-8 and its tags are closed, and nothing of the author's becomes markup.
func FuzzParse(f *testing.F) {
	cases, _ := filepath.Glob("testdata/*.md")
	for _, path := range cases {
		text, err := os.ReadFile(path)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(string(text))
	}
	f.Add("---\n---\n<scr<b>ipt>\n\n[a](<java\nscript:x> \"'><script>\")")
	f.Add("> **DANGER**\n- [ ] \n1. - [ ] **Hold point**\n\n|a|\n|-|\n|`|`|")
	f.Add("a &#x202e;b &rlm; &#0; \\&amp; &#38;#x202e;\n\n[a][b] ![c](d.svg \"&#1;\")\n\n[b]: e \"&lrm;\"\n")
	for _, page := range blowUps(2_000) {
		f.Add(page[0])
	}
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) || strings.ContainsRune(text, 0) {
			return // refused when the file is read
		}
		var faults fault.List
		d := parse("x", text, &faults)
		var b strings.Builder
		for _, c := range d.Body(resolved(d)) {
			b.WriteString(c.HTML)
		}
		out := b.String()
		if !utf8.ValidString(out) {
			t.Fatalf("not UTF-8: %q", out)
		}
		if bad := live.FindString(tagsOnly(out)); bad != "" {
			t.Fatalf("live markup %q in %q", bad, out)
		}
		balanced(t, out)
		for _, x := range faults.All() {
			if x.Line < 1 || x.File == "" || x.Text == "" || x.Code == "" {
				t.Fatalf("fault without a place or a text: %+v", x)
			}
		}
	})
}

// tagsOnly keeps what is between < and >, which is all that a browser
// reads as markup once every < of the text is escaped.
func tagsOnly(out string) string {
	return strings.Join(tag.FindAllString(out, -1), "\n")
}

var tag = regexp.MustCompile(`<[^>]*>`)

// balanced checks that every element that needs closing is closed, in order.
func balanced(t *testing.T, out string) {
	t.Helper()
	var open []string
	for _, found := range tag.FindAllString(out, -1) {
		name := strings.FieldsFunc(found, func(r rune) bool { return strings.ContainsRune("<>/ \n", r) })[0]
		switch {
		case name == "br" || name == "hr" || name == "img" || name == "input":
		case !strings.HasPrefix(found, "</"):
			open = append(open, name)
		case len(open) == 0 || open[len(open)-1] != name:
			t.Fatalf("%s closes %v in %q", found, open, out)
		default:
			open = open[:len(open)-1]
		}
	}
	if len(open) > 0 {
		t.Fatalf("%v not closed in %q", open, out)
	}
}
