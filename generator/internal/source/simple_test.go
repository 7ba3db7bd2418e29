package source

import (
	"errors"
	"io"
	"testing"

	"coursebook/generator/internal/fault"

	"gopkg.in/yaml.v3"
)

var simpleHeaders = []string{
	"title: Place the corners first\n",
	"title: A\nsummary: What the page is for, in one sentence.\nstage: placing\norder: 10\nroles: [hose-hand, lead]\n",
	"gear:\n  - Whip\n  - Spare whip, 2\" long\nsources:\n- common practice\n- https://example.org/a\nrevised: 2026-11-25\n",
	"title: ¿Qué falla?\n", "title: Écrire – 300 mm × 2\nwords: [é, esquina,  ele]\n", "order: 0x10\ntime: 12:30\nwhen: true\nkind: null\n",
	"title: a\ntitle: b\n", "titel: a\n", "title: a #b\n", "title: a: b\n", "title: a:\n", "title: \n", "title:\n", "title:\nx: a\n", "roles: []\n", "roles: [a,]\n", "roles: [a, [b]]\n",
	"title: a\n  b\n", "gear:\n  - a\n - b\n", "gear:\n  - a\n    b\n", "gear:\n- a\n  - b\n", "gear:\n  - a: b\n", "gear:\n  -\n", "title: \"a\"\n", "title: a \n", "title: a\n\nstage: b\n",
	"# x\ntitle: a\n", "title: &a b\n", "title: a\u2028b\n", "title: a\u0085b\n", "title: <<\n", "title: a\n---\n", "title: a\n...\n", "title: a", "roles: [a b, c-d, 1.5]\n", "roles: [ a ]\n", "roles: [0?]\n",
	"gear:\n  - a\n  b: c\n", "gear:\n  - a\nroles: [x]\n  - b\n", "", "\n",
}

// The short way gives what the YAML library gives: the same nodes, or none
// where the library has a fault to tell.
func TestSimpleAsTheLibrary(t *testing.T) {
	taken := 0
	for _, text := range simpleHeaders {
		if sameAsLibrary(t, text) {
			taken++
		}
	}
	if taken < 8 {
		t.Errorf("only %d headers go the short way", taken)
	}
}

func FuzzSimple(f *testing.F) {
	for _, text := range simpleHeaders {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		// the file is checked before: no header holds a control character
		if len(text) > 2000 || !checkText("x", []byte(text), &fault.List{}) {
			return
		}
		sameAsLibrary(t, text)
	})
}

// sameAsLibrary compares the two ways and reports whether the short one was
// taken.
func sameAsLibrary(t *testing.T, text string) bool {
	t.Helper()
	got := new(simple).read(text)
	if got == nil {
		return false
	}
	var doc, second yaml.Node
	if err := decodeTwo([]byte(text), &doc, &second); !errors.Is(err, io.EOF) {
		t.Errorf("%q goes the short way, but the library says %v", text, err)
		return true
	}
	compare(t, text, got, doc.Content[0])
	return true
}

func compare(t *testing.T, text string, got, want *yaml.Node) {
	t.Helper()
	if got.Kind != want.Kind || got.Value != want.Value || got.ShortTag() != want.ShortTag() || got.Line != want.Line || got.Column != want.Column ||
		want.Anchor != "" || want.Style&yaml.TaggedStyle != 0 || len(got.Content) != len(want.Content) {
		t.Errorf("%q: got %d %q %s at %d:%d, want %d %q %s at %d:%d", text, got.Kind, got.Value, got.ShortTag(), got.Line, got.Column,
			want.Kind, want.Value, want.ShortTag(), want.Line, want.Column)
		return
	}
	for i := range got.Content {
		compare(t, text, got.Content[i], want.Content[i])
	}
}
