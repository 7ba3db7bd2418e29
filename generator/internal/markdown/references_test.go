package markdown

import (
	"strings"
	"testing"

	"coursebook/generator/internal/fault"

	"github.com/yuin/goldmark/util"
)

// References are resolved once, and not behind a backslash (CommonMark 0.31,
// sections 2.4 and 2.5).
func TestDecode(t *testing.T) {
	for text, want := range map[string]string{
		"a": "a", "&amp;": "&", `\&amp;`: "&amp;", `\\&amp;`: `\&`, "&amp;amp;": "&amp;", "&#38;rlm;": "&rlm;",
		"&lt;&gt;":          "<>",
		"&#65;&#x42;&#X43;": "ABC", "&#0;": "\uFFFD", "&#x110000;": "\uFFFD", "&#xD800;": "\uFFFD", "&#09;": "\t",
		"&#12345678;": "&#12345678;", "&#x1234567;": "&#x1234567;", "&#;": "&#;", "&#x;": "&#x;", "&;": "&;", "&": "&",
		"&nosuch;": "&nosuch;",
		"&amp":     "&amp", "&#-1;": "&#-1;", "&#+1;": "&#+1;", "&#1_0;": "&#1_0;", `\a\*`: `\a*`, `\`: `\`,
		"AT&T; x":                           "AT&T; x",
		"&CounterClockwiseContourIntegral;": "\u2233", strings.Repeat("&", 50) + ";": strings.Repeat("&", 50) + ";",
	} {
		if got := decode([]byte(text), false); got != want {
			t.Errorf("%q gives %q, want %q", text, got, want)
		}
		if got := decode([]byte(text), true); got != text {
			t.Errorf("%q as raw text gives %q", text, got)
		}
	}
	if e, ok := util.LookUpHTML5EntityByName("rlm"); !ok || string(e.Characters) != "\u200F" {
		t.Error("the table of names lacks rlm")
	}
}

// A page of references costs no more than its length, and its faults are
// bounded as all others.
func TestManyReferences(t *testing.T) {
	for _, unit := range []string{"&rlm;", "[a](b.md \"&rlm;\") ", "[a][b] "} {
		text := strings.Repeat(unit, 100_000/len(unit)) + "\n\n[b]: c.md \"" + strings.Repeat("&rlm;", 1000) + "\"\n"
		var faults fault.List
		parse("x", text, &faults)
		if n := len(faults.All()); n == 0 || n > mostFaults {
			t.Errorf("%q: %d faults", unit, n)
		}
	}
}
