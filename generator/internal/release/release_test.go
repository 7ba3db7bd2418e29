package release

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"coursebook/generator/internal/output"
)

func TestStamp(t *testing.T) {
	page := []byte("<script data-id=" + IDPlaceholder + "></script><p>Page " + IDPlaceholder + ".</p>")
	stamped, id := Stamp(page)
	sum := sha256.Sum256([]byte("<script data-id=></script><p>Page .</p>"))
	if want := hex.EncodeToString(sum[:])[:16]; id != want {
		t.Errorf("the id is %s, not %s", id, want)
	}
	if want := strings.ReplaceAll(string(page), IDPlaceholder, id); string(stamped) != want {
		t.Errorf("got %s, want %s", stamped, want)
	}
	if !bytes.Contains(page, []byte(IDPlaceholder)) {
		t.Error("the page given is changed")
	}
	if _, other := Stamp(append(page, ' ')); other == id {
		t.Error("another page has the same id")
	}
}

func TestJSON(t *testing.T) {
	l := List{Edition: "e", Fingerprint: "f", Module: "assets/m.wasmz",
		Index: map[string]string{"es": "assets/b.txt", "en": "assets/a.txt"},
		Pages: map[string]string{"index.html": "1", "en/a.html": "2"}}
	data := l.JSON()
	for _, line := range []string{`"edition": "e",`, `"es": "assets/b.txt"`, `"en/a.html": "2",`, `"words": {},`} {
		if !bytes.Contains(data, []byte("\n"+line+"\n")) {
			t.Errorf("no line %s in\n%s", line, data)
		}
	}
	var read List
	if err := json.Unmarshal(data, &read); err != nil {
		t.Fatal(err)
	}
	l.Words, l.Rules = map[string]string{}, map[string]string{}
	if !reflect.DeepEqual(read, l) {
		t.Errorf("read back as %+v", read)
	}
	if !bytes.Equal(data, l.JSON()) {
		t.Error("the same list gives other bytes")
	}
}

func TestEdition(t *testing.T) {
	entries := []output.Entry{{Path: "a", Sum: [32]byte{1}}, {Path: "b", Sum: [32]byte{2}}}
	edition := Edition(entries)
	if len(edition) != 10 {
		t.Errorf("edition %q", edition)
	}
	for _, other := range [][]output.Entry{
		entries[:1],
		{entries[0], {Path: "b", Sum: [32]byte{3}}},
		{entries[0], {Path: "c", Sum: [32]byte{2}}},
	} {
		if Edition(other) == edition {
			t.Errorf("%v has the same edition", other)
		}
	}
}
