package compiling

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
)

// After its data is written in few segments the compiled module has the same memory
// and the same sections, without custom ones.
func TestFewSegments(t *testing.T) {
	raw := compiled(t)
	before, err := readLinked(raw)
	if err != nil {
		t.Fatal(err)
	}
	written := before.write()
	after, err := readLinked(written)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(before.image, after.image) {
		t.Error("the memory is another one")
	}
	if was, is := segmentsOf(t, raw), segmentsOf(t, written); was < 10_000 || is > 100 {
		t.Errorf("%d segments became %d", was, is)
	}
	custom := func(s section) bool { return s.id == customSection }
	rest := slices.DeleteFunc(slices.Clone(before.sections), custom)
	if len(rest) == len(before.sections) || len(rest) != len(after.sections) {
		t.Fatalf("%d sections, %d of them not custom, became %d", len(before.sections), len(rest), len(after.sections))
	}
	for i, s := range rest {
		if o := after.sections[i]; o.id != s.id || s.id != dataSection && !bytes.Equal(o.body, s.body) {
			t.Errorf("section %d has changed", s.id)
		}
	}
	if again := after.write(); !bytes.Equal(again, written) {
		t.Error("writing twice gives another module")
	}
}

func segmentsOf(t *testing.T, module []byte) int {
	t.Helper()
	sections, err := readSections(module)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range sections {
		if s.id == dataSection {
			return (&reader{data: s.body}).unsigned()
		}
	}
	return 0
}

const head = "\x00asm\x01\x00\x00\x00"

// Modules written by hand from the WebAssembly Core Specification 2.0 (5.5.14 data
// section, 5.5.16 data count section).
func TestDataSection(t *testing.T) {
	for name, c := range map[string]struct {
		module, image, want string // want is empty where the module is refused
	}{
		"no data": {head, "", head},
		"one segment": {head + "\x0b\x09\x01\x00\x41\x08\x0b\x03abc", "\x00\x00\x00\x00\x00\x00\x00\x00abc",
			head + "\x0b\x09\x01\x00\x41\x08\x0b\x03abc"},
		"other section": {head + "\x0a\x02\x01\x00" + "\x0b\x07\x01\x00\x41\x00\x0b\x01a", "a",
			head + "\x0a\x02\x01\x00" + "\x0b\x07\x01\x00\x41\x00\x0b\x01a"},
		"neighbours are joined, the data count follows": {
			head + "\x0c\x01\x02" + "\x0b\x0d\x02\x00\x41\x00\x0b\x01a\x00\x41\x02\x0b\x01c", "a\x00c",
			head + "\x0c\x01\x01" + "\x0b\x09\x01\x00\x41\x00\x0b\x03a\x00c"},
		"the later of two overlapping wins": {head + "\x0b\x0f\x02\x00\x41\x00\x0b\x03abc\x00\x41\x01\x0b\x01x", "axc",
			head + "\x0b\x09\x01\x00\x41\x00\x0b\x03axc"},
		"only zeros": {head + "\x0b\x08\x01\x00\x41\x00\x0b\x02\x00\x00", "\x00\x00",
			head + "\x0b\x01\x00"},
		"a custom section goes":     {head + "\x00\x05\x04name", "", head},
		"passive segment":           {head + "\x0b\x06\x01\x01\x03abc", "", ""},
		"explicit memory":           {head + "\x0b\x0a\x01\x02\x00\x41\x08\x0b\x03abc", "", ""},
		"address of a global":       {head + "\x0b\x09\x01\x00\x23\x00\x0b\x03abc", "", ""},
		"negative address":          {head + "\x0b\x09\x01\x00\x41\x78\x0b\x03abc", "", ""},
		"address beyond all memory": {head + "\x0b\x0d\x01\x00\x41\xff\xff\xff\xff\x07\x0b\x03abc", "", ""},
		"size beyond the section":   {head + "\x0b\x09\x01\x00\x41\x08\x0b\x7fabc", "", ""},
		"count beyond the section":  {head + "\x0b\x05\xff\xff\xff\xff\x0f", "", ""},
		"more than the count":       {head + "\x0b\x0a\x01\x00\x41\x08\x0b\x03abcd", "", ""},
		"cut in a number":           {head + "\x0b\x80", "", ""},
	} {
		m, err := readLinked([]byte(c.module))
		if (err == nil) != (c.want != "") {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if err != nil {
			small, notes := reduce([]byte(c.module), testedVersions[0])
			if string(small) != c.module || len(notes) != 1 || !strings.Contains(notes[0], err.Error()) {
				t.Errorf("%s: a refused module became %q with notes %q", name, small, notes)
			}
			continue
		}
		if string(m.image) != c.image || string(m.write()) != c.want {
			t.Errorf("%s: image %q, written %q", name, m.image, m.write())
		}
	}
}

// split loses no byte, regardless of the runs of zeros, and splits at long runs only.
func TestSplit(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 9))
	for range 200 {
		var image []byte
		for range r.IntN(6) {
			image = append(image, make([]byte, r.IntN(2*longZeros))...)
			image = append(image, bytes.Repeat([]byte{byte(r.IntN(2))}, r.IntN(40))...)
		}
		back := make([]byte, len(image))
		end := -longZeros
		for _, s := range split(image) {
			if s.at-end < longZeros || s.data[0] == 0 || s.data[len(s.data)-1] == 0 ||
				bytes.Contains(s.data, make([]byte, longZeros)) {
				t.Errorf("a segment at %d of %d bytes after one that ends at %d", s.at, len(s.data), end)
			}
			end = s.at + len(s.data)
			copy(back[s.at:], s.data)
		}
		if !bytes.Equal(back, image) {
			t.Fatal("the image has changed")
		}
	}
	for zeros, want := range map[int]int{longZeros - 1: 1, longZeros: 2} {
		image := slices.Concat([]byte("a"), make([]byte, zeros), []byte("b"), make([]byte, 3))
		if got := split(image); len(got) != want {
			t.Errorf("%d zeros: %d segments, want %d: %s", zeros, len(got), want, fmt.Sprint(got))
		}
	}
}
